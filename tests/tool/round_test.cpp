// SPDX-License-Identifier: MIT
#include <QJsonArray>
#include <QXmlStreamReader>

#include <cmath>

#include "tool/tool_program.h"

using duskrow::tests::Ran;

namespace {

QStringList namesOf(const Ran& ran)
{
    QStringList names;
    for (const auto& stop : ran.json()[QStringLiteral("stops")].toArray())
        names << stop.toObject()[QStringLiteral("name")].toString();
    return names;
}

} // namespace

// Runs the real program, as a person would.
class RoundCommandTest : public QObject, private duskrow::tests::ToolProgram {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        QCOMPARE(run("demo @demo --traps 14 --seasons 1 --today 2026-07-14").exit, 0);
        // Along a road to the east, told out of order.
        writeFile("road.csv",
            "name,lat,lon\nthird,52.1,-106.4\nfirst,52.1,-106.55\n\"second, \"\"by the "
            "elevator\"\"\",52.1,-106.5\n");
        writeFile("infested.csv",
            "\xef\xbb\xbf"
            "Name,crop,Longitude,Latitude,Infested\r\nNear,canola,-106.59,52.1,yes\r\nÉtang,canola,-106.5,52."
            "1,no\r\n"
            "ᓀᐦᐃᔭᐍᐏᐣ,canola,-106.4,52.1,\r\n");
        writeFile("semicolons.csv", "name;lat;lon\nfar;52,1;-106,4\nnear;52,1;-106,5\n");
        writeFile("nowhere.csv", "name,lat,lon\nA,fifty,-106\n");
        writeFile("far.csv", "name,lat,lon\nA,52,-106\n\nB,95,-106\n");
        writeFile("no_lat.csv", "name,lon\nA,-106\n");
        writeFile("short.csv", "name,lat,lon\nA,52\n");
        writeFile("open.csv", "name,lat,lon\n\"A,52,-106\n");
        writeFile("maybe.csv", "name,lat,lon,infested\nA,52,-106,perhaps\n");
        writeFile("none.csv", "name,lat,lon\n");
        writeFile("empty.csv", "");
        writeFile("text", "mine");
    }

    void stopsOfATableComeInAShortOrder()
    {
        const Ran ran = run("round --csv @road.csv --from 52.1,-106.6 --json");
        QCOMPARE(ran.exit, 0);
        const QStringList expected{
            QStringLiteral("first"), QStringLiteral("second, \"by the elevator\""), QStringLiteral("third")};
        QCOMPARE(namesOf(ran), expected);
        const QJsonObject json = ran.json();
        QCOMPARE(json[QStringLiteral("kind")].toString(), QStringLiteral("order_suggestion"));
        QVERIFY(json[QStringLiteral("is_shortest")].toBool());
        double sum = 0.0;
        for (const auto& value : json[QStringLiteral("stops")].toArray()) {
            const QJsonObject stop = value.toObject();
            sum += stop[QStringLiteral("distance_m")].toDouble();
            QVERIFY(std::abs(stop[QStringLiteral("bearing_deg")].toDouble() - 90.0) < 0.2);
        }
        QVERIFY(std::abs(sum - json[QStringLiteral("length_m")].toDouble()) < 1e-6);
        // 0.2 degrees of longitude at 52.1 north: 0.2 x 68.5 km.
        QVERIFY(std::abs(sum - 13'704.0) < 10.0);
        QCOMPARE(json[QStringLiteral("stops")].toArray()[0].toObject()[QStringLiteral("geo_uri")].toString(),
            QStringLiteral("geo:52.1,-106.55"));
    }

    void aTableOfASpreadsheetWithDecimalCommas()
    {
        const Ran ran = run("round --csv @semicolons.csv --from 52,1,-106,6 --json");
        QCOMPARE(ran.exit, 0);
        QCOMPARE(namesOf(ran), (QStringList{QStringLiteral("near"), QStringLiteral("far")}));
    }

    void infestedFieldsComeLastUnlessToldOtherwise()
    {
        const Ran last = run("round --csv @infested.csv --from 52.1,-106.6 --json");
        QCOMPARE(last.exit, 0);
        QCOMPARE(namesOf(last).last(), QStringLiteral("Near"));
        const Ran any = run("round --csv @infested.csv --from 52.1,-106.6 --infested any --json");
        QCOMPARE(namesOf(any).first(), QStringLiteral("Near"));
        const Ran plain = run("round --csv @infested.csv --from 52.1,-106.6");
        QVERIFY(plain.out.contains(QStringLiteral("Clean boots and wheels")));
        QVERIFY(plain.out.contains(QString::fromUtf8("ᓀᐦᐃᔭᐍᐏᐣ")));
    }

    void theGridIsLongerAndTheWayBackToo()
    {
        const auto length = [&](const char* more) {
            return run(QStringLiteral("round --csv @infested.csv --from 52.2,-106.6 --json ")
                + QString::fromUtf8(more))
                .json()[QStringLiteral("length_m")]
                .toDouble();
        };
        const double straight = length("");
        QVERIFY(straight > 0.0);
        QVERIFY(length("--metric grid") > straight * 1.02);
        QVERIFY(length("--back") > straight * 1.2);
        QCOMPARE(length("--metric straight"), straight);
    }

    void whatIsDueInAStoreIsARound()
    {
        const Ran due = run("due @demo --on 2026-07-14");
        const Ran plain = run("round @demo --from 52.1,-106.6 --on 2026-07-14");
        QCOMPARE(plain.exit, 0);
        QVERIFY(plain.out.startsWith(QStringLiteral("A suggestion: ")));
        QVERIFY(plain.out.contains(QStringLiteral("Slough corner · bertha 1")));
        QVERIFY(plain.out.contains(QStringLiteral("count due, 8 nights")));
        QVERIFY(plain.out.contains(QStringLiteral("Alone in the heat: tell someone where you are.")));
        const Ran json = run("round @demo --from 52.1,-106.6 --on 2026-07-14 --json");
        QVERIFY(namesOf(json).size() >= 3);
        for (const QString& name : namesOf(json)) QVERIFY2(due.out.contains(name), qPrintable(name));
    }

    void theOrderGoesToAReceiver()
    {
        const Ran ran = run("round --csv @infested.csv --from 52.1,-106.6 --gpx @round.gpx --json");
        QCOMPARE(ran.exit, 0);
        QXmlStreamReader reader(bytesOf(QStringLiteral("round.gpx")));
        QStringList route;
        bool isInRoute = false;
        while (!reader.atEnd()) {
            if (reader.readNext() != QXmlStreamReader::StartElement) continue;
            if (reader.name() == QStringLiteral("rtept")) isInRoute = true;
            if (isInRoute && reader.name() == QStringLiteral("name")) route << reader.readElementText();
        }
        QVERIFY2(!reader.hasError(), qPrintable(reader.errorString()));
        QCOMPARE(route, namesOf(ran));
        const Ran again = run("round --csv @infested.csv --from 52.1,-106.6 --gpx @text");
        QCOMPARE(again.exit, 2);
        QCOMPARE(bytesOf(QStringLiteral("text")), QByteArray("mine"));
    }

    void nothingToDoIsSaid()
    {
        const Ran ran = run("round --csv @none.csv --from 52.1,-106.6");
        QCOMPARE(ran.exit, 0);
        QCOMPARE(ran.out, QStringLiteral("There is no stop to make.\n"));
    }

    void badInputIsRefusedInOneSentence_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("said");
        const auto row = [](const char* claim, const char* line, const char* said) {
            QTest::newRow(claim) << QString::fromUtf8(line) << QString::fromUtf8(said);
        };
        row("no stops named", "--from 52.1,-106.6", "See duskrow-tool round --help.");
        row("two sources of stops", "@demo --csv @road.csv --from 52.1,-106.6",
            "See duskrow-tool round --help.");
        row("nowhere to begin", "--csv @road.csv", "See duskrow-tool round --help.");
        row("half a place", "--csv @road.csv --from 52.1", "“52.1” is not a place");
        row("letters for a place", "--csv @road.csv --from here,there", "“here” is not a place");
        row("a place off the globe", "--csv @road.csv --from 95,10", "The latitude must be from -90 to 90");
        row("an unknown metric", "--csv @road.csv --from 52.1,-106.6 --metric crow",
            "cannot be “crow”. Choose one of: straight, grid.");
        row("an unknown rule for infested fields", "--csv @road.csv --from 52.1,-106.6 --infested first",
            "cannot be “first”");
        row("no such table", "--csv @gone.csv --from 52.1,-106.6", "cannot be read");
        row("no such store", "@gone --from 52.1,-106.6", "There is no store at");
        row("not a store", "@text --from 52.1,-106.6", "is not a Duskrow store");
        row("a table without latitudes", "--csv @no_lat.csv --from 52.1,-106.6", "no column “lat”");
        row("an empty table", "--csv @empty.csv --from 52.1,-106.6", "no column “name”");
        row("letters in a table", "--csv @nowhere.csv --from 52.1,-106.6", "In row 2 of ");
        row("which letters", "--csv @nowhere.csv --from 52.1,-106.6", "“fifty, -106” is not a place. Write");
        row("off the globe in a table", "--csv @far.csv --from 52.1,-106.6", "“95, -106” is not a place");
        row("and where it stands", "--csv @far.csv --from 52.1,-106.6", "In row 4 of ");
        row("a row cut short", "--csv @short.csv --from 52.1,-106.6", "Line 2 of the table cannot be read");
        row("an open quote", "--csv @open.csv --from 52.1,-106.6", "Line 2 of the table cannot be read");
        row("perhaps infested", "--csv @maybe.csv --from 52.1,-106.6",
            "“perhaps” does not say whether the field is infested. Write yes or no.");
        row("a bad day", "@demo --from 52.1,-106.6 --on today", "is not a day of the calendar");
        row("a folder that is not there", "--csv @road.csv --from 52.1,-106.6 --gpx @gone/round.gpx",
            "cannot be written");
    }

    void badInputIsRefusedInOneSentence()
    {
        QFETCH(QString, line);
        QFETCH(QString, said);
        const Ran ran = run(QStringLiteral("round ") + line);
        QCOMPARE(ran.exit, 2);
        QVERIFY(ran.out.isEmpty());
        QVERIFY2(ran.err.contains(said), qPrintable(ran.err));
        QVERIFY(ran.err.endsWith(QStringLiteral(".\n")) && ran.err.count(u'\n') == 1);
    }
};

QTEST_GUILESS_MAIN(RoundCommandTest)
#include "round_test.moc"
