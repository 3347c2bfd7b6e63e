// Who sells what at which price: suppliers with their terms, and below the price list of the chosen one.
#pragma once

#include "app/edits/session.h"

#include <QWidget>

class QCheckBox;
class QHBoxLayout;
class QLabel;
class QPushButton;
class QSplitter;
class QTableView;

namespace laneward {

class OfferForm;
class PlainRows;
class SupplierForm;
class SuppliesImport;

class PricePanel : public QWidget {
    Q_OBJECT

public:
    explicit PricePanel(Session& session, QWidget* parent = nullptr);

    void refresh();

private:
    QWidget* buildSuppliers();
    QWidget* buildOffers();
    void buildForms();
    QPushButton* addButton(QHBoxLayout* row, const QString& text, const char* name, void (PricePanel::*deed)());
    void fillSuppliers();
    void fillOffers();
    void showChosen();
    void cover(QWidget* form);  ///< a form in place of the lists; none = the lists
    const Supplier* supplier() const;
    const Offer* offer() const;
    void newSupplier();
    void changeSupplier();
    void retireSupplier();
    void newOffer();
    void changeOffer();
    void retireOffer();
    void importList();

    Session& m_session;
    QLabel* m_empty = nullptr;
    QSplitter* m_lists = nullptr;
    PlainRows* m_supplierRows = nullptr;
    PlainRows* m_offerRows = nullptr;
    QTableView* m_suppliers = nullptr;
    QTableView* m_offers = nullptr;
    QLabel* m_head = nullptr;
    QLabel* m_noOffers = nullptr;
    QCheckBox* m_retired = nullptr;
    QList<QPushButton*> m_ofSupplier;  ///< need one to be chosen
    QList<QPushButton*> m_ofOffer;
    QPushButton* m_retireSupplier = nullptr;
    QPushButton* m_retireOffer = nullptr;
    SupplierForm* m_supplierForm = nullptr;
    OfferForm* m_offerForm = nullptr;
    SuppliesImport* m_import = nullptr;
    bool m_filling = false;
};

}  // namespace laneward
