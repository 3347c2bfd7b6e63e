#include "app/pages/patterns/geometry_panel.h"

#include "app/edits/plain_label.h"
#include "app/models/panel_list.h"
#include "app/pages/patterns/inspection_form.h"
#include "app/pages/patterns/point_chart.h"
#include "core/documents/film_words.h"

#include <QHeaderView>
#include <QPushButton>
#include <QSplitter>
#include <QStackedLayout>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

GeometryPanel::GeometryPanel(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_pages(new QStackedLayout(this)) {
    auto* splitter = new QSplitter(Qt::Horizontal, this);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(buildList());
    splitter->addWidget(buildTrend());
    splitter->setStretchFactor(0, 5);
    splitter->setStretchFactor(1, 4);
    splitter->setSizes({600, 480});
    m_pages->addWidget(m_overview = splitter);
    m_pages->addWidget(m_form = new InspectionForm(session, this));
    connect(m_form, &InspectionForm::finished, this, &GeometryPanel::keep);
    connect(m_form, &InspectionForm::cancelled, this, &GeometryPanel::leaveForm);
}

QWidget* GeometryPanel::buildList() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    row->addWidget(m_type = new QPushButton(tr("&Type an inspection"), side));
    row->addStretch();
    column->addLayout(row);
    column->addWidget(m_empty = proseLabel({}, side));
    m_model = new GeometryModel(this);
    m_list = listOf(m_model, "patterns/geometry", tr("geometry.csv"), m_session, side);
    m_list->setObjectName("geometry");
    m_list->setAccessibleName(tr("Worst departure of each lane and feature"));
    m_list->setSelectionBehavior(QAbstractItemView::SelectItems);
    m_list->sortByColumn(GeometryModel::Lane, Qt::AscendingOrder);
    column->addWidget(m_list, 1);
    column->addWidget(m_tolerance = proseLabel({}, side));
    connect(m_type, &QPushButton::clicked, this, &GeometryPanel::typeInspection);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &GeometryPanel::showTrend);
    return side;
}

QWidget* GeometryPanel::buildTrend() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(8, 0, 0, 0);
    column->addWidget(m_title = headingLabel({}, side));
    column->addWidget(m_legend = proseLabel(tr("◆ beyond the tolerance   ● within   – – tolerance"), side));
    column->addWidget(m_chart = new PointChart(side), 1);
    m_chart->setAccessibleName(tr("Worst departure over the years; arrow keys walk from inspection to inspection"));
    column->addWidget(m_point = proseLabel({}, side));
    auto* row = new QHBoxLayout;
    row->addWidget(m_correct = new QPushButton(tr("&Correct this inspection"), side));
    row->addWidget(m_withdraw = new QPushButton(tr("&Withdraw it"), side));
    row->addStretch();
    column->addLayout(row);
    column->addStretch(0);
    connect(m_chart, &PointChart::pointChosen, this, &GeometryPanel::showPoint);
    connect(m_correct, &QPushButton::clicked, this, &GeometryPanel::correctPointed);
    connect(m_withdraw, &QPushButton::clicked, this, &GeometryPanel::withdrawPointed);
    return side;
}

void GeometryPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) refresh();
}

void GeometryPanel::refresh() {
    m_stale = !isVisible();
    if (m_stale) return;
    m_unread.clear();
    Result<std::vector<Inspection>> read = m_session.store().inspections(allRecords);
    if (!read) m_unread = text(read.error(), m_session.speech());
    m_inspections = read ? standing(*std::move(read)) : std::vector<Inspection>{};
    std::stable_sort(m_inspections.begin(), m_inspections.end(),
                     [](const Inspection& a, const Inspection& b) { return a.at < b.at; });
    const int lane = chosenLane();
    const bool fresh = lane == 0;
    const int column = fresh ? 0 : m_list->currentIndex().column();
    m_model->show(m_session.season().centre.facts.lanes, m_inspections, m_session.speech());
    if (fresh) fitColumns(*m_list);
    // At first the largest departure of all.
    int row = lane - 1;
    int place = column;
    std::int64_t largest = -1;
    for (int r = 0; fresh && r < m_model->rowCount(); ++r) {
        for (const GeometryFeature feature : allFeatures) {
            const auto& worst = m_model->worst(r, feature);
            if (!worst || std::abs(worst->departure.value) <= largest) continue;
            largest = std::abs(worst->departure.value);
            row = r;
            place = GeometryModel::FirstFeature + int(feature);
        }
    }
    if (fresh && row < 0) row = m_model->rowCount() > 0 ? 0 : -1;
    if (row >= 0 && row < m_model->rowCount()) {
        chooseRow(*m_list, row);
        m_list->setCurrentIndex(m_list->currentIndex().siblingAtColumn(place));
    }
    m_empty->setVisible(m_inspections.empty());
    m_empty->setText(m_unread.isEmpty()
                         ? tr("No lane has been inspected yet. Measure a lane at a few distances, then type the inspection "
                              "here; each further one adds to its trend.")
                         : tr("The inspections could not be read: %1").arg(m_unread));
    m_type->setEnabled(!m_session.isReadOnly() && m_session.season().centre.facts.lanes > 0);
    showTrend();
    sayHeadline();
}

int GeometryPanel::chosenLane() const { return chosenRow(*m_list) + 1; }

