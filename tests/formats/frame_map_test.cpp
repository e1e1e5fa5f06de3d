// SPDX-License-Identifier: MIT
#include <QTest>

#include <algorithm>
#include <cmath>

#include "domain/rules/geodesy.h"
#include "formats/frame_map.h"

using namespace duskrow::domain;
using namespace duskrow::formats;

namespace {

constexpr double metresADegree = 111'320; // of latitude, near enough for laying frames out

template <typename Kind>
std::vector<Kind> all(const Picture& picture)
{
    std::vector<Kind> found;
    for (const Primitive& one : picture.primitives)
        if (const auto* kind = std::get_if<Kind>(&one)) found.push_back(*kind);
    return found;
}

GeoPoint at(double eastMetres, double northMetres, double latitude = 52.1, double longitude = -106.6)
{
    const double east = eastMetres / metresADegree / std::cos(latitude * 3.14159265358979 / 180);
    double lon = longitude + east;
    if (lon > 180) lon -= 360;
    return {static_cast<std::int32_t>(std::lround((latitude + northMetres / metresADegree) * 1e7)),
        static_cast<std::int32_t>(std::lround(lon * 1e7))};
}

FrameMapInput input(std::vector<std::optional<GeoPoint>> places, std::vector<int> larvae = {})
{
    FrameMapInput made{.title = "Frames",
        .description = "Where frames were searched",
        .northLabel = "N",
        .keyLabel = "small: frame, bold: larvae",
        .noPlaceLabel = "No frame knows its place, so there is no sketch.",
        .crowdedLabel = "Frames lie close together: all counts are in the table."};
    for (std::size_t i = 0; i < places.size(); ++i)
        made.frames.push_back({std::to_string(i + 1), places[i],
            Larvae{larvae.empty() ? static_cast<int>(i * 7 % 16) : larvae.at(i)}});
    return made;
}

// A walk back and forth over a field, 50 m apart.
std::vector<std::optional<GeoPoint>> walked(int frames, double spacing = 50)
{
    std::vector<std::optional<GeoPoint>> places;
    for (int i = 0; i < frames; ++i) {
        const int row = i / 4;
        const int column = row % 2 == 0 ? i % 4 : 3 - i % 4;
        places.emplace_back(at(column * spacing, row * spacing));
    }
    return places;
}

std::string allText(const Picture& picture)
{
    std::string text;
    for (const Words& words : all<Words>(picture)) text += words.text + "\n";
    return text;
}

bool says(const Picture& picture, const std::string& wanted)
{
    return allText(picture).find(wanted) != std::string::npos;
}

bool isBold(const Words& words)
{
    return words.weight == 700;
}

} // namespace

Q_DECLARE_METATYPE(FrameMapInput)

class FrameMapTest : public QObject {
    Q_OBJECT

    static void addCases()
    {
        QTest::addColumn<FrameMapInput>("input");
        const auto row = [](const char* name, const FrameMapInput& made) {
            for (const QSizeF size : {QSizeF(260, 200), QSizeF(360, 260), QSizeF(700, 400)}) {
                for (const double scale : {1.0, 2.0}) {
                    FrameMapInput sized = made;
                    sized.width = size.width();
                    sized.height = size.height();
                    sized.textScale = scale;
                    QTest::addRow("%s, %g wide, text %g", name, size.width(), scale) << sized;
                }
            }
        };
        row("ten frames", input(walked(10)));
        row("one frame", input(walked(1)));
        row("frames of one stop", input({at(0, 0), at(0, 0), at(0, 0)}));
        row("a pace apart", input({at(0, 0), at(0.8, 0), at(0.8, 0.8)}));
        row("forty frames", input(walked(40)));
        row("in one line", input({at(0, 0), at(0, 60), at(0, 120), at(0, 180), at(0, 900)}));
        row("no frame knows its place", input({std::nullopt, std::nullopt}));
        row("no frame at all", input({}));
        row("some without a place", input({at(0, 0), std::nullopt, at(60, 60)}));
        row("large counts", input(walked(5), {9999, 1200, 0, 345, 88}));
        row("one far astray", input({at(0, 0), at(50, 0), at(40'000, 9'000)}));
    }

private Q_SLOTS:
    void wordsStayInsideAndDoNotCoverEachOther_data() { addCases(); }

    void wordsStayInsideAndDoNotCoverEachOther()
    {
        QFETCH(FrameMapInput, input);
        const Picture picture = frameMap(input);
        const Frame whole{0, 0, input.width, input.height};
        const auto words = all<Words>(picture);
        QVERIFY(!words.empty());
        for (std::size_t i = 0; i < words.size(); ++i) {
            const Frame frame = frameOf(words[i]);
            QVERIFY2(whole.holds(frame), words[i].text.c_str());
            QVERIFY2(words[i].size >= 12, words[i].text.c_str());
            for (std::size_t j = i + 1; j < words.size(); ++j) {
                const std::string both = words[i].text + " | " + words[j].text;
                QVERIFY2(!frame.meets(frameOf(words[j])), both.c_str());
            }
        }
    }

