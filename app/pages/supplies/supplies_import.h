// Counts or a price list from a table of another program: which of its columns is what is seen, changed and kept for the next
// time. What does not fit is named by line and column, and nothing comes in then; what is hardly meant is asked in the page. All
// of it is one undoable step.
#pragma once

#include "app/cli/csv_supplies.h"
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

class SuppliesImport : public QWidget {
    Q_OBJECT

public:
    SuppliesImport(Session& session, cli::StockKind kind, QWidget* parent = nullptr);

    /// Asks for a file; false when none was chosen. `supplier` is that of rows of a price list that do not name one.
    bool chooseFile(const SupplierId& supplier = {});
    void load(const QString& path, const SupplierId& supplier = {});
    /// The session is another: looks again.
    void refresh() { look(); }

Q_SIGNALS:
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QWidget* buildMapping();
    QWidget* buildPreview();
    void addColumns(QFormLayout* form);
    void addFormats(QFormLayout* form);
    void fillColumns();
    void preview();
    void keepMapping() const;
    void look();
    void lookAt(const cli::CsvRows& rows);
    void tell(const std::vector<Finding>& faults, const std::vector<Finding>& doubts, const QString& coming);
    void take();
    void showLines(const QStringList& lines);
    cli::CsvMapping mapping() const;
    QString kept() const;

    Session& m_session;
    cli::StockKind m_kind;
    QByteArray m_bytes;
    QString m_name;
    CsvTable m_table;
    SupplierId m_supplier;
    Deed m_deed;  ///< what would come in
    bool m_filling = false;
    QHash<QString, QComboBox*> m_columns;  ///< by our name
    QComboBox* m_unit = nullptr;           ///< where the file has none
    QComboBox* m_decimal = nullptr;
    QLineEdit* m_date = nullptr;
    QLineEdit* m_time = nullptr;
    QLabel* m_title = nullptr;
    QTableWidget* m_rows = nullptr;
    QLabel* m_result = nullptr;
    QListWidget* m_faults = nullptr;
    QCheckBox* m_sure = nullptr;
    QPushButton* m_take = nullptr;
};

}  // namespace laneward
