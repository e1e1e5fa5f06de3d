// SPDX-License-Identifier: MIT
#include <QTest>

#include "joining_scene.h"
#include "sync/carry/carry_route.h"

using namespace duskrow::domain;
using namespace duskrow::sync;
using namespace duskrow::tests;
using std::chrono::days;

// From ten characters, or a link, to the programme that they open.
class JoiningTicketTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aLinkAndBack()
    {
        const InvitationText written{"7K3QM2XV9A", uuidFromTime(today.at, {1, 2}), StreamId{7, 8},
            "https://hub.example:8443/a b?c=d&e%"};
        const std::string link = invitationLink(written);
        QVERIFY(link.starts_with("duskrow:join?code=7K3QM2XV9A&programme="));
        QVERIFY(link.find(' ') == std::string::npos);
        for (const std::string& typed : {link, "  " + link + "\n", link + "&later=1&flag"}) {
            const InvitationText read = got(readInvitation(typed));
            QCOMPARE(read.code, written.code);
            QVERIFY(read.programme == written.programme);
            QVERIFY(read.founder == written.founder);
            QCOMPARE(read.hub, written.hub);
        }
        const InvitationText alone = got(readInvitation("7k3qm-2xv9a"));
        QCOMPARE(alone.code, written.code);
        QVERIFY(alone.programme.isNil() && !alone.founder && alone.hub.empty());
    }

    void whatIsNoInvitation_data()
    {
        QTest::addColumn<QByteArray>("typed");
        QTest::newRow("nothing") << QByteArray();
        QTest::newRow("too short") << QByteArray("7K3QM-2XV9");
        QTest::newRow("a link without code") << QByteArray("duskrow:join?root=00");
        QTest::newRow("half a programme") << QByteArray("duskrow:join?code=7K3QM2XV9A&programme=12");
        QTest::newRow("no programme")
            << QByteArray("duskrow:join?code=7K3QM2XV9A&programme=00000000-0000-0000-0000-000000000000");
        QTest::newRow("half a founder") << QByteArray("duskrow:join?code=7K3QM2XV9A&root=12");
        QTest::newRow("an escape cut short") << QByteArray("duskrow:join?code=7K3QM2XV9A&hub=%4");
        QTest::newRow("an escape of letters") << QByteArray("duskrow:join?code=7K3QM2XV9A&hub=%zz");
        QTest::newRow("another address") << QByteArray("https://example.org/?code=7K3QM2XV9A");
        QTest::newRow("very long") << "duskrow:join?code=7K3QM2XV9A&hub=" + QByteArray(5000, 'a');
    }

    void whatIsNoInvitation()
    {
        QFETCH(QByteArray, typed);
        QCOMPARE(codeOf(readInvitation(typed.toStdString())), ErrorCode::CodeUnreadable);
    }

    void aTicketSaysAllThatIsNeeded()
    {
        const JoiningScene scene;
        const auto desk = scene.founded();
        const Invited invited = scene.invited(*desk, "Tom", Role::Grower, today.day + days{3});
        QCOMPARE(codeOf(scene.ticket(invited.code)), ErrorCode::InvitationUnknown); // not handed over yet
        scene.exchange(*desk);
        const Ticket inFolder = got(scene.ticket(invited.code));
        got(writeCarried(*desk, scene.path("a.dusk"), {}, today.at));
        const TicketWanted wanted{got(keyOfCode(invited.code)).key, {}, {}};
        for (const Ticket& ticket : {inFolder, got(ticketInCarried(scene.path("a.dusk"), wanted))}) {
            QVERIFY(ticket.programme == desk->programme());
            QVERIFY(ticket.founder == desk->stream());
            QVERIFY(ticket.invitation == invited.invitation);
            QVERIFY(ticket.member == invited.member);
            QVERIFY(ticket.until == today.day + days{3});
            QCOMPARE(ticket.programmeName, std::string("Valley"));
        }
        QCOMPARE(codeOf(scene.ticket("0000000000")), ErrorCode::InvitationUnknown);
        const TicketWanted other{wanted.invitation, uuidFromTime(today.at, {}), {}};
        QCOMPARE(codeOf(ticketInFolder(scene.shared(), other)), ErrorCode::InvitationUnknown);
        const TicketWanted stranger{wanted.invitation, desk->programme(), StreamId{1}};
        QCOMPARE(codeOf(ticketInFolder(scene.shared(), stranger)), ErrorCode::InvitationUnknown);
        QCOMPARE(codeOf(ticketInFolder(scene.path("gone"), wanted)), ErrorCode::FolderMissing);
        QCOMPARE(codeOf(ticketInCarried(scene.path("gone"), wanted)), ErrorCode::FileUnreadable);
        QCOMPARE(codeOf(ticketInCarried(scene.path("desk"), wanted)), ErrorCode::CarriedNotOurs);
    }

    // Somebody who can write into the folder copies the invitation's key under a founder of his own.
    void anImpostorMakesTheCodeAloneDoubtful()
    {
        const JoiningScene scene;
        const auto desk = scene.founded();
        const Invited invited = scene.invited(*desk, "Tom", Role::Grower);
        scene.exchange(*desk);
        auto how = scene.how("impostor");
        how.programme = desk->programme();
        const auto impostor = got(duskrow::store::Store::open(scene.path("impostor"), how));
        Programme programme;
        programme.id = desk->programme();
        programme.name = "Valley";
        Invitation copied;
        copied.id = invited.invitation;
        copied.member = invited.member;
        copied.key = formatHex(got(keyOfCode(invited.code)).key);
        got(impostor->saveSettingNow("me", formatUuid(invited.member)));
        keep(*impostor, {creation(programme, {}), creation(copied, {})});
        scene.exchange(*impostor);
        QCOMPARE(codeOf(scene.ticket(invited.code)), ErrorCode::InvitationDoubtful);

        TicketWanted wanted{got(keyOfCode(invited.code)).key, desk->programme(), desk->stream()};
        const Ticket ticket = got(ticketInFolder(scene.shared(), wanted));
        QVERIFY(ticket.founder == desk->stream());
    }

    // The coordinator's phone was replaced before there were others: two streams wrote the programme.
    void aReplacedFoundingPhoneInvites()
    {
        const JoiningScene scene;
        StreamId first{};
        {
            const auto desk = scene.founded();
            first = desk->stream();
            scene.exchange(*desk); // what it wrote can be signed by its own key only
        }
        QDir(QString::fromStdString(scene.path("desk-keys"))).removeRecursively();
        const auto desk = scene.open("desk");
        QVERIFY(desk->stream() != first);
        {
            const auto reader = got(desk->reader());
            const auto equals = got(earlierFounders(*desk, *reader));
            QCOMPARE(equals.size(), std::size_t{1});
            keep(*desk, equals);
        }
        const auto again = got(desk->reader());
        QVERIFY(got(earlierFounders(*desk, *again)).empty());
        const Invited invited = scene.invited(*desk, "Tom", Role::Grower);
        scene.exchange(*desk);
        const Ticket ticket = got(scene.ticket(invited.code));
        QVERIFY(ticket.founder == desk->stream());
        QCOMPARE(ticket.programmeName, std::string("Valley"));
        const auto tom = got(scene.tryJoin("tom", invited.code));
        scene.exchange(*tom);
        QVERIFY(rosterIn(*tom).isRoot(first));
        QVERIFY(rosterIn(*tom).isEnrolled(tom->stream()));
        QVERIFY(!rosterIn(*tom).isRoot(tom->stream()));
    }
};

QTEST_GUILESS_MAIN(JoiningTicketTest)
#include "joining_ticket_test.moc"
