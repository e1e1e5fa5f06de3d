// SPDX-License-Identifier: MIT
#include "sync/roster/bringing_along.h"

#include <filesystem>

#include "store/photos.h"
#include "store/queries.h"
#include "store/segments.h"

namespace duskrow::sync {

using namespace duskrow::domain;

namespace {

template <typename R>
Result<std::vector<R>> allOf(store::Reader& reader)
{
    store::Selection all;
    all.withWithdrawn = true;
    return reader.select<R>(all);
}

// What the first failure was, if any; work after it is not done.
class Trouble {
public:
    template <typename T>
    T operator()(Result<T> result)
    {
        if (result) return std::move(*result);
        if (!m_error) m_error = result.error();
        return T{};
    }
    [[nodiscard]] const std::optional<Error>& error() const { return m_error; }

private:
    std::optional<Error> m_error;
};

class Bringing {
public:
    Bringing(store::Reader& solo, store::Reader& here, store::Store& joined, const Uuid& member, LocalDay now)
        : m_solo(solo), m_here(here), m_joined(joined), m_member(member), m_today(now)
    {
    }

    Result<std::vector<Edit>> edits()
    {
        readNames();
        readSeasons();
        bringDistricts();
        bringSitesAndTraps();
        bringTrapWork();
        bringWalks();
        if (m_trouble.error()) return *m_trouble.error();
        return std::move(m_edits);
    }
    [[nodiscard]] const Brought& brought() const { return m_brought; }

private:
    void readNames()
    {
        m_isCoordinator =
            m_trouble(store::rosterOf(m_here, m_joined.programme())).isCoordinator(m_joined.stream());
        const auto me = m_trouble(m_solo.deviceSetting("me"));
        m_me = me ? parseUuid(*me).value_or(Uuid{}) : Uuid{};
        for (const Member& one : m_trouble(allOf<Member>(m_solo))) m_names[one.id] = one.name;
    }

    void readSeasons()
    {
        for (const Season& season : m_trouble(allOf<Season>(m_solo)))
            if (season.year) m_years[season.id] = *season.year;
    }

    // The same year here. Its id comes from the year, so that it is right before the season is begun.
    void toSeason(Uuid& season, const std::string& pest)
    {
        const auto year = m_years.find(season);
        if (year == m_years.end()) return;
        season = seasonId(m_joined.programme(), year->second);
        if (!m_trouble(store::seasonOfYear(m_here, year->second)))
            m_brought.yearsNotHere.insert(year->second);
        if (pest.empty()) return;
        bool isInUse = false;
        for (const ProtocolUse& use : m_trouble(store::protocolsInUse(m_here, season)))
            isInUse = isInUse || use.pest == pest;
        if (!isInUse) m_brought.pestsNotHere.insert(pest);
    }

    void bringDistricts()
    {
        std::map<std::string, Uuid> here;
        for (const District& district : m_trouble(store::districts(m_here)))
            here[district.name] = district.id;
        for (const District& district : m_trouble(allOf<District>(m_solo))) {
            const auto same = here.find(district.name);
            if (same != here.end() && same->second != district.id)
                m_districts[district.id] = same->second;
            else if (add(district, {}) && !m_isCoordinator)
                m_brought.districtsNotHere.insert(district.name);
        }
    }

    void bringSitesAndTraps()
    {
        for (Site site : m_trouble(allOf<Site>(m_solo))) {
            // Who says the season of a site made it: without one it would be nobody's.
            if (site.season.isNil()) site.season = seasonId(m_joined.programme(), yearOf(m_today));
            toSeason(site.season, {});
            if (const auto mapped = m_districts.find(site.district); mapped != m_districts.end())
                site.district = mapped->second;
            if (!site.keeper.isNil() && site.keeper != m_me) ++m_brought.otherKeepers;
            site.keeper = m_member;
            add(site, site.id);
        }
        for (Trap trap : m_trouble(allOf<Trap>(m_solo))) {
            toSeason(trap.season, trap.pest);
            m_siteOf[trap.id] = trap.site;
            addPhoto(trap.photo);
            add(trap, trap.site);
        }
    }

