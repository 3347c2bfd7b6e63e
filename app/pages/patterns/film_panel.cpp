#include "app/pages/patterns/film_panel.h"

#include "app/edits/plain_label.h"
#include "app/pages/patterns/film_profiles.h"
#include "core/documents/film_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QMenu>
#include <QSaveFile>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int lanesOfColdBrush = 40;
constexpr Micrometres cell = Micrometres{feet(1).value / 2};

bool save(const QString& path, const QByteArray& bytes) {
    QSaveFile file(path);
    return file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
}

}  // namespace

FilmPanel::FilmPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    buildChoices();
    m_nothing = proseLabel(tr("No film yet: write a stroke, or mend those that are marked."), this);
    column->addWidget(m_nothing);
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->setLayoutDirection(Qt::LeftToRight);
    m_view = new FilmView(split);
    m_profiles = new FilmProfiles(split);
    split->setStretchFactor(0, 1);
    split->setStretchFactor(1, 1);
    split->setSizes({250, 220});
    split->setChildrenCollapsible(false);
    column->addWidget(split, 1);
    m_readout = proseLabel({}, this);
    m_readout->setObjectName("filmReadout");
    column->addWidget(m_readout);
    connect(m_view, &FilmView::cursorMoved, this, &FilmPanel::showCursor);
}

void FilmPanel::buildChoices() {
    auto* form = new QFormLayout;
    auto* brush = new QHBoxLayout;
    m_machine = new QComboBox(this);
    m_lane = new QSpinBox(this);
    m_lane->setRange(0, lanesOfColdBrush);
    m_lane->setSpecialValueText(tr("in a long run"));
    m_lane->setPrefix(tr("lane ", "before a number: the how manieth lane of a run"));
    m_lane->setToolTip(tr("Which lane of the run, from a clean brush: the first lanes get less"));
    m_lane->setAccessibleName(tr("Lane of the run"));
    brush->addWidget(m_machine, 1);
    brush->addWidget(m_lane);
    buildMenu(brush);
    addField(form, tr("&Brush of"), brush, m_machine);
    auto* other = new QHBoxLayout;
    m_beside = new QComboBox(this);
    m_beside->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_beside->setMinimumContentsLength(14);
    m_difference = new QCheckBox(tr("Show the difference"), this);
    other->addWidget(m_beside, 1);
    other->addWidget(m_difference);
    addField(form, tr("Besi&de"), other, m_beside);
    qobject_cast<QVBoxLayout*>(layout())->addLayout(form);
    connect(m_machine, &QComboBox::currentIndexChanged, this, &FilmPanel::lay);
    connect(m_lane, &QSpinBox::valueChanged, this, &FilmPanel::lay);
    connect(m_beside, &QComboBox::currentIndexChanged, this, &FilmPanel::lay);
    connect(m_difference, &QCheckBox::toggled, this, &FilmPanel::lay);
}

void FilmPanel::buildMenu(QHBoxLayout* row) {
    auto* button = new QToolButton(this);
    button->setText(tr("Give out"));
    button->setPopupMode(QToolButton::InstantPopup);
    auto* menu = new QMenu(button);
    connect(menu->addAction(tr("&Print one page…")), &QAction::triggered, this, &FilmPanel::printAsked);
    connect(menu->addAction(tr("&Map as a picture (PNG)…")), &QAction::triggered, this, &FilmPanel::savePicture);
    connect(menu->addAction(tr("&Figures as a table (CSV)…")), &QAction::triggered, this, &FilmPanel::saveFigures);
    button->setMenu(menu);
    row->addWidget(button);
}

void FilmPanel::refresh() {
    fillMachines();
    fillBesides();
    lay();
}

void FilmPanel::fillMachines() {
    const QSignalBlocker quiet(m_machine);
    const QString chosen = m_machine->currentData().toString();
    const bool first = m_machine->count() == 0;
    m_machine->clear();
    for (const Machine& machine : m_session.season().centre.machines) {
        const QString carry = machine.carryLength > Micrometres{0}
                                  ? tr("%1, carries %2", "machine, length")
                                        .arg(shown(machine.name), lengthText(machine.carryLength, m_session.speech()))
                                  : shown(machine.name);
        m_machine->addItem(carry, machine.id.value);
    }
    m_machine->addItem(tr("no machine: without carry"), QString());
    m_machine->setCurrentIndex(first ? 0 : std::max(0, m_machine->findData(chosen)));
}

