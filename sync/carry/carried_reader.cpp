// SPDX-License-Identifier: MIT
#include "sync/carry/carried_reader.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <sodium.h>

#include "sync/segment/layout.h"

namespace duskrow::sync {

using namespace duskrow::domain;

namespace {

constexpr std::uint64_t pieceBytes = std::uint64_t{64} * 1024;

} // namespace

struct CarriedReader::Reading {
    std::istream& source;
    Frame frame;
    CarriedReport report;
    crypto_generichash_state hash{};
    bool isOver = false;

    // Fewer bytes than asked for at the end of the source.
    std::string read(std::uint64_t length)
    {
        std::string bytes;
        while (bytes.size() < length) {
            // Memory grows with what is there, not with what a length says.
            const std::size_t had = bytes.size();
            bytes.resize(had + static_cast<std::size_t>(std::min(length - had, pieceBytes)));
            source.read(bytes.data() + had, static_cast<std::streamsize>(bytes.size() - had));
            bytes.resize(had + static_cast<std::size_t>(source.gcount()));
            if (!source) break;
        }
        return bytes;
    }
    std::string readHashed(std::uint64_t length)
    {
        std::string bytes = read(length);
        crypto_generichash_update(&hash, reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
        return bytes;
    }
    bool skip(std::uint64_t length)
    {
        while (length > 0) {
            const std::uint64_t piece = std::min(length, pieceBytes);
            if (readHashed(piece).size() < piece) return false;
            length -= piece;
        }
        return true;
    }
    std::nullopt_t over(Ending ending)
    {
        report.ending = ending;
        isOver = true;
        return std::nullopt;
    }

    void start();
    Ending endOf(std::uint64_t length);
    [[nodiscard]] bool agrees(const CarriedEnd& end) const;
};

void CarriedReader::Reading::start()
{
    crypto_generichash_init(&hash, nullptr, 0, hashBytes);
    if (frame == Frame::File && readHashed(carriedMagic.size()) != carriedMagic) over(Ending::NotOurs);
}

// Items that were skipped are counted by the end too.
bool CarriedReader::Reading::agrees(const CarriedEnd& end) const
{
    const std::int64_t missing =
        end.segments + end.photographs - report.segments - report.photographs - report.tooLarge;
    return end.segments >= report.segments && end.photographs >= report.photographs && missing == 0;
}

Ending CarriedReader::Reading::endOf(std::uint64_t length)
{
    if (length > mostEndBytes) return Ending::Damaged;
    const std::string text = readHashed(length);
    if (text.size() < length) return Ending::Cut;
    std::array<unsigned char, hashBytes> hashed{};
    crypto_generichash_final(&hash, hashed.data(), hashed.size());
    const std::string said = read(hashBytes);
    if (said.size() < hashBytes) return Ending::Cut;
    const auto end = readEnd(text);
    if (!std::equal(hashed.begin(), hashed.end(), reinterpret_cast<const unsigned char*>(said.data())) || !end
        || !agrees(*end))
        return Ending::Damaged;
    report.end = end;
    return read(1).empty() ? Ending::Whole : Ending::Damaged;
}

CarriedReader::CarriedReader(std::istream& source, Frame frame)
    : m_reading(new Reading{source, frame, {}, {}, false})
{
    m_reading->start();
}

CarriedReader::~CarriedReader() = default;

const CarriedReport& CarriedReader::report() const
{
    return m_reading->report;
}

std::optional<CarriedItem> CarriedReader::next()
{
    Reading& reading = *m_reading;
    while (!reading.isOver) {
        const std::string head = reading.readHashed(itemHeadBytes);
        if (head.empty() && reading.frame == Frame::ItemsOnly) return reading.over(Ending::Whole);
        if (head.size() < itemHeadBytes) return reading.over(Ending::Cut);
        const char letter = head.front();
        const std::uint64_t length = readNumber(std::string_view(head).substr(1), itemHeadBytes - 1);
        if (letter == endLetter && reading.frame == Frame::File) return reading.over(reading.endOf(length));
        if (letter < 'a' || letter > 'z' || letter == endLetter) return reading.over(Ending::Damaged);
        const auto kind = static_cast<ItemKind>(letter);
        const bool isKnown = kind == ItemKind::Segment || kind == ItemKind::Photograph;
        if (!isKnown || length > mostItemBytes(kind)) {
            if (!reading.skip(length)) return reading.over(Ending::Cut);
            ++(isKnown ? reading.report.tooLarge : reading.report.unknown);
            continue;
        }
        CarriedItem item{kind, reading.readHashed(length)};
        if (item.bytes.size() < length) return reading.over(Ending::Cut);
        ++(kind == ItemKind::Segment ? reading.report.segments : reading.report.photographs);
        return item;
    }
    return std::nullopt;
}

Result<CarriedReport> readCarriedFile(
    const std::filesystem::path& path, const std::function<bool(CarriedItem)>& take)
{
    const Error unreadable{ErrorCode::FileUnreadable, {path.string()}};
    std::ifstream file(path, std::ios::binary);
    if (!file) return unreadable;
    CarriedReader reader(file);
    while (auto item = reader.next())
        if (!take(std::move(*item))) return reader.report();
    if (file.bad()) return unreadable;
    return reader.report();
}

} // namespace duskrow::sync