    void bringTrapWork()
    {
        for (const Service& service : m_trouble(allOf<Service>(m_solo))) add(service, siteAt(service.trap));
        for (Visit visit : m_trouble(allOf<Visit>(m_solo))) {
            nameObserver(visit.id, visit.observer);
            addPhoto(visit.photo);
            add(visit, siteAt(visit.trap));
        }
        for (const Sample& sample : m_trouble(allOf<Sample>(m_solo))) add(sample, siteAt(sample.trap));
        for (Loan loan : m_trouble(allOf<Loan>(m_solo))) {
            // Whoever he is, he is nobody here yet; but his name stays.
            if (loan.borrower.empty()) loan.borrower = nameOf(loan.member);
            loan.member = !loan.member.isNil() && loan.member == m_me ? m_member : Uuid{};
            add(loan, siteAt(loan.trap));
        }
    }

    void bringWalks()
    {
        for (Walk walk : m_trouble(allOf<Walk>(m_solo))) {
            toSeason(walk.season, walk.pest);
            m_siteOf[walk.id] = walk.site;
            nameObserver(walk.id, walk.observer);
            add(walk, walk.site);
        }
        for (const Frame& frame : m_trouble(allOf<Frame>(m_solo))) add(frame, siteAt(frame.walk));
        for (const Decision& decision : m_trouble(allOf<Decision>(m_solo)))
            add(decision, siteAt(decision.walk));
    }

    [[nodiscard]] Uuid siteAt(const Uuid& trapOrWalk) const
    {
        const auto found = m_siteOf.find(trapOrWalk);
        return found == m_siteOf.end() ? Uuid{} : found->second;
    }

    [[nodiscard]] std::string nameOf(const Uuid& member) const
    {
        const auto found = m_names.find(member);
        return found == m_names.end() ? std::string() : found->second;
    }

    // The author is another member now: who observed was said by who wrote, unless it was said in words.
    void nameObserver(const Uuid& record, std::string& observer)
    {
        if (!observer.empty()) return;
        const auto changes = m_trouble(m_solo.changesOf(record));
        if (!changes.empty() && changes.front().author != m_me) observer = nameOf(changes.front().author);
    }

    void addPhoto(const std::string& hash)
    {
        if (hash.empty() || !m_photos.insert(hash).second) return;
        const std::string there = store::photoPath(m_solo.path(), hash);
        std::error_code failure;
        if (!std::filesystem::is_regular_file(there, failure)) {
            ++m_brought.photosMissing;
            return;
        }
        m_trouble(store::keepPhoto(m_joined.path(), there));
        ++m_brought.photos;
    }

    // False when it was there already.
    template <typename R>
    bool add(const R& record, Uuid site)
    {
        if (!m_trouble(m_here.changesOf(record.id)).empty()) {
            ++m_brought.alreadyThere;
            return false;
        }
        if (site.isNil() && kindOf<R>().name != "district")
            if (const auto changes = m_trouble(m_solo.changesOf(record.id)); !changes.empty())
                site = changes.front().site;
        m_edits.push_back(creation(record, site));
        ++m_brought.records;
        return true;
    }

    store::Reader& m_solo;
    store::Reader& m_here;
    store::Store& m_joined;
    Uuid m_member;
    LocalDay m_today;
    bool m_isCoordinator = false;
    Uuid m_me; // in the old store
    std::map<Uuid, std::string> m_names; // of members there
    std::map<Uuid, int> m_years; // of seasons there
    std::map<Uuid, Uuid> m_districts; // there to here
    std::map<Uuid, Uuid> m_siteOf; // of traps and walks
    std::set<std::string> m_photos;
    std::vector<Edit> m_edits;
    Brought m_brought;
    Trouble m_trouble;
};

} // namespace

Result<Brought> bringAlong(store::Reader& solo, store::Store& joined, const Uuid& member, const Moment& now)
{
    const auto here = joined.reader();
    if (!here) return here.error();
    Bringing bringing(solo, **here, joined, member, now.day);
    auto edits = bringing.edits();
    if (!edits) return edits.error();
    const auto kept = joined.keepNow(
        {.author = member, .at = now.at, .offset = now.offset, .edits = std::move(*edits), .draftDone = {}});
    if (!kept) return kept.error();
    return bringing.brought();
}

} // namespace duskrow::sync
