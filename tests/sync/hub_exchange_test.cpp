// SPDX-License-Identifier: MIT
#include <QTest>

#include "sync/hub/store/copy.h"
#include "sync/hub_scene.h"

using namespace duskrow::tests;
using duskrow::sync::Form;
using duskrow::sync::openSegment;
using duskrow::sync::readHead;
using duskrow::sync::Segment;
using duskrow::sync::SegmentHead;

namespace {

json bodyOf(const Response& response)
{
    return json::parse(response.body);
}

Segment opened(const std::string& bytes)
{
    auto head = readHead(bytes);
    if (!head) qFatal("no segment");
    auto segment = openSegment(std::move(*head));
    if (!segment) qFatal("not sound");
    return *segment;
}

int linesRead(const Segment& segment)
{
    int read = 0;
    for (const auto& line : segment.lines) read += line.bytes.empty() ? 0 : 1;
    return read;
}

} // namespace

// Segments in and out.
class HubExchangeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QVERIFY(sodium_init() >= 0); }

    void aReceiptIsGivenAndGivenAgain()
    {
        HubScene scene;
        Phone founder = scene.founded();
        founder.visit(1, uuidOf(3, 1));
        founder.visit(2, uuidOf(3, 1));
        const SegmentHead head = founder.seal();
        const Response first = scene.push(head, founder.token);
        QCOMPARE(first.status, 201);
        QCOMPARE(shown(bodyOf(first)),
            shown((json{{"at", 2}, {"id", formatHex(head.id)}, {"last", 4},
                {"stream", formatHex(founder.stream)}, {"time", duskrow::domain::toMs(scene.now)}})));
        scene.now += std::chrono::hours(1);
        scene.restart();
        const Response again = scene.push(head, founder.token);
        QCOMPARE(again.status, 200);
        QCOMPARE(again.body, first.body);
        const json state = bodyOf(scene.ask(Method::Get, scene.path() + "/state", {}, founder.token));
        QCOMPARE(shown(state["head"]), shown(json(2)));
        QCOMPARE(shown(state["next"]), shown(json(5)));
    }

    void aGapIsSaid()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        founder.visit(1, uuidOf(3, 1));
        const SegmentHead missing = founder.seal();
        founder.visit(2, uuidOf(3, 1));
        const SegmentHead later = founder.seal();
        const Response gap = scene.push(later, founder.token);
        QCOMPARE(gap.status, 409);
        QCOMPARE(shown(bodyOf(gap)["next"]), shown(json(3)));
        QCOMPARE(shown(bodyOf(gap)["error"]), shown(json("gap")));
        QCOMPARE(scene.push(missing, founder.token).status, 201);
        QCOMPARE(scene.push(later, founder.token).status, 201);
    }

    void whatIsNoSegmentIsRefused()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        founder.visit(1, uuidOf(3, 1));
        const SegmentHead head = founder.seal();
        const std::string bytes = duskrow::sync::segmentBytes(head);
        const auto put = [&](const std::string& path, const std::string& body) {
            return scene
                .ask(Method::Put, path, body, founder.token, {{"content-type", "application/octet-stream"}})
                .status;
        };
        QCOMPARE(put(segmentPath(head), bytes.substr(0, bytes.size() - 1)), 400);
        QCOMPARE(put(segmentPath(head), ""), 400);
        std::string flipped = bytes;
        flipped[bytes.size() / 2] = static_cast<char>(flipped[bytes.size() / 2] ^ 1);
        QCOMPARE(put(segmentPath(head), flipped), 400);
        QCOMPARE(scene.ask(Method::Put, segmentPath(head), bytes, founder.token).status, 415);
        SegmentHead otherName = head;
        otherName.header.first = 4;
        QCOMPARE(put(segmentPath(otherName), bytes), 400);
        QCOMPARE(put(scene.path() + "/segments/x/1-2-3", bytes), 400);
        const SegmentHead partial =
            duskrow::sync::partialForm(opened(bytes), [](const auto&) { return false; });
        QCOMPARE(put(segmentPath(head), duskrow::sync::segmentBytes(partial)), 422);
        QCOMPARE(put(segmentPath(head), bytes), 201);
    }

    void everyTruncationIsRefused()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        founder.visit(1, uuidOf(3, 1));
        const SegmentHead head = founder.seal();
        const std::string bytes = duskrow::sync::segmentBytes(head);
        for (std::size_t size = 0; size < bytes.size(); size += 7)
            QCOMPARE(scene
                         .ask(Method::Put, segmentPath(head), bytes.substr(0, size), founder.token,
                             {{"content-type", "application/octet-stream"}})
                         .status,
                400);
        QCOMPARE(shown(bodyOf(scene.ask(Method::Get, scene.path() + "/state", {}, founder.token))["head"]),
            shown(json(1)));
        QCOMPARE(scene.push(head, founder.token).status, 201);
    }

    void aForgeryIsKeptAside()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        founder.visit(1, uuidOf(3, 1));
        SegmentHead head = founder.seal();
        const SegmentHead good = head;
        head.signature[5] ^= 1;
        const Response answer = scene.push(head, founder.token);
        QCOMPARE(answer.status, 202);
        QCOMPARE(shown(bodyOf(answer)["reason"]), shown(json("forged")));
        QCOMPARE(scene.push(good, founder.token).status, 201); // the true one is not kept out
        const json list = bodyOf(scene.ask(Method::Get, scene.path() + "/aside", {}, founder.token));
        QCOMPARE(list.size(), std::size_t{1});
        const Response kept = scene.ask(
            Method::Get, scene.path() + "/aside/" + list[0]["file"].get<std::string>(), {}, founder.token);
        QCOMPARE(kept.body, duskrow::sync::segmentBytes(head));
    }

    void strangersWaitAsideUntilTheyAreKnown()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        Phone stranger(scene.programme, 5);
        stranger.visit(1, uuidOf(3, 1));
        const SegmentHead one = stranger.seal();
        stranger.visit(2, uuidOf(3, 1));
        const SegmentHead two = stranger.seal();
        for (const SegmentHead* head : {&two, &one, &two}) {
            const Response answer = scene.push(*head, founder.token);
            QCOMPARE(answer.status, 202);
            QCOMPARE(shown(bodyOf(answer)["reason"]), shown(json("not-enrolled")));
        }
        QCOMPARE(bodyOf(scene.ask(Method::Get, scene.path() + "/vector", {}, founder.token)).size(),
            std::size_t{1});
        founder.writeMember(stranger.member, "grower");
        founder.writeDevice(stranger, stranger.member);
        QCOMPARE(scene.push(founder.seal(), founder.token).status, 201);
        const json vector = bodyOf(scene.ask(Method::Get, scene.path() + "/vector", {}, founder.token));
        QCOMPARE(shown(vector[formatHex(stranger.stream)]), shown(json(2)));
        QCOMPARE(shown(bodyOf(scene.ask(Method::Get, scene.path() + "/aside", {}, founder.token))),
            shown(json::array()));
        QCOMPARE(scene.push(one, founder.token).status, 200);
    }

    void whatAnEndedDeviceWroteAfterwardsIsKeptAside()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        Phone phone = scene.joined(founder, 2, "grower");
        phone.visit(1, uuidOf(3, 1));
        const SegmentHead good = phone.seal();
        QCOMPARE(scene.push(good, phone.token).status, 201);
        founder.writeEnd(phone, 2);
        QCOMPARE(scene.push(founder.seal(), founder.token).status, 201);
        phone.visit(2, uuidOf(3, 1));
        const Response answer = scene.push(phone.seal(), founder.token); // somebody hands it on
        QCOMPARE(answer.status, 202);
        QCOMPARE(shown(bodyOf(answer)["reason"]), shown(json("ended")));
        QCOMPARE(scene.push(good, founder.token).status, 200);
        QCOMPARE(scene.push(good, phone.token).status, 401);
    }

    void anotherContentUnderOneNumberIsAForkAndBothStand()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        Phone clone = founder;
        founder.visit(1, uuidOf(3, 1), 5);
        clone.visit(1, uuidOf(3, 1), 6);
        clone.visit(2, uuidOf(3, 1), 6);
        QCOMPARE(scene.push(founder.seal(), founder.token).status, 201);
        const SegmentHead other = clone.seal();
        const Response answer = scene.push(other, founder.token);
        QCOMPARE(answer.status, 201);
        QCOMPARE(shown(json::parse(scene.log.back())["remark"]), shown(json("fork")));
        QCOMPARE(scene.push(other, founder.token).status, 200);
        QCOMPARE(shown(bodyOf(scene.ask(
                     Method::Get, scene.path() + "/vector", {}, founder.token))[formatHex(founder.stream)]),
            shown(json(4)));
        QCOMPARE(
            segmentsIn(scene.ask(Method::Get, scene.path() + "/segments", {}, founder.token).body).size(),
            std::size_t{3});
    }

    // Another cut of the same changes is no fork.
    void otherCutsAreNoFork()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        Phone again = founder;
        founder.visit(1, uuidOf(3, 1));
        again.lines = founder.lines;
        QCOMPARE(scene.push(founder.seal(), founder.token).status, 201);
        again.visit(2, uuidOf(3, 1));
        QCOMPARE(scene.push(again.seal(), founder.token).status, 201);
        QVERIFY(!json::parse(scene.log.back()).contains("remark"));
    }

    void pagesHoldWholeSegmentsInOrder()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        std::vector<SegmentHead> sent;
        for (std::uint32_t number = 0; number < 12; ++number) {
            for (std::uint32_t visit = 0; visit < 200; ++visit)
                founder.visit(number * 200 + visit, uuidOf(3, 1));
            sent.push_back(founder.seal());
            QCOMPARE(scene.push(sent.back(), founder.token).status, 201);
        }
        std::int64_t after = 1;
        std::size_t read = 0;
        int pages = 0;
        for (;; ++pages) {
            const Response page = scene.ask(Method::Get,
                scene.path() + "/segments?after=" + std::to_string(after) + "&most=1", {}, founder.token);
            QCOMPARE(headerIn(page, "Duskrow-Head"), std::string("13"));
            if (page.status == 204) break;
            QCOMPARE(page.status, 200);
            QVERIFY(headerIn(page, "ETag").starts_with('"'));
            QCOMPARE(
                scene
                    .ask(Method::Get, scene.path() + "/segments?after=" + std::to_string(after) + "&most=1",
                        {}, founder.token, {{"if-none-match", headerIn(page, "ETag")}})
                    .status,
                304);
            for (const std::string& bytes : segmentsIn(page.body))
                QCOMPARE(bytes, duskrow::sync::segmentBytes(sent[read++]));
            after = std::stoll(headerIn(page, "Duskrow-Next"));
        }
        QCOMPARE(read, sent.size());
        QVERIFY(pages > 1);
        QCOMPARE(after, std::int64_t{13});
        QCOMPARE(scene.ask(Method::Get, scene.path() + "/segments?after=-1", {}, founder.token).status, 400);
        QCOMPARE(scene.ask(Method::Get, scene.path() + "/segments?after=99", {}, founder.token).status, 204);
    }

    void growersReadTheirOwnSitesOnly()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        Phone one = scene.joined(founder, 2, "grower");
        Phone two = scene.joined(founder, 3, "grower");
        one.writeSite(uuidOf(3, 1));
        one.visit(1, uuidOf(3, 1));
        two.writeSite(uuidOf(3, 2));
        two.visit(2, uuidOf(3, 2));
        QCOMPARE(scene.push(one.seal(), one.token).status, 201);
        QCOMPARE(scene.push(two.seal(), two.token).status, 201);

        const auto read = [&](const Phone& reader) {
            return segmentsIn(scene.ask(Method::Get, scene.path() + "/segments", {}, reader.token).body);
        };
        const auto all = read(founder);
        const auto ones = read(one);
        QCOMPARE(ones.size(), all.size()); // no gap in any stream
        int seen = 0;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const Segment whole = opened(all[i]);
            const Segment own = opened(ones[i]);
            QCOMPARE(own.head.id, whole.head.id);
            QCOMPARE(linesRead(whole), static_cast<int>(whole.lines.size()));
            for (const auto& line : own.lines) {
                if (line.bytes.empty()) continue;
                QVERIFY(line.change.site != uuidOf(3, 2));
                if (line.change.site == uuidOf(3, 1)) ++seen;
            }
        }
        QCOMPARE(seen, 2);
        QVERIFY(ones.back().find("DSEG1") == 0 && opened(ones.back()).head.form == Form::Partial);
    }

    void theScopeTellsWhenMoreMayBeRead()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        const Phone one = scene.joined(founder, 2, "agronomist");
        founder.writeSite(uuidOf(3, 1));
        founder.visit(1, uuidOf(3, 1));
        QCOMPARE(scene.push(founder.seal(), founder.token).status, 201);
        const auto pulled = [&] { return scene.ask(Method::Get, scene.path() + "/segments", {}, one.token); };
        const Response before = pulled();
        QCOMPARE(linesRead(opened(segmentsIn(before.body).back())), 0);
        QCOMPARE(headerIn(pulled(), "Duskrow-Scope"), headerIn(before, "Duskrow-Scope"));
        const std::vector<std::string> name{
            formatUuid(scene.programme), "assignment", formatUuid(one.member), formatUuid(uuidOf(3, 1))};
        founder.write("assignment", duskrow::domain::uuidFromName(name),
            {{"member", formatUuid(one.member)}, {"site", formatUuid(uuidOf(3, 1))}});
        QCOMPARE(scene.push(founder.seal(), founder.token).status, 201);
        const Response after = pulled();
        QVERIFY(headerIn(after, "Duskrow-Scope") != headerIn(before, "Duskrow-Scope"));
        const auto segments = segmentsIn(after.body);
        QCOMPARE(linesRead(opened(segments[segments.size() - 2])), 2);
    }

    void aRestoredHubHasAnotherEpoch()
    {
        HubScene scene;
        Phone founder = scene.founded();
        founder.visit(1, uuidOf(3, 1));
        QCOMPARE(scene.push(founder.seal(), founder.token).status, 201);
        const StorePlace other;
        auto copy = openStore(other.where());
        QVERIFY(copyStore(scene.store->engine(), copy->engine()).has_value());
        QCOMPARE(copyStore(scene.store->engine(), copy->engine()).error().code,
            duskrow::domain::ErrorCode::StoreExists);
        QVERIFY(renewEpochs(copy->engine(), scene.now).has_value());
        founder.visit(2, uuidOf(3, 1));
        const SegmentHead lost = founder.seal();
        QCOMPARE(scene.push(lost, founder.token).status, 201);

        const std::string epoch =
            headerIn(scene.ask(Method::Get, scene.path() + "/segments", {}, founder.token), "Duskrow-Epoch");
        scene.hub.reset();
        scene.store = std::move(copy);
        auto hub = Hub::open(
            *scene.store, {}, [&] { return scene.now; }, [](const std::string&) {});
        QVERIFY(hub.has_value());
        scene.hub = std::move(*hub);
        QCOMPARE(scene.ask(Method::Get, scene.path() + "/state", {}, founder.token).status,
            401); // tokens are not restored
        scene.getToken(founder);
        const Response page = scene.ask(Method::Get, scene.path() + "/segments", {}, founder.token);
        QVERIFY(headerIn(page, "Duskrow-Epoch") != epoch);
        QCOMPARE(segmentsIn(page.body).size(), std::size_t{2});
        QCOMPARE(scene.push(lost, founder.token).status, 201);
        const auto report = checkStore(*scene.store);
        QVERIFY(report.has_value());
        QVERIFY(report->faults.empty());
        QCOMPARE(report->segments, std::int64_t{3});
    }

    void checkingFindsDamage()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        founder.visit(1, uuidOf(3, 1));
        QCOMPARE(scene.push(founder.seal(), founder.token).status, 201);
        QVERIFY(checkStore(*scene.store)->faults.empty());
        const auto spoil = [&](const std::string& sql) {
            return scene.store->engine().write([&](Session& session) { session.run(sql); }).has_value();
        };
        QVERIFY(spoil("UPDATE programme SET head=5"));
        QCOMPARE(checkStore(*scene.store)->faults.size(), std::size_t{1});
        QVERIFY(spoil("UPDATE programme SET head=2"));
        QVERIFY(spoil("UPDATE stream SET last=9"));
        QCOMPARE(checkStore(*scene.store)->faults.size(), std::size_t{1});
        QVERIFY(spoil("UPDATE stream SET last=3"));
        QVERIFY(spoil("DELETE FROM fact WHERE n=1"));
        QCOMPARE(checkStore(*scene.store)->faults.size(), std::size_t{1});
        QVERIFY(spoil("UPDATE segment SET bytes=pushed_by WHERE at=2"));
        QVERIFY(checkStore(*scene.store)->faults.size() > 1);
    }
};

QTEST_APPLESS_MAIN(HubExchangeTest)
#include "hub_exchange_test.moc"
