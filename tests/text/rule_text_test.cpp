// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/pest_files.h"
#include "domain/rules/protocol_rules.h"
#include "domain/rules/rule_outcomes.h"
#include "text/field_rule_text.h"
#include "text/rule_text.h"

using namespace duskrow::domain;
namespace text = duskrow::text;

// What a person reads of each shape of rule, with the protocol files as they are shipped.
class RuleTextTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyRuleSaysWhatItFound_data()
    {
        QTest::addColumn<QByteArray>("pest");
        QTest::addColumn<QByteArray>("trap");
        QTest::addColumn<QByteArray>("story");
        QTest::addColumn<int>("rule");
        QTest::addColumn<QString>("said");
        const auto row = [](const char* name, const char* pest, const char* trap, const char* story, int rule,
                             const char* said) {
            QTest::newRow(name) << QByteArray(pest) << QByteArray(trap) << QByteArray(story) << rule
                                << QString::fromUtf8(said);
        };
        row("reached in two nights", "black-cutworm", "wing", "set:0430 0501=6 0502=4", 0,
            "10 moths in 2 nights, 30 Apr to 2 May: reached. The rule waits for 9 moths in 2 nights.");
        row("too many for thin spreading", "black-cutworm", "wing", "set:0430 0507=40", 0,
            "40 moths in 7 nights, 30 Apr to 7 May: reached, for so many cannot have come without 9 moths in "
            "2 nights.");
        row("nobody can tell", "black-cutworm", "wing", "set:0430 0503=9", 0,
            "9 moths in 3 nights, 30 Apr to 3 May: nobody can tell whether 9 moths came in 2 nights. Count "
            "more often.");
        row("not reached", "black-cutworm", "wing", "set:0430 0501=3", 0,
            "Not reached so far: the rule waits for 9 moths in 2 nights.");
        row("a sum", "wheat-midge", "delta", "set:0701 0704=12", 0,
            "12 midges so far. More than 10: go and scout.");
        row("a rate", "wheat-midge", "delta", "set:0701 0702=31", 1,
            "31 midges in 1 night, 1 Jul to 2 Jul. More than 30 a day: check every day.");
        row("a mean", "corn-earworm", "nylon-cone", "set:0701 0708=1", 0,
            "0.14 in 1 night, as a mean of 1 moth in 7 nights, 1 Jul to 8 Jul. Fewer than 0.2 a night.");
        row("visits in a row", "pea-moth", "delta", "set:0601 0603=10 0605=12", 0,
            "10 moths or more on 2 visits in a row, 1 Jun to 5 Jun: reached.");
        row("one of two", "pea-moth", "delta", "set:0601 0603=10", 0,
            "1 of 2 visits in a row with 10 moths or more so far.");
        row("half of the flight", "western-bean-cutworm", "green-bucket", "set:0701 0708=1500", 0,
            "1,500 moths so far. It is weighed when half of the flight is over, and nobody can tell that "
            "from "
            "one trap.");
        row("past the peak", "western-bean-cutworm", "milk-jug", "set:0701 0708=400 0715=500 0722=20", 0,
            "900 moths up to the peak, about 11 Jul. Moderate.");
        row("nothing counted", "wheat-midge", "delta", "set:0701", 0,
            "Nothing counted yet that it could be held against.");
    }

    void everyRuleSaysWhatItFound()
    {
        QFETCH(QByteArray, pest);
        QFETCH(QByteArray, trap);
        QFETCH(QByteArray, story);
        QFETCH(int, rule);
        const Protocol protocol = protocolNamed(pest.constData());
        const TrapStory told(story);
        const SeasonRules rules =
            seasonRulesOf(protocol, std::chrono::year{2026}, std::chrono::Sunday, storyDay("0801"));
        const auto outcomes = ruleOutcomes(protocol, trap.toStdString(), trapSeason(told.facts(), rules));
        QVERIFY(static_cast<int>(outcomes.size()) > rule);
        const auto words = text::ruleWords(
            outcomes[static_cast<std::size_t>(rule)], "en", m_english, text::animalOf(&protocol, "en"));
        QTEST(words.said, "said");
        QVERIFY(!words.name.isEmpty() && words.line().startsWith(words.name));
    }

    // What is found in the crop: the number as it was published, how to look, and the source.
    void everyFieldRuleIsALine()
    {
        const auto line = [](const char* pest, const std::string& id, const char* language) {
            const Protocol protocol = protocolNamed(pest);
            for (const FieldRule& rule : protocol.fieldRules)
                if (headOf(rule).id == id) return text::fieldRuleLine(protocol, rule, language);
            return QString();
        };
        QCOMPARE(line("western-bean-cutworm", "corn-michigan", "en").section(QStringLiteral(" ("), 0, 0),
            QStringLiteral(
                "Corn, Michigan, plants with egg masses: from 5 % of the plants, the visits added up. "
                "Look at 20 plants at each of 5 stops."));
        const QString ontario = line("true-armyworm", "cereals-ontario", "en");
        QVERIFY2(
            ontario.startsWith(QStringLiteral(
                "Cereals, Ontario: from 4 to 5 larvae on a square foot. On 30 by 30 cm at ten places. Those "
                "longer than 25 mm are not counted. Parasitised ones are left out. (")),
            qPrintable(ontario));
        QVERIFY(line("diamondback-moth", "larvae-buds", "en")
                    .contains(QStringLiteral("from 100 to 150 larvae on a square metre.")));
        QVERIFY(line("european-corn-borer", "first-generation", "en")
                    .contains(QStringLiteral("weighed against its cost, from the larvae on a plant.")));
        QVERIFY(
            line("true-armyworm", "cereals-ontario", "fr").startsWith(QStringLiteral("Céréales, Ontario")));
    }

    // Warmth is counted from the last day of the nights that reached it.
    void warmthFollowsFromThatDay()
    {
        const Protocol protocol = protocolNamed("black-cutworm");
        const TrapStory told("set:0430 0501=6 0502=4");
        const auto outcomes = ruleOutcomes(protocol, "wing", trapSeason(told.facts(), {}));
        const QString line = text::ruleWords(outcomes.front(), "en", m_english).line();
        QVERIFY2(line.contains(QStringLiteral("From 2 May on: Eggs hatch at 90 degree-days °F;")),
            qPrintable(line));
        QVERIFY(line.contains(QStringLiteral("Egg laying has begun here.")));
        QVERIFY(
            text::ruleWords(outcomes.front(), "fr", m_english).line().contains(QStringLiteral("La ponte")));
    }

    // The rule is for the wing trap: a bucket gets none.
    void anotherTrapTypeHasNoRule()
    {
        const Protocol protocol = protocolNamed("black-cutworm");
        const TrapStory told("set:0430 0501=16");
        QVERIFY(ruleOutcomes(protocol, "bucket", trapSeason(told.facts(), {})).empty());
    }

    void aMeanIsWrittenAsFinelyAsItNeeds()
    {
        QCOMPARE(text::meanCatch(28, m_english), QStringLiteral("28"));
        QCOMPARE(text::meanCatch(31.5, m_english), QStringLiteral("31.5"));
        QCOMPARE(text::meanCatch(27.96, m_english), QStringLiteral("27.96"));
        QCOMPARE(text::meanCatch(1.0 / 3, m_english), QStringLiteral("0.33"));
    }

private:
    const QLocale m_english{QLocale::English, QLocale::UnitedKingdom};
};

QTEST_APPLESS_MAIN(RuleTextTest)
#include "rule_text_test.moc"
