// SPDX-License-Identifier: MIT
#include <QTest>

#include <algorithm>
#include <cmath>

#include "formats/palette.h"
#include "formats/season_cases.h"
#include "formats/season_scale.h"
#include "formats/svg.h"
#include "formats/word_placer.h"

using namespace duskrow::domain;
using namespace duskrow::formats;

namespace {

template <typename Kind>
std::vector<Kind> all(const Picture& picture)
{
    std::vector<Kind> found;
    for (const Primitive& one : picture.primitives) {
        if (const auto* kind = std::get_if<Kind>(&one)) found.push_back(*kind);
    }
    return found;
}

// The curve is the only thick line in its ink; the edges of the fan are thin.
std::vector<Line> curveOf(const Picture& picture)
{
    auto lines = all<Line>(picture);
    std::erase_if(lines, [](const Line& line) { return line.ink != Ink::Curve || line.width < 3; });
    return lines;
}

std::string allText(const Picture& picture)
{
    std::string text;
    for (const Words& words : all<Words>(picture)) text += words.text + " ";
    return text;
}

SeasonChartInput sized(const SeasonCase& season, double width, double height, double textScale)
{
    SeasonChartInput input = season.input;
    input.width = width;
    input.height = height;
    input.textScale = textScale;
    return input;
}

SeasonChartInput withTotal(int caught, std::optional<SeasonFan> fan)
{
    SeasonChartInput input = seasonCases().front().input;
    input.intervals = {{input.firstDay, input.firstDay + std::chrono::days{7}, Moths{caught}}};
    input.fan = std::move(fan);
    return input;
}

} // namespace

class SeasonChartTest : public QObject {
    Q_OBJECT

    static void addCases()
    {
        QTest::addColumn<int>("index");
        QTest::addColumn<QSizeF>("size");
        QTest::addColumn<double>("textScale");
        const auto cases = seasonCases();
        for (std::size_t i = 0; i < cases.size(); ++i) {
            for (const QSizeF size : {QSizeF(320, 360), QSizeF(360, 420), QSizeF(900, 500)}) {
                for (const double textScale : {1.0, 1.5, 2.0}) {
                    QTest::addRow("%s, %g wide, text %g", cases[i].name.c_str(), size.width(), textScale)
                        << static_cast<int>(i) << size << textScale;
                }
            }
        }
    }

    static SeasonChartInput fetched()
    {
        const int index = *static_cast<int*>(QTest::qData("index", qMetaTypeId<int>()));
        const QSizeF size = *static_cast<QSizeF*>(QTest::qData("size", qMetaTypeId<QSizeF>()));
        const double scale = *static_cast<double*>(QTest::qData("textScale", qMetaTypeId<double>()));
        return sized(seasonCases()[static_cast<std::size_t>(index)], size.width(), size.height(), scale);
    }

private Q_SLOTS:
    void wordsStayInsideAndDoNotCoverEachOther_data() { addCases(); }

