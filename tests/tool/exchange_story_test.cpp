// SPDX-License-Identifier: MIT
#include <QDir>
#include <QTest>

#include "exchange_tool.h"

using namespace duskrow::domain;
using namespace duskrow::tests;

namespace {

const QStringList devices{QStringLiteral("desk"), QStringLiteral("tom"), QStringLiteral("ann")};

// One programme of three, by one of the two ways that need no network.
struct Story : ExchangeTool {
    bool isByFile = false;
    Site site = siteNamed("Slough corner");
    Trap trap = trapAt(site, "1");
    Visit visit = visitTo(trap, 40);

    [[nodiscard]] std::unique_ptr<duskrow::store::Store> open(const QString& device) const
    {
        return scene.open(device.toStdString());
    }

    // What one device has goes to another.
    void pass(const QString& from, const QString& to) const
    {
        const QString file = QStringLiteral("@%1-%2.dusk").arg(from, to);
        const QString there = isByFile ? QStringLiteral("--write") : QStringLiteral("--folder");
        const QString here = isByFile ? QStringLiteral("--read") : QStringLiteral("--folder");
        const QString place = isByFile ? file : QStringLiteral("@shared");
        const Ran sent =
            run(from, {QStringLiteral("exchange"), u'@' + from, there, place, QStringLiteral("--json")});
        QCOMPARE(sent.err, QString());
        QCOMPARE(sent.exit, 0);
        const Ran taken =
            run(to, {QStringLiteral("exchange"), u'@' + to, here, place, QStringLiteral("--json")});
        QCOMPARE(taken.err, QString());
        QCOMPARE(taken.exit, 0);
        QCOMPARE(taken.numberAt("files_kept_aside"), 0);
    }

    void passAll(const QStringList& order) const
    {
        for (const QString& from : order)
            for (const QString& to : order)
                if (from != to) pass(from, to);
    }

    // Joins with a code that the coordinator has handed over.
    [[nodiscard]] Ran join(const QString& device, const QString& code) const
    {
        if (isByFile) {
            const Ran wrote = run(QStringLiteral("desk"),
                {QStringLiteral("exchange"), QStringLiteral("@desk"), QStringLiteral("--write"),
                    u'@' + device + QStringLiteral(".dusk")});
            if (wrote.exit != 0) return wrote;
            return run(device,
                {QStringLiteral("programme"), QStringLiteral("join"), u'@' + device, QStringLiteral("--code"),
                    code, QStringLiteral("--read"), u'@' + device + QStringLiteral(".dusk"),
                    QStringLiteral("--json")});
        }
        const Ran handed = run("desk", "exchange @desk --folder @shared");
        if (handed.exit != 0) return handed;
        return run(device,
            {QStringLiteral("programme"), QStringLiteral("join"), u'@' + device, QStringLiteral("--code"),
                code, QStringLiteral("--folder"), QStringLiteral("@shared"), QStringLiteral("--json")});
    }

    [[nodiscard]] QJsonArray differences(const QString& device) const
    {
        return run(device, {QStringLiteral("differences"), u'@' + device, QStringLiteral("--json")})
            .json()[QStringLiteral("differences")]
            .toArray();
    }

    [[nodiscard]] std::string dump(const QString& device) const
    {
        const auto store = open(device);
        return dumpOf(*store);
    }

    [[nodiscard]] QByteArray exported(const QString& device, const QString& mark) const
    {
        const QString folder = device + mark;
        const Ran ran = run(device,
            {QStringLiteral("export"), u'@' + device, QStringLiteral("--as"), QStringLiteral("csv"),
                u'@' + folder});
        if (ran.exit != 0) return {};
        QByteArray all;
        QDir files(path(folder));
        for (const QString& name : files.entryList(QDir::Files, QDir::Name)) {
            QFile file(files.filePath(name));
            if (file.open(QIODevice::ReadOnly)) all += name.toUtf8() + '\n' + file.readAll();
        }
        return all;
    }

