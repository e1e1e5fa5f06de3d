// SPDX-License-Identifier: MIT
#include <QTest>

#include <filesystem>
#include <fstream>

#include "store/publications.h"
#include "sync/carry/carry_route.h"
#include "sync/client/hub_client.h"
#include "sync/exchange_scene.h"
#include "sync/folder/folder_route.h"
#include "sync/hub_here.h"

using namespace duskrow;
using namespace duskrow::domain;
using namespace duskrow::tests;
namespace fs = std::filesystem;

namespace {

using Way = std::function<domain::Result<sync::ExchangeReport>(Person&)>;

// Exchanges until nothing new comes any more.
void settle(const std::vector<Person*>& devices, const Way& way)
{
    for (int round = 0; round < 4; ++round)
        for (Person* device : devices) {
            const auto report = way(*device);
            if (!report) QFAIL(qPrintable(QString::number(static_cast<int>(report.error().code))));
            for (const Error& trouble : report->troubles)
                QFAIL(qPrintable(QString::fromStdString(
                    std::to_string(static_cast<int>(trouble.code)) + trouble.args.back())));
        }
}

} // namespace

class ExchangeTest : public QObject {
    Q_OBJECT

    // Two weeks apart on the same traps, then together by one way.
    void story(ProgrammeScene& scene, const std::function<void(const std::vector<Person*>&)>& exchange)
    {
        Person& ada = scene.coordinator();
        const auto tom = scene.invite(2, Role::Grower, "tom");
        const auto ida = scene.invite(3, Role::Agronomist, "ida");
        const std::vector<Person*> all{&ada, tom.get(), ida.get()};
        exchange(all);

        scene.setUp(*tom, 20, 30);
        exchange(all);
        Assignment assignment;
        assignment.id = assignmentId(scene.programme, ida->member, idOf(20));
        assignment.member = ida->member;
        assignment.site = idOf(20);
        ada.keep({creation(assignment, idOf(20))});
        tom->keep({creation(countAt(40, 30, 12), idOf(20))});
        exchange(all);
        QVERIFY(ida->visit(idOf(40)));

        // Both correct the same count without having seen each other.
        Visit seen = *tom->visit(idOf(40));
        Visit toms = seen;
        toms.pest = Moths{14};
        Visit idas = seen;
        idas.pest = Moths{11};
        idas.remark = "seen from the road";
        tom->keep({correction(seen, toms, idOf(20))});
        ida->keep({correction(seen, idas, idOf(20))});
        ida->keep({creation(countAt(41, 30, 5), idOf(20))});
        exchange(all);

        for (Person* device : all) {
            QCOMPARE(device->visit(idOf(40))->pest, std::optional(Moths{14})); // the highest, until settled
            QCOMPARE(device->visit(idOf(40))->remark, std::string("seen from the road"));
            QCOMPARE(device->visit(idOf(41))->pest, std::optional(Moths{5}));
            QCOMPARE(store::openDifferences(*device->reader())->size(), std::size_t{1});
        }
        Visit before = *ada.visit(idOf(40));
        Visit after = before;
        after.pest = Moths{13};
        ada.keep({correction(before, after, idOf(20))});
        exchange(all);
        for (Person* device : all) {
            QCOMPARE(device->visit(idOf(40))->pest, std::optional(Moths{13}));
            QVERIFY(store::openDifferences(*device->reader())->empty());
            QVERIFY(store::asideChanges(*device->reader())->empty());
            QVERIFY(device->isSound());
        }
        // The agronomist sees the coordinator's invitations by a folder and not by a hub: the rest is equal.
        QCOMPARE(tom->visit(idOf(41))->remark, ida->visit(idOf(41))->remark);
    }

private Q_SLOTS:
    void threePeopleThroughAFolder()
    {
        ProgrammeScene scene;
        story(scene, [&](const std::vector<Person*>& all) {
            settle(all, [&](Person& d) { return sync::exchangeByFolder(d.store(), scene.shared(), d.now); });
        });
        QCOMPARE(scene.coordinator().visit(idOf(41))->pest, std::optional(Moths{5}));
    }

    void threePeopleByAStick()
    {
        ProgrammeScene scene;
        const std::string stick = scene.at("stick.dusk");
        story(scene, [&](const std::vector<Person*>& all) {
            for (int round = 0; round < 3; ++round)
                for (Person* from : all) {
                    QVERIFY(sync::writeCarried(from->store(), stick, {}, from->now));
                    for (Person* to : all) {
                        const auto read = sync::readCarried(to->store(), stick, to->now);
                        QVERIFY(read && read->troubles.empty() && read->keptAside == 0);
                    }
                }
        });
    }

    void threePeopleThroughAHub()
    {
        ProgrammeScene scene;
        const HubHere hub;
        QVERIFY(sync::foundAtHub(scene.coordinator().store(), hub.url(), hub.founding, "Invented district"));
        story(scene, [&](const std::vector<Person*>& all) {
            settle(all, [&](Person& d) { return sync::exchangeByHub(d.store(), hub.url(), d.now); });
        });
    }

