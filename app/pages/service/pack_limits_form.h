// What a pack is, and the volts that its machine asks of it: the centre's own figures, from the pack's and the machine's
// instructions. What makes no sense for the chemistry is said, and may be kept.
#pragma once

#include "app/edits/edit_form.h"

#include <array>

class QComboBox;
class QDoubleSpinBox;

namespace laneward {

class PackLimitsForm : public EditForm {
    Q_OBJECT

public:
    explicit PackLimitsForm(Session& session, QWidget* parent = nullptr);

    void edit(const ItemId& pack);

private:
    struct Limit {
        QDoubleSpinBox* volts;
        QComboBox* state;
    };

    void build();
    QDoubleSpinBox* voltsBox(const char* name);
    Limit addLimit(const QString& label, const char* name, const QStringList& rules);
    VoltLimit limitOf(const Limit& limit) const;
    void show(const Limit& limit, const VoltLimit& value);
    ServiceItem draft() const;
    const ServiceItem* stored() const { return findItem(session().season().items, m_pack); }
    std::vector<Finding> faults() const override;
    std::vector<Finding> doubts() const override;
    bool store() override;
    bool isOther() const override;
    void reload() override;

    ItemId m_pack;
    ServiceItem m_loaded;
    QComboBox* m_chemistry = nullptr;
    QDoubleSpinBox* m_nominal = nullptr;
    std::array<Limit, 3> m_limits{};  ///< full, fit, spare below
};

}  // namespace laneward
