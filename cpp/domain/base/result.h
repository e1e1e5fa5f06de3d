// SPDX-License-Identifier: MIT
#pragma once

#include <cassert>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "domain/base/error_code.h"

namespace duskrow::domain {

// What went wrong: `code` picks the sentence a person reads, `args` fill it, `detail` is for the log only.
struct Error {
    ErrorCode code;
    std::vector<std::string> args = {};
    std::string detail = {};
};

using Done = std::monostate;

// A value or an Error. Same names as std::expected, so that the switch to C++23 is a typedef.
template <typename T>
class [[nodiscard]] Result {
public:
    Result(T value) : m_state(std::in_place_index<0>, std::move(value)) { }
    Result(Error error) : m_state(std::in_place_index<1>, std::move(error)) { }

    [[nodiscard]] bool has_value() const { return m_state.index() == 0; }
    explicit operator bool() const { return has_value(); }

    [[nodiscard]] const T& value() const&
    {
        assert(has_value());
        return *std::get_if<0>(&m_state);
    }
    [[nodiscard]] T& value() &
    {
        assert(has_value());
        return *std::get_if<0>(&m_state);
    }
    [[nodiscard]] T&& value() &&
    {
        assert(has_value());
        return std::move(*std::get_if<0>(&m_state));
    }
    [[nodiscard]] const T& operator*() const& { return value(); }
    [[nodiscard]] T& operator*() & { return value(); }
    [[nodiscard]] const T* operator->() const { return &value(); }
    [[nodiscard]] T* operator->() { return &value(); }
    [[nodiscard]] const Error& error() const&
    {
        assert(!has_value());
        return *std::get_if<1>(&m_state);
    }

private:
    std::variant<T, Error> m_state;
};

} // namespace duskrow::domain
