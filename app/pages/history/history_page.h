// What was done: everything that was recorded in one list, searched as one types, added up, printed and saved.
#pragma once

#include "app/edits/page.h"
#include "app/pages/history/history_reader.h"

class QLabel;
class QPrinter;
class QPushButton;
class QSplitter;
class QTableView;
class QVBoxLayout;

namespace laneward {

class BusyBar;
class HistoryFilters;
class HistoryModel;
class HistoryPanel;
struct HistorySheet;

class HistoryPage : public Page {
    Q_OBJECT

public:
    explicit HistoryPage(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("History"); }
    QString iconName() const override { return QStringLiteral("history"); }
    QString question() const override { return tr("What was done?"); }
    QString headline() const override { return m_headline; }
    void refresh() override;
    bool isBusy() const { return m_reader.isBusy(); }

    bool print(QPrinter& printer);
    bool savePdf(const QString& path);
    bool saveCsv(const QString& path);

protected:
    void hideEvent(QHideEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build() override;
    void buildTools();
    void buildBusy(QVBoxLayout* column);
    void buildList(QVBoxLayout* column);
    void fitList();
    void fitWords();
    void read();
    void stop();
    void take(const std::shared_ptr<const HistoryReading>& reading);
    void takeFailure(const Error& why);
    void follow();  ///< other things are looked for
    void find();
    void say();
    void showEmpty();
    void openDetails();
    void closeDetails();
    void showChosen();
    void goTo(const OperationId& id);
    QByteArray currency() const;
    HistorySheet sheet() const;
    std::optional<HistorySheet> sheetForPaper();
    QString askWhere(const QString& filter, const QString& ending);
    bool write(const QByteArray& csv, const QString& path);

    HistoryReader m_reader;
    std::shared_ptr<const HistoryReading> m_reading;
    QString m_headline;
    QDate m_from;  ///< asked for last
    HistoryFilters* m_filters = nullptr;
    HistoryModel* m_model = nullptr;
    QTableView* m_list = nullptr;
    QSplitter* m_splitter = nullptr;
    HistoryPanel* m_panel = nullptr;
    QLabel* m_empty = nullptr;
    QPushButton* m_clear = nullptr;
    QLabel* m_totals = nullptr;
    QLabel* m_figures = nullptr;
    BusyBar* m_busy = nullptr;
    bool m_showing = false;  ///< the list is being filled
};

}  // namespace laneward
