#include "app/pages/history/attachments_box.h"

#include "app/edits/plain_label.h"
#include "app/pages/history/thumbnails.h"
#include "core/base/limits.h"

#include <QDesktopServices>
#include <QDragEnterEvent>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QMimeData>
#include <QPushButton>
#include <QSaveFile>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int least = 28;  // height of what is clicked
constexpr int side = 96;   // of a thumbnail

struct TypeWords {
    const char* name;
    const char* ending;
};

TypeWords wordsOf(AttachmentType type) {
    switch (type) {
        case AttachmentType::Jpeg:
            return {"JPEG", "jpg"};
        case AttachmentType::WebP:
            return {"WebP", "webp"};
        case AttachmentType::Pdf:
            return {"PDF", "pdf"};
        case AttachmentType::Png:
            break;
    }
    return {"PNG", "png"};
}

QString filter(const QString& words) { return words + QStringLiteral(" (*.png *.jpg *.jpeg *.webp *.pdf)"); }

QStringList filesIn(const QMimeData& data) {
    QStringList paths;
    for (const QUrl& url : data.urls())
        if (url.isLocalFile()) paths << url.toLocalFile();
    return paths;
}

}  // namespace

AttachmentsBox::AttachmentsBox(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    setAcceptDrops(true);
    setAccessibleName(tr("Attached files"));
    m_thumbnails = new Thumbnails(this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    column->addWidget(headingLabel(tr("Attached files"), this));
    column->addWidget(m_none = proseLabel(tr("None yet. Attach a photograph or a PDF, or drop it here; at most %1 each.")
                                              .arg(QLocale().formattedDataSize(attachmentBytes, 0, QLocale::DataSizeSIFormat)),
                                          this));
    column->addWidget(m_list = new QWidget(this));
    m_add = new QPushButton(tr("&Attach a file…"), this);
    m_add->setObjectName("attachFile");
    m_add->setMinimumHeight(least);
    column->addWidget(m_add, 0, Qt::AlignLeading);
    connect(m_add, &QPushButton::clicked, this, &AttachmentsBox::askFile);
}

AttachmentsBox::~AttachmentsBox() {
    delete m_thumbnails;  // what it would hand over belongs to labels of this box
}

void AttachmentsBox::show(const OperationId& record, const QString& name, const std::vector<OperationId>& chain) {
    m_record = record;
    m_name = name;
    m_chain = chain;
    refill();
    QWidget::show();
}

void AttachmentsBox::refill() {
    m_shown = std::make_shared<int>();
    auto* column = static_cast<QVBoxLayout*>(layout());
    const int at = column->indexOf(m_list);
    m_list->deleteLater();  // one of its buttons may be why
    m_list->hide();
    m_list = new QWidget(this);
    column->insertWidget(at, m_list);
    auto* list = new QVBoxLayout(m_list);
    list->setContentsMargins(0, 0, 0, 0);
    bool any = false;
    for (const OperationId& record : m_chain) {
        const Result<std::vector<Attachment>> all = m_session.store().attachments(record);
        if (!all) {
            Q_EMIT m_session.problem(text(all.error(), m_session.speech()));
            continue;
        }
        for (const Attachment& attachment : standing(*all)) {
            list->addWidget(rowOf(attachment, m_list));
            any = true;
        }
    }
    m_none->setVisible(!any);
    m_list->setVisible(any);
    m_add->setEnabled(!m_session.isReadOnly());
}

QWidget* AttachmentsBox::rowOf(const Attachment& attachment, QWidget* parent) {
    auto* row = new QWidget(parent);
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    auto* picture = plainLabel(QLatin1StringView(wordsOf(attachment.type).name), row);
    picture->setObjectName("thumbnail");
    picture->setAlignment(Qt::AlignCenter);
    picture->setFrameShape(QFrame::StyledPanel);
    picture->setFixedSize(side + 4, side + 4);
    picture->setAccessibleName(shown(attachment.name));
    line->addWidget(picture, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout;
    column->setSpacing(3);
    column->addWidget(
        proseLabel(tr("%1, %2", "file, size")
                       .arg(shown(attachment.name), QLocale().formattedDataSize(attachment.size, 1, QLocale::DataSizeSIFormat)),
                   row));
    const auto button = [&](const QString& words, const QString& spoken, const char* id) {
        auto* made = new QPushButton(words, row);
        made->setObjectName(QLatin1StringView(id));
        made->setAccessibleName(spoken.arg(shown(attachment.name)));
        made->setMinimumHeight(least);
        column->addWidget(made, 0, Qt::AlignLeading);
        return made;
    };
    connect(button(tr("Open"), tr("Open %1"), "openAttachment"), &QPushButton::clicked, this,
            [this, attachment] { open(attachment); });
    connect(button(tr("Save…"), tr("Save %1"), "saveAttachment"), &QPushButton::clicked, this,
            [this, attachment] { askSave(attachment); });
    QPushButton* off = button(tr("Take off"), tr("Take %1 off"), "takeOff");
    off->setEnabled(!m_session.isReadOnly());
    connect(off, &QPushButton::clicked, this, [this, attachment] { takeOff(attachment); });
    column->addStretch();
    line->addLayout(column, 1);
    showThumbnail(attachment, picture);
    return row;
}

void AttachmentsBox::showThumbnail(const Attachment& attachment, QLabel* label) {
    if (attachment.type == AttachmentType::Pdf) return;
    const Result<QByteArray> content = m_session.store().attachmentContent(attachment.sha256);
    if (!content || content->isEmpty()) return;
    const double ratio = devicePixelRatioF();
    m_thumbnails->make(*content, int(side * ratio), [still = std::weak_ptr(m_shown), label, ratio](const QImage& image) {
        if (still.expired() || image.isNull()) return;
        QPixmap pixmap = QPixmap::fromImage(image);
        pixmap.setDevicePixelRatio(ratio);
        label->setPixmap(pixmap);
    });
}

bool AttachmentsBox::refuse(const char* rule, const QString& name, std::vector<Value> values) {
    const Finding finding{Severity::Fault, rule, name.left(limits::nameLength), std::move(values)};
    Q_EMIT m_session.problem(text(finding, m_session.speech()));
    return false;
}

void AttachmentsBox::askFile() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Attach a file"), {}, filter(tr("Photographs and papers")));
    if (!path.isEmpty()) attach(path);
}

bool AttachmentsBox::attach(const QString& path) {
    const QFileInfo info(path);
    const QString name = info.fileName().right(limits::nameLength);
    if (!info.isFile()) return refuse("attachment.unreadable", name);
    if (info.size() > attachmentBytes) return refuse("attachment.too-large", name, {std::int64_t{info.size()}, attachmentBytes});
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return refuse("attachment.unreadable", name);
    const QByteArray content = file.read(attachmentBytes + 1);  // it may have grown meanwhile
    if (file.error() != QFileDevice::NoError) return refuse("attachment.unreadable", name);
    Attachment attachment = attachmentOf(name, content);
    attachment.record = m_record;
    attachment.at = m_session.now();
    const std::vector<Finding> faults = faultsOf(attachment);
    if (!faults.empty()) {
        Q_EMIT m_session.problem(text(faults.front(), m_session.speech()));
        return false;
    }
    const bool done = m_session.record(tr("Attach %1 to: %2").arg(shown(name), m_name), {attachment});
    if (done) refill();
    return done;
}

QByteArray AttachmentsBox::contentOf(const Attachment& attachment) {
    const Result<QByteArray> content = m_session.store().attachmentContent(attachment.sha256);
    if (!content) {
        Q_EMIT m_session.problem(text(content.error(), m_session.speech()));
        return {};
    }
    if (content->isEmpty() || sha256Of(*content) != attachment.sha256) {
        Q_EMIT m_session.problem(
            tr("%1 is not in this database any more: centre files do not carry attached files.").arg(shown(attachment.name)));
        return {};
    }
    return *content;
}

/// Named by its type and hash only: what somebody else called it must not decide what opens it.
void AttachmentsBox::open(const Attachment& attachment) {
    const QByteArray content = contentOf(attachment);
    if (content.isEmpty()) return;
    if (!m_opened) m_opened = std::make_unique<QTemporaryDir>();
    const QString name = attachment.sha256.left(12) + u'.' + QLatin1StringView(wordsOf(attachment.type).ending);
    const QString path = m_opened->filePath(name);
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size()) {
        Q_EMIT m_session.problem(tr("%1 could not be written; nothing was changed.").arg(path));
        return;
    }
    file.close();
    if (!QDesktopServices::openUrl(QUrl::fromLocalFile(path)))
        Q_EMIT m_session.problem(tr("No program opens %1; save it instead.").arg(shown(attachment.name)));
}

