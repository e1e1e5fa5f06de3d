// SPDX-License-Identifier: MIT
#include <QTest>
#include <QTextBoundaryFinder>

#include "protocols/protocol_files.h"
#include "text/decision_text.h"
#include "text/threshold_text.h"
#include "text/unbroken.h"

using namespace duskrow::domain;
namespace text = duskrow::text;

// The sentences of a threshold and of a decision.
class ThresholdTextTest : public QObject {
    Q_OBJECT

private:
    const QLocale m_english{QLocale::English, QLocale::Canada};
    Protocol m_protocol;

    [[nodiscard]] Threshold of(const char* cost, const char* costUnit, const char* price,
        const char* priceUnit, const char* divisor = "") const
    {
        const auto threshold = thresholdOf(
            m_protocol, m_protocol.thresholdRules.front(), {{cost}, costUnit, price, priceUnit, divisor});
        if (!threshold) qFatal("refused");
        return *threshold;
    }

    static void isSentence(const QString& words)
    {
        QVERIFY2(words.size() > 10 && words.endsWith(u'.'), qPrintable(words));
        QVERIFY2(!words.contains(QStringLiteral("%1")) && !words.contains(QStringLiteral("%2")),
            qPrintable(words));
        QVERIFY2(!words.contains(u'?') && !words.contains(u'!'), qPrintable(words));
    }

private Q_SLOTS:
    void initTestCase()
    {
        QLocale::setDefault(m_english);
        const auto protocol = duskrow::protocols::loadProtocol(QStringLiteral("bertha-armyworm"));
        QVERIFY(protocol.has_value());
        m_protocol = *protocol;
    }

    void theThresholdInWords()
    {
        const Threshold threshold = of("12", "CAD/ac", "10", "CAD/bu");
        QCOMPARE(text::thresholdSentence(threshold, m_english),
            text::unbroken(QString::fromUtf8(
                "The economic threshold is 20.7 larvae/m² (about 21), or 5.2 larvae a frame.")));
        QCOMPARE(text::lossSentence(threshold, m_english),
            text::unbroken(
                QStringLiteral("One larva on each square metre costs 0.58 CAD/ac, which is 1.43 CAD/ha.")));
    }

    // 12 / 0.58 / 1.48 = 13.98.
    void aDrySeasonIsOfferedNotApplied()
    {
        const ThresholdRule& rule = m_protocol.thresholdRules.front();
        const QString offer = text::drySeasonOffer(of("12", "CAD/ac", "10", "CAD/bu"), rule, m_english);
        QVERIFY2(text::withoutJoiners(offer).contains(QString::fromUtf8("1.48 gives 14.0 larvae/m²")),
            qPrintable(offer));
        QVERIFY(text::drySeasonOffer(of("12", "CAD/ac", "10", "CAD/bu", "1.48"), rule, m_english).isEmpty());
    }

    void theWorkingInWords()
    {
        const Threshold threshold = of("30", "USD/ha", "441", "USD/t", "1.48");
        QStringList lines;
        for (const WorkingStep& step : threshold.working) {
            QVERIFY(!text::workingName(step.what).isEmpty());
            lines << text::withoutJoiners(text::workingLine(step, threshold, m_english));
        }
        const QStringList expected{QString::fromUtf8("30 USD/ha × 0.40468564224 ha/ac = 12.1406 USD/ac"),
            QString::fromUtf8("441 USD/t × 0.0226796185 t/bu = 10.0017 USD/bu"),
            QString::fromUtf8(
                "0.058 bu/ac for each larva/m² × 10.0017 USD/bu = 0.580099 USD/ac for each larva/m²"),
            QString::fromUtf8("12.1406 USD/ac ÷ 0.580099 USD/ac for each larva/m² = 20.9284 larvae/m²"),
            QString::fromUtf8("20.9284 larvae/m² ÷ 1.48 = 14.1408 larvae/m²"),
            QString::fromUtf8("14.1408 larvae/m² × 0.25 m² a frame = 3.53521 larvae a frame")};
        QCOMPARE(lines, expected);
    }

    // Where a line may end, after Unicode: never within a unit.
    void noUnitIsBroken()
    {
        const Threshold threshold = of("30", "USD/ha", "441", "USD/t", "1.48");
        const ThresholdRule& rule = m_protocol.thresholdRules.front();
        QStringList said{text::thresholdSentence(threshold, m_english),
            text::lossSentence(threshold, m_english), text::money(12.5, "CAD/ac", m_english),
            text::exactDensity(LarvaePerSquareMetre{20.7}, m_english),
            text::drySeasonOffer(of("12", "CAD/ac", "10", "CAD/bu"), rule, m_english),
            text::noteSentence(ThresholdNote::DrySeason, threshold, rule, m_english)};
        for (const WorkingStep& step : threshold.working)
            said << text::workingLine(step, threshold, m_english);
        for (const ChangeWhat what :
            {ChangeWhat::PriceAbove, ChangeWhat::CostAbove, ChangeWhat::DrySeasonDropped})
            said << text::changeSentence({what, {16.0}, {}}, threshold, m_english);
        for (const QString& words : said) {
            QVERIFY2(words.contains(u'/'), qPrintable(words));
            QTextBoundaryFinder ends(QTextBoundaryFinder::Line, words);
            for (auto at = ends.toNextBoundary(); at > 0 && at < words.size(); at = ends.toNextBoundary())
                QVERIFY2(words[at - 1] != u'/' && words[at - 1] != QChar(0x2060), qPrintable(words.left(at)));
        }
    }

