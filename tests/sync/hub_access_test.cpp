// SPDX-License-Identifier: MIT
#include <QTest>

#include "sync/hub_scene.h"

using namespace duskrow::tests;
using duskrow::sync::SegmentHead;

// Every kind of caller against every call that needs a token.
class HubAccessTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        QVERIFY(sodium_init() >= 0);
        m_scene = std::make_unique<HubScene>();
        Phone founder = m_scene->founded();
        Phone grower = m_scene->joined(founder, 2, "grower");
        Phone agronomist = m_scene->joined(founder, 3, "agronomist");
        Phone coordinator = m_scene->joined(founder, 4, "coordinator");
        Phone ended = m_scene->joined(founder, 5, "grower");
        Phone past = m_scene->joined(founder, 6, "grower");
        // A root counts until it is ended, whatever the last day of its member.
        Phone pastRoot = m_scene->joined(founder, 7, "coordinator");
        founder.writeEnd(ended, 1);
        founder.write("device", pastRoot.device(), {{"root", true}});
        for (const Phone* one : {&past, &pastRoot})
            founder.write("member", one->member, {{"until_day", std::string("2026-07-01")}});
        QCOMPARE(m_scene->push(founder.seal(), founder.token).status, 201);
        m_tokens = {{"root", founder.token}, {"coordinator", coordinator.token}, {"grower", grower.token},
            {"agronomist", agronomist.token}, {"ended", ended.token}, {"past", past.token},
            {"past root", pastRoot.token}, {"nobody", ""}, {"guess", std::string(64, 'a')}};
        grower.visit(1, uuidOf(3, 1));
        m_segment = grower.seal();
    }
    void cleanupTestCase() { m_scene.reset(); }

    void calls_data()
    {
        QTest::addColumn<QByteArray>("who");
        QTest::addColumn<QByteArray>("call");
        QTest::addColumn<int>("status");
        const std::map<std::string, int> outside{
            {"ended", 401}, {"past", 401}, {"nobody", 401}, {"guess", 401}};
        for (const char* who :
            {"root", "past root", "coordinator", "grower", "agronomist", "ended", "past", "nobody", "guess"})
            for (const char* call : {"GET state", "GET segments", "GET vector", "GET aside", "GET aside/0",
                     "HEAD photographs/0", "GET photographs/0", "PUT photographs/0", "PUT segments/0/0",
                     "GET publications", "PUT publications/a.html"}) {
                const bool isIn = !outside.contains(who);
                const int status = isIn ? statusInside(who, call) : outside.at(who);
                QTest::addRow("%s: %s", who, call) << QByteArray(who) << QByteArray(call) << status;
            }
    }
    void calls()
    {
        QFETCH(QByteArray, who);
        QFETCH(QByteArray, call);
        QFETCH(int, status);
        const std::string text = call.toStdString();
        const std::string verb = text.substr(0, text.find(' '));
        const Method method = verb == "GET" ? Method::Get : verb == "PUT" ? Method::Put : Method::Head;
        const std::string& token = m_tokens.at(who.toStdString());
        const std::string rest = '/' + text.substr(verb.size() + 1);
        QCOMPARE(m_scene
                     ->ask(method, m_scene->path() + rest, {}, token,
                         {{"content-type", "application/octet-stream"}})
                     .status,
            status);
        // The same on another programme: nothing is said about whether there is one.
        const std::string other = "/v1/programmes/" + formatUuid(uuidOf(7, 5)) + rest;
        QCOMPARE(m_scene->ask(method, other, {}, token).status,
            status == 401 && who != "ended" && who != "past" ? 401 : 403);
    }

    // Replayed by anybody who takes part it changes nothing; by anybody else it is refused.
    void aSegmentOfAnother()
    {
        QCOMPARE(m_scene->push(m_segment, m_tokens.at("ended")).status, 401);
        QCOMPARE(m_scene->push(m_segment, m_tokens.at("nobody")).status, 401);
        QCOMPARE(m_scene->push(m_segment, m_tokens.at("agronomist")).status, 201);
        QCOMPARE(m_scene->push(m_segment, m_tokens.at("grower")).status, 200);
        QCOMPARE(m_scene->push(m_segment, m_tokens.at("root")).status, 200);
    }

private:
    static int statusInside(const std::string& who, const std::string& call)
    {
        const bool isCoordinator = who == "root" || who == "past root" || who == "coordinator";
        if (call.starts_with("GET aside")) return !isCoordinator ? 403 : call == "GET aside" ? 200 : 404;
        if (call.starts_with("PUT publications")) return isCoordinator ? 400 : 403;
        if (call.find("photographs") != std::string::npos) return call.starts_with("PUT") ? 400 : 404;
        return call.starts_with("PUT") ? 400 : 200;
    }

    std::unique_ptr<HubScene> m_scene;
    std::map<std::string, std::string> m_tokens;
    SegmentHead m_segment;
};

QTEST_APPLESS_MAIN(HubAccessTest)
#include "hub_access_test.moc"
