// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QPageSize>

#include "text/thank_you_text.h"

namespace duskrow::app {

// A thank-you sheet as a PDF of one page, or of more for somebody with very many traps. Needs fonts, and so a
// QGuiApplication, but no window and no printer.
QByteArray printedThanks(const text::ThankYouSheet& sheet, const QString& author, const QPageSize& size);

} // namespace duskrow::app
