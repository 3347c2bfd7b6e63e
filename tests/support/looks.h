// Palettes to try paint in, and pictures of widgets in the build folder.
#pragma once

#include <QApplication>
#include <QDir>
#include <QLocale>
#include <QPalette>
#include <QTranslator>
#include <QWidget>

namespace support {

inline QPalette paletteOf(const QColor& window, const QColor& base, const QColor& text, const QColor& highlight,
                          const QColor& on) {
    QPalette palette(window);
    palette.setColor(QPalette::Window, window);
    palette.setColor(QPalette::Base, base);
    palette.setColor(QPalette::Text, text);
    palette.setColor(QPalette::WindowText, text);
    palette.setColor(QPalette::Button, window);
    palette.setColor(QPalette::ButtonText, text);
    palette.setColor(QPalette::Highlight, highlight);
    palette.setColor(QPalette::HighlightedText, on);
    return palette;
}

inline QPalette lightPalette() { return paletteOf("#efefef", "#ffffff", "#202020", "#308cc6", "#ffffff"); }
inline QPalette darkPalette() { return paletteOf("#2a2e32", "#1b1e20", "#eff0f1", "#3daee9", "#fcfcfc"); }
inline QPalette contrastPalette() { return paletteOf("#000000", "#000000", "#ffffff", "#ffff00", "#000000"); }

/// Saves what the widget shows as pictures/NAME.png in the build folder.
inline bool picture(QWidget& widget, const QString& name) {
    QDir folder(qEnvironmentVariable("LANEWARD_BINARY", QDir::tempPath()));
    folder.mkpath("pictures");
    for (int round = 0; round < 3; ++round)
        QCoreApplication::processEvents();  // what was added to a layout shows itself, then the layout, then the scroll area
                                            // follow
    return widget.grab().save(folder.filePath("pictures/" + name + ".png"));
}

/// The looks in which pictures are taken, one after another: light, dark, german and mirrored.
inline const QStringList& looks() {
    static const QStringList all{"light", "dark", "german", "mirrored"};
    return all;
}

/// One of them (others are light) as long as this lives; the clock and numbers are those of a British or German reader.
class Look {
public:
    explicit Look(const QString& look) : m_usual(QApplication::palette()) {
        QApplication::setPalette(look == "dark" ? darkPalette() : lightPalette());
        if (look == "mirrored") QApplication::setLayoutDirection(Qt::RightToLeft);
        const QString language = look == "german" ? "de" : "en";
        QLocale::setDefault(QLocale(look == "german" ? "de_DE" : "en_GB"));
        if (m_words.load("laneward_" + language, qEnvironmentVariable("LANEWARD_BINARY", ".")))
            QApplication::installTranslator(&m_words);
    }
    ~Look() {
        QApplication::removeTranslator(&m_words);
        QApplication::setLayoutDirection(Qt::LeftToRight);
        QApplication::setPalette(m_usual);
        QLocale::setDefault(QLocale::c());
    }
    Look(const Look&) = delete;
    Look& operator=(const Look&) = delete;

private:
    QPalette m_usual;
    QTranslator m_words;
};

}  // namespace support