    void whatWasHandedOverIsCounted()
    {
        ProgrammeScene scene;
        Person& ada = scene.coordinator();
        scene.setUp(ada, 20, 30);
        const StreamId own = ada.store().stream();
        QCOMPARE(store::handedOver(*ada.reader(), own)->here, 5);
        QVERIFY(sync::exchangeByFolder(ada.store(), scene.shared(), ada.now));
        QCOMPARE(store::handedOver(*ada.reader(), own)->handedOver, 5);
        QCOMPARE(store::handedOver(*ada.reader(), own)->here, 0);
        QCOMPARE(store::handedOver(*ada.reader(), own, idOf(30))->handedOver, 1);
        ada.keep({creation(countAt(40, 30, 12), idOf(20))});
        QCOMPARE(store::handedOver(*ada.reader(), own)->here, 1);
        QCOMPARE(store::handedOver(*ada.reader(), own, idOf(40))->here, 1);
        const HubHere hub;
        QVERIFY(sync::foundAtHub(ada.store(), hub.url(), hub.founding, "Invented district"));
        const auto report = sync::exchangeByHub(ada.store(), hub.url(), ada.now);
        QVERIFY(report);
        QCOMPARE(report->sent, 2);
        QCOMPARE(store::handedOver(*ada.reader(), own)->atHub, 6);
    }

    // What came by one way goes on by the other, so that nobody has to use both.
    void aFolderAndAHubReachTheSamePeople()
    {
        ProgrammeScene scene;
        Person& ada = scene.coordinator();
        const auto tom = scene.invite(2, Role::Grower, "tom"); // the folder only
        const auto ida = scene.invite(3, Role::Agronomist, "ida"); // the hub only
        const HubHere hub;
        QVERIFY(sync::foundAtHub(ada.store(), hub.url(), hub.founding, "Invented district"));
        const auto byFolder = [&](Person& d) {
            return sync::exchangeByFolder(d.store(), scene.shared(), d.now);
        };
        const auto byHub = [&](Person& d) { return sync::exchangeByHub(d.store(), hub.url(), d.now); };
        settle({&ada, tom.get()}, byFolder);
        settle({&ada, ida.get()}, byHub);
        scene.setUp(*tom, 20, 30);
        tom->keep({creation(countAt(40, 30, 12), idOf(20))});
        Assignment assignment;
        assignment.id = assignmentId(scene.programme, ida->member, idOf(20));
        assignment.member = ida->member;
        assignment.site = idOf(20);
        ada.keep({creation(assignment, idOf(20))});
        settle({&ada, tom.get()}, byFolder);
        settle({&ada, ida.get()}, byHub);
        QVERIFY(ida->visit(idOf(40)));
        ida->keep({creation(countAt(41, 30, 5), idOf(20))});
        settle({&ada, ida.get()}, byHub);
        settle({&ada, tom.get()}, byFolder);
        QVERIFY(tom->visit(idOf(41)));
    }

    // A grower does not get from a hub what is not his; by a folder he would.
    void aHubLeavesOutWhatIsNotTheReaders()
    {
        ProgrammeScene scene;
        Person& ada = scene.coordinator();
        const auto tom = scene.invite(2, Role::Grower, "tom");
        const auto eva = scene.invite(4, Role::Grower, "eva");
        const HubHere hub;
        QVERIFY(sync::foundAtHub(ada.store(), hub.url(), hub.founding, "Invented district"));
        const auto byHub = [&](Person& d) { return sync::exchangeByHub(d.store(), hub.url(), d.now); };
        settle({&ada, tom.get(), eva.get()}, byHub);
        scene.setUp(*tom, 20, 30);
        tom->keep({creation(countAt(40, 30, 12), idOf(20))});
        settle({tom.get(), &ada, eva.get()}, byHub);
        QVERIFY(ada.visit(idOf(40)));
        QVERIFY(!eva->visit(idOf(40)));
        std::ifstream file(eva->path(), std::ios::binary);
        const std::string bytes((std::istreambuf_iterator<char>(file)), {});
        QVERIFY(!bytes.empty());
        // Assigned later, she gets it all, though she had the segments before.
        Assignment assignment;
        assignment.id = assignmentId(scene.programme, eva->member, idOf(20));
        assignment.member = eva->member;
        assignment.site = idOf(20);
        ada.keep({creation(assignment, idOf(20))});
        settle({&ada, eva.get()}, byHub);
        QVERIFY(eva->visit(idOf(40)));
        QVERIFY(eva->isSound());
    }

