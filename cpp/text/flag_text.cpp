// SPDX-License-Identifier: MIT
#include "text/flag_text.h"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

#include "text/amounts.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct FlagWords {
    Q_DECLARE_TR_FUNCTIONS(Flag)
};

constexpr std::int64_t aWeek = 7; // nights

// The numbers of a flag, each with its unit. One that is missing is none.
class Numbers {
public:
    Numbers(const Flag& flag, const QLocale& locale, const Animal& animal)
        : m_flag(flag), m_locale(locale), m_animal(animal)
    {
    }

    [[nodiscard]] std::int64_t plain(std::size_t at) const
    {
        return at < m_flag.numbers.size() ? m_flag.numbers[at] : 0;
    }
    [[nodiscard]] QString whole(std::size_t at) const { return number(plain(at), m_locale); }
    [[nodiscard]] QString caught(std::size_t at) const { return m_animal.amount(Moths{plain(at)}, m_locale); }
    [[nodiscard]] QString over(std::size_t at) const { return nights(Nights{plain(at)}, m_locale); }
    [[nodiscard]] QString apart(std::size_t at) const { return days(std::chrono::days{plain(at)}, m_locale); }
    [[nodiscard]] QString metres(std::size_t at) const
    {
        return distance(Metres{static_cast<double>(plain(at))}, m_locale);
    }
    [[nodiscard]] QString minutes(std::size_t at) const
    {
        //: minutes
        return FlagWords::tr("%1 min").arg(whole(at));
    }

private:
    const Flag& m_flag;
    const QLocale& m_locale;
    const Animal& m_animal;
};

QString aroundReason(const Flag& flag, const Numbers& numbers, const QLocale& locale)
{
    QStringList around;
    for (const CountNearby& count : flag.around) around << number(std::llround(count.rate.value()), locale);
    const QString own = numbers.plain(1) == aWeek
        ? FlagWords::tr("%1 in %2").arg(numbers.caught(0), numbers.over(1))
        : FlagWords::tr("%1 in %2, or %3 in 7").arg(numbers.caught(0), numbers.over(1), numbers.whole(2));
    //: "47 moths in 7 nights"; a number of traps; "5, 7, 3"; a number of moths
    return FlagWords::tr(
        "%1; the %2 traps around it caught %3 in 7 nights for the same week, from which about "
        "%4 were to be expected.")
        .arg(own, number(static_cast<std::int64_t>(flag.around.size()), locale),
            around.join(QStringLiteral(", ")), numbers.whole(3));
}

QString withoutTrapReason(const Numbers& numbers)
{
    if (numbers.plain(0) < 0) return FlagWords::tr("A visit without a count names a trap that is not here.");
    return FlagWords::tr("A count of %1 names a trap that is not here.").arg(numbers.caught(0));
}

QString drivingReason(const Numbers& numbers)
{
    return FlagWords::tr("%1 traps, %2 from one to the next by straight lines, are noted within %3 by one "
                         "person; at 130 km/h the way takes %4.")
        .arg(numbers.whole(0), numbers.metres(2), numbers.minutes(1), numbers.minutes(3));
}

} // namespace

QString checkName(Check check)
{
    switch (check) {
    case Check::InFuture:
        return FlagWords::tr("In the future");
    case Check::BeforeSetUp:
        return FlagWords::tr("Before set-up");
    case Check::AfterTakeDown:
        return FlagWords::tr("After take-down");
    case Check::WithoutTrap:
        return FlagWords::tr("Without a trap");
    case Check::DoubleEntry:
        return FlagWords::tr("Perhaps entered twice");
    case Check::NightsCountedTwice:
        return FlagWords::tr("Second count of a day");
    case Check::ReplacedTrapCounted:
        return FlagWords::tr("After another trap took its place");
    case Check::CountFell:
        return FlagWords::tr("Fewer than before");
    case Check::LongSinceEmptied:
        return FlagWords::tr("Long since emptied");
    case Check::MovedTrap:
        return FlagWords::tr("Away from the trap’s place");
    case Check::FasterThanDriving:
        return FlagWords::tr("Faster than anybody drives");
    case Check::FarAboveAround:
        return FlagWords::tr("Far above the traps around");
    case Check::FarBelowAround:
        return FlagWords::tr("Far below the traps around");
    case Check::FarAboveBefore:
        return FlagWords::tr("Far above the visit before");
    case Check::CatchUnlikelyLarge:
        return FlagWords::tr("Very large catch");
    case Check::RoundedCounts:
        return FlagWords::tr("Many counts end in 0 or 5");
    }
    return {};
}

