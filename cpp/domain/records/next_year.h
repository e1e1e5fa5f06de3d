// SPDX-License-Identifier: MIT
#pragma once

#include "domain/records/field.h"

namespace duskrow::domain {

// What a member said about another year. Its id comes from both; whoever has no such record, or an empty one,
// has not said.
struct NextYear : Record {
    Uuid member;
    std::optional<int> year; // that it is about
    std::optional<bool> goesOn; // keeps traps in it
};

template <>
const RecordKind& kindOf<NextYear>();

Uuid nextYearId(const Uuid& programme, const Uuid& member, int year);

} // namespace duskrow::domain