    void everyNoteIsASentence()
    {
        const Threshold threshold = of("12", "CAD/ac", "10", "CAD/bu", "1.6");
        for (int note = 0; note <= static_cast<int>(ThresholdNote::FrameNotPublished); ++note)
            isSentence(text::noteSentence(
                static_cast<ThresholdNote>(note), threshold, m_protocol.thresholdRules.front(), m_english));
        QVERIFY(text::withoutJoiners(text::noteSentence(ThresholdNote::DrySeason, threshold,
                                         m_protocol.thresholdRules.front(), m_english))
                    .contains(QString::fromUtf8("20.7 larvae/m², is divided by 1.6")));
    }

    void everyReasonIsASentence()
    {
        for (int reason = 0; reason <= static_cast<int>(TimingReason::IntervalNotSaid); ++reason)
            isSentence(text::timingReason({static_cast<TimingReason>(reason), {5, 20, 13}}, m_english));
        for (int reason = 0; reason <= static_cast<int>(DecisionReason::TimingNotKnown); ++reason)
            isSentence(text::decisionReason({static_cast<DecisionReason>(reason), {5, 20, 13}}, m_english));
        for (int next = 0; next <= static_cast<int>(NextStep::TooLate); ++next)
            isSentence(text::nextStep(static_cast<NextStep>(next)));
        for (int verdict = 0; verdict <= static_cast<int>(ControlVerdict::TooCloseToCall); ++verdict)
            QVERIFY(!text::name(static_cast<ControlVerdict>(verdict)).isEmpty());
        for (int timing = 0; timing <= static_cast<int>(Timing::NotKnown); ++timing)
            QVERIFY(!text::name(static_cast<Timing>(timing)).isEmpty());
    }

    void changesInWords_data()
    {
        QTest::addColumn<int>("what");
        QTest::addColumn<double>("number");
        QTest::addColumn<QString>("words");
        const auto row = [](const char* name, ChangeWhat what, double number, const char* words) {
            QTest::newRow(name) << static_cast<int>(what) << number << QString::fromUtf8(words);
        };
        row("price", ChangeWhat::PriceAbove, 16.0, "At a price above 16 CAD/bu control would pay.");
        row("cost", ChangeWhat::CostAbove, 24.04, "At a cost above 24.04 CAD/ac control would not pay.");
        row("frames", ChangeWhat::MoreFrames, 4, "About 4 more frames would probably settle it.");
        row("season", ChangeWhat::DrySeasonDropped, 20.69,
            "Not called a dry season, the threshold would be 20.7 larvae/m², and control would not pay.");
    }

    void changesInWords()
    {
        QFETCH(int, what);
        QFETCH(double, number);
        QFETCH(QString, words);
        const Threshold threshold = of("12", "CAD/ac", "10", "CAD/bu");
        QCOMPARE(text::changeSentence({static_cast<ChangeWhat>(what), {number}, {}}, threshold, m_english),
            text::unbroken(words));
    }

    void reasonsSayTheirNumbers()
    {
        QCOMPARE(text::timingReason({TimingReason::LarvaeSmall, {25, 50, 13}}, m_english),
            QStringLiteral("25 % of the larvae are 13 mm or longer; it takes 50 %."));
        QCOMPARE(text::timingReason({TimingReason::IntervalTooShort, {9, 21}}, m_english),
            QStringLiteral("Cutting is 9 days away, but the label asks for 21 days."));
        QCOMPARE(text::timingReason({TimingReason::IntervalTooShort, {-2, 21}}, m_english),
            QStringLiteral("The crop is cut already."));
        ControlTiming timing;
        QVERIFY(text::lastDaySentence(timing).isEmpty() && text::lookAgainSentence(timing).isEmpty());
        timing.lastDay = dayOf(2026, 8, 11);
        timing.lookAgain = dayOf(2026, 8, 4);
        QVERIFY(text::lastDaySentence(timing, m_english).contains(QStringLiteral("11")));
        QVERIFY(text::lookAgainSentence(timing, m_english).contains(QStringLiteral("4")));
    }
};

QTEST_GUILESS_MAIN(ThresholdTextTest)
#include "threshold_text_test.moc"
