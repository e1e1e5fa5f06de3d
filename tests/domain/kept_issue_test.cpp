// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/bulletin/kept_issue.h"
#include "domain/bulletin_scene.h"

using namespace duskrow::domain;

namespace {

KeptIssue issue()
{
    KeptIssue made{"bertha-armyworm", "green-bucket", {2026, 28},
        *weekFromIso({2026, 28}, std::chrono::Sunday), 2, instantFromMs(1'783'900'800'000),
        "One \"sentence\"", {numbered(3, 1), numbered(3, 2)}, {}, Moths{95}, {}};
    for (int i = 0; i < 7; ++i) made.reports.push_back(reported(i, 1, {521, -1067}, 1.5 * i, i));
    made.reports[3].moths.reset();
    made.reports[4].reporter.district.reset();
    made.reports[5].reporter.cell.reset();
    made.areas = {true, {1}, {{521, -1067}}};
    return made;
}

} // namespace

class KeptIssueTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void comesBackAsItWas()
    {
        const KeptIssue kept = issue();
        const auto back = readKeptIssue(keptIssueText(kept));
        QVERIFY(back);
        QCOMPARE(back->reports, kept.reports);
        QCOMPARE(back->areas, kept.areas);
        QCOMPARE(back->iso, kept.iso);
        QCOMPARE(back->week, kept.week);
        QCOMPARE(back->issue, 2);
        QCOMPARE(back->published, kept.published);
        QCOMPARE(back->summary, kept.summary);
        QCOMPARE(back->median, kept.median);
        QCOMPARE(back->districts, kept.districts);
    }

    void whatIsCutOrChangedIsRefused()
    {
        const std::string text = keptIssueText(issue());
        for (std::size_t length = 0; length < text.size(); length += 7)
            QVERIFY(!readKeptIssue(std::string_view(text).substr(0, length)));
        const auto with = [&](const char* what, const char* instead) {
            return QByteArray::fromStdString(text).replace(what, instead).toStdString();
        };
        QVERIFY(readKeptIssue(text));
        QVERIFY(!readKeptIssue(with("\"form\":1", "\"form\":2")));
        QVERIFY(!readKeptIssue(with("\"district\":1", "\"district\":2")));
        QVERIFY(!readKeptIssue(with("\"area_districts\":[1]", "\"area_districts\":[9]")));
        QVERIFY(!readKeptIssue(with("[521,-1067]", "[521,-9999]")));
        QVERIFY(!readKeptIssue(with("\"iso_week\":28", "\"iso_week\":\"28\"")));
        QVERIFY(!readKeptIssue("[]"));
        QVERIFY(!readKeptIssue(""));
    }

    void districtsAreFoundAgain()
    {
        const std::vector<Uuid> other{numbered(3, 9), numbered(3, 2), numbered(3, 1)};
        const Renumbered same = renumbered(issue(), other);
        QCOMPARE(same.areas.districts, std::vector<std::size_t>{1});
        QCOMPARE(same.reports[0].reporter.district, std::optional<std::size_t>(1));
        const std::vector<Uuid> without{numbered(3, 1)};
        const Renumbered lost = renumbered(issue(), without);
        QVERIFY(lost.areas.districts.empty());
        QVERIFY(!lost.reports[0].reporter.district);
        QCOMPARE(lost.areas.cells.size(), 1U);
    }
};

QTEST_APPLESS_MAIN(KeptIssueTest)
#include "kept_issue_test.moc"
