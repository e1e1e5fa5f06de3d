// SPDX-License-Identifier: MIT
#include <QRegularExpression>
#include <QTest>

#include "protocols/protocol_files.h"
#include "text/walk_sheet.h"

using namespace duskrow::domain;
namespace text = duskrow::text;
using text::SheetPart;

namespace {

const std::vector<int> nearThreshold{4, 9, 2, 15, 0, 6, 3, 8, 1, 7};

struct Told {
    std::vector<int> larvae = nearThreshold;
    bool hasMoney = true;
    bool isKept = true;
    std::optional<Decided> decided = {};
    bool isInvented = false;
    std::string who = "Wren Alder";
};

} // namespace

// What stands on the sheet of a walk, in words.
class WalkSheetTest : public QObject {
    Q_OBJECT

private:
    const QLocale m_english{QLocale::English, QLocale::Canada};
    Protocol m_protocol;
    Walk m_walk;
    std::vector<Frame> m_frames;

    void lay(const std::vector<int>& larvae)
    {
        m_walk = {};
        m_walk.day = dayOf(2026, 7, 14);
        m_walk.stageBbch = 75;
        m_walk.frameCm2 = 2500;
        m_walk.protocolVersion = m_protocol.version;
        m_frames.clear();
        for (const int count : larvae) {
            Frame frame;
            frame.day = m_walk.day;
            frame.stop = static_cast<int>(m_frames.size()) + 1;
            frame.larvae = Larvae{count};
            frame.bySize = "small:0 medium:" + std::to_string(count) + " large:0";
            frame.latE7 = 521'000'000;
            frame.lonE7 = -1'066'000'000;
            m_frames.push_back(frame);
        }
    }

    [[nodiscard]] text::WalkSheet sheetOf(const Told& told) const
    {
        const ThresholdRule& rule = m_protocol.thresholdRules.front();
        Decision decision;
        decision.day = m_walk.day;
        decision.decided = told.decided;
        decision.lookAgainDay = dayOf(2026, 7, 17);
        std::optional<Threshold> threshold;
        if (told.hasMoney) threshold = *thresholdOf(m_protocol, rule, {{"12"}, "CAD/ac", "10", "CAD/bu"});
        const auto result = walkResult(
            m_protocol, rule, m_walk, m_frames, told.isKept ? &decision : nullptr, threshold, *m_walk.day);
        if (!result) qFatal("no result");
        return text::walkSheet({.protocol = m_protocol,
                                   .rule = rule,
                                   .walk = m_walk,
                                   .frames = m_frames,
                                   .result = *result,
                                   .decision = told.isKept ? &decision : nullptr,
                                   .programme = "Willow bend",
                                   .isInvented = told.isInvented,
                                   .field = "Slough corner",
                                   .who = told.who,
                                   .day = *m_walk.day},
            m_english);
    }

    static QString saidIn(const text::WalkSheet& sheet, SheetPart part)
    {
        const text::SheetBlock* block = sheet.block(part);
        return block ? text::linesOf(*block).join(u'\n') : QString();
    }

private Q_SLOTS:
    void initTestCase()
    {
        QLocale::setDefault(m_english);
        const auto protocol = duskrow::protocols::loadProtocol(QStringLiteral("bertha-armyworm"));
        QVERIFY(protocol.has_value());
        m_protocol = *protocol;
    }

    void init() { lay(nearThreshold); }

    void theMessageSaysEverything()
    {
        const QString said = text::asText(sheetOf({.isInvented = true}));
        for (const char* wanted : {"Scouting walk · Willow bend · Invented", "Slough corner",
                 "Day: Tuesday 14 July 2026", "Walked by: Wren Alder", "Pest: Bertha armyworm",
                 "Crop stage: 75 · Half of the pods have their full size (BBCH scale of oilseed rape)",
                 "Frame: 0.25 m² (50 × 50 cm)",
                 "Too close to call · 22 per m² · likely 13 to 44 · your threshold 21",
                 "By hand: 55 larvae ÷ 10 frames ÷ 0.25 m² a frame = 22 larvae/m²",
                 "The chance that the field has more than 21 larvae per m² is about 62 %.",
                 "12 CAD/ac ÷ 0.58 CAD/ac for each larva/m² = 20.6897 larvae/m²",
                 "FRAMES\nFrame 1, Stop 1, Small 0", "All, Small 0, Medium 55, Large 0, Larvae 55",
                 "Nothing was decided yet.",
                 "Worked out for Tuesday 14 July 2026 by protocol bertha-armyworm, version 2026-1."})
            QVERIFY2(said.contains(QString::fromUtf8(wanted)),
                qPrintable(QString::fromUtf8(wanted) + u'\n' + said));
        static const QRegularExpression placeholder(QStringLiteral("%[0-9]"));
        QVERIFY(!said.contains(placeholder));
    }

