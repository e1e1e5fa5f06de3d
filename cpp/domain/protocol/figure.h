// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>

#include "domain/protocol/local_text.h"

namespace duskrow::domain {

// Reserved ids of a source: trade practice that no document stands behind, and what nobody has published.
inline constexpr const char* commonPractice = "common-practice";
inline constexpr const char* notPublished = "not-published";

// One number, day or choice of a protocol with where it comes from.
//
// value   no value: nobody has published it; `note` then says so in words
// source  an id of Protocol::sources, or commonPractice, or notPublished; empty when the protocol is silent
// note    may be empty
template <typename T>
struct Figure {
    std::optional<T> value = {};
    std::string source = {};
    LocalText note = {};
};

// As Figure, from the lower to the upper end, both included; both or neither have a value.
template <typename T>
struct Range {
    std::optional<T> from = {};
    std::optional<T> to = {};
    std::string source = {};
    LocalText note = {};
};

// A sentence of a protocol: a mark to look for, a reminder, a caution.
struct Statement {
    std::string id;
    LocalText text;
    std::string source;
    LocalText note;
};

} // namespace duskrow::domain
