#include "app/pages/lanes/why_panel.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace laneward {

WhyPanel::WhyPanel(QWidget* parent) : QFrame(parent), m_column(new QVBoxLayout(this)) {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("Why here"));
    setMinimumWidth(230);
    m_column->setContentsMargins(0, 0, 0, 8);
    buildBody();
    buildActions();
    showNothing();
}

void WhyPanel::buildBody() {
    auto* scroll = new QScrollArea(this);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setAccessibleName(tr("Why here"));
    scroll->setBackgroundRole(QPalette::Base);
    m_body = new QWidget;
    m_rows = new QVBoxLayout(m_body);
    m_rows->setContentsMargins(12, 10, 12, 10);
    m_rows->setSpacing(3);
    scroll->setWidget(m_body);
    m_column->addWidget(scroll, 1);
}

void WhyPanel::buildActions() {
    const auto button = [this](const QString& text) {
        auto* result = new QPushButton(text, this);
        result->setMinimumHeight(28);
        auto* row = new QHBoxLayout;
        row->setContentsMargins(12, 0, 12, 0);
        row->addWidget(result);
        m_column->addLayout(row);
        return result;
    };
    m_edit = button(tr("Edit event…"));
    m_record = button(tr("&Record…"));
    m_print = button(tr("&Print sheet…"));
    connect(m_edit, &QPushButton::clicked, this, &WhyPanel::editAsked);
    connect(m_record, &QPushButton::clicked, this, &WhyPanel::recordAsked);
    connect(m_print, &QPushButton::clicked, this, &WhyPanel::printAsked);
}

void WhyPanel::setActions(bool edit, bool record) {
    m_edit->setVisible(edit);
    m_record->setVisible(record);
}

void WhyPanel::clear() {
    m_words.clear();
    while (QLayoutItem* item = m_rows->takeAt(0)) {
        delete item->widget();
        delete item;
    }
}

QLabel* WhyPanel::label(const QString& words, bool strong) {
    auto* result = new QLabel(words, m_body);
    result->setTextFormat(Qt::PlainText);
    result->setWordWrap(true);
    result->setTextInteractionFlags(Qt::TextSelectableByMouse);
    QFont font = result->font();
    font.setBold(strong);
    result->setFont(font);
    m_words += words + u'\n';
    return result;
}

void WhyPanel::addSection(const WhySection& section) {
    if (!section.heading.isEmpty()) {
        m_rows->addSpacing(8);
        m_rows->addWidget(label(section.heading, true));
    }
    QGridLayout* grid = nullptr;  // sentences stand between the tables: a cell that spans columns would not keep its height
    for (const WhyRow& why : section.rows) {
        if (why.label.isEmpty()) {
            m_rows->addWidget(label(why.value, why.strong));
            grid = nullptr;
            continue;
        }
        if (!grid) grid = addTable();
        const int row = grid->rowCount();
        QLabel* name = label(why.label, false);
        name->setWordWrap(false);
        grid->addWidget(name, row, 0, Qt::AlignTop);
        grid->addWidget(label(why.value, why.strong), row, 1);
    }
}

QGridLayout* WhyPanel::addTable() {
    auto* table = new QWidget(m_body);
    auto* grid = new QGridLayout(table);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(2);
    grid->setColumnStretch(1, 1);
    m_rows->addWidget(table);
    return grid;
}

void WhyPanel::show(const WhyText& why) {
    clear();
    QLabel* title = label(why.title, true);
    QFont font = title->font();
    font.setPointSizeF(font.pointSizeF() * 1.15);
    title->setFont(font);
    m_rows->addWidget(title);
    for (const WhySection& section : why.sections)
        addSection(section);
    m_rows->addStretch(1);
}

void WhyPanel::showNothing() {
    show({tr("Why here"),
          {{{},
            {{{},
              tr("Choose a job, an event or a lane to see why it is there and what comes next. A click beside them asks "
                 "what is on the lanes at that moment."),
              false}}}}});
    setActions(false, false);
}

QString WhyPanel::allText() const { return m_words; }

}  // namespace laneward
