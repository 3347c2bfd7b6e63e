#include "app/edits/plain_label.h"

#include <QFormLayout>

namespace laneward {

namespace {

/// QLabel looks for a pleasing width by laying its text out several times; prose takes the width that its column has.
class Prose : public QLabel {
public:
    using QLabel::QLabel;
    QSize sizeHint() const override { return minimumSizeHint(); }
    QSize minimumSizeHint() const override { return {fontMetrics().horizontalAdvance(u'0') * 12, fontMetrics().lineSpacing()}; }
};

}  // namespace

QLabel* plainLabel(const QString& text, QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setTextFormat(Qt::PlainText);
    label->setText(text);
    return label;
}

QLabel* proseLabel(const QString& text, QWidget* parent) {
    auto* label = new Prose(parent);
    label->setTextFormat(Qt::PlainText);
    label->setText(text);
    label->setWordWrap(true);
    label->setAlignment(Qt::AlignTop | Qt::AlignLeading);
    return label;
}

QLabel* headingLabel(const QString& text, QWidget* parent) {
    QLabel* label = plainLabel(text, parent);
    QFont font = label->font();
    font.setBold(true);
    label->setFont(font);
    return label;
}

void addField(QFormLayout* form, const QString& name, QWidget* field) {
    QLabel* label = plainLabel(name, form->parentWidget());
    label->setBuddy(field);
    form->addRow(label, field);
}

void addField(QFormLayout* form, const QString& name, QLayout* fields, QWidget* first) {
    QLabel* label = plainLabel(name, form->parentWidget());
    label->setBuddy(first);
    form->addRow(label, fields);
}

}  // namespace laneward
