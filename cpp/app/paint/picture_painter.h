// SPDX-License-Identifier: MIT
#pragma once

#include <QPainter>
#include <QString>

#include "formats/palette.h"
#include "formats/picture.h"

namespace duskrow::app {

// textScale   for pictures that were laid out without one; charts take theirs when they are built
// fontFamily  the application's own when empty
struct PaintStyle {
    formats::Light light = formats::Light::Day;
    double textScale = 1;
    QString fontFamily = {};
};

// Draws the picture at the origin in its own size. The painter comes back as it was.
void paintPicture(QPainter& painter, const formats::Picture& picture, const PaintStyle& style);

} // namespace duskrow::app
