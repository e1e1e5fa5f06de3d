// SPDX-License-Identifier: MIT
#include <QTest>

#include "text/amounts.h"
#include "text/flag_text.h"

using namespace duskrow::domain;
using namespace duskrow::text;

namespace {

const QLocale english(QLocale::English, QLocale::Canada);

Flag flagOf(Check check, std::vector<std::int64_t> numbers)
{
    Flag flag;
    flag.check = check;
    flag.numbers = std::move(numbers);
    return flag;
}

} // namespace

class FlagTextTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theReason_data()
    {
        QTest::addColumn<int>("check");
        QTest::addColumn<QList<qint64>>("numbers");
        QTest::addColumn<QString>("said");
        const auto row = [](Check check, QList<qint64> numbers, const char* said) {
            QTest::newRow(said) << static_cast<int>(check) << numbers << QString::fromUtf8(said);
        };
        row(Check::InFuture, {2}, "The visit is dated 2 days after today.");
        row(Check::BeforeSetUp, {1}, "The visit is dated 1 day before the trap was set up.");
        row(Check::AfterTakeDown, {6}, "The visit is dated 6 days after the trap was taken down.");
        row(Check::WithoutTrap, {12}, "A count of 12 moths names a trap that is not here.");
        row(Check::WithoutTrap, {-1}, "A visit without a count names a trap that is not here.");
        row(Check::DoubleEntry, {1}, "Two visits to this trap on this day both say 1 moth.");
        row(Check::NightsCountedTwice, {15, 12},
            "15 moths, though the trap was emptied earlier on that day, with 12 moths.");
        row(Check::ReplacedTrapCounted, {7},
            "The visit is dated 7 days after another trap was set up in its stead.");
        row(Check::CountFell, {12, 30},
            "12 moths, after 30 moths at the visit before, which did not empty the trap.");
        row(Check::LongSinceEmptied, {22}, "The trap had not been emptied for 22 nights.");
        row(Check::MovedTrap, {412, 50, 8, 5},
            "Noted 412 m from the trap’s place; fixes within 8 m and 5 m explain up to 50 m.");
        row(Check::FasterThanDriving, {6, 9, 48'000, 23},
            "6 traps, 48 km from one to the next by straight lines, are noted within 9 min by one person; at "
            "130 km/h the way takes 23 min.");
        row(Check::FarAboveBefore, {41, 7, 4, 8},
            "41 moths in 7 nights, after 4 moths in 8 nights; it could not be held against traps around it.");
        row(Check::CatchUnlikelyLarge, {6000, 5000},
            "6,000 moths at one visit, where every catch above 5,000 is asked about.");
        row(Check::RoundedCounts, {14, 24},
            "14 of one person’s 24 counts of ten and more end in 0 or 5, where chance alone gives one "
            "in "
            "five.");
    }

    void theReason()
    {
        QFETCH(int, check);
        QFETCH(QList<qint64>, numbers);
        QFETCH(QString, said);
        const Flag flag = flagOf(static_cast<Check>(check), {numbers.begin(), numbers.end()});
        QCOMPARE(flagReason(flag, english), said);
    }

    void theCountsAroundStandInTheReason()
    {
        Flag flag = flagOf(Check::FarAboveAround, {1412, 7, 1412, 34});
        for (const double rate : {31.0, 28.4, 0.0})
            flag.around.push_back({{}, {}, MothsPerWeek{rate}, Metres{4'200.0}});
        QCOMPARE(flagReason(flag, english),
            QStringLiteral("1,412 moths in 7 nights; the 3 traps around it caught 31, 28, 0 in 7 nights for "
                           "the same week, from which about 34 were to be expected."));
        flag.numbers = {9, 9, 7, 34};
        flag.check = Check::FarBelowAround;
        QVERIFY(
            flagReason(flag, english).startsWith(QLatin1String("9 moths in 9 nights, or 7 in 7; the 3 ")));
        QCOMPARE(countNearby(flag.around.front(), english), QStringLiteral("31 in 7 nights, 4.2 km away"));
    }

    // One sentence each, all different, with the number where there is one; nothing is guessed.
    void everyCheckSaysHowManyGoodCountsGetIt()
    {
        QStringList names;
        for (std::size_t i = 0; i < checkNames.size(); ++i) {
            const auto check = static_cast<Check>(i);
            const FalseAlarms alarms = falseAlarmsOf(check);
            const QString said = goodCounts(check, english);
            QVERIFY2(said.endsWith(u'.') && said.count(u'.') == 1, qPrintable(said));
            QCOMPARE(said.contains(QStringLiteral("1 ")), alarms.which == GoodCounts::OneIn);
            if (alarms.which == GoodCounts::OneIn)
                QVERIFY2(said.contains(QStringLiteral(" in %1 ").arg(number(alarms.oneIn, english))),
                    qPrintable(said));
            QCOMPARE(said.startsWith(QLatin1String("No good count")), alarms.which == GoodCounts::None);
            QCOMPARE(said.startsWith(QLatin1String("Nobody")), alarms.which == GoodCounts::NotMeasured);
            names << checkName(check);
        }
        names.removeDuplicates();
        names.removeAll(QString());
        QCOMPARE(static_cast<std::size_t>(names.size()), checkNames.size());
        QCOMPARE(goodCounts(Check::FarAboveAround, english),
            QStringLiteral("1 good count in 400 gets this flag; it may be real."));
    }
};

QTEST_GUILESS_MAIN(FlagTextTest)
#include "flag_text_test.moc"
