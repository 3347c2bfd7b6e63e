// Everything about one job: its steps with their times and cautions, what it takes, why it is where it is, and what it would cost
// to move it.
#pragma once

#include "core/documents/wording_jobs.h"

#include <QScrollArea>

class QLabel;
class QVBoxLayout;

namespace laneward {

class JobDetails : public QScrollArea {
    Q_OBJECT

public:
    explicit JobDetails(QWidget* parent = nullptr);

    /// `job` is an index into the sheet's jobs; none shows what to do first. `moves` are that job's.
    void show(const JobSheet& sheet, std::optional<size_t> job, const std::vector<JobMove>& moves, const Speech& speech);

private:
    void addSteps(const JobSheet& sheet, size_t job, const Speech& speech);
    void addReasons(const Job& job, const std::optional<double>& overflow, const Speech& speech);
    void addMoves(const std::vector<JobMove>& moves, const Speech& speech);
    void addTakes(const Job& job, const Speech& speech);
    void addLine(const QString& text, bool heading = false);
    void addCaution(const QString& text);

    QWidget* m_body = nullptr;
    QVBoxLayout* m_lines = nullptr;
};

}  // namespace laneward
