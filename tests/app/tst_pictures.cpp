// Pictures of every page, kept in <build>/pictures, with what can be checked without an eye: nothing cut off, nothing blank,
// plain text everywhere, a name for every field, targets that are high enough.
#include "app/demo/demo_centre.h"
#include "app/pages/history/history_page.h"
#include "app/pages/service/service_page.h"
#include "app/pages/supplies/supplies_page.h"
#include "app/pages/today/today_page.h"
#include "app/window/centre_making.h"
#include "app/window/first_page.h"
#include "app/window/main_window.h"
#include "app/window/style.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSet>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTranslator>

using namespace laneward;

namespace {

// Thursday 2026-11-12, 16:43 in London.
constexpr Instant now{1'794'501'780};
constexpr int patience = 120'000;  // milliseconds: beside everything else that a machine under test does

QPalette darkPalette() {
    QPalette dark;
    dark.setColor(QPalette::Window, QColor(45, 45, 48));
    dark.setColor(QPalette::WindowText, QColor(232, 232, 232));
    dark.setColor(QPalette::Base, QColor(30, 30, 32));
    dark.setColor(QPalette::AlternateBase, QColor(40, 40, 43));
    dark.setColor(QPalette::Text, QColor(232, 232, 232));
    dark.setColor(QPalette::Button, QColor(58, 58, 62));
    dark.setColor(QPalette::ButtonText, QColor(232, 232, 232));
    dark.setColor(QPalette::ToolTipBase, QColor(70, 66, 40));
    dark.setColor(QPalette::ToolTipText, QColor(240, 240, 240));
    dark.setColor(QPalette::Highlight, QColor(60, 130, 190));
    dark.setColor(QPalette::HighlightedText, QColor(255, 255, 255));
    return dark;
}

QPalette highContrastPalette() {
    QPalette high;
    for (auto ground : {QPalette::Window, QPalette::Base, QPalette::Button, QPalette::ToolTipBase, QPalette::AlternateBase}) {
        high.setColor(ground, QColor(0, 0, 0));
    }
    for (auto text : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText}) {
        high.setColor(text, QColor(255, 255, 255));
    }
    high.setColor(QPalette::Highlight, QColor(255, 230, 0));
    high.setColor(QPalette::HighlightedText, QColor(0, 0, 0));
    return high;
}

int coloursIn(const QImage& image) {
    QSet<QRgb> colours;
    for (int y = 0; y < image.height(); y += 3) {
        for (int x = 0; x < image.width(); x += 3)
            colours.insert(image.pixel(x, y));
    }
    return int(colours.size());
}

QString nameOf(const QWidget* widget) {
    return QString("%1 %2 '%3'").arg(widget->metaObject()->className(), widget->objectName(), widget->accessibleName());
}

/// Labels and buttons that are narrower than their text.
QStringList cutTexts(const QWidget* window) {
    QStringList cut;
    for (const QLabel* label : window->findChildren<QLabel*>()) {
        if (!label->isVisible() || label->wordWrap() || label->text().isEmpty()) continue;
        if (label->sizeHint().width() > label->width() + 1) cut << "label '" + label->text() + "'";
    }
    for (const QAbstractButton* button : window->findChildren<QAbstractButton*>()) {
        if (!button->isVisible() || button->text().isEmpty()) continue;
        if (button->fontMetrics().horizontalAdvance(button->text().remove('&')) > button->width())
            cut << "button '" + button->text() + "'";
    }
    return cut;
}

/// What people click or type into; the field inside a spin box or a combo box is part of it.
bool isTarget(const QWidget* widget) {
    if (qobject_cast<const QLineEdit*>(widget))
        return !widget->parentWidget()->inherits("QAbstractSpinBox") && !widget->parentWidget()->inherits("QComboBox");
    return widget->inherits("QAbstractButton") || widget->inherits("QComboBox") || widget->inherits("QAbstractSpinBox");
}

QStringList unfitWidgets(const QWidget* window, int leastHeight) {
    QStringList unfit;
    for (const QWidget* widget : window->findChildren<QWidget*>()) {
        if (!widget->isVisible() || !widget->isEnabled()) continue;
        if (const auto* label = qobject_cast<const QLabel*>(widget); label && label->textFormat() != Qt::PlainText) {
            unfit << "not plain: " + nameOf(widget);
        }
        if (widget->focusPolicy() == Qt::NoFocus || !isTarget(widget)) continue;
        QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(widget));
        const bool named = spoken && (!spoken->text(QAccessible::Name).isEmpty());
        if (!named) unfit << "no name: " + nameOf(widget);
        if (widget->height() < leastHeight) unfit << QString("%1 px high: %2").arg(widget->height()).arg(nameOf(widget));
    }
    return unfit;
}

}  // namespace

class PicturesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void cleanup();
    void pages_data();
    void pages();
    void forms();
    void firstPage();

private:
    void keep(QWidget& window, const QString& name, double scale = 1);

    QTemporaryDir m_directory;
    Location m_location;
    FixedClock m_clock{now};
    QTranslator m_translator;
    QTranslator m_english;
    QPalette m_usual;
};

void PicturesTest::initTestCase() {
    m_usual = QApplication::palette();
    m_location = {Location::Kind::Sqlite, m_directory.filePath("demo.laneward"), {}};
    QVERIFY(QDir().mkpath(qEnvironmentVariable("LANEWARD_BINARY", ".") + "/pictures"));
    QVERIFY(makeCentre(m_location, demoCentre(now), now));
    QVERIFY(m_english.load("laneward_en", qEnvironmentVariable("LANEWARD_BINARY", ".")));
    QApplication::installTranslator(&m_english);  // for its plural forms
}

void PicturesTest::cleanup() {
    QApplication::removeTranslator(&m_translator);
    QLocale::setDefault(QLocale("en_GB"));
    QApplication::setLayoutDirection(Qt::LeftToRight);
    QApplication::setPalette(m_usual);
    applyStyle(TargetSize::Usual);
}

void PicturesTest::keep(QWidget& window, const QString& name, double scale) {
    for (int round = 0; round < 3; ++round)
        QCoreApplication::processEvents();  // what was just filled lays itself out, then what holds it
    QImage image((QSizeF(window.size()) * scale).toSize(), QImage::Format_RGB32);
    image.setDevicePixelRatio(scale);
    window.render(&image);
    QVERIFY2(coloursIn(image) > 12, qPrintable(name));
    QVERIFY(image.save(QString("%1/pictures/%2.png").arg(qEnvironmentVariable("LANEWARD_BINARY", "."), name)));
}

void PicturesTest::pages_data() {
    QTest::addColumn<QString>("look");
    QTest::addColumn<QSize>("size");
    for (const char* look : {"light", "dark", "contrast", "german", "mirrored", "shop"})
        QTest::newRow(look) << QString(look) << QSize(1280, 720);
    QTest::newRow("double") << QString("double") << QSize(1280, 720);
    QTest::newRow("large") << QString("large") << QSize(1920, 1080);
}

