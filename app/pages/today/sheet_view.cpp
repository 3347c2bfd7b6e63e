#include "app/pages/today/sheet_view.h"

#include "app/edits/plain_label.h"

#include <QFileDialog>
#include <QKeyEvent>
#include <QPrintDialog>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QPushButton>
#include <QVBoxLayout>

namespace laneward {

SheetView::SheetView(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    build();
    connect(&session, &Session::changed, this, [this] {
        if (isVisible()) refresh();
    });
}

SheetView::~SheetView() {
    delete m_preview;  // before the printer it draws on
}

void SheetView::build() {
    m_column = new QVBoxLayout(this);
    auto* bar = new QHBoxLayout;
    m_state = proseLabel({}, this);
    bar->addWidget(m_state, 1);
    auto* printButton = new QPushButton(tr("&Print…"), this);
    printButton->setObjectName("printSheet");
    auto* pdf = new QPushButton(tr("Save as P&DF…"), this);
    pdf->setObjectName("saveSheet");
    auto* close = new QPushButton(tr("&Back to the page"), this);
    close->setObjectName("closeSheet");
    for (QPushButton* button : {printButton, pdf, close})
        bar->addWidget(button);
    m_column->addLayout(bar);
    connect(printButton, &QPushButton::clicked, this, &SheetView::print);
    connect(pdf, &QPushButton::clicked, this, &SheetView::askWhere);
    connect(close, &QPushButton::clicked, this, &SheetView::closed);
}

/// Looking for printers takes a moment, so it waits until a sheet is asked for.
void SheetView::buildPreview() {
    if (m_preview) return;
    m_printer = std::make_unique<QPrinter>(QPrinter::HighResolution);
    prepare(*m_printer, paper());
    m_preview = new QPrintPreviewWidget(m_printer.get(), this);
    m_preview->setAccessibleName(tr("The sheet as it will be printed"));
    connect(m_preview, &QPrintPreviewWidget::paintRequested, this,
            [this](QPrinter* printer) { paintSheet(*printer, m_sheet, m_session.speech()); });
    m_preview->fitToWidth();
    m_column->addWidget(m_preview, 1);
}

PaperSize SheetView::paper() const {
    return m_session.season().centre.facts.settings.letterPaper ? PaperSize::Letter : PaperSize::A4;
}

void SheetView::show(QDate day) {
    m_day = day;
    buildPreview();
    refresh();
    m_preview->setFocus();
}

void SheetView::refresh() {
    m_sheet = jobSheet(m_session.season(), m_session.planOf(m_day), m_day, m_session.now());
    const Speech speech = m_session.speech();
    m_state->setText(
        m_sheet.planVersion == 0
            ? tr("Sheet of %1. Printing it confirms its jobs.").arg(dayText(m_day, speech))
            : tr("Sheet of %1, plan version %2.").arg(dayText(m_day, speech), speech.locale.toString(m_sheet.planVersion)));
    m_preview->updatePreview();
}

bool SheetView::confirm() {
    if (m_session.isReadOnly()) return true;
    const bool anything =
        std::any_of(m_sheet.jobs.begin(), m_sheet.jobs.end(), [](const Job& job) { return job.state == JobState::Proposed; });
    if (anything && m_session.confirmDay(m_day) == 0) return false;
    refresh();
    return true;
}

void SheetView::print() {
    QPrintDialog dialog(m_printer.get(), this);
    if (dialog.exec() != QDialog::Accepted || !confirm()) return;
    m_preview->print();
}

void SheetView::askWhere() {
    const QString name = tr("sheet-%1.pdf", "file name").arg(m_day.toString(Qt::ISODate));
    const QString path = QFileDialog::getSaveFileName(this, tr("Save the sheet"), name, tr("PDF (*.pdf)"));
    if (!path.isEmpty()) savePdf(path);
}

bool SheetView::savePdf(const QString& path) {
    if (!confirm()) return false;
    if (const Outcome written = writeSheetPdf(path, m_sheet, m_session.speech(), paper()); !written) {
        Q_EMIT m_session.problem(text(written.error(), m_session.speech()));
        return false;
    }
    Q_EMIT m_session.said(tr("The sheet is in %1").arg(path));
    return true;
}

void SheetView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT closed();
    } else {
        QWidget::keyPressEvent(event);
    }
}

}  // namespace laneward
