// SPDX-License-Identifier: MIT
#include <QTest>

#include "formats/csv.h"
#include "formats/formats.h"

using namespace duskrow::domain;
using namespace duskrow::formats;

class CsvTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void cellsAreWritten_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QByteArray>("cell");
        QTest::newRow("plain") << QByteArray("Slough corner") << QByteArray("Slough corner");
        QTest::newRow("empty") << QByteArray("") << QByteArray("\"\"");
        QTest::newRow("comma") << QByteArray("a,b") << QByteArray("\"a,b\"");
        QTest::newRow("quote") << QByteArray("5\" tall") << QByteArray("\"5\"\" tall\"");
        QTest::newRow("line break") << QByteArray("a\nb") << QByteArray("\"a\nb\"");
        QTest::newRow("outer space") << QByteArray(" a") << QByteArray("\" a\"");
        QTest::newRow("formula") << QByteArray("=1+1") << QByteArray("'=1+1");
        QTest::newRow("formula with a comma") << QByteArray("=A1,B1") << QByteArray("\"'=A1,B1\"");
        QTest::newRow("at") << QByteArray("@SUM(1)") << QByteArray("'@SUM(1)");
        QTest::newRow("tab") << QByteArray("\t=1") << QByteArray("\"'\t=1\"");
        QTest::newRow("carriage return") << QByteArray("\r=1") << QByteArray("\"'\r=1\"");
        QTest::newRow("minus word") << QByteArray("-none") << QByteArray("'-none");
        QTest::newRow("minus sum") << QByteArray("-1-2") << QByteArray("'-1-2");
        QTest::newRow("negative number") << QByteArray("-98.1234567") << QByteArray("-98.1234567");
        QTest::newRow("signed number") << QByteArray("+3") << QByteArray("+3");
        QTest::newRow("power of ten") << QByteArray("-1.5e-7") << QByteArray("-1.5e-7");
        QTest::newRow("sign alone") << QByteArray("-") << QByteArray("'-");
        QTest::newRow("dangling point") << QByteArray("-1.") << QByteArray("'-1.");
        QTest::newRow("no UTF-8") << QByteArray("a\xff") << QStringLiteral("a\uFFFD").toUtf8();
    }

    void cellsAreWritten()
    {
        QFETCH(QByteArray, text);
        QFETCH(QByteArray, cell);
        const Table table{"t", {"head", "other"}, {{text.toStdString(), std::nullopt}}};
        QCOMPARE(QByteArray::fromStdString(*writeCsv(table)), QByteArray("head,other\r\n" + cell + ",\r\n"));
    }

    void missingAndEmptyDiffer()
    {
        const Table table{"t", {"a", "b", "c"}, {{std::nullopt, "", "0"}}};
        QCOMPARE(QByteArray::fromStdString(*writeCsv(table)), QByteArray("a,b,c\r\n,\"\",0\r\n"));
    }

    void aMissingCellAloneIsStillARow()
    {
        const Table table{"t", {"a"}, {{std::nullopt}}};
        QCOMPARE(QByteArray::fromStdString(*writeCsv(table)), QByteArray("a\r\n\"\"\r\n"));
    }

    void theMarkIsWrittenOnDemandOnly()
    {
        const Table table{"t", {"a"}, {}};
        QCOMPARE(QByteArray::fromStdString(*writeCsv(table)), QByteArray("a\r\n"));
        const auto marked = writeCsv(table, ByteOrderMark::Present);
        QCOMPARE(QByteArray::fromStdString(*marked),
            QByteArray("\xEF\xBB\xBF"
                       "a\r\n"));
    }

    void raggedRowsAreRefused()
    {
        for (const std::size_t cells : {1U, 3U}) {
            const auto written = writeCsv({"t", {"a", "b"}, {std::vector<Cell>(cells)}});
            QVERIFY(!written);
            QVERIFY(written.error().code == ErrorCode::OutOfRange);
        }
    }

    void guardingLosesNothing_data()
    {
        QTest::addColumn<QByteArray>("text");
        for (const char* text :
            {"", "'", "''", "'=1", "''=1", "=1", "-5", "'-5", "-a", "'a", "@", "+", "plain"}) {
            QTest::newRow(*text == 0 ? "empty" : text) << QByteArray(text);
        }
    }

    void guardingLosesNothing()
    {
        QFETCH(QByteArray, text);
        const std::string guarded = guardedCell(text.toStdString());
        QCOMPARE(QByteArray::fromStdString(unguardedCell(guarded)), text);
        const bool isNumber = text == "-5";
        QVERIFY(isNumber || guarded.empty() || std::string("=+-@\t\r").find(guarded[0]) == std::string::npos);
    }

    void theTableOfFormatsFindsCsvAndSaysWhatItKnows()
    {
        const auto csv = formatOf("csv");
        QVERIFY(csv);
        const auto files = csv->write({{{"visits", {"a"}, {{"1"}}}, {"traps", {"b"}, {}}}});
        QVERIFY(files);
        QCOMPARE(files->size(), std::size_t{2});
        QCOMPARE(files->at(0).name, std::string("visits.csv"));
        QCOMPARE(files->at(0).bytes, std::string("a\r\n1\r\n"));
        QCOMPARE(files->at(1).name, std::string("traps.csv"));
        const auto unknown = formatOf("xls");
        QVERIFY(!unknown);
        QVERIFY(unknown.error().code == ErrorCode::FormatUnknown);
        QCOMPARE(unknown.error().args, (std::vector<std::string>{"xls", "csv, geojson, gpx, dwca"}));
    }
};

QTEST_APPLESS_MAIN(CsvTest)
#include "csv_test.moc"
