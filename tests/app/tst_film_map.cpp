// The film map: its colours against what eyes tell apart (CIELAB, CIE 15, and the sight of colour-blind people by the matrices of
// Machado, Oliveira and Fernandes 2009, from memory), and where things lie in it.
#include "app/widgets/film_painter.h"

#include <QPainter>
#include <QTest>

#include <cmath>

using namespace laneward;

namespace {

struct Rgb {
    double r, g, b;  ///< linear
};

double linear(int c) {
    const double x = c / 255.0;
    return x <= 0.04045 ? x / 12.92 : std::pow((x + 0.055) / 1.055, 2.4);
}

Rgb linearOf(QRgb colour) { return {linear(qRed(colour)), linear(qGreen(colour)), linear(qBlue(colour))}; }

struct Lab {
    double l, a, b;
};

/// sRGB to CIELAB, D65.
Lab labOf(const Rgb& c) {
    const auto f = [](double t) { return t > 216.0 / 24'389 ? std::cbrt(t) : (24'389.0 / 27 * t + 16) / 116; };
    const double x = f((0.4124564 * c.r + 0.3575761 * c.g + 0.1804375 * c.b) / 0.95047);
    const double y = f(0.2126729 * c.r + 0.7151522 * c.g + 0.0721750 * c.b);
    const double z = f((0.0193339 * c.r + 0.1191920 * c.g + 0.9503041 * c.b) / 1.08883);
    return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

double apart(const Lab& a, const Lab& b) { return std::hypot(a.l - b.l, a.a - b.a, a.b - b.b); }

using Sight = std::array<double, 9>;
constexpr Sight full{1, 0, 0, 0, 1, 0, 0, 0, 1};
constexpr Sight protan{0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998};
constexpr Sight deutan{0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881};
constexpr Sight tritan{1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900};

Lab seen(QRgb colour, const Sight& m) {
    const Rgb c = linearOf(colour);
    const auto row = [&](size_t i) { return std::clamp(m[i] * c.r + m[i + 1] * c.g + m[i + 2] * c.b, 0.0, 1.0); };
    return labOf({row(0), row(3), row(6)});
}

constexpr std::array allSights{full, protan, deutan, tritan};

Pattern slanted() {
    Pattern pattern;
    pattern.id = {"p"};
    pattern.name = "P";
    pattern.strokes = {{Direction::Out, 1, 10, 4, Microlitres{50}, feet(0), feet(20), 0},
                       {Direction::Out, 1, 39, 1, Microlitres{50}, feet(20), feet(40), 0}};
    return pattern;
}

}  // namespace

class FilmMapTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void amountsAreEvenSteps_data() { grounds(); }
    void amountsAreEvenSteps();
    void orderIsSeenByAll_data() { grounds(); }
    void orderIsSeenByAll();
    void lessIsNotMore_data() { grounds(); }
    void lessIsNotMore();
    void noFilmLooksLikeTheGround();
    void scalesAreRound();
    void boardOneIsOnTheRight();
    void placesOfTheCursor();
    void paintsInBothDirections();

private:
    static void grounds() {
        QTest::addColumn<QColor>("ground");
        QTest::newRow("light") << QColor(Qt::white);
        QTest::newRow("dark") << QColor(30, 30, 34);
    }
};

void FilmMapTest::amountsAreEvenSteps() {
    QFETCH(QColor, ground);
    const FilmColours colours(ground);
    double least = 1e9;
    double most = 0;
    for (int i = 0; i < 16; ++i) {
        const double step = apart(seen(colours.amount(i / 16.0), full), seen(colours.amount((i + 1) / 16.0), full));
        least = std::min(least, step);
        most = std::max(most, step);
    }
    qInfo("sixteen steps of film: CIELAB differences %.1f to %.1f", least, most);
    QVERIFY(most / least < 2);
    QVERIFY(least > 2.3);  // about what is just noticed (Mahy 1994)
}

void FilmMapTest::orderIsSeenByAll() {
    QFETCH(QColor, ground);
    const FilmColours colours(ground);
    const double sign = ground.lightnessF() > 0.5F ? -1 : 1;
    for (const Sight& sight : allSights) {
        for (int i = 0; i < 32; ++i) {
            const double step = seen(colours.amount((i + 1) / 32.0), sight).l - seen(colours.amount(i / 32.0), sight).l;
            QVERIFY2(step * sign > 0.5, qPrintable(QString("step %1: %2").arg(i).arg(step)));
        }
    }
}

