// Labels that show text as it is: a name is never taken for markup.
#pragma once

#include <QLabel>

class QFormLayout;
class QLayout;

namespace laneward {

QLabel* plainLabel(const QString& text, QWidget* parent = nullptr);
/// Breaks into lines.
QLabel* proseLabel(const QString& text, QWidget* parent = nullptr);
/// Bold and a little larger, for the head of a section.
QLabel* headingLabel(const QString& text, QWidget* parent = nullptr);

/// A row of a form whose label, with its mnemonic, leads to `field`.
void addField(QFormLayout* form, const QString& name, QWidget* field);
/// The same for a layout of fields, of which `first` is the one that the mnemonic leads to.
void addField(QFormLayout* form, const QString& name, QLayout* fields, QWidget* first);

}  // namespace laneward
