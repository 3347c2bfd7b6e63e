// One service item with its duties: what each is, when it falls due, its steps, parts and cautions. The duty that is chosen shows
// its fields; keeping the item keeps all of them as one edit. A duty that was ever recorded stays.
#pragma once

#include "app/edits/edit_form.h"

#include <array>

class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QSpinBox;

namespace laneward {

class MoneyBox;
class PartRows;

class ItemForm : public EditForm {
    Q_OBJECT

public:
    explicit ItemForm(Session& session, QWidget* parent = nullptr);

    void create(const MachineId& machine);
    /// `duty`: the one to begin with; the first when the item has none of that id.
    void edit(const ServiceItem& item, const DutyId& duty);
    ServiceItem draft() const;

    /// What is usually looked after on that machine, or in the centre; with fresh ids, and no parts.
    static std::vector<ServiceItem> templates(const Session& session, const MachineId& machine);

private:
    /// What is typed of a duty; dates as text, so that what cannot be read stays.
    struct Typed {
        Duty duty;
        QString dates;
    };

    void buildItem();
    void buildDuties();
    void buildWhen();
    void buildWork();
    void buildCosts();
    void connectFields();
    void take(const ServiceItem& item);
    void templateChosen();
    void fillDutyChoice();
    void showDuty(int index);
    void keepDuty();
    void edited();
    void addDuty();
    void takeDutyOut();
    void showFields();
    std::vector<Finding> faults() const override;
    bool store() override;
    bool isOther() const override;
    void reload() override;

    std::optional<ServiceItem> m_before;  ///< nothing for a new one
    ServiceItem m_loaded;                 ///< without its duties
    DutyId m_wanted;
    std::vector<Typed> m_duties;
    int m_duty = -1;  ///< the one that is shown
    bool m_showing = false;
    std::vector<ServiceItem> m_templates;

    QComboBox* m_template = nullptr;
    QLineEdit* m_name = nullptr;
    QComboBox* m_kind = nullptr;
    QLineEdit* m_note = nullptr;
    QComboBox* m_choice = nullptr;
    QPushButton* m_add = nullptr;
    QPushButton* m_out = nullptr;
    QLineEdit* m_dutyName = nullptr;
    QComboBox* m_dutyKind = nullptr;
    std::array<QDoubleSpinBox*, 5> m_every{};  ///< by MeterKind; 0 = not counted
    QLineEdit* m_dates = nullptr;
    QPlainTextEdit* m_steps = nullptr;
    QSpinBox* m_minutes = nullptr;
    QCheckBox* m_opensUp = nullptr;
    QComboBox* m_skill = nullptr;
    std::vector<QCheckBox*> m_cautions;
    PartRows* m_parts = nullptr;
    MoneyBox* m_planned = nullptr;
    MoneyBox* m_failed = nullptr;
};

/// 'Retire …' or 'Take … up again', as one undoable edit.
bool retire(Session& session, const ServiceItem& item);

}  // namespace laneward
