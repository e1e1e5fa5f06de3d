// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QStringList>

#include <string>

#include "domain/rules/rule_outcomes.h"
#include "text/animal.h"

namespace duskrow::text {

// What one rule of a protocol says of a trap's season so far. It says when to look, never what to spray.
struct RuleWords {
    QString name; // where and for what it was published
    QString said; // "9 moths in 2 nights, 30 Apr to 2 May: the rule waits for 9 in 2."
    QString meaning; // of what was reached, in the words of the protocol; may be empty
    QStringList remarks;

    // All of it in one line.
    [[nodiscard]] QString line() const;
};

// language  of the texts in the protocol: "en", "fr"
RuleWords ruleWords(const domain::RuleOutcome& outcome, const std::string& language,
    const QLocale& locale = {}, const Animal& animal = {});

// A catch that may be a mean, to a hundredth: "31.5", "28", "0.19".
QString meanCatch(double moths, const QLocale& locale = {});

// "90 degree-days F"
QString warmthWords(const domain::HeatStep& step, const QLocale& locale = {});

} // namespace duskrow::text
