// Typing a tape reading, or correcting one: what was run, where it was read, and 39 boards. Nothing that cannot be computed or
// stored leaves the form; what was typed stays until it is mended.
#pragma once

#include "app/edits/session.h"

#include <QFrame>

class QComboBox;
class QDateTimeEdit;
class QGridLayout;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace laneward {

class BoardModel;
class CellTable;
class LengthBox;
class ReadingChart;

class ReadingForm : public QFrame {
    Q_OBJECT

public:
    explicit ReadingForm(Session& session, QWidget* parent = nullptr);

    /// For a new reading of a pattern; `versions` are its own, by edition. Machine, lane of the run and version are taken from
    /// the runs until somebody types them.
    void begin(const Pattern& pattern, std::vector<PatternVersion> versions);
    /// To replace a stored reading.
    void correct(const TapeReading& reading, const Pattern& pattern, std::vector<PatternVersion> versions);

Q_SIGNALS:
    void finished(const TapeReading& reading);
    void cancelled();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void buildFields(QGridLayout* grid);
    void buildBoards(QGridLayout* grid);
    void buildButtons(QGridLayout* grid);
    void fillChoices(const Pattern& pattern);
    void guess();
    void recompute();
    void submit();
    TapeReading reading() const;
    QString problemOf(const TapeReading& reading) const;
    Micrometres carry() const;

    Session& m_session;
    PatternId m_pattern;
    std::vector<PatternVersion> m_versions;
    std::optional<OperationId> m_corrects;
    bool m_guesses = true;
    bool m_filling = false;
    QLabel* m_title = nullptr;
    QSpinBox* m_lane = nullptr;
    QDateTimeEdit* m_at = nullptr;
    QComboBox* m_machine = nullptr;
    LengthBox* m_distance = nullptr;
    QSpinBox* m_laneOfRun = nullptr;
    QComboBox* m_version = nullptr;
    QLineEdit* m_note = nullptr;
    BoardModel* m_boards = nullptr;
    CellTable* m_table = nullptr;
    ReadingChart* m_chart = nullptr;
    QLabel* m_problem = nullptr;
};

}  // namespace laneward
