// Tape readings from a table of another program: which of its columns is what is seen, changed and kept for the next time. What
// does not fit is named by line and column; nothing comes in then. All of it is one undoable step.
#pragma once

#include "app/cli/csv_rows.h"
#include "app/edits/session.h"

#include <QHash>
#include <QWidget>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QTableWidget;

namespace laneward {

class ReadingsImport : public QWidget {
    Q_OBJECT

public:
    explicit ReadingsImport(Session& session, QWidget* parent = nullptr);

    /// Asks for a file; false when none was chosen.
    bool chooseFile(const PatternId& pattern);
    /// `pattern` is that of rows that do not name one.
    void load(const QString& path, const PatternId& pattern);

Q_SIGNALS:
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QWidget* buildMapping();
    QWidget* buildPreview();
    QComboBox* addColumn(QFormLayout* form, const QString& key, const QString& name);
    void fillColumns();
    void preview();
    void keepMapping() const;
    void look();
    void take();
    void showLines(const QStringList& lines);
    cli::CsvMapping mapping() const;
    QStringList faultsOf(const std::vector<TapeReading>& readings) const;

    Session& m_session;
    QByteArray m_bytes;
    QString m_name;
    CsvTable m_table;
    PatternId m_pattern;
    std::vector<TapeReading> m_readings;  ///< that would come in
    bool m_filling = false;
    QHash<QString, QComboBox*> m_columns;  ///< by our name
    QComboBox* m_boards = nullptr;
    QCheckBox* m_leftFirst = nullptr;
    QComboBox* m_machine = nullptr;
    QComboBox* m_decimal = nullptr;
    QLineEdit* m_date = nullptr;
    QLineEdit* m_time = nullptr;
    QLabel* m_title = nullptr;
    QTableWidget* m_rows = nullptr;
    QLabel* m_result = nullptr;
    QListWidget* m_faults = nullptr;
    QPushButton* m_take = nullptr;
};

}  // namespace laneward
