// Chooses a day and a level: previous, today, next, the date itself, and one button per level.
//
//     DateBar bar({tr("Month"), tr("Week"), tr("Day")});
//     bar.setDay(today);
#pragma once

#include <QDate>
#include <QWidget>

class QButtonGroup;
class QDateEdit;
class QHBoxLayout;
class QLocale;
class QToolButton;

namespace laneward {

class DateBar : public QWidget {
    Q_OBJECT

public:
    explicit DateBar(const QStringList& levels, QWidget* parent = nullptr);

    QDate day() const;
    void setDay(QDate day);  ///< without a signal
    int level() const;
    void setLevel(int level);  ///< without a signal
    void setToday(QDate today) { m_today = today; }
    void setSpeechLocale(const QLocale& locale);
    /// Buttons and labels that belong to the page, behind the levels.
    void addWidget(QWidget* widget);

Q_SIGNALS:
    void dayChosen(QDate day);
    void stepAsked(int direction);  ///< -1 or 1: the page knows how far a step goes
    void levelChosen(int level);

private:
    void buildDay();
    void buildLevels(const QStringList& levels);
    QToolButton* button(const QString& text, const QString& name);

    QHBoxLayout* m_row;
    QDateEdit* m_edit = nullptr;
    QButtonGroup* m_levels = nullptr;
    QDate m_today;
};

}  // namespace laneward