    void begin()
    {
        const Ran made = run("desk", "programme new @desk --name Valley --region North --me Ida --json");
        QCOMPARE(made.err, QString());
        QCOMPARE(made.exit, 0);
        QCOMPARE(made.at("name"), QStringLiteral("Valley"));
        const Ran tom = run("desk", "programme invite @desk --name Tom --role grower --json");
        const Ran ann = run("desk", "programme invite @desk --name Ann --role agronomist --json");
        QCOMPARE(tom.exit, 0);
        QCOMPARE(ann.exit, 0);
        QVERIFY(ann.at("link").startsWith(QStringLiteral("duskrow:join?code=")));
        const Ran tomIn = join(QStringLiteral("tom"), tom.at("code").toLower());
        QCOMPARE(tomIn.err, QString());
        QCOMPARE(tomIn.exit, 0);
        QCOMPARE(tomIn.at("programme"), made.at("programme"));
        QCOMPARE(tomIn.at("member"), tom.at("member"));
        const Ran annIn =
            join(QStringLiteral("ann"), ann.at("link")); // the link by one, the code by the other
        QCOMPARE(annIn.err, QString());
        QCOMPARE(annIn.exit, 0);
        passAll(devices);
        passAll(devices);
        const Ran members = run("tom", "programme members @tom --json");
        QCOMPARE(members.json()[QStringLiteral("members")].toArray().size(), 3);
        for (const QJsonValue& member : members.json()[QStringLiteral("members")].toArray()) {
            const QJsonArray held = member.toObject()[QStringLiteral("devices")].toArray();
            QCOMPARE(held.size(), 1);
            QVERIFY(held[0].toObject()[QStringLiteral("confirmed")].toBool());
        }
    }

    // Tom sets a trap at his site, and Ann may work there.
    void workTogether()
    {
        keep(*open(QStringLiteral("tom")),
            {creation(site, site.id), creation(trap, site.id), creation(visit, site.id)});
        const auto desk = open(QStringLiteral("desk"));
        const Roster roster = rosterIn(*desk);
        Uuid ann;
        for (const auto& [id, member] : roster.members())
            if (member.name == "Ann") ann = id;
        keep(*desk, {duskrow::sync::assignment(desk->programme(), ann, site.id)});
    }

    // Both correct one count, apart, and Ann counts another.
    void workApart() const
    {
        Visit more = visit;
        more.pest = Moths{47};
        keep(*open(QStringLiteral("tom")), {correction(visit, more, site.id)});
        Visit fewer = visit;
        fewer.pest = Moths{44};
        const Visit another = visitTo(trap, 3);
        keep(*open(QStringLiteral("ann")), {correction(visit, fewer, site.id), creation(another, site.id)});
    }

    void compareAll(const QString& mark) const
    {
        const QByteArray first = exported(devices[0], mark);
        QVERIFY(first.contains("Slough corner"));
        for (const QString& device : devices) {
            QCOMPARE(exported(device, mark + QStringLiteral("-again")), first);
            QCOMPARE(dump(device), dump(devices[0]));
            QCOMPARE(run(device, {QStringLiteral("check"), u'@' + device}).exit, 0);
        }
    }
};

} // namespace

// A coordinator, a grower and an agronomist, by the command line alone but for the records of the field.
class ExchangeStoryTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void threeDevicesComeToTheSame_data()
    {
        QTest::addColumn<bool>("isByFile");
        QTest::newRow("through a folder") << false;
        QTest::newRow("by carried files") << true;
    }

    void threeDevicesComeToTheSame()
    {
        QFETCH(bool, isByFile);
        Story story;
        story.isByFile = isByFile;
        story.begin();
        if (QTest::currentTestFailed()) return;
        story.workTogether();
        story.passAll(devices);
        story.workApart();
        story.passAll({devices[2], devices[0], devices[1]});
        story.passAll({devices[1], devices[2], devices[0]});
        if (QTest::currentTestFailed()) return;
        story.compareAll(QStringLiteral("-apart"));

        for (const QString& device : devices) {
            const QJsonArray open = story.differences(device);
            const QString said =
                story.run(device, {QStringLiteral("differences"), u'@' + QString(device)}).out;
            QVERIFY2(said.contains(QStringLiteral(" July · Slough corner · 1")), qPrintable(said));
            QVERIFY(!open[0].toObject()[QStringLiteral("trap")].isNull());
            QCOMPARE(open.size(), 1);
            QCOMPARE(open[0].toObject()[QStringLiteral("field")].toString(), QStringLiteral("pest"));
            QCOMPARE(open[0].toObject()[QStringLiteral("values")].toArray().size(), 2);
        }
        settleAndEnd(story);
    }

    void aSoloSeasonComesAlong()
    {
        const ExchangeTool tool;
        QCOMPARE(tool.run("solo", "demo @solo --traps 12 --seasons 2").exit, 0);
        QCOMPARE(tool.run("solo", "export @solo --as csv @before").exit, 0);
        QCOMPARE(tool.run("desk", "programme new @desk --name Valley").exit, 0);
        const Ran invited = tool.run("desk", "programme invite @desk --name Tom --role grower --json");
        QCOMPARE(tool.run("desk", "exchange @desk --folder @shared").exit, 0);
        // The same installation: the old store's key stays beside the new one's.
        const Ran joined = tool.run(QStringLiteral("solo"),
            {QStringLiteral("programme"), QStringLiteral("join"), QStringLiteral("@tom"),
                QStringLiteral("--code"), invited.at("code"), QStringLiteral("--folder"),
                QStringLiteral("@shared"), QStringLiteral("--bring"), QStringLiteral("@solo"),
                QStringLiteral("--json")});
        QCOMPARE(joined.err, QString());
        QCOMPARE(joined.exit, 0);
        const QJsonObject brought = joined.json()[QStringLiteral("brought")].toObject();
        QVERIFY(brought[QStringLiteral("records")].toInt() > 50);
        QCOMPARE(brought[QStringLiteral("already_there")].toInt(), 0);
        QCOMPARE(brought[QStringLiteral("years_not_here")].toArray(), (QJsonArray{2025, 2026}));
        QCOMPARE(tool.run("desk", "exchange @desk --folder @shared").exit, 0);
        QCOMPARE(tool.run("desk", "exchange @desk --folder @shared").exit, 0);
        QCOMPARE(tool.run("desk", "export @desk --as csv @after").exit, 0);
        for (const char* table :
            {"sites", "traps", "services", "loans", "visits", "samples", "walks", "frames", "decisions"}) {
            const QStringList before = idsIn(tool, QStringLiteral("before"), table);
            QVERIFY2(!before.isEmpty() || QLatin1String(table) == QLatin1String("loans"), table);
            QCOMPARE(idsIn(tool, QStringLiteral("after"), table), before);
        }
        QCOMPARE(tool.run("solo", "check @solo").exit, 0); // the old store is as it was
    }