void GeometryPanel::showTrend() {
    const Speech speech = m_session.speech();
    const int lane = chosenLane();
    m_feature = GeometryModel::featureOf(m_list->currentIndex().column()).value_or(m_feature);
    const GeometryTolerance& tolerance = toleranceOf(m_feature);
    m_tolerance->setText(
        tr("%1: %2. Status: %3. Source: %4")
            .arg(text(m_feature), nameOf(tolerance.check.id), statusOf(tolerance.check), sourceOf(tolerance.check)));
    m_title->setText(lane ? tr("Lane %1: %2").arg(speech.locale.toString(lane), text(m_feature)) : QString());
    m_trend.clear();
    for (const Inspection& inspection : m_inspections) {
        const std::optional<WorstDeparture> worst = inspection.lane == lane ? worstOf(inspection, m_feature) : std::nullopt;
        if (worst) m_trend.push_back(*worst);
    }
    ChartContent content;
    content.decimals = departureDecimals(speech.units);
    content.unit = speech.units == UnitSystem::Metric ? tr("departure, mm") : tr("departure, in");
    ChartLine values;
    for (const WorstDeparture& worst : m_trend) {
        const double x = wallTime(worst.at, speech.zone);
        const double y = departureNumber(worst.departure, speech.units);
        const QString state = worst.holds ? tr("within the tolerance") : tr("beyond the tolerance");
        content.points.push_back({x, y, worst.holds ? PointMark::Plain : PointMark::Signal,
                                  tr("%1: at worst %2 at %3, %4")
                                      .arg(dateTimeText(worst.at, speech), departureText(worst.departure, speech),
                                           lengthText(worst.distance, speech), state)});
        values.points.append({x, y});
    }
    if (!m_trend.empty()) {
        content.lines.push_back(values);
        const double limit = departureNumber(tolerance.most, speech.units);
        const double begin = content.points.front().x;
        const double end = content.points.back().x;
        content.lines.push_back({LineLook::Centre, {{begin, 0}, {end, 0}}});
        for (const double y : {limit, -limit})
            content.lines.push_back({LineLook::Limit, {{begin, y}, {end, y}}});
    }
    m_chart->show(std::move(content), speech.locale);
    m_chart->setVisible(!m_trend.empty());
    m_legend->setVisible(!m_trend.empty());
    m_chart->setCurrent(-1);
    m_chart->setCurrent(m_chart->pointCount() - 1);
    showPoint(m_chart->current());
}

void GeometryPanel::showPoint(int point) {
    const bool is = point >= 0 && size_t(point) < m_trend.size();
    if (is)
        m_point->setText(m_chart->accessibleDescription());
    else
        m_point->setText(chosenLane() ? tr("This was never measured on this lane.") : QString());
    for (QPushButton* button : {m_correct, m_withdraw})
        button->setEnabled(is && !m_session.isReadOnly());
}

const Inspection* GeometryPanel::pointed() const {
    const int point = m_chart->current();
    if (point < 0 || size_t(point) >= m_trend.size()) return nullptr;
    const auto found = std::find_if(m_inspections.begin(), m_inspections.end(),
                                    [&](const Inspection& i) { return i.id == m_trend[size_t(point)].inspection; });
    return found == m_inspections.end() ? nullptr : &*found;
}

void GeometryPanel::typeInspection() {
    m_pages->setCurrentWidget(m_form);
    m_form->begin(std::max(1, chosenLane()));
}

void GeometryPanel::correctPointed() {
    const Inspection* inspection = pointed();
    if (!inspection) return;
    m_pages->setCurrentWidget(m_form);
    m_form->correct(*inspection);
}

void GeometryPanel::withdrawPointed() {
    const Inspection* inspection = pointed();
    if (!inspection) return;
    const Speech speech = m_session.speech();
    Inspection withdrawal = *inspection;
    withdrawal.corrects = inspection->id;
    withdrawal.id = {};
    withdrawal.person = {};
    withdrawal.values.clear();
    const QString name = tr("Withdraw the inspection of lane %1, %2")
                             .arg(speech.locale.toString(inspection->lane), dateTimeText(inspection->at, speech));
    m_session.record(name, {withdrawal});
}

void GeometryPanel::keep(const Inspection& inspection) {
    const QString lane = m_session.speech().locale.toString(inspection.lane);
    const QString name =
        inspection.corrects ? tr("Correct an inspection of lane %1").arg(lane) : tr("Inspection of lane %1").arg(lane);
    if (m_session.record(name, {inspection})) leaveForm();
}

void GeometryPanel::leaveForm() {
    m_pages->setCurrentWidget(m_overview);
    m_list->setFocus();
}

void GeometryPanel::sayHeadline() {
    const Speech speech = m_session.speech();
    int beyond = 0;
    int inspected = 0;
    QString worstLine;
    std::int64_t largest = -1;
    for (int row = 0; row < m_model->rowCount(); ++row) {
        bool lane = false;
        bool bad = false;
        for (const GeometryFeature feature : allFeatures) {
            const auto& worst = m_model->worst(row, feature);
            lane |= worst.has_value();
            if (!worst || worst->holds) continue;
            bad = true;
            if (std::abs(worst->departure.value) <= largest) continue;
            largest = std::abs(worst->departure.value);
            worstLine =
                tr("lane %1, %2 %3").arg(speech.locale.toString(row + 1), text(feature), departureText(worst->departure, speech));
        }
        inspected += lane;
        beyond += bad;
    }
    QString line = tr("All %n inspected lane(s) are within the tolerance", nullptr, inspected);
    if (beyond > 0) line = tr("%n lane(s) beyond the tolerance, worst: %1", nullptr, beyond).arg(worstLine);
    if (inspected == 0) line = tr("No lane has been inspected yet");
    if (line == m_headline) return;
    m_headline = line;
    Q_EMIT headlineChanged();
}

}  // namespace laneward
