// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/bulletin/area_news.h"

using namespace duskrow::domain;

namespace {

const Uuid west = parseUuid("01980a5c-1000-7000-8000-000000000001").value();

AreaFigures figures()
{
    AreaFigures made;
    made.counted = 14;
    made.expected = 15;
    made.weekMedian = Moths{95};
    made.seasonMedian = Moths{240};
    made.caughtAny = true;
    made.typicalLevel = 1;
    made.highestLevel = 3;
    made.phase = FlightPhase::NearHighest;
    return made;
}

} // namespace

// What a bulletin says of areas, on its way to the phones and back.
class AreaNewsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void thereAndBack()
    {
        Bulletin bulletin;
        bulletin.region = "Valley \"low\"\n";
        bulletin.whole = figures();
        bulletin.districts = {{"West", figures()}, {"East", std::nullopt}};
        const std::array ids{west, Uuid{}};
        const std::vector<AreaNews> areas = areaNewsOf(bulletin, ids);
        QCOMPARE(areas.size(), 3U);
        QVERIFY(areas[0].district.isNil());
        QCOMPARE(areas[1].district, west);
        const std::vector<AreaNews> back = readAreaNews(areaNewsText(areas, 24'000));
        QVERIFY(back == areas);
    }

    // A field of a record has so much room: whole areas from the beginning, and JSON all the same.
    void asManyAsHaveRoom()
    {
        const std::vector<AreaNews> many(200, AreaNews{west, "West", figures()});
        const std::string text = areaNewsText(many, 1'000);
        QVERIFY(text.size() <= 1'000);
        const auto back = readAreaNews(text);
        QVERIFY(back.size() > 2 && back.size() < 10);
        QVERIFY(std::equal(back.begin(), back.end(), many.begin()));
        QCOMPARE(areaNewsText(many, 2), std::string("[]"));
    }

    // Another program may have written it.
    void whateverComes_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<int>("areas");
        QTest::addColumn<int>("withFigures");
        QTest::addRow("nothing") << QByteArray() << 0 << 0;
        QTest::addRow("no JSON") << QByteArray("[{") << 0 << 0;
        QTest::addRow("an object") << QByteArray("{\"name\":\"West\"}") << 0 << 0;
        QTest::addRow("numbers among them") << QByteArray("[1,{\"name\":\"West\"},null]") << 1 << 0;
        QTest::addRow("a name that is none") << QByteArray("[{\"name\":7}]") << 1 << 0;
        QTest::addRow("below zero") << QByteArray(
            R"([{"counted":-1,"expected":1,"week_median":1,"season_median":1}])")
                                    << 1 << 0;
        QTest::addRow("a broken number")
            << QByteArray(R"([{"counted":1,"expected":1,"week_median":1.5,"season_median":1}])") << 1 << 0;
        QTest::addRow("a level that there is not") << QByteArray(
            R"([{"counted":1,"expected":1,"week_median":1,"season_median":1,"typical_level":9}])")
                                                   << 1 << 1;
        QTest::addRow("too deep") << QByteArray("[[[[[[]]]]]]") << 0 << 0;
    }
    void whateverComes()
    {
        QFETCH(QByteArray, text);
        QFETCH(int, areas);
        QFETCH(int, withFigures);
        const auto found = readAreaNews(text.toStdString());
        QCOMPARE(static_cast<int>(found.size()), areas);
        QCOMPARE(static_cast<int>(std::ranges::count_if(
                     found, [](const AreaNews& area) { return area.figures.has_value(); })),
            withFigures);
        for (const AreaNews& area : found)
            if (area.figures) QVERIFY(!area.figures->typicalLevel);
    }
};

QTEST_APPLESS_MAIN(AreaNewsTest)
#include "area_news_test.moc"
