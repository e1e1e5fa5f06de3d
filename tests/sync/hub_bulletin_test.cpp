// SPDX-License-Identifier: MIT
#include <QTest>

#include "sync/hub_scene.h"

using namespace duskrow::tests;

namespace {

std::string headerOf(const Response& response, const std::string& name)
{
    for (const auto& [header, value] : response.headers)
        if (header == name) return value;
    return {};
}

} // namespace

// Bulletins: coordinators hand them over, anybody reads them.
class HubBulletinTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QVERIFY(sodium_init() >= 0); }

    void init()
    {
        m_scene = std::make_unique<HubScene>();
        m_founder = std::make_unique<Phone>(m_scene->founded());
    }

    void publishedForEverybody()
    {
        QCOMPARE(read("/bulletin/").status, 200);
        QVERIFY(read("/bulletin/").body.find("No bulletin") != std::string::npos);
        QCOMPARE(put("index.html", "<p>28</p>").status, 201);
        QCOMPARE(put("feed.atom", "<feed/>").status, 201);
        const Response first = read("/bulletin/");
        QCOMPARE(first.status, 302);
        const std::string home = headerOf(first, "Location");
        QCOMPARE(home, "/bulletin/" + formatUuid(m_scene->programme) + "/");
        QCOMPARE(headerOf(read("/bulletin"), "Location"), home);
        const Response page = read(home);
        QCOMPARE(page.status, 200);
        QCOMPARE(page.body, std::string("<p>28</p>"));
        QCOMPARE(page.type, std::string("text/html; charset=utf-8"));
        QVERIFY(headerOf(page, "Content-Security-Policy").find("default-src 'none'") != std::string::npos);
        QCOMPARE(headerOf(page, "X-Content-Type-Options"), std::string("nosniff"));
        QCOMPARE(read(home + "feed.atom").type, std::string("application/atom+xml"));
        // The next issue goes over it.
        QCOMPARE(put("index.html", "<p>29</p>").status, 201);
        QCOMPARE(read(home).body, std::string("<p>29</p>"));
        // Who has it already is told so.
        const std::string tag = headerOf(read(home), "ETag");
        QCOMPARE(m_scene->ask(Method::Get, home, {}, {}, {{"if-none-match", tag}}).status, 304);
        // The desk sees what the hub has.
        const Response list =
            m_scene->ask(Method::Get, m_scene->path() + "/publications", {}, m_founder->token);
        const json held = json::parse(list.body);
        QCOMPARE(held.size(), 2U);
        QCOMPARE(held["index.html"].get<std::string>(), formatHex(hashOf("<p>29</p>")));
        // And it outlives the process.
        m_scene->restart();
        QCOMPARE(read(home).body, std::string("<p>29</p>"));
    }

    void names_data()
    {
        QTest::addColumn<QByteArray>("name");
        QTest::addColumn<int>("status");
        for (const char* good : {"index.html", "bulletin-2026-W28.csv", "bulletin-2026-W28-dwca.zip",
                 "bulletin-2026-W28.geojson", "a.pdf"})
            QTest::addRow("%s", good) << QByteArray(good) << 201;
        for (const char* bad : {"index.js", "page", ".html", "..html", "a%2Fb.html", "a b.html", "a_b.html",
                 "x.html.exe", "%00.html"})
            QTest::addRow("%s", bad) << QByteArray(bad) << 400;
        QTest::addRow("long") << QByteArray(90, 'a') + ".html" << 400;
    }
    void names()
    {
        QFETCH(QByteArray, name);
        QFETCH(int, status);
        QCOMPARE(put(name.toStdString(), "x").status, status);
        const std::string home = "/bulletin/" + formatUuid(m_scene->programme) + '/';
        QCOMPARE(read(home + name.toStdString()).status, status == 201 ? 200 : 404);
    }

    void onlyCoordinators()
    {
        Phone grower = m_scene->joined(*m_founder, 2, "grower");
        QCOMPARE(put("index.html", "mine", grower.token).status, 403);
        QCOMPARE(put("index.html", "mine", "").status, 401);
        QCOMPARE(read("/bulletin/").status, 200);
        QCOMPARE(put("index.html", "").status, 400);
    }

    void asManyAsThereIsRoomFor()
    {
        for (int i = 0; i < 1'000; ++i)
            QCOMPARE(m_scene->store
                         ->putPublication(
                             m_scene->programme, {std::to_string(i) + ".html", {}, {}, m_scene->now, "x"})
                         .value(),
                true);
        QCOMPARE(put("one-more.html", "x").status, 507);
        QCOMPARE(put("7.html", "y").status, 201);
    }

    void nothingElseIsServed()
    {
        QCOMPARE(put("index.html", "x").status, 201);
        const std::string home = "/bulletin/" + formatUuid(m_scene->programme) + '/';
        for (const char* path : {"/bulletin/nobody/", "/bulletin/nobody/index.html",
                 "/bulletin/01980a5c-1000-7000-8000-000000000003/", "/bulletin/x/y/z"})
            QCOMPARE(read(path).status, 404);
        QCOMPARE(read(home + "other.html").status, 404);
        QCOMPARE(m_scene->ask(Method::Put, home + "index.html", "x", m_founder->token).status, 405);
    }

private:
    [[nodiscard]] Response put(const std::string& name, const std::string& bytes) const
    {
        return put(name, bytes, m_founder->token);
    }
    [[nodiscard]] Response put(
        const std::string& name, const std::string& bytes, const std::string& token) const
    {
        return m_scene->ask(Method::Put, m_scene->path() + "/publications/" + name, bytes, token,
            {{"content-type", "application/octet-stream"}});
    }
    [[nodiscard]] Response read(const std::string& path) const { return m_scene->ask(Method::Get, path); }

    std::unique_ptr<HubScene> m_scene;
    std::unique_ptr<Phone> m_founder;
};

QTEST_APPLESS_MAIN(HubBulletinTest)
#include "hub_bulletin_test.moc"
