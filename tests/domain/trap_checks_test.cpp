// SPDX-License-Identifier: MIT
#include <QTest>

#include <vector>

#include "domain/rules/local_plane.h"
#include "domain/rules/trap_checks.h"
#include "trap_story.h"

using namespace duskrow::domain;

namespace {

constexpr LocalDay today = dayOf(2026, 8, 14);

std::vector<Flag> flagsOf(const TrapStory& story)
{
    return trapFlags(story.facts(), catchIntervals(story.facts()), today);
}

// "0616 double_entry 47; ...", in the order in which they are found
QByteArray textOf(const std::vector<Flag>& flags)
{
    QByteArrayList lines;
    for (const Flag& flag : flags) {
        QByteArrayList words{storyText(*flag.day),
            QByteArray::fromStdString(std::string(checkNames[static_cast<std::size_t>(flag.check)]))};
        for (const std::int64_t number : flag.numbers) words << QByteArray::number(qint64{number});
        lines << words.join(' ');
    }
    return lines.join("; ");
}

constexpr double metresOfADegree = 111'268.0; // of latitude, at 52 degrees north

template <typename R>
void standAt(R& record, double metresNorth, std::int64_t accuracyMm)
{
    const GeoPoint place = toGeoPoint(52.0 + metresNorth / metresOfADegree, -106.0);
    record.latE7 = place.latE7;
    record.lonE7 = place.lonE7;
    if (accuracyMm > 0) record.accuracy = Millimetres{accuracyMm};
}

TrapStory placedStory(const QByteArray& text)
{
    TrapStory story(text);
    standAt(story.trap, 0.0, 5'000);
    return story;
}

} // namespace

class TrapChecksTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatTheRecordsSay_data()
    {
        QTest::addColumn<QByteArray>("story");
        QTest::addColumn<QByteArray>("flags");
        const auto row = [](const char* claim, const char* story, const char* flags) {
            QTest::newRow(claim) << QByteArray(story) << QByteArray(flags);
        };
        row("a good season", "set:0604 0609=12 0616=47 0623=31 0630=0 end:0707,season_over", "");
        row("nothing at all", "set:0604", "");
        row("tomorrow is not the future: clocks differ", "set:0604 0815=12,at_least",
            "0815 long_since_emptied 72");
        row("the day after tomorrow is", "set:0810 0816=12", "0816 in_future 2");
        row("before set-up", "set:0604 0601=12", "0601 before_set_up 3");
        row("on the day of set-up", "set:0604 0604=0", "");
        row("after take-down", "set:0604 0609=12 0616=5 end:0610,season_over", "0616 after_take_down 6");
        row("on the day of take-down", "set:0604 0610=12 end:0610,season_over", "");
        row("the same count twice", "set:0604 0609=12 0616=47 0616=47", "0616 double_entry 47");
        row("none twice", "set:0604 0609=0 0609=0", "0609 double_entry 0");
        row("three times", "set:0604 0609=12 0609=12 0609=12", "0609 double_entry 12; 0609 double_entry 12");
        row("the same count where nobody knows of the emptying", "set:0604 0609=12,unknown 0609=12",
            "0609 double_entry 12");
        row("the same count on two days", "set:0604 0609=12 0610=12", "");
        row("another count of the same day", "set:0604 0609=12 0609=15", "0609 nights_counted_twice 15 12");
        row("none left after emptying", "set:0604 0609=12 0609=0", "");
        row("looked at twice, emptied once", "set:0604 0609=12,kept 0609=12 0616=5", "");
        row("could not count, then counted", "set:0604 0609=none,access 0609=12", "");
        row("withdrawn", "set:0604 0609=12 0609=12,withdrawn", "");
        row("fewer moths than stood there", "set:0604 0609=30,kept 0616=12", "0616 count_fell 12 30");
        row("as many as stood there", "set:0604 0609=30,kept 0616=30", "");
        row("fewer after a trap that failed", "set:0604 0609=30,kept 0616=12,fallen", "");
        row("three weeks", "set:0604 0625=12", "");
        row("three weeks and a day", "set:0604 0626=12", "0626 long_since_emptied 22");
        row("above five thousand", "set:0604 0611=2000 0618=5001", "0618 catch_unlikely_large 5001 5000");
        row("far above the visit before", "set:0604 0611=4 0618=41", "0618 far_above_before 41 7 4 7");
        row("ten times is not far above", "set:0604 0611=4 0618=40", "");
        row("by its nights", "set:0604 0611=7 0613=21", "0613 far_above_before 21 2 7 7");
        row("first moths", "set:0604 0611=0 0618=20", "");
        row("many after none", "set:0604 0611=0 0618=21", "0618 far_above_before 21 7 0 7");
        row("an uncounted visit between", "set:0604 0611=2 0618=none,access 0625=90",
            "0625 far_above_before 90 14 2 7");
        row("after a trap that failed", "set:0604 0611=2,fallen 0618=90", "");
        row("nobody knows when it was set up", "0611=2 0618=3", "");
    }

