// The history, made ready for being searched as one types: all words of an entry, folded, behind each other in one text.
//
// A search finds entries in which every word occurs somewhere, whatever its case and accents. Ten years of a large centre,
// 200,000 entries, are gone through in the time of one picture of a film; the text is compared as bytes and never made anew.
//
//     const HistoryIndex index(historyEntries(slice, season, speech));
//     for (const HistoryRow row : index.find({.text = "brush heron"})) show(index.at(row));
#pragma once

#include "core/documents/history_entry.h"

#include <array>

namespace laneward {

using HistoryRow = std::uint32_t;

/// What is looked for; what is left empty takes everything.
struct HistoryQuery {
    QString text;  ///< words between spaces
    std::optional<HistoryKind> kind;
    MachineId machine;
    ItemId item;
    int lane = 0;
    PersonId person;
    QString product;
    Span time{{std::int64_t{-1} << 60}, {std::int64_t{1} << 60}};
    bool withCorrected = false;  ///< also what was corrected, and what only withdraws
};

enum class HistoryColumn { When, What, Machine, Lanes, Person, Of, Words, Meter, Minutes, Cost };
inline constexpr int historyColumns = int(HistoryColumn::Cost) + 1;

/// Without case and accents: decomposed by compatibility (Unicode NFKD), marks dropped, case folded; ß as ss, ø as o.
QString folded(const QString& text);

class HistoryIndex {
public:
    HistoryIndex() : HistoryIndex(std::vector<HistoryEntry>{}) {}
    /// `entries` the newest first.
    explicit HistoryIndex(std::vector<HistoryEntry> entries);

    size_t size() const { return m_entries.size(); }
    const HistoryEntry& at(HistoryRow row) const { return m_entries[row]; }
    const std::vector<HistoryEntry>& entries() const { return m_entries; }

    /// In the order of the entries.
    std::vector<HistoryRow> find(const HistoryQuery& query) const;
    /// By a column; equal ones in the order of the entries. The first sort by a column of text takes longer.
    void sort(std::vector<HistoryRow>& rows, HistoryColumn by, bool ascending) const;

    /// An entry and all that corrects it or that it corrects, the oldest record first.
    std::vector<HistoryRow> chainOf(HistoryRow row) const;

    /// What an entry follows up; nothing when it follows up none, or one that is not here.
    std::optional<HistoryRow> answeredBy(HistoryRow row) const;
    /// What follows up an entry, or one of its chain, and stands; the oldest first.
    std::vector<HistoryRow> answersTo(HistoryRow row) const;

    /// What a plain scan would look at: all words of an entry.
    static QString wordsOf(const HistoryEntry& entry);

private:
    using Range = std::pair<HistoryRow, HistoryRow>;

    Range within(const Span& time) const;
    bool holds(HistoryRow row, const QByteArray& word) const;
    template <class Take>
    void scan(const Range& range, const QByteArrayList& words, Take take) const;
    const std::vector<HistoryRow>& ranks(HistoryColumn column) const;
    std::optional<HistoryRow> rowOf(const OperationId& id) const;

    std::vector<HistoryEntry> m_entries;
    QByteArray m_text;                    ///< UTF-8, a line an entry
    std::vector<std::uint32_t> m_starts;  ///< of each line, and the end of the last
    mutable std::array<std::vector<HistoryRow>, size_t(historyColumns)> m_ranks;
};

}  // namespace laneward
