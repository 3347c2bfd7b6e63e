// What a recipe lays down, what was measured, and whether the machines still put out what they should.
#pragma once

#include "app/edits/page.h"

class QSplitter;
class QTabWidget;

namespace laneward {

class DriftPanel;
class FilmPanel;
class GeometryPanel;
class PatternEditor;
class PatternList;
class ReadingsPanel;

class PatternsPage : public Page {
    Q_OBJECT

public:
    explicit PatternsPage(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("Patterns"); }
    QString iconName() const override { return QStringLiteral("patterns"); }
    QString question() const override { return tr("What does this recipe lay down?"); }
    QString headline() const override { return m_headline; }
    void refresh() override;
    void showPattern(const PatternId& pattern);

private:
    void build() override;
    void buildRecipe();
    void buildMeasured();
    void choose(const PatternId& pattern);
    void say();
    void showTab(int tab);
    void print();

    PatternList* m_list = nullptr;
    QTabWidget* m_tabs = nullptr;
    QSplitter* m_recipe = nullptr;
    PatternEditor* m_editor = nullptr;
    FilmPanel* m_film = nullptr;
    ReadingsPanel* m_readings = nullptr;
    DriftPanel* m_drift = nullptr;
    GeometryPanel* m_geometry = nullptr;
    PatternId m_pattern;
    QString m_headline;
};

}  // namespace laneward
