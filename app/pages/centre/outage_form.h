// Lanes or a machine out of service, from a time on, until another or until further notice.
#pragma once

#include "app/pages/centre/centre_form.h"

class QDateTimeEdit;

namespace laneward {

class OutageForm : public CentreRowForm<Outage> {
    Q_OBJECT

public:
    explicit OutageForm(Session& session, QWidget* parent = nullptr);

private:
    void build();
    void showFields();
    Outage blank() const override;
    void fill(const Outage& outage) override;
    Outage draft() const override;
    QString title() const override;
    QString deedName(const Outage& made) const override;
    std::vector<Finding> faults() const override;

    QComboBox* m_what = nullptr;  ///< lanes, or a machine by its id
    QLineEdit* m_lanes = nullptr;
    QDateTimeEdit* m_begin = nullptr;
    QCheckBox* m_open = nullptr;
    QDateTimeEdit* m_end = nullptr;
    QLineEdit* m_note = nullptr;
};

}  // namespace laneward