    void wordsStayInsideAndDoNotCoverEachOther()
    {
        const SeasonChartInput input = fetched();
        const Picture picture = seasonChart(input);
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

    void whatMattersIsSaidWhateverTheSize_data() { addCases(); }

    void whatMattersIsSaidWhateverTheSize()
    {
        const SeasonChartInput input = fetched();
        const std::string text = allText(seasonChart(input));
        std::vector<std::string> wanted;
        if (input.intervals.empty()) wanted.push_back(input.emptyLabel);
        if (!input.intervals.empty()) wanted.push_back(input.totalLabel);
        if (hasFan(input)) wanted.push_back(input.fan->label);
        for (const auto& label : wanted) {
            const std::string both = label + " in " + text;
            QVERIFY2(text.find(label) != std::string::npos, both.c_str());
        }
    }

    void theCurveClimbsToTheTotalAndNeverFalls_data() { addCases(); }

    void theCurveClimbsToTheTotalAndNeverFalls()
    {
        const SeasonChartInput input = fetched();
        const auto curve = curveOf(seasonChart(input));
        QCOMPARE(curve.empty(), input.intervals.empty());
        if (curve.empty()) return;
        const SeasonScale scale = seasonScale(input);
        Point last = curve.front().points.front();
        QCOMPARE(last.y, scale.plot.bottom);
        for (const Line& piece : curve) {
            for (const Point& point : piece.points) {
                QVERIFY(point.x >= last.x && point.y <= last.y);
                last = point;
            }
        }
        std::int64_t total = 0;
        for (const SeasonInterval& interval : input.intervals) total += interval.caught.value();
        const double share = static_cast<double>(total) / topOfScale(input);
        QVERIFY(share <= 0.9); // room for the label above its end
        QVERIFY(std::abs(last.y - (scale.plot.bottom - scale.plot.height() * share)) < 1e-6);
        QVERIFY(std::abs(last.x - scale.x(input.intervals.back().to)) < 1e-6);
    }

    void everyCountHasItsBarOnTheSameScale()
    {
        const auto cases = seasonCases();
        for (const SeasonCase& season : cases) {
            auto bars = all<Bar>(seasonChart(season.input));
            std::erase_if(bars, [](const Bar& bar) { return bar.ink != Ink::CatchBar; });
            QCOMPARE(bars.size(), season.input.intervals.size());
            const SeasonScale scale = seasonScale(season.input);
            for (std::size_t i = 0; i < bars.size(); ++i) {
                const SeasonInterval& interval = season.input.intervals[i];
                const auto caught = static_cast<double>(interval.caught.value());
                const double height = std::max(2.0, scale.plot.height() * caught / scale.top);
                QVERIFY(std::abs(bars[i].frame.height() - height) < 1e-6);
                QCOMPARE(bars[i].fill == Fill::Hatched, interval.isAtLeast);
                QVERIFY(scale.plot.holds(bars[i].frame));
            }
        }
    }

    void aMissedWeekIsDashedAndSaysSo()
    {
        const Picture picture = seasonChart(seasonCases()[1].input);
        const auto curve = curveOf(picture);
        QCOMPARE(
            std::count_if(curve.begin(), curve.end(), [](const Line& line) { return line.isDashed; }), 1);
        QVERIFY(curve[2].isDashed);
        QVERIFY(
            QString::fromStdString(allText(picture)).contains(QStringLiteral("one count over 14 nights")));
    }

    void aCountFromAFailedTrapHasAHollowDiamond()
    {
        auto marks = all<Mark>(seasonChart(seasonCases()[2].input));
        std::erase_if(marks, [](const Mark& mark) { return !mark.isHollow; });
        QCOMPARE(marks.size(), std::size_t{1});
        QVERIFY(marks.front().shape == MarkShape::Diamond);
    }

    // 1 + 2 + 3 dots for the three bands in sight.
    void bandsCarryDotsSoThatNoMeaningHangsOnColour()
    {
        auto marks = all<Mark>(seasonChart(seasonCases().front().input));
        std::erase_if(marks, [](const Mark& mark) { return mark.ink != Ink::Full; });
        QCOMPARE(marks.size(), std::size_t{6});
        const std::string text = allText(seasonChart(seasonCases().front().input));
        for (const char* name : {"low", "uncertain", "moderate"})
            QVERIFY(text.find(name) != std::string::npos);
        QVERIFY(text.find("high") == std::string::npos); // above the top
    }

    void partOfTheFlightHasNoBand()
    {
        const Picture picture = seasonChart(seasonCases()[3].input);
        for (const Bar& bar : all<Bar>(picture)) {
            QVERIFY(bar.ink != Ink::Tint1 && bar.ink != Ink::Tint2 && bar.ink != Ink::Tint3);
        }
        const auto bars = all<Bar>(picture);
        QVERIFY(std::any_of(bars.begin(), bars.end(),
            [](const Bar& bar) { return bar.ink == Ink::Unknown && bar.fill == Fill::Hatched; }));
    }

    void withoutRoomNothingIsDrawn()
    {
        for (const SeasonCase& season : seasonCases()) {
            for (const double edge : {-1.0, 0.0, 40.0}) {
                QVERIFY(seasonChart(sized(season, edge, edge, 1)).primitives.empty());
            }
            QVERIFY(!seasonChart(sized(season, 160, 160, 2)).primitives.empty());
        }
    }

    void tops_data()
    {
        QTest::addColumn<int>("caught");
        QTest::addColumn<int>("high"); // of the fan; -1 for none
        QTest::addColumn<double>("top");
        QTest::newRow("one moth does not fill the picture") << 1 << -1 << 10.0;
        QTest::newRow("a small catch is not flattened under 300") << 40 << -1 << 52.0;
        QTest::newRow("the edge shows from a quarter of the way") << 75 << -1 << 345.0;
        QTest::newRow("the edge shows below a quarter if the fan gets there") << 20 << 80 << 345.0;
        QTest::newRow("on the edge the next one counts") << 300 << -1 << 1035.0;
        QTest::newRow("the fan decides") << 259 << 640 << 1035.0;
        QTest::newRow("above all edges") << 2000 << -1 << 2600.0;
    }

    void tops()
    {
        QFETCH(int, caught);
        QFETCH(int, high);
        QFETCH(double, top);
        std::optional<SeasonFan> fan;
        if (high >= 0) fan = SeasonFan{Moths{caught}, Moths{high}, "likely"};
        QVERIFY(std::abs(topOfScale(withTotal(caught, fan)) - top) < 1e-6);
    }

    void stepsAreRound_data()
    {
        QTest::addColumn<double>("top");
        QTest::addColumn<QList<int>>("steps");
        QTest::newRow("ten") << 10.0 << QList<int>{5, 10};
        QTest::newRow("less than one moth apart is no step") << 2.0 << QList<int>{1, 2};
        QTest::newRow("182") << 182.0 << QList<int>{50, 100, 150};
        QTest::newRow("11,700") << 11700.0 << QList<int>{5000, 10000};
    }

    void stepsAreRound()
    {
        QFETCH(double, top);
        QFETCH(QList<int>, steps);
        QList<int> found;
        for (const Moths step : roundSteps(top)) found << static_cast<int>(step.value());
        QCOMPARE(found, steps);
    }

    void linesBreakEvenlyAndLoseNoWord_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<double>("width");
        QTest::addColumn<QByteArrayList>("lines");
        const auto row = [](const char* name, const char* text, double width, const QByteArrayList& lines) {
            QTest::newRow(name) << QByteArray(text) << width << lines;
        };
        row("fits", "one two", 100, {"one two"});
        row("evenly", "season likely 380 to 980", 200, {"season likely", "380 to 980"});
        row("too long a word stands alone", "a Wahrscheinlichkeit b", 60, {"a", "Wahrscheinlichkeit", "b"});
        row("nothing", "", 60, {});
    }

