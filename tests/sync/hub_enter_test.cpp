// SPDX-License-Identifier: MIT
#include <QTest>

#include "sync/hub_scene.h"

using namespace duskrow::tests;
using duskrow::sync::SegmentHead;

// Founding, inviting, joining, tokens: who gets in, and who does not.
class HubEnterTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QVERIFY(sodium_init() >= 0); }

    void aProgrammeIsFoundedOnce()
    {
        const HubScene scene;
        const Phone founder(scene.programme, 1);
        const json body = scene.foundingBody(founder);
        QCOMPARE(scene.askJson("/v1/programmes", body).status, 201);
        QCOMPARE(scene.askJson("/v1/programmes", body).status, 200); // the answer was lost

        const Phone other(scene.programme, 2);
        QCOMPARE(scene.askJson("/v1/programmes", scene.foundingBody(other)).status, 403);
    }

    void foundingIsRefused()
    {
        const HubScene scene;
        const Phone founder(scene.programme, 1);
        const json good = scene.foundingBody(founder);
        const auto with = [&](const std::string& key, const json& value) {
            json body = good;
            body[key] = value;
            return scene.askJson("/v1/programmes", body).status;
        };
        QCOMPARE(with("invitation", formatHex(Keys(5).key)), 404);
        QCOMPARE(with("proof", formatHex(Keys(5).sign("x"))), 403);
        QCOMPARE(with("key", formatHex(Keys(5).key)), 422);
        QCOMPARE(with("stream", "00"), 400);
        QCOMPARE(with("name", ""), 400);
        QCOMPARE(with("name", std::string(201, 'x')), 400);
        QCOMPARE(with("more", "x"), 400);
        QCOMPARE(scene.ask(Method::Post, "/v1/programmes", std::string(10'000, '[')).status, 400);
        QCOMPARE(scene.ask(Method::Post, "/v1/programmes", "").status, 400);
    }

    void aFoundingCodeGrowsOld()
    {
        HubScene scene;
        scene.now += std::chrono::hours(25);
        const Phone founder(scene.programme, 1);
        QCOMPARE(scene.askJson("/v1/programmes", scene.foundingBody(founder)).status, 404);
    }

    void invitationsTellWhatTheyAreFor()
    {
        const HubScene scene;
        const auto asked = [&](const PublicKey& key) {
            return scene.ask(Method::Get, "/v1/invitations/" + formatHex(key));
        };
        const json founding = json::parse(asked(scene.foundingCode.key).body);
        QCOMPARE(shown(founding),
            shown((json{{"founding", true}, {"invitation", ""}, {"name", "District"}, {"programme", ""},
                {"root", ""}})));

        Phone founder = scene.founded();
        const Keys code(77);
        founder.writeInvitation(uuidOf(2, 77), founder.member, code.key, "2026-12-31");
        QCOMPARE(scene.push(founder.seal(), founder.token).status, 201);
        const Response answer = asked(code.key);
        QCOMPARE(answer.status, 200);
        QCOMPARE(shown(json::parse(answer.body)),
            shown((json{{"founding", false}, {"invitation", formatUuid(uuidOf(2, 77))},
                {"member", formatUuid(founder.member)}, {"name", "District"},
                {"programme", formatUuid(scene.programme)}, {"root", formatHex(founder.stream)}})));
        QCOMPARE(asked(Keys(78).key).status, 404);
        QCOMPARE(scene.ask(Method::Get, "/v1/invitations/x").status, 404);

        Phone phone(scene.programme, 2);
        phone.writeClaim(uuidOf(2, 77), code);
        QCOMPARE(scene.join(phone.seal()).status, 201);
        QCOMPARE(asked(code.key).status, 404); // used
    }

    void oldInvitationsAreNotKnown()
    {
        HubScene scene;
        Phone founder = scene.founded();
        const Keys code(77);
        founder.writeInvitation(uuidOf(2, 77), founder.member, code.key, "2026-07-10");
        QCOMPARE(scene.push(founder.seal(), founder.token).status, 201);
        scene.now += std::chrono::hours(24 * 30);
        QCOMPARE(scene.ask(Method::Get, "/v1/invitations/" + formatHex(code.key)).status, 404);
    }

    void joiningIsRepeatableAndOnce()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        const Keys code(77);
        founder.writeInvitation(uuidOf(2, 77), founder.member, code.key, "2026-12-31");
        QCOMPARE(scene.push(founder.seal(), founder.token).status, 201);

        Phone phone(scene.programme, 2);
        phone.writeClaim(uuidOf(2, 77), code);
        const SegmentHead claim = phone.seal();
        const Response first = scene.join(claim);
        QCOMPARE(first.status, 201);
        const Response again = scene.join(claim);
        QCOMPARE(again.status, 200);
        QCOMPARE(again.body, first.body);

        Phone second(scene.programme, 3);
        second.writeClaim(uuidOf(2, 77), code);
        QCOMPARE(scene.join(second.seal()).status, 403);
        QCOMPARE(scene.askToken(second).status, 403);
    }

    void claimsThatDoNotCount()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        Phone guess(scene.programme, 4);
        guess.writeClaim(uuidOf(2, 77), Keys(3)); // no such invitation
        QCOMPARE(scene.join(guess.seal()).status, 403);

        const Keys code(77);
        founder.writeInvitation(
            uuidOf(2, 78), founder.member, code.key, "2026-07-01"); // a day before the claim
        QCOMPARE(scene.push(founder.seal(), founder.token).status, 201);
        Phone late(scene.programme, 5);
        late.writeClaim(uuidOf(2, 78), code);
        QCOMPARE(scene.join(late.seal()).status, 403);

        Phone no(scene.programme, 6);
        no.visit(1, uuidOf(3, 1));
        QCOMPARE(scene.join(no.seal()).status, 403);
        Phone elsewhere(uuidOf(7, 2), 6);
        elsewhere.writeClaim(uuidOf(2, 78), code);
        QCOMPARE(scene.join(elsewhere.seal()).status, 400);
        QCOMPARE(scene
                     .ask(Method::Post, scene.path() + "/join", "DSEG1\nxx", {},
                         {{"content-type", "application/octet-stream"}})
                     .status,
            400);
        QCOMPARE(scene.ask(Method::Post, scene.path() + "/join", "x").status, 415);
        QCOMPARE(shown(json::parse(scene.ask(Method::Get, scene.path() + "/aside", {}, founder.token).body)),
            shown(json::array()));
    }

    void tokensTakeASignature()
    {
        HubScene scene;
        Phone founder(scene.programme, 1);
        QCOMPARE(scene.askJson("/v1/programmes", scene.foundingBody(founder)).status, 201);
        const std::string nonce =
            json::parse(scene.askJson(scene.path() + "/challenge", {{"stream", formatHex(founder.stream)}})
                            .body)["nonce"];
        QCOMPARE(scene.askToken(founder, nonce).status, 201);
        QCOMPARE(scene.askToken(founder, nonce).status, 403); // once

        Phone stranger(scene.programme, 8);
        QCOMPARE(scene.askToken(stranger).status, 403);
        std::string made = nonce;
        made[3] = made[3] == '0' ? '1' : '0';
        QCOMPARE(scene.askToken(founder, made).status, 403);

        const std::string old =
            json::parse(scene.askJson(scene.path() + "/challenge", {{"stream", formatHex(founder.stream)}})
                            .body)["nonce"];
        QCOMPARE(scene.askToken(stranger, old).status, 403); // somebody else's
        scene.now += std::chrono::seconds(61);
        QCOMPARE(scene.askToken(founder, old).status, 403); // too old
    }

    void anOlderTokenEnds()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        const std::string older = founder.token;
        QCOMPARE(scene.ask(Method::Get, scene.path() + "/state", {}, older).status, 200);
        scene.getToken(founder);
        QCOMPARE(scene.ask(Method::Get, scene.path() + "/state", {}, older).status, 401);
        QCOMPARE(scene.ask(Method::Get, scene.path() + "/state", {}, founder.token).status, 200);
    }

    void aTokenIsForOneProgramme()
    {
        const HubScene scene;
        const Phone founder = scene.founded();
        QVERIFY(scene.store->addFounding({Keys(98).key, "Other", scene.now + std::chrono::hours(1), {}, {}})
                    .has_value());
        const std::string other = "/v1/programmes/" + formatUuid(uuidOf(7, 9));
        for (const char* call : {"/state", "/segments", "/vector", "/aside"}) {
            QCOMPARE(scene.ask(Method::Get, other + call, {}, founder.token).status, 403);
            QCOMPARE(scene.ask(Method::Get, other + call).status, 401);
            QCOMPARE(scene.ask(Method::Get, scene.path() + call).status, 401);
            QCOMPARE(scene.ask(Method::Get, scene.path() + call, {}, std::string(64, '0')).status, 401);
            QCOMPARE(scene.ask(Method::Get, scene.path() + call, {}, "short").status, 401);
        }
        QCOMPARE(scene.ask(Method::Get, "/v1/programmes/x/state", {}, founder.token).status, 404);
        QCOMPARE(scene.ask(Method::Post, scene.path() + "/state", {}, founder.token).status, 405);
        QCOMPARE(scene.ask(Method::Get, "/v1/nothing").status, 404);
    }

    void anEndedDeviceIsOutAtOnce()
    {
        const HubScene scene;
        Phone founder = scene.founded();
        const Phone phone = scene.joined(founder, 2, "grower");
        QCOMPARE(scene.ask(Method::Get, scene.path() + "/state", {}, phone.token).status, 200);
        founder.writeEnd(phone, 1);
        QCOMPARE(scene.push(founder.seal(), founder.token).status, 201);
        QCOMPARE(scene.ask(Method::Get, scene.path() + "/state", {}, phone.token).status, 401);
        QCOMPARE(scene.askToken(phone).status, 403);
    }

    void wrongInvitationsRunOut()
    {
        HubScene scene;
        int last = 0;
        for (std::uint32_t guess = 0; guess < 21; ++guess)
            last = scene.ask(Method::Get, "/v1/invitations/" + formatHex(Keys(500 + guess).key)).status;
        QCOMPARE(last, 429);
        const Response right = scene.ask(Method::Get, "/v1/invitations/" + formatHex(scene.foundingCode.key));
        QCOMPARE(right.status, 429);
        QVERIFY(std::stoi(headerIn(right, "Retry-After")) > 0);
        scene.now += std::chrono::minutes(4);
        QCOMPARE(scene.ask(Method::Get, "/v1/invitations/" + formatHex(scene.foundingCode.key)).status, 200);
    }

    void requestsRunOut()
    {
        HubOptions options;
        options.token = {3, 60};
        const HubScene scene(options);
        const Phone founder = scene.founded(); // one
        QCOMPARE(scene.ask(Method::Get, scene.path() + "/state", {}, founder.token).status, 200);
        QCOMPARE(scene.ask(Method::Get, scene.path() + "/state", {}, founder.token).status, 200);
        const Response fourth = scene.ask(Method::Get, scene.path() + "/state", {}, founder.token);
        QCOMPARE(fourth.status, 429);
        QCOMPARE(headerIn(fourth, "Retry-After"), std::string("1"));
    }

    void theLogTellsNoSecrets()
    {
        const HubScene scene;
        const Phone founder = scene.founded();
        QCOMPARE(scene.ask(Method::Get, scene.path() + "/state", {}, founder.token).status, 200);
        QVERIFY(!scene.log.empty());
        for (const std::string& line : scene.log) {
            QVERIFY(json::accept(line));
            QVERIFY(line.find(founder.token) == std::string::npos);
            QVERIFY(line.find(formatHex(scene.foundingCode.key)) == std::string::npos);
        }
        const json last = json::parse(scene.log.back());
        QCOMPARE(shown(last["call"]), shown(json("state")));
        QCOMPARE(shown(last["stream"]), shown(json(formatHex(founder.stream))));
        QCOMPARE(shown(last["status"]), shown(json(200)));
    }
};

QTEST_APPLESS_MAIN(HubEnterTest)
#include "hub_enter_test.moc"
