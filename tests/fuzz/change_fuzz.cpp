// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>

#include "domain/log/change.h"
#include "fuzz/fuzz.h"

using namespace duskrow::domain;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    const auto read = readChange(bytes);
    const auto canonical = readCanonicalChange(bytes);
    // Another way to say the same: the whole text read and written again by the library alone. A NUL ends
    // what it reads, so a text with one never comes back the same.
    const bool isCanonical = nlohmann::json::accept(bytes)
        && nlohmann::json::parse(bytes).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace)
            == bytes;
    fuzz::demand(canonical.has_value() == (read.has_value() && isCanonical));
    if (!read) return 0;
    const std::string written = canonicalJson(*read);
    // Numbers of other spelling and unknown keys change the length; a change of 64 KiB may grow.
    if (written.size() > mostChangeBytes) return 0;
    const auto again = readCanonicalChange(written);
    fuzz::demand(again.has_value());
    fuzz::demand(canonicalJson(*again) == written);
    return 0;
}
