// SPDX-License-Identifier: MIT
#pragma once

#include <zstd.h>

#include "sync/segment_scene.h"

// Segments of somebody who knows the format and holds a key, and lies in one thing only.
namespace duskrow::test {

inline std::string packed(std::string_view raw, int level = 3)
{
    std::string bytes(ZSTD_compressBound(raw.size()), '\0');
    bytes.resize(ZSTD_compress(bytes.data(), bytes.size(), raw.data(), raw.size(), level));
    return bytes;
}

inline std::string joinedLines(const std::vector<std::string>& lines)
{
    std::string raw;
    for (const std::string& line : lines) raw += line + '\n';
    return raw;
}

struct Forger {
    const Scene& scene;

    // A header that tells the truth about any lines: only what is inside the lines can be wrong then.
    [[nodiscard]] nlohmann::json truthfulHeader(const std::vector<std::string>& lines) const
    {
        nlohmann::json header = nlohmann::json::parse(scene.sealed(1, 1).headerBytes);
        std::string leaves = "DSEG1-root";
        for (const std::string& line : lines) leaves += asText(domain::hashOf("DSEG1-leaf" + line));
        header["root"] = domain::formatHex(domain::hashOf(leaves));
        header["raw"] = joinedLines(lines).size();
        header["last"] = lines.size();
        return header;
    }

    [[nodiscard]] std::string forgedLines(const std::vector<std::string>& lines) const
    {
        return forged(scene.keys, truthfulHeader(lines).dump(), packed(joinedLines(lines)));
    }

    [[nodiscard]] std::string withPayload(const std::string& payload, std::int64_t raw, char form = 0) const
    {
        nlohmann::json header = truthfulHeader(scene.lines(1, 3));
        header["raw"] = raw;
        return forged(scene.keys, header.dump(), payload, form);
    }
};

} // namespace duskrow::test
