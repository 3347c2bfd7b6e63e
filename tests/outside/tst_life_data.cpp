// Life data against data/reliability.json, which names the source of each (NIST/SEMATECH e-Handbook 8.2.2.1, 8.4.1.3, 8.1.6.2;
// AFWAL-TR-83-2079; Hahn and Shapiro 1967; Bury 1999; Miller 1981; values of the R package survival 3.5.3), and against that
// package itself, on its open data and on drawn lives (tools/life_fits.R).
#include "core/statistics/life_data.h"
#include "core/statistics/random_numbers.h"
#include "core/statistics/rank_regression.h"
#include "core/statistics/survival_curve.h"
#include "tests/support/rscript.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMap>
#include <QTest>

#include <cmath>

using namespace laneward;

namespace {

using Sets = QMap<QString, std::vector<Life>>;

std::vector<Life> livesOf(const QJsonObject& one) {
    std::vector<Life> lives;
    for (const QJsonValue& age : one["failures"].toArray())
        lives.push_back({age.toDouble(), true});
    for (const QJsonValue& age : one["censored"].toArray())
        lives.push_back({age.toDouble(), false});
    for (int i = 0; i < one["n_censored"].toInt(); ++i)
        lives.push_back({one["censored_at"].toDouble(), false});
    return lives;
}

std::vector<Life> livesOf(const QJsonValue& ages, const QJsonValue& failed) {
    std::vector<Life> lives;
    for (int i = 0; i < ages.toArray().size(); ++i)
        lives.push_back({ages[i].toDouble(), failed[i].toInt() == 1});
    return lives;
}

bool near(double ours, double theirs, double tolerance) {
    if (std::abs(ours - theirs) <= tolerance) return true;
    qWarning("%.12g instead of %.12g", ours, theirs);
    return false;
}
bool nearly(double ours, double theirs, double share) { return near(ours, theirs, share * std::abs(theirs)); }

QByteArray textOf(const Sets& sets) {
    QByteArray text;
    for (auto set = sets.begin(); set != sets.end(); ++set)
        for (const Life& life : set.value())
            text += set.key().toUtf8() + ',' + QByteArray::number(life.age, 'g', 17) + (life.failed ? ",1\n" : ",0\n");
    return text;
}

/// Lives of many shapes, sizes and units, a few tied, censored at random.
Sets drawnSets(int count) {
    Draws draws(20'261'112);
    Sets sets;
    for (int n = 0; n < count; ++n) {
        const double shape = std::exp(-0.7 + 2.5 * draws.uniform());
        const double scale = std::exp(12 * draws.uniform() - 3);
        const double censoring = draws.uniform() * 1.5;
        const int size = 8 + int(80 * draws.uniform());
        std::vector<Life> lives;
        int failures = 0;
        for (int i = 0; i < size; ++i) {
            const double end = std::pow(draws.exponential(), 1 / shape);
            const double seen = censoring > 0.1 ? draws.exponential() / censoring : HUGE_VAL;
            double age = std::max(std::min(end, seen), 1e-4);
            if (n % 3 == 0) age = std::max(std::round(age * 10) / 10, 0.1);  // ties
            lives.push_back({age * scale, end <= seen});
            failures += end <= seen;
        }
        if (failures >= 4) sets[QString("set %1").arg(n, 3, 10, QChar('0'))] = std::move(lives);
    }
    return sets;
}

}  // namespace

class LifeDataTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void publishedFits_data();
    void publishedFits();
    void printedFitOfTheHandbook();
    void plotOfTheHandbook();
    void ranksOfTheRivets();
    void exponentialLife();
    void pointOfTheLaw();
    void survivalOfTwoGroups();
    void openDataOfThePackage();
    void drawnLivesAsThePackage();

private:
    QJsonValue fit(const QString& id) const {
        for (const QJsonValue& one : m_data["weibull_fits"].toArray())
            if (one["id"].toString() == id) return one;
        qFatal("%s is missing", qPrintable(id));
        return {};
    }
    QJsonObject m_data;
};

void LifeDataTest::initTestCase() {
    QFile file(qEnvironmentVariable("LANEWARD_SOURCE") + "/tests/outside/data/reliability.json");
    QVERIFY(file.open(QIODevice::ReadOnly));
    m_data = QJsonDocument::fromJson(file.readAll()).object();
}

void LifeDataTest::publishedFits_data() {
    QTest::addColumn<QJsonObject>("published");
    const QJsonArray fits = m_data["weibull_fits"].toArray();
    QCOMPARE(fits.size(), 6);
    for (const QJsonValue& one : fits)
        QTest::newRow(qPrintable(one["id"].toString())) << one.toObject();
}