void PicturesTest::pages() {
    QFETCH(QString, look);
    QFETCH(QSize, size);
    applyStyle(look == "shop" ? TargetSize::Shop : TargetSize::Usual);
    if (look == "dark") QApplication::setPalette(readablePalette(darkPalette()));
    if (look == "contrast") QApplication::setPalette(readablePalette(highContrastPalette()));
    if (look == "mirrored") QApplication::setLayoutDirection(Qt::RightToLeft);
    QLocale::setDefault(QLocale(look == "german" ? "de_DE" : "en_GB"));
    if (look == "german") {
        QVERIFY(m_translator.load("laneward_de", qEnvironmentVariable("LANEWARD_BINARY", ".")));
        QApplication::installTranslator(&m_translator);
    }
    MainWindow window(m_clock);
    QVERIFY(window.openCentre(m_location));
    window.resize(size);
    window.show();
    QVERIFY(QTest::qWaitForWindowExposed(&window));
    Workspace& workspace = *window.workspace();
    for (size_t i = 0; i < workspace.pages().size(); ++i) {
        workspace.showPage(int(i));
        QCoreApplication::processEvents();
        const Page* page = workspace.currentPage();
        const QString name = page->iconName() + "-" + look;
        const auto* service = qobject_cast<const ServicePage*>(page);
        QTRY_VERIFY_WITH_TIMEOUT(!service || !service->isBusy(), patience);
        QTRY_VERIFY_WITH_TIMEOUT(!workspace.session().isSearching(), patience);
        const auto* history = qobject_cast<const HistoryPage*>(page);
        QTRY_VERIFY_WITH_TIMEOUT(!history || !history->isBusy(), patience);
        keep(window, name, look == "double" ? 2 : 1);
        QVERIFY(!page->headline().isEmpty());
        QVERIFY(!page->question().isEmpty());
        const auto* headline = window.findChild<QLabel*>("headline");
        QVERIFY(headline && headline->isVisible());
        QCOMPARE(headline->text(), page->headline());
        QCOMPARE(cutTexts(&window).join("\n"), QString());
        QCOMPARE(unfitWidgets(&window, look == "shop" ? 44 : 24).join("\n"), QString());
        QCOMPARE(window.size(), size);
        const auto* supplies = qobject_cast<const SuppliesPage*>(page);
        const auto* tabs = supplies || service ? page->findChild<QTabWidget*>() : nullptr;
        for (int tab = 0; tabs && tab < tabs->count(); ++tab) {
            const_cast<QTabWidget*>(tabs)->setCurrentIndex(tab);
            QTRY_VERIFY_WITH_TIMEOUT(!(supplies && supplies->isBusy()) && !(service && service->isBusy()), patience);
            QCoreApplication::processEvents();
            keep(window, QString("%1-%2").arg(name).arg(tab), look == "double" ? 2 : 1);
            QCOMPARE(cutTexts(&window).join("\n"), QString());
            QCOMPARE(unfitWidgets(&window, look == "shop" ? 44 : 24).join("\n"), QString());
            QCOMPARE(window.size(), size);
        }
    }
}

void PicturesTest::forms() {
    MainWindow window(m_clock);
    QVERIFY(window.openCentre(m_location));
    window.resize(1280, 720);
    window.show();
    QVERIFY(QTest::qWaitForWindowExposed(&window));
    Workspace& workspace = *window.workspace();
    auto* today = qobject_cast<TodayPage*>(workspace.currentPage());
    QVERIFY(today);
    const auto look = [&](const QString& name) {
        QCoreApplication::processEvents();
        keep(window, name);
        QCOMPARE(cutTexts(&window).join("\n"), QString());
        QCOMPARE(unfitWidgets(&window, 24).join("\n"), QString());
    };
    today->recordWithChanges();
    look("form-run");
    today->recordUnplanned();
    look("form-unplanned");
    today->recordIncident();
    look("form-incident");
    QTest::mouseClick(today->findChildren<QPushButton*>("measure").front(), Qt::LeftButton);
    workspace.showMessage("Ben changed Thursday Fours at 16:41; nothing was changed. You now see the latest.");
    look("form-levels");
    workspace.showSheet(workspace.session().today());
    look("sheet-preview");
}

void PicturesTest::firstPage() {
    applyStyle(TargetSize::Usual);
    MainWindow window(m_clock);
    window.resize(1280, 720);
    window.show();
    QVERIFY(QTest::qWaitForWindowExposed(&window));
    keep(window, "first");
    window.firstPage()->showSetup();
    QCoreApplication::processEvents();
    keep(window, "setup");
    QCOMPARE(cutTexts(&window).join("\n"), QString());
    QCOMPARE(unfitWidgets(&window, 24).join("\n"), QString());
}

QTEST_MAIN(PicturesTest)
#include "tst_pictures.moc"
