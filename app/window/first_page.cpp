#include "app/window/first_page.h"

#include "app/edits/plain_label.h"

#include <QProgressBar>
#include <QPushButton>
#include <QStackedLayout>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int columnWidth = 520;

QWidget* centred(QWidget* inner) {
    auto* outer = new QWidget;
    auto* row = new QHBoxLayout(outer);
    row->addStretch();
    inner->setMaximumWidth(columnWidth);
    inner->setMinimumWidth(columnWidth * 3 / 4);
    row->addWidget(inner, 4);
    row->addStretch();
    return outer;
}

}  // namespace

FirstPage::FirstPage(QWidget* parent) : QWidget(parent), m_stack(new QStackedLayout(this)) {
    m_choice = buildChoice();
    m_setup = new SetupForm;
    m_stack->addWidget(centred(m_choice));
    m_stack->addWidget(centred(m_setup));
    connect(m_setup, &SetupForm::finished, this, &FirstPage::setupFinished);
    connect(m_setup, &SetupForm::cancelled, this, [this] { m_stack->setCurrentIndex(0); });
}

QPushButton* FirstPage::addChoice(QVBoxLayout* column, const QString& name, const QString& words) {
    auto* button = new QPushButton(name, this);
    button->setMinimumHeight(44);
    column->addWidget(button);
    column->addWidget(proseLabel(words, this));
    column->addSpacing(16);
    m_buttons.append(button);
    return button;
}

QWidget* FirstPage::buildChoice() {
    auto* choice = new QWidget;
    auto* column = new QVBoxLayout(choice);
    column->addStretch();
    QLabel* head = headingLabel(tr("Which lanes need what tonight?"), choice);
    QFont font = head->font();
    font.setPointSizeF(font.pointSizeF() * 1.5);
    head->setFont(font);
    column->addWidget(head);
    column->addWidget(
        proseLabel(tr("Enter the season's events once. Laneward plans the fewest treatments that make every lane ready in "
                      "time, prints the sheet for the machine, and keeps what was done."),
                   choice));
    column->addSpacing(16);
    auto* demo = addChoice(column, tr("Try the &demo centre"),
                           tr("Quillmarsh Bowl, an invented house with 24 lanes and a year of records."));
    demo->setObjectName("demo");
    auto* setUp = addChoice(column, tr("&Set up my centre"), tr("Name, lanes, machines and units: two minutes."));
    setUp->setObjectName("setUp");
    auto* open = addChoice(column, tr("&Open a centre…"), tr("A file that already exists, on this computer."));
    open->setObjectName("open");
    m_progress = new QProgressBar(choice);
    m_progress->setRange(0, 0);
    m_progress->hide();
    column->addWidget(m_progress);
    m_problem = proseLabel({}, choice);
    m_problem->setObjectName("problem");
    column->addWidget(m_problem);
    column->addStretch();
    connect(demo, &QPushButton::clicked, this, &FirstPage::demoWanted);
    connect(setUp, &QPushButton::clicked, this, &FirstPage::showSetup);
    connect(open, &QPushButton::clicked, this, &FirstPage::openWanted);
    return choice;
}

void FirstPage::showSetup() {
    m_stack->setCurrentIndex(1);
    m_setup->begin();
}

void FirstPage::showProblem(const QString& line) {
    m_stack->setCurrentIndex(0);
    m_problem->setText(line);
}

void FirstPage::setBusy(bool busy, const QString& what) {
    m_progress->setVisible(busy);
    m_progress->setAccessibleName(what);
    for (QPushButton* button : std::as_const(m_buttons))
        button->setEnabled(!busy);
    m_problem->setText(what);
}

}  // namespace laneward
