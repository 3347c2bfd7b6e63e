// Events from another calendar: what the file does not say is asked once, what it holds is shown, and then it all comes in as one
// undoable edit.
#pragma once

#include "app/edits/session.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace laneward {

struct IcsMapping;

class ImportPanel : public QWidget {
    Q_OBJECT

public:
    ImportPanel(Session& session, QString path, QWidget* parent = nullptr);

Q_SIGNALS:
    void closed();

private:
    void build();
    void buildButtons(QFormLayout* form);
    void look();
    void take();
    IcsMapping mapping() const;

    Session& m_session;
    QString m_path;
    QLineEdit* m_lanes = nullptr;
    QComboBox* m_kind = nullptr;
    QComboBox* m_demand = nullptr;
    QLabel* m_result = nullptr;
    QPushButton* m_take = nullptr;
    std::vector<Series> m_series;
};

}  // namespace laneward
