// SPDX-License-Identifier: MIT
#include <QTest>

#include <limits>

#include "domain/rules/placement.h"

using namespace duskrow::domain;

namespace {

const PlacementRule fromFarmyard{PlacementKind::Farmyard, PlacementDistance::Least, Metres{400.0}};
const PlacementRule fromEdge{PlacementKind::FieldEdge, PlacementDistance::About, Metres{2.0}};

} // namespace

class PlacementTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void verdicts_data()
    {
        QTest::addColumn<bool>("isEdge");
        QTest::addColumn<double>("distance");
        QTest::addColumn<double>("error");
        QTest::addColumn<int>("verdict");
        const auto row = [](const char* name, bool isEdge, double distance, double error,
                             PlacementVerdict v) {
            QTest::newRow(name) << isEdge << distance << error << static_cast<int>(v);
        };
        const double notKnown = std::numeric_limits<double>::quiet_NaN();
        row("far from the yard", false, 900.0, 0.0, PlacementVerdict::Fits);
        row("exactly far enough", false, 400.0, 0.0, PlacementVerdict::Fits);
        row("by the yard", false, 399.9, 0.0, PlacementVerdict::TooClose);
        row("its error leaves a doubt", false, 396.0, 5.0, PlacementVerdict::Fits);
        row("its error leaves none", false, 394.0, 5.0, PlacementVerdict::TooClose);
        row("an unknown error counts as none", false, 399.0, notKnown, PlacementVerdict::TooClose);
        row("not measured", false, notKnown, 0.0, PlacementVerdict::NotKnown);
        row("below zero is not measured", false, -1.0, 0.0, PlacementVerdict::NotKnown);
        row("two metres in", true, 2.0, 0.0, PlacementVerdict::Fits);
        row("half of it", true, 1.0, 0.0, PlacementVerdict::Fits);
        row("at the edge", true, 0.5, 0.0, PlacementVerdict::TooClose);
        row("twice as far", true, 4.0, 0.0, PlacementVerdict::Fits);
        row("far into the crop", true, 30.0, 5.0, PlacementVerdict::TooFar);
        row("far by a coarse fix", true, 7.0, 5.0, PlacementVerdict::Fits);
    }

    void verdicts()
    {
        QFETCH(bool, isEdge);
        QFETCH(double, distance);
        QFETCH(double, error);
        QFETCH(int, verdict);
        const std::vector<PlacementRule> rules{isEdge ? fromEdge : fromFarmyard};
        const std::vector<PlacementMeasure> measures{{rules[0].kind, Metres{distance}, Metres{error}}};
        const auto findings = checkPlacement(rules, measures);
        QCOMPARE(findings.size(), std::size_t{1});
        QCOMPARE(static_cast<int>(findings[0].verdict), verdict);
        QCOMPARE(findings[0].measured.has_value(), findings[0].verdict != PlacementVerdict::NotKnown);
    }

    void everyRuleIsAnsweredAndTheNearestCounts()
    {
        const std::vector<PlacementRule> rules{fromEdge,
            {PlacementKind::OtherPestTrap, PlacementDistance::Least, Metres{50.0}},
            {PlacementKind::SamePestTrap, PlacementDistance::Least, Metres{50.0}}};
        const std::vector<PlacementMeasure> measures{{PlacementKind::OtherPestTrap, Metres{700.0}, Metres{}},
            {PlacementKind::OtherPestTrap, Metres{30.0}, Metres{}},
            {PlacementKind::SamePestTrap, Metres{1200.0}, Metres{}},
            {PlacementKind::StrongLight, Metres{1.0}, Metres{}}};
        const auto findings = checkPlacement(rules, measures);
        QCOMPARE(findings.size(), std::size_t{3});
        QCOMPARE(findings[0].verdict, PlacementVerdict::NotKnown);
        QCOMPARE(findings[1].verdict, PlacementVerdict::TooClose);
        QCOMPARE(*findings[1].measured, Metres{30.0});
        QCOMPARE(findings[2].verdict, PlacementVerdict::Fits);
        QVERIFY(checkPlacement({}, measures).empty());
    }
};

QTEST_APPLESS_MAIN(PlacementTest)
#include "placement_test.moc"
