// SPDX-License-Identifier: MIT
#include "app/paint/picture_item.h"

#include <QPainter>

#include <algorithm>

#include "app/paint/picture_painter.h"

namespace duskrow::app {

PictureItem::PictureItem(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &PictureItem::pictureChanged, this, [this] { update(); });
    connect(this, &PictureItem::styleChanged, this, [this] { update(); });
}

void PictureItem::setPicture(const PictureHandle& picture)
{
    if (m_picture == picture) return;
    m_picture = picture;
    Q_EMIT pictureChanged();
}

void PictureItem::setDark(bool isDark)
{
    if (m_isDark == isDark) return;
    m_isDark = isDark;
    Q_EMIT styleChanged();
}

void PictureItem::setTextScale(double scale)
{
    if (m_textScale == scale) return;
    m_textScale = scale;
    Q_EMIT styleChanged();
}

void PictureItem::setFontFamily(const QString& family)
{
    if (m_fontFamily == family) return;
    m_fontFamily = family;
    Q_EMIT styleChanged();
}

void PictureItem::paint(QPainter* painter)
{
    const formats::Picture* picture = m_picture.picture();
    if (picture == nullptr || picture->width <= 0 || picture->height <= 0) return;
    const double scale = std::min(width() / picture->width, height() / picture->height);
    painter->translate((width() - picture->width * scale) / 2, (height() - picture->height * scale) / 2);
    painter->scale(scale, scale);
    const auto light = m_isDark ? formats::Light::Night : formats::Light::Day;
    paintPicture(*painter, *picture, {light, m_textScale, m_fontFamily});
}

} // namespace duskrow::app
