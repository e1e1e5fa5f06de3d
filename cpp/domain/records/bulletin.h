// SPDX-License-Identifier: MIT
#pragma once

#include "domain/records/field.h"

namespace duskrow::domain {

// A week as it was published, on its way back to those who counted. It holds what anybody may read, and its
// id comes from what it is about: another issue of the week goes over the one before.
struct PublishedBulletin : Record {
    Uuid season;
    std::string pest; // protocol id
    std::string trapType;
    std::string week; // "2026-W28"
    std::optional<int> issue;
    std::optional<std::int64_t> publishedMs; // since 1970-01-01 UTC
    std::string language; // BCP 47, of title and text
    std::string title;
    std::string text; // paragraphs, parted by empty lines
    std::string areas; // as areaNewsText gives them
};

template <>
const RecordKind& kindOf<PublishedBulletin>();

Uuid bulletinId(
    const Uuid& programme, const std::string& pest, const std::string& trapType, const std::string& week);

} // namespace duskrow::domain