QString flagReason(const Flag& flag, const QLocale& locale, const Animal& animal)
{
    const Numbers numbers(flag, locale, animal);
    switch (flag.check) {
    case Check::InFuture:
        return FlagWords::tr("The visit is dated %1 after today.").arg(numbers.apart(0));
    case Check::BeforeSetUp:
        return FlagWords::tr("The visit is dated %1 before the trap was set up.").arg(numbers.apart(0));
    case Check::AfterTakeDown:
        return FlagWords::tr("The visit is dated %1 after the trap was taken down.").arg(numbers.apart(0));
    case Check::WithoutTrap:
        return withoutTrapReason(numbers);
    case Check::DoubleEntry:
        return FlagWords::tr("Two visits to this trap on this day both say %1.").arg(numbers.caught(0));
    case Check::NightsCountedTwice:
        return FlagWords::tr("%1, though the trap was emptied earlier on that day, with %2.")
            .arg(numbers.caught(0), numbers.caught(1));
    case Check::ReplacedTrapCounted:
        return FlagWords::tr("The visit is dated %1 after another trap was set up in its stead.")
            .arg(numbers.apart(0));
    case Check::CountFell:
        return FlagWords::tr("%1, after %2 at the visit before, which did not empty the trap.")
            .arg(numbers.caught(0), numbers.caught(1));
    case Check::LongSinceEmptied:
        return FlagWords::tr("The trap had not been emptied for %1.").arg(numbers.over(0));
    case Check::MovedTrap:
        return FlagWords::tr("Noted %1 from the trap’s place; fixes within %2 and %3 explain up to %4.")
            .arg(numbers.metres(0), numbers.metres(2), numbers.metres(3), numbers.metres(1));
    case Check::FasterThanDriving:
        return drivingReason(numbers);
    case Check::FarAboveAround:
    case Check::FarBelowAround:
        return aroundReason(flag, numbers, locale);
    case Check::FarAboveBefore:
        return FlagWords::tr("%1 in %2, after %3 in %4; it could not be held against traps around it.")
            .arg(numbers.caught(0), numbers.over(1), numbers.caught(2), numbers.over(3));
    case Check::CatchUnlikelyLarge:
        return FlagWords::tr("%1 at one visit, where every catch above %2 is asked about.")
            .arg(numbers.caught(0), numbers.whole(1));
    case Check::RoundedCounts:
        return FlagWords::tr("%1 of one person’s %2 counts of ten and more end in 0 or 5, where chance "
                             "alone gives one in five.")
            .arg(numbers.whole(0), numbers.whole(1));
    }
    return {};
}

QString goodCounts(Check check, const QLocale& locale)
{
    const QString many = number(falseAlarmsOf(check).oneIn, locale);
    switch (check) {
    case Check::InFuture:
        return FlagWords::tr("No good count gets this flag while this device has the right day.");
    case Check::BeforeSetUp:
        return FlagWords::tr("No good count gets this flag if the day of set-up is right.");
    case Check::AfterTakeDown:
        return FlagWords::tr("No good count gets this flag if the day of take-down is right.");
    case Check::ReplacedTrapCounted:
        return FlagWords::tr("No good count gets this flag if the other trap’s day of set-up is right.");
    case Check::WithoutTrap:
        return FlagWords::tr("Every good count gets this flag until its trap arrives.");
    case Check::DoubleEntry:
        return FlagWords::tr("Every two good counts that are alike get this flag; it may be real.");
    case Check::NightsCountedTwice:
        return FlagWords::tr("Every second good count of a day gets this flag; it may be real.");
    case Check::CountFell:
        return FlagWords::tr("Every good count below the one before gets this flag; it may be real.");
    case Check::LongSinceEmptied:
        return FlagWords::tr("Every good count over so many nights gets this flag; it may be real.");
    case Check::FasterThanDriving:
        return FlagWords::tr("Good counts that are typed in later get this flag as well; they may be real.");
    case Check::MovedTrap:
        return FlagWords::tr("At most 1 good fix in %1 gets this flag; it may be real.").arg(many);
    case Check::FarAboveAround:
    case Check::FarBelowAround:
    case Check::FarAboveBefore:
        return FlagWords::tr("1 good count in %1 gets this flag; it may be real.").arg(many);
    case Check::RoundedCounts:
        return FlagWords::tr("1 person in %1 who counts one by one gets this flag; it may be real.")
            .arg(many);
    case Check::CatchUnlikelyLarge:
        return FlagWords::tr("Nobody has measured how many good counts get this flag; it may be real.");
    }
    return {};
}

QString countNearby(const CountNearby& count, const QLocale& locale)
{
    return FlagWords::tr("%1 in 7 nights, %2 away")
        .arg(number(std::llround(count.rate.value()), locale), distance(count.distance, locale));
}

} // namespace duskrow::text
