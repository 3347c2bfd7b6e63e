// What a pattern lays down: the film maps with the cursor's profiles, on which machine's brush, beside which other pattern.
#pragma once

#include "app/edits/session.h"
#include "app/pages/patterns/film_view.h"

class QCheckBox;
class QHBoxLayout;
class QComboBox;
class QLabel;
class QSpinBox;

namespace laneward {

class FilmProfiles;

class FilmPanel : public QWidget {
    Q_OBJECT

public:
    explicit FilmPanel(Session& session, QWidget* parent = nullptr);

    void refresh();
    /// `pattern` none = nothing can be laid yet.
    void showPattern(const std::optional<Pattern>& pattern);
    const FilmView& view() const { return *m_view; }
    Brush brush() const;
    /// Whose brush it is; empty = none.
    QString machineName() const;

Q_SIGNALS:
    void printAsked();

private:
    void buildChoices();
    void buildMenu(QHBoxLayout* row);
    void fillMachines();
    void fillBesides();
    std::optional<Pattern> beside() const;
    void lay();
    void showCursor();
    void savePicture();
    void saveFigures();

    Session& m_session;
    std::optional<Pattern> m_pattern;
    std::vector<Pattern> m_besides;  ///< in the order of the choices, the empty one left out
    QComboBox* m_machine = nullptr;
    QSpinBox* m_lane = nullptr;
    QComboBox* m_beside = nullptr;
    QCheckBox* m_difference = nullptr;
    QLabel* m_nothing = nullptr;
    FilmView* m_view = nullptr;
    FilmProfiles* m_profiles = nullptr;
    QLabel* m_readout = nullptr;
};

}  // namespace laneward
