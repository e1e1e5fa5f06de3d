// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>
#include <random>

#include "domain/rules/geodesy.h"
#include "domain/rules/regional_plane.h"
#include "domain/rules/regional_surface.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

namespace {

constexpr std::array edges{Moths{300}, Moths{900}};
// 200 km by 150 km around the traps, and a strip far outside.
constexpr SurfaceGrid grid{{0, 0}, Metres{5'000}, 60, 30};

// Traps on a slope from hundreds in the west to few in the east: there is a pattern.
std::vector<SurfaceTrap> slope(int count, unsigned seed = 7)
{
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> east(0, 200'000);
    std::uniform_real_distribution<double> north(0, 150'000);
    std::normal_distribution<double> noise(0, 0.3);
    std::vector<SurfaceTrap> all;
    for (int i = 0; i < count; ++i) {
        const PlaneOffset place{east(random), north(random)};
        const double logarithm = 6.5 - place.eastMetres / 50'000 + noise(random);
        all.push_back({place, Moths{std::llround(std::exp(logarithm))}});
    }
    return all;
}

} // namespace

class RegionalSurfaceTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void chancesAreAsComputedElsewhere_data()
    {
        QTest::addColumn<double>("x");
        QTest::addColumn<double>("y");
        QTest::addColumn<double>("median");
        QTest::addColumn<double>("above300");
        QTest::addColumn<double>("above900");
        QTest::addColumn<double>("ratio");
        for (const auto& row : readGolden("rules/surface_risk_prob.csv"))
            QTest::addRow("%s %s", row.text("x").constData(), row.text("y").constData())
                << row.number("x") << row.number("y") << row.number("median_total") << row.number("p_gt_300")
                << row.number("p_gt_900") << row.number("var_ratio");
    }

    // Computed with scipy; the file says how.
    void chancesAreAsComputedElsewhere()
    {
        QFETCH(double, x);
        QFETCH(double, y);
        QFETCH(double, median);
        QFETCH(double, above300);
        QFETCH(double, above900);
        QFETCH(double, ratio);
        std::vector<PlacedValue> values;
        for (const auto& row : readGolden("rules/kriging_synth_traps.csv"))
            values.push_back({{row.number("x"), row.number("y")}, row.number("z")});
        const Kriged kriged = Kriging::from(values, {0.8, Metres{40'000}, 0.35})->at({x, y});
        QVERIFY(std::abs(chanceAbove(kriged, Moths{300}) - above300) < 1e-6);
        QVERIFY(std::abs(chanceAbove(kriged, Moths{900}) - above900) < 1e-6);
        QVERIFY(std::abs(std::expm1(kriged.value) - median) < 1e-3);
        QVERIFY(std::abs(kriged.varianceOfField / 0.8 - ratio) < 1e-6);
    }

    void fewTrapsAreDotsOnly()
    {
        auto few = slope(19);
        const RegionalSurface surface = regionalSurface(few, grid, edges);
        QCOMPARE(surface.standing, SurfaceStanding::TooFewTraps);
        QVERIFY(surface.cells.empty());
        QCOMPARE(surface.traps, std::size_t{19});
        // A twentieth at a place that is taken tells nothing new.
        few.push_back(few.front());
        QCOMPARE(regionalSurface(few, grid, edges).standing, SurfaceStanding::TooFewTraps);
    }

    void equalCountsHaveNoSurface()
    {
        auto same = slope(30);
        for (SurfaceTrap& trap : same) trap.total = Moths{12};
        QCOMPARE(regionalSurface(same, grid, edges).standing, SurfaceStanding::AllEqual);
    }

    // Counts dealt out anew among the places: neighbours know nothing of each other.
    void noPatternHasNoSurface()
    {
        int drawn = 0;
        for (unsigned seed = 1; seed <= 8; ++seed) {
            auto shuffled = slope(60, seed);
            std::mt19937 random(seed);
            for (std::size_t i = shuffled.size() - 1; i > 0; --i)
                std::swap(shuffled[i].total, shuffled[random() % (i + 1)].total);
            const RegionalSurface surface = regionalSurface(shuffled, grid, edges);
            drawn += surface.standing == SurfaceStanding::Drawn ? 1 : 0;
            if (surface.standing == SurfaceStanding::NoPattern) {
                QVERIFY(surface.errorByNeighbours > 0.95 * surface.errorByMean);
                QVERIFY(surface.cells.empty());
            }
        }
        QVERIFY2(drawn == 0, qPrintable(QString::number(drawn)));
    }

    void aPatternIsDrawnWhereItIsKnown()
    {
        const auto traps = slope(80);
        const RegionalSurface surface = regionalSurface(traps, grid, edges);
        QCOMPARE(surface.standing, SurfaceStanding::Drawn);
        QVERIFY(surface.errorByNeighbours < 0.95 * surface.errorByMean);
        QCOMPARE(surface.cells.size(), grid.columns * grid.rows);
        const SurfaceCell& west = surface.cells[15 * grid.columns + 2];
        const SurfaceCell& east = surface.cells[15 * grid.columns + 36];
        QCOMPARE(west.cover, CellCover::Shown);
        QVERIFY(west.chances[0] > 0.5);
        QVERIFY(east.chances[0] < 0.1);
        QVERIFY(west.medianTotal > 10 * east.medianTotal);
        for (const SurfaceCell& cell : surface.cells) {
            QCOMPARE(cell.chances.size(), edges.size());
            QVERIFY(cell.chances[0] >= cell.chances[1] && cell.chances[1] >= 0 && cell.chances[0] <= 1);
        }
        // 100 km east of the last trap nobody knows anything.
        QCOMPARE(surface.cells[15 * grid.columns + 59].cover, CellCover::Masked);
    }

    // What is worked out on a coarser grid and drawn between is what each cell would say by itself.
    void variancesBetweenPointsAreClose()
    {
        constexpr SurfaceGrid fine{{0, 0}, Metres{1'000}, 200, 150};
        const auto traps = slope(80);
        const RegionalSurface surface = regionalSurface(traps, fine, edges);
        QCOMPARE(surface.standing, SurfaceStanding::Drawn);
        std::vector<PlacedValue> values;
        for (const SurfaceTrap& trap : traps)
            values.push_back({trap.place, std::log1p(static_cast<double>(trap.total.value()))});
        const auto kriging = Kriging::from(values, *surface.covariance);
        double worst = 0;
        for (std::size_t i = 0; i < surface.cells.size(); i += 37) {
            const Kriged kriged = kriging->at(fine.middleOf(i % fine.columns, i / fine.columns));
            worst = std::max(worst, std::abs(surface.cells[i].chances[0] - chanceAbove(kriged, edges[0])));
        }
        QVERIFY2(worst < 0.01, qPrintable(QString::number(worst)));
    }

    // Distances on the plane beside those over the ellipsoid.
    void thePlaneKeepsDistances()
    {
        const RegionalPlane plane(GeoPoint{520'000'000, -1'060'000'000});
        const GeoPoint here{533'000'000, -1'085'000'000};
        const GeoPoint there{508'000'000, -1'041'000'000};
        const PlaneOffset from = plane.offsetOf(here);
        const PlaneOffset to = plane.offsetOf(there);
        const double flat = std::hypot(from.eastMetres - to.eastMetres, from.northMetres - to.northMetres);
        QVERIFY(std::abs(flat / courseBetween(here, there).distance.value() - 1) < 1e-3);
        QCOMPARE(plane.placeAt(from), here);
        QCOMPARE(plane.offsetOf(plane.middle()).eastMetres, 0.0);
    }
};

QTEST_APPLESS_MAIN(RegionalSurfaceTest)
#include "regional_surface_test.moc"
