// SPDX-License-Identifier: MIT
#include <QTest>

#include "sync/hub/store/copy.h"
#include "sync/hub_scene.h"

using namespace duskrow::tests;

// Photographs, what is newer, health and figures.
class HubServiceTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QVERIFY(sodium_init() >= 0); }

    // It is known to the signature only: kept, passed on to whom it may concern for sure, and no gap.
    void whatNeedsMoreThanTheHubCanIsKept()
    {
        HubScene scene;
        Phone founder = scene.founded();
        Phone grower = scene.joined(founder, 2, "grower");
        Phone other = scene.joined(founder, 3, "grower");
        grower.visit(1, uuidOf(3, 1));
        duskrow::sync::SegmentHead newer = grower.seal();
        json header = json::parse(newer.headerBytes);
        header["needs"] = {"holograms"};
        newer.headerBytes = header.dump();
        newer.signature = grower.keys.sign("DSEG1-signed" + newer.headerBytes);
        newer = *duskrow::sync::readHead(segmentBytes(newer));
        QCOMPARE(scene.push(newer, grower.token).status, 201);
        QCOMPARE(scene.push(newer, grower.token).status, 200);
        grower.previous = newer.id;
        grower.visit(2, uuidOf(3, 1));
        QCOMPARE(scene.push(grower.seal(), grower.token).status, 201);
        const auto holds = [&](const Phone& reader) {
            const Response page =
                scene.ask(Method::Get, scene.path() + "/segments?after=0", {}, reader.token);
            const auto segments = segmentsIn(page.body);
            return std::find(segments.begin(), segments.end(), segmentBytes(newer)) != segments.end();
        };
        QVERIFY(holds(founder));
        QVERIFY(holds(grower));
        QVERIFY(!holds(other));
        const auto report = duskrow::hub::checkStore(*scene.store);
        QVERIFY(report.has_value());
        QVERIFY2(report->faults.empty(), report->faults.empty() ? "" : report->faults.front().c_str());
    }

    void aPhotographComesInParts()
    {
        const HubScene scene;
        const Phone founder = scene.founded();
        std::string content(300'000, 'x');
        for (std::size_t i = 0; i < content.size(); ++i) content[i] = static_cast<char>(i * 7 + i / 251);
        const std::string path = photographPath(scene, content);
        const auto put = [&](std::size_t from, std::size_t to) {
            return scene.ask(Method::Put, path, content.substr(from, to - from), founder.token,
                {{"content-range",
                    "bytes " + std::to_string(from) + '-' + std::to_string(to - 1) + "/300000"}});
        };
        QCOMPARE(scene.ask(Method::Head, path, {}, founder.token).status, 404);
        QCOMPARE(put(0, 100'000).status, 202);
        QCOMPARE(scene.ask(Method::Get, path, {}, founder.token).status, 404);
        const Response head = scene.ask(Method::Head, path, {}, founder.token);
        QCOMPARE(headerIn(head, "Duskrow-Held"), std::string("100000"));
        const Response early = put(200'000, 300'000); // not what is due: told where to go on
        QCOMPARE(early.status, 202);
        QCOMPARE(headerIn(early, "Duskrow-Held"), std::string("100000"));
        QCOMPARE(put(100'000, 200'000).status, 202);
        QCOMPARE(put(200'000, 300'000).status, 201);
        QCOMPARE(put(200'000, 300'000).status, 200);
        QCOMPARE(scene.ask(Method::Head, path, {}, founder.token).status, 200);
        QCOMPARE(scene.ask(Method::Get, path, {}, founder.token).body, content);
    }

    void aPhotographUnderAWrongNameIsForgotten()
    {
        const HubScene scene;
        const Phone founder = scene.founded();
        const std::string path = photographPath(scene, "what was meant");
        QCOMPARE(scene.ask(Method::Put, path, "something else", founder.token).status, 422);
        QCOMPARE(
            headerIn(scene.ask(Method::Head, path, {}, founder.token), "Duskrow-Held"), std::string("0"));
        QCOMPARE(scene.ask(Method::Put, path, "what was meant", founder.token).status, 201);
    }

    void photographRanges_data()
    {
        QTest::addColumn<QByteArray>("range");
        QTest::addColumn<int>("status");
        QTest::newRow("longer than the body") << QByteArray("bytes 0-4/9") << 400;
        QTest::newRow("beyond the end") << QByteArray("bytes 8-11/9") << 400;
        QTest::newRow("no end") << QByteArray("bytes 0-") << 400;
        QTest::newRow("no unit") << QByteArray("0-3/9") << 400;
        QTest::newRow("negative") << QByteArray("bytes -1-2/9") << 400;
        QTest::newRow("huge") << QByteArray("bytes 0-3/99999999999") << 413;
        QTest::newRow("absurd") << QByteArray("bytes 0-3/99999999999999999999") << 400;
        QTest::newRow("good") << QByteArray("bytes 0-3/9") << 202;
    }
    void photographRanges()
    {
        QFETCH(QByteArray, range);
        QFETCH(int, status);
        const HubScene scene;
        const Phone founder = scene.founded();
        QCOMPARE(scene
                     .ask(Method::Put, photographPath(scene, "x"), "abcd", founder.token,
                         {{"content-range", range.toStdString()}})
                     .status,
            status);
    }

    // What does not fit is not receipted, and goes in once there is room again.
    void aFullDiskIsSaid()
    {
        const HubScene scene;
        if (scene.place.isPostgres()) QSKIP("PostgreSQL has no limit of its own to set");
        Phone founder = scene.founded();
        const auto limit = [&](const std::string& pages) {
            return scene.store->engine()
                .write([&](Session& session) { session.run("PRAGMA max_page_count=" + pages); })
                .has_value();
        };
        QVERIFY(limit("1")); // no more than there are now
        Response answer;
        duskrow::sync::SegmentHead head;
        int pushed = 0;
        do {
            for (std::uint32_t visit = 0; visit < 100; ++visit) founder.visit(visit, uuidOf(3, visit));
            head = founder.seal();
            answer = scene.push(head, founder.token);
        } while (answer.status == 201 && ++pushed < 50);
        QCOMPARE(answer.status, 503);
        QCOMPARE(json::parse(answer.body)["error"].get<std::string>(), std::string("full"));
        QVERIFY(std::stoi(headerIn(answer, "Retry-After")) > 0);
        QCOMPARE(scene.ask(Method::Get, scene.path() + "/state", {}, founder.token).status, 200);
        QVERIFY(limit("1000000"));
        QCOMPARE(scene.push(head, founder.token).status, 201);
    }

    void healthAndFigures()
    {
        const HubScene scene;
        const Phone founder = scene.founded();
        QCOMPARE(scene.ask(Method::Get, "/v1/health").status, 200);
        QCOMPARE(scene.ask(Method::Get, "/v1/metrics").status, 404); // from afar
        Request near;
        near.method = Method::Get;
        near.target = "/v1/metrics";
        near.address = "127.0.0.1";
        const Response metrics = scene.hub->answer(near);
        QCOMPARE(metrics.status, 200);
        const std::string& text = metrics.body;
        QVERIFY(text.ends_with("# EOF\n"));
        QVERIFY(text.find("duskrow_requests_total{call=\"push\",status=\"201\"} 1\n") != std::string::npos);
        QVERIFY(text.find("duskrow_changes_stored_total 2\n") != std::string::npos);
        QVERIFY(
            text.find("duskrow_request_seconds_bucket{call=\"push\",le=\"+Inf\"} 1\n") != std::string::npos);
        QVERIFY(text.find(founder.token) == std::string::npos);
    }

    // A device need not fetch what it has just handed over, even when others came between.
    void whatADeviceHasIsLeftOut()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        std::vector<duskrow::sync::SegmentHead> sent;
        for (std::uint32_t number = 0; number < 4; ++number) {
            founder.visit(number, uuidOf(3, 1));
            sent.push_back(founder.seal());
            QCOMPARE(scene.push(sent.back(), founder.token).status, 201);
        }
        const auto asked = [&](const std::string& query) {
            return scene.ask(Method::Get, scene.path() + "/segments?after=1" + query, {}, founder.token);
        };
        const Response page = asked("&had=2-4");
        const std::vector<std::string> left = segmentsIn(page.body);
        QCOMPARE(left.size(), std::size_t{2});
        QCOMPARE(left[0], duskrow::sync::segmentBytes(sent[1]));
        QCOMPARE(left[1], duskrow::sync::segmentBytes(sent[3]));
        QCOMPARE(headerIn(page, "Duskrow-Next"), std::string("5"));
        const Response nothing = asked("&had=2-3-4-5");
        QCOMPARE(nothing.status, 200);
        QVERIFY(nothing.body.empty());
        QCOMPARE(headerIn(nothing, "Duskrow-Next"), std::string("5"));
        for (const char* bad : {"&had=x", "&had=2,3", "&had=2--3"}) QCOMPARE(asked(bad).status, 400);
    }

private:
    static std::string photographPath(const HubScene& scene, const std::string& content)
    {
        return scene.path() + "/photographs/" + formatHex(duskrow::domain::hashOf(content));
    }
};

QTEST_APPLESS_MAIN(HubServiceTest)
#include "hub_service_test.moc"
