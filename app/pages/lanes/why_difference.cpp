#include "app/pages/lanes/why_text.h"
#include "app/widgets/difference_panel.h"

#include <QCoreApplication>

namespace laneward {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WhyText)
};

}  // namespace

WhyText whyDifference(const DifferenceText& text, bool waiting) {
    WhyText why;
    why.title = text.title;
    WhySection change{{}, {}};
    change.rows.push_back({{}, differenceProof(text, waiting), true});
    if (!text.words.sentence.isEmpty()) change.rows.push_back({{}, text.words.sentence, false});
    const QString lines = differenceLines(text);
    if (!lines.isEmpty()) change.rows.push_back({{}, lines, false});
    const WhySection keys{{}, {{{}, Words::tr("Enter or letting go keeps it, Esc leaves it as it was."), false}}};
    why.sections = {change};
    if (text.faults.isEmpty()) why.sections.push_back(keys);
    return why;
}

}  // namespace laneward
