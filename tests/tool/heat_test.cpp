// SPDX-License-Identifier: MIT
#include <QJsonArray>

#include "tool/tool_program.h"

using duskrow::tests::Ran;

// Runs the real program over files of temperatures and over the demo.
class HeatCommandsTest : public QObject, private duskrow::tests::ToolProgram {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        const Ran made = run("demo @store.db --seed 7");
        QVERIFY2(made.exit == 0, qPrintable(made.err));
        QByteArray days("date,tmin (C),tmax (C)\n");
        for (int year = 2024; year <= 2026; ++year)
            for (QDate day(year, 4, 1); day <= (year == 2026 ? QDate(2026, 7, 10) : QDate(year, 9, 30));
                 day = day.addDays(1))
                days += day.toString(Qt::ISODate).toUtf8() + ',' + QByteArray::number(year - 2014) + ','
                    + QByteArray::number(year - 2002) + '\n';
        writeFile("weather.csv", days);
    }

    void theSumOfAFile()
    {
        writeFile("days.csv", "date,tmin,tmax\n2026-06-01,3,15\n2026-06-02,5,20\n2026-06-04,10,25\n");
        const Ran ran = run("degree-days @days.csv --method single-sine --lower 7 --json");
        QCOMPARE(ran.exit, 0);
        const QJsonObject json = ran.json();
        const QJsonArray rows = json[QStringLiteral("rows")].toArray();
        QCOMPARE(rows.size(), 4);
        QVERIFY(std::abs(rows[0].toObject()[QStringLiteral("degree_days")].toDouble() - 3.016980) < 1e-6);
        QVERIFY(std::abs(rows[1].toObject()[QStringLiteral("degree_days")].toDouble() - 5.814269) < 1e-6);
        QVERIFY(rows[2].toObject()[QStringLiteral("interpolated")].toBool());
        // Between 5 to 20 and 10 to 25 lies 7.5 to 22.5, wholly above 7: 8 degree-days.
        QVERIFY(std::abs(json[QStringLiteral("total")].toDouble() - (3.016980 + 5.814269 + 8 + 10.5)) < 2e-6);
        QCOMPARE(json[QStringLiteral("is_at_least")].toBool(), false);
        const Ran later = run("degree-days @days.csv --method average --lower 7 --from 2026-06-02 --json");
        QCOMPARE(later.json()[QStringLiteral("total")].toDouble(), 5.5 + 8.0 + 10.5);
    }

    void twoConventionsInFahrenheit()
    {
        writeFile("warm.csv", "date,tmin,tmax\n2026-06-01,50,85\n");
        const auto total = [&](const char* method) {
            return run(QStringLiteral("degree-days @warm.csv --method %1 --lower 38 --upper 75 --cut-off "
                                      "horizontal --unit F --json")
                           .arg(QString::fromLatin1(method)))
                .json()[QStringLiteral("total")]
                .toDouble();
        };
        QCOMPARE(total("average"), 29.5);
        QCOMPARE(total("average-clamped"), 24.5);
        QVERIFY(std::abs(total("single-sine") - 27.1597) < 5e-5);
        // Without a word on the unit nobody guesses what the limits are.
        QVERIFY(run("degree-days @warm.csv --lower 38 --json").exit != 0);
    }

    void whatIsWrongInAFileIsSaid()
    {
        writeFile("wrong.csv", "date,tmin,tmax\n2026-06-01,3,15\n2026-06-02,20,5\n2026-06-09,5,20\n");
        const Ran ran = run("degree-days @wrong.csv --lower 7 --json");
        QCOMPARE(ran.exit, 1);
        QCOMPARE(
            ran.json()[QStringLiteral("refused")].toArray()[0].toObject()[QStringLiteral("line")].toInt(), 3);
        QCOMPARE(
            ran.json()[QStringLiteral("gaps")].toArray()[0].toObject()[QStringLiteral("days")].toInt(), 7);
        QVERIFY(ran.json()[QStringLiteral("is_at_least")].toBool());
        QVERIFY(run("degree-days @wrong.csv --lower 7 --upper 5").exit > 1);
        QVERIFY(run("degree-days @wrong.csv --lower 7 --method cosine")
                    .err.contains(QStringLiteral("single-sine")));
    }

    void temperaturesAreTakenInOnce()
    {
        const char* line =
            "temperatures @store.db @weather.csv --station Airport --position 52.1,-106.6 --json";
        const Ran dry = run(QString::fromLatin1(line) + QStringLiteral(" --dry-run"));
        QVERIFY2(dry.exit == 0, qPrintable(dry.err));
        QCOMPARE(dry.json()[QStringLiteral("kept")].toInt(), 0);
        QCOMPARE(dry.json()[QStringLiteral("unit_found_by")].toString(), QStringLiteral("heading"));
        const Ran first = run(line);
        QVERIFY2(first.exit == 0, qPrintable(first.err));
        const int days = first.json()[QStringLiteral("temperatures_made")].toInt();
        QCOMPARE(days, 183 + 183 + 101);
        QCOMPARE(first.json()[QStringLiteral("kept")].toInt(), days + 1);
        const Ran again = run(line);
        QCOMPARE(again.json()[QStringLiteral("kept")].toInt(), 0);
        QCOMPARE(again.json()[QStringLiteral("already_there")].toInt(), days);
        QCOMPARE(run("check @store.db").exit, 0);
    }

    void theFlightOfADistrict()
    {
        const Ran ran = run("flight @store.db --on 2026-07-20 --json");
        QVERIFY2(ran.exit == 0, qPrintable(ran.err));
        QVERIFY(ran.json()[QStringLiteral("traps")].toArray().size() > 5);
        const auto districts = ran.json()[QStringLiteral("districts")].toArray();
        QVERIFY(!districts.isEmpty());
        const QJsonObject part = districts[0].toObject()[QStringLiteral("part_over")].toObject();
        QVERIFY(part[QStringLiteral("low")].toDouble() < part[QStringLiteral("high")].toDouble());
    }

    void theFlightOfAFile()
    {
        writeFile("counts.csv",
            "date,moths\n2026-06-04,\n2026-06-10,2\n2026-06-17,9\n2026-06-25,41\n2026-07-01,88\n2026-07-08,"
            "121\n"
            "2026-07-16,96\n2026-07-22,45\n2026-07-29,24\n");
        const Ran ran = run("flight @counts.csv --json");
        QVERIFY2(ran.exit == 0, qPrintable(ran.err));
        const QJsonObject trap = ran.json()[QStringLiteral("traps")].toArray()[0].toObject();
        QCOMPARE(trap[QStringLiteral("phase")].toString(), QStringLiteral("past_peak"));
        QCOMPARE(trap[QStringLiteral("moths")].toInt(), 426);
    }

    void theCalendarOfASite()
    {
        const QJsonObject season = run("season @store.db --json").json();
        const QString site =
            season[QStringLiteral("traps")].toArray()[0].toObject()[QStringLiteral("site")].toString();
        const Ran ran =
            run({QStringLiteral("calendar"), QStringLiteral("@store.db"), QStringLiteral("--site"), site,
                QStringLiteral("--on"), QStringLiteral("2026-07-20"), QStringLiteral("--json")});
        QVERIFY2(ran.exit == 0, qPrintable(ran.err));
        QStringList what;
        for (const auto& value : ran.json()[QStringLiteral("entries")].toArray()) {
            const QJsonObject entry = value.toObject();
            what << entry[QStringLiteral("what")].toString();
            QVERIFY(
                entry[QStringLiteral("earliest")].toString() <= entry[QStringLiteral("latest")].toString());
        }
        for (const char* wanted : {"traps_up", "first_moths", "peak", "hatch", "scouting", "damaging_larvae"})
            QVERIFY2(what.contains(QString::fromLatin1(wanted)), wanted);
        const QJsonObject warmth = ran.json()[QStringLiteral("warmth")].toObject();
        QCOMPARE(warmth[QStringLiteral("station")].toString(), QStringLiteral("Airport"));
        // From 1 April: mean of 12 and 24 degrees, 11 above the base of 7, for 101 days.
        QVERIFY(std::abs(warmth[QStringLiteral("total_measured")].toDouble() - 101 * 11) < 1e-6);
        QCOMPARE(warmth[QStringLiteral("past_years")].toInt(), 2);
        QVERIFY(run("calendar @store.db --site Nowhere").exit > 1);
    }
};

QTEST_GUILESS_MAIN(HeatCommandsTest)
#include "heat_test.moc"
