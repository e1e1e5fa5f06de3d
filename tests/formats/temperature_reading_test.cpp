// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/import/temperature_plan.h"
#include "formats/temperature_reading.h"

using namespace duskrow::domain;
using namespace duskrow::formats;
using namespace std::string_literals;

class TemperatureReadingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theFormIsFound_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<int>("unit"); // -1: not shown
        QTest::addColumn<double>("minimum"); // of 14 July 2026
        QTest::addColumn<double>("maximum");
        const auto row = [](const char* name, const char* text, int unit, double minimum, double maximum) {
            QTest::newRow(name) << QByteArray(text) << unit << minimum << maximum;
        };
        row("plain", "date,tmin,tmax\n2026-07-14,8.5,24\n", -1, 8.5, 24);
        row("unit in the heading", "Date,Min Temp (°C),Max Temp (°C)\n2026-07-14,8.5,24.1\n", 0, 8.5, 24.1);
        row("Fahrenheit in the heading", "day;tmin_f;tmax_f\n2026-07-14;48;77\n", 1, 48, 77);
        row("Fahrenheit by its values", "date\ttmax\ttmin\n2026-07-14\t81\t50\n", 1, 50, 81);
        row("decimal comma, day first", "Date;Tmin;Tmax\n14.07.2026;-1,5;24,25\n", -1, -1.5, 24.25);
        row("quoted decimal comma", "date,tmin,tmax\n2026-07-14,\"8,5\",\"24,1\"\n", -1, 8.5, 24.1);
        row("month first, shown by another row", "date,low,high\n07/14/2026,8,24\n07/01/2026,6,20\n", -1, 8,
            24);
        row("other columns beside", "station,date,rain,tmin,tmax\nA,2026-07-14,3,8,24\n", -1, 8, 24);
    }

    void theFormIsFound()
    {
        QFETCH(QByteArray, text);
        QFETCH(int, unit);
        QFETCH(double, minimum);
        QFETCH(double, maximum);
        const auto reading = readTemperatures(text.toStdString(), {});
        QVERIFY(reading.has_value());
        QCOMPARE(reading->scale.unit ? static_cast<int>(*reading->scale.unit) : -1, unit);
        QCOMPARE(reading->refused.rows, std::size_t{0});
        const auto& row = reading->rows.back();
        QCOMPARE(row.day, dayOf(2026, 7, 14));
        QCOMPARE(row.minimum, minimum);
        QCOMPARE(row.maximum, maximum);
    }

    void whatIsWrongIsRefusedWithItsLine()
    {
        const auto reading =
            readTemperatures("date,tmin,tmax\n2026-07-01,8,24\n2026-07-02,25,9\n2026-07-03,,\n"
                             "2026-07-04,NA,22\n2026-07-05,x,22\n2026-07-06,-999,22\n"
                             "2026-07-01,8,24\n2026-07-01,8,25\n2026-02-30,1,2\n",
                {});
        QVERIFY(reading.has_value());
        QCOMPARE(reading->rows.size(), std::size_t{1});
        QCOMPARE(reading->repeated, std::size_t{1});
        const std::map<std::size_t, ErrorCode> expected{{3, ErrorCode::MinimumAboveMaximum},
            {6, ErrorCode::NotANumber}, {7, ErrorCode::OutOfRange}, {9, ErrorCode::TemperatureKept},
            {10, ErrorCode::NotADay}};
        QCOMPARE(reading->refused.words.size(), expected.size());
        for (const RowWord& word : reading->refused.words) {
            QVERIFY2(expected.contains(word.line), qPrintable(QString::number(word.line)));
            QCOMPARE(word.error.code, expected.at(word.line));
        }
    }

    void columnsAreAskedForWhereTheyAreNotClear()
    {
        QCOMPARE(readTemperatures("date,tmin\n2026-07-01,8\n", {}).error().code, ErrorCode::ColumnMissing);
        QCOMPARE(readTemperatures("date,tmin,min,tmax\n2026-07-01,8,9,20\n", {}).error().code,
            ErrorCode::ColumnTwice);
        QCOMPARE(readTemperatures("date,tmin,tmax\n", {}).error().code, ErrorCode::TableEmpty);
        TemperatureChoices choices;
        choices.columns = {{"a", "minimum"}, {"3", "maximum"}};
        const auto reading = readTemperatures("date,a,b\n2026-07-01,8,20\n", choices);
        QVERIFY(reading.has_value());
        QCOMPARE(reading->rows.front().maximum, 20.0);
    }

    // A damaged table is read or refused; every row that is read has its minimum below its maximum.
    void aDamagedTableIsReadOrRefused()
    {
        const std::string whole =
            "date;tmin (F);tmax (F)\n01/07/2026;48,5;77\n13/07/2026;50;81,2\n\"14/07/2026\";M;80\n";
        const std::string bytes = "\";,\n\0-9.x\xff/"s;
        int read = 0, refused = 0;
        for (std::size_t at = 0; at < whole.size(); ++at)
            for (const char byte : bytes) {
                std::string text = whole;
                text[at] = byte;
                const auto reading = readTemperatures(text, {});
                (reading ? read : refused) += 1;
                if (!reading) continue;
                for (const TemperatureRow& row : reading->rows)
                    QVERIFY(row.minimum <= row.maximum && row.maximum < 150 && row.line > 1);
            }
        QVERIFY(read > 300 && refused > 50);
    }

    void theSameTableAgainMakesNothing()
    {
        const Uuid programme = uuidFromName(std::vector<std::string>{"p"});
        const std::vector<TemperatureRow> rows{
            {2, dayOf(2026, 7, 1), 50, 77}, {3, dayOf(2026, 7, 2), 51, 80}};
        const StationTold told{"Airport", GeoPoint{521000000, -1066000000}, {}};
        const auto first = planTemperatures(rows, HeatUnit::Fahrenheit, {}, told, {}, {}, programme);
        QCOMPARE(first.size(), std::size_t{3});
        Station station;
        station.id = first.places[0].record;
        for (const auto& [name, value] : first.places[0].fields)
            assign(kindOf<Station>(), station, name, value);
        std::vector<Temperature> known;
        for (std::size_t i = 1; i < first.size(); ++i) {
            known.emplace_back().id = first.places[i].record;
            for (const auto& [name, value] : first.places[i].fields)
                assign(kindOf<Temperature>(), known.back(), name, value);
        }
        QVERIFY(known[0].minimum == MilliCelsius{10000} && known[0].maximum == MilliCelsius{25000});
        QVERIFY(known[1].minimum == MilliCelsius{10556});
        const std::vector stations{station};
        const auto again = planTemperatures(
            rows, HeatUnit::Fahrenheit, {}, {"  airport ", {}, {}}, stations, known, programme);
        QCOMPARE(again.size(), std::size_t{0});
        QCOMPARE(again.alreadyThere, std::size_t{2});
        // Another value for a day that is there is refused, and the day is left as it is.
        const std::vector<TemperatureRow> other{{2, dayOf(2026, 7, 1), 50, 78}};
        const auto differs =
            planTemperatures(other, HeatUnit::Fahrenheit, {}, told, stations, known, programme);
        QCOMPARE(differs.size(), std::size_t{0});
        QCOMPARE(differs.refused.words.front().error.code, ErrorCode::TemperatureDiffers);
        const auto days = toDays(known, HeatUnit::Fahrenheit);
        QVERIFY(std::abs(days[1].maximum - 80) < 1e-3);
    }

    void theNearestStationIsTaken()
    {
        std::vector<Station> stations(4);
        for (std::size_t i = 0; i < stations.size(); ++i) stations[i].name = std::string(1, char('a' + i));
        stations[0].latE7 = 521000000;
        stations[0].lonE7 = -1060000000;
        stations[1].latE7 = 521000000;
        stations[1].lonE7 = -1065000000;
        stations[2].latE7 = 521000000;
        stations[2].lonE7 = -1066000000;
        stations[2].withdrawn = "gone"; // and the fourth has no place
        QCOMPARE(nearestStation(stations, {521000000, -1066000000})->name, std::string("b"));
        QVERIFY(!nearestStation(std::span(stations).subspan(3), {521000000, -1066000000}));
    }
};

QTEST_APPLESS_MAIN(TemperatureReadingTest)
#include "temperature_reading_test.moc"
