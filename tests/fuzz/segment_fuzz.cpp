// SPDX-License-Identifier: MIT
#include "fuzz/fuzz.h"
#include "sync/segment_scene.h"

using namespace duskrow::sync;
using namespace duskrow::test;

namespace {

// Whoever has a key can sign anything, so the checks behind hash and signature must be reached too: the bytes
// are a letter, then header and payload, which this hand signs and closes.
std::string signedByUs(std::string_view bytes)
{
    static const Keys keys(7);
    const std::size_t split = bytes.find('\n');
    const std::string_view header = bytes.substr(1, split - 1);
    const std::string_view payload = split == std::string_view::npos ? "" : bytes.substr(split + 1);
    return forged(keys, std::string(header), std::string(payload), bytes.front() == 'p' ? '\1' : '\0');
}

void readAll(std::string_view bytes)
{
    auto head = readHead(bytes);
    if (!head) return;
    fuzz::demand(segmentBytes(*head) == bytes);
    const auto segment = openSegment(std::move(head.value()));
    if (!segment) return;
    const auto part =
        partialForm(*segment, [](const duskrow::domain::Change& change) { return change.ref.seq % 2 == 0; });
    fuzz::demand(part.id == segment->head.id);
    fuzz::demand(openSegment(part).has_value());
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    readAll(bytes);
    if (bytes.starts_with('w') || bytes.starts_with('p')) readAll(signedByUs(bytes));
    return 0;
}
