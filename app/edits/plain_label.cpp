#include "app/edits/plain_label.h"

#include <QFormLayout>

namespace laneward {

QLabel* plainLabel(const QString& text, QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setTextFormat(Qt::PlainText);
    label->setText(text);
    return label;
}

QLabel* proseLabel(const QString& text, QWidget* parent) {
    QLabel* label = plainLabel(text, parent);
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
