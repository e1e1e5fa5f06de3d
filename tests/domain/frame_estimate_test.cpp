// SPDX-License-Identifier: MIT
#include <QTest>

#include <algorithm>
#include <cmath>
#include <random>

#include "domain/rules/frame_estimate.h"
#include "domain/rules/mean_posterior.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

namespace {

constexpr SquareMetres quarter{0.25};
constexpr SquareMetres whole{1.0}; // per frame is per square metre

using Counts = QList<qint64>;

std::vector<FrameStop> stopsOf(const Counts& larvae, const Counts& frames = {})
{
    std::vector<FrameStop> stops;
    for (qsizetype i = 0; i < larvae.size(); ++i)
        stops.push_back({Larvae{larvae[i]}, Frames{frames.isEmpty() ? 1 : frames[i]}});
    return stops;
}

Counts countsIn(QByteArray field)
{
    Counts counts;
    for (const QByteArray& part : field.replace('"', "").split(' ')) counts.append(part.toLongLong());
    return counts;
}

FrameEstimate estimateOf(
    const std::vector<FrameStop>& stops, SquareMetres area = quarter, std::optional<double> threshold = {})
{
    const auto estimate = estimateFrames(stops, area,
        threshold ? std::optional<LarvaePerSquareMetre>(LarvaePerSquareMetre{*threshold}) : std::nullopt);
    if (!estimate) qFatal("refused");
    return *estimate;
}

bool isNear(double actual, double expected, double relative)
{
    return std::abs(actual - expected) <= relative * std::abs(expected);
}

double width(const FrameEstimate& estimate)
{
    return std::log(estimate.range->high.value() / estimate.range->low.value());
}

// Equal to the last digit, in all that is computed.
bool isSame(const FrameEstimate& a, const FrameEstimate& b)
{
    return a.standing == b.standing && a.stops == b.stops && a.larvae == b.larvae && a.mean == b.mean
        && a.range->low == b.range->low && a.range->high == b.range->high
        && a.probabilityAbove == b.probabilityAbove && a.dispersion == b.dispersion;
}

} // namespace

class FrameEstimateTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Computed with R 4.2.2, see the head of the table.
    void chancesFollowTheGoldens()
    {
        for (const auto& row : readGolden("rules/nb_interval.csv")) {
            const auto tally = tallyOf(stopsOf(countsIn(row.text("counts"))));
            QCOMPARE(tally->stops, row.whole("n"));
            QCOMPARE(tally->larvae.value(), row.whole("total"));
            const MeanPosterior posterior(*tally);
            for (const auto& [column, probability] : {std::pair{"bayes_q025", 0.025}, {"bayes_q05", 0.05},
                     {"bayes_median", 0.5}, {"bayes_q95", 0.95}, {"bayes_q975", 0.975}}) {
                const double found = posterior.quantile(probability).value();
                QVERIFY2(isNear(found, row.number(column), 2e-6),
                    qPrintable(QStringLiteral("%1 %2: %3")
                                   .arg(QString::fromUtf8(row.text("counts")), QString::fromUtf8(column))
                                   .arg(found, 0, 'g', 9)));
            }
            for (const auto& [column, mean] : {std::pair{"p_mean_gt_5", 5.0}, {"p_mean_gt_2.75", 2.75}})
                QVERIFY(isNear(posterior.probabilityAbove(LarvaePerFrame{mean}), row.number(column), 2e-6));
        }
    }

    void textbookFollowsTheGoldens()
    {
        for (const auto& row : readGolden("rules/nb_interval.csv")) {
            const auto figures = textbookFigures(stopsOf(countsIn(row.text("counts"))), whole);
            QVERIFY(std::abs(figures->tRange.low.value() - row.number("t_lo")) < 1e-6);
            QVERIFY(std::abs(figures->tRange.high.value() - row.number("t_hi")) < 1e-6);
            const double mean = row.number("mean");
            const double variance = row.number("var");
            QCOMPARE(figures->momentDispersion.has_value(), variance > mean);
            if (variance > mean)
                QVERIFY(isNear(*figures->momentDispersion, mean * mean / (variance - mean), 1e-6));
        }
    }

    // Computed with a plain grid in Python, see the head of the table.
    void unevenStopsFollowTheGoldens()
    {
        for (const auto& row : readGolden("rules/uneven_stops.csv")) {
            const auto tally = tallyOf(stopsOf(countsIn(row.text("larvae")), countsIn(row.text("frames"))));
            const MeanPosterior posterior(*tally);
            for (const auto& [column, probability] :
                {std::pair{"q025", 0.025}, {"median", 0.5}, {"q975", 0.975}}) {
                const double found = posterior.quantile(probability).value();
                QVERIFY2(isNear(found, row.number(column), 2e-6),
                    qPrintable(QStringLiteral("%1 %2: %3")
                                   .arg(QString::fromUtf8(row.text("larvae")), QString::fromUtf8(column))
                                   .arg(found, 0, 'g', 9)));
            }
            QVERIFY(
                std::abs(posterior.probabilityAbove(LarvaePerFrame{5.0}) - row.number("p_mean_gt_5")) < 1e-6);
            QVERIFY(isNear(posterior.medianDispersion(), row.number("median_k"), 3e-3));
        }
    }

    void theWalkOfTheReadme()
    {
        const auto stops = stopsOf({4, 9, 2, 15, 0, 6, 3, 8, 1, 7});
        const FrameEstimate estimate = estimateOf(stops, quarter, 20.0);
        QCOMPARE(estimate.standing, FrameStanding::Range);
        QCOMPARE(estimate.mean->value(), 22.0);
        QCOMPARE(estimate.fullest.value(), qint64{15});
        QVERIFY(isNear(estimate.range->low.value(), 4 * 3.2150933, 1e-6));
        QVERIFY(isNear(estimate.range->high.value(), 4 * 10.913731, 1e-6));
        QVERIFY(isNear(*estimate.probabilityAbove, 0.66566417, 1e-6));
        QVERIFY(*estimate.dispersion > 1.0 && *estimate.dispersion < 3.0);
    }

    void standing_data()
    {
        QTest::addColumn<Counts>("larvae");
        QTest::addColumn<FrameStanding>("standing");
        QTest::newRow("no frame") << Counts{} << FrameStanding::NoFrames;
        QTest::newRow("one frame") << Counts{7} << FrameStanding::TooFewForSpread;
        QTest::newRow("one empty frame") << Counts{0} << FrameStanding::TooFewForSpread;
        QTest::newRow("two frames") << Counts{7, 5} << FrameStanding::TooFewForSpread;
        QTest::newRow("three empty frames") << Counts{0, 0, 0} << FrameStanding::NoneFound;
        QTest::newRow("four frames") << Counts{5, 5, 5, 5} << FrameStanding::TooFewForRange;
        QTest::newRow("five equal frames") << Counts{5, 5, 5, 5, 5} << FrameStanding::Range;
        QTest::newRow("one frame holds all") << Counts{0, 0, 0, 0, 9} << FrameStanding::TooFewForRange;
        QTest::newRow("ten frames") << Counts{4, 9, 2, 15, 0, 6, 3, 8, 1, 7} << FrameStanding::Range;
    }

    void standing()
    {
        QFETCH(Counts, larvae);
        QFETCH(FrameStanding, standing);
        const FrameEstimate estimate = estimateOf(stopsOf(larvae), quarter, 20.0);
        QCOMPARE(estimate.standing, standing);
        QCOMPARE(estimate.stops, larvae.size());
        QCOMPARE(estimate.mean.has_value(), !larvae.isEmpty());
        QCOMPARE(estimate.range.has_value(),
            standing == FrameStanding::TooFewForRange || standing == FrameStanding::Range);
        QCOMPARE(estimate.upperBound.has_value(), standing == FrameStanding::NoneFound);
        QCOMPARE(estimate.probabilityAbove.has_value(), larvae.size() >= 3);
        QCOMPARE(estimate.dispersion.has_value(), larvae.size() >= 3);
        QVERIFY(!estimateOf(stopsOf(larvae)).probabilityAbove);
    }

    // Equal counts: Student's t says 5 to 5, this does not (computed with R's pbeta).
    void equalCountsStillHaveARange()
    {
        const auto stops = stopsOf({5, 5, 5, 5, 5});
        const FrameEstimate estimate = estimateOf(stops, whole);
        QCOMPARE(std::round(estimate.range->low.value() * 100), 277.0);
        QCOMPARE(std::round(estimate.range->high.value() * 100), 1017.0);
        const auto textbook = textbookFigures(stops, whole);
        QCOMPARE(textbook->tRange.low.value(), textbook->tRange.high.value());
        QVERIFY(!textbook->momentDispersion);
    }

    // k (20^(1 / (n k)) - 1) per frame with k = 0.5.
    void noneFoundHasABound_data()
    {
        QTest::addColumn<int>("frames");
        QTest::addColumn<double>("perSquareMetre");
        QTest::newRow("3 frames") << 3 << 12.7;
        QTest::newRow("5 frames") << 5 << 4.63;
        QTest::newRow("10 frames") << 10 << 1.64;
        QTest::newRow("20 frames") << 20 << 0.70;
        QTest::newRow("30 frames") << 30 << 0.44;
    }

    void noneFoundHasABound()
    {
        QFETCH(int, frames);
        QFETCH(double, perSquareMetre);
        const FrameEstimate estimate = estimateOf(stopsOf(Counts(frames, 0)));
        QVERIFY(std::abs(estimate.upperBound->value() - perSquareMetre) < 0.05);
        QCOMPARE(estimate.mean->value(), 0.0);
        // The chance of so many empty frames at the bound is 5 %.
        const double atBound = estimate.upperBound->value() * 0.25;
        QVERIFY(isNear(std::pow(1.0 + atBound / 0.5, -0.5 * frames), 0.05, 1e-9));
    }

    void noneFoundAtUnevenStops()
    {
        const auto bound = [](const Counts& frames) {
            return estimateOf(stopsOf(Counts(frames.size(), 0), frames), whole).upperBound->value();
        };
        const double uneven = bound({1, 2, 1, 2, 3});
        double log = 0.0;
        for (const int frames : {1, 2, 1, 2, 3}) log -= 0.5 * std::log1p(frames * uneven / 0.5);
        QVERIFY(isNear(log, std::log(0.05), 1e-9));
        QVERIFY(bound({3, 3, 3, 3, 3}) < uneven && uneven < bound({1, 1, 1, 1, 1}));
    }

    void everyLarvaRaisesMeanAndRange()
    {
        Counts larvae{4, 0, 2, 1, 0, 6};
        FrameEstimate before = estimateOf(stopsOf(larvae), quarter, 20.0);
        for (int added = 0; added < 60; ++added) {
            ++larvae[added % larvae.size()];
            const FrameEstimate after = estimateOf(stopsOf(larvae), quarter, 20.0);
            QVERIFY(after.mean->value() > before.mean->value());
            QVERIFY(after.larvae.value() == before.larvae.value() + 1);
            before = after;
        }
        QVERIFY(*before.probabilityAbove > 0.99);
    }

    void theSameSeenTwiceNarrowsTheRange()
    {
        std::mt19937 dice(20260714);
        for (int run = 0; run < 40; ++run) {
            Counts larvae;
            const int frames = 3 + static_cast<int>(dice() % 12);
            for (int i = 0; i < frames; ++i) larvae.append(static_cast<qint64>(dice() % 15));
            larvae[0] += 1;
            const FrameEstimate once = estimateOf(stopsOf(larvae));
            const FrameEstimate twice = estimateOf(stopsOf(larvae + larvae));
            QVERIFY2(
                width(twice) < width(once), qPrintable(QStringLiteral("seed 20260714, run %1").arg(run)));
            QCOMPARE(twice.mean->value(), once.mean->value());
        }
    }

    void theOrderOfStopsNeverMatters()
    {
        Counts larvae{4, 9, 2, 15, 0, 6, 3, 8, 1, 7};
        const FrameEstimate first = estimateOf(stopsOf(larvae), quarter, 20.0);
        std::mt19937 dice(7);
        for (int run = 0; run < 20; ++run) {
            std::shuffle(larvae.begin(), larvae.end(), dice);
            QVERIFY(isSame(estimateOf(stopsOf(larvae), quarter, 20.0), first));
        }
        auto stops = stopsOf({4, 9, 2, 15, 0, 6}, {1, 2, 1, 3, 1, 2});
        const FrameEstimate uneven = estimateOf(stops, quarter, 20.0);
        for (int run = 0; run < 10; ++run) {
            std::shuffle(stops.begin(), stops.end(), dice);
            QVERIFY(isSame(estimateOf(stops, quarter, 20.0), uneven));
        }
    }

    void twoWalksTogetherAreOneWalk()
    {
        const auto morning = stopsOf({4, 9, 2, 15, 0});
        const auto evening = stopsOf({6, 3, 8, 1, 7});
        auto joined = evening;
        joined.insert(joined.end(), morning.begin(), morning.end());
        QVERIFY(isSame(estimateOf(joined, quarter, 20.0),
            estimateOf(stopsOf({4, 9, 2, 15, 0, 6, 3, 8, 1, 7}), quarter, 20.0)));
    }

    // Frames at one stop share its density: the range of stops, not of frames.
    void framesAtOneStopAreOneLook()
    {
        const FrameEstimate stops = estimateOf(stopsOf({8, 3, 12, 5, 0, 9}, Counts(6, 2)), whole);
        const FrameEstimate larger = estimateOf(stopsOf({8, 3, 12, 5, 0, 9}), SquareMetres{2.0});
        QVERIFY(isNear(stops.range->low.value(), larger.range->low.value(), 1e-12));
        QVERIFY(isNear(stops.range->high.value(), larger.range->high.value(), 1e-12));
        const FrameEstimate apart = estimateOf(stopsOf({4, 4, 2, 1, 6, 6, 3, 2, 0, 0, 5, 4}), whole);
        QCOMPARE(apart.mean->value(), stops.mean->value());
        QVERIFY(width(apart) < width(stops));
    }

    // The grid for unequal stops passes over into the closed form for equal ones.
    void almostEvenStopsAreAlmostEven()
    {
        const Counts larvae{700, 250, 1100, 420, 90, 815};
        const FrameEstimate even = estimateOf(stopsOf(larvae, Counts(6, 100)), whole, 5.0);
        const FrameEstimate uneven = estimateOf(stopsOf(larvae, {100, 100, 99, 100, 100, 100}), whole, 5.0);
        QVERIFY(isNear(uneven.range->low.value(), even.range->low.value(), 1e-2));
        QVERIFY(isNear(uneven.range->high.value(), even.range->high.value(), 1e-2));
        QVERIFY(isNear(*uneven.probabilityAbove, *even.probabilityAbove, 1e-2));
        QVERIFY(isNear(*uneven.dispersion, *even.dispersion, 1e-2));
    }

    void hugeAndOddCountsHold_data()
    {
        QTest::addColumn<Counts>("larvae");
        QTest::addColumn<Counts>("frames");
        QTest::newRow("thousands") << Counts{4000, 5200, 3900, 6100, 4800} << Counts{};
        QTest::newRow("a million each") << Counts(20, 1'000'000) << Counts{};
        QTest::newRow("one in a thousand stops") << Counts(999, 0) + Counts{1} << Counts{};
        QTest::newRow("a million beside nothing") << Counts(30, 0) + Counts{1'000'000} << Counts{};
        QTest::newRow("a thousand equal stops") << Counts(1000, 5) << Counts{};
        QTest::newRow("uneven and huge") << Counts{900'000, 1, 0, 400'000} << Counts{100, 1, 1, 50};
        QTest::newRow("uneven and rare") << Counts(200, 0) + Counts{1} << Counts(200, 1) + Counts{7};
    }

    void hugeAndOddCountsHold()
    {
        QFETCH(Counts, larvae);
        QFETCH(Counts, frames);
        const FrameEstimate estimate = estimateOf(stopsOf(larvae, frames), whole, 5.0);
        const double low = estimate.range->low.value();
        const double high = estimate.range->high.value();
        QVERIFY2(std::isfinite(low) && std::isfinite(high) && low > 0.0 && low < high,
            qPrintable(QStringLiteral("%1 to %2").arg(low).arg(high)));
        QVERIFY(low < estimate.mean->value() && estimate.mean->value() < high);
        QVERIFY(*estimate.probabilityAbove >= 0.0 && *estimate.probabilityAbove <= 1.0);
        QVERIFY(std::isfinite(*estimate.dispersion) && *estimate.dispersion > 0.0);
        const MeanPosterior posterior(*tallyOf(stopsOf(larvae, frames)));
        double last = 1.0;
        for (double mean = estimate.mean->value() / 1000; mean < estimate.mean->value() * 1000; mean *= 1.3) {
            const double above = posterior.probabilityAbove(LarvaePerFrame{mean});
            QVERIFY(above <= last + 1e-12);
            last = above;
        }
        QVERIFY(std::abs(posterior.probabilityAbove(posterior.quantile(0.3)) - 0.7) < 1e-6);
    }

    void refusals_data()
    {
        QTest::addColumn<Counts>("larvae");
        QTest::addColumn<Counts>("frames");
        QTest::addColumn<double>("area");
        QTest::addColumn<double>("threshold");
        QTest::addColumn<QString>("field");
        const Counts five(5, 3);
        const Counts ones(5, 1);
        const double nan = std::nan("");
        QTest::newRow("threshold of zero") << five << ones << 0.25 << 0.0 << "threshold_per_m2";
        QTest::newRow("threshold below zero") << five << ones << 0.25 << -20.0 << "threshold_per_m2";
        QTest::newRow("threshold absurd") << five << ones << 0.25 << 1e9 << "threshold_per_m2";
        QTest::newRow("threshold not a number") << five << ones << 0.25 << nan << "threshold_per_m2";
        QTest::newRow("frame of nothing") << five << ones << 0.0 << 20.0 << "frame_m2";
        QTest::newRow("frame of a field") << five << ones << 1e4 << 20.0 << "frame_m2";
        QTest::newRow("count below zero") << Counts{3, -1} << Counts{1, 1} << 0.25 << 20.0 << "larvae";
        QTest::newRow("count absurd") << Counts{1'000'001} << Counts{1} << 0.25 << 20.0 << "larvae";
        QTest::newRow("stop without a frame") << Counts{3} << Counts{0} << 0.25 << 20.0 << "frames";
        QTest::newRow("stop of a thousand frames") << Counts{3} << Counts{1000} << 0.25 << 20.0 << "frames";
        QTest::newRow("too many stops") << Counts(10'001, 1) << Counts{} << 0.25 << 20.0 << "stops";
    }

    void refusals()
    {
        QFETCH(Counts, larvae);
        QFETCH(Counts, frames);
        QFETCH(double, area);
        QFETCH(double, threshold);
        QFETCH(QString, field);
        const auto estimate =
            estimateFrames(stopsOf(larvae, frames), SquareMetres{area}, LarvaePerSquareMetre{threshold});
        QVERIFY(!estimate.has_value());
        QCOMPARE(estimate.error().code, ErrorCode::OutOfRange);
        QCOMPARE(QString::fromStdString(estimate.error().args.front()), field);
    }

    void aTextbookNeedsTwoStops()
    {
        QCOMPARE(textbookFigures(stopsOf({3}), quarter).error().code, ErrorCode::TooFewParts);
        QCOMPARE(textbookFigures({}, quarter).error().code, ErrorCode::TooFewParts);
        QVERIFY(!textbookFigures(stopsOf({3, 4}), SquareMetres{0.0}));
    }

    void theFrameIsTheProtocols()
    {
        Protocol protocol;
        QCOMPARE(frameAreaOf(protocol).value(), 0.25);
        protocol.scouting.emplace();
        QCOMPARE(frameAreaOf(protocol).value(), 0.25);
        protocol.scouting->frame.value = SquareMetres{1.0};
        QCOMPARE(frameAreaOf(protocol).value(), 1.0);
    }
};

QTEST_APPLESS_MAIN(FrameEstimateTest)
#include "frame_estimate_test.moc"
