// What will not be ready as asked, why, and what would help.
#pragma once

#include "app/edits/session.h"

#include <QWidget>

class QVBoxLayout;

namespace laneward {

class ShortfallList : public QWidget {
    Q_OBJECT

public:
    explicit ShortfallList(QWidget* parent = nullptr);

    void show(const std::vector<Shortfall>& shortfalls, const Speech& speech);

Q_SIGNALS:
    void eventWanted(const SeriesId& series, const LocalTime& original);

private:
    QWidget* entry(const Shortfall& shortfall, const Speech& speech);

    QVBoxLayout* m_column = nullptr;
};

}  // namespace laneward
