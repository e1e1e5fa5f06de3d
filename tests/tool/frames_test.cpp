// SPDX-License-Identifier: MIT
#include <QJsonArray>

#include <cmath>

#include "tool/tool_program.h"

using duskrow::tests::Ran;

namespace {

bool isNear(const QJsonValue& value, double expected, double most)
{
    return value.isDouble() && std::abs(value.toDouble() - expected) <= most;
}

} // namespace

// Runs the real program on the frames of a scouting walk.
class FramesTest : public QObject, private duskrow::tests::ToolProgram {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        writeFile("plain.csv", "4\n9\n2\n15\n0\n6\n3\n8\n1\n7\n");
        writeFile("named.csv",
            "\xef\xbb\xbf"
            "place,Larvae\r\nnorth,4\r\n\"the, slough\",9\r\n");
        writeFile("stops.csv", "larvae,frames\n4,1\n9,2\n\n2,1\n15,2\n0,1\n7,\n");
        writeFile("frames_of_stops.csv",
            "frame,stop,larvae\n1,1,4\n2,2,5\n3,2,4\n4,3,2\n5,4,15\n6,4,0\n7,5,0\n8,,7\n");
        writeFile("torn_stops.csv", "larvae,stop,frames\n5,2,1\n4,1,\n15,4,2\n2,3,\n4,2,\n0,5,\n7,6,\n");
        writeFile("named_stop.csv", "larvae,stop\n4,1\n9,gate\n");
        writeFile("stop_of_nothing.csv", "larvae,stop\n4,0\n");
        writeFile("semicolons.csv", "place;larvae;m\r\nnorth;4;0,5\r\nsouth;9;\r\n;;\r\n");
        writeFile("numbered.csv", ",larvae\n0,4\n1,9\n");
        writeFile("semicolon_row.csv", "4;9;2;15\n");
        writeFile("quote.csv", "larvae\n4\n\"9\n");
        writeFile("empty.csv", "");
        writeFile("head.csv", "larvae,frames\n\n");
        writeFile("letters.csv", "larvae\n4\n\nmany\n");
        writeFile("negative.csv", "4\n-2\n");
        writeFile("half.csv", "larvae\n2.5\n");
        writeFile("gap.csv", "larvae,frames\n,2\n");
        writeFile("noframe.csv", "larvae,frames\n3,0\n");
        writeFile("row.csv", "4,9,2,15\n");
        writeFile("moths.csv", "moths\n4\n");
    }

    void theWalkAsJson()
    {
        const Ran ran = run("frames --threshold 20 --json 4 9 2 15 0 6 3 8 1 7");
        QCOMPARE(ran.exit, 0);
        QVERIFY(ran.err.isEmpty());
        const QJsonObject walk = ran.json();
        QCOMPARE(walk[QStringLiteral("frames")].toInt(), 10);
        QCOMPARE(walk[QStringLiteral("larvae")].toInt(), 55);
        QCOMPARE(walk[QStringLiteral("mean_per_m2")].toDouble(), 22.0);
        // Computed with R 4.2.2: tests/golden/rules/nb_interval.csv.
        QVERIFY(isNear(walk[QStringLiteral("low_per_m2")], 4 * 3.2150933, 1e-5));
        QVERIFY(isNear(walk[QStringLiteral("high_per_m2")], 4 * 10.913731, 1e-5));
        QVERIFY(isNear(walk[QStringLiteral("probability_above")], 0.66566417, 1e-6));
        QCOMPARE(walk[QStringLiteral("below_up_to_larvae")].toInt(), 34);
        QCOMPARE(walk[QStringLiteral("above_from_larvae")].toInt(), 66);
        QCOMPARE(walk[QStringLiteral("standing")].toString(), QStringLiteral("range"));
        QCOMPARE(walk[QStringLiteral("stop")].toString(), QStringLiteral("go on"));
        QCOMPARE(walk[QStringLiteral("verdict")].toString(), QStringLiteral("too close to call"));
        QCOMPARE(run("frames --threshold 20 --json --csv @plain.csv").out, ran.out);
    }

    void stopAndVerdict_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("stop");
        QTest::addColumn<QString>("verdict");
        const auto row = [](const char* claim, const char* line, const char* stop, const char* verdict) {
            QTest::newRow(claim) << QString::fromUtf8(line) << QString::fromUtf8(stop)
                                 << QString::fromUtf8(verdict);
        };
        row("none in five", "--threshold 20 0 0 0 0 0", "below", "below");
        row("plenty in five", "--threshold 20 14 9 22 11 17", "above", "above");
        row("plenty in four", "--threshold 20 14 9 22 11", "go on", "too close to call");
        row("one full frame", "--threshold 20 0 0 0 0 90", "above", "too close to call");
        row("twenty near it", "--threshold 20 5 4 6 5 5 4 6 5 5 4 6 5 5 4 6 5 5 4 6 5", "undecided",
            "too close to call");
        row("too patchy to stop below", "--threshold 20 0 0 0 12 0 0 0 0 10 0 0", "go on",
            "too close to call");
        row("a comma for a point", "--threshold 7,5 14 9 22 11 17", "above", "above");
        row("a whole square metre", "--threshold 20 --frame-m2 1 14 9 22 11 17", "go on",
            "too close to call");
        row("a plan for even larvae stops sooner", "--threshold 20 --dispersion 5 7 7 6 7 7", "above",
            "above");
        row("without a threshold", "4 9 2", "", "");
    }

    void stopAndVerdict()
    {
        QFETCH(QString, line);
        QFETCH(QString, stop);
        QFETCH(QString, verdict);
        const Ran ran = run(QStringLiteral("frames --json ") + line);
        QCOMPARE(ran.exit, 0);
        QCOMPARE(ran.json()[QStringLiteral("stop")].toString(), stop);
        QCOMPARE(ran.json()[QStringLiteral("verdict")].toString(), verdict);
    }

    void whatIsNotKnownIsNull()
    {
        const QJsonObject two = run("frames --json 4 9").json();
        for (const char* key : {"low_per_m2", "high_per_m2", "upper_bound_per_m2", "probability_above",
                 "threshold_per_m2", "stop", "verdict"}) {
            QVERIFY2(two.contains(QString::fromUtf8(key)), key);
            QVERIFY2(two[QString::fromUtf8(key)].isNull(), key);
        }
        QCOMPARE(two[QStringLiteral("mean_per_m2")].toDouble(), 26.0);
        const QJsonObject none = run("frames --json 0 0 0 0 0 0 0 0 0 0").json();
        QVERIFY(isNear(none[QStringLiteral("upper_bound_per_m2")], 1.64, 0.01));
        QVERIFY(none[QStringLiteral("low_per_m2")].isNull());
    }

    void aFileOfStops()
    {
        const QJsonObject stops = run("frames --json --csv @stops.csv --threshold 20").json();
        QCOMPARE(stops[QStringLiteral("stops_made")].toInt(), 6);
        QCOMPARE(stops[QStringLiteral("frames")].toInt(), 8);
        QCOMPARE(stops[QStringLiteral("larvae")].toInt(), 37);
        QCOMPARE(stops[QStringLiteral("mean_per_m2")].toDouble(), 18.5);
        const QJsonObject named = run("frames --json --csv @named.csv").json();
        QCOMPARE(named[QStringLiteral("larvae")].toInt(), 13);
        QCOMPARE(run("frames --json --csv @semicolons.csv").out, run("frames --json 4 9").out);
        QCOMPARE(run("frames --json --csv @numbered.csv").out, run("frames --json 4 9").out);
    }

    // The same walk told by frames, each with the number of its stop, in any order.
    void framesOfOneStopAreOneUnit()
    {
        const QString stops = run("frames --json --csv @stops.csv --threshold 20").out;
        QCOMPARE(run("frames --json --csv @frames_of_stops.csv --threshold 20").out, stops);
        QCOMPARE(run("frames --json --csv @torn_stops.csv --threshold 20").out, stops);
    }

    void theWalkInSentences()
    {
        const Ran ran = run("frames --threshold 20 4 9 2 15 0 6 3 8 1 7");
        QCOMPARE(ran.exit, 0);
        for (const char* said : {"10 frames, 55 larvae: 22 larvae per m² (5.5 a frame).",
                 "between 13 and 44 larvae per m²", "more than 20 larvae per m² is about 67 %",
                 "Go on. After 11 frames stop at 39 larvae or fewer", "or at 71 larvae or more",
                 "Too close to call at your threshold of 20 larvae per m².",
                 "Of 100 fields a third below your threshold (13 larvae per m²), about 91 are called below, "
                 "4 are "
                 "called above and 5 stay open.",
                 "The threshold is guidance from published research on older varieties.", "Read the label"})
            QVERIFY2(ran.out.contains(QString::fromUtf8(said)), said);
        const Ran bare = run("frames 4 9 2 15 0 6 3 8 1 7");
        QCOMPARE(bare.exit, 0);
        QVERIFY(!bare.out.contains(QStringLiteral("threshold")));
        QVERIFY(run("frames 0 0 0 0").out.contains(QStringLiteral("None found")));
        QVERIFY(run("frames 7").out.contains(QStringLiteral("there is no range")));
        QVERIFY(run("frames --threshold 20 0 0 0 0 90").out.contains(QStringLiteral("too uneven to trust")));
    }

    // The exact values of tests/golden/rules/sprt_oc_asn.csv and sprt.csv.
    void thePlanAsJson()
    {
        const Ran ran = run("plan-frames --threshold 20 --dispersion 1 --json");
        QCOMPARE(ran.exit, 0);
        const QJsonObject plan = ran.json();
        QVERIFY(isNear(plan[QStringLiteral("above_intercept_larvae")], 15.4918034, 1e-6));
        QVERIFY(isNear(plan[QStringLiteral("below_intercept_larvae")], -15.4918034, 1e-6));
        QCOMPARE(plan[QStringLiteral("slope_larvae_per_frame")].toDouble(), 5.0);
        const QJsonArray lines = plan[QStringLiteral("lines")].toArray();
        QCOMPARE(lines.size(), 16);
        QCOMPARE(lines.first().toObject()[QStringLiteral("below_up_to_larvae")].toInt(), 9);
        QCOMPARE(lines.last().toObject()[QStringLiteral("above_from_larvae")].toInt(), 116);
        bool isFound = false;
        for (const auto& value : plan[QStringLiteral("operating_table")].toArray()) {
            const QJsonObject row = value.toObject();
            if (row[QStringLiteral("density_per_m2")].toDouble() != 20.0) continue;
            isFound = true;
            QVERIFY(isNear(row[QStringLiteral("probability_below")], 0.452, 0.0005));
            QVERIFY(isNear(row[QStringLiteral("probability_undecided")], 0.175, 0.0005));
            QVERIFY(isNear(row[QStringLiteral("probability_above")], 0.373, 0.0005));
            QVERIFY(isNear(row[QStringLiteral("mean_frames")], 11.5, 0.05));
        }
        QVERIFY(isFound);
    }

    void thePlanInSentences()
    {
        const Ran ran = run("plan-frames --threshold 20");
        QCOMPARE(ran.exit, 0);
        for (const char* said : {"count at least 5 frames, expect 10", "4 are called above and 5 stay open",
                 "nobody has published", "Read the label"})
            QVERIFY2(ran.out.contains(QString::fromUtf8(said)), said);
        QStringList rows = ran.out.split(u'\n');
        for (QString& row : rows) row = row.simplified();
        QVERIFY(rows.contains(QStringLiteral("10 34 66")));
        QVERIFY(rows.contains(QStringLiteral("20.0 45.2 17.5 37.3 11.5")));
    }

    void badInputIsRefusedInOneSentence_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("said");
        const auto row = [](const char* claim, const char* line, const char* said) {
            QTest::newRow(claim) << QString::fromUtf8(line) << QString::fromUtf8(said);
        };
        row("no count", "frames", "The number of larvae is empty");
        row("letters for a count", "frames 4 many", "“many” is not a number");
        row("half a larva", "frames 4 2.5", "“2.5” is not a whole number");
        row("a negative count", "frames 4 -5", "The number of larvae must be from 0");
        row("a count beyond counting", "frames 4 99999999999999999999",
            "The number of larvae must be from 0");
        row("no threshold", "frames --threshold 0 4 9", "The threshold must be from 1 to 400");
        row("a negative threshold", "frames --threshold -20 4 9", "The threshold must be from 1 to 400");
        row("an absurd threshold", "frames --threshold 5000 4 9", "The threshold must be from 1 to 400");
        row("letters for a threshold", "frames --threshold some 4 9", "“some” is not a number");
        row("nothing for a threshold", "frames --threshold nan 4 9", "“nan” is not a number");
        row("a frame of nothing", "frames --frame-m2 0 4 9", "The area of the frame must be from 0.01");
        row("a dispersion of nothing", "frames --dispersion 0 4 9", "The dispersion must be from 0.2");
        row("counts twice", "frames --csv @plain.csv 4", "See duskrow-tool frames --help.");
        row("no such file", "frames --csv @none.csv", "cannot be read");
        row("an empty file", "frames --csv @empty.csv", "holds no count");
        row("a head alone", "frames --csv @head.csv", "holds no count");
        row("letters in a row", "frames --csv @letters.csv", "In row 4 of ");
        row("a negative row", "frames --csv @negative.csv", "“-2” is not a count");
        row("half a larva in a row", "frames --csv @half.csv", "In row 2 of ");
        row("no larvae in a row", "frames --csv @gap.csv", "“,2” is not a count");
        row("a stop without a frame", "frames --csv @noframe.csv", "In row 2 of ");
        row("a stop with a name", "frames --csv @named_stop.csv",
            "“gate” is not the number of a stop. Number the stops from 1.");
        row("a stop before the first", "frames --csv @stop_of_nothing.csv", "In row 2 of ");
        row("all counts in one row", "frames --csv @row.csv", "In row 1 of ");
        row("all counts in one row, with semicolons", "frames --csv @semicolon_row.csv",
            "“4,9,2,15” is not a count. Write one whole number in each row");
        row("an open quote", "frames --csv @quote.csv", "Line 3 of the table cannot be read");
        row("a file of other things", "frames --csv @moths.csv", "has no column “larvae”");
        row("an unknown pest", "frames --pest purple-moth 4 9", "no protocol for “purple-moth”");
        row("plan: no threshold", "plan-frames", "See duskrow-tool plan-frames --help.");
        row("plan: threshold of zero", "plan-frames --threshold 0", "The threshold must be from 1 to 400");
        row("plan: larger frames", "plan-frames --threshold 101 --frame-m2 1", "must be from 1 to 100");
        row("plan: too patchy", "plan-frames --threshold 20 --dispersion 0.1",
            "The dispersion must be from 0.2");
        row("plan: letters", "plan-frames --threshold 20 --dispersion k", "“k” is not a number");
    }

    void badInputIsRefusedInOneSentence()
    {
        QFETCH(QString, line);
        QFETCH(QString, said);
        const Ran ran = run(line);
        QCOMPARE(ran.exit, 2);
        QVERIFY2(ran.out.isEmpty(), qPrintable(ran.out));
        QVERIFY2(ran.err.contains(said), qPrintable(ran.err));
        QVERIFY2(ran.err.endsWith(QStringLiteral(".\n")) && ran.err.count(u'\n') == 1, qPrintable(ran.err));
    }
};

QTEST_GUILESS_MAIN(FramesTest)
#include "frames_test.moc"
