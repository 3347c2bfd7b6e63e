// How true is each lane? The newest measured geometry against its tolerance, and how it moves over the years.
#pragma once

#include "app/edits/session.h"
#include "app/pages/patterns/geometry_model.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QStackedLayout;
class QTableView;

namespace laneward {

class InspectionForm;
class PointChart;

class GeometryPanel : public QWidget {
    Q_OBJECT

public:
    explicit GeometryPanel(Session& session, QWidget* parent = nullptr);

    void refresh();  ///< at once when it is visible, else when it is shown; keeps what is being typed
    QString headline() const { return m_headline; }

Q_SIGNALS:
    void headlineChanged();

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* buildList();
    QWidget* buildTrend();
    int chosenLane() const;  ///< 0 = none
    void showTrend();
    void showPoint(int point);
    const Inspection* pointed() const;
    void typeInspection();
    void correctPointed();
    void withdrawPointed();
    void keep(const Inspection& inspection);
    void leaveForm();
    void sayHeadline();

    Session& m_session;
    std::vector<Inspection> m_inspections;  ///< those that stand, by time
    std::vector<WorstDeparture> m_trend;    ///< of the lane and feature shown, by time
    GeometryFeature m_feature = GeometryFeature::Tilt;
    bool m_stale = true;  ///< to be read again when it is shown
    QString m_headline;
    QString m_unread;
    QStackedLayout* m_pages;
    QWidget* m_overview = nullptr;
    QLabel* m_empty = nullptr;
    GeometryModel* m_model = nullptr;
    QTableView* m_list = nullptr;
    QLabel* m_tolerance = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_legend = nullptr;
    PointChart* m_chart = nullptr;
    QLabel* m_point = nullptr;
    QPushButton* m_type = nullptr;
    QPushButton* m_correct = nullptr;
    QPushButton* m_withdraw = nullptr;
    InspectionForm* m_form = nullptr;
};

}  // namespace laneward
