// SPDX-License-Identifier: MIT
#pragma once

#include <array>

#include "domain/records/field.h"

// What a coordinator asks of a record, and what whoever has the trap answers. sync/FORMAT.md section 5.
namespace duskrow::domain {

// Only coordinators ask, and only they settle what was asked.
struct Question : Record {
    Uuid subject; // the record that is asked about
    Uuid trap; // whose record it is
    Uuid member; // who is asked
    std::optional<LocalDay> day; // of the work that is asked about
    std::string words;
    std::optional<bool> settled;
};

enum class Answered { Right, Corrected };
inline constexpr std::array<std::string_view, 2> answeredNames{"right", "corrected"};

// One a question. It bears trap and day of the work, so that a borrower may answer for the days of his loan.
struct Answer : Record {
    Uuid question;
    Uuid trap;
    std::optional<LocalDay> day;
    std::optional<Answered> answered; // nothing where words alone answer
    std::string words;
};

template <>
const RecordKind& kindOf<Question>();
template <>
const RecordKind& kindOf<Answer>();

Uuid answerId(const Uuid& programme, const Uuid& question);

} // namespace duskrow::domain
