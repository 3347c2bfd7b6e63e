#include "tests/support/order_program.h"

namespace support {

using namespace laneward::ordering;

namespace {

class Writer {
public:
    explicit Writer(const OrderCase& given) : m_given(given), m_problem(given.problem) {}

    OrderProgram write() {
        const int periods = int(m_problem.supplies.front().periods.size());
        for (int t = 0; t < periods; ++t) {
            writeOrder(t);
            for (int i = 0; i < int(m_given.offers.size()); ++i)
                writeSupply(i, t);
            closeOrder(t);
        }
        OrderProgram program;
        program.rows = "Minimize\n obj:\nSubject To\n" + m_rows + "Bounds\n" + m_bounds + "General\n" + m_whole + "Binary\n" +
                       m_binary + "End\n";
        program.objective = m_objective;
        return program;
    }

private:
    static QString name(const char* kind, std::initializer_list<int> indices) {
        QString name = QString::fromLatin1(kind);
        for (int index : indices)
            name += QString("_%1").arg(index);
        return name;
    }
    static QString term(Cost factor, const QString& variable) {
        return QString(" %1 %2 %3\n").arg(QLatin1Char(factor < 0 ? '-' : '+')).arg(std::abs(factor)).arg(variable);
    }
    void row(const QString& sum, const char* relation, Cost right) {
        m_rows += QString(" r%1:\n%2 %3 %4\n").arg(m_count++).arg(sum, QLatin1String(relation)).arg(right);
    }
    void pay(Cost cost, const QString& variable) {
        if (cost != 0) m_objective.insert(variable, double(cost));
    }

    void writeOrder(int t) {
        const QString paid = name("z", {t});
        const QString free = name("w", {t});
        m_binary += ' ' + paid + ' ' + free + '\n';
        const Cost always = m_given.orderCosts.empty() ? 0 : m_given.orderCosts[size_t(t)];
        pay(m_problem.terms.freight + always, paid);
        pay(always, free);
        row(term(1, paid) + term(1, free), "<=", 1);
        if (!isPossible(m_problem.terms.freeFrom)) row(term(1, free), "=", 0);
        m_value.clear();
    }

    void closeOrder(int t) {
        const OrderTerms& terms = m_problem.terms;
        const QString paid = term(-terms.minimum, name("z", {t}));
        const Cost free = isPossible(terms.freeFrom) ? std::max(terms.freeFrom, terms.minimum) : 0;
        if (free > 0 || terms.minimum > 0) row(m_value + paid + term(-free, name("w", {t})), ">=", 0);
    }

    void writeSupply(int i, int t) {
        const LotProblem& supply = m_problem.supplies[size_t(i)];
        const LotPeriod& period = supply.periods[size_t(t)];
        const QString bought = name("y", {i, t});
        QString balance = term(-1, bought);
        if (t > 0) balance += term(1, name("y", {i, t - 1}));
        for (int o = 0; o < int(m_given.offers[size_t(i)].size()); ++o)
            balance += writeOffer(i, o, t);
        row(balance, "=", 0);
        m_bounds +=
            QString(" %1 <= %2 <= %3\n").arg(period.least).arg(bought).arg(std::min(period.most, supply.purchase.mostUnits()));
        pay(period.holding, bought);
    }

    QString writeOffer(int i, int o, int t) {
        const PackOffer& offer = m_given.offers[size_t(i)][size_t(o)];
        const Cost most = m_problem.supplies[size_t(i)].purchase.mostUnits() / offer.units;
        QString units, tiers;
        for (int k = 0; k < int(offer.prices.size()); ++k) {
            const PackPrice& price = offer.prices[size_t(k)];
            const Cost last = k + 1 < int(offer.prices.size()) ? offer.prices[size_t(k) + 1].packs - 1 : most;
            const QString packs = name("p", {i, o, k, t});
            const QString tier = name("b", {i, o, k, t});
            m_whole += ' ' + packs + '\n';
            m_binary += ' ' + tier + '\n';
            m_bounds += QString(" 0 <= %1 <= %2\n").arg(packs).arg(most);
            pay(price.each, packs);
            row(term(1, packs) + term(-price.packs, tier), ">=", 0);
            row(term(1, packs) + term(-std::min(last, most), tier), "<=", 0);
            units += term(offer.units, packs);
            tiers += term(1, tier);
            m_value += term(price.each, packs);
        }
        row(tiers + term(-1, name("z", {t})) + term(-1, name("w", {t})), "<=", 0);
        return units;
    }

    const OrderCase& m_given;
    const JointProblem& m_problem;
    QString m_rows, m_bounds, m_whole, m_binary, m_value;
    QJsonObject m_objective;
    int m_count = 0;
};

}  // namespace

OrderProgram programOf(const OrderCase& given) { return Writer(given).write(); }

}  // namespace support