    void linesBreakEvenlyAndLoseNoWord()
    {
        QFETCH(QByteArray, text);
        QFETCH(double, width);
        QFETCH(QByteArrayList, lines);
        QByteArrayList found;
        for (const auto& line : brokenIntoLines(text.toStdString(), 16, width)) {
            found << QByteArray::fromStdString(line);
        }
        QCOMPARE(found, lines);
    }

    void wordsCanBeReadOnWhatTheyStandOn_data()
    {
        QTest::addColumn<int>("ink");
        QTest::addColumn<int>("ground");
        QTest::addColumn<double>("least");
        const auto row = [](const char* name, Ink ink, Ink ground, double least) {
            QTest::newRow(name) << static_cast<int>(ink) << static_cast<int>(ground) << least;
        };
        row("words on the lowest band", Ink::Full, Ink::Tint1, 4.5);
        row("words on the second band", Ink::Full, Ink::Tint2, 4.5);
        row("words on the third band", Ink::Full, Ink::Tint3, 4.5);
        row("words on the highest band", Ink::Full, Ink::Tint4, 4.5);
        row("words on card", Ink::Full, Ink::Card, 4.5);
        row("soft words on card", Ink::Soft, Ink::Card, 4.5);
        row("soft words on paper", Ink::Soft, Ink::Paper, 4.5);
        row("curve on the highest band", Ink::Curve, Ink::Tint4, 3);
        row("curve on the lowest band", Ink::Curve, Ink::Tint1, 3);
        row("bar on the lowest band", Ink::CatchBar, Ink::Tint1, 3);
        row("bar on card", Ink::CatchBar, Ink::Card, 3);
    }

    void wordsCanBeReadOnWhatTheyStandOn()
    {
        QFETCH(int, ink);
        QFETCH(int, ground);
        QFETCH(double, least);
        for (const Light light : {Light::Day, Light::Night}) {
            const double found =
                contrast(rgbOf(static_cast<Ink>(ink), light), rgbOf(static_cast<Ink>(ground), light));
            QVERIFY2(found >= least, qPrintable(QString::number(found)));
        }
    }
};

QTEST_APPLESS_MAIN(SeasonChartTest)
#include "season_chart_test.moc"
