// SPDX-License-Identifier: MIT
#include <QTest>

#include <fstream>

#include "joining_scene.h"
#include "store/photos.h"
#include "sync/roster/bringing_along.h"

using namespace duskrow::domain;
using namespace duskrow::sync;
using namespace duskrow::tests;

namespace {

// What a season comes to, of one year and in the words of the records.
struct Sum {
    std::size_t records = 0;
    std::int64_t moths = 0;
    std::int64_t larvae = 0;
    std::size_t withdrawn = 0;
    std::multiset<std::string> remarks;
    std::set<Uuid> ids;

    bool operator==(const Sum&) const = default;
};

template <typename R>
void count(duskrow::store::Reader& reader, Sum& sum, const auto& look)
{
    duskrow::store::Selection all;
    all.withWithdrawn = true;
    for (const R& record : got(reader.select<R>(all))) {
        ++sum.records;
        sum.ids.insert(record.id);
        if (!record.withdrawn.empty()) ++sum.withdrawn;
        look(record);
    }
}

Sum sumOf(duskrow::store::Reader& reader)
{
    Sum sum;
    const auto none = [](const auto&) {};
    const auto remark = [&](const auto& record) { sum.remarks.insert(record.remark); };
    count<Site>(reader, sum, none);
    count<Trap>(reader, sum, remark);
    count<Service>(reader, sum, remark);
    count<Loan>(reader, sum, none);
    count<Visit>(reader, sum, [&](const Visit& visit) {
        remark(visit);
        sum.moths += visit.pest ? visit.pest->value() : 0;
    });
    count<Sample>(reader, sum, none);
    count<Walk>(reader, sum, remark);
    count<Frame>(reader, sum, [&](const Frame& frame) {
        remark(frame);
        sum.larvae += frame.larvae ? frame.larvae->value() : 0;
    });
    count<Decision>(reader, sum, remark);
    return sum;
}

template <typename R>
R newRecord()
{
    R record;
    record.id = duskrow::store::newId(today.at);
    return record;
}

// A season that one person kept alone, and what is in it.
struct Solo {
    std::unique_ptr<duskrow::store::Store> store;
    Uuid me;
    Uuid neighbour;
    District near;
    District far;
    Site site;
    Trap trap;
    Visit mine;
    Visit his; // entered by the neighbour
    Loan loan;
    Walk walk;

    explicit Solo(const JoiningScene& scene) : store(scene.open("solo"))
    {
        me = newRecord<Member>().id;
        neighbour = newRecord<Member>().id;
        got(store->saveSettingNow("me", formatUuid(me)));
        std::vector<Edit> edits = people();
        for (const Edit& edit : field()) edits.push_back(edit);
        for (const Edit& edit : work()) edits.push_back(edit);
        keep(*store, edits);
        his = visitTo(trap, 30);
        got(store->keepNow({.author = neighbour,
            .at = today.at,
            .offset = today.offset,
            .edits = {creation(his, site.id)},
            .draftDone = {}}));
        keep(*store, {withdrawal(mine, site.id, "counted twice")});
    }

    std::vector<Edit> people()
    {
        Member self;
        self.id = me;
        self.name = "Tom";
        Member other;
        other.id = neighbour;
        other.name = "Old Nils";
        Season season;
        season.id = seasonId(store->programme(), 2026);
        season.year = 2026;
        Season before;
        before.id = seasonId(store->programme(), 2025);
        before.year = 2025;
        near = newRecord<District>();
        near.name = "Near the lake";
        far = newRecord<District>();
        far.name = "Far side";
        return {creation(self, {}), creation(other, {}), creation(season, {}), creation(before, {}),
            creation(near, {}), creation(far, {})};
    }

    std::vector<Edit> field()
    {
        site = siteNamed("Slough corner");
        site.season = seasonId(store->programme(), 2026);
        site.district = near.id;
        site.keeper = me;
        Site old = siteNamed("Last year's");
        old.season = seasonId(store->programme(), 2025);
        old.district = far.id;
        old.keeper = neighbour;
        trap = trapAt(site, "1");
        trap.photo = photo("a trap by the road");
        trap.remark = "by the road";
        mine = visitTo(trap, 12);
        loan = newRecord<Loan>();
        loan.trap = trap.id;
        loan.member = neighbour;
        return {creation(site, site.id), creation(old, old.id), creation(trap, site.id),
            creation(mine, site.id), creation(loan, site.id)};
    }

    std::vector<Edit> work()
    {
        auto service = newRecord<Service>();
        service.trap = trap.id;
        service.remark = "new lure";
        auto sample = newRecord<Sample>();
        sample.trap = trap.id;
        sample.visit = mine.id;
        walk = newRecord<Walk>();
        walk.site = site.id;
        walk.season = site.season;
        walk.pest = "diamondback";
        auto frame = newRecord<Frame>();
        frame.walk = walk.id;
        frame.larvae = Larvae{17};
        auto decision = newRecord<Decision>();
        decision.walk = walk.id;
        decision.remark = "look again";
        return {creation(service, site.id), creation(sample, site.id), creation(walk, site.id),
            creation(frame, site.id), creation(decision, site.id)};
    }

    [[nodiscard]] std::string photo(const std::string& bytes) const
    {
        const std::string path = store->path() + ".jpg";
        std::ofstream(path, std::ios::binary) << bytes;
        return got(duskrow::store::keepPhoto(store->path(), path));
    }
};

// A programme with a season 2026, a district of its own and a grower who joined.
struct Together {
    JoiningScene scene;
    std::unique_ptr<duskrow::store::Store> desk = scene.founded();
    District near = newRecord<District>();
    std::unique_ptr<duskrow::store::Store> tom;
    Uuid member;

