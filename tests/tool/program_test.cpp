// SPDX-License-Identifier: MIT
#include <QDir>
#include <QJsonArray>

#include <SQLiteCpp/Database.h>

#include "store/store.h"
#include "tool/tool_program.h"

using duskrow::tests::Ran;

namespace {

// Every refusal is one line that ends like a sentence, and nothing else is printed.
bool isRefusal(const Ran& ran)
{
    return ran.exit == 2 && ran.out.isEmpty() && ran.err.endsWith(QStringLiteral(".\n"))
        && ran.err.count(u'\n') == 1;
}

} // namespace

// Runs the real program, as a person would.
class ProgramTest : public QObject, private duskrow::tests::ToolProgram {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        const Ran made = run("demo @demo --traps 14 --seasons 2");
        QCOMPARE(made.err, QString());
        QCOMPARE(made.exit, 0);
        QVERIFY(made.out.contains(QStringLiteral("28 traps")));
        QVERIFY(made.out.contains(QStringLiteral("grower")));
        writeFile("text",
            "This is a letter, not a store. It is long enough to have a header's length, though."
            " And it goes on for a while.");
        QDir(path({})).mkpath(QStringLiteral("broken"));
        writeFile("broken/bertha-armyworm.json", "{\n  \"id\": \"bertha-armyworm\",\n");
    }

    void everyCommandHasHelp_data()
    {
        QTest::addColumn<QString>("command");
        QTest::addColumn<QString>("named");
        const auto row = [](const char* command, const char* named) {
            QTest::newRow(command) << QString::fromUtf8(command) << QString::fromUtf8(named);
        };
        row("", "season");
        row("demo", "--seed");
        row("season", "--trap");
        row("due", "--on");
        row("flags", "--year");
        row("threshold", "--dry-season");
        row("round", "--metric");
        row("band", "CATCH");
        row("frames", "--threshold");
        row("plan-frames", "--dispersion");
        row("export", "--as");
        row("import", "--date-order");
        row("check", "STORE");
    }

    void everyCommandHasHelp()
    {
        QFETCH(QString, command);
        QFETCH(QString, named);
        QStringList args{QStringLiteral("--help")};
        if (!command.isEmpty()) args.prepend(command);
        const Ran ran = run(args);
        QCOMPARE(ran.exit, 0);
        QVERIFY(ran.err.isEmpty());
        QVERIFY2(ran.out.contains(named), qPrintable(ran.out));
        QVERIFY(ran.out.contains(command));
    }

    void theBandSaysNameMeaningAndCaution_data()
    {
        QTest::addColumn<QString>("caught");
        QTest::addColumn<QString>("name");
        const auto row = [](const char* claim, const char* caught, const char* name) {
            QTest::newRow(claim) << QString::fromUtf8(caught) << QString::fromUtf8(name);
        };
        row("nothing caught is in the lowest band", "0", "Low");
        row("just below the edge", "299", "Low");
        row("the edge belongs to the higher band", "300", "Uncertain");
        row("the next edge", "900", "Moderate");
        row("the highest edge", "1200", "High");
        row("far above every edge", "999999", "High");
    }

    void theBandSaysNameMeaningAndCaution()
    {
        QFETCH(QString, caught);
        QFETCH(QString, name);
        const Ran ran = run({QStringLiteral("band"), QStringLiteral("bertha-armyworm"), caught});
        QCOMPARE(ran.exit, 0);
        QVERIFY2(ran.out.section(u'\n', 0, 0).contains(QStringLiteral(": %1 (band").arg(name)),
            qPrintable(ran.out));
        QVERIFY(ran.out.section(u'\n', 1, 1).size() > 20);
        QVERIFY(ran.out.contains(QStringLiteral("A trap catch never decides a spray.")));
        QVERIFY(ran.out.contains(QStringLiteral("Source:")));
    }

    void badInputIsRefusedInOneSentence_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("said");
        const auto row = [](const char* claim, const char* line, const char* said) {
            QTest::newRow(claim) << QString::fromUtf8(line) << QString::fromUtf8(said);
        };
        row("letters for a catch", "band bertha-armyworm many", "“many” is not a number");
        row("letters behind digits", "band bertha-armyworm 30o", "“30o” is not a number");
        row("a negative catch", "band bertha-armyworm -5", "The catch must be from 0 to");
        row("half a moth", "band bertha-armyworm 2.5", "“2.5” is not a whole number");
        row("a thousand million moths", "band bertha-armyworm 1000000000", "must be from 0 to");
        row("more digits than a number holds", "band bertha-armyworm 99999999999999999999",
            "must be from 0 to");
        row("an unknown pest", "band purple-moth 3", "no protocol for “purple-moth”");
        row("a pest that leads out of the folder", "band ../../etc/passwd 3", "no protocol for");
        row("a trap type without bands", "band bertha-armyworm 3 --trap-type multicolour-bucket", "no bands");
        row("a folder of protocols that is not there", "band bertha-armyworm 3 --protocols @none",
            "cannot be read");
        row("a protocol file cut in half", "band bertha-armyworm 3 --protocols @broken",
            "protocol file bertha-armyworm.json cannot be read: line");
        row("no command", "", "See duskrow-tool --help.");
        row("an unknown command", "harvest @demo", "See duskrow-tool --help.");
        row("an unknown option", "due @demo --loud", "See duskrow-tool due --help.");
        row("a missing argument", "band bertha-armyworm", "See duskrow-tool band --help.");
        row("season: no such file", "season @none", "There is no store at");
        row("due: no such file", "due @none", "There is no store at");
        row("check: no such file", "check @none", "There is no store at");
        row("export: no such file", "export @none --as csv @out", "There is no store at");
        row("season: not a store", "season @text", "is not a Duskrow store");
        row("due: not a store", "due @text", "is not a Duskrow store");
        row("check: not a store", "check @text", "is not a Duskrow store");
        row("export: not a store", "export @text --as csv @out", "is not a Duskrow store");
        row("season: an unknown trap", "season @demo --trap Nowhere", "There is no trap called “Nowhere”");
        row("season: a year without a season", "season @demo --year 1999",
            "There is no season called “1999”");
        row("season: letters for a year", "season @demo --year last", "“last” is not a number");
        row("season: a bad day", "season @demo --on 14.7.2026", "is not a day of the calendar");
        row("due: a day that is not there", "due @demo --on 2026-02-30", "is not a day of the calendar");
        row("due: before every season", "due @demo --on 1970-01-01", "There is no season called “1970”");
        row("export: an unknown format", "export @demo --as tablets @out",
            "is not a format that can be written");
        row("export: the folder is a file", "export @demo --as csv @text", "cannot be written");
        row("demo: a file that is there", "demo @text", "There is already a file at");
        row("demo: a folder that is not there", "demo @none/demo", "cannot be written");
        row("demo: no traps", "demo @new --traps 0", "The number of traps must be from 1");
        row("demo: letters for a seed", "demo @new --seed pea", "“pea” is not a number");
        row("demo: a bad day", "demo @new --today tomorrow", "is not a day of the calendar");
        row("demo: the year 10000", "demo @new --today 9999-12-31", "The year must be from");
    }

    void badInputIsRefusedInOneSentence()
    {
        QFETCH(QString, line);
        QFETCH(QString, said);
        const QByteArray before = bytesOf(QStringLiteral("text"));
        const Ran ran = run(QProcess::splitCommand(line));
        QVERIFY2(isRefusal(ran), qPrintable(ran.out + ran.err));
        QVERIFY2(ran.err.contains(said), qPrintable(ran.err));
        QCOMPARE(bytesOf(QStringLiteral("text")), before);
        QVERIFY(!QFile::exists(path(QStringLiteral("new"))));
        QVERIFY(!QFile::exists(path(QStringLiteral("out"))));
    }

    void theSeasonIsATableWithACaution()
    {
        const Ran ran = run("season @demo --on 2026-07-14");
        QCOMPARE(ran.exit, 0);
        QVERIFY(ran.out.startsWith(QStringLiteral("Season 2026, as on Tuesday 14 July 2026\n")));
        QCOMPARE(ran.out.count(QStringLiteral("· bertha ")), 14);
        QVERIFY(ran.out.contains(QStringLiteral("moths so far")));
        QVERIFY(ran.out.contains(QStringLiteral("A trap catch never decides a spray.")));
        QVERIFY(!ran.out.contains(QStringLiteral("  Low\n"))); // no band while the flight goes on
        const Ran past = run("season @demo --on 2026-07-14 --year 2025");
        QVERIFY(past.out.contains(QStringLiteral("moths in the whole season")));
        QVERIFY(past.out.contains(QStringLiteral("  Low\n")));
    }

    void aTrapIsFoundByItsNames_data()
    {
        QTest::addColumn<QString>("name");
        for (const char* name : {"Slough corner", "SLOUGH CORNER", "bertha 1", "Slough corner · bertha 1"})
            QTest::newRow(name) << QString::fromUtf8(name);
    }

    void aTrapIsFoundByItsNames()
    {
        QFETCH(QString, name);
        const Ran ran = run({QStringLiteral("season"), QStringLiteral("@demo"), QStringLiteral("--on"),
            QStringLiteral("2026-07-14"), QStringLiteral("--trap"), name});
        QCOMPARE(ran.exit, 0);
        QVERIFY(ran.out.startsWith(QStringLiteral("Slough corner · bertha 1, 2026\n")));
        QVERIFY(ran.out.contains(QStringLiteral("Monday 6 July")));
        QVERIFY(ran.out.contains(QStringLiteral("a night")));
        QVERIFY(ran.out.contains(QStringLiteral("moths so far")));
    }

    void theSeasonAsJsonAddsUp()
    {
        const Ran ran = run("season @demo --on 2026-07-14 --json");
        QCOMPARE(ran.exit, 0);
        const QJsonObject season = QJsonDocument::fromJson(ran.out.toUtf8()).object();
        QCOMPARE(season[QStringLiteral("season")].toInt(), 2026);
        const QJsonArray traps = season[QStringLiteral("traps")].toArray();
        QCOMPARE(traps.size(), 14);
        for (const auto& value : traps) {
            const QJsonObject trap = value.toObject();
            const QJsonArray visits = trap[QStringLiteral("visits")].toArray();
            int sum = 0;
            for (const auto& visit : visits) sum += visit.toObject()[QStringLiteral("moths")].toInt();
            const int named = trap[QStringLiteral("moths")].toInt() - sum;
            QVERIFY2(named >= 0 && named < 10, "a sample adds a few moths at most");
            QVERIFY(trap[QStringLiteral("band")].isNull());
        }
        const Ran one = run({QStringLiteral("season"), QStringLiteral("@demo"), QStringLiteral("--on"),
            QStringLiteral("2026-07-14"), QStringLiteral("--json"), QStringLiteral("--trap"),
            QStringLiteral("bertha 1")});
        QCOMPARE(QJsonDocument::fromJson(one.out.toUtf8())[QStringLiteral("traps")].toArray().size(), 1);
    }

    void whatIsDueComesWithItsReasons()
    {
        const Ran ran = run("due @demo --on 2026-07-14");
        QCOMPARE(ran.exit, 0);
        QVERIFY(ran.out.startsWith(QStringLiteral("Tuesday 14 July 2026\n")));
        QVERIFY(ran.out.contains(QStringLiteral("Slough corner · bertha 1")));
        QVERIFY(ran.out.contains(QStringLiteral("count due, 8 nights")));
        QVERIFY(ran.out.contains(QStringLiteral("count overdue, 15 nights")));
        QVERIFY(ran.out.contains(QStringLiteral("Report by")));
    }

    void theExportHoldsEveryRecordAndOverwritesNothing()
    {
        const Ran ran = run("export @demo --as csv @tables --on 2026-07-14");
        QCOMPARE(ran.exit, 0);
        const auto lines = [&](const char* name) {
            return QString::fromUtf8(bytesOf(QStringLiteral("tables/") + QString::fromUtf8(name)))
                .split(QStringLiteral("\r\n"), Qt::SkipEmptyParts);
        };
        QCOMPARE(lines("traps.csv").size(), 1 + 28);
        QCOMPARE(lines("season-totals.csv").size(), 1 + 28);
        QCOMPARE(lines("seasons.csv").size(), 1 + 2);
        QVERIFY(lines("visits.csv").size() > 100);
        QVERIFY(lines("traps.csv").front().startsWith(QStringLiteral("id,withdrawn,site,")));
        QVERIFY(lines("traps.csv").front().contains(QStringLiteral(",entrance_mm,")));
        for (const QString& name : ran.out.split(u'\n', Qt::SkipEmptyParts)) QVERIFY(QFile::exists(name));
        const QByteArray before = bytesOf(QStringLiteral("tables/traps.csv"));
        writeFile("tables/visits.csv", "mine");
        const Ran again = run("export @demo --as csv @tables --on 2026-07-14");
        QVERIFY(isRefusal(again));
        QCOMPARE(bytesOf(QStringLiteral("tables/traps.csv")), before);
        QCOMPARE(bytesOf(QStringLiteral("tables/visits.csv")), QByteArray("mine"));
    }

    // The desk's own export in open forms: as many traps as the tables have, readable by programs that are
    // not ours.
    void exportedForMaps()
    {
        QCOMPARE(run("export @demo @map --as geojson --on 2026-07-14").exit, 0);
        const QJsonArray features = QJsonDocument::fromJson(bytesOf(QStringLiteral("map/traps.geojson")))
                                        .object()[QStringLiteral("features")]
                                        .toArray();
        QCOMPARE(run("export @demo @tables2 --as csv --on 2026-07-14").exit, 0);
        const QByteArray traps = bytesOf(QStringLiteral("tables2/traps.csv"));
        QCOMPARE(features.size(), traps.count("\r\n") - 1);
        const auto started = [this](const QString& program, const QStringList& line) {
            QProcess process;
            process.start(program, line);
            return process.waitForFinished() && process.exitCode() == 0
                ? QString::fromUtf8(process.readAllStandardOutput())
                : QString::fromUtf8(process.readAllStandardError());
        };
        const QString read = started(QStringLiteral("ogrinfo"),
            {QStringLiteral("-al"), QStringLiteral("-so"), path(QStringLiteral("map/traps.geojson"))});
        QVERIFY2(read.contains(QStringLiteral("Feature Count: %1").arg(features.size())), qPrintable(read));
        QVERIFY2(read.contains(QStringLiteral("Geometry: Point")), qPrintable(read));

        QCOMPARE(run("export @demo @way --as gpx --on 2026-07-14").exit, 0);
        const QString points = started(QStringLiteral("ogrinfo"),
            {QStringLiteral("-so"), path(QStringLiteral("way/traps.gpx")), QStringLiteral("waypoints")});
        QVERIFY2(
            points.contains(QStringLiteral("Feature Count: %1").arg(features.size())), qPrintable(points));

        QCOMPARE(run("export @demo @archive --as dwca --on 2026-07-14").exit, 0);
        QCOMPARE(started(QStringLiteral("unzip"),
                     {QStringLiteral("-q"), path(QStringLiteral("archive/catches-dwca.zip")),
                         QStringLiteral("-d"), path(QStringLiteral("archive/in"))}),
            QString());
        const QByteArray events = bytesOf(QStringLiteral("archive/in/event.csv"));
        const QByteArray occurrences = bytesOf(QStringLiteral("archive/in/occurrence.csv"));
        QVERIFY(events.count("\r\n") > features.size());
        QCOMPARE(events.count("\r\n"), occurrences.count("\r\n"));
        QVERIFY(occurrences.contains(",detected,") && occurrences.contains(",notDetected,0"));
        // Every column of both tables has its term.
        const QByteArray meta = bytesOf(QStringLiteral("archive/in/meta.xml"));
        for (const QByteArray& table : {events, occurrences})
            for (const QByteArray& column : table.left(table.indexOf("\r\n")).split(',').mid(1))
                QVERIFY2(meta.contains("dwc/terms/" + column + '"'), column.constData());
    }

    void aStoreThatAProgramHasOpenCanBeLookedInto()
    {
        duskrow::store::OpenHow how;
        how.keyFolder = path(QStringLiteral("data/duskrow/keys")).toStdString();
        const auto open = duskrow::store::Store::open(path(QStringLiteral("demo")).toStdString(), how);
        QVERIFY(open.has_value());
        QCOMPARE(run("season @demo --on 2026-07-14").exit, 0);
        QCOMPARE(run("due @demo --on 2026-07-14").exit, 0);
        QCOMPARE(run("check @demo").exit, 0);
    }

    void checkTellsASoundStoreFromOneThatIsNot()
    {
        const Ran sound = run("check @demo");
        QCOMPARE(sound.exit, 0);
        QVERIFY(sound.out.contains(QStringLiteral("is sound")));

        QCOMPARE(run("demo @tampered --traps 2 --seasons 1").exit, 0);
        {
            SQLite::Database database(path(QStringLiteral("tampered")).toStdString(), SQLite::OPEN_READWRITE);
            database.exec("UPDATE now_visit SET pest = pest + 1 WHERE pest IS NOT NULL");
        }
        const Ran unequal = run("check @tampered");
        QCOMPARE(unequal.exit, 1);
        QVERIFY(unequal.out.contains(QStringLiteral("The tables differ from what the log comes to.")));
        {
            SQLite::Database database(path(QStringLiteral("tampered")).toStdString(), SQLite::OPEN_READWRITE);
            database.exec("DELETE FROM change WHERE seq = 5");
            database.exec("UPDATE change SET body = '{' WHERE seq = 7");
        }
        const Ran gap = run("check @tampered");
        QCOMPARE(gap.exit, 1);
        QVERIFY(gap.out.contains(QStringLiteral("Changes missing from the log: 1.")));
        QVERIFY(gap.out.contains(QStringLiteral("Changes in the log that cannot be read: 1 of")));
    }

    void aStoreFromANewerVersionIsLeftAsItIs()
    {
        QCOMPARE(run("demo @newer --traps 1 --seasons 1").exit, 0);
        {
            SQLite::Database database(path(QStringLiteral("newer")).toStdString(), SQLite::OPEN_READWRITE);
            database.exec("PRAGMA user_version = 99");
            database.exec("PRAGMA wal_checkpoint(TRUNCATE)");
        }
        const QByteArray before = bytesOf(QStringLiteral("newer"));
        for (const char* line :
            {"season @newer", "due @newer", "check @newer", "export @newer --as csv @new"}) {
            const Ran ran = run(line);
            QVERIFY2(isRefusal(ran), qPrintable(ran.out + ran.err));
            QVERIFY(ran.err.contains(QStringLiteral("was written by a newer version of Duskrow")));
        }
        QCOMPARE(bytesOf(QStringLiteral("newer")), before);
    }

    void whatCannotBePrintedIsNotPassedOver()
    {
        if (!QFile::exists(QStringLiteral("/dev/full"))) QSKIP("this system has no /dev/full");
        QProcess process;
        process.setStandardOutputFile(QStringLiteral("/dev/full"));
        process.start(QStringLiteral(DUSKROW_TOOL),
            {QStringLiteral("band"), QStringLiteral("bertha-armyworm"), QStringLiteral("3")});
        QVERIFY(process.waitForFinished());
        QCOMPARE(process.exitCode(), 2);
    }
};

QTEST_GUILESS_MAIN(ProgramTest)
#include "program_test.moc"
