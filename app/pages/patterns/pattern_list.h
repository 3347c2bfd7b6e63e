// The centre's patterns: name, where it ends, what a lane takes. Retired ones stand last and say so.
#pragma once

#include "app/edits/session.h"

#include <QWidget>

class QLineEdit;
class QPushButton;
class QSortFilterProxyModel;
class QTableView;

namespace laneward {

class PatternListModel;

class PatternList : public QWidget {
    Q_OBJECT

public:
    explicit PatternList(Session& session, QWidget* parent = nullptr);

    void refresh();
    void select(const PatternId& id);
    PatternId current() const;

Q_SIGNALS:
    void chosen(const laneward::PatternId& id);

private:
    void buildTable();
    void buildButtons();
    const Pattern* currentPattern() const;
    void showButtons();
    void addNew();
    void duplicate();
    void retire();
    bool store(const QString& name, const std::optional<Pattern>& before, const Pattern& after);
    QString freeName(const QString& wanted) const;

    Session& m_session;
    PatternListModel* m_model = nullptr;
    QSortFilterProxyModel* m_sorted = nullptr;
    QTableView* m_table = nullptr;
    QLineEdit* m_filter = nullptr;
    QPushButton* m_new = nullptr;
    QPushButton* m_duplicate = nullptr;
    QPushButton* m_retire = nullptr;
};

}  // namespace laneward
