// SPDX-License-Identifier: MIT
#include <QJsonArray>

#include <csignal>

#include "store/store.h"
#include "tool/tool_program.h"

using duskrow::tests::Ran;

namespace {

QByteArray table(int rows)
{
    QByteArray bytes = "District,Site,Trap,Date,Count,Observer\n";
    for (int i = 0; i < rows; ++i)
        bytes += QStringLiteral("North,Site %1,1,2019-%2-%3,%4,Zoé\n")
                     .arg(i / 50)
                     .arg(5 + i % 50 / 25, 2, 10, QChar(u'0'))
                     .arg(1 + i % 25, 2, 10, QChar(u'0'))
                     .arg(i % 90)
                     .toUtf8();
    return bytes;
}

int makes(const QJsonObject& json, const char* kind)
{
    return json[QStringLiteral("makes")].toObject()[QLatin1String(kind)].toInt();
}

} // namespace

// Runs the real program over a programme that was just begun.
class ImportCommandTest : public QObject, private duskrow::tests::ToolProgram {
    Q_OBJECT

    [[nodiscard]] qint64 changes() const
    {
        const auto reader = duskrow::store::openForReading(path(QStringLiteral("valley")).toStdString());
        return reader ? *(*reader)->countOfChanges() : -1;
    }

private Q_SLOTS:
    void init()
    {
        for (const char* part : {"", "-wal", "-shm", ".lock"})
            QFile::remove(path(QStringLiteral("valley") + QLatin1String(part)));
        const Ran made = run("programme new @valley --name Valley --me Ida");
        QVERIFY2(made.exit == 0, qPrintable(made.err));
    }

    void thePreviewSaysEverythingAndADryRunKeepsNothing()
    {
        writeFile("a.csv", "Lieu;Date;Compte;Phone\nÉtang;13.06.2019;4;1\n");
        const qint64 before = changes();
        const Ran ran = run("import @valley @a.csv --pest bertha-armyworm --dry-run");
        QVERIFY2(ran.exit == 0, qPrintable(ran.err));
        for (const char* said : {"Encoding: UTF-8, because every letter can be read so.",
                 "Delimiter: Semicolon, because it makes 4 columns in 2 of the first 2 lines.",
                 "Day or month first: Day first, because “13.06.2019” can be read no other way.",
                 "Phone   kept out", "Lieu    the site", "season: 1", "visit: 1", "New sites: Étang",
                 "Rows refused: 0", "Nothing was kept."})
            QVERIFY2(
                ran.out.contains(QString::fromUtf8(said)), qPrintable(QString::fromUtf8(said) + ran.out));
        QCOMPARE(changes(), before);
    }

    void oneColumnForEachDay()
    {
        writeFile("w.csv", "Site,8-Jun,15-Jun\na,3,4\nb,,0\n");
        const Ran ran = run("import @valley @w.csv --pest bertha-armyworm --year 2019");
        QVERIFY2(ran.exit == 0, qPrintable(ran.err));
        QVERIFY2(ran.out.contains(QStringLiteral("its name is the day")), qPrintable(ran.out));
        QVERIFY(ran.out.contains(QStringLiteral("visit: 3")));
    }

    // A season of one trap, 690 moths in all, as the table gives it; and what is left of it where the trap
    // was not emptied, or nobody knows.
    void countsOfPastYearsAddUp_data()
    {
        QTest::addColumn<QByteArray>("heading");
        QTest::addColumn<QByteArray>("cell");
        QTest::addColumn<QString>("choice");
        QTest::addColumn<QString>("said");
        const auto row = [](const char* claim, const char* heading, const char* cell, const char* choice,
                             const char* said) {
            QTest::newRow(claim) << QByteArray(heading) << QByteArray(cell) << QString::fromLatin1(choice)
                                 << QString::fromLatin1(said);
        };
        row("emptied at each count, as protocols ask", "", "", "", "690 moths");
        row("so said", "", "", " --emptied yes", "690 moths");
        row("a column says so", ",Emptied", ",Oui", " --emptied no", "690 moths");
        row("nobody knows: the highest stands", "", "", " --emptied unsaid", "300 moths");
    }

