#include "core/documents/history_details.h"

#include "core/documents/history_names.h"
#include "core/documents/service_words.h"
#include "core/documents/stock_words.h"

#include <QCoreApplication>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

/// Notes keep their lines.
QString prose(const QString& note) {
    QStringList lines;
    for (const QString& line : note.split(u'\n'))
        lines << shown(line);
    return lines.join(u'\n');
}

QString text(GeometryFeature feature) {
    switch (feature) {
        case GeometryFeature::Level:
            return say(QT_TRANSLATE_NOOP("wording", "level"));
        case GeometryFeature::Tilt:
            return say(QT_TRANSLATE_NOOP("wording", "tilt"));
        case GeometryFeature::Crown:
            return say(QT_TRANSLATE_NOOP("wording", "crown"));
        case GeometryFeature::Depression:
            return say(QT_TRANSLATE_NOOP("wording", "depression"));
    }
    return {};
}

class Facts {
public:
    Facts(const SeasonState& season, const Speech& speech) : m_names(season), m_season(season), m_speech(speech) {}

    std::vector<HistoryFact> of(const HistoryEntry& entry, const HistorySlice& slice) {
        put(say(QT_TRANSLATE_NOOP("wording", "When")), entry.when);
        put(say(QT_TRANSLATE_NOOP("wording", "Who")), entry.personName);
        put(say(QT_TRANSLATE_NOOP("wording", "Machine")), entry.machineName);
        put(say(QT_TRANSLATE_NOOP("wording", "Lanes")), entry.laneText);
        switch (entry.kind) {
            case HistoryKind::Run:
                tell(slice.runs[entry.place]);
                break;
            case HistoryKind::Fill:
            case HistoryKind::Levels:
                tell(slice.readings[entry.place]);
                break;
            case HistoryKind::Service:
                tell(slice.services[entry.place], entry);
                break;
            case HistoryKind::Tape:
                tell(slice.tapes[entry.place]);
                break;
            case HistoryKind::Inspection:
                tell(slice.inspections[entry.place]);
                break;
            case HistoryKind::Count:
                tell(slice.counts[entry.place]);
                break;
            case HistoryKind::Stock:
                tell(slice.movements[entry.place]);
                break;
            case HistoryKind::Incident:
                tell(slice.incidents[entry.place]);
                break;
            case HistoryKind::HandOver:
                put(note(), prose(slice.handOvers[entry.place].text));
                break;
            case HistoryKind::Counter:
            case HistoryKind::Pack:
                put(say(QT_TRANSLATE_NOOP("wording", "In words")), entry.words);
                break;
        }
        return std::move(m_facts);
    }

private:
    void put(const QString& name, const QString& text) {
        if (!text.isEmpty()) m_facts.push_back({name, text});
    }
    static QString note() { return say(QT_TRANSLATE_NOOP("wording", "Note")); }

    void tell(const RunLog& run) {
        put(say(QT_TRANSLATE_NOOP("wording", "Treatment")), text(run.treatment));
        if (run.pattern) {
            QString pattern = m_names.pattern(*run.pattern);
            if (run.patternVersion > 0)
                pattern = say(QT_TRANSLATE_NOOP("wording", "%1, version %2"))
                              .arg(pattern, m_speech.locale.toString(qlonglong(run.patternVersion)));
            put(say(QT_TRANSLATE_NOOP("wording", "Pattern")), pattern);
        }
        put(say(QT_TRANSLATE_NOOP("wording", "Result")), text(run.result));
        put(say(QT_TRANSLATE_NOOP("wording", "From")), dateTimeText(run.time.begin, m_speech));
        put(say(QT_TRANSLATE_NOOP("wording", "Time")), durationText(run.time.length(), m_speech));
        put(say(QT_TRANSLATE_NOOP("wording", "Conditioner")), amountText(run.use.conditionerTotal(), m_speech));
        put(say(QT_TRANSLATE_NOOP("wording", "Cleaner")), amountText(run.use.cleaner, m_speech));
        put(say(QT_TRANSLATE_NOOP("wording", "Waste")), amountText(run.use.waste, m_speech));
        put(note(), prose(run.note));
        put(say(QT_TRANSLATE_NOOP("wording", "Written down")), dateTimeText(run.recordedAt, m_speech));
    }

