// SPDX-License-Identifier: MIT
#include <QTest>

#include <algorithm>
#include <random>
#include <set>

#include "domain/bulletin/reissue.h"
#include "domain/bulletin_scene.h"

using namespace duskrow::domain;

namespace {

// Twelve traps in one district and cell, twelve in another.
std::vector<WeekReport> twoDistricts()
{
    std::vector<WeekReport> reports;
    for (int i = 0; i < 24; ++i)
        reports.push_back(reported(i, i < 12 ? 0 : 1, {521, i < 12 ? -1067 : -1060}, 10.0 + i, 100 + 10 * i));
    return reports;
}

std::size_t changedFarms(
    const std::vector<WeekReport>& a, const std::vector<WeekReport>& b, std::size_t district)
{
    std::set<Uuid> farms;
    for (std::size_t i = 0; i < a.size(); ++i)
        if (!(a[i] == b[i]) && a[i].reporter.district == district) farms.insert(a[i].reporter.farm);
    return farms.size();
}

} // namespace

class ReissueTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void changesAreTakenByFiveFarms_data()
    {
        QTest::addColumn<int>("first"); // farms that change in each of the districts
        QTest::addColumn<int>("second");
        QTest::addColumn<int>("taken");
        QTest::addColumn<int>("waiting");
        QTest::newRow("nothing changed") << 0 << 0 << 0 << 0;
        QTest::newRow("one late count waits") << 1 << 0 << 0 << 1;
        QTest::newRow("so do four") << 4 << 0 << 0 << 4;
        QTest::newRow("five are taken") << 5 << 0 << 5 << 0;
        QTest::newRow("three and three are not six") << 3 << 3 << 0 << 6;
        QTest::newRow("one district may go ahead") << 6 << 2 << 6 << 2;
        QTest::newRow("both") << 5 << 7 << 12 << 0;
    }

    void changesAreTakenByFiveFarms()
    {
        QFETCH(int, first);
        QFETCH(int, second);
        const auto published = twoDistricts();
        const PublishedAreas areas = areasOf(published);
        QCOMPARE(areas.districts.size(), 2U);
        auto now = published;
        for (int i = 0; i < first; ++i) now[static_cast<std::size_t>(i)].moths = 77;
        for (int i = 0; i < second; ++i) now[static_cast<std::size_t>(12 + i)].moths = 77;
        const Reissue made = reissue(published, areas, now);
        QTEST(static_cast<int>(made.taken), "taken");
        QTEST(static_cast<int>(made.waiting), "waiting");
        QCOMPARE(made.reports.size(), published.size());
        for (const std::size_t district : {0U, 1U}) {
            const std::size_t shown = changedFarms(published, made.reports, district);
            QVERIFY(shown == 0 || shown >= fewestFarms);
        }
        QCOMPARE(made.areas, areas);
    }

    void oneFarmWithManyTrapsIsOneFarm()
    {
        const auto published = twoDistricts();
        auto now = published;
        for (std::size_t i = 0; i < 12; ++i) {
            now[i].moths = 77;
            now[i].reporter.farm = numbered(2, 1);
        }
        QCOMPARE(reissue(published, areasOf(published), now).taken, 0U);
    }

    void aTrapThatIsNewOrGoneIsAChange()
    {
        const auto published = twoDistricts();
        auto now = published;
        now.push_back(reported(50, 0, {521, -1067}, 5, 50));
        now.erase(now.begin() + 3);
        const Reissue waits = reissue(published, areasOf(published), now);
        QCOMPARE(waits.waiting, 2U);
        QCOMPARE(waits.reports.size(), 24U);
        for (int i = 0; i < 5; ++i) now.push_back(reported(60 + i, 0, {521, -1067}, 5, 50));
        const Reissue taken = reissue(published, areasOf(published), now);
        QCOMPARE(taken.taken, 7U);
        QCOMPARE(taken.reports.size(), now.size());
    }

    void aMoveBetweenDistrictsShowsInBoth()
    {
        const auto published = twoDistricts();
        auto now = published;
        for (std::size_t i = 0; i < 5; ++i) now[i].reporter.district = 1;
        // All five leave one piece and come into another that nobody else changed in.
        const Reissue made = reissue(published, areasOf(published), now);
        QCOMPARE(made.taken, 5U);
        now[4] = published[4];
        QCOMPARE(reissue(published, areasOf(published), now).taken, 0U);
    }

    void noPieceEverShowsFewer()
    {
        std::mt19937 random(7);
        int shown = 0;
        for (int round = 0; round < 300; ++round) {
            const auto published = twoDistricts();
            auto now = published;
            for (WeekReport& report : now) {
                if (random() % 3 == 0) report.soFar += Moths{1};
                if (random() % 20 == 0) report.reporter.district = random() % 2;
                if (random() % 20 == 0) report.moths.reset();
            }
            const PublishedAreas areas = areasOf(published);
            const Reissue made = reissue(published, areas, now);
            for (const std::size_t district : {0U, 1U}) {
                const std::size_t changed = changedFarms(published, made.reports, district);
                QVERIFY(changed == 0 || changed >= fewestFarms);
            }
            shown += made.taken > 0 ? 1 : 0;
            for (const std::size_t district : made.areas.districts) QVERIFY(areas.hasDistrict(district));
        }
        QVERIFY2(shown > 30, qPrintable(QString::number(shown)));
    }
};

QTEST_APPLESS_MAIN(ReissueTest)
#include "reissue_test.moc"
