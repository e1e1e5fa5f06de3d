// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QPageSize>

#include "formats/bulletin/document.h"

namespace duskrow::app {

// A bulletin as a PDF of one page. Needs fonts, and so a QGuiApplication, but no window and no printer.
QByteArray printedBulletin(const formats::BulletinDocument& document, const QPageSize& size);

} // namespace duskrow::app