    void everyCautionOfTheDecisionStandsOnEverySheet_data()
    {
        QTest::addColumn<bool>("hasMoney");
        QTest::addColumn<int>("frames");
        QTest::newRow("decided") << true << 10;
        QTest::newRow("no money") << false << 10;
        QTest::newRow("no frame") << true << 0;
    }

    void everyCautionOfTheDecisionStandsOnEverySheet()
    {
        QFETCH(bool, hasMoney);
        QFETCH(int, frames);
        lay(std::vector<int>(static_cast<std::size_t>(frames), 5));
        const QString said = text::asText(sheetOf({.hasMoney = hasMoney}));
        const auto cautions = m_protocol.cautionsAt(CautionPlace::Decision);
        QVERIFY(cautions.size() >= 5);
        for (const Statement& caution : cautions)
            QVERIFY2(said.contains(QString::fromStdString(caution.text.in("en"))), qPrintable(said));
    }

    // Each line that ends the walk, in the very numbers of the rule.
    void theLinesCanBeLookedUp()
    {
        const QString said = saidIn(sheetOf({}), SheetPart::Lines);
        QVERIFY2(said.contains(QStringLiteral("After 5, 10, 15, 20 stops")), qPrintable(said));
        const ThresholdRule& rule = m_protocol.thresholdRules.front();
        const Threshold threshold = *thresholdOf(m_protocol, rule, {{"12"}, "CAD/ac", "10", "CAD/bu"});
        const StopPlan plan = *planStops(stopDesignOf(m_protocol, threshold.larvae));
        QStringList below, above;
        for (const int stop : {5, 10, 15, 20}) {
            below << QString::number(belowUpTo(plan, stop)->value());
            above << QString::number(aboveFrom(plan, stop)->value());
        }
        QVERIFY2(said.contains(QStringLiteral("below at %1 larvae in all or fewer, above at %2 or more")
                                   .arg(below.join(QStringLiteral(", ")), above.join(QStringLiteral(", ")))),
            qPrintable(said));
    }

    void theTableCanBeAddedUp()
    {
        m_frames[2].larvae.reset();
        m_frames[2].bySize.clear();
        m_frames[1].sick = Larvae{2};
        m_frames[3].podsSeen = 25;
        m_frames[3].podsDamaged = 4;
        m_frames[5].podsSeen = 20;
        m_frames[5].podsDamaged = 1;
        const text::SheetTable table = sheetOf({}).block(SheetPart::Frames)->table;
        QCOMPARE(table.heads.size(), 8);
        QCOMPARE(table.rows.size(), std::size_t{10});
        const QString dash = QStringLiteral("\u2013");
        QCOMPARE(table.rows[2],
            (QStringList{QStringLiteral("3"), QStringLiteral("3"), dash, dash, dash, dash, dash, dash}));
        QCOMPARE(table.rows[3].back(), QStringLiteral("4 of 25"));
        QCOMPARE(table.sums.mid(2),
            (QStringList{QStringLiteral("0"), QStringLiteral("53"), QStringLiteral("0"), QStringLiteral("53"),
                QStringLiteral("2"), QStringLiteral("5 of 45")}));
    }

    void withoutMoneyItSaysWhatIsMissing()
    {
        const text::WalkSheet sheet = sheetOf({.hasMoney = false, .isKept = false});
        QVERIFY(sheet.verdict.isEmpty());
        QVERIFY(!sheet.verdictSign);
        QVERIFY(!sheet.next.isEmpty());
        QVERIFY(saidIn(sheet, SheetPart::Threshold)
                    .contains(QStringLiteral("cost and price have not been said")));
        QVERIFY(saidIn(sheet, SheetPart::Lines).contains(QStringLiteral("no line to stop at")));
        QVERIFY(!sheet.block(SheetPart::Reasons));
    }

