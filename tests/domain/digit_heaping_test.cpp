// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>
#include <vector>

#include "domain/rules/digit_heaping.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

namespace {

std::vector<Moths> countsOf(int rounded, int others)
{
    std::vector<Moths> counts(static_cast<std::size_t>(rounded), Moths{35});
    counts.insert(counts.end(), static_cast<std::size_t>(others), Moths{37});
    return counts;
}

} // namespace

class DigitHeapingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Computed with R's pbinom.
    void theChanceOfSoManyIsBinomial()
    {
        int rows = 0;
        for (const auto& row : readGolden("rules/qc_checks.csv")) {
            if (row.text("check") != "heaping") continue;
            ++rows;
            const double expected = row.number("value1");
            const double chance = chanceOfRounded(row.whole("c"), row.whole("a"));
            QVERIFY(std::abs(chance - expected) < 1e-8 * expected);
        }
        QCOMPARE(rows, 6);
    }

    void theEndsOfTheBinomial()
    {
        QCOMPARE(chanceOfRounded(0, 20), 1.0);
        QVERIFY(std::abs(chanceOfRounded(20, 20) - std::pow(0.2, 20)) < 1e-24);
        QVERIFY(std::abs(chanceOfRounded(1, 20) - (1.0 - std::pow(0.8, 20))) < 1e-12);
        QCOMPARE(chanceOfRounded(0, 0), 1.0);
    }

    void askedFrom_data()
    {
        QTest::addColumn<int>("counts");
        QTest::addColumn<int>("least"); // rounded ones that are asked about
        // The smallest H with P(Bin(n, 0.2) >= H) below one in a thousand.
        QTest::newRow("twenty counts") << 20 << 11;
        QTest::newRow("forty") << 40 << 17;
        QTest::newRow("eighty") << 80 << 29;
    }

    void askedFrom()
    {
        QFETCH(int, counts);
        QFETCH(int, least);
        QVERIFY(digitHeapingOf(countsOf(least, counts - least)).isHeaped());
        QVERIFY(!digitHeapingOf(countsOf(least - 1, counts - least + 1)).isHeaped());
    }

    void fewerThanTwentyCountsSayNothing()
    {
        QVERIFY(!digitHeapingOf(countsOf(19, 0)).isHeaped());
        QVERIFY(digitHeapingOf(countsOf(20, 0)).isHeaped());
        QVERIFY(!digitHeapingOf({}).isHeaped());
    }

    void smallCountsAreLeftOut()
    {
        std::vector<Moths> counts{Moths{0}, Moths{5}, Moths{9}, Moths{10}, Moths{11}, Moths{-5}};
        const DigitHeaping heaping = digitHeapingOf(counts);
        QCOMPARE(heaping.counts, 2);
        QCOMPARE(heaping.rounded, 1);
    }
};

QTEST_APPLESS_MAIN(DigitHeapingTest)
#include "digit_heaping_test.moc"
