// SPDX-License-Identifier: MIT
#include "domain/protocol/reading.h"

#include <unordered_set>

namespace duskrow::domain {

namespace {

using Kind = LocatedJson::Kind;

const char* nameOf(Kind kind)
{
    switch (kind) {
    case Kind::Null:
        return "null";
    case Kind::Boolean:
        return "true or false";
    case Kind::Whole:
    case Kind::Real:
        return "a number";
    case Kind::Text:
        return "a text in quotes";
    case Kind::List:
        return "a list in [ ]";
    case Kind::Object:
        return "a group in { }";
    }
    return "";
}

const LocatedJson& emptyOf(Kind kind)
{
    static const LocatedJson object{.kind = Kind::Object};
    static const LocatedJson list{.kind = Kind::List};
    static const LocatedJson text{.kind = Kind::Text};
    static const LocatedJson boolean{.kind = Kind::Boolean};
    switch (kind) {
    case Kind::List:
        return list;
    case Kind::Text:
        return text;
    case Kind::Boolean:
        return boolean;
    default:
        return object;
    }
}

bool isId(std::string_view text)
{
    constexpr std::size_t longest = 64;
    const auto lower = [](char c) { return c >= 'a' && c <= 'z'; };
    if (text.empty() || text.size() > longest || !lower(text[0])) return false;
    for (const char c : text)
        if (!lower(c) && !(c >= '0' && c <= '9') && c != '-') return false;
    return true;
}

// The way from `from` down to `wanted`: "rules[0].moths"; nothing when it is not below.
std::optional<std::string> pathTo(const LocatedJson& from, const LocatedJson& wanted)
{
    if (&from == &wanted) return std::string();
    for (std::size_t i = 0; i < from.items.size(); ++i) {
        const auto rest = pathTo(from.items[i], wanted);
        if (!rest) continue;
        const bool isObject = from.kind == Kind::Object;
        const std::string step = isObject ? from.keys[i] : '[' + std::to_string(i) + ']';
        return step + (rest->empty() || rest->front() == '[' ? "" : ".") + *rest;
    }
    return std::nullopt;
}

} // namespace

std::string inQuotes(std::string_view key)
{
    return '"' + std::string(key) + '"';
}

void Reading::refuse(const LocatedJson& at, const std::string& what)
{
    if (m_mistake) return;
    m_mistake = Error{ErrorCode::ProtocolRule, {m_fileName, std::to_string(at.line), what},
        pathTo(m_file, at).value_or(std::string())};
}

void Reading::refuse(const LocatedJson& parent, std::string_view key, const std::string& what)
{
    const LocatedJson* node = parent.find(key);
    refuse(node ? *node : parent, what);
}

void Reading::refuseMissing(const LocatedJson& parent, std::string_view key)
{
    refuse(parent, inQuotes(key) + " is missing here");
}

const LocatedJson& Reading::need(const LocatedJson& parent, std::string_view key, Kind kind)
{
    const LocatedJson* node = parent.find(key);
    if (node && node->kind == kind) return *node;
    if (node)
        refuse(*node, inQuotes(key) + " must be " + nameOf(kind));
    else
        refuseMissing(parent, key);
    return emptyOf(kind);
}

const LocatedJson& Reading::object(const LocatedJson& parent, std::string_view key)
{
    return need(parent, key, Kind::Object);
}

const LocatedJson& Reading::list(const LocatedJson& parent, std::string_view key)
{
    return need(parent, key, Kind::List);
}

std::string Reading::text(const LocatedJson& parent, std::string_view key)
{
    const LocatedJson& node = need(parent, key, Kind::Text);
    if (node.text.empty()) refuse(node, inQuotes(key) + " is empty");
    return node.text;
}

bool Reading::boolean(const LocatedJson& parent, std::string_view key)
{
    return need(parent, key, Kind::Boolean).boolean;
}

std::string Reading::id(const LocatedJson& parent)
{
    const LocatedJson& node = need(parent, "id", Kind::Text);
    if (!isId(node.text))
        refuse(node, "an id is lower-case letters, digits and hyphens, a letter first, 64 at most");
    return node.text;
}

LocalText Reading::localText(const LocatedJson& parent, std::string_view key)
{
    const LocatedJson& node = object(parent, key);
    return {text(node, "en"), text(node, "fr")};
}

LocalText Reading::noteOf(const LocatedJson& parent)
{
    return parent.find("note") ? localText(parent, "note") : LocalText{};
}

std::string Reading::sourceOf(const LocatedJson& node)
{
    return text(node, "source");
}

Statement Reading::statement(const LocatedJson& node)
{
    return {
        node.find("id") ? id(node) : std::string{}, localText(node, "text"), sourceOf(node), noteOf(node)};
}

std::optional<Statement> Reading::remarkIfAny(const LocatedJson& parent, std::string_view key)
{
    if (!parent.find(key)) return std::nullopt;
    return statement(object(parent, key));
}

std::vector<Statement> Reading::statementsIfAny(const LocatedJson& parent, std::string_view key)
{
    std::vector<Statement> statements;
    for (const LocatedJson& node : identifiedIfAny(parent, key)) statements.push_back(statement(node));
    return statements;
}

const std::vector<LocatedJson>& Reading::identified(const LocatedJson& parent, std::string_view key)
{
    const LocatedJson& node = list(parent, key);
    std::unordered_set<std::string> seen;
    for (const LocatedJson& item : node.items) {
        if (item.kind != Kind::Object) {
            refuse(item, inQuotes(key) + " is a list of groups in { }");
            return emptyOf(Kind::List).items;
        }
        const std::string itemId = id(item);
        if (!seen.insert(itemId).second)
            refuse(item, "the id " + inQuotes(itemId) + " is used twice in this list");
    }
    return node.items;
}

const std::vector<LocatedJson>& Reading::identifiedIfAny(const LocatedJson& parent, std::string_view key)
{
    return parent.find(key) ? identified(parent, key) : emptyOf(Kind::List).items;
}

} // namespace duskrow::domain
