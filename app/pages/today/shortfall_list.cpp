#include "app/pages/today/shortfall_list.h"

#include "app/edits/plain_label.h"
#include "core/documents/sheet_words.h"

#include <QFrame>
#include <QPushButton>
#include <QVBoxLayout>

namespace laneward {

ShortfallList::ShortfallList(QWidget* parent) : QWidget(parent), m_column(new QVBoxLayout(this)) {
    m_column->setContentsMargins(0, 0, 0, 0);
}

void ShortfallList::show(const std::vector<Shortfall>& shortfalls, const Speech& speech) {
    while (QLayoutItem* item = m_column->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    setVisible(!shortfalls.empty());
    if (shortfalls.empty()) return;
    m_column->addWidget(headingLabel(tr("! Not ready as asked"), this));
    for (const Shortfall& shortfall : shortfalls)
        m_column->addWidget(entry(shortfall, speech));
}

QWidget* ShortfallList::entry(const Shortfall& shortfall, const Speech& speech) {
    auto* frame = new QFrame(this);
    frame->setFrameShape(QFrame::StyledPanel);
    auto* column = new QVBoxLayout(frame);
    column->setContentsMargins(8, 6, 8, 6);
    QStringList lines{shortfallText(shortfall, speech)};
    lines += shortfallDetails(shortfall, speech);
    column->addWidget(proseLabel(lines.join(u'\n'), frame));
    auto* open = new QPushButton(tr("Show the event"), frame);
    open->setAccessibleName(tr("Show %1").arg(shown(shortfall.title)));
    const SeriesId series = shortfall.series;
    const LocalTime original = shortfall.original;
    connect(open, &QPushButton::clicked, this, [this, series, original] { Q_EMIT eventWanted(series, original); });
    column->addWidget(open, 0, Qt::AlignTrailing);
    return frame;
}

}  // namespace laneward
