// Files that belong to a service record or an incident: photographs and papers.
//
// The record says what a file is called, how large it is and its SHA-256; the bytes are kept in the database beside it, once for
// each hash, and stay out of the centre file. Types are told by the first bytes, never by the name.
#pragma once

#include "core/base/finding.h"
#include "core/base/ids.h"

#include <QByteArray>

#include <optional>
#include <vector>

namespace laneward {

enum class AttachmentType { Png, Jpeg, WebP, Pdf };

inline constexpr std::int64_t attachmentBytes = 8'000'000;  ///< at most, of one file

struct Attachment {
    OperationId id;
    Instant at;
    PersonId person;
    OperationId record;  ///< the service record or incident that it belongs to
    QString name;        ///< of the file
    AttachmentType type = AttachmentType::Png;
    std::int64_t size = 0;                ///< bytes
    QString sha256;                       ///< 64 hexadecimal digits
    bool withdrawn = false;               ///< only as a correction: it does not belong there
    std::optional<OperationId> corrects;  ///< replaces that earlier one
    QByteArray content;                   ///< only when it is added: what is read back comes without, told by its hash

    friend bool operator==(const Attachment& a, const Attachment& b) {
        return a.id == b.id && a.at == b.at && a.person == b.person && a.record == b.record && a.name == b.name &&
               a.type == b.type && a.size == b.size && a.sha256 == b.sha256 && a.withdrawn == b.withdrawn &&
               a.corrects == b.corrects;
    }
};

/// By the signatures of PNG (ISO/IEC 15948, 5.2), JPEG (ITU-T T.81, SOI and the next marker), WebP (RIFF container) and PDF
/// (ISO 32000, 7.5.2); nothing for anything else.
std::optional<AttachmentType> typeOf(const QByteArray& content);
QString sha256Of(const QByteArray& content);
/// Type, size and hash of `content`; the rest is left empty. A type that is not taken is told by faultsOf().
Attachment attachmentOf(const QString& name, const QByteArray& content);

/// The attachments that stand: without what a later one corrects, and without the withdrawn. Order as given.
std::vector<Attachment> standing(std::vector<Attachment> attachments);

/// What cannot be ("attachment.…"): too large, empty, of another type, a hash that is none or that the content does not have.
std::vector<Finding> faultsOf(const Attachment& attachment);

}  // namespace laneward
