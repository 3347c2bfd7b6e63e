// All that one record says, what corrects it or is corrected by it, what follows it up or is followed up by it, and the files
// that belong to it.
#pragma once

#include "app/pages/history/history_reader.h"

#include <QFrame>

class QFormLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace laneward {

class AttachmentsBox;

class HistoryPanel : public QFrame {
    Q_OBJECT

public:
    explicit HistoryPanel(Session& session, QWidget* parent = nullptr);

    void show(const std::shared_ptr<const HistoryReading>& reading, HistoryRow row);
    const OperationId& current() const { return m_current; }
    bool isOpen() const { return !isHidden(); }

Q_SIGNALS:
    void closeAsked();
    void entryWanted(const laneward::OperationId& id);  ///< that this one leads to

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void buildHead(QVBoxLayout* column);
    void showFacts(const HistoryReading& reading, HistoryRow row);
    void showChain(const HistoryReading& reading, HistoryRow row);
    void showFollowUps(const HistoryReading& reading, HistoryRow row);
    QVBoxLayout* renewedList(QWidget*& part, int at);
    QPushButton* addLink(QVBoxLayout* list, const char* name, const QString& words, const HistoryEntry& to);

    Session& m_session;
    OperationId m_current;
    QLabel* m_title = nullptr;
    QLabel* m_state = nullptr;
    QWidget* m_content = nullptr;
    QWidget* m_facts = nullptr;
    QWidget* m_chain = nullptr;
    QWidget* m_followUps = nullptr;
    AttachmentsBox* m_attachments = nullptr;
};

}  // namespace laneward
