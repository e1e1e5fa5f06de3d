// SPDX-License-Identifier: MIT
#include <QTest>

#include <filesystem>

#include "joining_scene.h"

using namespace duskrow::domain;
using namespace duskrow::sync;
using namespace duskrow::tests;
using std::chrono::days;

namespace {

std::size_t asideOf(duskrow::store::Store& store, const StreamId& stream)
{
    const auto reader = got(store.reader());
    std::size_t count = 0;
    for (const auto& change : got(duskrow::store::asideChanges(*reader)))
        if (change.change.stream == stream) ++count;
    return count;
}

} // namespace

// Claims of invitations, which one counts, and what a coordinator says of devices later.
class JoiningClaimTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whoJoinsIsInAndIsConfirmed()
    {
        const JoiningScene scene;
        const auto desk = scene.founded();
        const Invited invited = scene.invited(*desk, "Tom", Role::Grower);
        scene.exchange(*desk);
        StreamId stream{};
        {
            const auto tom = got(scene.tryJoin("tom", invited.code));
            stream = tom->stream();
        }
        // Opened again before the first exchange, as the app does: still no founder.
        const auto tom = scene.open("tom");
        QVERIFY(tom->stream() == stream);
        scene.exchange(*tom);
        QVERIFY(rosterIn(*tom).founders() == std::set<StreamId>{desk->stream()});
        QVERIFY(rosterIn(*tom).memberOf(stream) == invited.member);
        QVERIFY(!rosterIn(*tom).isCoordinator(stream));
        QCOMPARE(asideOf(*tom, stream), std::size_t{0});

        got(exchangeByFolder(*desk, scene.shared(), today.at));
        QVERIFY(!rosterIn(*desk).devices().at(stream).isConfirmed);
        QCOMPARE(got(confirmClaims(*tom, today)), std::int64_t{0}); // not his to say
        QCOMPARE(got(confirmClaims(*desk, today)), std::int64_t{1});
        QCOMPARE(got(confirmClaims(*desk, today)), std::int64_t{0});
        QVERIFY(rosterIn(*desk).devices().at(stream).isConfirmed);
        QCOMPARE(rosterIn(*desk).devices().at(stream).label, std::string("tom phone"));
        scene.exchange(*desk);
        scene.exchange(*tom);
        QCOMPARE(dumpOf(*tom), dumpOf(*desk));
    }

    // Whoever finds the code on a slip of paper comes too late.
    void aLaterClaimOfTheSameInvitationIsVoid()
    {
        const JoiningScene scene;
        const auto desk = scene.founded();
        const Invited invited = scene.invited(*desk, "Tom", Role::Grower);
        scene.exchange(*desk);
        const Ticket ticket = got(scene.ticket(invited.code));
        const auto key = got(keyOfCode(invited.code));
        const auto tom = got(scene.tryJoin("tom", invited.code));
        scene.exchange(*tom);
        scene.exchange(*desk); // confirms
        QCOMPARE(codeOf(scene.ticket(invited.code)), ErrorCode::InvitationUsed);

        const auto thief = got(join(scene.path("thief"), scene.how("thief"), ticket, key, "x", today));
        const Site site = siteNamed("Stolen");
        keep(*thief, {creation(site, site.id)});
        scene.exchange(*thief);
        scene.exchange(*desk);
        QVERIFY(isIn(*desk, tom->stream()));
        QVERIFY(!isIn(*desk, thief->stream()));
        scene.exchange(*tom);
        QVERIFY(!isIn(*tom, thief->stream()));
        const auto reader = got(desk->reader());
        QVERIFY(!got(duskrow::store::site(*reader, site.id)));
    }

    // Two claims that nobody has confirmed: neither counts until a coordinator says which.
    void twoClaimsAtOnceWaitForTheCoordinator()
    {
        const JoiningScene scene;
        const auto desk = scene.founded();
        const Invited invited = scene.invited(*desk, "Tom", Role::Grower);
        scene.exchange(*desk);
        const Ticket ticket = got(scene.ticket(invited.code));
        const auto key = got(keyOfCode(invited.code));
        const auto one = got(join(scene.path("one"), scene.how("one"), ticket, key, "one", today));
        const auto two = got(join(scene.path("two"), scene.how("two"), ticket, key, "two", today));
        scene.exchange(*one);
        scene.exchange(*two);
        got(exchangeByFolder(*desk, scene.shared(), today.at));
        QVERIFY(!isIn(*desk, one->stream()) && !isIn(*desk, two->stream()));
        QCOMPARE(got(confirmClaims(*desk, today)), std::int64_t{0});
        EnrolledDevice chosen;
        chosen.stream = two->stream();
        chosen.key = two->publicKey();
        chosen.member = invited.member;
        keep(*desk, {enrolment(desk->programme(), chosen)});
        QVERIFY(!isIn(*desk, one->stream()) && isIn(*desk, two->stream()));
    }

    void pastUsedAndTakenPlaces()
    {
        const JoiningScene scene;
        const auto desk = scene.founded();
        const Invited invited = scene.invited(*desk, "Tom", Role::Grower, today.day);
        scene.exchange(*desk);
        const Moment later{today.day + days{1}, today.at + days{1}, today.offset};
        QCOMPARE(codeOf(scene.tryJoin("tom", invited.code, later)), ErrorCode::InvitationPast);
        QVERIFY(!std::filesystem::exists(scene.path("tom")));
        QCOMPARE(codeOf(scene.tryJoin("desk", invited.code)), ErrorCode::StoreExists);
        // On the coordinator's own device a second key would end the first one's stream.
        const Ticket ticket = got(scene.ticket(invited.code));
        const auto key = got(keyOfCode(invited.code));
        QCOMPARE(codeOf(join(scene.path("second"), scene.how("desk"), ticket, key, "x", today)),
            ErrorCode::AlreadyJoined);
        QVERIFY(!std::filesystem::exists(scene.path("second")));
        // What could not be made leaves nothing behind.
        QCOMPARE(codeOf(join(scene.path("no/folder"), scene.how("tom"), ticket, key, "x", today)),
            ErrorCode::FileUnwritable);
        const std::string tooLong(500, 'x');
        QCOMPARE(codeOf(join(scene.path("tom"), scene.how("tom"), ticket, key, tooLong, today)),
            ErrorCode::TooLong);
        QVERIFY(!std::filesystem::exists(scene.path("tom")));
        QVERIFY(scene.tryJoin("tom", invited.code).has_value());
    }

    // A clock that goes wrong at the phone does not help: the day stands in the claim.
    void aClaimMadeTooLateDoesNotCount()
    {
        const JoiningScene scene;
        const auto desk = scene.founded();
        const Invited invited = scene.invited(*desk, "Tom", Role::Grower, today.day);
        scene.exchange(*desk);
        Ticket ticket = got(scene.ticket(invited.code));
        ticket.until.reset(); // as if nobody had looked
        const Moment later{today.day + days{1}, today.at + days{1}, today.offset};
        const auto tom =
            got(join(scene.path("tom"), scene.how("tom"), ticket, got(keyOfCode(invited.code)), "x", later));
        scene.exchange(*tom);
        scene.exchange(*desk);
        QVERIFY(!isIn(*desk, tom->stream()));
    }

    void aLostPhoneIsEndedAfterWhatArrived()
    {
        const JoiningScene scene;
        const auto desk = scene.founded();
        const auto tom = scene.member(*desk, "tom", Role::Grower);
        const Site site = siteNamed("Slough corner");
        const Trap trap = trapAt(site, "1");
        const Visit before = visitTo(trap, 12);
        keep(*tom, {creation(site, site.id), creation(trap, site.id), creation(before, site.id)});
        scene.exchange(*tom);
        scene.exchange(*desk);
        {
            const auto reader = got(desk->reader());
            const auto last = got(lastArrived(*reader, tom->stream()));
            QCOMPARE(last, std::int64_t{4}); // the claim and three records
            QCOMPARE(got(lastArrived(*reader, StreamId{9})), std::int64_t{0});
            keep(*desk, {ending(desk->programme(), tom->stream(), last)});
        }
        scene.exchange(*desk);
        const Visit after = visitTo(trap, 999);
        keep(*tom, {creation(after, site.id)});
        scene.exchange(*tom);
        scene.exchange(*desk);
        QCOMPARE(countedIn(*desk, before.id), std::int64_t{12});
        QCOMPARE(countedIn(*desk, after.id), std::int64_t{-1});
        QCOMPARE(asideOf(*desk, tom->stream()), std::size_t{1});
        // It was his after all: that one change is let in.
        const auto reader = got(desk->reader());
        for (const auto& change : got(duskrow::store::asideChanges(*reader)))
            keep(*desk, {admission(desk->programme(), change.change)});
        QCOMPARE(countedIn(*desk, after.id), std::int64_t{999});
    }

    void assignmentsAndSecondRoots()
    {
        const JoiningScene scene;
        const auto desk = scene.founded();
        const auto tom = scene.member(*desk, "tom", Role::Grower);
        const auto ann = scene.member(*desk, "ann", Role::Agronomist);
        const Site site = siteNamed("Slough corner");
        const Trap trap = trapAt(site, "1");
        keep(*tom, {creation(site, site.id), creation(trap, site.id)});
        scene.exchange(*tom);
        scene.exchange(*ann);
        const Visit visit = visitTo(trap, 7);
        keep(*ann, {creation(visit, site.id)});
        scene.exchange(*ann);
        scene.exchange(*desk);
        QCOMPARE(countedIn(*desk, visit.id), std::int64_t{-1}); // not hers
        const Uuid member = rosterIn(*desk).memberOf(ann->stream());
        keep(*desk, {assignment(desk->programme(), member, site.id)});
        QCOMPARE(countedIn(*desk, visit.id), std::int64_t{7});
        scene.exchange(*desk);
        scene.exchange(*tom);
        QCOMPARE(countedIn(*tom, visit.id), std::int64_t{7});

        QVERIFY(!rosterIn(*tom).isRoot(ann->stream()));
        keep(*desk, {secondRoot(desk->programme(), ann->stream())});
        scene.exchange(*desk);
        scene.exchange(*tom);
        QVERIFY(rosterIn(*tom).isRoot(ann->stream()));
    }

    void aRulingMakesLaterEditsProposals()
    {
        const JoiningScene scene;
        const auto desk = scene.founded();
        const auto tom = scene.member(*desk, "tom", Role::Grower);
        const Site site = siteNamed("Slough corner");
        const Trap trap = trapAt(site, "1");
        Visit visit = visitTo(trap, 12);
        keep(*tom, {creation(site, site.id), creation(trap, site.id), creation(visit, site.id)});
        scene.exchange(*tom);
        scene.exchange(*desk);
        keep(*desk, {ruling(desk->programme(), visit.id, Says::Stands, "looked at")});
        scene.exchange(*desk);
        scene.exchange(*tom);
        Visit corrected = visit;
        corrected.pest = Moths{21};
        keep(*tom, {correction(visit, corrected, site.id)});
        scene.exchange(*tom);
        scene.exchange(*desk);
        QCOMPARE(countedIn(*desk, visit.id), std::int64_t{12});
        keep(*desk, {ruling(desk->programme(), visit.id, Says::Open)});
        QCOMPARE(countedIn(*desk, visit.id), std::int64_t{21});
    }

    void whoLeavesCountsUntilHisLastDay()
    {
        const JoiningScene scene;
        const auto desk = scene.founded();
        const auto tom = scene.member(*desk, "tom", Role::Grower);
        const Site site = siteNamed("Slough corner");
        const Trap trap = trapAt(site, "1");
        Visit last = visitTo(trap, 3);
        Visit late = visitTo(trap, 4);
        late.day = today.day + days{1};
        keep(*tom,
            {creation(site, site.id), creation(trap, site.id), creation(last, site.id),
                creation(late, site.id)});
        keep(*desk, {leaving(rosterIn(*desk).memberOf(tom->stream()), today.day)});
        scene.exchange(*tom);
        scene.exchange(*desk);
        QCOMPARE(countedIn(*desk, last.id), std::int64_t{3});
        QCOMPARE(countedIn(*desk, late.id), std::int64_t{-1});
    }
};

QTEST_GUILESS_MAIN(JoiningClaimTest)
#include "joining_claim_test.moc"
