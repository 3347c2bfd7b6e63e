// The files that belong to a record: seen small, opened, saved, added by a button or by dropping them here, taken off again.
#pragma once

#include "app/edits/session.h"
#include "core/service/attachment.h"

#include <QTemporaryDir>
#include <QWidget>

#include <memory>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace laneward {

class Thumbnails;

class AttachmentsBox : public QWidget {
    Q_OBJECT

public:
    explicit AttachmentsBox(Session& session, QWidget* parent = nullptr);
    ~AttachmentsBox() override;

    /// Files are added to `record`, called `name` in words; shown are those of all records of `chain`.
    void show(const OperationId& record, const QString& name, const std::vector<OperationId>& chain);
    /// Says in the window why it was not attached: a file that is too large is never read.
    bool attach(const QString& path);
    bool save(const Attachment& attachment, const QString& path);

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void askFile();
    void refill();
    QWidget* rowOf(const Attachment& attachment, QWidget* parent);
    void showThumbnail(const Attachment& attachment, QLabel* label);
    QByteArray contentOf(const Attachment& attachment);
    void open(const Attachment& attachment);
    void askSave(const Attachment& attachment);
    void takeOff(const Attachment& attachment);
    bool refuse(const char* rule, const QString& name, std::vector<Value> values = {});

    Session& m_session;
    OperationId m_record;
    QString m_name;
    std::vector<OperationId> m_chain;
    QLabel* m_none = nullptr;
    QWidget* m_list = nullptr;
    QPushButton* m_add = nullptr;
    std::shared_ptr<int> m_shown;  ///< of this filling: pictures that come later are not wanted
    std::unique_ptr<QTemporaryDir> m_opened;
    Thumbnails* m_thumbnails = nullptr;
};

}  // namespace laneward
