// SPDX-License-Identifier: MIT
#include <QTest>

#include "store/season_flags.h"
#include "store/segment_scene.h"
#include "store/visit_authors.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;

namespace {

const Uuid ida = idOf(2); // writes the batches of the scene
const Uuid tom = idOf(3);

Season seasonOf(int year)
{
    Season season;
    season.id = idOf(50);
    season.year = year;
    return season;
}

Trap trapOfScene()
{
    Trap trap;
    trap.id = idOf(7);
    trap.site = idOf(4);
    trap.season = idOf(50);
    trap.setDay = dayOf(2026, 5, 25);
    return trap;
}

void keep(Store& store, Edit edit, const Uuid& author = ida)
{
    Batch batch = batchOf(std::vector{std::move(edit)});
    batch.author = author;
    QVERIFY(store.keepNow(std::move(batch)).has_value());
}

// All changes so far, as one segment in their place.
void seal(Store& store)
{
    const auto reader = store.reader();
    std::vector<std::string> lines;
    QVERIFY((*reader)
                ->eachRow("SELECT body FROM change ORDER BY seq", {},
                    [&](SQLite::Statement& row) { lines.push_back(row.getColumn(0).getString()); })
                .has_value());
    QVERIFY(store.sealNow(segmentOf(store.stream(), 1, lines).row).has_value());
    int left = 0;
    QVERIFY((*reader)->eachRow("SELECT 1 FROM change", {}, [&](SQLite::Statement&) { ++left; }).has_value());
    QCOMPARE(left, 0);
}

} // namespace

class SeasonFlagsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Who made the record, not who corrected it; in rows and in sealed segments alike.
    void whoWroteAVisitDown_data()
    {
        QTest::addColumn<bool>("isSealed");
        QTest::newRow("in rows") << false;
        QTest::newRow("sealed") << true;
    }

    void whoWroteAVisitDown()
    {
        QFETCH(bool, isSealed);
        const StoreScene scene;
        const auto store = scene.open();
        keep(*store, creation(trapOfScene(), idOf(4)));
        const Visit first = visitOf(8, 12);
        const Visit second = visitOf(9, 15);
        keep(*store, creation(first, idOf(4)), tom);
        keep(*store, creation(second, idOf(4)));
        Visit corrected = first;
        corrected.pest = Moths{13};
        keep(*store, correction(first, corrected, idOf(4)));
        if (isSealed) seal(*store);
        const auto reader = store->reader();
        const auto authors = visitAuthors(**reader, idOf(50));
        QVERIFY(authors.has_value());
        QVERIFY((*authors == std::map<Uuid, Uuid>{{first.id, tom}, {second.id, ida}}));
        QVERIFY(visitAuthors(**reader, idOf(51))->empty());
    }

    void whatIsAskedOfASeason()
    {
        const StoreScene scene;
        const auto store = scene.open();
        keep(*store, creation(trapOfScene(), idOf(4)));
        keep(*store, creation(visitOf(8, 12), idOf(4)));
        Visit twice = visitOf(10, 12);
        twice.day = visitOf(8, 12).day;
        keep(*store, creation(twice, idOf(4)));
        Visit lost = visitOf(11, 5);
        lost.trap = idOf(77);
        keep(*store, creation(lost, idOf(4)));
        Visit lastYear = visitOf(12, 5);
        lastYear.trap = idOf(77);
        lastYear.day = dayOf(2025, 7, 1);
        keep(*store, creation(lastYear, idOf(4)));
        const auto reader = store->reader();
        const auto flags = flagsOfSeason(**reader, seasonOf(2026), dayOf(2026, 7, 14));
        QVERIFY(flags.has_value());
        QCOMPARE(flags->size(), 2U);
        QVERIFY(flags->at(0).check == Check::WithoutTrap && flags->at(0).visit == lost.id);
        QVERIFY(flags->at(1).check == Check::DoubleEntry && flags->at(1).visit == twice.id);

        // Of a trap that was withdrawn the visits stand without one.
        keep(*store, withdrawal(trapOfScene(), idOf(4), "never stood there"));
        const auto after = flagsOfSeason(**reader, seasonOf(2026), dayOf(2026, 7, 14));
        QCOMPARE(after->size(), 3U);
        for (const Flag& flag : *after) QVERIFY(flag.check == Check::WithoutTrap);
    }
};

QTEST_GUILESS_MAIN(SeasonFlagsTest)
#include "season_flags_test.moc"
