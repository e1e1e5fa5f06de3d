// SPDX-License-Identifier: MIT
#include <QTest>

#include "text/round_text.h"

using namespace duskrow::domain;
using namespace duskrow::text;

namespace {

const QLocale english(QLocale::English, QLocale::Canada);
const QLocale plain(QLocale::C);

} // namespace

class RoundTextTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theWayOn()
    {
        QCOMPARE(wayOn({Metres{3400}, Degrees{44}}, english),
            QStringLiteral("3.4 km to the north-east of the stop before."));
        QCOMPARE(wayOn({Metres{4}, Degrees{44}}, english), QStringLiteral("4 m from the stop before."));
        QCOMPARE(wayOn({Metres{0}, std::nullopt}, english), QStringLiteral("0 m from the stop before."));
    }

    void theLengthSaysByWhatAndThatItIsASuggestion()
    {
        QCOMPARE(roundLength(Metres{12400}, RoundMetric::StraightLine, true, english),
            QStringLiteral(
                "About 12 km in all, by straight lines. A suggestion: it knows no road, gate or slough."));
        const QString grid = roundLength(Metres{12400}, RoundMetric::SurveyGrid, false, english);
        QVERIFY2(grid.contains(QLatin1String("along the lines of the survey")), qPrintable(grid));
        QVERIFY2(grid.contains(QLatin1String("Stops without a place come last.")), qPrintable(grid));
    }

    void aCoolBoxForLuresOnly()
    {
        QCOMPARE(coolBoxReminder(0, english), QString());
        QVERIFY(coolBoxReminder(1, english).startsWith(QLatin1String("One lure ")));
        QVERIFY(coolBoxReminder(3, english).startsWith(QLatin1String("3 lures ")));
    }

    void theMessage_data()
    {
        QTest::addColumn<int>("stops");
        QTest::addColumn<QString>("last");
        QTest::addColumn<bool>("hasPlace");
        QTest::addColumn<QString>("expected");
        QTest::newRow("several stops")
            << 7 << "Poplar bend" << true
            << "Walking the traps of Willow bend; 7 stops; back by 18:00. If I am not, "
               "call me or look here: Poplar bend, 49.93000, -97.19000";
        QTest::newRow("one stop")
            << 1 << "Poplar bend" << true
            << "Walking the traps of Willow bend; one stop; back by 18:00. If I am not, call "
               "me or look here: Poplar bend, 49.93000, -97.19000";
        QTest::newRow("nobody knows where it is")
            << 2 << "Poplar bend" << false
            << "Walking the traps of Willow bend; 2 stops; back by 18:00. If I am not, call me or look here: "
               "Poplar bend";
        QTest::newRow("nothing is left")
            << 0 << "" << false
            << "Walking the traps of Willow bend; 0 stops; back by 18:00. If I am not, call me.";
    }

    void theMessage()
    {
        QFETCH(int, stops);
        QFETCH(QString, last);
        QFETCH(bool, hasPlace);
        QFETCH(QString, expected);
        BackBy message{.programme = QStringLiteral("Willow bend"),
            .stops = static_cast<std::size_t>(stops),
            .time = std::chrono::hours{18},
            .lastStop = last};
        if (hasPlace) message.lastPlace = GeoPoint{499300000, -971900000};
        QCOMPARE(backByMessage(message, plain), expected);
    }

    void degreesHavePointsInEveryLanguage()
    {
        const BackBy message{.programme = QStringLiteral("Willow bend"),
            .stops = 1,
            .time = std::chrono::hours{18},
            .lastStop = QStringLiteral("Poplar bend"),
            .lastPlace = GeoPoint{499300000, -971900000}};
        QVERIFY(backByMessage(message, QLocale(QLocale::French, QLocale::Canada))
                    .endsWith(QLatin1String("49.93000, -97.19000")));
    }
};

QTEST_GUILESS_MAIN(RoundTextTest)
#include "round_text_test.moc"
