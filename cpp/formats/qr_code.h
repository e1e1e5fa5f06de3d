// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/base/result.h"
#include "formats/picture.h"

namespace duskrow::formats {

// A QR symbol as plain modules, row by row.
struct QrCode {
    int side = 0;
    std::vector<bool> modules = {};

    [[nodiscard]] bool isDark(int x, int y) const
    {
        return modules[static_cast<std::size_t>(y) * static_cast<std::size_t>(side)
            + static_cast<std::size_t>(x)];
    }
};

// The modules of light ground that a symbol needs on each side.
//
// Source  ISO/IEC 18004, "quiet zone"
constexpr int qrQuietZone = 4;

// The smallest symbol of error correction level M that holds the text as bytes.
//
// Errors  Empty, TooLong {"code"}
domain::Result<QrCode> qrCode(std::string_view text);

// One pixel a module with the light ground around. Always drawn dark on light: paint it with the colours of
// the day.
Picture qrPicture(const QrCode& code, std::string title, std::string description);

} // namespace duskrow::formats
