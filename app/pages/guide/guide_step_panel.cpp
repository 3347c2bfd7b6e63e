#include "app/pages/guide/guide_step_panel.h"

#include "app/edits/plain_label.h"
#include "app/widgets/decimal_text.h"
#include "core/base/limits.h"
#include "core/documents/pack_words.h"

#include <QComboBox>
#include <QFrame>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace laneward {

GuideStepPanel::GuideStepPanel(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_state = plainLabel({}, this));
    m_state->setObjectName("guideState");
    column->addWidget(m_title = large(2.0, true));
    m_title->setObjectName("guideTitle");
    auto* row = new QHBoxLayout;
    auto* left = new QVBoxLayout;
    left->addWidget(m_details = large(1.35, false));
    m_details->setObjectName("guideDetails");
    m_blankFields = new QWidget(this);
    left->addWidget(m_blankFields);
    left->addWidget(m_problem = large(1.2, true));
    m_problem->setObjectName("guideProblem");
    left->addWidget(m_advice = large(1.2, true));
    m_advice->setObjectName("guideAdvice");
    left->addStretch();
    row->addLayout(left, 3);
    buildCautions(row);
    column->addLayout(row, 1);
}

QLabel* GuideStepPanel::large(double factor, bool bold) {
    QLabel* label = proseLabel({}, this);
    QFont font = label->font();
    font.setPointSizeF(font.pointSizeF() * factor);
    font.setBold(bold);
    label->setFont(font);
    return label;
}

void GuideStepPanel::buildCautions(QHBoxLayout* row) {
    m_cautionFrame = new QFrame(this);
    m_cautionFrame->setFrameShape(QFrame::StyledPanel);
    m_cautionFrame->setAccessibleName(tr("Cautions for this step"));
    auto* column = new QVBoxLayout(m_cautionFrame);
    QLabel* head = headingLabel(tr("! Caution"), m_cautionFrame);
    QFont font = head->font();
    font.setPointSizeF(font.pointSizeF() * 1.35);
    head->setFont(font);
    column->addWidget(head);
    m_cautions = large(1.15, false);
    m_cautions->setObjectName("guideCautions");
    column->addWidget(m_cautions);
    column->addStretch();
    row->addWidget(m_cautionFrame, 2, Qt::AlignTop);
}

void GuideStepPanel::show(const GuideSight& sight) {
    m_state->setText(sight.state);
    m_title->setText(sight.title);
    m_details->setText(sight.details.join(u'\n'));
    m_details->setVisible(!sight.details.isEmpty());
    m_cautions->setText(sight.cautions.join(u"\n\n"));
    m_cautionFrame->setVisible(!sight.cautions.isEmpty());
}

void GuideStepPanel::ask(const std::vector<GuideBlank>& blanks, const Help& help, const Speech& speech) {
    m_help = help;
    m_speech = speech;
    auto* fresh = new QWidget(this);
    m_grid = new QGridLayout(fresh);
    m_grid->setContentsMargins(0, 6, 0, 6);
    m_grid->setColumnStretch(1, 1);
    m_fields.clear();
    m_states.clear();
    m_blanks = blanks;
    for (const GuideBlank& blank : blanks)
        addBlank(blank, help.expected(blank), speech);
    delete layout()->replaceWidget(m_blankFields, fresh);
    m_blankFields->hide();
    m_blankFields->deleteLater();
    m_blankFields = fresh;
    m_blankFields->setVisible(!blanks.empty());
    m_problem->clear();
    m_problem->hide();
    advise();
}

/// In which state volts were measured: Tab leads there, the arrows choose.
void GuideStepPanel::addState(const GuideBlank& blank, int row, const QFont& font) {
    auto* state = new QComboBox(m_grid->parentWidget());
    state->setObjectName("guideVoltState");
    state->setAccessibleName(tr("In which state they were read"));
    state->setFont(font);
    for (const VoltageState one : {VoltageState::Rested, VoltageState::JustCharged, VoltageState::UnderLoad})
        state->addItem(laneward::text(one), int(one));
    state->setCurrentIndex(state->findData(int(*blank.state)));
    state->installEventFilter(this);
    m_grid->addWidget(state, row, 3);
    connect(state, &QComboBox::currentIndexChanged, this, &GuideStepPanel::advise);
    m_states.back() = state;
}

QString GuideStepPanel::advice() const {
    QStringList lines;
    std::vector<GuideAnswer> typed;
    for (size_t n = 0; n < m_fields.size() && m_speech; ++n)
        (void)readBlank(n, typed, *m_speech);
    for (const GuideAnswer& answer : typed) {
        if (const QString line = m_help.advice(answer); !line.isEmpty()) lines += line;
    }
    return lines.join(u'\n');
}

