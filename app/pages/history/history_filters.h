// What is looked for in the history: words as one types, and what narrows them, in two short rows.
#pragma once

#include "app/edits/session.h"
#include "core/documents/history_index.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QDateEdit;
class QHBoxLayout;
class QLineEdit;
class QSpinBox;

namespace laneward {

class HistoryFilters : public QWidget {
    Q_OBJECT

public:
    explicit HistoryFilters(Session& session, QWidget* parent = nullptr);

    /// Fills the choices from the session; what is chosen stays.
    void refresh();
    HistoryQuery query() const;
    QDate from() const;
    DateRange days() const;
    /// Whether anything but days narrows the list.
    bool isNarrowed() const;
    void clear();
    /// Nothing narrows the list but its days, and what was corrected is listed too.
    void listEverything();
    /// The days listed reach as far as `day`.
    void reach(QDate day);
    QHBoxLayout* firstRow() const { return m_first; }  ///< for buttons behind the search

Q_SIGNALS:
    void changed();
    void leftForList();  ///< arrow down in the search

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void buildSearch(QHBoxLayout* row);
    void buildChoices(QHBoxLayout* row);
    void buildDays(QHBoxLayout* row);
    QComboBox* choice(QHBoxLayout* row, const char* id, const QString& spoken, int letters);
    void follow();

    Session& m_session;
    QHBoxLayout* m_first = nullptr;
    QLineEdit* m_text = nullptr;
    QCheckBox* m_corrected = nullptr;
    QComboBox* m_kind = nullptr;
    QComboBox* m_machine = nullptr;
    QComboBox* m_item = nullptr;
    QSpinBox* m_lane = nullptr;
    QComboBox* m_person = nullptr;
    QComboBox* m_product = nullptr;
    QDateEdit* m_from = nullptr;
    QDateEdit* m_to = nullptr;
    bool m_filling = false;
    bool m_followsToday = true;  ///< the last day was not chosen
    QDate m_lastToday;
};

}  // namespace laneward
