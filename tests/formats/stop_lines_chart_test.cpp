// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/protocol/protocol.h"
#include "formats/stop_lines_chart.h"

using namespace duskrow::domain;
using namespace duskrow::formats;

namespace {

StopLinesInput input(double threshold, const std::vector<int>& counts)
{
    StopDesign design;
    design.threshold = LarvaePerSquareMetre{threshold};
    StopLinesInput input{
        .plan = *planStops(design), .aboveLabel = "above", .onLabel = "keep looking", .belowLabel = "below"};
    Larvae total{0};
    for (const int count : counts) {
        total = Larvae{total.value() + count};
        input.totals.push_back(total);
    }
    return input;
}

template <typename Kind>
std::vector<Kind> all(const Picture& picture)
{
    std::vector<Kind> found;
    for (const Primitive& one : picture.primitives)
        if (const auto* kind = std::get_if<Kind>(&one)) found.push_back(*kind);
    return found;
}

// The thick line is the walk.
std::vector<Point> pathOf(const Picture& picture)
{
    for (const Line& line : all<Line>(picture))
        if (line.width > 3) return line.points;
    return {};
}

} // namespace

class StopLinesChartTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theWalkIsDrawnStopByStop()
    {
        const auto path = pathOf(stopLinesChart(input(20, {4, 9, 2, 15, 0, 6})));
        QCOMPARE(path.size(), std::size_t{7});
        for (std::size_t i = 1; i < path.size(); ++i) {
            QVERIFY(path[i].x > path[i - 1].x);
            QVERIFY(path[i].y <= path[i - 1].y); // upwards: a total never falls
        }
        QCOMPARE(path[5].y, path[4].y); // the fifth frame held none
    }

    void nothingLeavesThePicture_data()
    {
        QTest::addColumn<double>("threshold");
        QTest::addColumn<QList<int>>("counts");
        QTest::addColumn<double>("scale");
        QTest::newRow("no frame yet") << 20.0 << QList<int>{} << 1.0;
        QTest::newRow("a few") << 20.0 << QList<int>{4, 9, 2} << 1.0;
        QTest::newRow("large type") << 20.0 << QList<int>{4, 9, 2} << 2.0;
        QTest::newRow("outbreak") << 20.0 << QList<int>{250, 300, 280, 260, 400} << 1.0;
        QTest::newRow("low threshold") << 2.0 << QList<int>(20, 0) << 1.0;
        QTest::newRow("past the most stops") << 20.0 << QList<int>(26, 5) << 1.0;
    }

    void nothingLeavesThePicture()
    {
        QFETCH(double, threshold);
        QFETCH(QList<int>, counts);
        QFETCH(double, scale);
        StopLinesInput made = input(threshold, {counts.begin(), counts.end()});
        made.textScale = scale;
        const Picture picture = stopLinesChart(made);
        for (const Line& line : all<Line>(picture))
            for (const Point& point : line.points)
                QVERIFY(point.x >= 0 && point.x <= made.width + 0.01 && point.y >= 0
                    && point.y <= made.height + 0.01);
        for (const Words& words : all<Words>(picture)) {
            const Frame frame = frameOf(words);
            QVERIFY2(frame.left >= 0 && frame.right <= made.width && frame.bottom <= made.height,
                words.text.c_str());
            QVERIFY(words.size >= 16);
        }
    }

    void theEndLiesBeyondALineOnlyWhenTheRuleSaysSo()
    {
        const StopLinesInput above = input(20, {14, 19, 12, 15, 10});
        QCOMPARE(stopAfter(above.plan, 5, above.totals.back()).state, StopState::Above);
        const Picture picture = stopLinesChart(above);
        const auto areas = all<Area>(picture);
        const Point end = pathOf(picture).back();
        // Inside the upper field: above its lower edge at the fifth stop.
        QVERIFY(end.y <= areas.front().outline[1].y);
    }

    void tooSmallIsEmpty()
    {
        StopLinesInput made = input(20, {4});
        made.width = 100;
        QVERIFY(stopLinesChart(made).primitives.empty());
    }
};

QTEST_APPLESS_MAIN(StopLinesChartTest)
#include "stop_lines_chart_test.moc"
