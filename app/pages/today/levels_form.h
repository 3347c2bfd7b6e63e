// What is in a machine now, as measured: also after filling, emptying or swapping the pack.
#pragma once

#include "app/edits/session.h"

#include <QWidget>

class QDoubleSpinBox;
class QFormLayout;
class QSpinBox;

namespace laneward {

class AmountBox;

class LevelsForm : public QWidget {
    Q_OBJECT

public:
    LevelsForm(Session& session, const Machine& machine, QWidget* parent = nullptr);

    /// Starts from what the records say is in the machine.
    void begin(const MachineLevels& levels);

Q_SIGNALS:
    /// `poured` when tanks were filled and somebody read how much it took.
    void finished(const laneward::MachineLevels& levels, const std::optional<laneward::Poured>& poured);
    void cancelled();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void buildFields(QFormLayout* form);
    void buildPoured(QFormLayout* form);
    AmountBox* pouredBox(Microlitres most);
    void showPoured(bool filled);
    void fill();
    std::optional<Poured> poured() const;
    void buildButtons(QFormLayout* form);
    void submit();

    Session& m_session;
    Machine m_machine;
    QDoubleSpinBox* m_volts = nullptr;
    std::array<AmountBox*, conditionerSlots> m_conditioner{};
    AmountBox* m_cleaner = nullptr;
    AmountBox* m_waste = nullptr;
    QSpinBox* m_lanesLeft = nullptr;
    QFormLayout* m_form = nullptr;
    std::array<AmountBox*, conditionerSlots> m_pouredConditioner{};  ///< seen once the tanks are said to be filled
    AmountBox* m_pouredCleaner = nullptr;
};

}  // namespace laneward
