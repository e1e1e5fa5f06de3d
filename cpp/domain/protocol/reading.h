// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/protocol/figure.h"
#include "domain/protocol/file_value.h"
#include "domain/protocol/located_json.h"

namespace duskrow::domain {

std::string inQuotes(std::string_view text);

// A protocol file being read. The first mistake found is the one told; what is read after it does not count.
// Its `detail` names the field: "rules[0].steps[1].over_moths".
class Reading {
public:
    // file  outlives the reading
    Reading(std::string fileName, const LocatedJson& file) : m_fileName(std::move(fileName)), m_file(file) { }

    void refuse(const LocatedJson& at, const std::string& what);

    // Told on the line of the value under the key, where there is one.
    void refuse(const LocatedJson& parent, std::string_view key, const std::string& what);
    [[nodiscard]] const std::optional<Error>& mistake() const { return m_mistake; }

    // The value under a key. When it is missing or of another kind that is a mistake, and an empty value of
    // the kind comes back so that reading can go on.
    const LocatedJson& object(const LocatedJson& parent, std::string_view key);
    const LocatedJson& list(const LocatedJson& parent, std::string_view key);
    std::string text(const LocatedJson& parent, std::string_view key);
    bool boolean(const LocatedJson& parent, std::string_view key);

    std::string id(const LocatedJson& parent);
    LocalText localText(const LocatedJson& parent, std::string_view key);
    LocalText noteOf(const LocatedJson& parent);
    Statement statement(const LocatedJson& node);
    std::optional<Statement> remarkIfAny(const LocatedJson& parent, std::string_view key);
    std::vector<Statement> statementsIfAny(const LocatedJson& parent, std::string_view key);

    // A list of objects with ids of their own, none twice.
    const std::vector<LocatedJson>& identified(const LocatedJson& parent, std::string_view key);
    const std::vector<LocatedJson>& identifiedIfAny(const LocatedJson& parent, std::string_view key);

    template <typename T>
    T value(const LocatedJson& parent, std::string_view key)
    {
        const LocatedJson* node = parent.find(key);
        if (!node) {
            refuseMissing(parent, key);
            return T{};
        }
        return converted<T>(*node, key).value_or(T{});
    }

    template <typename T>
    Figure<T> figureIfAny(const LocatedJson& parent, std::string_view key)
    {
        return parent.find(key) ? figure<T>(parent, key) : Figure<T>{};
    }

    template <typename T>
    Figure<T> figure(const LocatedJson& parent, std::string_view key)
    {
        const LocatedJson& node = object(parent, key);
        return {optionalValue<T>(node, "value"), sourceOf(node), noteOf(node)};
    }

    template <typename T>
    Range<T> rangeIfAny(const LocatedJson& parent, std::string_view key)
    {
        return parent.find(key) ? range<T>(parent, key) : Range<T>{};
    }

    template <typename T>
    Range<T> range(const LocatedJson& parent, std::string_view key)
    {
        const LocatedJson& node = object(parent, key);
        return rangeOf<T>(node, "from", "to");
    }

    // The range of an object whose own keys name the ends, as in "from_mm" and "to_mm".
    template <typename T>
    Range<T> rangeOf(const LocatedJson& node, std::string_view fromKey, std::string_view toKey)
    {
        Range<T> range{
            optionalValue<T>(node, fromKey), optionalValue<T>(node, toKey), sourceOf(node), noteOf(node)};
        if (range.from.has_value() != range.to.has_value())
            refuse(node, "both ends of a range are known or neither is");
        else if (range.from && *range.to < *range.from)
            refuse(node, "a range runs from the lower end to the higher");
        return range;
    }

    // null in the file: no value.
    template <typename T>
    std::optional<T> optionalValue(const LocatedJson& parent, std::string_view key)
    {
        const LocatedJson* node = parent.find(key);
        if (!node) {
            refuseMissing(parent, key);
            return std::nullopt;
        }
        if (node->kind == LocatedJson::Kind::Null) return std::nullopt;
        return converted<T>(*node, key);
    }

    std::string sourceOf(const LocatedJson& node);

private:
    template <typename T>
    std::optional<T> converted(const LocatedJson& node, std::string_view key)
    {
        std::optional<T> value = FileValue<T>::read(node);
        if (!value) refuse(node, "\"" + std::string(key) + "\" must be " + FileValue<T>::form());
        return value;
    }

    const LocatedJson& need(const LocatedJson& parent, std::string_view key, LocatedJson::Kind kind);
    void refuseMissing(const LocatedJson& parent, std::string_view key);

    std::string m_fileName;
    const LocatedJson& m_file;
    std::optional<Error> m_mistake;
};

} // namespace duskrow::domain
