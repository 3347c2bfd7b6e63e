// The day's sheet as it will be printed. Printing or saving it confirms the day's jobs, so that the paper carries its plan
// version.
#pragma once

#include "app/edits/session.h"
#include "app/paper/sheet_painter.h"

#include <QWidget>

#include <memory>

class QLabel;
class QPrinter;
class QPrintPreviewWidget;
class QVBoxLayout;

namespace laneward {

class SheetView : public QWidget {
    Q_OBJECT

public:
    explicit SheetView(Session& session, QWidget* parent = nullptr);
    ~SheetView() override;

    void show(QDate day);
    /// Confirms and writes; says what went wrong by Session::problem.
    bool savePdf(const QString& path);

Q_SIGNALS:
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void buildPreview();
    void refresh();
    void print();
    void askWhere();
    bool confirm();
    PaperSize paper() const;

    Session& m_session;
    QDate m_day;
    JobSheet m_sheet;
    std::unique_ptr<QPrinter> m_printer;
    QVBoxLayout* m_column = nullptr;
    QLabel* m_state = nullptr;
    QPrintPreviewWidget* m_preview = nullptr;
};

}  // namespace laneward
