// A line of a price list: what a supplier sells, in which packs, at which prices.
#pragma once

#include "app/edits/edit_form.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace laneward {

class CellTable;
class PriceModel;
class QuantityBox;

class OfferForm : public EditForm {
    Q_OBJECT

public:
    explicit OfferForm(Session& session, QWidget* parent = nullptr);

    void create(const SupplierId& supplier);
    void edit(const Offer& offer);
    Offer draft() const;
    OfferId editing() const { return m_loaded.id; }

private:
    void build();
    void supplyChosen();
    std::vector<Finding> faults() const override;
    std::vector<Finding> doubts() const override;
    bool store() override;
    bool isOther() const override;
    void reload() override;

    std::optional<Offer> m_before;  ///< nothing for a new one
    Offer m_loaded;
    QComboBox* m_supply = nullptr;
    QLineEdit* m_article = nullptr;
    QuantityBox* m_pack = nullptr;
    PriceModel* m_prices = nullptr;
    CellTable* m_table = nullptr;
};

const Offer* findOffer(const std::vector<Offer>& offers, const OfferId& id);
bool retire(Session& session, const Offer& offer);

}  // namespace laneward
