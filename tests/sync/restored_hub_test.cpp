// SPDX-License-Identifier: MIT
#include <QTest>

#include <filesystem>
#include <fstream>

#include "store/photos.h"
#include "sync/client/hub_client.h"
#include "sync/exchange_scene.h"
#include "sync/folder/folder_route.h"
#include "sync/hub_here.h"
#include "sync/segment/segment.h"

using namespace duskrow;
using namespace duskrow::domain;
using namespace duskrow::tests;
namespace fs = std::filesystem;

namespace {

std::set<store::SegmentId> idsAt(const HubHere& hub, const Uuid& programme)
{
    std::set<store::SegmentId> ids;
    const auto page = hub.store().page(programme, 0, std::int64_t{4} << 20);
    if (!page) qFatal("no page");
    for (const hub::StoredSegment& segment : *page)
        if (const auto head = sync::readHead(segment.bytes)) ids.insert(head->id);
    return ids;
}

bool hasAll(const HubHere& hub, const Person& person)
{
    const auto rows = store::segmentRows(*person.reader());
    const auto ids = idsAt(hub, person.store().programme());
    return std::all_of(rows->begin(), rows->end(), [&](const auto& row) { return ids.contains(row.id); });
}

// The network up to a number of segments handed over, then nothing any more.
sync::HubTransport breaksOffAfter(HubHere& hub, int puts)
{
    return [&hub, left = puts](const sync::HubQuestion& question) mutable -> Result<sync::HubAnswer> {
        static const std::map<std::string, hub::Method> methods{
            {"GET", hub::Method::Get}, {"POST", hub::Method::Post}, {"PUT", hub::Method::Put}};
        if (question.method == "PUT" && left-- == 0) return Error{ErrorCode::HubUnreachable, {"hub"}};
        hub::Request request;
        request.method = methods.at(question.method);
        request.target = question.path;
        request.address = "192.0.2.7";
        request.body = question.body;
        for (const auto& [name, value] : question.headers)
            request.headers[QByteArray::fromStdString(name).toLower().toStdString()] = value;
        const hub::Response response = hub.answer(request);
        sync::HubAnswer answer{response.status, response.body, {}};
        for (const auto& [name, value] : response.headers)
            answer.headers[QByteArray::fromStdString(name).toLower().toStdString()] = value;
        return answer;
    };
}

} // namespace

// A hub that was put back from a backup gets again whatever it lost.
class RestoredHubTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void itGetsPhotographsAgain()
    {
        ProgrammeScene scene;
        Person& ada = scene.coordinator();
        HubHere hub;
        QVERIFY(sync::foundAtHub(ada.store(), hub.url(), hub.founding, "Invented district"));
        QVERIFY(sync::exchangeByHub(ada.store(), hub.url(), ada.now));
        hub.copy();
        std::ofstream(scene.at("camera.jpg")) << "a trap by the road";
        const auto name = store::keepPhoto(ada.path(), scene.at("camera.jpg"));
        QVERIFY(name.has_value());
        scene.setUp(ada, 20, 30);
        Visit visit = countAt(40, 30, 3);
        visit.photo = *name;
        ada.keep({creation(visit, idOf(20))});
        std::array<std::uint8_t, 32> hash{};
        QVERIFY(parseHex(*name, hash));
        QCOMPARE(sync::exchangeByHub(ada.store(), hub.url(), ada.now)->photosSent, std::int64_t{1});
        hub.putBack();
        QVERIFY(!hub.store().photograph(scene.programme, hash)->isWhole);
        QCOMPARE(sync::exchangeByHub(ada.store(), hub.url(), ada.now)->photosSent, std::int64_t{1});
        QVERIFY(hub.store().photograph(scene.programme, hash)->isWhole);
        QVERIFY(hasAll(hub, ada));
    }

    // The first visit broke off after some segments: what it marked belongs to the epoch before.
    void itGetsWhatABrokenOffVisitHandedOver()
    {
        ProgrammeScene scene;
        Person& ada = scene.coordinator();
        HubHere hub;
        QVERIFY(sync::foundAtHub(ada.store(), hub.url(), hub.founding, "Invented district"));
        hub.copy();
        // Her own segment, on which no other follows, and then one of somebody else.
        const auto tom = scene.invite(2, Role::Grower, "tom");
        for (Person* one : {&ada, tom.get(), &ada})
            QVERIFY(sync::exchangeByFolder(one->store(), scene.shared(), one->now));
        QVERIFY(!sync::exchangeByHub(ada.store(), hub.url(), ada.now, {}, breaksOffAfter(hub, 1)));
        QCOMPARE(idsAt(hub, scene.programme).size(), std::size_t{1});
        hub.putBack();
        QVERIFY(idsAt(hub, scene.programme).empty());
        QVERIFY(sync::exchangeByHub(ada.store(), hub.url(), ada.now));
        QVERIFY(hasAll(hub, ada));
    }

    // One number with two contents: the hub still has one of them, and no count of numbers tells which.
    void itGetsBothSidesOfAFork()
    {
        ProgrammeScene scene;
        Person& ada = scene.coordinator();
        const auto tom = scene.invite(2, Role::Grower, "tom");
        HubHere hub;
        QVERIFY(sync::foundAtHub(ada.store(), hub.url(), hub.founding, "Invented district"));
        for (Person* one : {&ada, tom.get(), &ada})
            QVERIFY(sync::exchangeByHub(one->store(), hub.url(), one->now));
        tom->close();
        fs::copy(scene.at("tom"), scene.at("double"), fs::copy_options::recursive);
        tom->open();
        Person twin(scene.at("double"), scene.programme, {ada.store().stream()});
        twin.member = tom->member;
        scene.setUp(*tom, 20, 30);
        scene.setUp(twin, 21, 31);
        QVERIFY(sync::exchangeByHub(tom->store(), hub.url(), tom->now));
        hub.copy();
        QVERIFY(sync::exchangeByHub(twin.store(), hub.url(), twin.now));
        QVERIFY(hasAll(hub, twin));
        hub.putBack();
        QVERIFY(!hasAll(hub, twin));
        QVERIFY(sync::exchangeByHub(twin.store(), hub.url(), twin.now));
        QVERIFY(hasAll(hub, twin));
    }
};

QTEST_GUILESS_MAIN(RestoredHubTest)
#include "restored_hub_test.moc"
