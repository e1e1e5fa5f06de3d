// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/protocol/protocol_reader.h"
#include "domain/protocol_files.h"
#include "domain/rules/protocol_rules.h"
#include "trap_story.h"

using namespace duskrow::domain;
using std::chrono::days;

class ProtocolRulesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        const auto read = readProtocol(protocolText("bertha-armyworm"), "bertha-armyworm.json");
        QVERIFY(read.has_value());
        m_protocol = *read;
    }

    // Traps go up in the first week of June and the first moths come a week later at the soonest; they come
    // down after the count of the last week of July.
    void aWholeSeasonOfBertha()
    {
        const LocalDay today = dayOf(2026, 7, 14);
        const SeasonRules rules =
            seasonRulesOf(m_protocol, std::chrono::year{2026}, std::chrono::Monday, today);
        QVERIFY(rules.latestSetUp == dayOf(2026, 6, 14));
        QVERIFY(rules.earliestTakeDown == dayOf(2026, 7, 25));
        QVERIFY(rules.lastDay == dayOf(2026, 7, 31));
        QVERIFY(rules.weekStart == std::chrono::Monday);
        QVERIFY(rules.today == today);
    }

    void theWorkAtABucketTrap()
    {
        const DueRules rules =
            dueRulesOf(m_protocol, m_protocol.trapTypes.front().id, std::chrono::year{2026}, m_week);
        QCOMPARE(rules.visitInterval.count(), days{7}.count());
        QCOMPARE(rules.lureLife->count(), days{56}.count());
        QVERIFY(rules.hasStrip);
        QCOMPARE(rules.stripLife, m_protocol.killingStrip->life.to);
        QVERIFY(rules.heightRule == HeightRule::FollowCanopy);
        QCOMPARE(rules.stake.lowest, Millimetres{600});
        QCOMPARE(rules.stake.highest, Millimetres{1200});
        QVERIFY(rules.takeDownFrom == dayOf(2026, 7, 25));
        QVERIFY(takeDownDay(rules) == dayOf(2026, 7, 28));
        QCOMPARE(rules.scoutingAfterPeak->count(), days{14}.count());
        QVERIFY(rules.week.countDay == std::chrono::Tuesday);
    }

    // Trees and ditches have no published distance: they are said, not measured.
    void theDistancesThatBerthaAsksFor()
    {
        const auto rules = placementRulesOf(m_protocol);
        QCOMPARE(rules.size(), std::size_t{5});
        QVERIFY(rules[0].kind == PlacementKind::FieldEdge);
        QVERIFY(rules[0].meant == PlacementDistance::About);
        QCOMPARE(rules[0].distance, Metres{2});
        QVERIFY(rules[1].kind == PlacementKind::Farmyard);
        QVERIFY(rules[1].meant == PlacementDistance::Least);
        QCOMPARE(rules[1].distance, Metres{400});
        QVERIFY(rules[2].kind == PlacementKind::StrongLight);
        QCOMPARE(rules[2].distance, Metres{500});
        QVERIFY(rules[3].kind == PlacementKind::OtherPestTrap);
        QVERIFY(rules[4].kind == PlacementKind::SamePestTrap);
        QVERIFY(!placementKindOf(m_protocol.placement.back()));
    }

    void whatAProtocolLeavesOutIsNotDue()
    {
        Protocol bare;
        bare.id = "bare";
        const DueRules rules = dueRulesOf(bare, "bucket", std::chrono::year{2026}, m_week);
        QVERIFY(!rules.lureLife);
        QVERIFY(!rules.stripLife);
        QVERIFY(!rules.hasStrip);
        QVERIFY(!takeDownDay(rules));
        QVERIFY(!rules.scoutingAfterPeak);
        QCOMPARE(rules.visitInterval.count(), days{7}.count());
        const SeasonRules season =
            seasonRulesOf(bare, std::chrono::year{2026}, std::chrono::Sunday, dayOf(2026, 7, 14));
        QVERIFY(!season.latestSetUp);
        QVERIFY(!season.earliestTakeDown);
    }

    // A lure of eight weeks that went in on 4 June lasts until traps come down: nothing to change.
    void oneLureLastsABerthaSeason()
    {
        TrapStory story("set:0604");
        story.trap.lureIn = story.trap.stripIn = true;
        const DueRules rules =
            dueRulesOf(m_protocol, m_protocol.trapTypes.front().id, std::chrono::year{2026}, m_week);
        for (const DueItem& item : dueOf(story.facts(), rules, dayOf(2026, 7, 14)))
            QVERIFY(item.what != DueWhat::LureChange);
    }

private:
    Protocol m_protocol;
    SeasonWeek m_week{std::chrono::Sunday, std::chrono::Tuesday, days{1}, {}, {}};
};

QTEST_APPLESS_MAIN(ProtocolRulesTest)
#include "protocol_rules_test.moc"
