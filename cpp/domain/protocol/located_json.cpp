// SPDX-License-Identifier: MIT
#include "domain/protocol/located_json.h"

#include <algorithm>
#include <iterator>
#include <limits>
#include <nlohmann/json.hpp>
#include <unordered_set>

namespace duskrow::domain {

namespace {

// What the parser has consumed so far. It asks for one character beyond a number and for none beyond any
// other token, so the line of the last character consumed is the line of the token just reported: a line
// break taken as that extra character still belongs to the line it ends.
class Progress {
public:
    explicit Progress(std::string_view text) : m_text(text) { }

    void consumed(std::size_t count) { m_consumed = count; }
    void askedForMore() { m_endReached = true; }

    [[nodiscard]] bool endReached() const { return m_endReached; }

    int line()
    {
        const std::size_t last = m_consumed == 0 ? 0 : m_consumed - 1;
        for (; m_counted < last; ++m_counted)
            if (m_text[m_counted] == '\n') ++m_line;
        return m_line;
    }

private:
    std::string_view m_text;
    std::size_t m_consumed = 0;
    std::size_t m_counted = 0;
    int m_line = 1;
    bool m_endReached = false;
};

// Walks the text and tells Progress how far the parser has come.
class WatchedIterator {
public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    WatchedIterator(std::string_view text, std::size_t at, Progress& progress)
        : m_text(text), m_at(at), m_progress(&progress)
    {
    }

    reference operator*() const { return m_text[m_at]; }
    WatchedIterator& operator++()
    {
        m_progress->consumed(++m_at);
        return *this;
    }
    bool operator!=(const WatchedIterator& other) const
    {
        const bool more = m_at != other.m_at;
        if (!more) m_progress->askedForMore();
        return more;
    }

private:
    std::string_view m_text;
    std::size_t m_at;
    Progress* m_progress;
};

// Builds the tree from the parser's events. A false return stops the parser.
class TreeBuilder : public nlohmann::json_sax<nlohmann::json> {
public:
    using Kind = LocatedJson::Kind;

    explicit TreeBuilder(Progress& progress) : m_progress(progress) { }

    LocatedJson root;
    std::string problem;
    std::string detail;
    int problemLine = 1;

    bool null() override { return add(Kind::Null) != nullptr; }
    bool boolean(bool value) override
    {
        add(Kind::Boolean)->boolean = value;
        return true;
    }
    bool number_integer(number_integer_t value) override
    {
        LocatedJson* number = add(Kind::Whole);
        number->whole = value;
        number->real = static_cast<double>(value);
        return true;
    }
    bool number_unsigned(number_unsigned_t value) override
    {
        if (value <= static_cast<number_unsigned_t>(std::numeric_limits<number_integer_t>::max()))
            return number_integer(static_cast<number_integer_t>(value));
        return number_float(static_cast<double>(value), {});
    }
    bool number_float(number_float_t value, const string_t&) override
    {
        add(Kind::Real)->real = value;
        return true;
    }
    bool string(string_t& value) override
    {
        add(Kind::Text)->text = std::move(value);
        return true;
    }
    bool binary(binary_t&) override { return refuse("binary values have no place in a protocol"); }
    bool start_object(std::size_t) override { return open(Kind::Object); }
    bool start_array(std::size_t) override { return open(Kind::List); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }

    bool key(string_t& name) override
    {
        if (!m_seen.back().insert(name).second) return refuse("\"" + name + "\" stands here a second time");
        m_open.back()->keys.push_back(std::move(name));
        return true;
    }

    bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception& error) override
    {
        detail = error.what();
        return refuse(m_progress.endReached() ? "the file ends in the middle; part of it may be missing"
                                              : "this is not well-formed JSON");
    }

private:
    // A value joins the innermost open list or object; that one's items do not move while a child is open.
    LocatedJson* add(Kind kind)
    {
        LocatedJson* value = m_open.empty() ? &root : &m_open.back()->items.emplace_back();
        value->kind = kind;
        value->line = m_progress.line();
        return value;
    }

    bool open(Kind kind)
    {
        if (m_open.size() >= static_cast<std::size_t>(deepestProtocolNesting))
            return refuse("lists and objects are nested too deep here");
        m_open.push_back(add(kind));
        m_seen.emplace_back();
        return true;
    }

    bool close()
    {
        m_open.pop_back();
        m_seen.pop_back();
        return true;
    }

    bool refuse(std::string what)
    {
        problem = std::move(what);
        problemLine = m_progress.line();
        return false;
    }

    Progress& m_progress;
    std::vector<LocatedJson*> m_open;
    std::vector<std::unordered_set<std::string>> m_seen;
};

} // namespace

const LocatedJson* LocatedJson::find(std::string_view key) const
{
    const auto found = std::find(keys.begin(), keys.end(), key);
    return found == keys.end() ? nullptr : &items[static_cast<std::size_t>(found - keys.begin())];
}

Result<LocatedJson> readLocatedJson(std::string_view text, const std::string& fileName)
{
    if (text.size() > mostProtocolBytes)
        return Error{ErrorCode::ProtocolSyntax, {fileName, "1", "the file is larger than a protocol can be"}};
    Progress progress(text);
    TreeBuilder builder(progress);
    const bool read = nlohmann::json::sax_parse(WatchedIterator(text, 0, progress),
        WatchedIterator(text, text.size(), progress), &builder, nlohmann::json::input_format_t::json);
    if (read) return std::move(builder.root);
    return Error{ErrorCode::ProtocolSyntax, {fileName, std::to_string(builder.problemLine), builder.problem},
        builder.detail};
}

} // namespace duskrow::domain
