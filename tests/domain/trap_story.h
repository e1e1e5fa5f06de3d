// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QByteArrayList>
#include <QTest>

#include <algorithm>
#include <vector>

#include "domain/rules/trap_facts.h"

// One trap of 2026 in a line of text, so that a row of a test reads like a page of a notebook:
//
//   "set:0604 0609=12 0616=47,kept 0623=none,spoiled,emptied named:0616,2 end:0729,season_over"
//
// A counted visit empties the trap unless it says "kept" or "unknown"; one without a count ("none") does not.
namespace duskrow::domain {

inline LocalDay storyDay(const QByteArray& monthDay, int year = 2026)
{
    return dayOf(year, monthDay.left(2).toUInt(), monthDay.mid(2, 2).toUInt());
}

inline QByteArray storyText(LocalDay day)
{
    const std::string text = formatDay(day);
    return QByteArray::fromStdString(text.substr(5, 2) + text.substr(8, 2));
}

template <std::size_t N>
int storyCode(const std::array<std::string_view, N>& names, const QByteArray& word)
{
    const auto found = std::find(names.begin(), names.end(), word.toStdString());
    return found == names.end() ? -1 : static_cast<int>(found - names.begin());
}

struct TrapStory {
    Trap trap;
    std::vector<Visit> visits;
    std::vector<Service> services;
    std::vector<Sample> samples;

    explicit TrapStory(const QByteArray& text, std::uint8_t number = 1)
    {
        trap.id = idOf(number, 0);
        const QByteArrayList words = text.simplified().split(' ');
        for (const QByteArray& word : words)
            if (!word.isEmpty()) tell(word);
    }

    [[nodiscard]] TrapFacts facts() const { return {trap, visits, services, samples}; }

private:
    static Uuid idOf(std::uint8_t kind, std::size_t number)
    {
        Uuid id;
        id.bytes[0] = kind;
        id.bytes[15] = static_cast<std::uint8_t>(number);
        return id;
    }

    void tell(const QByteArray& word)
    {
        if (word.contains('='))
            tellVisit(word);
        else
            tellOther(word.left(word.indexOf(':')), word.mid(word.indexOf(':') + 1).split(','));
    }

    void tellOther(const QByteArray& what, const QByteArrayList& parts)
    {
        if (what == "set")
            setUp(parts);
        else if (what == "end")
            end(parts);
        else if (what == "named" || what == "kept")
            sample(what, parts);
        else
            service(what, parts);
    }

    // "set:0604,1000,350": day, entrance and canopy in millimetres
    void setUp(const QByteArrayList& parts)
    {
        trap.setDay = storyDay(parts.at(0));
        if (parts.size() > 1) trap.entrance = Millimetres{parts.at(1).toLongLong()};
        if (parts.size() > 2) trap.canopy = Millimetres{parts.at(2).toLongLong()};
    }

    void end(const QByteArrayList& parts)
    {
        trap.endDay = storyDay(parts.at(0));
        const int reason = storyCode(endReasonNames, parts.at(1));
        QVERIFY2(reason >= 0, parts.at(1));
        trap.endReason = static_cast<EndReason>(reason);
    }

    // "named:0616,2" or "kept:0616,5": day of the visit, moths
    void sample(const QByteArray& what, const QByteArrayList& parts)
    {
        const LocalDay day = storyDay(parts.at(0));
        const auto visit =
            std::find_if(visits.begin(), visits.end(), [&](const Visit& each) { return each.day == day; });
        QVERIFY(visit != visits.end());
        Sample made;
        made.visit = visit->id;
        made.moths = Moths{parts.at(1).toLongLong()};
        made.state = what == "named" ? SampleState::Named : SampleState::Kept;
        if (what == "named") made.pest = made.moths;
        samples.push_back(made);
    }

    // "lure:0714", "strip:0714", "move:0714", "raise:0714,1200"; a lure may say the date on its packet
    void service(const QByteArray& what, const QByteArrayList& parts)
    {
        Service done;
        const int code = storyCode(serviceWhatNames, what);
        QVERIFY2(code >= 0, what);
        done.what = static_cast<ServiceWhat>(code);
        done.day = storyDay(parts.at(0));
        if (parts.size() > 1 && what == "raise") done.entrance = Millimetres{parts.at(1).toLongLong()};
        if (parts.size() > 1 && what == "lure") done.lureExpiry = storyDay(parts.at(1));
        services.push_back(done);
    }

    void tellVisit(const QByteArray& word)
    {
        Visit visit;
        visit.id = idOf(100, visits.size() + 1);
        visit.day = storyDay(word.left(4));
        QByteArrayList parts = word.mid(5).split(',');
        const QByteArray count = parts.takeFirst();
        visit.outcome = count == "none" ? Outcome::CouldNotCount : Outcome::Counted;
        if (count != "none") visit.pest = Moths{count.toLongLong()};
        visit.emptied = count != "none";
        for (const QByteArray& part : parts) tellPart(visit, part);
        visits.push_back(visit);
    }

    static void tellPart(Visit& visit, const QByteArray& part)
    {
        const int state = storyCode(trapStateNames, part);
        const int reason = storyCode(noCountReasonNames, part);
        if (part == "kept" || part == "emptied")
            visit.emptied = part == "emptied";
        else if (part == "unknown")
            visit.emptied.reset();
        else if (part == "withdrawn")
            visit.withdrawn = "typed twice";
        else if (part == "at_least")
            visit.atLeast = true;
        else if (part == "alive")
            visit.mothsAlive = true;
        else if (part == "no_strip")
            visit.stripThere = false;
        else if (part == "lure_there")
            visit.lureThere = true;
        else if (part == "flowered")
            visit.floweringOver = true;
        else if (part.startsWith("unsure"))
            visit.unsure = Moths{part.mid(6).toLongLong()};
        else if (part.startsWith("canopy"))
            visit.canopy = Millimetres{part.mid(6).toLongLong()};
        else if (part.contains(".."))
            tellRange(visit, part);
        else if (visit.outcome == Outcome::CouldNotCount && reason >= 0)
            visit.reason = static_cast<NoCountReason>(reason);
        else if (state >= 0)
            visit.state = static_cast<TrapState>(state);
        else
            QFAIL(QByteArray("no such word: ") + part);
    }

    static void tellRange(Visit& visit, const QByteArray& part)
    {
        const auto dots = part.indexOf("..");
        visit.pestLow = Moths{part.left(dots).toLongLong()};
        visit.pestHigh = Moths{part.mid(dots + 2).toLongLong()};
    }
};

} // namespace duskrow::domain
