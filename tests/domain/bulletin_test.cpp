// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/bulletin_scene.h"

using namespace duskrow::domain;

namespace {

constexpr GridCell here{521, -1067};

// One trap and farm for each season so far; all in one district and cell.
std::vector<WeekReport> withSeasons(const QList<int>& seasons)
{
    std::vector<WeekReport> reports;
    for (const int soFar : seasons)
        reports.push_back(reported(static_cast<int>(reports.size()) + 1, 0, here, soFar / 10.0, soFar));
    return reports;
}

Bulletin filled(const std::vector<WeekReport>& reports, std::vector<std::string> names = {"Valley"})
{
    Bulletin bulletin;
    bulletin.bands = fourBands();
    fillIn(bulletin, reports, names, areasOf(reports));
    return bulletin;
}

QByteArray said(const std::vector<BandGroup>& groups)
{
    QByteArrayList words;
    for (const BandGroup& group : groups)
        words << QByteArray::number(group.lowest) + '-' + QByteArray::number(group.highest) + ':'
                + QByteArray::number(group.traps);
    return words.join(' ');
}

} // namespace

class BulletinTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void madeRound_data()
    {
        QTest::addColumn<double>("moths");
        QTest::addColumn<int>("round");
        QTest::newRow("zero stays zero") << 0.0 << 0;
        QTest::newRow("a little is never zero") << 0.1 << 2;
        QTest::newRow("3") << 3.0 << 4;
        QTest::newRow("18.9") << 18.9 << 18;
        QTest::newRow("22") << 22.0 << 20;
        QTest::newRow("97") << 97.0 << 95;
        QTest::newRow("98") << 98.0 << 100;
        QTest::newRow("254") << 254.0 << 250;
        QTest::newRow("1,026") << 1026.0 << 1050;
    }

    void madeRound()
    {
        QFETCH(double, moths);
        QTEST(static_cast<int>(duskrow::domain::madeRound(moths).value()), "round");
    }

    void roundIsNeverExactForOneOnly()
    {
        // Whatever stands there, at least two whole catches may lie behind it.
        for (int moths = 1; moths < 3000; ++moths) {
            const auto round = duskrow::domain::madeRound(moths);
            QVERIFY(round == duskrow::domain::madeRound(moths + 1)
                || round == duskrow::domain::madeRound(moths - 1));
        }
    }

    void groupsOfBands_data()
    {
        QTest::addColumn<QList<int>>("seasons");
        QTest::addColumn<QByteArray>("groups");
        using Seasons = QList<int>;
        QTest::newRow("all low") << Seasons{1, 2, 3, 4, 5, 6} << QByteArray("1-1:6 2-2:0 3-3:0 4-4:0");
        QTest::newRow("a few high ones are told with the next lower until they are five")
            << Seasons{1, 2, 3, 4, 5, 300, 400, 500, 1000, 2000} << QByteArray("1-1:5 2-4:5");
        QTest::newRow("five high ones stand by themselves")
            << Seasons{1, 2, 3, 4, 5, 1200, 1300, 1400, 1500, 1600} << QByteArray("1-1:5 2-2:0 3-3:0 4-4:5");
        QTest::newRow("a few low ones join those above")
            << Seasons{1, 2, 300, 310, 320, 330, 340} << QByteArray("1-2:7 3-3:0 4-4:0");
        QTest::newRow("and reach over an empty band")
            << Seasons{1, 2, 900, 910, 920, 930, 940} << QByteArray("1-3:7 4-4:0");
        QTest::newRow("exactly on an edge is the higher one") << Seasons{
            299, 299, 299, 299, 299, 300, 300, 300, 300, 300} << QByteArray("1-1:5 2-2:5 3-3:0 4-4:0");
        QTest::newRow("all told as one") << Seasons{1, 400, 950, 1300, 1400} << QByteArray("1-4:5");
    }

    void groupsOfBands()
    {
        QFETCH(QList<int>, seasons);
        QTEST(said(filled(withSeasons(seasons)).bandGroups), "groups");
    }

    void anAreaHasMediansAndBands()
    {
        const Bulletin bulletin = filled(withSeasons({10, 20, 297, 1100, 1300}));
        const AreaFigures& all = bulletin.whole.value();
        QCOMPARE(all.counted, 5U);
        QCOMPARE(all.seasonMedian, Moths{290}); // 300 would be another band
        QCOMPARE(all.weekMedian, Moths{30});
        QCOMPARE(all.typicalLevel, std::optional(1));
        QCOMPARE(all.highestLevel, std::optional(4));
        QCOMPARE(all.phase, FlightPhase::Rising);
        QVERIFY(all.caughtAny);
        QCOMPARE(bulletin.districts.size(), 1U);
        QVERIFY(bulletin.districts[0].figures);
        QCOMPARE(bulletin.cells.size(), 1U);
        QCOMPARE(bulletin.cells[0].cell, here);
        QCOMPARE(bulletin.cells[0].uncertainty.value(), uncertaintyOf(here, Metres{5}).value());
    }

    void withFourFarmsNothingIsSaid()
    {
        const Bulletin bulletin = filled(withSeasons({10, 20, 297, 1100}));
        QVERIFY(!bulletin.whole);
        QVERIFY(bulletin.bandGroups.empty());
        QVERIFY(bulletin.cells.empty());
        QCOMPARE(bulletin.districts.size(), 1U);
        QVERIFY(!bulletin.districts[0].figures);
    }

    void trapsNotCountedInFullAreInNoMedian()
    {
        auto reports = withSeasons({10, 20, 30, 40, 50, 5000});
        reports[5].moths.reset();
        const Bulletin bulletin = filled(reports);
        QCOMPARE(bulletin.whole->counted, 6U);
        QCOMPARE(bulletin.whole->expected, 6U);
        QCOMPARE(bulletin.whole->seasonMedian, Moths{30});
        QCOMPARE(bulletin.whole->highestLevel, std::optional(1));
        reports[4].moths.reset();
        QVERIFY(!filled(reports).whole);
    }

    void noneCaughtIsSaid()
    {
        auto reports = withSeasons({0, 0, 0, 0, 0});
        QVERIFY(!filled(reports).whole->caughtAny);
        QCOMPARE(filled(reports).whole->weekMedian, Moths{0});
        reports[2].moths = 1;
        QVERIFY(filled(reports).whole->caughtAny);
    }

    void withoutBandsThereAreNoLevels()
    {
        Bulletin bulletin;
        const auto reports = withSeasons({10, 20, 30, 40, 50});
        const std::vector<std::string> names{"Valley"};
        fillIn(bulletin, reports, names, areasOf(reports));
        QVERIFY(!bulletin.whole->typicalLevel);
        QVERIFY(bulletin.bandGroups.empty());
    }
};

QTEST_APPLESS_MAIN(BulletinTest)
#include "bulletin_test.moc"
