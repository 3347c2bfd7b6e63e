#include "app/edits/plain_label.h"
#include "app/pages/patterns/readings_import.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTableWidget>

namespace laneward {

ReadingsImport::ReadingsImport(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_title = headingLabel({}, this));
    auto* splitter = new QSplitter(Qt::Horizontal, this);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(buildMapping());
    splitter->addWidget(buildPreview());
    splitter->setStretchFactor(0, 2);
    splitter->setStretchFactor(1, 3);
    column->addWidget(splitter, 1);
}

QComboBox* ReadingsImport::addColumn(QFormLayout* form, const QString& key, const QString& name) {
    auto* box = new QComboBox(this);
    box->setObjectName("column-" + key);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(12);
    addField(form, name, box);
    connect(box, &QComboBox::currentIndexChanged, this, &ReadingsImport::look);
    return box;
}

QWidget* ReadingsImport::buildMapping() {
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    auto* side = new QWidget(scroll);
    auto* form = new QFormLayout(side);
    form->addRow(proseLabel(tr("Which column of the file is what? This is kept for the next file."), side));
    const std::pair<const char*, QString> columns[] = {{"at", tr("Date and time with offset (ISO 8601):")},
                                                       {"date", tr("or date:")},
                                                       {"time", tr("and time:")},
                                                       {"lane", tr("Lane:")},
                                                       {"distance_ft", tr("Distance in feet:")},
                                                       {"pattern", tr("Pattern (else the one shown):")},
                                                       {"pattern_version", tr("Version of the pattern:")},
                                                       {"machine", tr("Machine:")},
                                                       {"lane_of_run", tr("Lane of its run:")},
                                                       {"note", tr("Note:")}};
    for (const auto& [key, name] : columns)
        m_columns.insert(QString::fromLatin1(key), addColumn(form, QString::fromLatin1(key), name));
    m_boards = addColumn(form, QStringLiteral("boards"), tr("First of the 39 boards' columns:"));
    m_leftFirst = new QCheckBox(tr("The first of them is board 39 (left)"), side);
    form->addRow(m_leftFirst);
    addField(form, tr("Machine where the file names none:"), m_machine = new QComboBox(side));
    m_decimal = new QComboBox(side);
    m_decimal->setObjectName("decimal");
    m_decimal->addItem(tr("point (31.2)"));
    m_decimal->addItem(tr("comma (31,2)"));
    addField(form, tr("Decimal sign:"), m_decimal);
    addField(form, tr("Dates are written:"), m_date = new QLineEdit(side));
    addField(form, tr("Times are written:"), m_time = new QLineEdit(side));
    m_date->setObjectName("dateFormat");
    m_time->setObjectName("timeFormat");
    connect(m_leftFirst, &QCheckBox::toggled, this, &ReadingsImport::look);
    for (QComboBox* box : {m_machine, m_decimal})
        connect(box, &QComboBox::currentIndexChanged, this, &ReadingsImport::look);
    for (QLineEdit* field : {m_date, m_time})
        connect(field, &QLineEdit::textChanged, this, &ReadingsImport::look);
    scroll->setWidget(side);
    return scroll;
}

QWidget* ReadingsImport::buildPreview() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(8, 0, 0, 0);
    column->addWidget(proseLabel(tr("The file begins:"), side));
    m_rows = new QTableWidget(side);
    m_rows->setAccessibleName(tr("First rows of the file"));
    m_rows->setEditTriggers(QAbstractItemView::NoEditTriggers);
    column->addWidget(m_rows, 2);
    column->addWidget(m_result = proseLabel({}, side));
    m_faults = new QListWidget(side);
    m_faults->setAccessibleName(tr("What does not fit"));
    m_faults->setWordWrap(true);
    column->addWidget(m_faults, 3);
    auto* row = new QHBoxLayout;
    m_take = new QPushButton(tr("&Bring them in"), side);
    m_take->setObjectName("takeReadings");
    auto* leave = new QPushButton(tr("Cancel"), side);
    row->addStretch();
    row->addWidget(m_take);
    row->addWidget(leave);
    column->addLayout(row);
    connect(m_take, &QPushButton::clicked, this, &ReadingsImport::take);
    connect(leave, &QPushButton::clicked, this, &ReadingsImport::closed);
    return side;
}

}  // namespace laneward
