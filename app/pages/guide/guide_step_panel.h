// One step, large enough to read at arm's length: what to do, what to know, the blanks to write in, and the cautions beside it.
#pragma once

#include "core/documents/guide_blanks.h"

#include <QWidget>

#include <functional>

class QComboBox;
class QFrame;
class QGridLayout;
class QHBoxLayout;
class QLabel;
class QLineEdit;

namespace laneward {

/// What the panel shows.
struct GuideSight {
    QString state;  ///< "Step 3 of 17"
    QString title;
    QStringList details;
    QStringList cautions;
};

class GuideStepPanel : public QWidget {
    Q_OBJECT

public:
    explicit GuideStepPanel(QWidget* parent = nullptr);

    void show(const GuideSight& sight);
    struct Help {
        std::function<QString(const GuideBlank&)> expected;  ///< stands in a blank until something is typed
        std::function<QString(const GuideAnswer&)> advice;   ///< on what is typed, at once; empty = nothing to say
    };
    /// New blanks, empty.
    void ask(const std::vector<GuideBlank>& blanks, const Help& help, const Speech& speech);
    /// Those that are not empty; none when one cannot be, which is said and gets the focus.
    std::optional<std::vector<GuideAnswer>> answers(const Speech& speech);
    /// What is advised on what is typed now.
    QString advice() const;
    bool focusFirstBlank();

Q_SIGNALS:
    void entered();  ///< Enter in the last blank, Space in a number
    void backWanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    bool stateKey(QObject* watched, const QKeyEvent& key);

private:
    QLabel* large(double factor, bool bold);
    void buildCautions(QHBoxLayout* row);
    void addBlank(const GuideBlank& blank, const QString& expected, const Speech& speech);
    void addState(const GuideBlank& blank, int row, const QFont& font);
    void advise();
    std::optional<Finding> readBlank(size_t n, std::vector<GuideAnswer>& answers, const Speech& speech) const;

    QLabel* m_state = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_details = nullptr;
    QWidget* m_blankFields = nullptr;
    QGridLayout* m_grid = nullptr;
    QLabel* m_problem = nullptr;
    QLabel* m_advice = nullptr;
    QFrame* m_cautionFrame = nullptr;
    QLabel* m_cautions = nullptr;
    std::vector<GuideBlank> m_blanks;
    std::vector<QLineEdit*> m_fields;
    std::vector<QComboBox*> m_states;  ///< beside each field; null = it has none
    Help m_help;
    std::optional<Speech> m_speech;
};

}  // namespace laneward
