// SPDX-License-Identifier: MIT
#include <QTest>

#include "formats/csv_reader.h"
#include "formats/import_reading.h"

using namespace duskrow::domain;
using namespace duskrow::formats;

namespace {

const std::string head = "site,date,count\n";

QByteArray wordsOf(const RowWords& words)
{
    QByteArray all;
    for (const RowWord& word : words.words)
        all += QByteArray::number(static_cast<qulonglong>(word.line)) + ' '
            + QByteArray::fromStdString(word.column) + ' '
            + QByteArray::number(static_cast<int>(word.error.code)) + '|';
    return all;
}

QByteArray word(int line, const char* column, ErrorCode code)
{
    return QByteArray::number(line) + ' ' + column + ' ' + QByteArray::number(static_cast<int>(code)) + '|';
}

} // namespace

class ImportReadingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void delimiters_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QByteArray>("code");
        QTest::addColumn<int>("columns");
        const auto row = [](const char* claim, const char* text, const char* code, int columns) {
            QTest::newRow(claim) << QByteArray(text) << QByteArray(code) << columns;
        };
        row("commas", "a,b,c\n1,2,3\n", "comma", 3);
        row("semicolons, and decimal commas", "a;b;c\n1,5;2,5;3\n", "semicolon", 3);
        row("tabs", "a\tb\n1\t2\n", "tab", 2);
        row("bars", "a|b\n1|2\n", "bar", 2);
        row("commas in a name do not part it", "a, b;c\n1;2\n3;4\n", "semicolon", 2);
        row("commas in quotes", "\"a,b,c\";d\n\"1,2,3\";4\n", "semicolon", 2);
        row("one column", "a\n1\n", "comma", 1);
        row("nothing", "", "comma", 1);
    }

    void delimiters()
    {
        QFETCH(QByteArray, text);
        QFETCH(QByteArray, code);
        QFETCH(int, columns);
        const std::string held = text.toStdString();
        const auto found = delimiterOf(held);
        QCOMPARE(QByteArray::fromStdString(std::string(delimiterCode(found.delimiter))), code);
        QCOMPARE(static_cast<int>(found.columns), columns);
    }

    void aFullRow()
    {
        const auto read =
            readCounts("Année;District;Lieu;Piège;Latitude;Longitude;Nuits;Date;Compte;Abeilles;"
                       "Hauteur du piège (cm);Observateur;Remarque\r\n"
                       "2019;Nord;Étang;3;52° 9' 28,4\" N;106,6702 W;7;15.06.2019;12,0;2;118,5;Zoé;"
                       "\"pluie, vent\"\r\n",
                {});
        QVERIFY(read.has_value());
        QCOMPARE(wordsOf(read->refused), QByteArray());
        QCOMPARE(read->rows.size(), std::size_t{1});
        const CountRow& row = read->rows.front();
        QCOMPARE(row.line, std::size_t{2});
        QCOMPARE(row.day, dayOf(2019, 6, 15));
        QCOMPARE(*row.fromDay, dayOf(2019, 6, 8));
        QCOMPARE(row.pest, Moths{12});
        QCOMPARE(*row.bees, Bees{2});
        QCOMPARE(*row.entrance, Millimetres{1185});
        QCOMPARE(row.site, std::string("Étang"));
        QCOMPARE(row.tag, std::string("3"));
        QCOMPARE(row.remark, std::string("pluie, vent"));
        QCOMPARE(row.place->latE7, 521'578'889);
        QCOMPARE(row.place->lonE7, -1'066'702'000);
        QCOMPARE(static_cast<int>(read->decimalMark.reason), static_cast<int>(DecimalReason::Shown));
        QVERIFY(read->decimalMark.mark == DecimalMark::Comma);
        QVERIFY(read->dayOrder.order == DayOrder::DayFirst);
    }

    void cells_data()
    {
        QTest::addColumn<QByteArray>("table");
        QTest::addColumn<int>("rows");
        QTest::addColumn<QByteArray>("refused");
        const auto row = [](const char* claim, const std::string& table, int rows,
                             const QByteArray& refused) {
            QTest::newRow(claim) << QByteArray::fromStdString(table) << rows << refused;
        };
        using enum ErrorCode;
        row("zero is a count", head + "a,2019-06-08,0\n", 1, "");
        row("a blank is none", head + "a,2019-06-08,\n", 0, word(2, "count", Empty));
        row("a missing cell is none", head + "a,2019-06-08\n", 0, word(2, "count", Empty));
        row("less than nothing", head + "a,2019-06-08,-1\n", 0, word(2, "count", OutOfRange));
        row("half a moth", head + "a,2019-06-08,1.5\n", 0, word(2, "count", NotWhole));
        row("whole, with a point", head + "a,2019-06-08,12.0\n", 1, "");
        row("thousands or not", head + "a,2019-06-08,1.000\n", 0, word(2, "count", DecimalMarkUnsaid));
        row("thousands with commas", head + "a,2019-06-08,\"1,234\"\n", 0,
            word(2, "count", DecimalMarkUnsaid));
        row("a million moths", head + "a,2019-06-08,1000000\n", 0, word(2, "count", OutOfRange));
        row("more digits than a number holds", head + "a,2019-06-08,99999999999999999999\n", 0,
            word(2, "count", OutOfRange));
        row("a word", head + "a,2019-06-08,none\n", 0, word(2, "count", NotANumber));
        row("a formula is no count", head + "a,2019-06-08,=1+1\n", 0, word(2, "count", NotANumber));
        row("a formula is a text in a name", head + "=cmd()!A1,2019-06-08,1\n", 1, "");
        row("markup in a name is text", head + "<b onclick=x>a</b>,2019-06-08,1\n", 1, "");
        row("an escape in a name", head + "a\x1B[31m,2019-06-08,1\n", 0, word(2, "site", TextUnreadable));
        row("a name that turns the line", head + "a\u202Eb,2019-06-08,1\n", 0,
            word(2, "site", TextUnreadable));
        row("a NUL", head + "a" + std::string(1, '\0') + ",2019-06-08,1\n", 0,
            word(2, "site", TextUnreadable));
        row("a name too long", head + std::string(201, 'x') + ",2019-06-08,1\n", 0, word(2, "site", TooLong));
        row("no site", head + ",2019-06-08,1\n", 0, word(2, "site", Empty));
        row("no day", head + "a,,1\n", 0, word(2, "date", Empty));
        row("no such day", head + "a,2019-02-30,1\n", 0, word(2, "date", NotADay));
        row("a day of two minds", head + "a,03/04/2019,1\n", 0, word(2, "date", DayOrderUnsaid));
        row("a day that another explains", head + "a,03/04/2019,1\na,13/04/2019,1\n", 2, "");
        row("before all records", head + "a,1019-06-08,1\n", 0, word(2, "date", OutOfRange));
        row("a cell too many", head + "a,2019-06-08,1,2\n", 0, word(2, "", TableUnreadable));
        row("blank cells too many", head + "a,2019-06-08,1,,\n", 1, "");
        row("rows without content", head + ",,\n\n  , ,\na,2019-06-08,1\n", 1, "");
        row("the others go on", head + "a,x,1\nb,2019-06-08,2\n", 1, word(2, "date", NotADay));
        row("a year that is not the day's", "year,site,date,count\n2018,a,2019-06-08,1\n", 0,
            word(2, "date", DayOutsideYear));
        row("half a place", "site,date,count,lat,lon\na,2019-06-08,1,52.1,\n", 0, word(2, "lon", Empty));
        row("no place", "site,date,count,lat,lon\na,2019-06-08,1,91,10\n", 0, word(2, "lat", OutOfRange));
        row("a height without a unit", "site,date,count,canopy\na,2019-06-08,1,50\n", 0,
            word(2, "canopy", UnitUnsaid));
        row("a height in inches", "site,date,count,canopy in\na,2019-06-08,1,20\n", 1, "");
        row("a period", "site,eventDate,individualCount\na,2019-06-01/2019-06-08,1\n", 1, "");
        row("a period that ends before it begins", "site,from,date,count\na,2019-06-09,2019-06-08,1\n", 0,
            word(2, "from", OutOfRange));
    }

    void cells()
    {
        QFETCH(QByteArray, table);
        QFETCH(int, rows);
        QFETCH(QByteArray, refused);
        const auto read = readCounts(table.toStdString(), {});
        QVERIFY(read.has_value());
        QCOMPARE(wordsOf(read->refused), refused);
        QCOMPARE(static_cast<int>(read->rows.size()), rows);
    }

    void tables_data()
    {
        QTest::addColumn<QByteArray>("table");
        QTest::addColumn<int>("code");
        const auto row = [](const char* claim, const std::string& table, ErrorCode code) {
            QTest::newRow(claim) << QByteArray::fromStdString(table) << static_cast<int>(code);
        };
        using enum ErrorCode;
        row("nothing at all", "", ColumnMissing);
        row("names alone", head, TableEmpty);
        row("no count", "site,date\na,2019-06-08\n", ColumnMissing);
        row("two counts", "site,date,count,catch\na,2019-06-08,1,2\n", ColumnTwice);
        row("a place of one half", "site,date,count,lat\na,2019-06-08,1,2\n", ColumnMissing);
        row("cut within quotes", head + "\"a,2019-06-08,1\nb,2019-06-09,2\n", TableUnreadable);
        row("text behind quotes", head + "\"a\"b,2019-06-08,1\n", TableUnreadable);
        row("a picture", "\x89PNG\r\n\x1A\n\0\0\0\rIHDR", ColumnMissing);
        row("more columns than a table has", std::string(5'000, ','), TableUnreadable);
    }

    void tables()
    {
        QFETCH(QByteArray, table);
        QFETCH(int, code);
        const auto read = readCounts(table.toStdString(), {});
        QVERIFY(!read.has_value());
        QCOMPARE(static_cast<int>(read.error().code), code);
    }

    void wide_data()
    {
        QTest::addColumn<QByteArray>("table");
        QTest::addColumn<QByteArray>("counts"); // day and moths of each, in their order
        QTest::addColumn<QByteArray>("refused");
        const auto row = [](const char* claim, const std::string& table, const char* counts,
                             const QByteArray& refused) {
            QTest::newRow(claim) << QByteArray::fromStdString(table) << QByteArray(counts) << refused;
        };
        using enum ErrorCode;
        const std::string days = "site,2019-06-08,2019-06-15\n";
        row("a count a day", days + "a,3,4\n", "2019-06-08 3|2019-06-15 4|", "");
        row("zero is a count, a blank is none", days + "a,0,\nb, ,7\n", "2019-06-08 0|2019-06-15 7|", "");
        row("a row cut short", days + "a,3\n", "2019-06-08 3|", "");
        row("one cell that is no count", days + "a,x,4\n", "2019-06-15 4|",
            word(2, "2019-06-08", NotANumber));
        row("no site is said once", days + ",3,4\n", "", word(2, "site", Empty));
        row("a cell too many is said once", days + "a,3,4,5\n", "", word(2, "", TableUnreadable));
        row("other columns stand between", "2019-06-08,site,remark,2019-06-15,total\n3,a,rain,4,7\n",
            "2019-06-08 3|2019-06-15 4|", "");
        row("one day explains the others", "site,08/06/2019,15/06/2019\na,3,4\n",
            "2019-06-08 3|2019-06-15 4|", "");
        row("none explains them", "site,08/06/2019\na,3\n", "", word(2, "08/06/2019", DayOrderUnsaid));
        row("a year of its own", "year,site,8-Jun,15 juin\n2019,a,3,4\n2018,a,5,\n",
            "2019-06-08 3|2019-06-15 4|2018-06-08 5|", "");
        row("no year anywhere", "site,8-Jun\na,3\n", "", word(2, "8-Jun", YearUnsaid));
        row("a column a week ends with it", "year,site,Week 24,wk 25\n2019,a,3,4\n",
            "2019-06-16 3|2019-06-23 4|", "");
        row("French weeks", "année;site;semaine 24;Sem. 25\n2019;a;3;4\n", "2019-06-16 3|2019-06-23 4|", "");
        row("a week needs a year", "site,week 24\na,3\n", "", word(2, "week 24", YearUnsaid));
        row("2019 had 52 weeks", "year,site,week 53\n2019,a,3\n", "", word(2, "week 53", OutOfRange));
        row("not where days and counts have columns", "site,date,count,2019-06-15\na,2019-06-08,3,4\n",
            "2019-06-08 3|", "");
    }

    // One column for each day.
    void wide()
    {
        QFETCH(QByteArray, table);
        QFETCH(QByteArray, counts);
        QFETCH(QByteArray, refused);
        const auto read = readCounts(table.toStdString(), {});
        QVERIFY(read.has_value());
        QByteArray found;
        for (const CountRow& row : read->rows)
            found += QByteArray::fromStdString(formatDay(row.day)) + ' '
                + QByteArray::number(static_cast<qlonglong>(row.pest.value())) + '|';
        QCOMPARE(found, counts);
        QCOMPARE(wordsOf(read->refused), refused);
    }

    // The week around the Thursday of ISO week 24, 13 June 2019, from Wednesday to Tuesday.
    void aWeekIsOneOfTheProgramme()
    {
        ImportChoices choices;
        choices.year = 2019;
        choices.weekStart = 3;
        const auto read = readCounts("site,week 24\na,3\n", choices);
        QCOMPARE(read->rows.size(), std::size_t{1});
        QCOMPARE(QByteArray::fromStdString(formatDay(read->rows.front().day)), QByteArray("2019-06-18"));
    }

    // Where a column is missing its names and first rows are still there to choose from.
    void theColumnsOfATableThatIsNotUnderstood()
    {
        const std::string table = "place,when,moths seen\na,2019-06-08,3\nb,2019-06-08,4\n";
        QVERIFY(!readCounts(table, {}).has_value());
        const auto looked = lookAtTable(table, {});
        QVERIFY(looked.has_value());
        QCOMPARE(looked->columns.size(), std::size_t{3});
        QCOMPARE(looked->samples.size(), std::size_t{2});
        QVERIFY(looked->rows.empty());
    }

    void aDayColumnThatSomebodyChoseIsWhatTheyChose()
    {
        ImportChoices choices;
        choices.columns = {{"2019-06-15", "ignore"}};
        const auto read = readCounts("site,2019-06-08,2019-06-15\na,3,4\n", choices);
        QCOMPARE(read->rows.size(), std::size_t{1});
        QCOMPARE(read->columns.at(1).reason == ColumnReason::DayHeading, true);
        QVERIFY(read->columns.at(2).reason == ColumnReason::Chosen);
    }

    void moreRowsThanATableHas()
    {
        CsvForm form;
        form.mostRows = 3;
        std::size_t rows = 0;
        const auto read = eachCsvRow("a\n1\n2\n3\n", form, [&](CsvRow&) { return ++rows > 0; });
        QVERIFY(!read.has_value() && read.error().code == ErrorCode::TableTooLong);
        QCOMPARE(rows, std::size_t{3});
        QCOMPARE(CsvForm().mostRows, std::size_t{1'000'000});
    }

    // Of endless refusals only the first are kept; all are counted.
    void refusalsAreBounded()
    {
        std::string table = head;
        for (int i = 0; i < 20'000; ++i) table += "a\n";
        const auto read = readCounts(table, {});
        QCOMPARE(read->refused.rows, std::size_t{20'000});
        QCOMPARE(read->refused.words.size(), RowWords::most);
    }

    void choicesGoBefore()
    {
        ImportChoices choices;
        choices.dayOrder = DayOrder::MonthFirst;
        choices.columns = {{"Where", "site"}, {"3", "count"}, {"catch", "ignore"}};
        const auto read = readCounts("Where,date,Nr,catch\na,03/04/2019,5,9\n", choices);
        QCOMPARE(read->rows.front().day, dayOf(2019, 3, 4));
        QCOMPARE(read->rows.front().pest, Moths{5});
        QVERIFY(read->dayOrder.reason == DayOrderReason::Chosen);
    }

    void badChoices_data()
    {
        QTest::addColumn<QByteArray>("column");
        QTest::addColumn<QByteArray>("field");
        QTest::addColumn<int>("code");
        const auto row = [](const char* column, const char* field, ErrorCode code) {
            QTest::addRow("%s=%s", column, field)
                << QByteArray(column) << QByteArray(field) << static_cast<int>(code);
        };
        row("nowhere", "site", ErrorCode::ColumnMissing);
        row("0", "site", ErrorCode::ColumnMissing);
        row("4", "site", ErrorCode::ColumnMissing);
        row("site", "moon", ErrorCode::UnknownCode);
        row("site", "canopy:furlong", ErrorCode::UnknownCode);
    }

    void badChoices()
    {
        QFETCH(QByteArray, column);
        QFETCH(QByteArray, field);
        QFETCH(int, code);
        ImportChoices choices;
        choices.columns = {{column.toStdString(), field.toStdString()}};
        const auto read = readCounts(head + "a,2019-06-08,1\n", choices);
        QVERIFY(!read.has_value());
        QCOMPARE(static_cast<int>(read.error().code), code);
    }

    // What our own export guards against spreadsheets comes back as it was.
    void guardedTextsComeBack()
    {
        const auto read = readCounts(head + "'=a,2019-06-08,1\n'b,2019-06-08,1\n", {});
        QCOMPARE(read->rows.at(0).site, std::string("=a"));
        QCOMPARE(read->rows.at(1).site, std::string("'b"));
    }
};

QTEST_APPLESS_MAIN(ImportReadingTest)
#include "import_reading_test.moc"