    void moneyOfAnotherWalkIsSaidToBe()
    {
        const QString words = QStringLiteral("those of the walk before");
        QVERIFY(saidIn(sheetOf({.isKept = false}), SheetPart::Threshold).contains(words));
        QVERIFY(!saidIn(sheetOf({}), SheetPart::Threshold).contains(words));
    }

    void whatWasDecided_data()
    {
        QTest::addColumn<int>("decided");
        QTest::addColumn<QString>("said");
        QTest::newRow("control") << static_cast<int>(Decided::Control)
                                 << QStringLiteral("Control the larvae; decided on Tuesday 14 July 2026.");
        QTest::newRow("no control") << static_cast<int>(
            Decided::NoControl) << QStringLiteral("Leave the field alone; decided on Tuesday 14 July 2026.");
        QTest::newRow("look again") << static_cast<int>(Decided::LookAgain)
                                    << QStringLiteral("A good day to look again: Friday 17 July.");
    }

    void whatWasDecided()
    {
        QFETCH(int, decided);
        QFETCH(QString, said);
        const text::WalkSheet sheet = sheetOf({.decided = static_cast<Decided>(decided)});
        QVERIFY(sheet.isDecided);
        QVERIFY2(
            saidIn(sheet, SheetPart::Decided).contains(said), qPrintable(saidIn(sheet, SheetPart::Decided)));
    }

    void whatIsNotKnownIsSaid()
    {
        m_walk.stageBbch.reset();
        m_frames[1].latE7.reset();
        m_frames[6].lonE7.reset();
        m_frames[4].remark = "a patch\nof weeds";
        m_frames[9].day = dayOf(2026, 7, 15);
        m_walk.protocolVersion = "2025-2";
        const QString said = text::asText(sheetOf({.who = ""}));
        for (const char* wanted : {"Crop stage: not said", "Walked by: not known",
                 "do not know their place: frame 2, 7.", "Frame 5: a patch of weeds",
                 "Day: 14 Jul to Wednesday 15 July 2026", "began under version 2025-2."})
            QVERIFY2(said.contains(QString::fromUtf8(wanted)),
                qPrintable(QString::fromUtf8(wanted) + u'\n' + said));
    }

    void aDrySeasonThatWasNotedIsSaid()
    {
        QVERIFY(!text::asText(sheetOf({})).contains(QStringLiteral("Season:")));
        m_walk.drySeason = true;
        QVERIFY(text::asText(sheetOf({})).contains(QStringLiteral("Season: very dry, noted on the walk\n")));
        m_walk.drySeason = false;
        QVERIFY(!text::asText(sheetOf({})).contains(QStringLiteral("Season:")));
    }

    // The screen keeps its units whole by a mark that a message has no use for.
    void aMessageIsPlain()
    {
        const auto joiner = QChar(0x2060);
        QVERIFY(saidIn(sheetOf({}), SheetPart::Threshold).contains(joiner));
        QVERIFY(saidIn(sheetOf({}), SheetPart::Density).contains(joiner));
        QVERIFY(!text::asText(sheetOf({})).contains(joiner));
    }

    void noPlaceAtAllIsSaid()
    {
        for (Frame& frame : m_frames) frame.latE7.reset();
        QVERIFY(saidIn(sheetOf({}), SheetPart::Map).contains(QStringLiteral("No frame knows its place")));
        lay(nearThreshold);
        QVERIFY(saidIn(sheetOf({}), SheetPart::Map).isEmpty());
    }

    void aFrameThatIsNoSquareOfWholeCentimetres()
    {
        m_walk.frameCm2 = 1000;
        QVERIFY(text::asText(sheetOf({})).contains(QString::fromUtf8("Frame: 0.1 m²\n")));
    }
};

QTEST_GUILESS_MAIN(WalkSheetTest)
#include "walk_sheet_test.moc"
