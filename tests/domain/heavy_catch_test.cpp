// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>
#include <limits>

#include "domain/rules/heavy_catch.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

namespace {

constexpr qint64 nothing = -1;

qint64 orNothing(std::optional<Moths> moths)
{
    return moths ? moths->value() : nothing;
}

std::vector<WeightPart> goldenParts(const duskrow::tests::GoldenRow& row)
{
    const QList<double> amounts = row.numbers("w");
    const QList<double> counts = row.numbers("x");
    std::vector<WeightPart> parts;
    for (qsizetype i = 0; i < amounts.size(); ++i)
        parts.push_back({Moths{std::llround(counts[i])}, Milligrams{std::llround(amounts[i] * 1000.0)}});
    return parts;
}

Milligrams goldenWhole(const duskrow::tests::GoldenRow& row)
{
    return Milligrams{std::llround(row.number("W") * 1000.0)};
}

} // namespace

class HeavyCatchTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void perfectMixingFollowsTheBinomial()
    {
        for (const auto& row : readGolden("rules/subsample.csv")) {
            const auto range = perfectMixingRange(Moths{row.whole("x")}, row.number("f"));
            QVERIFY(range.has_value());
            QCOMPARE(range->low.value(), row.whole("exact_lo"));
            QCOMPARE(range->high.value(), row.whole("exact_hi"));
        }
    }

    // x = 37 of a tenth: computed with R's pbinom.
    void perfectMixingOfATenth()
    {
        const auto range = perfectMixingRange(Moths{37}, 0.1);
        QCOMPARE(range->low.value(), 266);
        QCOMPARE(range->high.value(), 502);
    }

    void perfectMixingHoldsForHugeCounts()
    {
        const auto range = perfectMixingRange(Moths{100'000'000}, 0.1);
        // The normal limit: about 1e9 plus or minus 1.96 * sqrt(1e8 * 0.9) / 0.1.
        QVERIFY(std::abs(static_cast<double>(range->low.value()) - (1e9 - 185'900.0)) < 500.0);
        QVERIFY(std::abs(static_cast<double>(range->high.value()) - (1e9 + 185'900.0)) < 500.0);
    }

    void perfectMixingRefusesBadInput()
    {
        QCOMPARE(perfectMixingRange(Moths{1}, 0.0).error().code, ErrorCode::PartTooLarge);
        QCOMPARE(perfectMixingRange(Moths{1}, 1.01).error().code, ErrorCode::PartTooLarge);
        QCOMPARE(perfectMixingRange(Moths{1}, std::nan("")).error().code, ErrorCode::PartTooLarge);
        QCOMPARE(perfectMixingRange(Moths{-1}, 0.5).error().code, ErrorCode::OutOfRange);
        QCOMPARE(perfectMixingRange(Moths{1}, 1e-12).error().code, ErrorCode::OutOfRange);
        QCOMPARE(perfectMixingRange(Moths{0}, 1e-12).error().code, ErrorCode::OutOfRange);
        QCOMPARE(perfectMixingRange(Moths{7}, 1.0)->high.value(), 7);
        QVERIFY(perfectMixingRange(Moths{1}, 1e-9).has_value());
    }

    void severalPartsFollowTheRatioEstimator()
    {
        for (const auto& row : readGolden("rules/subsample_ratio.csv")) {
            const auto parts = goldenParts(row);
            const auto spread = estimateFromSpread(parts, goldenWhole(row));
            QVERIFY(spread.has_value());
            QVERIFY(std::abs(spread->estimate - row.number("N_hat")) < 1e-6);
            QVERIFY(std::abs(spread->standardError - row.number("se")) < 1e-7);
            QVERIFY(std::abs(spread->low - row.number("t_lo")) < 1e-6);
            QVERIFY(std::abs(spread->high - row.number("t_hi")) < 1e-6);
            QVERIFY(std::abs(spread->clumping - row.number("phi")) < 1e-9);

            const auto kept = estimateHeavyCatch(parts, goldenWhole(row));
            QCOMPARE(kept->method, HeavyCatchMethod::SpreadOfParts);
            QCOMPARE(kept->estimate.value(), std::llround(row.number("N_hat")));
            QCOMPARE(orNothing(kept->low), std::llround(row.number("t_lo")));
            QCOMPARE(orNothing(kept->high), std::llround(row.number("t_hi")));
        }
    }

    void oneOrTwoParts_data()
    {
        QTest::addColumn<qint64>("counted");
        QTest::addColumn<qint64>("part");
        QTest::addColumn<qint64>("whole");
        QTest::addColumn<qint64>("estimate");
        QTest::addColumn<qint64>("low");
        QTest::addColumn<qint64>("high");
        // By hand: N exp(+-1.96 sqrt((1-f) 2/x + 0.05^2)); no moth at all: floor(ln 0.025 / ln(1-f)).
        QTest::newRow("120 in a quarter") << 120LL << 250LL << 1000LL << 480LL << 378LL << 610LL;
        QTest::newRow("37 in a tenth") << 37LL << 100LL << 1000LL << 370LL << 238LL << 576LL;
        QTest::newRow("none in a tenth") << 0LL << 100LL << 1000LL << 0LL << 0LL << 35LL;
        QTest::newRow("none in a quarter") << 0LL << 250LL << 1000LL << 0LL << 0LL << 12LL;
        QTest::newRow("low never below the counted") << 10LL << 990LL << 1000LL << 10LL << 10LL << 12LL;
        QTest::newRow("everything counted") << 77LL << 1000LL << 1000LL << 77LL << nothing << nothing;
        QTest::newRow("as many as can be")
            << 1'000'000'000LL << 999LL << 999LL << 1'000'000'000LL << nothing << nothing;
    }

    void oneOrTwoParts()
    {
        QFETCH(qint64, counted);
        QFETCH(qint64, part);
        QFETCH(qint64, whole);
        QFETCH(qint64, estimate);
        QFETCH(qint64, low);
        QFETCH(qint64, high);
        const std::vector<VolumePart> parts{{Moths{counted}, Microlitres{part}}};
        const auto kept = estimateHeavyCatch(parts, Microlitres{whole});
        QVERIFY(kept.has_value());
        QCOMPARE(kept->estimate.value(), estimate);
        QCOMPARE(orNothing(kept->low), low);
        QCOMPARE(orNothing(kept->high), high);
        QCOMPARE(
            kept->method, part == whole ? HeavyCatchMethod::WholeCounted : HeavyCatchMethod::AssumedClumping);
        QCOMPARE(kept->clumping.has_value(), part != whole && counted > 0);
    }

    void aBalanceIsTrustedMoreThanACup()
    {
        const std::vector<VolumePart> cup{{Moths{400}, Microlitres{250}}};
        const std::vector<WeightPart> weighed{{Moths{400}, Milligrams{250}}};
        const auto byCup = estimateHeavyCatch(cup, Microlitres{1000});
        const auto byBalance = estimateHeavyCatch(weighed, Milligrams{1000});
        QCOMPARE(byCup->estimate, byBalance->estimate);
        QVERIFY(*byCup->low < *byBalance->low);
        QVERIFY(*byBalance->high < *byCup->high);
    }

    void twoPartsArePooled()
    {
        const std::vector<VolumePart> two{{Moths{70}, Microlitres{125}}, {Moths{50}, Microlitres{125}}};
        const std::vector<VolumePart> one{{Moths{120}, Microlitres{250}}};
        const auto pooled = estimateHeavyCatch(two, Microlitres{1000});
        QCOMPARE(pooled->method, HeavyCatchMethod::AssumedClumping);
        QCOMPARE(orNothing(pooled->high), orNothing(estimateHeavyCatch(one, Microlitres{1000})->high));
    }

    void equalPartsStillHaveARange()
    {
        const std::vector<VolumePart> equal(3, {Moths{10}, Microlitres{100}});
        const auto kept = estimateHeavyCatch(equal, Microlitres{1000});
        QCOMPARE(kept->estimate.value(), 100);
        QVERIFY(*kept->low < kept->estimate && kept->estimate < *kept->high);
        const std::vector<VolumePart> empty(3, {Moths{0}, Microlitres{100}});
        QCOMPARE(orNothing(estimateHeavyCatch(empty, Microlitres{3000})->high), 35);
    }

    void aWideSpreadNeverGoesBelowTheCounted()
    {
        const std::vector<VolumePart> uneven{
            {Moths{1}, Microlitres{100}}, {Moths{90}, Microlitres{100}}, {Moths{2}, Microlitres{100}}};
        const auto kept = estimateHeavyCatch(uneven, Microlitres{1000});
        QCOMPARE(orNothing(kept->low), 93);
        QVERIFY(estimateFromSpread(uneven, Microlitres{1000})->low < 0.0);
    }

    void refusals_data()
    {
        QTest::addColumn<qint64>("counted");
        QTest::addColumn<qint64>("part");
        QTest::addColumn<qint64>("whole");
        QTest::addColumn<int>("code");
        const int tooLarge = static_cast<int>(ErrorCode::PartTooLarge);
        const int outOfRange = static_cast<int>(ErrorCode::OutOfRange);
        const qint64 most = std::numeric_limits<qint64>::max();
        const qint64 least = std::numeric_limits<qint64>::min();
        QTest::newRow("part above the whole") << 1LL << 1001LL << 1000LL << tooLarge;
        QTest::newRow("no amount") << 1LL << 0LL << 1000LL << tooLarge;
        QTest::newRow("amount below zero") << 1LL << -5LL << 1000LL << tooLarge;
        QTest::newRow("no whole") << 1LL << 1LL << 0LL << tooLarge;
        QTest::newRow("whole below zero") << 1LL << 1LL << least << tooLarge;
        QTest::newRow("count below zero") << -1LL << 1LL << 10LL << outOfRange;
        QTest::newRow("count too large") << 1'000'000'001LL << 1LL << 10LL << outOfRange;
        QTest::newRow("count as large as it gets") << most << 1LL << 10LL << outOfRange;
        QTest::newRow("estimate too large") << 1'000'000'000LL << 1LL << 10LL << outOfRange;
        QTest::newRow("none in almost nothing") << 0LL << 1LL << most << outOfRange;
    }

    void refusals()
    {
        QFETCH(qint64, counted);
        QFETCH(qint64, part);
        QFETCH(qint64, whole);
        QFETCH(int, code);
        const std::vector<VolumePart> parts{{Moths{counted}, Microlitres{part}}};
        const auto kept = estimateHeavyCatch(parts, Microlitres{whole});
        QVERIFY(!kept.has_value());
        QCOMPARE(static_cast<int>(kept.error().code), code);
    }

    void partsTogetherMayNotExceedTheWhole()
    {
        const qint64 half = std::numeric_limits<qint64>::max() / 2 + 1;
        const std::vector<WeightPart> parts(2, {Moths{1}, Milligrams{half}});
        const auto kept = estimateHeavyCatch(parts, Milligrams{std::numeric_limits<qint64>::max()});
        QCOMPARE(kept.error().code, ErrorCode::PartTooLarge);
        const std::vector<WeightPart> crowded(2, {Moths{600'000'000}, Milligrams{1}});
        QCOMPARE(estimateHeavyCatch(crowded, Milligrams{2}).error().code, ErrorCode::OutOfRange);
    }

    void aSpreadNeedsTwoParts()
    {
        const std::vector<VolumePart> one{{Moths{12}, Microlitres{100}}};
        QCOMPARE(estimateFromSpread(one, Microlitres{1000}).error().code, ErrorCode::TooFewParts);
        QCOMPARE(estimateHeavyCatch(std::span<const VolumePart>{}, Microlitres{1000}).error().code,
            ErrorCode::Empty);
    }
};

QTEST_APPLESS_MAIN(HeavyCatchTest)
#include "heavy_catch_test.moc"
