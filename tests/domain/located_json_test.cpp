// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/protocol/located_json.h"

using namespace duskrow::domain;

class LocatedJsonTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Each value is written as the number or text of the line it stands on.
    void everyValueKnowsItsLine_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("numbers at the end of a line") << QByteArray("[1,\n2,\n3\n,4]");
        QTest::newRow("a number, then empty lines") << QByteArray("[\n2\n\n\n,\n6\n]");
        QTest::newRow("texts") << QByteArray("[\"1\",\n\"2\"\n,\"3\"\n]");
        QTest::newRow("a text with an escaped line break") << QByteArray("[\"1\\n\"\n,2]");
        QTest::newRow("lines end in CR LF") << QByteArray("[\r\n2,\r\n3\r\n,4]");
        QTest::newRow("reals and exponents") << QByteArray("[1.0,2e0\n]").replace("2e0", "1e0\n,2.0");
        QTest::newRow("after a nested list") << QByteArray("[[1],\n[2\n]\n,4]");
        QTest::newRow("byte order mark") << QByteArray("\xEF\xBB\xBF[1\n,2]");
        QTest::newRow("multi-byte characters") << QByteArray("[\"1\303\251\"\n,\"2\342\200\231\"\n,3]");
    }

    void everyValueKnowsItsLine()
    {
        QFETCH(QByteArray, text);
        const auto tree = readLocatedJson(text.toStdString(), "f");
        QVERIFY(tree.has_value());
        int values = 0;
        compareLines(*tree, values);
        QVERIFY(values > 0);
    }

    void literalsAndGroupsKnowTheirLine()
    {
        const auto tree = readLocatedJson("{\n\"a\": null,\n\"b\":\n true,\n\n\"c\": {\n},\"d\":\n[]}", "f");
        QVERIFY(tree.has_value());
        QCOMPARE(tree->line, 1);
        QCOMPARE(tree->find("a")->line, 2);
        QCOMPARE(tree->find("b")->line, 4);
        QVERIFY(tree->find("b")->boolean);
        QCOMPARE(tree->find("c")->line, 6);
        QCOMPARE(tree->find("d")->line, 8);
        QVERIFY(!tree->find("e"));
    }

    void numbersKeepTheirKind()
    {
        const auto tree = readLocatedJson("[300, -1, 0.25, 9223372036854775807, 9223372036854775808]", "f");
        QVERIFY(tree.has_value());
        QCOMPARE(tree->items[0].whole, 300);
        QCOMPARE(tree->items[0].real, 300.0);
        QCOMPARE(tree->items[1].whole, -1);
        QVERIFY(tree->items[2].kind == LocatedJson::Kind::Real);
        QCOMPARE(tree->items[2].real, 0.25);
        QCOMPARE(tree->items[3].whole, std::numeric_limits<std::int64_t>::max());
        QVERIFY(tree->items[4].kind == LocatedJson::Kind::Real);
    }

    void mistakesAreToldWithTheirLine_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QByteArray>("line");
        QTest::addColumn<QByteArray>("word");
        QTest::newRow("empty") << QByteArray() << QByteArray("1") << QByteArray("ends in the middle");
        QTest::newRow("blank") << QByteArray("\n\n \n") << QByteArray("3")
                               << QByteArray("ends in the middle");
        QTest::newRow("cut after a number")
            << QByteArray("[1,\n2") << QByteArray("2") << QByteArray("ends in");
        QTest::newRow("cut in a text") << QByteArray("[\n\"ab") << QByteArray("2") << QByteArray("ends in");
        QTest::newRow("cut in a word") << QByteArray("[\n\ntr") << QByteArray("3") << QByteArray("ends in");
        QTest::newRow("no comma") << QByteArray("[1\n2]") << QByteArray("2") << QByteArray("not well-formed");
        QTest::newRow("last comma") << QByteArray("[1,\n\n]") << QByteArray("3")
                                    << QByteArray("not well-formed");
        QTest::newRow("text after the end")
            << QByteArray("[1]\nx") << QByteArray("2") << QByteArray("not well-");
        QTest::newRow("a comment") << QByteArray("[1] // no") << QByteArray("1")
                                   << QByteArray("not well-formed");
        QTest::newRow("not UTF-8") << QByteArray("[\n\"\xff\"]") << QByteArray("2")
                                   << QByteArray("not well-");
        QTest::newRow("too large a number")
            << QByteArray("[\n1e999]") << QByteArray("2") << QByteArray("not well");
        QTest::newRow("a key twice") << QByteArray("{\"a\":1,\n\"a\":2}") << QByteArray("2")
                                     << QByteArray("\"a\" stands here a second time");
        QTest::newRow("nested too deep") << QByteArray(40, '[') << QByteArray("1") << QByteArray("too deep");
        QTest::newRow("very deep") << QByteArray(900'000, '[') << QByteArray("1") << QByteArray("too deep");
        QTest::newRow("too large") << QByteArray(1'048'577, ' ') << QByteArray("1") << QByteArray("larger");
        QTest::newRow("zero bytes") << QByteArray(8, '\0') << QByteArray("1")
                                    << QByteArray("not well-formed");
    }

    void mistakesAreToldWithTheirLine()
    {
        QFETCH(QByteArray, text);
        QFETCH(QByteArray, line);
        QFETCH(QByteArray, word);
        const auto tree = readLocatedJson(text.toStdString(), "pest.json");
        QVERIFY(!tree.has_value());
        QVERIFY(tree.error().code == ErrorCode::ProtocolSyntax);
        QCOMPARE(tree.error().args.size(), std::size_t{3});
        QCOMPARE(tree.error().args[0], std::string("pest.json"));
        QCOMPARE(QByteArray::fromStdString(tree.error().args[1]), line);
        QVERIFY2(
            tree.error().args[2].find(word.toStdString()) != std::string::npos, tree.error().args[2].c_str());
    }

    void theDeepestNestingIsStillRead()
    {
        const std::string text =
            std::string(deepestProtocolNesting, '[') + std::string(deepestProtocolNesting, ']');
        QVERIFY(readLocatedJson(text, "f").has_value());
        QVERIFY(!readLocatedJson('[' + text + ']', "f").has_value());
    }

private:
    static void compareLines(const LocatedJson& value, int& values)
    {
        for (const LocatedJson& item : value.items) compareLines(item, values);
        if (value.kind == LocatedJson::Kind::Text) QCOMPARE(value.line, value.text[0] - '0');
        if (value.isNumber()) QCOMPARE(value.line, static_cast<int>(value.real));
        if (value.kind != LocatedJson::Kind::List) ++values;
    }
};

QTEST_APPLESS_MAIN(LocatedJsonTest)
#include "located_json_test.moc"
