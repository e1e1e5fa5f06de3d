// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <future>

namespace duskrow::sync {

// Has `work` on so many lines done on another core. Where it is too little for that, or there is no thread to
// be had, it is done on this one when its result is asked for.
template <typename Work>
auto beside(std::size_t lines, Work work)
{
    constexpr std::size_t worthIt = 1000;
    const auto how = lines < worthIt ? std::launch::deferred : std::launch::async | std::launch::deferred;
    return std::async(how, std::move(work));
}

} // namespace duskrow::sync
