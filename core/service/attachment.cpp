#include "core/service/attachment.h"

#include "core/base/corrections.h"
#include "core/base/limits.h"

#include <QCryptographicHash>

#include <algorithm>

namespace laneward {

namespace {

bool isHash(const QString& text) {
    constexpr qsizetype digits = 64;
    return text.size() == digits && std::all_of(text.begin(), text.end(), [](QChar c) {
               return (c >= QLatin1Char('0') && c <= QLatin1Char('9')) || (c >= QLatin1Char('a') && c <= QLatin1Char('f'));
           });
}

void add(std::vector<Finding>& faults, const char* rule, const QString& name, std::vector<Value> values = {}) {
    faults.push_back({Severity::Fault, rule, name.left(limits::nameLength), std::move(values)});
}

}  // namespace

std::optional<AttachmentType> typeOf(const QByteArray& content) {
    constexpr qsizetype riffHead = 8;  // "RIFF" and a length
    if (content.startsWith("\x89PNG\r\n\x1a\n")) return AttachmentType::Png;
    if (content.startsWith("\xff\xd8\xff")) return AttachmentType::Jpeg;
    if (content.startsWith("RIFF") && content.mid(riffHead, 4) == "WEBP") return AttachmentType::WebP;
    if (content.startsWith("%PDF-")) return AttachmentType::Pdf;
    return std::nullopt;
}

QString sha256Of(const QByteArray& content) {
    return QString::fromLatin1(QCryptographicHash::hash(content, QCryptographicHash::Sha256).toHex());
}

Attachment attachmentOf(const QString& name, const QByteArray& content) {
    Attachment made;
    made.name = name;
    made.type = typeOf(content).value_or(AttachmentType::Png);
    made.size = content.size();
    made.sha256 = sha256Of(content);
    made.content = content;
    return made;
}

std::vector<Attachment> standing(std::vector<Attachment> attachments) {
    attachments = uncorrected(std::move(attachments));
    std::erase_if(attachments, [](const Attachment& attachment) { return attachment.withdrawn; });
    return attachments;
}

std::vector<Finding> faultsOf(const Attachment& attachment) {
    std::vector<Finding> faults;
    const QString& name = attachment.name;
    if (name.trimmed().isEmpty() || name.size() > limits::nameLength) add(faults, "attachment.name", name);
    if (attachment.size > attachmentBytes) add(faults, "attachment.too-large", name, {attachment.size, attachmentBytes});
    if (attachment.size < 1) add(faults, "attachment.empty", name);
    if (!isHash(attachment.sha256)) add(faults, "attachment.hash", name);
    if (!faults.empty() || attachment.content.isEmpty()) return faults;
    const bool same = attachment.content.size() == attachment.size && sha256Of(attachment.content) == attachment.sha256;
    if (typeOf(attachment.content) != attachment.type)
        add(faults, "attachment.type", name);
    else if (!same)
        add(faults, "attachment.hash", name);
    return faults;
}

}  // namespace laneward
