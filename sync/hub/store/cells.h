// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <array>

#include "domain/base/uuid.h"
#include "sync/hub/store/engine.h"

// Between ids and cells.
namespace duskrow::hub {

template <std::size_t size>
Cell cell(const std::array<std::uint8_t, size>& bytes)
{
    return Blob{std::string(bytes.begin(), bytes.end())};
}
inline Cell cell(const domain::Uuid& id)
{
    return cell(id.bytes);
}
inline Cell cell(domain::Instant at)
{
    return domain::toMs(at);
}

// All zero when the cell has another size.
template <std::size_t size>
std::array<std::uint8_t, size> arrayOf(const std::string& bytes)
{
    std::array<std::uint8_t, size> array{};
    if (bytes.size() == size) std::copy(bytes.begin(), bytes.end(), array.begin());
    return array;
}
inline domain::Uuid idOf(const std::string& bytes)
{
    return {arrayOf<16>(bytes)};
}

} // namespace duskrow::hub
