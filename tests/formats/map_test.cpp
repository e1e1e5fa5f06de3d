// SPDX-License-Identifier: MIT
#include <QTest>

#include <algorithm>
#include <cmath>

#include "formats/map/band_years.h"
#include "formats/map/region_picture.h"
#include "formats/map/trap_signs.h"
#include "formats/svg.h"

using namespace duskrow::domain;
using namespace duskrow::formats;

namespace {

const RegionalPlane plane(GeoPoint{520'000'000, -1'060'000'000});
const PlainGround ground;

SceneTrap trapOf(std::size_t number, PlaneOffset place, int moths, int level,
    TrapStanding standing = TrapStanding::Counted)
{
    return {number, place, standing, Moths{moths}, level};
}

// Four traps at the corners of a square of 40 km.
RegionScene square()
{
    RegionScene scene;
    scene.plane = plane;
    scene.traps = {trapOf(0, {-20'000, -20'000}, 10, 1), trapOf(1, {20'000, -20'000}, 400, 2),
        trapOf(2, {-20'000, 20'000}, 1000, 3, TrapStanding::AtLeast),
        trapOf(3, {20'000, 20'000}, 0, 0, TrapStanding::Missing)};
    putInOrder(scene.traps);
    return scene;
}

RegionWords words()
{
    RegionWords made;
    made.title = "Map";
    made.north = "N";
    made.bands = {"low", "uncertain", "moderate", "high"};
    made.atLeast = "at least";
    made.missing = "nobody counted it";
    made.bySize = "The larger, the more.";
    return made;
}

Picture pictureOf(const RegionScene& scene, const MapView& view)
{
    return regionPicture(scene, ground, view, words(), 1);
}

template <typename P>
std::vector<P> all(const Picture& picture)
{
    std::vector<P> found;
    for (const Primitive& one : picture.primitives)
        if (const auto* is = std::get_if<P>(&one)) found.push_back(*is);
    return found;
}

std::size_t circles(const Picture& picture, Ink ink)
{
    const auto marks = all<Mark>(picture);
    return static_cast<std::size_t>(std::ranges::count_if(marks, [ink](const Mark& mark) {
        return mark.shape == MarkShape::Circle && mark.ink == ink && mark.size > 8;
    }));
}

bool says(const Picture& picture, const std::string& text)
{
    const auto words = all<Words>(picture);
    return std::ranges::any_of(words, [&](const Words& one) { return one.text == text; });
}

} // namespace

class MapTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aViewGoesThereAndBack()
    {
        const MapView view{{1'000, -2'000}, 50, 800, 600};
        const Point at = view.at({6'000, 3'000});
        QCOMPARE(at.x, 400.0 + 100);
        QCOMPARE(at.y, 300.0 - 100);
        QCOMPARE(view.placeOf(at).eastMetres, 6'000.0);
        QCOMPARE(view.placeOf(at).northMetres, 3'000.0);
        const MapView moved = view.moved(30, -10);
        QCOMPARE(moved.at({6'000, 3'000}).x, at.x + 30);
        QCOMPARE(moved.at({6'000, 3'000}).y, at.y - 10);
        // What is under the finger stays there.
        const MapView nearer = view.zoomed(4, at);
        QCOMPARE(nearer.metresPerPixel, 12.5);
        QCOMPARE(nearer.at({6'000, 3'000}).x, at.x);
        QCOMPARE(nearer.at({6'000, 3'000}).y, at.y);
        QCOMPARE(view.zoomed(1e9, at).metresPerPixel, 1.0);
        QCOMPARE(view.zoomed(1e-9, at).metresPerPixel, 20'000.0);
    }

    void allOfItIsSeen()
    {
        const MapExtent extent = square().extent();
        const MapView view = viewOf(extent, 300, 900);
        for (const PlaneOffset corner : {extent.low, extent.high}) {
            const Point at = view.at(corner);
            QVERIFY(at.x > 0 && at.x < 300 && at.y > 0 && at.y < 900);
        }
        QVERIFY(std::isfinite(viewOf({}, 300, 900).metresPerPixel));
        MapExtent one;
        one.take({5, 5});
        QCOMPARE(viewOf(one, 300, 300).at({5, 5}).x, 150.0);
    }

    void aHighCatchLiesOnTop()
    {
        const RegionScene scene = square();
        QCOMPARE(scene.traps.front().trap, std::size_t{3}); // nobody counted it
        QCOMPARE(scene.traps.back().trap, std::size_t{2}); // most moths
    }

    void everyStandingHasItsSign()
    {
        const RegionScene scene = square();
        const Picture picture = pictureOf(scene, viewOf(scene.extent(), 800, 800));
        QCOMPARE(circles(picture, Ink::Band1), std::size_t{1});
        QCOMPARE(circles(picture, Ink::Band2), std::size_t{1});
        QCOMPARE(circles(picture, Ink::Band3), std::size_t{1});
        QCOMPARE(circles(picture, Ink::Card), std::size_t{1}); // the hollow of the minimum
        const auto marks = all<Mark>(picture);
        QCOMPARE(std::ranges::count(marks, MarkShape::Diamond, &Mark::shape), 1);
        // Dots: one, two and three, whatever their colour.
        QCOMPARE(std::ranges::count_if(marks, [](const Mark& mark) { return mark.size < 5; }), 6);
        // Areas grow with the catch.
        const auto sizeOf = [&](Ink ink) {
            return std::ranges::find_if(marks, [ink](const Mark& mark) {
                return mark.ink == ink && mark.size > 8;
            })->size;
        };
        QVERIFY(sizeOf(Ink::Band1) < sizeOf(Ink::Band2) && sizeOf(Ink::Band2) < sizeOf(Ink::Band3));
    }

    void onlyWhatIsSeenIsDrawn()
    {
        const RegionScene scene = square();
        MapView view = viewOf(scene.extent(), 800, 800).sized(200, 200);
        view.middle = {-20'000, 20'000};
        const Picture picture = pictureOf(scene, view);
        QCOMPARE(circles(picture, Ink::Band3), std::size_t{1});
        QCOMPARE(circles(picture, Ink::Band1) + circles(picture, Ink::Band2), std::size_t{0});
        view.middle = {5'000'000, 0};
        QCOMPARE(circles(pictureOf(scene, view), Ink::Full), std::size_t{0});
    }

    void crowdsShrinkAndLieOnEachOther()
    {
        RegionScene scene;
        scene.plane = plane;
        for (std::size_t i = 0; i < 2'000; ++i)
            scene.traps.push_back(
                trapOf(i, {static_cast<double>(i % 50) * 200, static_cast<double>(i / 50) * 200}, 5, 1));
        const MapView far = viewOf(scene.extent(), 100, 100);
        QCOMPARE(signScale(scene, far), 0.3);
        const Picture picture = pictureOf(scene, far);
        QVERIFY(all<Mark>(picture).size() < 2 * 27 * 27); // no more than there are spots
        QCOMPARE(signScale(scene, far.zoomed(1000, {50, 50})), 1.0);
        // From near, every one has its sign and dots.
        const Picture near = pictureOf(scene, {{0, 0}, 4, 200, 200});
        QCOMPARE(circles(near, Ink::Band1), std::size_t{9});
    }

    void aTouchMeansTheNearest()
    {
        const RegionScene scene = square();
        const MapView view = viewOf(scene.extent(), 800, 800);
        const Point at = view.at({20'000, -20'000});
        QCOMPARE(trapAt(scene, view, {at.x + 10, at.y - 15}), std::optional<std::size_t>(1));
        QCOMPARE(trapAt(scene, view, {400, 400}), std::nullopt);
        QCOMPARE(trapAt(RegionScene{}, view, {0, 0}), std::nullopt);
    }

    void gridNorthAndScale()
    {
        const RegionScene scene = square();
        const MapView view = viewOf(scene.extent(), 800, 800);
        const Picture picture = pictureOf(scene, view);
        QVERIFY(says(picture, "52.0°") || says(picture, "52°"));
        QVERIFY(says(picture, "−106.0°") || says(picture, "−106°"));
        QVERIFY(says(picture, "N"));
        // 140 px at 58 m are 8.1 km: the round length below is 5 km.
        QVERIFY(std::abs(view.metresPerPixel - 58) < 0.01);
        QVERIFY(says(picture, "5 km"));
        const auto lines = all<Line>(picture);
        const auto bar = std::ranges::find_if(
            lines, [](const Line& line) { return line.ink == Ink::Full && line.points.size() == 4; });
        QVERIFY(bar != lines.end());
        QCOMPARE(std::lround((bar->points[2].x - bar->points[1].x) * view.metresPerPixel), 5'000L);
        // The parallel of the middle goes through the middle.
        QVERIFY(std::ranges::any_of(lines, [&](const Line& line) {
            return line.points.size() > 4 && std::abs(line.points[line.points.size() / 2].y - 400) < 2;
        }));
    }

    void chancesAreFourSteps()
    {
        QCOMPARE(chanceStep(0), std::int8_t{1});
        QCOMPARE(chanceStep(0.1249), std::int8_t{1});
        QCOMPARE(chanceStep(0.125), std::int8_t{2});
        QCOMPARE(chanceStep(1.0 / 3), std::int8_t{3});
        QCOMPARE(chanceStep(2.0 / 3), std::int8_t{4});
        QCOMPARE(chanceStep(1), std::int8_t{4});
    }

    // Two rows of three cells: known, known, little known; unknown throughout.
    void aSurfaceIsTintedAndHatched()
    {
        RegionalSurface surface;
        surface.standing = SurfaceStanding::Drawn;
        for (const double chance : {0.05, 0.05, 0.5})
            surface.cells.push_back({chance > 0.1 ? CellCover::Hatched : CellCover::Shown, 1, {chance, 0.9}});
        for (int i = 0; i < 3; ++i) surface.cells.push_back({CellCover::Masked, 1, {0.9, 0.9}});
        RegionScene scene = square();
        scene.traps.clear();
        const SurfaceGrid grid{{-15'000, -10'000}, Metres{10'000}, 3, 2};
        scene.surface = sceneSurface(surface, grid, 0);
        const MapView view{{0, 0}, 100, 300, 200};
        const Picture picture = pictureOf(scene, view);
        const auto bars = all<Bar>(picture);
        const auto ofInk = [&](Ink ink) {
            return static_cast<int>(std::ranges::count_if(
                bars, [ink](const Bar& bar) { return bar.ink == ink && bar.radius == 0; }));
        };
        QCOMPARE(ofInk(Ink::Tint1), 1); // two cells that look alike are one bar
        QCOMPARE(ofInk(Ink::Tint3), 1);
        QCOMPARE(ofInk(Ink::Line), 1); // what is masked has no chance, whatever was computed
        const auto lines = all<Line>(picture);
        const auto strokes = [&](double width) {
            return std::ranges::count_if(lines, [width](const Line& line) {
                return line.points.size() == 2 && line.ink == Ink::Unknown
                    && std::abs(line.width - width) < 1e-9;
            });
        };
        QVERIFY(strokes(1.6) >= 42 && strokes(1.6) <= 44); // 300 px, every 7
        QVERIFY(strokes(0.7) >= 13 && strokes(0.7) <= 16); // of 100 px
        // The other edge, of the same surface.
        QCOMPARE(sceneSurface(surface, grid, 1).cells.front().chance, std::int8_t{4});
        QCOMPARE(sceneSurface(surface, grid, 7).cells.front().cover, CellCover::Masked);
    }

    void overlaysLieOnThePlane()
    {
        const auto overlay = readOverlay(R"({"type":"FeatureCollection","features":[
            {"type":"Feature","properties":{"name":"North"},"geometry":{"type":"Polygon",
             "coordinates":[[[-106,52],[-105,52],[-105,53],[-106,52]]]}},
            {"type":"Feature","properties":{},"geometry":{"type":"LineString",
             "coordinates":[[-106,52],[-106,51.5]]}}]})");
        QVERIFY(overlay.has_value());
        const auto paths = pathsOf(*overlay, plane);
        QCOMPARE(paths.size(), std::size_t{2});
        QVERIFY(std::abs(paths[0].points[0].eastMetres) < 0.1);
        // One degree of longitude at 52 N is 68.7 km; of latitude 111.2 km.
        QVERIFY(std::abs(paths[0].points[1].eastMetres - 68'677) < 60);
        QVERIFY(std::abs(paths[1].points[1].northMetres + 55'620) < 60);
        RegionScene scene = square();
        scene.paths = paths;
        const auto soft = [](const Picture& picture) {
            const auto lines = all<Line>(picture);
            return std::ranges::count(lines, Ink::Soft, &Line::ink);
        };
        QCOMPARE(soft(pictureOf(scene, viewOf(scene.extent(), 400, 400))), 2);
        QCOMPARE(soft(pictureOf(scene, {{9e6, 0}, 100, 400, 400})), 0);
    }

    void theKeyNamesEverySign()
    {
        RegionWords said = words();
        for (const double width : {200.0, 400.0}) {
            const Picture key = regionKey(said, width, 2);
            for (const char* text : {"low", "uncertain", "moderate", "high", "at least", "nobody counted it"})
                QVERIFY2(says(key, text), text);
            QVERIFY(!says(key, "not known"));
        }
        said.chances = "Chance of more than 300";
        said.chanceSteps = {"low", "1 in 8", "1 in 3", "2 in 3"};
        said.littleKnown = "little known";
        said.notKnown = "not known";
        const Picture key = regionKey(said, 400, 1);
        QVERIFY(says(key, "not known") && says(key, "little known") && says(key, "2 in 3"));
        QVERIFY(key.height > regionKey(words(), 400, 1).height);
    }

    void aSheetIsMapAndKey()
    {
        const RegionScene scene = square();
        const MapView view = viewOf(scene.extent(), 400, 300);
        const Picture sheet = regionSheet(scene, ground, view, words(), 1);
        QVERIFY(sheet.height > 300 + 40);
        QVERIFY(says(sheet, "nobody counted it") && says(sheet, "N"));
        const std::string svg = writeSvg(sheet, {});
        QVERIFY(svg.find("<svg") != std::string::npos && svg.find("nobody counted it") != std::string::npos);
    }

    void yearsOfBands()
    {
        BandYearsInput input;
        input.width = 400;
        input.bands = {"low", "uncertain", "moderate", "high"};
        input.years = {{"2026", {1, 1, 2, 0}}, {"2025", {0, 0, 0, 0}}};
        const Picture picture = bandYears(input);
        QVERIFY(says(picture, "2026") && says(picture, "2025") && says(picture, "moderate"));
        std::vector<double> widths;
        for (const Bar& bar : all<Bar>(picture))
            if (bar.radius == 0 && bar.frame.top < 30) widths.push_back(bar.frame.width());
        QCOMPARE(widths.size(), std::size_t{3});
        QVERIFY(std::abs(widths[2] - 2 * widths[0]) < 1e-9 && std::abs(widths[1] - widths[0]) < 1e-9);
    }
};

QTEST_APPLESS_MAIN(MapTest)
#include "map_test.moc"