    // The desk's bulletin goes along; a grower's device with such files hands none over.
    void aHubIsGivenWhatTheDeskHasPublished()
    {
        ProgrammeScene scene;
        Person& ada = scene.coordinator();
        const auto tom = scene.invite(2, Role::Grower, "tom");
        const HubHere hub;
        QVERIFY(sync::foundAtHub(ada.store(), hub.url(), hub.founding, "Invented district"));
        const auto byHub = [&](Person& d) { return sync::exchangeByHub(d.store(), hub.url(), d.now); };
        settle({&ada, tom.get()}, byHub);
        const auto write = [](Person& person, const char* name, const char* text) {
            const fs::path folder = store::publicFolder(person.store().path());
            fs::create_directories(folder);
            std::ofstream(folder / name) << text;
        };
        const auto served = [&](const char* name) {
            const auto file = hub.store().publication(scene.programme, name);
            return file && *file ? (*file)->bytes : std::string();
        };
        write(*tom, "index.html", "his");
        settle({tom.get()}, byHub);
        QCOMPARE(served("index.html"), std::string());
        write(ada, "index.html", "week 28");
        write(ada, "feed.atom", "<feed/>");
        settle({&ada}, byHub);
        QCOMPARE(served("index.html"), std::string("week 28"));
        QCOMPARE(served("feed.atom"), std::string("<feed/>"));
        write(ada, "index.html", "week 29");
        settle({&ada, tom.get()}, byHub);
        QCOMPARE(served("index.html"), std::string("week 29"));
    }

    void aDeviceThatNobodyInvitedIsKeptOut()
    {
        ProgrammeScene scene;
        Person& ada = scene.coordinator();
        const HubHere hub;
        QVERIFY(sync::foundAtHub(ada.store(), hub.url(), hub.founding, "Invented district"));
        QVERIFY(sync::exchangeByHub(ada.store(), hub.url(), ada.now));
        QVERIFY(sync::exchangeByFolder(ada.store(), scene.shared(), ada.now));
        Person stranger(scene.at("stranger"), scene.programme, {ada.store().stream()});
        stranger.member = idOf(66);
        scene.setUp(stranger, 21, 31);
        const auto refused = sync::exchangeByHub(stranger.store(), hub.url(), stranger.now);
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::NotEnrolled);
        // Through a folder nothing but a request is left.
        QVERIFY(sync::exchangeByFolder(stranger.store(), scene.shared(), stranger.now));
        const fs::path home = fs::path(scene.shared()) / "duskrow" / formatUuid(scene.programme);
        QVERIFY(!fs::exists(home / "s" / formatHex(stranger.store().stream())));
        QVERIFY(!fs::is_empty(home / "join"));
        QVERIFY(sync::exchangeByFolder(ada.store(), scene.shared(), ada.now));
        QCOMPARE(store::sitesOf(*ada.reader(), seasonId(scene.programme, 2026))->size(), std::size_t{0});
        QCOMPARE(store::asideChanges(*ada.reader())->size(), std::size_t{2});
        // Let in after all, it counts at once.
        domain::Device let;
        let.id = deviceId(scene.programme, stranger.store().stream());
        let.stream = formatHex(stranger.store().stream());
        let.key = formatHex(stranger.store().publicKey());
        let.member = idOf(67);
        ada.keep({creation(ProgrammeScene::memberOf(67, Role::Grower), {}), creation(let, {})});
        QCOMPARE(store::sitesOf(*ada.reader(), seasonId(scene.programme, 2026))->size(), std::size_t{1});
        QVERIFY(store::asideChanges(*ada.reader())->empty());
    }

    void aHubThatIsNotThereLosesNothing()
    {
        ProgrammeScene scene;
        Person& ada = scene.coordinator();
        const auto report =
            sync::exchangeByHub(ada.store(), QUrl(QStringLiteral("http://127.0.0.1:9")), ada.now);
        QVERIFY(!report);
        QCOMPARE(report.error().code, ErrorCode::HubUnreachable);
        QVERIFY(ada.isSound());
        QCOMPARE(store::handedOver(*ada.reader(), ada.store().stream())->here, 3);
    }

    // A store put back from a backup after it had handed more over: a new stream, and what was handed over
    // comes back.
    void aRestoredPhoneUsesNoNumberTwice()
    {
        ProgrammeScene scene;
        Person& ada = scene.coordinator();
        const auto tom = scene.invite(2, Role::Grower, "tom");
        const auto byFolder = [&](Person& d) {
            return sync::exchangeByFolder(d.store(), scene.shared(), d.now);
        };
        settle({&ada, tom.get()}, byFolder);
        scene.setUp(*tom, 20, 30);
        tom->close();
        fs::copy_file(tom->path(), scene.at("backup"));
        tom->open();
        const StreamId before = tom->store().stream();
        tom->keep({creation(countAt(40, 30, 12), idOf(20))});
        settle({tom.get(), &ada}, byFolder);
        tom->close();
        fs::copy_file(scene.at("backup"), tom->path(), fs::copy_options::overwrite_existing);
        tom->open();
        QVERIFY(tom->store().hasNewStream());
        QVERIFY(tom->store().stream() != before);
        QVERIFY(!tom->visit(idOf(40)));
        tom->keep({creation(countAt(41, 30, 7), idOf(20))});
        settle({tom.get(), &ada}, byFolder);
        QVERIFY(tom->visit(idOf(40)));
        // The old key vouches for the new stream: nobody has to let him in again.
        QVERIFY(ada.visit(idOf(41)));
        const auto roster = store::rosterOf(*ada.reader(), scene.programme);
        QCOMPARE(roster->memberOf(tom->store().stream()), tom->member);
        QVERIFY(ada.isSound() && tom->isSound());
    }
};

QTEST_GUILESS_MAIN(ExchangeTest)
#include "exchange_test.moc"
