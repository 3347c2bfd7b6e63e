// Templates of findings: internal to this room.
//
// In a template %1 is the subject and %2, %3 … the values; %T2 prints an instant as time of day only and %W2 a number as a
// treatment. %n is the first whole number among the values, in the plural forms of the language.
#pragma once

#include <QByteArray>

#include <span>

namespace laneward {

struct Phrase {
    const char* rule;
    const char* text;
    bool plural = false;
};

std::span<const Phrase> planningPhrases();
std::span<const Phrase> violationPhrases();
std::span<const Phrase> centrePhrases();
std::span<const Phrase> calendarPhrases();
std::span<const Phrase> icalendarPhrases();
std::span<const Phrase> storagePhrases();
std::span<const Phrase> filePhrases();
std::span<const Phrase> readingPhrases();
std::span<const Phrase> driftPhrases();
std::span<const Phrase> supplyPhrases();
std::span<const Phrase> orderPhrases();
std::span<const Phrase> servicePhrases();
std::span<const Phrase> wearPhrases();
std::span<const Phrase> sheetPhrases();
std::span<const Phrase> cautionPhrases();
std::span<const Phrase> guidePhrases();

/// Nothing for a rule that nobody worded.
const Phrase* phraseOf(const QByteArray& rule);

}  // namespace laneward