    void tell(const LevelReading& reading) {
        const MachineLevels& levels = reading.levels;
        const Machine* machine = findMachine(m_season.centre, levels.machine);
        for (size_t slot = 0; slot < levels.conditioner.size(); ++slot) {
            const bool has = !machine || !machine->conditioners[slot].isEmpty();
            if (!has) continue;
            const QString name = machine ? shown(machine->conditioners[slot]) : say(QT_TRANSLATE_NOOP("wording", "Conditioner"));
            put(name, amountText(levels.conditioner[slot], m_speech) + pouredOf(reading, slot));
        }
        const QString cleaner =
            machine && !machine->cleaner.isEmpty() ? shown(machine->cleaner) : say(QT_TRANSLATE_NOOP("wording", "Cleaner"));
        const QString poured =
            reading.poured ? say(QT_TRANSLATE_NOOP("wording", " (poured %1)")).arg(amountText(reading.poured->cleaner, m_speech))
                           : QString();
        put(cleaner, amountText(levels.cleaner, m_speech) + poured);
        put(say(QT_TRANSLATE_NOOP("wording", "Waste")), amountText(levels.waste, m_speech));
        put(say(QT_TRANSLATE_NOOP("wording", "Lanes left on this charge")), m_speech.locale.toString(levels.lanesLeft));
        if (levels.volts) put(say(QT_TRANSLATE_NOOP("wording", "Volts")), voltsText(*levels.volts, m_speech));
    }

    QString pouredOf(const LevelReading& reading, size_t slot) const {
        if (!reading.poured) return {};
        return say(QT_TRANSLATE_NOOP("wording", " (poured %1)")).arg(amountText(reading.poured->conditioner[slot], m_speech));
    }

    void tell(const ServiceRecord& record, const HistoryEntry& entry) {
        put(say(QT_TRANSLATE_NOOP("wording", "Item")), entry.of);
        const ServiceItem* item = m_names.item(record.item);
        const Duty* duty = item ? findDuty(*item, record.duty) : nullptr;
        put(say(QT_TRANSLATE_NOOP("wording", "Duty")), shown(duty ? duty->name : record.duty.value));
        put(say(QT_TRANSLATE_NOOP("wording", "Result")), text(record.result));
        if (!entry.machine.isEmpty()) put(say(QT_TRANSLATE_NOOP("wording", "Meters")), metersText(record.meters, m_speech));
        put(say(QT_TRANSLATE_NOOP("wording", "Work")), durationText(minutes(record.minutes), m_speech));
        QStringList parts;
        for (const PartUsed& part : record.parts)
            parts << partText(part);
        put(say(QT_TRANSLATE_NOOP("wording", "Parts")), parts.join(u'\n'));
        if (!record.cost.isZero()) put(say(QT_TRANSLATE_NOOP("wording", "Cost besides parts")), moneyText(record.cost, m_speech));
        put(say(QT_TRANSLATE_NOOP("wording", "Finding")), prose(record.finding));
        put(note(), prose(record.note));
    }

    /// "Cushion brush 1, lot L9, 48.00 EUR"; prices are those of today.
    QString partText(const PartUsed& part) const {
        QStringList facts{m_names.supply(part.supply) + u' ' + amountText(part.amount, m_names.kindOf(part.supply), m_speech)};
        if (!part.lot.isEmpty()) facts << say(QT_TRANSLATE_NOOP("wording", "lot %1")).arg(shown(part.lot));
        const std::optional<Money> price = m_names.price(part.supply, part.amount);
        facts << (price ? say(QT_TRANSLATE_NOOP("wording", "%1 at today's price")).arg(moneyText(*price, m_speech))
                        : say(QT_TRANSLATE_NOOP("wording", "no price known")));
        return facts.join(QLatin1StringView(", "));
    }