void LifeDataTest::publishedFits() {
    QFETCH(QJsonObject, published);
    const std::vector<Life> lives = livesOf(published);
    const auto ours = fitWeibull(lives);
    QVERIFY(bool(ours));
    const QJsonObject likeliest = published["mle_exact"].toObject();
    QVERIFY(nearly(ours->law.shape, likeliest["shape"].toDouble(), 1e-6));
    QVERIFY(nearly(ours->law.scale, likeliest["scale"].toDouble(), 1e-6));
    QVERIFY(near(ours->logLikelihood, likeliest["loglik"].toDouble(), 1e-6));
    const auto agrees = [&](const char* key, Regression regression) {
        const QJsonObject theirs = published[QLatin1String(key)].toObject();
        const auto line = fitByRanks(lives, regression);
        return theirs.isEmpty() || (line && nearly(line->shape, theirs["beta"].toDouble(), 1e-5) &&
                                    nearly(line->scale, theirs["eta"].toDouble(), 1e-5));
    };
    QVERIFY(agrees("rrx", Regression::XOnY));
    QVERIFY(agrees("rrx_exact", Regression::XOnY));
    QVERIFY(agrees("rry_exact", Regression::YOnX));
}

void LifeDataTest::printedFitOfTheHandbook() {
    const auto ours = fitWeibull(livesOf(fit("WB01").toObject()));
    QVERIFY(bool(ours));
    QVERIFY(near(ours->law.shape, fit("WB01")["mle_printed"]["shape"].toDouble(), 1.0001e-4));  // 1.720797, printed as 1.7207
    QVERIFY(near(ours->law.scale, fit("WB01")["mle_printed"]["scale"].toDouble(), 5.001e-4));
}

// The handbook's line is through decimal logarithms, y on x: log10(-ln(1 - F)) = intercept + slope log10(age).
void LifeDataTest::plotOfTheHandbook() {
    const QJsonObject printed = fit("WB01")["plot_regression_8_2_2_1"].toObject();
    const auto line = fitByRanks(livesOf(fit("WB01").toObject()), Regression::YOnX);
    QVERIFY(bool(line));
    QVERIFY(near(line->shape, printed["slope"].toDouble(), 1e-6));
    QVERIFY(near(-line->shape * std::log10(line->scale), printed["intercept"].toDouble(), 1e-6));
}

void LifeDataTest::ranksOfTheRivets() {
    const QJsonValue rivets = fit("WB03");
    const std::vector<Life> lives = livesOf(rivets.toObject());
    const std::vector<PlotPoint> points = plotPoints(lives);
    QCOMPARE(points.size(), size_t(5));
    for (int i = 0; i < 5; ++i) {
        QVERIFY(near(points[size_t(i)].adjustedRank, rivets["johnson_adjusted_ranks"][i].toDouble(), 1e-12));
        QVERIFY(near(points[size_t(i)].medianRank, rivets["benard_median_ranks"][i].toDouble(), 5.1e-6));
    }
    const auto line = fitByRanks(lives, Regression::XOnY);
    QVERIFY(bool(line));
    QVERIFY(near(line->shape, rivets["rrx_printed"]["beta"].toDouble(), 5e-4));
    QVERIFY(near(line->scale, rivets["rrx_printed"]["eta"].toDouble(), 5e-4));
}

void LifeDataTest::exponentialLife() {
    const QJsonObject bury = m_data["exponential"].toObject();
    const auto ours = fitExponential(livesOf(bury["times"], bury["failed"]));
    QVERIFY(bool(ours));
    QCOMPARE(ours->failures, 11);
    QVERIFY(near(ours->mean, bury["mttf_mle"].toDouble(), 1e-6));
    QVERIFY(near(ours->mean, 1890.0 / 11, 1e-12));
}

void LifeDataTest::pointOfTheLaw() {
    const QJsonObject point = m_data["weibull_point"].toObject();
    const Weibull law{point["shape"].toDouble(), point["scale"].toDouble()};
    const double age = point["t"].toDouble();
    QVERIFY(near(law.density(age), point["pdf"].toDouble(), 5e-10));
    QVERIFY(near(law.below(age), point["cdf"].toDouble(), 5e-10));
    QVERIFY(near(law.survival(age), 1 - point["cdf"].toDouble(), 5e-10));
    QVERIFY(near(law.mean(), point["mean"].toDouble(), 1e-9));
    QVERIFY(near(law.quantile(law.below(age)), age, 1e-9));
}

void LifeDataTest::survivalOfTwoGroups() {
    const QJsonObject aml = m_data["kaplan_meier_aml"].toObject();
    int values = 0;
    for (const char* group : {"maintained", "nonmaintained"}) {
        const QJsonValue one = aml[QLatin1String(group)];
        const auto curve = survivalCurve(livesOf(one["time"], one["event"]));
        QVERIFY(bool(curve));
        const QJsonObject printed = one["S"].toObject();
        for (auto it = printed.begin(); it != printed.end(); ++it, ++values)
            QVERIFY(near(curve->survivalAt(it.key().toDouble()), it.value().toDouble(), aml["tol"].toDouble()));
    }
    QCOMPARE(values, 16);
}