private:
    static QStringList idsIn(const ExchangeTool& tool, const QString& folder, const char* table)
    {
        QStringList ids;
        for (const QString& name : QDir(tool.path(folder)).entryList(QDir::Files)) {
            if (!name.contains(QLatin1String(table)) || name.contains(QStringLiteral("totals"))) continue;
            QFile file(QDir(tool.path(folder)).filePath(name));
            if (!file.open(QIODevice::ReadOnly)) continue;
            for (const QByteArray& line : file.readAll().split('\n'))
                if (line.count('-') >= 4 && line.size() > 36 && line[8] == '-')
                    ids << QString::fromLatin1(line.left(36));
        }
        ids.sort();
        return ids;
    }

    static void settleAndEnd(const Story& story)
    {
        const QString id = QString::fromStdString(formatUuid(story.visit.id));
        const QStringList line{QStringLiteral("--record"), id, QStringLiteral("--field"),
            QStringLiteral("pest"), QStringLiteral("--value"), QStringLiteral("45")};
        const Ran his =
            story.run(devices[1], QStringList{QStringLiteral("settle"), QStringLiteral("@tom")} + line);
        QVERIFY2(his.isRefusal("Only a coordinator"), qPrintable(his.err));
        const Ran settled =
            story.run(devices[0], QStringList{QStringLiteral("settle"), QStringLiteral("@desk")} + line);
        QCOMPARE(settled.err, QString());
        QCOMPARE(settled.exit, 0);
        const Ran again =
            story.run(devices[0], QStringList{QStringLiteral("settle"), QStringLiteral("@desk")} + line);
        QVERIFY2(again.isRefusal("There is no difference"), qPrintable(again.err));
        story.passAll(devices);
        for (const QString& device : devices) {
            QVERIFY(story.differences(device).isEmpty());
            QCOMPARE(countedIn(*story.open(device), story.visit.id), std::int64_t{45});
        }

        const StreamId lost = story.open(devices[1])->stream();
        const QString stream = QString::fromStdString(formatHex(lost));
        const Ran ended = story.run(devices[0],
            {QStringLiteral("programme"), QStringLiteral("end"), QStringLiteral("@desk"),
                QStringLiteral("--device"), stream, QStringLiteral("--json")});
        QCOMPARE(ended.err, QString());
        QCOMPARE(ended.exit, 0);
        QVERIFY(ended.numberAt("ended_after") > 0);
        const Visit late = visitTo(story.trap, 999);
        keep(*story.open(devices[1]), {creation(late, story.site.id)});
        story.passAll(devices);
        QCOMPARE(countedIn(*story.open(devices[0]), late.id), std::int64_t{-1});
        QCOMPARE(countedIn(*story.open(devices[2]), late.id), std::int64_t{-1});
        QCOMPARE(countedIn(*story.open(devices[2]), story.visit.id), std::int64_t{45});
        const QJsonArray aside =
            story.run("desk", "differences @desk --json").json()[QStringLiteral("kept_aside")].toArray();
        QCOMPARE(aside.size(), 1);
        QCOMPARE(aside[0].toObject()[QStringLiteral("reason")].toString(), QStringLiteral("ended"));
    }
};

QTEST_GUILESS_MAIN(ExchangeStoryTest)
#include "exchange_story_test.moc"
