// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <functional>

#include "domain/base/uuid.h"
#include "domain/records/field.h"
#include "text/animal.h"

namespace duskrow::text {

// What another record is called: a member's name, a district; empty when it is not known.
using NameOf = std::function<QString(const domain::Uuid&)>;

// A value of a field as a person reads it, with its unit: "47 moths", "118 cm", "yes", "Monday 13 July 2026".
// "nothing" for no value.
QString valueWords(const domain::RecordKind& kind, const std::string& field, const domain::Value& value,
    const NameOf& nameOf, const Animal& animal = {});

// Whether a field tells a person something. Those that only tie records together, or repeat another one, do
// not.
bool isWorthReading(const std::string& field);

} // namespace duskrow::text
