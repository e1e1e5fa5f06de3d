// SPDX-License-Identifier: MIT
#include "domain/log/packing.h"

#include <memory>
#include <zstd.h>

#include "domain/log/turned_lines.h"

namespace duskrow::domain {

namespace {

constexpr std::uint64_t mostWindow = std::uint64_t{8} << 20;
constexpr int windowLog = 23; // the same as a power of two
constexpr std::string_view magic("\x28\xB5\x2F\xFD");

// Contexts are kept by each thread: making one takes longer than packing a usual segment.
struct Free {
    void operator()(ZSTD_CCtx* context) const { ZSTD_freeCCtx(context); }
    void operator()(ZSTD_DCtx* context) const { ZSTD_freeDCtx(context); }
};

// RFC 8878 section 3.1.1.1: the descriptor, then the window unless the frame is a single segment, whose
// window is its content. Old and skippable frames have another magic.
bool hasPlainHeader(std::string_view packed)
{
    if (packed.size() < 6 || !packed.starts_with(magic)) return false;
    const auto descriptor = static_cast<std::uint8_t>(packed[4]);
    if ((descriptor & 0x03) != 0) return false; // a dictionary
    if ((descriptor & 0x20) != 0) return true;
    const auto window = static_cast<std::uint8_t>(packed[5]);
    const std::uint64_t base = std::uint64_t{1} << (10 + (window >> 3));
    return base + base / 8 * (window & 7U) <= mostWindow;
}

} // namespace

std::string pack(std::string_view lines, int level)
{
    const std::string raw = turn(lines);
    // Making one takes longer than packing a usual segment.
    thread_local const std::unique_ptr<ZSTD_CCtx, Free> context(ZSTD_createCCtx());
    ZSTD_CCtx_reset(context.get(), ZSTD_reset_session_and_parameters);
    ZSTD_CCtx_setParameter(context.get(), ZSTD_c_compressionLevel, level);
    ZSTD_CCtx_setParameter(context.get(), ZSTD_c_windowLog, windowLog);
    std::string packed(ZSTD_compressBound(raw.size()), '\0');
    const std::size_t size =
        ZSTD_compress2(context.get(), packed.data(), packed.size(), raw.data(), raw.size());
    packed.resize(ZSTD_isError(size) != 0 ? 0 : size);
    return packed;
}

Result<std::string> unpack(std::string_view packed, std::size_t most)
{
    const Error malformed{ErrorCode::SegmentMalformed, {"payload"}};
    if (!hasPlainHeader(packed)) return malformed;
    const unsigned long long size = ZSTD_getFrameContentSize(packed.data(), packed.size());
    if (size == ZSTD_CONTENTSIZE_UNKNOWN || size == ZSTD_CONTENTSIZE_ERROR) return malformed;
    if (size > most) return Error{ErrorCode::SegmentTooLarge, {"payload"}};
    if (ZSTD_findFrameCompressedSize(packed.data(), packed.size()) != packed.size()) return malformed;
    thread_local const std::unique_ptr<ZSTD_DCtx, Free> context(ZSTD_createDCtx());
    std::string raw(size, '\0');
    const std::size_t got =
        ZSTD_decompressDCtx(context.get(), raw.data(), raw.size(), packed.data(), packed.size());
    if (ZSTD_isError(got) != 0 || got != raw.size()) return malformed;
    if (!isTurned(raw)) return raw;
    auto lines = turnBack(raw, most);
    if (!lines) return malformed;
    return std::move(*lines);
}

} // namespace duskrow::domain