/// Other patterns, and what this one was before.
void FilmPanel::fillBesides() {
    const QSignalBlocker quiet(m_beside);
    const QString chosen = m_beside->currentText();
    m_beside->clear();
    m_besides.clear();
    m_beside->addItem(tr("nothing"));
    const auto add = [&](const QString& name, const Pattern& pattern) {
        m_beside->addItem(name);
        m_besides.push_back(pattern);
    };
    if (m_pattern) {
        const Pattern* stored = findPattern(m_session.season().patterns, m_pattern->id);
        if (stored && !sameRecipe(*stored, *m_pattern)) add(tr("as it is kept"), *stored);
        if (const auto versions = m_session.store().patternVersions(m_pattern->id)) {
            for (const PatternVersion& v : *versions) {
                if (stored && v.pattern.edition == stored->edition) continue;
                add(tr("version %1, from %2")
                        .arg(m_session.speech().locale.toString(qlonglong(v.pattern.edition)),
                             dateTimeText(v.since, m_session.speech())),
                    v.pattern);
            }
        }
    }
    for (const Pattern& other : m_session.season().patterns) {
        if (!m_pattern || other.id != m_pattern->id) add(shown(other.name), other);
    }
    m_beside->setCurrentIndex(std::max(0, m_beside->findText(chosen)));
}

std::optional<Pattern> FilmPanel::beside() const {
    const int index = m_beside->currentIndex() - 1;
    return index >= 0 && size_t(index) < m_besides.size() ? std::optional(m_besides[size_t(index)]) : std::nullopt;
}

Brush FilmPanel::brush() const {
    const QString id = m_machine->currentData().toString();
    for (const Machine& machine : m_session.season().centre.machines) {
        if (machine.id.value == id) return {machine.carryLength, m_lane->value()};
    }
    return {{}, m_lane->value()};
}

QString FilmPanel::machineName() const {
    const QString id = m_machine->currentData().toString();
    for (const Machine& machine : m_session.season().centre.machines) {
        if (machine.id.value == id) return machine.name;
    }
    return {};
}

void FilmPanel::showPattern(const std::optional<Pattern>& pattern) {
    const bool another = !pattern || !m_pattern || pattern->id != m_pattern->id || pattern->edition != m_pattern->edition;
    m_pattern = pattern;
    if (another) fillBesides();
    lay();
}

void FilmPanel::lay() {
    m_nothing->setVisible(!m_pattern);
    m_view->setVisible(bool(m_pattern));
    m_profiles->setVisible(bool(m_pattern));
    m_readout->setVisible(bool(m_pattern));
    const std::optional<Pattern> other = beside();
    m_difference->setEnabled(bool(other));
    std::vector<ShownFilm> films;
    if (m_pattern) {
        films.push_back({shown(m_pattern->name), film(*m_pattern, brush(), cell)});
        if (other) {
            films.push_back({m_beside->currentText(), film(*other, brush(), cell)});
            if (m_difference->isChecked()) {
                ShownFilm less{tr("%1 less %2").arg(films[0].title, films[1].title), difference(films[0].film, films[1].film),
                               true};
                films = {std::move(films[0]), std::move(less)};
            }
        }
    }
    m_view->setFilms(std::move(films), m_session.speech());
    m_profiles->setFilms(&m_view->films(), m_session.speech());
    showCursor();
}

void FilmPanel::showCursor() {
    m_profiles->setCursorAt(m_view->board(), m_view->distance());
    m_readout->setText(m_view->readout());
}

void FilmPanel::savePicture() {
    if (!m_pattern) return;
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Save the map"), shown(m_pattern->name) + ".png", tr("Picture (*.png)"));
    if (path.isEmpty()) return;
    const QByteArray png = filmPng(film(*m_pattern, brush(), cell), shown(m_pattern->name), m_session.speech());
    if (!save(path, png)) Q_EMIT m_session.problem(tr("%1 could not be written; nothing was saved.").arg(path));
}

void FilmPanel::saveFigures() {
    if (!m_pattern) return;
    const QString path =
        QFileDialog::getSaveFileName(this, tr("Save the figures"), shown(m_pattern->name) + ".csv", tr("CSV (*.csv)"));
    if (path.isEmpty()) return;
    if (!save(path, filmCsv(film(*m_pattern, brush(), cell))))
        Q_EMIT m_session.problem(tr("%1 could not be written; nothing was saved.").arg(path));
}

}  // namespace laneward