    void whatTheRecordsSay()
    {
        QFETCH(QByteArray, story);
        QFETCH(QByteArray, flags);
        const TrapStory told(story);
        QCOMPARE(textOf(flagsOf(told)), flags);
    }

    void aFlagNamesItsRecords()
    {
        const TrapStory story("set:0604 0609=12 0616=47 0616=47");
        const auto flags = flagsOf(story);
        QCOMPARE(flags.size(), 1U);
        QVERIFY(flags[0].trap == story.trap.id);
        QVERIFY(flags[0].visit == story.visits[2].id);
        QVERIFY(flags[0].others == std::vector{story.visits[1].id});
        QVERIFY(flags[0].day == story.visits[2].day);
    }

    // Within 5 and 5 m the fixes explain 50 m, within 5 and 60 m 148.2 m: 60.21 sqrt(ln 0.001 / ln 0.32).
    void aFixAwayFromTheTrap_data()
    {
        QTest::addColumn<double>("metres");
        QTest::addColumn<int>("accuracy");
        QTest::addColumn<QByteArray>("flags");
        QTest::newRow("where it stands") << 0.0 << 5'000 << QByteArray();
        QTest::newRow("49 m") << 49.0 << 5'000 << QByteArray();
        QTest::newRow("52 m") << 52.0 << 5'000 << QByteArray("0611 moved_trap 52 50 5 5");
        QTest::newRow("140 m by a bad fix") << 140.0 << 60'000 << QByteArray();
        QTest::newRow("160 m by a bad fix") << 160.0 << 60'000 << QByteArray("0611 moved_trap 160 148 60 5");
        QTest::newRow("nobody knows how good the fix is") << 5'000.0 << 0 << QByteArray();
    }

    void aFixAwayFromTheTrap()
    {
        QFETCH(double, metres);
        QFETCH(int, accuracy);
        QFETCH(QByteArray, flags);
        TrapStory story = placedStory("set:0604 0611=12");
        standAt(story.visits[0], metres, accuracy);
        QCOMPARE(textOf(flagsOf(story)), flags);
    }

    void aPlaceThatWasTypedSaysNothingOfAFix()
    {
        TrapStory story = placedStory("set:0604 0611=12");
        story.trap.accuracy.reset();
        standAt(story.visits[0], 900.0, 5'000);
        QCOMPARE(textOf(flagsOf(story)), QByteArray());
        story.trap.latE7.reset();
        QCOMPARE(textOf(flagsOf(story)), QByteArray());
    }

    // Moved 600 m on 14 June: before it stood at 0, afterwards at 600, and that day at either.
    void aTrapThatWasMoved_data()
    {
        QTest::addColumn<QByteArray>("visit");
        QTest::addColumn<double>("metres");
        QTest::addColumn<QByteArray>("flags");
        QTest::newRow("before, at the old place") << QByteArray("0611=12") << 0.0 << QByteArray();
        QTest::newRow("before, at the new place")
            << QByteArray("0611=12") << 600.0 << QByteArray("0611 moved_trap 600 50 5 5");
        QTest::newRow("on that day, at the old place") << QByteArray("0614=12") << 0.0 << QByteArray();
        QTest::newRow("on that day, at the new place") << QByteArray("0614=12") << 600.0 << QByteArray();
        QTest::newRow("on that day, between")
            << QByteArray("0614=12") << 250.0 << QByteArray("0614 moved_trap 250 50 5 5");
        QTest::newRow("afterwards, at the new place") << QByteArray("0618=12") << 600.0 << QByteArray();
        QTest::newRow("afterwards, at the old place")
            << QByteArray("0618=12") << 0.0 << QByteArray("0618 moved_trap 600 50 5 6");
    }

    void aTrapThatWasMoved()
    {
        QFETCH(QByteArray, visit);
        QFETCH(double, metres);
        QFETCH(QByteArray, flags);
        TrapStory story = placedStory("set:0604 move:0614 " + visit);
        standAt(story.services[0], 600.0, 6'000);
        standAt(story.visits[0], metres, 5'000);
        QCOMPARE(textOf(flagsOf(story)), flags);
        story.services[0].withdrawn = "another trap";
        QCOMPARE(flagsOf(story).size(), metres > 0.0 ? 1U : 0U);
    }
};

QTEST_APPLESS_MAIN(TrapChecksTest)
#include "trap_checks_test.moc"
