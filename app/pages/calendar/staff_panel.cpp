#include "app/pages/calendar/staff_panel.h"

#include "app/edits/plain_label.h"
#include "app/models/panel_list.h"
#include "app/paper/staff_painter.h"
#include "core/documents/staff_words.h"
#include "core/documents/stock_words.h"

#include <QFileDialog>
#include <QKeyEvent>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QSaveFile>
#include <QStandardItemModel>
#include <QTableView>
#include <QVBoxLayout>

namespace laneward {

namespace {

StaffSheet sheetOf(const Session& session, const std::vector<StaffWeek>& weeks) {
    return {session.season().centre.facts.name, session.now(), weeks};
}

/// What a column is sorted by.
QVariant sortedBy(const StaffDay& day, int column) {
    const auto time = [](const std::optional<Instant>& t) { return qlonglong(t ? t->seconds : 0); };
    const QVariantList values{day.date.toJulianDay(),        time(day.first), time(day.last), qlonglong(day.bound.value),
                              qlonglong(day.overtime.value), day.outings};
    return values.value(column);
}

}  // namespace

StaffPanel::StaffPanel(Session& session, QWidget* parent) : QFrame(parent), m_session(session) { build(); }

void StaffPanel::build() {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("Staff hours"));
    setMinimumWidth(526);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 10, 12, 10);
    column->addWidget(headingLabel(tr("Staff hours"), this));
    column->addWidget(m_title = proseLabel({}, this));
    m_model = new QStandardItemModel(this);
    m_list = listOf(m_model, QStringLiteral("calendar/staff"), tr("staff-hours.csv"), m_session, this);
    m_list->setAccessibleName(tr("Staff hours by day"));
    setFocusProxy(m_list);
    column->addWidget(m_list, 1);
    m_total = headingLabel({}, this);
    m_total->setWordWrap(true);
    m_total->setAccessibleName(tr("In all"));
    column->addWidget(m_total);
    column->addWidget(proseLabel(staffNote(), this));
    buildFoot(column);
}

void StaffPanel::buildFoot(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    const auto button = [&](const QString& text, const char* name) {
        auto* made = new QPushButton(text, this);
        made->setObjectName(QLatin1StringView(name));
        made->setMinimumHeight(28);
        row->addWidget(made);
        return made;
    };
    connect(button(tr("&Print…"), "printStaff"), &QPushButton::clicked, this, &StaffPanel::askPrinter);
    connect(button(tr("P&DF…"), "staffPdf"), &QPushButton::clicked, this, [this] {
        if (const QString path = askWhere(tr("PDF (*.pdf)"), QStringLiteral("pdf")); !path.isEmpty()) savePdf(path);
    });
    connect(button(tr("CS&V…"), "staffCsv"), &QPushButton::clicked, this, [this] {
        if (const QString path = askWhere(tr("CSV (*.csv)"), QStringLiteral("csv")); !path.isEmpty()) saveCsv(path);
    });
    connect(button(tr("Close (Esc)"), "closeStaff"), &QPushButton::clicked, this, &StaffPanel::closeAsked);
    column->addLayout(row);
}

void StaffPanel::setDays(const DateRange& days) {
    m_days = days;
    fill();
}

void StaffPanel::fill() {
    const Speech speech = m_session.speech();
    const Plan& plan = m_session.planAtOnce(m_days);
    m_weeks = staffHours(m_session.season(), plan);
    m_title->setText(tr("%1 to %2", "dates").arg(dayText(m_days.first, speech), dayText(m_days.last, speech)));
    m_model->clear();
    m_model->setHorizontalHeaderLabels(staffHeader());
    Seconds bound;
    Seconds overtime;
    for (const StaffWeek& week : m_weeks) {
        bound += week.bound;
        overtime += week.overtime;
        for (const StaffDay& day : week.days) {
            QStringList cells = staffRow(day, speech);
            cells.front() = dayWithWeekday(day.date, speech);
            QList<QStandardItem*> row;
            for (int c = 0; c < cells.size(); ++c) {
                auto* item = new QStandardItem(cells[c]);
                item->setData(sortedBy(day, c), Qt::UserRole);
                if (c > 0) item->setTextAlignment(Qt::AlignTrailing | Qt::AlignVCenter);
                row << item;
            }
            m_model->appendRow(row);
        }
    }
    m_list->sortByColumn(0, Qt::AscendingOrder);
    fitColumns(*m_list);
    m_total->setText(overtime > Seconds{0}
                         ? tr("In all %1, of them %2 overtime").arg(durationText(bound, speech), durationText(overtime, speech))
                         : tr("In all %1, no overtime").arg(durationText(bound, speech)));
}

void StaffPanel::askPrinter() {
    QPrinter printer(QPrinter::HighResolution);
    prepare(printer, m_session.season().centre.facts.settings.letterPaper ? PaperSize::Letter : PaperSize::A4);
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() == QDialog::Accepted) print(printer);
}

bool StaffPanel::print(QPrinter& printer) {
    const bool printed = paintStaffHours(printer, sheetOf(m_session, m_weeks), m_session.speech()) > 0;
    if (printed)
        Q_EMIT m_session.said(tr("The staff hours are printed"));
    else
        Q_EMIT m_session.problem(tr("Nothing was printed: the printer cannot be painted on."));
    return printed;
}

QString StaffPanel::askWhere(const QString& filter, const QString& ending) {
    const QString name = tr("staff-hours-%1.%2", "date, ending").arg(m_days.first.toString(Qt::ISODate), ending);
    return QFileDialog::getSaveFileName(this, tr("Save the staff hours"), name, filter);
}

void StaffPanel::sayWhere(const QString& path) { Q_EMIT m_session.said(tr("The staff hours are in %1").arg(path)); }

bool StaffPanel::savePdf(const QString& path) {
    const bool letter = m_session.season().centre.facts.settings.letterPaper;
    const Outcome written =
        writeStaffHoursPdf(path, sheetOf(m_session, m_weeks), m_session.speech(), letter ? PaperSize::Letter : PaperSize::A4);
    if (written)
        sayWhere(path);
    else
        Q_EMIT m_session.problem(text(written.error(), m_session.speech()));
    return bool(written);
}

bool StaffPanel::saveCsv(const QString& path) {
    const QByteArray csv = staffCsv(m_weeks, m_session.speech());
    QSaveFile file(path);
    const bool saved = file.open(QIODevice::WriteOnly) && file.write(csv) == csv.size() && file.commit();
    if (saved)
        sayWhere(path);
    else
        Q_EMIT m_session.problem(tr("%1 could not be written; nothing was changed.").arg(path));
    return saved;
}

void StaffPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closeAsked();
    else
        QFrame::keyPressEvent(event);
}

}  // namespace laneward
