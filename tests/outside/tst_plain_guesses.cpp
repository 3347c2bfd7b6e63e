// The plain guess 'as last year' against the seasonal naive forecasts of the R package forecast 8.20 for the air passengers of
// 1949 to 1960 (data/r_forecasts.json; Box and Jenkins): the forecasts of three months, and the errors of all that went before.
#include "core/supplies/forecast_scores.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>

#include <cmath>

using namespace laneward;

class PlainGuessesTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void sameMonthsLastYear();
};

void PlainGuessesTest::sameMonthsLastYear() {
    QFile file(qEnvironmentVariable("LANEWARD_SOURCE") + "/tests/outside/data/r_forecasts.json");
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QJsonObject data = QJsonDocument::fromJson(file.readAll()).object();
    const QJsonArray passengers = data["airpassengers_1949_1960"].toArray();
    const QJsonObject printed = data["snaive_air"].toObject();
    QCOMPARE(passengers.size(), 144);
    // A day stands for a month, and a year has twelve.
    const QDate first(2026, 1, 1);
    std::vector<KnownUse> known{{first, {}}};
    for (const QJsonValue& month : passengers)
        known.push_back({first.addDays(qint64(known.size())), Amount{month.toInt()}});
    const UseCurve curve(known);
    for (int ahead = 0; ahead < 3; ++ahead) {
        const std::optional<double> guess = sameWeeksLastYear(curve, first.addDays(144 + ahead), 1, 12);
        QCOMPARE(guess, std::optional(printed["forecast"][ahead].toDouble()));
    }
    double squares = 0;
    double loss = 0;
    for (int month = 12; month < 144; ++month) {
        const double guess = *sameWeeksLastYear(curve, first.addDays(month), 1, 12);
        const double truth = passengers[month].toDouble();
        squares += (truth - guess) * (truth - guess);
        loss += pinballLoss(0.5, guess, truth);
    }
    QVERIFY(!sameWeeksLastYear(curve, first.addDays(11), 1, 12));
    const double rmse = std::sqrt(squares / 132);
    const double mae = 2 * loss / 132;
    qInfo("as last year: root mean square error %.5f, mean absolute error %.5f", rmse, mae);
    QVERIFY(std::abs(rmse - printed["rmse"].toDouble()) < 1e-5);
    QVERIFY(std::abs(mae - printed["mae"].toDouble()) < 1e-5);
}

QTEST_GUILESS_MAIN(PlainGuessesTest)
#include "tst_plain_guesses.moc"
