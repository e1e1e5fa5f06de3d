// SPDX-License-Identifier: MIT
// One frame of a desk's map of 5,000 traps: its picture made of what is seen, and painted. Far out, where all
// are seen; near, where a few hundred are; and with a surface of 140 by 140 cells beneath. Into an image of
// 1280 by 800, as a window without a graphics card does it.
#include <QGuiApplication>
#include <QImage>
#include <QPainter>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <random>

#include "app/paint/picture_painter.h"
#include "bench/figures.h"
#include "formats/map/region_picture.h"

using namespace duskrow;
using namespace duskrow::domain;
using namespace duskrow::formats;
using namespace duskrow::tests;

namespace {

constexpr std::size_t traps = 5'000;
constexpr double wide = 400'000; // metres
constexpr double high = 300'000;
constexpr std::size_t cells = 140;

RegionScene invented()
{
    std::mt19937 random(20260714);
    std::uniform_real_distribution<double> part(0, 1);
    RegionScene scene;
    scene.plane = RegionalPlane(GeoPoint{520'000'000, -1'060'000'000});
    for (std::size_t i = 0; i < traps; ++i) {
        SceneTrap trap{i, {part(random) * wide, part(random) * high}};
        trap.level = 1 + static_cast<int>(4 * part(random)) % 4;
        trap.soFar = Moths{static_cast<std::int64_t>(trap.level * 300 * part(random))};
        trap.standing = static_cast<TrapStanding>(i % 20 == 0 ? 2 : i % 20 == 1 ? 1 : 0);
        scene.traps.push_back(trap);
    }
    putInOrder(scene.traps);
    return scene;
}

SceneSurface surfaceOfScene()
{
    SceneSurface surface{{{0, 0}, Metres{wide / cells}, cells, cells}, {}};
    for (std::size_t i = 0; i < cells * cells; ++i) {
        const double at =
            std::sin(static_cast<double>(i % cells) / 12) * std::cos(static_cast<double>(i / cells) / 9);
        surface.cells.push_back({chanceStep((at + 1) / 2),
            at < -0.8       ? CellCover::Masked
                : at < -0.6 ? CellCover::Hatched
                            : CellCover::Shown});
    }
    return surface;
}

RegionWords words()
{
    RegionWords made;
    made.north = "N";
    return made;
}

// Milliseconds of the median frame, while the map is dragged.
double frameMs(const RegionScene& scene, MapView view)
{
    const PlainGround ground;
    QImage image(1280, 800, QImage::Format_ARGB32_Premultiplied);
    std::vector<double> taken;
    for (int i = 0; i < 31; ++i) {
        const auto start = std::chrono::steady_clock::now();
        QPainter painter(&image);
        app::paintPicture(painter, regionPicture(scene, ground, view, words(), 1), {});
        painter.end();
        taken.push_back(
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
        view = view.moved(5, 3);
    }
    std::ranges::nth_element(taken, taken.begin() + 15);
    return taken[15];
}

} // namespace

int main(int count, char** arguments)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(count, arguments);
    RegionScene scene = invented();
    const MapView all = viewOf(scene.extent(), 1280, 800);
    // 30 frames a second: a drag that is smooth.
    constexpr double frame = 33;
    figures().limit("5,000 traps, all of them seen, a frame", frameMs(scene, all), "ms", frame);
    figures().limit("four times nearer, a frame", frameMs(scene, all.zoomed(4, {640, 400})), "ms", frame);
    scene.surface = surfaceOfScene();
    figures().limit("all of them over a surface, a frame", frameMs(scene, all), "ms", frame);
    return figures().print() ? 0 : 1;
}
