// SPDX-License-Identifier: MIT
#include "formats/qr_code.h"

#include <qrencode.h>

#include <memory>

namespace duskrow::formats {

using namespace duskrow::domain;

namespace {

constexpr std::size_t mostBytes = 2331; // of version 40-M, ISO/IEC 18004 table 7

struct Free {
    void operator()(QRcode* code) const { QRcode_free(code); }
};

} // namespace

Result<QrCode> qrCode(std::string_view text)
{
    if (text.empty()) return Error{ErrorCode::Empty, {"code"}};
    if (text.size() > mostBytes) return Error{ErrorCode::TooLong, {"code", std::to_string(mostBytes)}};
    const std::unique_ptr<QRcode, Free> made(QRcode_encodeData(
        static_cast<int>(text.size()), reinterpret_cast<const unsigned char*>(text.data()), 0, QR_ECLEVEL_M));
    if (!made) return Error{ErrorCode::TooLong, {"code", std::to_string(mostBytes)}};
    QrCode code{made->width, {}};
    const auto modules = static_cast<std::size_t>(made->width) * static_cast<std::size_t>(made->width);
    code.modules.reserve(modules);
    for (std::size_t i = 0; i < modules; ++i) code.modules.push_back((made->data[i] & 1) != 0);
    return code;
}

// Neighbours in a row are one bar, so that no seam shows between them.
Picture qrPicture(const QrCode& code, std::string title, std::string description)
{
    const double whole = code.side + 2 * qrQuietZone;
    Picture picture{whole, whole, std::move(title), std::move(description), {}};
    picture.primitives.emplace_back(Bar{{0, 0, whole, whole}, Ink::Card, Fill::Solid, 0, 1});
    for (int y = 0; y < code.side; ++y) {
        for (int x = 0; x < code.side; ++x) {
            if (!code.isDark(x, y)) continue;
            const int from = x;
            while (x + 1 < code.side && code.isDark(x + 1, y)) ++x;
            const double top = y + qrQuietZone;
            picture.primitives.emplace_back(Bar{{static_cast<double>(from + qrQuietZone), top,
                                                    static_cast<double>(x + 1 + qrQuietZone), top + 1},
                Ink::Full, Fill::Solid, 0, 1});
        }
    }
    return picture;
}

} // namespace duskrow::formats
