// Small pictures of attachments, made beside the window: a photograph of 8 MB takes a while to be read.
#pragma once

#include <QByteArray>
#include <QImage>
#include <QObject>
#include <QThreadPool>

#include <functional>

namespace laneward {

class Thumbnails : public QObject {
    Q_OBJECT

public:
    explicit Thumbnails(QObject* parent = nullptr);
    ~Thumbnails() override;  ///< waits for those under way

    /// On this thread, later: `taken` gets the picture, at most `side` pixels wide and high; a null one when it cannot be read.
    void make(const QByteArray& content, int side, std::function<void(const QImage&)> taken);

private:
    QThreadPool m_threads;
};

}  // namespace laneward