    void countsOfPastYearsAddUp()
    {
        QFETCH(QByteArray, heading);
        QFETCH(QByteArray, cell);
        QFETCH(QString, choice);
        QFETCH(QString, said);
        QByteArray bytes = "Site,Trap,Set up,Date,Count" + heading + "\n";
        int day = 14;
        for (const int moths : {10, 20, 200, 300, 100, 50, 10}) {
            bytes += QStringLiteral("Slough,P1,2011-06-07,2011-%1-%2,%3")
                         .arg(day > 30 ? 7 : 6, 2, 10, QChar(u'0'))
                         .arg(day > 30 ? day - 30 : day, 2, 10, QChar(u'0'))
                         .arg(moths)
                         .toUtf8()
                + cell + "\n";
            day += 7;
        }
        writeFile("p.csv", bytes);
        const Ran ran = run(QStringLiteral("import @valley @p.csv --pest bertha-armyworm") + choice);
        QVERIFY2(ran.exit == 0, qPrintable(ran.err));
        QVERIFY2(ran.out.contains(QStringLiteral("Traps emptied at each count: ")), qPrintable(ran.out));
        const Ran season = run("season @valley --year 2011 --trap P1 --on 2011-08-20");
        QVERIFY2(season.out.contains(said), qPrintable(season.out));
    }

    void twiceIsOnceAndOneUndoTakesItBack()
    {
        writeFile("b.csv", table(200));
        const Ran first = run("import @valley @b.csv --pest bertha-armyworm --json");
        QVERIFY2(first.exit == 0, qPrintable(first.err));
        QCOMPARE(makes(first.json(), "visit"), 200);
        QCOMPARE(makes(first.json(), "trap"), 4);
        const qint64 after = changes();
        const Ran second = run("import @valley @b.csv --json"); // the pest is in use now
        QCOMPARE(second.exit, 0);
        QCOMPARE(second.json()[QStringLiteral("already_there")].toInt(), 200);
        QCOMPARE(changes(), after);
        const Ran list = run("import @valley --list");
        QCOMPARE(list.exit, 0);
        QVERIFY2(list.out.trimmed().endsWith(QStringLiteral("  b.csv")) && list.out.count(u'\n') == 1,
            qPrintable(list.out));
        const auto listed = QJsonDocument::fromJson(run("import @valley --list --json").out.toUtf8()).array();
        QCOMPARE(listed.size(), 1);
        QCOMPARE(listed[0].toObject()[QStringLiteral("import")].toString(), list.out.section(u' ', 0, 0));
        const Ran dry = run("import @valley --undo b.csv --dry-run");
        QVERIFY(dry.out.contains(QStringLiteral("visit: 200")));
        QCOMPARE(changes(), after);
        const Ran undone = run("import @valley --undo b.csv --json");
        QVERIFY2(undone.exit == 0, qPrintable(undone.err));
        QCOMPARE(undone.json()[QStringLiteral("staying")].toArray().size(), 0);
        QVERIFY(run("season @valley").out.contains(QStringLiteral("Site")) == false);
        QCOMPARE(run("check @valley").exit, 0);
    }

    void refusedRowsAreNamedAndTheRestIsMade()
    {
        writeFile("c.csv", "site,date,count\na,2019-06-08,4\nb,2019-06-08,\n<b>c</b>,2019-06-08,=1+1\n");
        const Ran ran = run("import @valley @c.csv --pest bertha-armyworm");
        QCOMPARE(ran.exit, 1);
        QVERIFY2(ran.out.contains(QStringLiteral("Line 3, column “count”: The count of the pest is empty.")),
            qPrintable(ran.out));
        QVERIFY(ran.out.contains(QStringLiteral("Line 4, column “count”: “=1+1” is not a number.")));
        QVERIFY(ran.out.contains(QStringLiteral("Rows refused: 2")));
    }

    void nothingOfAFileReachesTheTerminalAsACommand()
    {
        writeFile("d.csv", "site,date,count,\x1B]0;x\x07\na,2019-06-08,\x1B[2J\n");
        const Ran ran = run("import @valley @d.csv --pest bertha-armyworm");
        QCOMPARE(ran.exit, 1);
        QVERIFY(!ran.out.contains(QChar(0x1B)) && !ran.out.contains(QChar(0x07)));
    }

