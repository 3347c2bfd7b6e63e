// The grammar of a recurrence rule, RFC 5545 section 3.3.10, with its numbers and forbidden combinations.
//
// Stricter than libical, which accepts some rules that the RFC forbids: what passes here is safe to hand to it.
#pragma once

#include "core/base/result.h"

namespace laneward {

/// Errors: Invalid "rule.unreadable" with the rule as subject and the offending part as value; "rule.too-frequent" for a
/// frequency below a day.
Outcome checkRuleSyntax(const QString& rule);

}  // namespace laneward