void FilmMapTest::lessIsNotMore() {
    QFETCH(QColor, ground);
    const FilmColours colours(ground);
    for (const Sight& sight : allSights) {
        const Lab equal = seen(colours.difference(0), sight);
        for (double part : {0.25, 0.5, 0.75, 1.0}) {
            const Lab less = seen(colours.difference(-part), sight);
            const Lab more = seen(colours.difference(part), sight);
            QVERIFY2(apart(less, more) > 15 * part, qPrintable(QString("%1: %2").arg(part).arg(apart(less, more))));
            QVERIFY(apart(less, equal) > 20 * part && apart(more, equal) > 20 * part);
        }
    }
}

void FilmMapTest::noFilmLooksLikeTheGround() {
    QVERIFY(contrast(QColor(FilmColours(Qt::white).amount(0)), Qt::white) < 1.2);
    QVERIFY(contrast(QColor(FilmColours(Qt::black).amount(0)), Qt::black) < 1.3);
    QCOMPARE(FilmColours(Qt::white).amount(-1), FilmColours(Qt::white).amount(0));
    QCOMPARE(FilmColours(Qt::white).amount(7), FilmColours(Qt::white).amount(1));
}

void FilmMapTest::scalesAreRound() {
    Film film;
    film.cell = feet(60);
    film.cells = 1;
    film.rows.resize(1);
    for (double most : {0.0, 0.3, 1.0, 7.2, 49.99, 51.0, 213.0}) {
        film.rows[0].fill(most);
        const FilmScale scale = scaleFor(film);
        QVERIFY(scale.most >= most);
        const double figures = scale.most / scale.step;
        QVERIFY(std::abs(figures - std::round(figures)) < 1e-9);
        QVERIFY2(figures >= 2 && figures <= 10, qPrintable(QString::number(figures)));
    }
    film.rows[0].fill(-3);
    QVERIFY(differenceScale(film).isDifference);
    QVERIFY(differenceScale(film).most >= 3);
}

void FilmMapTest::boardOneIsOnTheRight() {
    const Film made = film(slanted(), {});
    const FilmScale scale = scaleFor(made);
    const FilmColours colours(Qt::white);
    const QImage image = filmImage(made, scale, colours);
    QCOMPARE(image.size(), QSize(39, 120));
    QCOMPARE(image.pixel(38, 119), colours.amount(made.units(1, 0) / scale.most));
    QCOMPARE(image.pixel(0, 119), colours.amount(0));
    QCOMPARE(image.pixel(0, 60), colours.amount(made.units(39, 59) / scale.most));
    QVERIFY(made.units(39, 59) > 0);
    QCOMPARE(image.pixel(38, 0), colours.amount(0));
}

void FilmMapTest::placesOfTheCursor() {
    const FilmFrame frame = filmFrame(QRectF(0, 0, 500, 900), QFontMetricsF(QFont()));
    for (int board = 1; board <= boards; ++board)
        QCOMPARE(frame.boardAt(frame.boardRect(board).center().x()), board);
    QVERIFY(frame.boardRect(1).center().x() > frame.boardRect(39).center().x());
    QCOMPARE(frame.distanceAt(frame.lane.bottom()), feet(0));
    QCOMPARE(frame.distanceAt(frame.lane.top()), feet(60));
    QVERIFY(std::abs(frame.distanceAt(frame.yOf(feet(17))).value - feet(17).value) < 10);
    QCOMPARE(frame.boardAt(-1e6), 39);
    QCOMPARE(frame.distanceAt(1e6), feet(0));
}

void FilmMapTest::paintsInBothDirections() {
    const Film made = film(slanted(), {});
    const FilmScale scale = scaleFor(made);
    const QImage map = filmImage(made, scale, FilmColours(Qt::white));
    const auto painted = [&](Qt::LayoutDirection direction) {
        QImage image(500, 900, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.setLayoutDirection(direction);
        const FilmFrame frame = filmFrame(QRectF(image.rect()), painter.fontMetrics());
        paintFilm(painter, frame, map, scale, {shadesOf(QPalette()), {QLocale::c(), Zone(), UnitSystem::UsCustomary}});
        return image;
    };
    const QImage left = painted(Qt::LeftToRight);
    QCOMPARE(left, painted(Qt::RightToLeft));
    const FilmFrame frame = filmFrame(QRectF(0, 0, 500, 900), QFontMetricsF(QFont()));
    QCOMPARE(left.pixel(frame.boardRect(5).center().toPoint().x(), int(frame.yOf(feet(10)))), map.pixel(34, 99));
}

QTEST_MAIN(FilmMapTest)
#include "tst_film_map.moc"
