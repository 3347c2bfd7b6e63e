#include "app/edits/plain_label.h"
#include "app/pages/supplies/supplies_import.h"

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

SuppliesImport::SuppliesImport(Session& session, cli::StockKind kind, QWidget* parent)
    : QWidget(parent), m_session(session), m_kind(kind) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_title = headingLabel({}, this));
    auto* splitter = new QSplitter(Qt::Horizontal, this);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(buildMapping());
    splitter->addWidget(buildPreview());
    splitter->setStretchFactor(0, 2);
    splitter->setStretchFactor(1, 3);
    column->addWidget(splitter, 1);
}

void SuppliesImport::addColumns(QFormLayout* form) {
    using Columns = std::vector<std::pair<const char*, QString>>;
    const Columns counts{{"supply", tr("Supply, by name or id:")},
                         {"amount", tr("Amount:")},
                         {"unit", tr("Unit:")},
                         {"place", tr("Place (shelf, open, tank, waste):")},
                         {"machine", tr("Machine, of tanks:")},
                         {"container", tr("Container:")},
                         {"lot", tr("Lot:")},
                         {"at", tr("Date and time with offset (ISO 8601):")},
                         {"date", tr("or date:")},
                         {"time", tr("and time:")},
                         {"note", tr("Note:")}};
    const Columns prices{{"supply", tr("Supply, by name or id:")},
                         {"article", tr("Article number:")},
                         {"pack", tr("One pack holds:")},
                         {"pack_unit", tr("Unit of it:")},
                         {"from_packs", tr("From packs:")},
                         {"to_packs", tr("To packs:")},
                         {"price", tr("Price of a pack:")},
                         {"currency", tr("Currency:")},
                         {"supplier", tr("Supplier (else the one chosen):")}};
    for (const auto& [key, name] : m_kind == cli::StockKind::Counts ? counts : prices) {
        auto* box = new QComboBox(this);
        box->setObjectName(QStringLiteral("column-") + QString::fromLatin1(key));
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(12);
        addField(form, name, box);
        connect(box, &QComboBox::currentIndexChanged, this, &SuppliesImport::look);
        m_columns.insert(QString::fromLatin1(key), box);
    }
}

void SuppliesImport::addFormats(QFormLayout* form) {
    m_unit = new QComboBox(this);
    m_unit->setObjectName("defaultUnit");
    m_unit->addItem(tr("not said"), QString());
    for (const char* unit : {"L", "mL", "floz", "gal", "m", "mm", "ft", "pieces"})
        m_unit->addItem(QString::fromLatin1(unit), QString::fromLatin1(unit));
    addField(form, tr("Unit where the file names none:"), m_unit);
    m_decimal = new QComboBox(this);
    m_decimal->setObjectName("decimal");
    m_decimal->addItem(tr("point (31.2)"));
    m_decimal->addItem(tr("comma (31,2)"));
    addField(form, tr("Decimal sign:"), m_decimal);
    for (QComboBox* box : {m_unit, m_decimal})
        connect(box, &QComboBox::currentIndexChanged, this, &SuppliesImport::look);
    m_date = new QLineEdit(this);
    m_time = new QLineEdit(this);
    m_date->setObjectName("dateFormat");
    m_time->setObjectName("timeFormat");
    const bool dated = m_kind == cli::StockKind::Counts;
    if (dated) addField(form, tr("Dates are written:"), m_date);
    if (dated) addField(form, tr("Times are written:"), m_time);
    for (QLineEdit* field : {m_date, m_time}) {
        field->setVisible(dated);
        connect(field, &QLineEdit::textChanged, this, &SuppliesImport::look);
    }
}

QWidget* SuppliesImport::buildMapping() {
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    auto* side = new QWidget(scroll);
    auto* form = new QFormLayout(side);
    form->addRow(proseLabel(tr("Which column of the file is what? This is kept for the next file."), side));
    addColumns(form);
    addFormats(form);
    scroll->setWidget(side);
    return scroll;
}

QWidget* SuppliesImport::buildPreview() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(8, 0, 0, 0);
    column->addWidget(proseLabel(tr("The file begins:"), side));
    m_rows = new QTableWidget(side);
    m_rows->setAccessibleName(tr("First rows of the file"));
    m_rows->setEditTriggers(QAbstractItemView::NoEditTriggers);
    column->addWidget(m_rows, 2);
    m_result = proseLabel({}, side);
    m_result->setObjectName("importResult");
    column->addWidget(m_result);
    m_faults = new QListWidget(side);
    m_faults->setAccessibleName(tr("What does not fit"));
    m_faults->setWordWrap(true);
    column->addWidget(m_faults, 3);
    auto* row = new QHBoxLayout;
    m_sure = new QCheckBox(tr("It is &so"), side);
    m_sure->setObjectName("importSure");
    m_take = new QPushButton(tr("&Bring them in"), side);
    m_take->setObjectName("takeImport");
    auto* leave = new QPushButton(tr("Leave it (Esc)"), side);
    leave->setObjectName("leaveImport");
    row->addWidget(m_sure);
    row->addStretch();
    row->addWidget(m_take);
    row->addWidget(leave);
    column->addLayout(row);
    connect(m_sure, &QCheckBox::toggled, this, &SuppliesImport::look);
    connect(m_take, &QPushButton::clicked, this, &SuppliesImport::take);
    connect(leave, &QPushButton::clicked, this, &SuppliesImport::closed);
    return side;
}

}  // namespace laneward
