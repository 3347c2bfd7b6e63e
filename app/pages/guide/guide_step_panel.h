// One step, large enough to read at arm's length: what to do, what to know, the blanks to write in, and the cautions beside it.
#pragma once

#include "core/documents/guide_blanks.h"

#include <QWidget>

#include <functional>

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
    /// New blanks, empty; `expected` stands in each until something is typed.
    void ask(const std::vector<GuideBlank>& blanks, const std::function<QString(const GuideBlank&)>& expected,
             const Speech& speech);
    /// Those that are not empty; none when one cannot be, which is said and gets the focus.
    std::optional<std::vector<GuideAnswer>> answers(const Speech& speech);
    bool focusFirstBlank();

Q_SIGNALS:
    void entered();  ///< Enter in the last blank, Space in a number
    void backWanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QLabel* large(double factor, bool bold);
    void buildCautions(QHBoxLayout* row);
    void addBlank(const GuideBlank& blank, const QString& expected, const Speech& speech);
    std::optional<Finding> readBlank(size_t n, std::vector<GuideAnswer>& answers, const Speech& speech) const;

    QLabel* m_state = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_details = nullptr;
    QWidget* m_blankFields = nullptr;
    QGridLayout* m_grid = nullptr;
    QLabel* m_problem = nullptr;
    QFrame* m_cautionFrame = nullptr;
    QLabel* m_cautions = nullptr;
    std::vector<GuideBlank> m_blanks;
    std::vector<QLineEdit*> m_fields;
};

}  // namespace laneward