void LifeDataTest::openDataOfThePackage() {
    if (support::pathOfR().isEmpty()) QSKIP(support::noR);
    QByteArray complaint;
    const auto lines = support::linesOfR({"life_fits.R", "data"}, {}, complaint);
    QVERIFY2(lines, complaint.constData());
    Sets sets;
    for (const auto& line : *lines)
        sets[QString::fromUtf8(line[0])].push_back({line[1].toDouble(), line[2] == "1"});
    const QJsonObject kept = m_data["survreg_open_data"].toObject();
    for (const QString& name : {QString("lung"), QString("ovarian")}) {
        const QJsonObject theirs = kept[name].toObject();
        const auto ours = fitWeibull(sets[name]);
        const auto curve = survivalCurve(sets[name]);
        QVERIFY(ours && curve);
        QCOMPARE(ours->lives, theirs["n"].toInt());
        QCOMPARE(ours->failures, theirs["events"].toInt());
        QVERIFY(nearly(ours->law.shape, theirs["shape"].toDouble(), 1e-6));
        QVERIFY(nearly(ours->law.scale, theirs["eta"].toDouble(), 1e-6));
        QVERIFY(near(ours->logLikelihood, theirs["loglik"].toDouble(), 1e-6));
        QCOMPARE(*curve->median.estimate, theirs["km_median"].toDouble());
        const QJsonObject at = theirs[name == "lung" ? "km_at" : "km"].toObject();
        QVERIFY(!at.isEmpty());
        for (auto it = at.begin(); it != at.end(); ++it)
            QVERIFY(near(curve->survivalAt(it.key().toDouble()), it.value().toDouble(), 6e-4));
    }
    const auto lung = survivalCurve(sets["lung"]);
    QCOMPARE(*lung->median.low, kept["lung"]["km_median_ci95"][0].toDouble());
    QCOMPARE(*lung->median.high, kept["lung"]["km_median_ci95"][1].toDouble());
}

void LifeDataTest::drawnLivesAsThePackage() {
    if (support::pathOfR().isEmpty()) QSKIP(support::noR);
    const Sets sets = drawnSets(60);
    QVERIFY(sets.size() > 50);
    QByteArray complaint;
    const auto lines = support::linesOfR({"life_fits.R"}, textOf(sets), complaint);
    QVERIFY2(lines, complaint.constData());
    QMap<QString, size_t> steps;
    QMap<QByteArray, int> seen;
    const auto same = [](const std::optional<double>& ours, const QByteArray& theirs) {
        return ours ? nearly(*ours, theirs.toDouble(), 1e-9) : theirs == "NA";
    };
    for (const auto& line : *lines) {
        const QString name = QString::fromUtf8(line[1]);
        const auto number = [&](int field) { return line[field].toDouble(); };
        const auto ours = fitWeibull(sets[name]);
        const auto curve = survivalCurve(sets[name]);
        QVERIFY(ours && curve);
        ++seen[line[0]];
        if (line[0] == "fit") {
            QVERIFY(nearly(ours->law.shape, number(2), 1e-6));
            QVERIFY(nearly(ours->law.scale, number(3), 1e-6));
            QVERIFY(near(ours->logLikelihood, number(4), 1e-6));
            QVERIFY(nearly(ours->covariance.shape, number(5), 1e-5));
            QVERIFY(nearly(ours->covariance.scale, number(6), 1e-5));
            QVERIFY(near(ours->covariance.both, number(7), 1e-5 * std::sqrt(number(5) * number(6))));
        } else if (line[0] == "profile") {
            QVERIFY(nearly(ours->shape.low, number(2), 1e-6) && nearly(ours->shape.high, number(3), 1e-6));
            QVERIFY(nearly(ours->scale.low, number(4), 1e-6) && nearly(ours->scale.high, number(5), 1e-6));
        } else if (line[0] == "median") {
            QVERIFY(same(curve->median.estimate, line[2]));
            QVERIFY(same(curve->median.low, line[3]) && same(curve->median.high, line[4]));
        } else {
            const SurvivalStep& step = curve->steps.at(steps[name]++);
            QVERIFY(nearly(step.age, number(2), 1e-9));
            QCOMPARE(step.atRisk, int(number(3)));
            QCOMPARE(step.failed, int(number(4)));
            QVERIFY(near(step.survival, number(5), 1e-12));
            if (step.survival <= 0) continue;  // it has no error
            QVERIFY(near(step.standardError, number(6), 1e-12));
            QVERIFY(near(*step.low, number(7), 1e-9) && near(*step.high, number(8), 1e-9));
        }
    }
    QCOMPARE(seen["fit"], int(sets.size()));
    QCOMPARE(seen["profile"], int(sets.size()));
    qInfo("%d drawn sets and %d steps agree with R survival", seen["fit"], seen["step"]);
}

QTEST_GUILESS_MAIN(LifeDataTest)
#include "tst_life_data.moc"