void AttachmentsBox::askSave(const Attachment& attachment) {
    const QString path = QFileDialog::getSaveFileName(this, tr("Save the attached file"), attachment.name);
    if (!path.isEmpty()) save(attachment, path);
}

bool AttachmentsBox::save(const Attachment& attachment, const QString& path) {
    const QByteArray content = contentOf(attachment);
    if (content.isEmpty()) return false;
    QSaveFile file(path);
    const bool saved = file.open(QIODevice::WriteOnly) && file.write(content) == content.size() && file.commit();
    if (saved)
        Q_EMIT m_session.said(tr("The file is in %1").arg(path));
    else
        Q_EMIT m_session.problem(tr("%1 could not be written; nothing was changed.").arg(path));
    return saved;
}

void AttachmentsBox::takeOff(const Attachment& attachment) {
    Attachment counter = attachment;
    counter.id = {};
    counter.person = {};
    counter.at = m_session.now();
    counter.corrects = attachment.id;
    counter.withdrawn = true;
    if (m_session.record(tr("Take %1 off").arg(shown(attachment.name)), {counter})) refill();
}

void AttachmentsBox::dragEnterEvent(QDragEnterEvent* event) {
    if (!m_session.isReadOnly() && !filesIn(*event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void AttachmentsBox::dropEvent(QDropEvent* event) {
    event->acceptProposedAction();
    for (const QString& path : filesIn(*event->mimeData()))
        attach(path);
}

}  // namespace laneward
