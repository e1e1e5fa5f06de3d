// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QLocale>
#include <QPageSize>
#include <QPdfWriter>

#include <functional>

namespace duskrow::app {

// The paper that people of a country have at home: letter in North America and a few more, else A4 (common
// practice, no source).
QPageSize paperOf(const QLocale& locale);

// A PDF with its title and author. `draw` is handed the writer and the size inside the margins, in points.
QByteArray writePdf(const QString& title, const QString& author, const QPageSize& size,
    const std::function<void(QPdfWriter& writer, const QSizeF& page)>& draw);

} // namespace duskrow::app
