// Lanes or a machine out of service, from a time on, until another or until further notice.
#pragma once

#include "app/pages/centre/centre_form.h"

class QDateTimeEdit;

namespace laneward {

class OutageForm : public CentreForm {
    Q_OBJECT

public:
    explicit OutageForm(Session& session, QWidget* parent = nullptr);

    void create();
    void edit(const OutageId& outage);

private:
    void build();
    void showFields();
    const Outage* stored() const;
    Outage draft() const;
    std::vector<Finding> faults() const override;
    bool store() override;
    bool isOther() const override;
    void reload() override;

    bool m_isNew = false;
    Outage m_loaded;
    QComboBox* m_what = nullptr;  ///< lanes, or a machine by its id
    QLineEdit* m_lanes = nullptr;
    QDateTimeEdit* m_begin = nullptr;
    QCheckBox* m_open = nullptr;
    QDateTimeEdit* m_end = nullptr;
    QLineEdit* m_note = nullptr;
};

}  // namespace laneward
