// SPDX-License-Identifier: MIT
#include "domain/log/bounded_json.h"

#include <limits>
#include <vector>

namespace duskrow::domain {

using nlohmann::json;

namespace {

// Builds the value while the tokens arrive. Every callback that returns false ends the reading.
class Builder final : public json::json_sax_t {
public:
    Builder(std::size_t depth, Numbers numbers) : m_depth(depth), m_numbers(numbers) { }

    json take() { return std::move(m_root); }

    bool null() override { return add(nullptr) != nullptr; }
    bool boolean(bool flag) override { return add(flag) != nullptr; }
    bool number_integer(std::int64_t number) override { return add(number) != nullptr; }
    bool number_unsigned(std::uint64_t number) override
    {
        if (number > static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max())) return false;
        return add(static_cast<std::int64_t>(number)) != nullptr;
    }
    bool number_float(double number, const std::string&) override
    {
        return m_numbers == Numbers::Any && add(number) != nullptr;
    }
    bool string(std::string& text) override
    {
        return text.find('\0') == std::string::npos && add(std::move(text)) != nullptr;
    }
    bool binary(json::binary_t&) override { return false; }
    bool start_object(std::size_t) override { return open(json::object()); }
    bool start_array(std::size_t) override { return open(json::array()); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }
    bool key(std::string& name) override
    {
        if (name.find('\0') != std::string::npos) return false;
        const auto [entry, isNew] = m_open.back()->get_ref<json::object_t&>().try_emplace(std::move(name));
        m_entry = &entry->second;
        return isNew;
    }
    bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception&) override
    {
        return false;
    }

private:
    json* add(json value)
    {
        if (m_open.empty()) {
            m_root = std::move(value);
            return &m_root;
        }
        if (m_open.back()->is_array()) {
            m_open.back()->push_back(std::move(value));
            return &m_open.back()->back();
        }
        *m_entry = std::move(value);
        return m_entry;
    }
    bool open(json value)
    {
        if (m_open.size() >= m_depth) return false;
        m_open.push_back(add(std::move(value)));
        return true;
    }
    bool close()
    {
        m_open.pop_back();
        return true;
    }

    std::size_t m_depth;
    Numbers m_numbers;
    json m_root;
    std::vector<json*> m_open; // the containers around the token now read
    json* m_entry = nullptr; // where the value of the last key goes
};

} // namespace

std::optional<json> parseBounded(std::string_view text, std::size_t depth, Numbers numbers)
{
    // The library takes a NUL for the end, and would not look at what stands behind it.
    if (text.find('\0') != std::string_view::npos) return std::nullopt;
    Builder builder(depth, numbers);
    if (!json::sax_parse(text, &builder)) return std::nullopt;
    return builder.take();
}

} // namespace duskrow::domain