    void tell(const TapeReading& reading) {
        put(say(QT_TRANSLATE_NOOP("wording", "Pattern")), m_names.pattern(reading.pattern));
        put(say(QT_TRANSLATE_NOOP("wording", "Distance")), lengthText(reading.distance, m_speech));
        QStringList units;
        for (const auto& value : reading.milliUnits)
            units << (value ? m_speech.locale.toString(double(*value) / 1'000.0, 'f', 1) : QStringLiteral("-"));
        put(say(QT_TRANSLATE_NOOP("wording", "Units, board 1 to 39")), isMeasured(reading) ? units.join(u' ') : QString());
        put(note(), prose(reading.note));
    }

    void tell(const Inspection& inspection) {
        QStringList values;
        for (const GeometryValue& value : inspection.values) {
            const QString departure = m_speech.locale.toString(double(value.departure.value) / 1'000.0, 'f', 2);
            values << say(QT_TRANSLATE_NOOP("wording", "%1 at %2: %3 mm"))
                          .arg(text(value.feature), lengthText(value.distance, m_speech), departure);
        }
        put(say(QT_TRANSLATE_NOOP("wording", "Measured")), values.join(u'\n'));
        put(note(), prose(inspection.note));
    }

    void tell(const StockCount& count) {
        QStringList lines;
        for (const CountLine& line : count.lines) {
            QStringList facts{m_names.supply(line.key.supply), laneward::text(line.key.place.kind)};
            if (!line.key.container.isEmpty()) facts << shown(line.key.container);
            if (!line.key.lot.isEmpty()) facts << say(QT_TRANSLATE_NOOP("wording", "lot %1")).arg(shown(line.key.lot));
            lines << facts.join(QLatin1StringView(", ")) + QLatin1StringView(": ") +
                         amountText(line.counted, m_names.kindOf(line.key.supply), m_speech);
        }
        put(say(QT_TRANSLATE_NOOP("wording", "Counted")), lines.join(u'\n'));
        put(note(), prose(count.note));
    }

    void tell(const Movement& movement) {
        put(say(QT_TRANSLATE_NOOP("wording", "Movement")), laneward::text(movement.kind));
        QStringList lines;
        for (const Entry& entry : movement.entries) {
            if (entry.amount <= Amount{0}) continue;
            QStringList facts{m_names.supply(entry.key.supply),
                              amountText(entry.amount, m_names.kindOf(entry.key.supply), m_speech),
                              laneward::text(entry.key.place.kind)};
            if (!entry.key.place.machine.isEmpty()) facts << m_names.machine(entry.key.place.machine);
            if (!entry.key.lot.isEmpty()) facts << say(QT_TRANSLATE_NOOP("wording", "lot %1")).arg(shown(entry.key.lot));
            lines << facts.join(QLatin1StringView(", "));
        }
        put(say(QT_TRANSLATE_NOOP("wording", "Amounts")), lines.join(u'\n'));
        if (movement.source == MovementSource::Order)
            put(say(QT_TRANSLATE_NOOP("wording", "Order")), m_names.orderNumber(movement.sourceId));
        put(say(QT_TRANSLATE_NOOP("wording", "Why")), prose(movement.reason));
        put(say(QT_TRANSLATE_NOOP("wording", "Written down")), dateTimeText(movement.recordedAt, m_speech));
    }

    void tell(const Incident& incident) {
        if (!incident.answers) put(say(QT_TRANSLATE_NOOP("wording", "What happened")), laneward::text(incident.kind));
        put(incident.answers ? say(QT_TRANSLATE_NOOP("wording", "What was done")) : note(), prose(incident.text));
    }

    HistoryNames m_names;
    const SeasonState& m_season;
    const Speech& m_speech;
    std::vector<HistoryFact> m_facts;
};

}  // namespace

std::vector<HistoryFact> historyDetails(const HistoryEntry& entry, const HistorySlice& slice, const SeasonState& season,
                                        const Speech& speech) {
    return Facts(season, speech).of(entry, slice);
}

bool takesAttachments(HistoryKind kind) { return kind == HistoryKind::Service || kind == HistoryKind::Incident; }

}  // namespace laneward