    Together()
    {
        Season season;
        season.id = seasonId(desk->programme(), 2026);
        season.year = 2026;
        ProtocolUse use;
        use.id = protocolUseId(desk->programme(), season.id, "bertha-armyworm");
        use.season = season.id;
        use.pest = "bertha-armyworm";
        near.name = "Near the lake";
        keep(*desk, {creation(season, {}), creation(use, {}), creation(near, {})});
        tom = scene.member(*desk, "tom", Role::Grower);
        member = rosterIn(*tom).memberOf(tom->stream());
    }

    Brought bring(const Solo& solo) const // NOLINT(modernize-use-nodiscard)
    {
        const auto reader = got(solo.store->reader());
        return got(bringAlong(*reader, *tom, member, today));
    }
};

} // namespace

class JoiningBringTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyRecordComesAlong()
    {
        const Together all;
        const Solo solo(all.scene);
        const auto before = got(solo.store->reader());
        const Sum expected = sumOf(*before);
        QCOMPARE(expected.records, std::size_t{11});
        QCOMPARE(expected.moths, std::int64_t{42});
        QCOMPARE(expected.withdrawn, std::size_t{1});
        const Brought brought = all.bring(solo);
        const auto after = got(all.tom->reader());
        QVERIFY(sumOf(*after) == expected);
        QCOMPARE(brought.records, std::int64_t{12}); // one district with them
        QCOMPARE(brought.photos, std::int64_t{1});
        QCOMPARE(brought.photosMissing, std::int64_t{0});
        QVERIFY(sumOf(*before) == expected); // the old file stays as it is

        // And it counts for everybody.
        all.scene.exchange(*all.tom);
        all.scene.exchange(*all.desk);
        QCOMPARE(dumpOf(*all.desk), dumpOf(*all.tom));
        const auto there = got(all.desk->reader());
        QVERIFY(sumOf(*there) == expected);
        // But for his district: it is the coordinator's to let in.
        const auto aside = got(duskrow::store::asideChanges(*there));
        QCOMPARE(aside.size(), std::size_t{1});
        QVERIFY(aside.front().record == solo.far.id);
        QVERIFY(brought.districtsNotHere == std::set<std::string>{solo.far.name});
        keep(*all.desk, {admission(all.desk->programme(), aside.front().change)});
        QCOMPARE(got(duskrow::store::districts(*there)).size(), std::size_t{2});
        const std::string photo = duskrow::store::photoPath(all.desk->path(), solo.trap.photo);
        QVERIFY(QFileInfo::exists(QString::fromStdString(photo)));
    }

    void whatBelongsToTheProgrammeIsItsOwn()
    {
        const Together all;
        const Solo solo(all.scene);
        const Brought brought = all.bring(solo);
        const auto reader = got(all.tom->reader());
        const Uuid season = seasonId(all.desk->programme(), 2026);
        const Site site = *got(duskrow::store::site(*reader, solo.site.id));
        QVERIFY(site.season == season);
        QVERIFY(site.keeper == all.member);
        QVERIFY(site.district == all.near.id); // the district of that name
        QCOMPARE(got(duskrow::store::districts(*reader)).size(), std::size_t{1});
        QVERIFY(got(duskrow::store::trap(*reader, solo.trap.id))->season == season);
        QVERIFY(got(duskrow::store::walk(*reader, solo.walk.id))->season == season);
        QVERIFY(brought.yearsNotHere == std::set<int>{2025});
        QVERIFY(brought.pestsNotHere == std::set<std::string>{"diamondback"});
        QCOMPARE(brought.otherKeepers, std::int64_t{1});
        QCOMPARE(got(duskrow::store::seasons(*reader)).size(), std::size_t{1});
    }

    void whoStoodThereIsStillSaid()
    {
        const Together all;
        const Solo solo(all.scene);
        all.bring(solo);
        const auto reader = got(all.tom->reader());
        QCOMPARE(got(duskrow::store::visit(*reader, solo.his.id))->observer, std::string("Old Nils"));
        QCOMPARE(got(duskrow::store::walk(*reader, solo.walk.id))->observer, std::string());
        const Loan loan = *got(duskrow::store::loan(*reader, solo.loan.id));
        QCOMPARE(loan.borrower, std::string("Old Nils"));
        QVERIFY(loan.member.isNil());
    }

    void nothingIsDoubled()
    {
        const Together all;
        const Solo solo(all.scene);
        const Brought first = all.bring(solo);
        const std::string once = dumpOf(*all.tom);
        const Brought again = all.bring(solo);
        QCOMPARE(again.records, std::int64_t{0});
        QCOMPARE(again.alreadyThere, first.records);
        QCOMPARE(dumpOf(*all.tom), once);
    }

    void aMissingPhotographIsSaid()
    {
        const Together all;
        const Solo solo(all.scene);
        QFile::remove(QString::fromStdString(duskrow::store::photoPath(solo.store->path(), solo.trap.photo)));
        const Brought brought = all.bring(solo);
        QCOMPARE(brought.photos, std::int64_t{0});
        QCOMPARE(brought.photosMissing, std::int64_t{1});
        const auto reader = got(all.tom->reader());
        QCOMPARE(got(duskrow::store::trap(*reader, solo.trap.id))->photo, solo.trap.photo);
    }
};

QTEST_GUILESS_MAIN(JoiningBringTest)
#include "joining_bring_test.moc"
