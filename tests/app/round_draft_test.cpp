// SPDX-License-Identifier: MIT
#include <QTest>

#include "app/round/round_draft.h"

using namespace duskrow::app;

class RoundDraftTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void readAgainItIsTheSame()
    {
        RoundDraft draft;
        draft.order = QStringList{QStringLiteral("b"), QStringLiteral("walk/a")};
        draft.infestedLast = false;
        draft.isSurveyGrid = true;
        draft.marks = {{QStringLiteral("north"), true}, {QStringLiteral("south"), false}};
        draft.backBy = 18 * 60;
        draft.phone = QStringLiteral("+1 204 555 0100");
        RoundDraft again;
        QVERIFY(again.read(draft.written()));
        QCOMPARE(again.order, draft.order);
        QCOMPARE(again.infestedLast, false);
        QCOMPARE(again.isSurveyGrid, true);
        QCOMPARE(again.marks, draft.marks);
        QCOMPARE(again.backBy, draft.backBy);
        QCOMPARE(again.phone, draft.phone);
    }

    void noOrderIsNotAnEmptyOne()
    {
        RoundDraft again;
        again.order = QStringList{QStringLiteral("a")};
        QVERIFY(again.read(RoundDraft{}.written()));
        QVERIFY(!again.order);
        QVERIFY(!again.backBy);
        QVERIFY(again.infestedLast);
    }

    void whatCannotBeReadChangesNothing_data()
    {
        QTest::addColumn<QByteArray>("body");
        QTest::newRow("nothing") << QByteArray();
        QTest::newRow("cut off") << QByteArray("{\"order\":[\"a\"");
        QTest::newRow("a list") << QByteArray("[1]");
    }

    void whatCannotBeReadChangesNothing()
    {
        QFETCH(QByteArray, body);
        RoundDraft draft;
        draft.phone = QStringLiteral("1");
        QVERIFY(!draft.read(body));
        QCOMPARE(draft.phone, QStringLiteral("1"));
    }

    void anAbsurdTimeStaysWithinTheDay()
    {
        RoundDraft draft;
        QVERIFY(draft.read("{\"back_by\":99999}"));
        QCOMPARE(draft.backBy, std::optional(24 * 60 - 1));
    }

    void anOrderMeetsTheStopsOfNow_data()
    {
        QTest::addColumn<QString>("keys");
        QTest::addColumn<QString>("order");
        QTest::addColumn<QString>("expected");
        QTest::newRow("as ordered") << "a b c"
                                    << "c a b"
                                    << "c a b";
        QTest::newRow("one is done") << "a c"
                                     << "c b a"
                                     << "c a";
        QTest::newRow("new ones come last, as suggested") << "x a y b"
                                                          << "b a"
                                                          << "b a x y";
        QTest::newRow("told twice, stands once") << "a b"
                                                 << "b b a"
                                                 << "b a";
        QTest::newRow("no stop") << ""
                                 << "a"
                                 << "";
    }

    void anOrderMeetsTheStopsOfNow()
    {
        QFETCH(QString, keys);
        QFETCH(QString, order);
        QFETCH(QString, expected);
        const auto list = [](const QString& words) {
            return words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
        };
        QCOMPARE(inOrder(list(keys), list(order)), list(expected));
    }

    void moving_data()
    {
        QTest::addColumn<QString>("key");
        QTest::addColumn<int>("by");
        QTest::addColumn<QString>("expected");
        QTest::newRow("earlier") << "b" << -1 << "b a c";
        QTest::newRow("later") << "b" << 1 << "a c b";
        QTest::newRow("the first stays first") << "a" << -1 << "a b c";
        QTest::newRow("the last stays last") << "c" << 5 << "a b c";
        QTest::newRow("not among them") << "x" << 1 << "a b c";
    }

    void moving()
    {
        QFETCH(QString, key);
        QFETCH(int, by);
        QFETCH(QString, expected);
        const QStringList keys{QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("c")};
        QCOMPARE(moved(keys, key, by).join(QLatin1Char(' ')), expected);
    }
};

QTEST_GUILESS_MAIN(RoundDraftTest)
#include "round_draft_test.moc"
