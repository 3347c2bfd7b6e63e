// What every list offers: sorting, choosing columns (remembered), copying as a text table, saving as CSV.
//
//     new ListTools(table, "today/jobs");   // owned by the table
#pragma once

#include <QObject>

#include <functional>

class QAbstractItemModel;
class QTableView;

namespace laneward {

/// Columns padded to one width, for mails and notes; columns without a header are left out.
QString textTable(const QAbstractItemModel& model);
/// By RFC 4180 with a header row.
QByteArray csvTable(const QAbstractItemModel& model);

/// Tool tips take names for markup; this one shows them as they are.
QString plainTip(const QString& text);

class ListTools : public QObject {
    Q_OBJECT

public:
    /// `name` is the key under which the choice of columns is kept.
    ListTools(QTableView* table, const QString& name);

    /// For lists that write themselves, because they are long or their files are for other programs.
    void writeBy(std::function<QString()> text, std::function<QByteArray()> csv);
    void copy() const;
    void setColumnShown(int column, bool shown);

Q_SIGNALS:
    void csvWanted(const QByteArray& csv);  ///< the owner asks where to and saves it

private:
    void openMenu(const QPoint& at);
    void restore();

    QTableView* m_table;
    QString m_name;
    std::function<QString()> m_text;
    std::function<QByteArray()> m_csv;
};

}  // namespace laneward
