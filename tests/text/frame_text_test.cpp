// SPDX-License-Identifier: MIT
#include <QTest>

#include "text/frame_text.h"

using namespace duskrow::domain;
namespace text = duskrow::text;

using Counts = QList<int>;

namespace {

constexpr LarvaePerSquareMetre threshold{20.0};

FrameEstimate estimateOf(const Counts& larvae, std::int64_t framesAtAStop = 1)
{
    std::vector<FrameStop> stops;
    for (const int count : larvae) stops.push_back({Larvae{count}, Frames{framesAtAStop}});
    const auto estimate = estimateFrames(stops, SquareMetres{0.25}, threshold);
    if (!estimate) qFatal("refused");
    return *estimate;
}

StopPlan plan()
{
    StopDesign design;
    design.threshold = threshold;
    const auto made = planStops(design);
    if (!made) qFatal("no plan");
    return *made;
}

} // namespace

class FrameTextTest : public QObject {
    Q_OBJECT

private:
    const QLocale m_english{QLocale::English, QLocale::Canada};

private Q_SLOTS:
    void estimate_data()
    {
        QTest::addColumn<Counts>("larvae");
        QTest::addColumn<int>("framesAtAStop");
        QTest::addColumn<QString>("sentences");
        const auto row = [](const char* claim, const Counts& larvae, int frames, const char* sentences) {
            QTest::newRow(claim) << larvae << frames << QString::fromUtf8(sentences);
        };
        row("nothing yet", {}, 1, "No frame was counted.");
        row("one larva in one frame", {1}, 1,
            "1 frame, 1 larva: 4.0 larvae per m² (1.0 a frame). Too few to know how much the field varies, "
            "so "
            "there is no range. Count more frames.");
        row("none found", Counts(10, 0), 1,
            "10 frames, 0 larvae: 0 larvae per m² (0 a frame). None found: the field probably has fewer than "
            "1.6 larvae per m², but not surely none.");
        row("four frames", {3, 5, 4, 6}, 1,
            "4 frames, 18 larvae: 18 larvae per m² (4.5 a frame). Too few frames for a useful range: it goes "
            "from 8.7 to 47 larvae per m².");
        row("ten frames", {4, 9, 2, 15, 0, 6, 3, 8, 1, 7}, 1,
            "10 frames, 55 larvae: 22 larvae per m² (5.5 a frame). The whole field probably has between 13 "
            "and "
            "44 larvae per m² (95 % range; approximate where a walk stopped early).");
        row("stops of two frames", {4, 9, 2, 15, 0, 6, 3, 8, 1, 7}, 2,
            "10 stops with 20 frames, 55 larvae: 11 larvae per m² (2.8 a frame). The whole field probably "
            "has "
            "between 6.4 and 22 larvae per m² (95 % range; approximate where a walk stopped early).");
    }

    void estimate()
    {
        QFETCH(Counts, larvae);
        QFETCH(int, framesAtAStop);
        QFETCH(QString, sentences);
        const auto estimate = estimateOf(larvae, framesAtAStop);
        QCOMPARE(text::estimateSentences(estimate, m_english).join(QLatin1Char(' ')), sentences);
    }

    void chance_data()
    {
        QTest::addColumn<double>("chance");
        QTest::addColumn<QString>("ending");
        QTest::newRow("hardly any") << 0.004 << "is below 1 %.";
        QTest::newRow("a third") << 0.333 << "is about 33 %.";
        QTest::newRow("nearly sure") << 0.9951 << "is above 99 %.";
    }

    void chance()
    {
        QFETCH(double, chance);
        QFETCH(QString, ending);
        FrameEstimate estimate;
        QVERIFY(text::chanceSentence(estimate, threshold, m_english).isEmpty());
        estimate.probabilityAbove = chance;
        QCOMPARE(text::chanceSentence(estimate, threshold, m_english),
            QStringLiteral("The chance that the field has more than 20 larvae per m² ") + ending);
    }

