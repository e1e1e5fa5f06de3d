// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/records/roster.h"
#include "store/desk_records.h"
#include "store/season_flags.h"
#include "store/segment_scene.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;

namespace {

const Uuid season = idOf(50);

Trap trapOfScene()
{
    Trap trap;
    trap.id = idOf(7);
    trap.site = idOf(4);
    trap.season = season;
    trap.tag = "bertha 1";
    trap.setDay = dayOf(2026, 5, 25);
    return trap;
}

Site siteOfScene()
{
    Site site;
    site.id = idOf(4);
    site.season = season;
    site.district = idOf(60);
    site.keeper = idOf(3);
    site.name = "Slough corner";
    return site;
}

void keep(Store& store, std::vector<Edit> edits)
{
    const auto kept = store.keepNow(batchOf(std::move(edits)));
    QVERIFY2(kept.has_value(), kept ? "" : kept.error().detail.c_str());
}

Edit wordOn(const Store& store, const Uuid& visit, ByName<Value> fields)
{
    fields["record"] = formatUuid(visit);
    return {"ruling", rulingId(store.programme(), visit), {}, std::move(fields)};
}

Change madeBy(const StreamId& stream, std::int64_t seq, const Uuid& programme, const Visit& visit)
{
    const Edit edit = creation(visit, idOf(4));
    Change change{.programme = programme,
        .ref = {stream, seq},
        .author = idOf(3),
        .kind = edit.kind,
        .record = edit.record,
        .site = edit.site,
        .at = instantFromMs(1'783'980'000'000),
        .offset = std::chrono::minutes{-300},
        .fields = {},
        .saw = {}};
    for (const auto& [field, value] : edit.fields) change.fields[field] = {value, {}};
    return change;
}

Season seasonOf2026()
{
    Season of;
    of.id = season;
    of.year = 2026;
    return of;
}

} // namespace

class DeskRecordsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatADeskReads()
    {
        const StoreScene scene;
        const auto store = scene.open();
        Visit phoned = visitOf(8, 12);
        phoned.reportedHow = ReportedHow::Phone;
        phoned.observer = "Tom";
        Visit missed = visitOf(9, 0);
        missed.outcome = Outcome::CouldNotCount;
        Visit elsewhere = visitOf(10, 5);
        elsewhere.trap = idOf(70);
        Visit withdrawn = visitOf(11, 5);
        withdrawn.withdrawn = "typed for the wrong trap";
        keep(*store,
            {creation(siteOfScene(), idOf(4)), creation(trapOfScene(), idOf(4)), creation(missed, idOf(4)),
                creation(phoned, idOf(4)), creation(elsewhere, idOf(4)), creation(withdrawn, idOf(4))});
        const auto reader = store->reader();
        const auto read = deskRecords(**reader, season, std::nullopt, store->stream());
        QVERIFY2(read.has_value(), read ? "" : read.error().detail.c_str());
        QCOMPARE(read->traps.size(), std::size_t{1});
        QCOMPARE(read->traps.front().tag, std::string("bertha 1"));
        QCOMPARE(read->siteOf(read->traps.front())->name, std::string("Slough corner"));
        QVERIFY(read->trapsOfDesk.front().district == idOf(60));
        QCOMPARE(read->visits.size(), std::size_t{2});
        QVERIFY(read->visits[0].visit == phoned.id && read->visits[0].pest == Moths{12});
        QVERIFY(read->visits[0].how == ReportedHow::Phone);
        QVERIFY(read->visits[1].visit == missed.id && !read->visits[1].pest && !read->visits[1].how);
        QVERIFY(read->visits[0].day == *phoned.day);
    }

    // What another device brought came in; what was typed here did not.
    void whatCameInSinceAMark()
    {
        const StoreScene scene;
        const StreamId other = RosterScene::stream("gus");
        scene.letCount(other);
        const auto store = scene.open();
        keep(*store,
            {creation(siteOfScene(), idOf(4)), creation(trapOfScene(), idOf(4)),
                creation(visitOf(8, 12), idOf(4))});
        const auto reader = store->reader();
        const auto before = deskRecords(**reader, season, std::nullopt, store->stream());
        QVERIFY(before.has_value());
        QVERIFY(before->cameIn.empty());
        const std::vector brought{madeBy(other, 1, store->programme(), visitOf(9, 3)),
            madeBy(other, 2, store->programme(), visitOf(10, 4))};
        const auto taken = store->take(segmentOf(other, 1, bytesOf(brought))).get();
        QVERIFY2(taken.has_value(), taken ? "" : taken.error().detail.c_str());
        const auto after = deskRecords(**reader, season, before->mark, store->stream());
        QVERIFY((after->cameIn == std::set<Uuid>{idOf(9), idOf(10)}));
        QVERIFY(after->mark > before->mark);
        const auto looked = deskRecords(**reader, season, after->mark, store->stream());
        QVERIFY(looked->cameIn.empty());
    }

    // A word on a visit takes its flags off the desk; leaving its count out takes it out of the sums as well.
    void settling_data()
    {
        QTest::addColumn<QString>("field");
        QTest::addColumn<QString>("value");
        QTest::addColumn<bool>("isFlagged");
        QTest::addColumn<bool>("isLeftOut");
        QTest::newRow("nothing said") << QString() << QString() << true << false;
        QTest::newRow("it stands") << QStringLiteral("says") << QStringLiteral("stands") << false << false;
        QTest::newRow("it is open again")
            << QStringLiteral("says") << QStringLiteral("open") << true << false;
        QTest::newRow("left out") << QStringLiteral("left_out") << QStringLiteral("the trap lay on its side")
                                  << false << true;
    }

    void settling()
    {
        QFETCH(QString, field);
        QFETCH(QString, value);
        QFETCH(bool, isFlagged);
        QFETCH(bool, isLeftOut);
        const StoreScene scene;
        const auto store = scene.open();
        keep(*store,
            {creation(siteOfScene(), idOf(4)), creation(trapOfScene(), idOf(4)),
                creation(visitOf(8, 12), idOf(4))});
        if (!field.isEmpty())
            keep(*store, {wordOn(*store, idOf(8), {{field.toStdString(), value.toStdString()}})});
        const auto reader = store->reader();
        // Three days before the visit, which so lies in the future.
        const auto flags =
            flagsOfSeason(**reader, seasonOf2026(), *visitOf(8, 12).day - std::chrono::days{3});
        QVERIFY(flags.has_value());
        QCOMPARE(!flags->empty(), isFlagged);
        const auto apart = leftOut(**reader);
        QCOMPARE(!apart->empty(), isLeftOut);
        if (!isLeftOut) return;
        keep(*store, {wordOn(*store, idOf(8), {{"left_out", Value{}}})});
        QVERIFY(leftOut(**reader)->empty());
        QVERIFY(
            !flagsOfSeason(**reader, seasonOf2026(), *visitOf(8, 12).day - std::chrono::days{3})->empty());
    }
};

QTEST_GUILESS_MAIN(DeskRecordsTest)
#include "desk_records_test.moc"
