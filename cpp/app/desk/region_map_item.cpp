// SPDX-License-Identifier: MIT
#include "app/desk/region_map_item.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/paint/picture_painter.h"

namespace duskrow::app {

namespace {

// Around the trap that is chosen, for a colour alone would be missed.
formats::Line ringAround(formats::Point middle, double radius)
{
    constexpr int corners = 32;
    formats::Line ring{{}, formats::Ink::Full, 3, false};
    for (int i = 0; i <= corners; ++i) {
        const double turn = 2 * std::numbers::pi * i / corners;
        ring.points.push_back({middle.x + radius * std::cos(turn), middle.y + radius * std::sin(turn)});
    }
    return ring;
}

const formats::SceneTrap* chosenIn(const MapViewModel* map)
{
    if (!map || !map->chosen()) return nullptr;
    const auto& traps = map->scene().traps;
    const auto found = std::ranges::find(traps, *map->chosen(), &formats::SceneTrap::trap);
    return found == traps.end() ? nullptr : &*found;
}

} // namespace

RegionMapItem::RegionMapItem(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
    connect(this, &RegionMapItem::styleChanged, this, [this] { update(); });
}

void RegionMapItem::setMap(MapViewModel* map)
{
    if (map == m_map) return;
    if (m_map) m_map->disconnect(this);
    m_map = map;
    if (m_map) connect(m_map, &MapViewModel::shown, this, &RegionMapItem::takeScene);
    takeScene();
    Q_EMIT mapChanged();
}

void RegionMapItem::setDark(bool isDark)
{
    if (m_isDark == isDark) return;
    m_isDark = isDark;
    Q_EMIT styleChanged();
}

void RegionMapItem::setTextScale(double scale)
{
    if (m_textScale == scale) return;
    m_textScale = scale;
    Q_EMIT styleChanged();
}

void RegionMapItem::setFontFamily(const QString& family)
{
    if (m_fontFamily == family) return;
    m_fontFamily = family;
    Q_EMIT styleChanged();
}

QString RegionMapItem::description() const
{
    return m_map ? QString::fromStdString(m_map->words().description) : QString();
}

void RegionMapItem::takeScene()
{
    if (!m_isPlaced && m_map && width() > 0 && !m_map->scene().traps.empty()) fit();
    update();
    Q_EMIT moved();
}

void RegionMapItem::geometryChange(const QRectF& now, const QRectF& before)
{
    QQuickPaintedItem::geometryChange(now, before);
    m_view = m_view.sized(now.width(), now.height());
    // Before anybody has looked closer, all of it is seen in whatever size.
    if (before.isEmpty()) m_isPlaced = false;
    takeScene();
}

void RegionMapItem::look(const formats::MapView& view)
{
    m_view = view;
    m_isPlaced = true;
    update();
    Q_EMIT moved();
}

void RegionMapItem::fit()
{
    if (m_map) look(formats::viewOf(m_map->scene().extent(), width(), height()));
}

void RegionMapItem::pan(double right, double down)
{
    look(m_view.moved(right, down));
}

void RegionMapItem::zoom(double factor, double x, double y)
{
    if (factor > 0) look(m_view.zoomed(factor, {x, y}));
}

bool RegionMapItem::touch(double x, double y)
{
    if (!m_map) return false;
    m_map->choose(formats::trapAt(m_map->scene(), m_view, {x, y}));
    return m_map->chosen().has_value();
}

QPointF RegionMapItem::placeOfChosen() const
{
    const auto* trap = chosenIn(m_map);
    if (!trap) return {-1, -1};
    const formats::Point at = m_view.at(trap->place);
    return {at.x, at.y};
}

void RegionMapItem::showChosen()
{
    if (!chosenIn(m_map)) return;
    constexpr double edge = 40;
    const QPointF at = placeOfChosen();
    const auto shift = [](double value, double size) {
        if (value < edge) return edge - value;
        return value > size - edge ? size - edge - value : 0.0;
    };
    pan(shift(at.x(), width()), shift(at.y(), height()));
}

void RegionMapItem::paint(QPainter* painter)
{
    if (!m_map) return;
    formats::Picture picture =
        formats::regionPicture(m_map->scene(), m_ground, m_view, m_map->words(), m_textScale);
    if (const auto* trap = chosenIn(m_map)) {
        constexpr double radius = 24;
        picture.primitives.emplace_back(ringAround(m_view.at(trap->place), radius));
    }
    const auto light = m_isDark ? formats::Light::Night : formats::Light::Day;
    paintPicture(*painter, picture, {light, 1, m_fontFamily});
}

PictureHandle RegionMapItem::sheet() const
{
    if (!m_map) return {};
    return PictureHandle(formats::regionSheet(m_map->scene(), m_ground, m_view, m_map->words(), m_textScale));
}

} // namespace duskrow::app
