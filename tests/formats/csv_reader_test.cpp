// SPDX-License-Identifier: MIT
#include <QTest>

#include "formats/csv.h"
#include "formats/csv_reader.h"

using namespace duskrow::domain;
using namespace duskrow::formats;

class CsvReaderTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void rowsOfAFile_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QByteArray>("read"); // cells in brackets, each row behind the line it begins on
        const auto row = [](const char* claim, const char* bytes, const char* read) {
            QTest::newRow(claim) << QByteArray(bytes) << QByteArray(read);
        };
        row("plain", "a,b\r\n1,2\r\n", "1[a][b] 2[1][2]");
        row("line feeds, and none at the end", "a,b\n1,2", "1[a][b] 2[1][2]");
        row("carriage returns", "a\rb\r", "1[a] 2[b]");
        row("quotes", "\"a,b\",\"say \"\"moth\"\"\"\n", "1[a,b][say \"moth\"]");
        row("a line break in a cell", "\"a\nb\",c\n3,4\n", "1[a\nb][c] 3[3][4]");
        row("a longer one", "\"a\r\nb\",c\r\n3\r\n", "1[a\r\nb][c] 3[3]");
        row("empty cells", "a,,\n,\n", "1[a][][] 2[][]");
        row("an empty cell in quotes is a row", "\"\"\na\n", "1[] 2[a]");
        row("lines without anything", "\n\na\n\n", "3[a]");
        row("a byte order mark",
            "\xEF\xBB\xBF"
            "a,b\n",
            "1[a][b]");
        row("a quote in the middle is a letter", "5\" nail,b\n", "1[5\" nail][b]");
        row("semicolons, and commas in numbers", "\na;b\r\n52,1;\"2;3\"\r\n", "2[a][b] 3[52,1][2;3]");
        row("semicolons among commas are letters", "a;b,c\n1;2,3\n", "1[a;b][c] 2[1;2][3]");
        row("semicolons below a single name are letters", "a\n1;2\n", "1[a] 2[1;2]");
        row("a comma in quotes parts nothing", "\"a,b\";c\n", "1[a,b][c]");
        row("nothing", "", "");
    }

    void rowsOfAFile()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QByteArray, read);
        const auto rows = readCsv(bytes.toStdString());
        QVERIFY(rows.has_value());
        QByteArray found;
        for (const CsvRow& row : *rows) {
            if (!found.isEmpty()) found += ' ';
            found += QByteArray::number(static_cast<qulonglong>(row.line));
            for (const std::string& cell : row.cells) found += '[' + QByteArray::fromStdString(cell) + ']';
        }
        QCOMPARE(found, read);
    }

    void whatCannotBeReadNamesItsLine_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QByteArray>("line");
        QTest::newRow("an open quote") << QByteArray("a\n\"b\nc\n") << QByteArray("2");
        QTest::newRow("text behind a quote") << QByteArray("a\nb\n\"c\"d\n") << QByteArray("3");
    }

    void whatCannotBeReadNamesItsLine()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QByteArray, line);
        const auto rows = readCsv(bytes.toStdString());
        QVERIFY(!rows.has_value() && rows.error().code == ErrorCode::TableUnreadable);
        QCOMPARE(QByteArray::fromStdString(rows.error().args.at(0)), line);
    }

    void whatOurWriterWritesComesBack()
    {
        const std::vector<std::string> nasty{"a", "a,b", "\"", "x\r\ny", "\r", "🦋", " ", "é\"\n"};
        Table table{"t", {"one", "two"}, {}};
        for (const std::string& cell : nasty) table.rows.push_back({cell, "end"});
        const auto rows = readCsv(*writeCsv(table, ByteOrderMark::Present));
        QCOMPARE(rows->size(), nasty.size() + 1);
        for (std::size_t i = 0; i < nasty.size(); ++i)
            QCOMPARE(unguardedCell((*rows)[i + 1].cells.at(0)), nasty[i]);
    }

    void brokenBytesAreReplaced()
    {
        QCOMPARE(readCsv("a\xFF,b").value()[0].cells[0], std::string("a\xEF\xBF\xBD"));
    }
};

QTEST_APPLESS_MAIN(CsvReaderTest)
#include "csv_reader_test.moc"