    void everyFrameWithAPlaceHasItsMark_data() { addCases(); }

    void everyFrameWithAPlaceHasItsMark()
    {
        QFETCH(FrameMapInput, input);
        const Picture picture = frameMap(input);
        const auto marks = all<Mark>(picture);
        const auto known = std::count_if(input.frames.begin(), input.frames.end(),
            [](const FrameSpot& frame) { return frame.place.has_value(); });
        QCOMPARE(static_cast<long>(marks.size()), static_cast<long>(known));
        for (const Mark& mark : marks)
            QVERIFY(
                mark.at.x >= 0 && mark.at.x <= input.width && mark.at.y >= 0 && mark.at.y <= input.height);
        // Each has its count, or the sketch says where to find it.
        const auto words = all<Words>(picture);
        const auto counts = std::count_if(words.begin(), words.end(), isBold);
        const std::string firstWord = input.crowdedLabel.substr(0, input.crowdedLabel.find(' '));
        if (known > 0 && input.textScale == 1) QCOMPARE(counts < known, says(picture, firstWord));
    }

    void tenFramesHaveRoomForAllTheirCounts()
    {
        const Picture picture = frameMap(input(walked(10)));
        std::vector<std::string> counts;
        for (const Words& words : all<Words>(picture))
            if (isBold(words)) counts.push_back(words.text);
        const std::vector<std::string> expected{"0", "7", "14", "5", "12", "3", "10", "1", "8", "15"};
        QCOMPARE(counts, expected);
        QVERIFY(says(picture, "small: frame"));
    }

    // The bar says a length; so long must the way between two frames be on the page.
    void itIsToScale()
    {
        const auto places = walked(10);
        const Picture picture = frameMap(input(places));
        const auto marks = all<Mark>(picture);
        const auto lines = all<Line>(picture);
        const Line& bar = lines.back();
        QCOMPARE(bar.points.size(), std::size_t{4});
        QVERIFY2(says(picture, "50 m"), allText(picture).c_str());
        const double pixelsPerMetre = (bar.points[2].x - bar.points[1].x) / 50;
        for (std::size_t i = 1; i < marks.size(); ++i) {
            const double metres = courseBetween(*places[0], *places[i]).distance.value();
            const double pixels = std::hypot(marks[i].at.x - marks[0].at.x, marks[i].at.y - marks[0].at.y);
            QVERIFY(std::abs(pixels / pixelsPerMetre - metres) < metres * 0.005);
        }
    }

    void northIsUpAndEastIsRight()
    {
        const auto marks = all<Mark>(frameMap(input({at(0, 0), at(100, 0), at(0, 100)})));
        QVERIFY(marks[1].at.x > marks[0].at.x + 20);
        QVERIFY(std::abs(marks[1].at.y - marks[0].at.y) < 0.5);
        QVERIFY(marks[2].at.y < marks[0].at.y - 20);
        QVERIFY(std::abs(marks[2].at.x - marks[0].at.x) < 0.5);
    }

    void theAntimeridianIsALineLikeAnyOther()
    {
        const std::vector<std::optional<GeoPoint>> here{at(0, 0, 66, 179.9995), at(100, 0, 66, 179.9995)};
        QVERIFY(here[1]->lonE7 < 0);
        const auto marks = all<Mark>(frameMap(input(here)));
        const auto usual = all<Mark>(frameMap(input({at(0, 0, 66, 20), at(100, 0, 66, 20)})));
        QVERIFY(std::abs(marks[1].at.x - usual[1].at.x) < 0.5);
    }

    void aFrameWithNoneFoundIsARing()
    {
        const auto marks = all<Mark>(frameMap(input({at(0, 0), at(60, 0)}, {0, 3})));
        QVERIFY(marks[0].isHollow);
        QVERIFY(!marks[1].isHollow);
    }

    void withoutAPlaceItSaysSo()
    {
        const Picture picture = frameMap(input({std::nullopt, std::nullopt}));
        QVERIFY(all<Mark>(picture).empty());
        QVERIFY(says(picture, "No frame knows"));
        QVERIFY(!says(picture, "N\n"));
        QVERIFY(!says(picture, " m\n"));
    }

    void theBarIsARoundLength_data()
    {
        QTest::addColumn<double>("most");
        QTest::addColumn<double>("length");
        const auto row = [](double most, double length) { QTest::addRow("%g", most) << most << length; };
        row(0.3, 1);
        row(1, 1);
        row(4.99, 2);
        row(5, 5);
        row(99, 50);
        row(100, 100);
        row(1999, 1000);
        row(23'000, 20'000);
        row(std::nan(""), 1);
    }

    void theBarIsARoundLength()
    {
        QFETCH(double, most);
        QFETCH(double, length);
        QCOMPARE(roundLength(Metres{most}), length);
    }

    void nothingIsDrawnWhereThereIsNoRoom()
    {
        FrameMapInput none = input(walked(3));
        none.width = 0;
        none.height = 0;
        QVERIFY(frameMap(none).primitives.empty());
    }
};

QTEST_APPLESS_MAIN(FrameMapTest)
#include "frame_map_test.moc"
