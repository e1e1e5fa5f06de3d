// SPDX-License-Identifier: MIT
#include <QTest>

#include "text/due_text.h"

using namespace duskrow::domain;
namespace text = duskrow::text;

Q_DECLARE_METATYPE(DueItem)

namespace {

const LocalDay today = dayOf(2026, 7, 14);

DueItem item(DueWhat what, DueReason why, int daysAhead, std::vector<std::int64_t> numbers)
{
    const LocalDay day = today + std::chrono::days{daysAhead};
    return {what, why, day, {}, false, std::move(numbers)};
}

DueItem overdue(DueItem due)
{
    due.isOverdue = true;
    return due;
}

DueItem until(DueItem due, int daysAhead)
{
    due.until = today + std::chrono::days{daysAhead};
    return due;
}

} // namespace

class DueTextTest : public QObject {
    Q_OBJECT

private:
    const QLocale m_english{QLocale::English, QLocale::UnitedKingdom};

private Q_SLOTS:
    void whatIsDueAndWhy_data()
    {
        QTest::addColumn<DueItem>("due");
        QTest::addColumn<QString>("words");
        QTest::addColumn<QString>("reason");
        const auto row = [](const char* name, const DueItem& due, const char* words, const char* reason) {
            QTest::newRow(name) << due << QString::fromUtf8(words) << QString::fromUtf8(reason);
        };
        row("a count is due with its nights", item(DueWhat::Count, DueReason::WeeklyCount, -1, {0, 8}),
            "count due, 8 nights", "8 nights since it was emptied.");
        row("a count that nobody has made for long",
            overdue(item(DueWhat::Count, DueReason::WeeklyCount, -8, {1, 15})), "count overdue, 15 nights",
            "15 nights since it was emptied. A count day went by. What is in the trap now is the catch of "
            "the "
            "whole time.");
        row("a count of a trap that was never emptied says no nights",
            item(DueWhat::Count, DueReason::WeeklyCount, 0, {0}), "count due",
            "The count day was Tuesday 14 July.");
        row("a count to come", item(DueWhat::Count, DueReason::WeeklyCount, 6, {0, 7}), "count on 20 Jul",
            "Counted every week; the next count day is Monday 20 July.");
        row("an old lure", item(DueWhat::LureChange, DueReason::LureOld, -2, {58, 56}), "change the lure",
            "The lure has been in for 58 days; it lasts about 56 days.");
        row("a lure that will be old", item(DueWhat::LureChange, DueReason::LureOld, 3, {56, 56}),
            "change the lure by 17 Jul",
            "On Friday 17 July the lure has been in for 56 days, as long as it lasts.");
        row("a lure past its date", item(DueWhat::LureChange, DueReason::LureExpired, -1, {2}),
            "change the lure", "The lure is 2 days past the date on its packet.");
        row("a lure that was gone", item(DueWhat::LureChange, DueReason::LureGone, 0, {0}), "put in a lure",
            "The lure was found gone today.");
        row("moths alive", item(DueWhat::StripChange, DueReason::MothsAlive, -1, {1}),
            "moths alive: change the killing strip",
            "Moths were found alive in the bucket yesterday: the strip is spent.");
        row("a strip that was gone", item(DueWhat::StripChange, DueReason::StripGone, -3, {3}),
            "put in a killing strip", "The killing strip was found gone 3 days ago.");
        row("the crop is there", item(DueWhat::RaiseStake, DueReason::CropAtEntrance, -1, {1000, 1050, 1200}),
            "raise the stake", "Entrance at 100 cm, canopy at 105 cm. Set it to 120 cm.");
        row("the crop comes and the stake ends",
            item(DueWhat::RaiseStake, DueReason::CropWillReach, 0, {1000, 900, 4}), "raise the stake",
            "Entrance at 100 cm, canopy at 90 cm. At its pace the crop reaches it about Saturday 18 July; an "
            "estimate from the last heights. This stake may not reach high enough.");
        row("set-up is not finished", item(DueWhat::SetUpUnfinished, DueReason::SetUpStepsOpen, -1, {1, 2}),
            "finish setting up", "Still to do: the place, the lure.");
        row("take-down is not finished",
            item(DueWhat::TakeDownUnfinished, DueReason::TakeDownStepsOpen, -1, {2}), "finish taking it down",
            "Still to do: wash the trap.");
        row("the season ends", item(DueWhat::TakeDown, DueReason::SeasonOver, 0, {0}), "take it down",
            "Traps come down from Tuesday 14 July, after a last count.");
        row("scouting is to come",
            until(item(DueWhat::ScoutingWindow, DueReason::PastPeak, 4, {120, 7, 14}), 18),
            "scouting for larvae opens about 18 Jul",
            "The highest catch, 120 moths in 7 nights, is past; larvae are looked for about 14 days after "
            "it. A "
            "trap catch never decides a spray.");
        row("scouting is open",
            until(item(DueWhat::ScoutingWindow, DueReason::PastPeak, -2, {120, 7, 14}), 12),
            "look for larvae until 26 Jul",
            "The highest catch, 120 moths in 7 nights, is past; larvae are looked for about 14 days after "
            "it. A "
            "trap catch never decides a spray.");
    }

    void whatIsDueAndWhy()
    {
        QFETCH(DueItem, due);
        QFETCH(QString, words);
        QFETCH(QString, reason);
        QCOMPARE(text::dueWords(due, today, m_english), words);
        QCOMPARE(text::dueReason(due, today, m_english), reason);
        QVERIFY(!text::dueName(due.what).isEmpty());
    }

    void everythingAtAStopIsOneLine()
    {
        const std::vector<DueItem> items{item(DueWhat::Count, DueReason::WeeklyCount, -1, {0, 8}),
            item(DueWhat::RaiseStake, DueReason::CropAtEntrance, -1, {1000, 1050, 1200})};
        QCOMPARE(
            text::dueLine(items, today, m_english), QStringLiteral("count due, 8 nights; raise the stake"));
    }

    void theReportHasItsDayAndTime()
    {
        QCOMPARE(text::reportBy({today, today, std::chrono::minutes{720}}, m_english),
            QStringLiteral("Report by Tuesday 14 July, 12:00"));
        QCOMPARE(text::reportBy({today, today, {}}, m_english), QStringLiteral("Report by Tuesday 14 July"));
    }
};

QTEST_GUILESS_MAIN(DueTextTest)
#include "due_text_test.moc"
