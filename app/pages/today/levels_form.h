// What is in a machine now, as measured: also after filling, emptying, swapping or charging the pack.
//
// Volts and the emptied waste are judged while they are typed: what cannot be is said and not kept, what is hardly meant is said
// and kept.
#pragma once

#include "app/edits/session.h"
#include "core/season/pack_deeds.h"

#include <QWidget>

class QComboBox;
class QDoubleSpinBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace laneward {

class AmountBox;

/// All that was typed.
struct LevelsTyped {
    MachineLevels levels;
    std::optional<Poured> poured;        ///< when tanks were filled and somebody read how much it took
    std::optional<Microlitres> emptied;  ///< when the waste tank was emptied and somebody measured it
    PackNews pack;
};

class LevelsForm : public QWidget {
    Q_OBJECT

public:
    LevelsForm(Session& session, const Machine& machine, QWidget* parent = nullptr);

    /// Starts from what the records say is in the machine.
    void begin(const MachineLevels& levels);

Q_SIGNALS:
    void finished(const laneward::LevelsTyped& typed);
    void cancelled();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void buildVolts();
    void buildLevels();
    void buildPack();
    void buildPoured();
    void buildButtons();
    AmountBox* pouredBox(Microlitres most);
    void fillPackChoices();
    void showPoured(bool filled);
    void showEmptied(bool emptied);
    void fill();
    void emptyWaste();
    void choosePack(PackChange change);
    void judge();
    std::optional<double> typedEmptied() const;
    std::vector<Finding> voltsFound() const;
    std::vector<Finding> emptiedFound() const;
    std::optional<Poured> poured() const;
    PackNews packNews() const;
    int fullPack() const;
    void submit();

    Session& m_session;
    Machine m_machine;
    QFormLayout* m_form = nullptr;
    QLabel* m_voltsName = nullptr;
    QDoubleSpinBox* m_volts = nullptr;
    QComboBox* m_state = nullptr;  ///< of the volts; hidden where no pack is kept
    QLabel* m_voltsWords = nullptr;
    std::array<AmountBox*, conditionerSlots> m_conditioner{};
    AmountBox* m_cleaner = nullptr;
    AmountBox* m_waste = nullptr;
    QWidget* m_emptiedRow = nullptr;
    QLineEdit* m_emptied = nullptr;  ///< seen once the waste tank is said to be emptied
    QLabel* m_emptiedWords = nullptr;
    QSpinBox* m_lanesLeft = nullptr;
    QComboBox* m_pack = nullptr;                                     ///< what was done to it; hidden where no pack is kept
    std::array<AmountBox*, conditionerSlots> m_pouredConditioner{};  ///< seen once the tanks are said to be filled
    AmountBox* m_pouredCleaner = nullptr;
    bool m_wasEmptied = false;
};

}  // namespace laneward