    void anOpenOrderOfDayAndMonthStopsAll()
    {
        writeFile("e.csv", "site,date,count\na,03/04/2019,4\nb,2019-06-08,5\n");
        const qint64 before = changes();
        const Ran open = run("import @valley @e.csv --pest bertha-armyworm");
        QCOMPARE(open.exit, 2);
        QVERIFY(open.err.contains(QStringLiteral("Say which comes first.")));
        QCOMPARE(changes(), before);
        const Ran said = run("import @valley @e.csv --pest bertha-armyworm --date-order month --json");
        QCOMPARE(said.exit, 0);
        QCOMPARE(makes(said.json(), "visit"), 2);
    }

    // Killed in the middle: the same again adds only what is missing.
    void aKillInTheMiddle()
    {
        writeFile("f.csv", table(20'000));
        QProcess process;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("HOME"), path({}));
        environment.insert(QStringLiteral("XDG_DATA_HOME"), path(QStringLiteral("data")));
        process.setProcessEnvironment(environment);
        process.start(QStringLiteral(DUSKROW_TOOL),
            {QStringLiteral("import"), path(QStringLiteral("valley")), path(QStringLiteral("f.csv")),
                QStringLiteral("--pest"), QStringLiteral("bertha-armyworm")});
        process.setReadChannel(QProcess::StandardError);
        QByteArray told;
        while (!told.contains(" kept") && process.waitForReadyRead(60'000))
            told += process.readAllStandardError();
        QVERIFY2(told.contains(" kept"), told.constData());
        process.kill();
        process.waitForFinished();
        const Ran rest = run("import @valley @f.csv --json");
        QVERIFY2(rest.exit == 0, qPrintable(rest.err));
        const int there = rest.json()[QStringLiteral("already_there")].toInt();
        QVERIFY(there > 0 && there < 20'000);
        QCOMPARE(makes(rest.json(), "visit"), 20'000 - there);
        QCOMPARE(run("import @valley @f.csv --json").json()[QStringLiteral("already_there")].toInt(), 20'000);
        QCOMPARE(run("check @valley").exit, 0);
    }

    void badInputIsRefusedInOneSentence_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("said");
        const auto row = [](const char* line, const char* said) {
            QTest::newRow(line) << QString::fromUtf8(line) << QString::fromUtf8(said);
        };
        row("import @none @g.csv", "There is no store at");
        row("import @valley", "The file is empty");
        row("import @valley @none.csv", "cannot be read");
        row("import @valley @g.csv", "The pest is empty");
        row("import @valley @g.csv --pest purple-moth", "no protocol for “purple-moth”");
        row("import @valley @g.csv --pest bertha-armyworm --trap-type none", "cannot be “none”");
        row("import @valley @g.csv --date-order year", "cannot be “year”");
        row("import @valley @g.csv --delimiter dot", "cannot be “dot”");
        row("import @valley @g.csv --decimal dot", "cannot be “dot”");
        row("import @valley @g.csv --encoding ebcdic", "cannot be “ebcdic”");
        row("import @valley @g.csv --year last", "“last” is not a number");
        row("import @valley @g.csv --emptied maybe", "cannot be “maybe”. Choose one of: yes, no, unsaid.");
        row("import @valley @n.csv --pest bertha-armyworm --map 1=site --map 2=day --map 3=count",
            "is no line of names: “2019-06-08” stands there");
        row("import @valley @g.csv --map site", "cannot be “site”");
        row("import @valley @g.csv --map count=moth", "pest, not_it, bees, entrance_mm, canopy_mm, emptied");
        row("import @valley @g.csv --map sight=site", "no column “sight”");
        row("import @valley --undo g.csv", "Nothing of an import called “g.csv” stands here");
    }

    void badInputIsRefusedInOneSentence()
    {
        QFETCH(QString, line);
        QFETCH(QString, said);
        writeFile("g.csv", "site,date,count\na,2019-06-08,4\n");
        writeFile("n.csv", "a,2019-06-08,4\na,2019-06-15,9\n");
        const Ran ran = run(line);
        QCOMPARE(ran.exit, 2);
        QVERIFY2(ran.out.isEmpty(), qPrintable(ran.out));
        QVERIFY2(ran.err.contains(said) && ran.err.count(u'\n') == 1, qPrintable(ran.err));
    }
};

QTEST_GUILESS_MAIN(ImportCommandTest)
#include "import_test.moc"
