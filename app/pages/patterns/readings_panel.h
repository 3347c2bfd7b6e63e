// Tape readings of a pattern beside the film that was to be there; how far each brush carries conditioner on.
#pragma once

#include "app/edits/session.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QStackedLayout;
class QTableView;

namespace laneward {

class CarryPanel;
class LimitsForm;
class ReadingDetails;
class ReadingForm;
class ReadingModel;
class ReadingsImport;

class ReadingsPanel : public QWidget {
    Q_OBJECT

public:
    explicit ReadingsPanel(Session& session, QWidget* parent = nullptr);

    void refresh();  ///< at once when it is visible, else when it is shown; keeps what is being typed
    void showPattern(const PatternId& pattern);
    QString headline() const { return m_headline; }

Q_SIGNALS:
    void headlineChanged();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void buildOverview();
    QWidget* buildList();
    bool load();
    void showList();
    void showChosen();
    void sayHeadline();
    void typeReading();
    void correctChosen();
    void withdrawChosen();
    void keep(const TapeReading& reading);
    void leaveForm();
    const Pattern* pattern() const;
    std::vector<PatternVersion> versionsOf(const PatternId& pattern) const;

    Session& m_session;
    PatternId m_pattern;
    std::vector<TapeReading> m_readings;  ///< all that stand, by time
    std::vector<PatternVersion> m_versions;
    std::vector<PatternVersion> m_own;  ///< of the pattern shown; the rows of the model point here
    bool m_stale = true;                ///< to be read again when it is shown
    QString m_headline;
    QString m_unread;  ///< why the store could not be read
    QStackedLayout* m_pages;
    QWidget* m_overview = nullptr;
    QLabel* m_empty = nullptr;
    ReadingModel* m_model = nullptr;
    QTableView* m_list = nullptr;
    QPushButton* m_type = nullptr;
    QPushButton* m_correct = nullptr;
    QPushButton* m_withdraw = nullptr;
    QPushButton* m_import = nullptr;
    QPushButton* m_ownLimits = nullptr;
    CarryPanel* m_carry = nullptr;
    ReadingDetails* m_details = nullptr;
    ReadingForm* m_form = nullptr;
    LimitsForm* m_limits = nullptr;
    ReadingsImport* m_importer = nullptr;
};

}  // namespace laneward
