// What an event asks of its lanes: one row per group of lanes with the same demand.
#pragma once

#include "core/documents/wording.h"

#include <QFrame>

class QComboBox;
class QDoubleSpinBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace laneward {

class DemandRow : public QFrame {
    Q_OBJECT

public:
    DemandRow(const std::vector<Pattern>& patterns, QWidget* parent = nullptr);

    /// `event` are all lanes of the event: a row for all of them shows its field empty.
    void load(const SurfaceDemand& demand, const LaneSet& event);
    /// Errors as those of LaneSet::parse(). An empty field means all lanes of `event` that `named` does not contain.
    Result<SurfaceDemand> store(const LaneSet& event, const LaneSet& named) const;
    Result<LaneSet> namedLanes() const;
    void setProblem(const QString& words);

Q_SIGNALS:
    void edited();
    void removeAsked();

private:
    void buildFields(const std::vector<Pattern>& patterns);
    void buildLimits();
    void buildRemove();
    void connectFields();
    void showParts();

    QFormLayout* m_form;
    QLineEdit* m_lanes = nullptr;
    QComboBox* m_kind = nullptr;
    QComboBox* m_pattern = nullptr;
    QComboBox* m_least = nullptr;
    QDoubleSpinBox* m_age = nullptr;
    QDoubleSpinBox* m_play = nullptr;
    QLabel* m_problem = nullptr;
    SurfaceDemand m_loaded;  ///< so that times that the fields round stay exact when untouched
};

class DemandRows : public QWidget {
    Q_OBJECT

public:
    explicit DemandRows(QWidget* parent = nullptr);

    void load(const std::vector<SurfaceDemand>& demands, const LaneSet& event, const std::vector<Pattern>& patterns);
    /// Nothing, with the problem shown at its row, when a row cannot be read.
    std::optional<std::vector<SurfaceDemand>> store(const LaneSet& event, const Speech& speech);
    int count() const { return int(m_rows.size()); }
    DemandRow* row(int index) const { return m_rows[size_t(index)]; }

Q_SIGNALS:
    void edited();

private:
    DemandRow* addRow(const SurfaceDemand& demand, const LaneSet& event);
    void removeRow(DemandRow* row);

    QVBoxLayout* m_column;
    QPushButton* m_add;
    std::vector<DemandRow*> m_rows;
    std::vector<Pattern> m_patterns;
};

}  // namespace laneward
