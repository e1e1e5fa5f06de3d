// SPDX-License-Identifier: MIT
#pragma once

#include <compare>

namespace duskrow::domain {

// A number that knows its unit. Two tags never mix: adding metres to moths does not compile.
template <typename Tag, typename Rep>
class Quantity {
public:
    using rep = Rep;

    constexpr Quantity() = default;
    constexpr explicit Quantity(Rep value) : m_value(value) { }

    [[nodiscard]] constexpr Rep value() const { return m_value; }

    constexpr auto operator<=>(const Quantity&) const = default;
    constexpr Quantity operator+(Quantity other) const { return Quantity(m_value + other.m_value); }
    constexpr Quantity operator-(Quantity other) const { return Quantity(m_value - other.m_value); }
    constexpr Quantity& operator+=(Quantity other)
    {
        m_value += other.m_value;
        return *this;
    }

private:
    Rep m_value{};
};

} // namespace duskrow::domain