    void stop_data()
    {
        QTest::addColumn<Counts>("larvae");
        QTest::addColumn<QString>("sentence");
        const auto row = [](const char* claim, const Counts& larvae, const char* sentence) {
            QTest::newRow(claim) << larvae << QString::fromUtf8(sentence);
        };
        row("two frames", {3, 5},
            "Go on. After 5 frames stop at 9 larvae or fewer in all (below), or at 41 larvae or more "
            "(above).");
        row("ten frames", {4, 9, 2, 15, 0, 6, 3, 8, 1, 7},
            "Go on. After 11 frames stop at 39 larvae or fewer in all (below), or at 71 larvae or more "
            "(above).");
        row("patchy", {0, 0, 0, 12, 0, 0, 0, 0, 10, 0, 0},
            "Go on: the total is low, but the counts are so uneven that a patch may be missed. After 12 "
            "frames "
            "stop at 44 larvae or fewer in all (below), or at 76 larvae or more (above).");
        row("few", {1, 0, 2, 0, 0}, "3 larvae after 5 frames: far enough below the threshold to stop.");
        row("many", {14, 9, 22, 11, 17}, "73 larvae after 5 frames: far enough above the threshold to stop.");
        row("the last", Counts(20, 5),
            "After 20 frames the field is near the threshold. Look again in two or three days.");
    }

    void stop()
    {
        QFETCH(Counts, larvae);
        QFETCH(QString, sentence);
        const FrameEstimate estimate = estimateOf(larvae);
        const StopReport report = stopAfter(plan(), estimate.stops, estimate.larvae, estimate.dispersion);
        QCOMPARE(text::stopSentence(plan(), report, estimate, m_english), sentence);
    }

    void aPlanThatCannotStopBelowYetSaysSo()
    {
        StopDesign design;
        design.threshold = threshold;
        design.dispersion = 0.5;
        const FrameEstimate estimate = estimateOf({3, 5});
        QCOMPARE(text::stopSentence(*planStops(design), {}, estimate, m_english),
            QStringLiteral(
                "Go on. After 5 frames stop at 54 larvae or more in all (above); it is too early to "
                "stop below."));
    }

    void verdict_data()
    {
        QTest::addColumn<FrameVerdict>("verdict");
        QTest::addColumn<StopState>("state");
        QTest::addColumn<QString>("sentence");
        const auto row = [](const char* claim, FrameVerdict verdict, StopState state, const char* sentence) {
            QTest::newRow(claim) << verdict << state << QString::fromUtf8(sentence);
        };
        row("below", FrameVerdict::Below, StopState::Below, "Below your threshold of 20 larvae per m².");
        row("above", FrameVerdict::Above, StopState::Above, "Above your threshold of 20 larvae per m².");
        row("neither", FrameVerdict::TooCloseToCall, StopState::GoOn,
            "Too close to call at your threshold of 20 larvae per m².");
        row("a line met in vain", FrameVerdict::TooCloseToCall, StopState::Above,
            "Too close to call at your threshold of 20 larvae per m² all the same: the counts are too uneven "
            "to "
            "trust the total. Count more frames.");
    }

    void verdict()
    {
        QFETCH(FrameVerdict, verdict);
        QFETCH(StopState, state);
        QFETCH(QString, sentence);
        QCOMPARE(text::verdictSentence(verdict, state, threshold, m_english), sentence);
    }

    void errors_data()
    {
        QTest::addColumn<double>("factor");
        QTest::addColumn<QString>("fields");
        QTest::newRow("half") << 0.5 << "at half your threshold (10 larvae per m²)";
        QTest::newRow("a third below") << 2.0 / 3.0 << "a third below your threshold (13 larvae per m²)";
        QTest::newRow("right at it") << 1.0 << "right at your threshold (20 larvae per m²)";
        QTest::newRow("half as dense again")
            << 1.5 << "half as dense again as your threshold (30 larvae per m²)";
        QTest::newRow("twice") << 2.0 << "at twice your threshold (40 larvae per m²)";
        QTest::newRow("any other") << 0.4 << "with 8.0 larvae per m²";
    }

    void errors()
    {
        QFETCH(double, factor);
        QFETCH(QString, fields);
        OperatingRow row;
        row.density = LarvaePerSquareMetre{20.0 * factor};
        row.below = 0.909;
        row.above = 0.037;
        row.undecidedBelow = 0.0539;
        QCOMPARE(text::operatingSentence(row, threshold, m_english),
            QStringLiteral("Of 100 fields %1, about 91 are called below, 4 are called above and 5 stay open.")
                .arg(fields));
        row.above = 0.001;
        QVERIFY(text::operatingSentence(row, threshold, m_english)
                    .contains(QStringLiteral("fewer than 1 are called above")));
        row.above = 0.0;
        QVERIFY(text::operatingSentence(row, threshold, m_english)
                    .contains(QStringLiteral(", 0 are called above")));
    }
};

QTEST_GUILESS_MAIN(FrameTextTest)
#include "frame_text_test.moc"
