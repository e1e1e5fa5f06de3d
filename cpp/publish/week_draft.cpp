// SPDX-License-Identifier: MIT
#include "publish/week_draft.h"

#include <algorithm>
#include <charconv>

#include "domain/bulletin/reissue.h"
#include "domain/records/bulletin.h"
#include "domain/rules/bands.h"
#include "formats/bulletin/document.h"

namespace duskrow::publish {

using namespace duskrow::domain;

namespace {

// What every step needs to know.
struct Ground {
    Season season;
    SeasonWeek rhythm;
    ReportingWeek week;
    store::TrapKind kind;
    const Protocol* protocol = nullptr;
};

Result<Ground> groundOf(store::Reader& reader, const WeekAsked& asked, const ProtocolOf& protocolOf)
{
    Ground ground;
    ground.season = asked.season;
    ground.rhythm = seasonWeekOf(ground.season).value_or(SeasonWeek{});
    const auto week = weekFromIso(asked.iso, ground.rhythm.weekStart);
    if (!week) return week.error();
    ground.week = *week;
    auto kind = store::mostCommonKind(reader, ground.season, asked.pest);
    if (!kind) return kind.error();
    ground.kind = std::move(*kind);
    const auto protocol = protocolOf(ground.kind.pest);
    if (!protocol) return protocol.error();
    ground.protocol = *protocol;
    return ground;
}

Result<Bulletin> headOf(store::Reader& reader, const Ground& ground, IsoWeek iso)
{
    Bulletin bulletin;
    const auto programmes = reader.select<Programme>({});
    if (!programmes) return programmes.error();
    if (!programmes->empty()) {
        const Programme& programme = programmes->front();
        bulletin.programme = programme.name;
        bulletin.region = programme.region;
        bulletin.isInvented = programme.invented.value_or(false);
    }
    bulletin.pest = ground.kind.pest;
    bulletin.trapType = ground.kind.trapType;
    if (const auto bands = bandsFor(*ground.protocol, ground.kind.trapType))
        bulletin.bands.assign(bands->begin(), bands->end());
    bulletin.iso = iso;
    bulletin.week = ground.week;
    return bulletin;
}

void addGapsUpTo(Bulletin& bulletin, const ReportingWeek& week)
{
    constexpr std::chrono::days aWeek{7};
    while (!bulletin.weeks.empty() && bulletin.weeks.back().week.first + aWeek < week.first) {
        const ReportingWeek last = bulletin.weeks.back().week;
        bulletin.weeks.push_back({{last.first + aWeek, last.last + aWeek}, std::nullopt});
    }
}

// The last issue of each earlier week of the season; weeks in between that were not published are gaps.
void addEarlierWeeks(Bulletin& bulletin, const KeptIssues& kept)
{
    for (const KeptIssue& issue : kept.all()) {
        const bool isEarlier =
            issue.week.first < bulletin.week.first && yearOf(issue.week.last) == yearOf(bulletin.week.last);
        if (!isEarlier || !issue.median || kept.last(issue.iso) != &issue) continue;
        addGapsUpTo(bulletin, issue.week);
        bulletin.weeks.push_back({issue.week, *issue.median});
    }
    if (!bulletin.weeks.empty()) addGapsUpTo(bulletin, bulletin.week);
}

KeptIssue issueOf(const Bulletin& bulletin, const store::SeasonReports& season,
    std::vector<WeekReport> reports, const PublishedAreas& areas)
{
    KeptIssue issue;
    issue.pest = bulletin.pest;
    issue.trapType = bulletin.trapType;
    issue.iso = bulletin.iso;
    issue.week = bulletin.week;
    issue.issue = bulletin.issue;
    issue.districts = season.districts;
    issue.areas = areas;
    if (bulletin.whole) issue.median = bulletin.whole->weekMedian;
    issue.reports = std::move(reports);
    return issue;
}

Result<bool> wasPublished(store::Reader& reader, const Ground& ground, IsoWeek iso)
{
    const auto records = reader.select<PublishedBulletin>({});
    if (!records) return records.error();
    const std::string week = formats::weekText(iso);
    return std::any_of(records->begin(), records->end(), [&](const PublishedBulletin& one) {
        return one.week == week && one.pest == ground.kind.pest && one.trapType == ground.kind.trapType
            && one.withdrawn.empty();
    });
}

} // namespace

Result<IsoWeek> weekTyped(const std::string& text)
{
    IsoWeek week;
    const char* const end = text.data() + text.size();
    const bool hasForm = text.size() == 8 && text[4] == '-' && text[5] == 'W';
    if (hasForm) {
        const auto year = std::from_chars(text.data(), text.data() + 4, week.year);
        const auto number = std::from_chars(text.data() + 6, end, week.week);
        if (year.ptr == text.data() + 4 && number.ptr == end) return week;
    }
    return Error{ErrorCode::NotADay, {text}};
}

Result<WeekDraft> weekDraft(store::Reader& reader, const WeekAsked& asked, const ProtocolOf& protocolOf)
{
    const auto ground = groundOf(reader, asked, protocolOf);
    if (!ground) return ground.error();
    auto kept =
        KeptIssues::read(QString::fromStdString(asked.keptFolder), ground->kind.pest, ground->kind.trapType);
    if (!kept) return kept.error();
    auto season = store::reportsOfWeek(reader, ground->season, *ground->protocol, ground->kind, ground->week);
    if (!season) return season.error();
    auto head = headOf(reader, *ground, asked.iso);
    if (!head) return head.error();
    WeekDraft made{
        WeekOutcome::New, std::move(*head), ground->protocol, 0, {}, std::move(*kept), season->districts};
    addEarlierWeeks(made.bulletin, made.kept);
    std::vector<WeekReport> reports = std::move(season->reports);
    PublishedAreas areas;
    if (const KeptIssue* before = made.kept.last(asked.iso)) {
        const Renumbered published = renumbered(*before, season->districts);
        Reissue next = reissue(published.reports, published.areas, reports);
        made.waiting = next.taken + next.waiting;
        made.bulletin.issue = before->issue;
        if (!asked.reissue || next.taken == 0) {
            made.outcome = asked.reissue ? WeekOutcome::NothingToReissue : WeekOutcome::Again;
            fillIn(made.bulletin, published.reports, season->names, published.areas);
            return made;
        }
        made.outcome = WeekOutcome::Reissued;
        made.waiting = next.waiting;
        made.bulletin.issue = before->issue + 1;
        reports = std::move(next.reports);
        areas = next.areas;
    } else {
        // Made anew from today's records it would show, held against what was published, what came since.
        const auto isOut = wasPublished(reader, *ground, asked.iso);
        if (!isOut) return isOut.error();
        if (*isOut) return Error{ErrorCode::BulletinElsewhere, {formats::weekText(asked.iso)}};
        if (asked.today <= countsOf(ground->week, ground->rhythm).last) {
            made.outcome = WeekOutcome::NotOver;
            return made;
        }
        const bool isAny = std::any_of(reports.begin(), reports.end(),
            [](const WeekReport& report) { return report.isExpected || report.isCounted; });
        if (!isAny) {
            made.outcome = WeekOutcome::NoTraps;
            return made;
        }
        areas = areasOf(reports);
    }
    fillIn(made.bulletin, reports, season->names, areas);
    made.fresh = issueOf(made.bulletin, *season, std::move(reports), areas);
    return made;
}

Result<Done> keepDraft(WeekDraft& draft, const std::string& summary, Instant now)
{
    if (!draft.fresh) return Done{};
    draft.fresh->summary = summary;
    draft.fresh->published = now;
    auto done = draft.kept.keep(*draft.fresh);
    if (done) draft.fresh.reset();
    return done;
}

} // namespace duskrow::publish
