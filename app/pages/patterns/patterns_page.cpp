#include "app/pages/patterns/patterns_page.h"

#include "app/pages/patterns/drift_panel.h"
#include "app/pages/patterns/film_panel.h"
#include "app/pages/patterns/geometry_panel.h"
#include "app/pages/patterns/pattern_editor.h"
#include "app/pages/patterns/pattern_list.h"
#include "app/pages/patterns/pattern_paper.h"
#include "app/pages/patterns/readings_panel.h"

#include <QPrintDialog>
#include <QPrinter>
#include <QSplitter>
#include <QTabWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

PatternsPage::PatternsPage(Session& session, QWidget* parent) : Page(session, parent) {}

void PatternsPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    auto* split = new QSplitter(Qt::Horizontal, this);
    m_list = new PatternList(session(), split);
    m_tabs = new QTabWidget(split);
    m_tabs->setDocumentMode(true);
    split->setStretchFactor(0, 0);
    split->setStretchFactor(1, 1);
    split->setSizes({215, 925});
    split->setChildrenCollapsible(false);
    column->addWidget(split);
    buildRecipe();
    buildMeasured();
    connect(m_list, &PatternList::chosen, this, &PatternsPage::choose);
    connect(m_tabs, &QTabWidget::currentChanged, this, &PatternsPage::showTab);
}

void PatternsPage::buildRecipe() {
    m_recipe = new QSplitter(Qt::Horizontal, m_tabs);
    m_editor = new PatternEditor(session(), m_recipe);
    m_film = new FilmPanel(session(), m_recipe);
    m_recipe->setStretchFactor(0, 1);
    m_recipe->setStretchFactor(1, 1);
    m_recipe->setSizes({455, 470});
    m_recipe->setChildrenCollapsible(false);
    m_tabs->addTab(m_recipe, tr("Recipe and film"));
    connect(m_editor, &PatternEditor::edited, this, [this] {
        m_film->showPattern(m_editor->shownPattern());
        say();
    });
    connect(m_film, &FilmPanel::printAsked, this, &PatternsPage::print);
}

void PatternsPage::buildMeasured() {
    m_readings = new ReadingsPanel(session(), m_tabs);
    m_drift = new DriftPanel(session(), m_tabs);
    m_geometry = new GeometryPanel(session(), m_tabs);
    m_tabs->addTab(m_readings, tr("Tape readings"));
    m_tabs->addTab(m_drift, tr("Machine output"));
    m_tabs->addTab(m_geometry, tr("Lane surface"));
    connect(m_readings, &ReadingsPanel::headlineChanged, this, &PatternsPage::say);
    connect(m_drift, &DriftPanel::headlineChanged, this, &PatternsPage::say);
    connect(m_geometry, &GeometryPanel::headlineChanged, this, &PatternsPage::say);
}

/// Machines and lanes have no pattern to be chosen.
void PatternsPage::showTab(int tab) {
    QWidget* shown = m_tabs->widget(tab);
    m_list->setVisible(shown == m_recipe || shown == m_readings);
    say();
}

void PatternsPage::refresh() {
    wake();
    m_list->refresh();
    const Pattern* pattern = findPattern(session().season().patterns, m_list->current());
    if (pattern && pattern->id != m_pattern) choose(pattern->id);
    m_editor->refresh();
    m_film->refresh();
    m_readings->refresh();
    m_drift->refresh();
    m_geometry->refresh();
    say();
}

void PatternsPage::choose(const PatternId& id) {
    const Pattern* pattern = findPattern(session().season().patterns, id);
    if (!pattern || id == m_pattern) return;
    m_pattern = id;
    m_editor->show(*pattern);
    m_readings->showPattern(id);
    say();
}

void PatternsPage::showPattern(const PatternId& pattern) {
    wake();
    m_tabs->setCurrentWidget(m_recipe);
    m_list->select(pattern);
}

void PatternsPage::say() {
    const QWidget* tab = m_tabs->currentWidget();
    const QString before = m_headline;
    if (tab == m_readings) {
        m_headline = m_readings->headline();
    } else if (tab == m_drift) {
        m_headline = m_drift->headline();
    } else if (tab == m_geometry) {
        m_headline = m_geometry->headline();
    } else if (const std::optional<Pattern> pattern = m_editor->shownPattern()) {
        const Speech speech = session().speech();
        const Volumes v = volumes(*pattern);
        m_headline = tr("%1 lays %2 on a lane, to %3.", "pattern, amount, distance")
                         .arg(shown(pattern->name), amountText(v.lane, speech), lengthText(pattern->end, speech));
        if (m_editor->isChanged()) m_headline += QLatin1Char(' ') + tr("What you changed is not kept yet.");
    } else {
        m_headline = tr("There is no pattern yet: begin with a new one.");
    }
    if (m_headline != before) Q_EMIT headlineChanged();
}

void PatternsPage::print() {
    const std::optional<Pattern> pattern = m_editor->shownPattern();
    if (!pattern) return;
    QPrinter printer(QPrinter::HighResolution);
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    PatternPage page{*pattern, m_film->brush(), m_film->machineName(), session().season().centre.facts.name, {}};
    for (const Machine& machine : session().season().centre.machines) {
        for (size_t slot = 0; slot < page.conditioners.size(); ++slot) {
            if (page.conditioners[slot].isEmpty()) page.conditioners[slot] = machine.conditioners[slot];
        }
    }
    if (paintPatternPage(printer, page, session().speech()))
        Q_EMIT session().said(tr("%1 is printed", "pattern").arg(shown(pattern->name)));
    else
        Q_EMIT session().problem(tr("Nothing was printed: the printer cannot be painted on."));
}

}  // namespace laneward