void GuideStepPanel::advise() {
    const QString lines = advice();
    m_advice->setText(lines);
    m_advice->setVisible(!lines.isEmpty());
}

void GuideStepPanel::addBlank(const GuideBlank& blank, const QString& expected, const Speech& speech) {
    const int row = int(m_fields.size());
    QWidget* parent = m_grid->parentWidget();
    QLabel* label = plainLabel(nameOf(blank), parent);
    auto* field = new QLineEdit(parent);
    QFont font = field->font();
    font.setPointSizeF(font.pointSizeF() * 1.35);
    label->setFont(font);
    field->setFont(font);
    label->setBuddy(field);
    field->setObjectName("guideBlank");
    field->setAccessibleName(nameOf(blank));
    field->setPlaceholderText(expected);
    field->setMaxLength(blank.isText() ? limits::noteLength : 20);
    field->installEventFilter(this);
    m_grid->addWidget(label, row, 0);
    if (blank.isText()) {
        m_grid->addWidget(field, row, 1, 1, 2);
    } else {
        QLabel* unit = plainLabel(unitOf(blank, speech.units), parent);
        unit->setFont(font);
        m_grid->addWidget(field, row, 1);
        m_grid->addWidget(unit, row, 2);
    }
    m_fields.push_back(field);
    m_states.push_back(nullptr);
    if (blank.state) addState(blank, row, font);
    connect(field, &QLineEdit::textChanged, this, &GuideStepPanel::advise);
}

std::optional<Finding> GuideStepPanel::readBlank(size_t n, std::vector<GuideAnswer>& answers, const Speech& speech) const {
    const QString typed = m_fields[n]->text().trimmed();
    if (typed.isEmpty()) return std::nullopt;
    if (m_blanks[n].isText()) {
        answers.push_back({m_blanks[n], 0, typed, {}});
        return std::nullopt;
    }
    const std::optional<double> number = decimalOf(typed, speech.locale);
    if (!number) return Finding{Severity::Fault, "guide.no-number", typed, {}};
    if (std::optional<Finding> fault = faultOf(m_blanks[n], *number, speech)) return fault;
    const QComboBox* state = m_states[n];
    answers.push_back({m_blanks[n], *number, {}, state ? VoltageState(state->currentData().toInt()) : VoltageState::Rested});
    return std::nullopt;
}

std::optional<std::vector<GuideAnswer>> GuideStepPanel::answers(const Speech& speech) {
    std::vector<GuideAnswer> all;
    for (size_t n = 0; n < m_fields.size(); ++n) {
        const std::optional<Finding> fault = readBlank(n, all, speech);
        if (!fault) continue;
        m_problem->setText(text(*fault, speech));
        m_problem->show();
        m_fields[n]->setFocus();
        m_fields[n]->selectAll();
        return std::nullopt;
    }
    m_problem->hide();
    m_problem->clear();
    return all;
}

bool GuideStepPanel::focusFirstBlank() {
    if (m_fields.empty()) return false;
    m_fields.front()->setFocus();
    return true;
}

/// Enter, or Space, goes on from the choice of a state: what is open of it has its own keys.
bool GuideStepPanel::stateKey(QObject* watched, const QKeyEvent& key) {
    if (std::find(m_states.begin(), m_states.end(), watched) == m_states.end()) return false;
    const bool on = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter || key.key() == Qt::Key_Space;
    if (on && !key.isAutoRepeat()) Q_EMIT entered();
    if (key.key() == Qt::Key_Backspace && !key.isAutoRepeat()) Q_EMIT backWanted();
    return on || key.key() == Qt::Key_Backspace;
}

/// Enter goes to the next blank and from the last one on; Space goes on from a number, and Backspace in an empty blank goes back.
bool GuideStepPanel::eventFilter(QObject* watched, QEvent* event) {
    const auto at = std::find(m_fields.begin(), m_fields.end(), watched);
    if (event->type() == QEvent::KeyPress && watched && stateKey(watched, *static_cast<QKeyEvent*>(event))) return true;
    if (event->type() != QEvent::KeyPress || at == m_fields.end()) return QWidget::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool number = !m_blanks[size_t(at - m_fields.begin())].isText();
    if (key->isAutoRepeat() && key->key() != Qt::Key_Backspace) return QWidget::eventFilter(watched, event);
    if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
        if (at + 1 != m_fields.end())
            (*(at + 1))->setFocus();
        else
            Q_EMIT entered();
        return true;
    }
    if (key->key() == Qt::Key_Space && number) {
        Q_EMIT entered();
        return true;
    }
    if (key->key() == Qt::Key_Backspace && (*at)->text().isEmpty()) {
        if (!key->isAutoRepeat()) Q_EMIT backWanted();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace laneward
