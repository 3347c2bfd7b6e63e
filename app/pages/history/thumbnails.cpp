#include "app/pages/history/thumbnails.h"

#include <QBuffer>
#include <QImageReader>

namespace laneward {

namespace {

constexpr qint64 mostPixels = 200'000'000;  // a file of 8 MB may claim to be anything

QImage thumbnailOf(QByteArray content, int side) {
    QBuffer buffer(&content);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (!size.isValid() || qint64{size.width()} * size.height() > mostPixels) return {};
    if (size.width() > side || size.height() > side)
        reader.setScaledSize(size.scaled(side, side, Qt::KeepAspectRatio).expandedTo({1, 1}));
    return reader.read();
}

}  // namespace

Thumbnails::Thumbnails(QObject* parent) : QObject(parent) { m_threads.setMaxThreadCount(1); }

Thumbnails::~Thumbnails() {
    m_threads.clear();
    m_threads.waitForDone();
}

void Thumbnails::make(const QByteArray& content, int side, std::function<void(const QImage&)> taken) {
    m_threads.start([this, content, side, taken = std::move(taken)] {
        const QImage image = thumbnailOf(content, side);
        QMetaObject::invokeMethod(
            this, [image, taken] { taken(image); }, Qt::QueuedConnection);
    });
}

}  // namespace laneward
