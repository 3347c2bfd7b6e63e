// Does a machine still put out what its patterns say? Fills over nominal on control charts, signals in words with the runs that
// led to them, and a fault that can be written down.
#pragma once

#include "app/edits/session.h"
#include "app/pages/patterns/drift_plots.h"

#include <QWidget>

class QComboBox;
class QDateEdit;
class QLabel;
class QListWidget;
class QPushButton;
class QVBoxLayout;

namespace laneward {

class DriftPanel : public QWidget {
    Q_OBJECT

public:
    explicit DriftPanel(Session& session, QWidget* parent = nullptr);

    void refresh();  ///< at once when it is visible, else when it is shown; keeps what is being typed
    QString headline() const { return m_headline; }

Q_SIGNALS:
    void headlineChanged();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void buildChoices(QVBoxLayout* column);
    void buildBaseline(QVBoxLayout* column);
    QWidget* buildCharts();
    QWidget* buildSignals();
    bool load();
    void judgeAll();
    bool fillChoices();
    void fillProducts(int wanted);
    std::optional<Span> baselineOf(const MachineId& machine, int product) const;
    QString key(const MachineId& machine, int product) const;
    void keepBaseline();
    void showBaseline();
    const JudgedOutput* chosen() const;
    void showChosen(bool anew);
    void showChart();
    void showSignals(bool anew);
    const DriftSignal* chosenSignal() const;
    void offerFault();
    void goToSignal(int row);
    void showFill(int point);
    void listRuns(const std::vector<OperationId>& runs);
    void writeFault();
    bool isWritten(const DriftSignal& signal) const;
    void sayHeadline();
    size_t firstPoint(DriftChart chart) const;

    Session& m_session;
    DriftHistory m_history;
    RunsById m_runs;
    std::vector<JudgedOutput> m_outputs;
    bool m_stale = true;  ///< to be read again when it is shown
    QString m_headline;
    QString m_unread;
    bool m_filling = false;
    size_t m_fillShown = 0;  ///< index of the fill that is marked
    QWidget* m_body = nullptr;
    QComboBox* m_machine = nullptr;
    QComboBox* m_product = nullptr;
    QComboBox* m_kind = nullptr;
    QComboBox* m_span = nullptr;
    QDateEdit* m_from = nullptr;
    QDateEdit* m_to = nullptr;
    PointChart* m_chart = nullptr;
    QLabel* m_legend = nullptr;
    QLabel* m_fill = nullptr;
    QLabel* m_notes = nullptr;
    QListWidget* m_signals = nullptr;
    QLabel* m_runsTitle = nullptr;
    QListWidget* m_runList = nullptr;
    QPushButton* m_write = nullptr;
    QLabel* m_caution = nullptr;  ///< beside what a signal asks to check
};

}  // namespace laneward
