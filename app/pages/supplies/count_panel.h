// The count sheet: walked from field to field, or printed, counted with pen and typed in afterwards. Booking is one undoable
// step.
#pragma once

#include "app/edits/session.h"

#include <QWidget>

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace laneward {

class CellTable;
class CountModel;
class SuppliesImport;
struct CountSheet;

class CountPanel : public QWidget {
    Q_OBJECT

public:
    explicit CountPanel(Session& session, QWidget* parent = nullptr);

    void refresh();
    /// As it is printed: blind, or with what the books say.
    CountSheet sheet() const;
    bool savePdf(const QString& path);

private:
    void buildTools();
    void buildTable(QVBoxLayout* column);
    void buildImport(QVBoxLayout* column);
    void showParts();
    void buildFoot(QVBoxLayout* column);
    void fit();
    void say();
    void go(int row, int column);
    void addLot();
    void book();
    void print();
    void askWhereForPdf();

    Session& m_session;
    CountModel* m_model = nullptr;
    CellTable* m_table = nullptr;
    QLabel* m_empty = nullptr;
    QWidget* m_tools = nullptr;
    QWidget* m_foot = nullptr;
    SuppliesImport* m_import = nullptr;
    QLabel* m_summary = nullptr;
    QLineEdit* m_note = nullptr;
    QCheckBox* m_withBooks = nullptr;
    QPushButton* m_book = nullptr;
    QPushButton* m_addLot = nullptr;
    QString m_refusal;  ///< why it was not booked
};

}  // namespace laneward
