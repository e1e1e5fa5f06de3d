// SPDX-License-Identifier: MIT
#include <QJsonArray>

#include <algorithm>
#include <map>

#include "tool/tool_program.h"

using duskrow::tests::Ran;

namespace {

// Totals by district of traps counted in full, as the season command says them.
std::map<QString, QList<double>> totalsOf(const QJsonObject& season)
{
    std::map<QString, QList<double>> totals;
    for (const auto& value : season[QStringLiteral("traps")].toArray()) {
        const QJsonObject trap = value.toObject();
        if (trap[QStringLiteral("moths")].isNull() || trap[QStringLiteral("is_minimum")].toBool()) continue;
        totals[trap[QStringLiteral("district")].toString()] << trap[QStringLiteral("moths")].toDouble();
    }
    for (auto& [district, moths] : totals) std::sort(moths.begin(), moths.end());
    return totals;
}

double medianOf(const QList<double>& sorted)
{
    const qsizetype half = sorted.size() / 2;
    return sorted.size() % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}

} // namespace

// Runs the real program over the demo.
class RegionCommandTest : public QObject, private duskrow::tests::ToolProgram {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QCOMPARE(run("demo @demo --traps 40 --seasons 2 --today 2026-07-14").exit, 0); }

    // This year up to the day is what the region is; the year before stands beside it, of whole seasons.
    void yearsStandSideBySide()
    {
        const QJsonObject region = run("region @demo --on 2026-07-14 --json")
                                       .json()[QStringLiteral("regions")]
                                       .toArray()[0]
                                       .toObject();
        const QJsonArray years = region[QStringLiteral("years")].toArray();
        QCOMPARE(years.size(), 2);
        const QJsonObject now = years[0].toObject();
        QCOMPARE(now[QStringLiteral("up_to")].toString(), QStringLiteral("2026-07-14"));
        QCOMPARE(now[QStringLiteral("whole")][QStringLiteral("moths")],
            region[QStringLiteral("whole")][QStringLiteral("moths")]);
        QCOMPARE(now[QStringLiteral("bands_of")].toString(), QStringLiteral("so_far"));
        const QJsonObject before = years[1].toObject();
        QCOMPARE(before[QStringLiteral("up_to")].toString(), QStringLiteral("2025-07-14"));
        QCOMPARE(before[QStringLiteral("bands_of")].toString(), QStringLiteral("whole_seasons"));
        QVERIFY(
            before[QStringLiteral("whole")][QStringLiteral("moths")][QStringLiteral("traps")].toInt() > 0);
    }

    void districtsAreWhatTheirTrapsAre()
    {
        const auto totals = totalsOf(run("season @demo --on 2026-07-14 --json").json());
        QVERIFY(!totals.empty());
        const QJsonArray regions =
            run("region @demo --on 2026-07-14 --json").json()[QStringLiteral("regions")].toArray();
        QCOMPARE(regions.size(), 1);
        const QJsonObject region = regions[0].toObject();
        std::size_t counted = 0;
        for (const auto& value : region[QStringLiteral("districts")].toArray()) {
            const QJsonObject district = value.toObject();
            const QJsonObject moths = district[QStringLiteral("moths")].toObject();
            if (moths[QStringLiteral("traps")].toInt() == 0) continue;
            const auto& expected = totals.at(district[QStringLiteral("district")].toString());
            QCOMPARE(moths[QStringLiteral("traps")].toInt(), static_cast<int>(expected.size()));
            QCOMPARE(moths[QStringLiteral("median")].toDouble(), medianOf(expected));
            QCOMPARE(moths[QStringLiteral("highest")].toDouble(), expected.back());
            ++counted;
        }
        QCOMPARE(counted, totals.size());
        const QJsonObject whole =
            region[QStringLiteral("whole")].toObject()[QStringLiteral("moths")].toObject();
        qsizetype all = 0;
        for (const auto& [district, moths] : totals) all += moths.size();
        QCOMPARE(whole[QStringLiteral("traps")].toInt(), static_cast<int>(all));
    }

    void surfaceHasItsCellsOrAReason()
    {
        const QJsonObject region = run("region @demo --on 2026-07-14 --json")
                                       .json()[QStringLiteral("regions")]
                                       .toArray()[0]
                                       .toObject();
        const QJsonObject surface = region[QStringLiteral("surface")].toObject();
        const QString standing = surface[QStringLiteral("standing")].toString();
        const int traps = surface[QStringLiteral("traps")].toInt();
        if (traps < 20) QCOMPARE(standing, QStringLiteral("too_few_traps"));
        QCOMPARE(standing == QStringLiteral("drawn"), surface.contains(QStringLiteral("cells")));
        if (standing != QStringLiteral("drawn")) return;
        QCOMPARE(surface[QStringLiteral("cells")].toArray().size(),
            surface[QStringLiteral("columns")].toInt() * surface[QStringLiteral("rows")].toInt());
    }

    void wordsForTheDesk()
    {
        const Ran ran = run("region @demo --on 2026-07-14");
        QCOMPARE(ran.exit, 0);
        QVERIFY2(ran.out.contains(QStringLiteral("Season 2026, as on")), qPrintable(ran.out));
        QVERIFY(ran.out.contains(QStringLiteral("median of the week to")));
        QVERIFY(ran.out.contains(QStringLiteral("its medians may differ")));
        QVERIFY(ran.out.contains(QStringLiteral("Between the traps")));
        QVERIFY(ran.out.contains(QStringLiteral("Publish none of it as it stands.")));
    }

    // In the middle of the season no trap is in a band; when it is over most are in one.
    void bandsComeWithWholeSeasons()
    {
        QVERIFY(!run("region @demo --on 2026-07-14").out.contains(QStringLiteral("Uncertain")));
        QVERIFY(run("region @demo --on 2026-07-14 --year 2025").out.contains(QStringLiteral("Uncertain")));
        const QJsonObject region = run("region @demo --on 2026-07-14 --year 2025 --json")
                                       .json()[QStringLiteral("regions")]
                                       .toArray()[0]
                                       .toObject();
        int inBand = 0;
        for (const auto& traps :
            region[QStringLiteral("whole")].toObject()[QStringLiteral("bands")].toObject())
            inBand += traps.toInt();
        QVERIFY(inBand > 0);
        QCOMPARE(region[QStringLiteral("surface")].toObject()[QStringLiteral("seasons")].toString(),
            QStringLiteral("whole"));
    }

    void whatIsWrongIsSaid_data()
    {
        QTest::addColumn<QByteArray>("line");
        QTest::addColumn<QString>("says");
        const auto row = [](const char* line, const char* says) {
            QTest::newRow(line) << QByteArray(line) << QString::fromUtf8(says);
        };
        row("region @none", "There is no store at");
        row("region @demo --year 1999", "There is no season called “1999”");
        row("region @demo --on someday", "someday");
    }

    void whatIsWrongIsSaid()
    {
        QFETCH(QByteArray, line);
        QFETCH(QString, says);
        const Ran ran = run(QString::fromUtf8(line));
        QVERIFY(ran.exit != 0);
        QVERIFY2(ran.err.contains(says), qPrintable(ran.err));
    }
};

QTEST_GUILESS_MAIN(RegionCommandTest)
#include "region_test.moc"
