// SPDX-License-Identifier: MIT
#include "domain/bulletin/kept_issue.h"

#include <algorithm>
#include <cmath>

#include "domain/bulletin/phase_names.h"
#include "domain/log/bounded_json.h"

namespace duskrow::domain {

namespace {

using Json = nlohmann::json;

constexpr int form = 1;
constexpr std::size_t mostBytes = 64U << 20U;
constexpr std::size_t mostDepth = 8;

Json cellJson(GridCell cell)
{
    return {cell.row, cell.column};
}

Json reportJson(const WeekReport& report)
{
    Json json{{"trap", formatUuid(report.trap)}, {"farm", formatUuid(report.reporter.farm)},
        {"expected", report.isExpected}, {"counted", report.isCounted}, {"so_far", report.soFar.value()},
        {"phase", phaseNames.at(static_cast<std::size_t>(report.phase))}, {"fix", report.fix.value()}};
    if (report.reporter.district) json["district"] = *report.reporter.district;
    if (report.reporter.cell) json["cell"] = cellJson(*report.reporter.cell);
    if (report.moths) json["moths"] = *report.moths;
    return json;
}

// Reads members one by one; after the first that is not as it should be, nothing it says holds.
class Reading {
public:
    [[nodiscard]] bool holds() const { return m_holds; }

    const Json* member(const Json& from, const char* name, bool mayMiss = false)
    {
        const auto found = from.is_object() ? from.find(name) : from.end();
        if (from.is_object() && found != from.end()) return &*found;
        m_holds = m_holds && mayMiss;
        return nullptr;
    }
    std::int64_t whole(const Json* json, std::int64_t low, std::int64_t high)
    {
        if (!json || !json->is_number_integer()) return fail(low);
        const auto value = json->get<std::int64_t>();
        return value < low || value > high ? fail(low) : value;
    }
    double number(const Json* json, double high)
    {
        if (!json || !json->is_number()) return static_cast<double>(fail(0));
        const auto value = json->get<double>();
        return value >= 0 && value <= high ? value : static_cast<double>(fail(0));
    }
    bool flag(const Json* json)
    {
        if (json && json->is_boolean()) return json->get<bool>();
        return fail(0) != 0;
    }
    std::string text(const Json* json)
    {
        if (json && json->is_string()) return json->get<std::string>();
        fail(0);
        return {};
    }
    Uuid id(const Json* json)
    {
        const auto id = parseUuid(text(json));
        if (!id) fail(0);
        return id.value_or(Uuid{});
    }
    LocalDay day(const Json* json)
    {
        const auto day = parseDay(text(json));
        if (!day) fail(0);
        return day ? *day : LocalDay{};
    }
    GridCell cell(const Json& json)
    {
        if (!json.is_array() || json.size() != 2) {
            fail(0);
            return {};
        }
        return {static_cast<std::int32_t>(whole(&json[0], -900, 899)),
            static_cast<std::int32_t>(whole(&json[1], -1800, 1799))};
    }
    const Json& list(const Json* json)
    {
        static const Json none = Json::array();
        if (json && json->is_array()) return *json;
        fail(0);
        return none;
    }

private:
    std::int64_t fail(std::int64_t value)
    {
        m_holds = false;
        return value;
    }

    bool m_holds = true;
};

constexpr std::int64_t mostMoths = 1'000'000'000;

WeekReport readReport(Reading& reading, const Json& json, std::size_t districts)
{
    WeekReport report;
    report.trap = reading.id(reading.member(json, "trap"));
    report.reporter.farm = reading.id(reading.member(json, "farm"));
    report.isExpected = reading.flag(reading.member(json, "expected"));
    report.isCounted = reading.flag(reading.member(json, "counted"));
    report.soFar = Moths{reading.whole(reading.member(json, "so_far"), 0, mostMoths)};
    report.fix = Metres{reading.number(reading.member(json, "fix"), 1e7)};
    const std::string phase = reading.text(reading.member(json, "phase"));
    const auto* const found = std::find(phaseNames.begin(), phaseNames.end(), phase);
    if (found != phaseNames.end()) report.phase = static_cast<FlightPhase>(found - phaseNames.begin());
    if (const Json* district = reading.member(json, "district", true))
        report.reporter.district = static_cast<std::size_t>(
            reading.whole(district, 0, std::max<std::int64_t>(static_cast<std::int64_t>(districts) - 1, 0)));
    if (const Json* cell = reading.member(json, "cell", true)) report.reporter.cell = reading.cell(*cell);
    if (const Json* moths = reading.member(json, "moths", true))
        report.moths = reading.number(moths, static_cast<double>(mostMoths));
    return report;
}

void readAreas(Reading& reading, const Json& json, KeptIssue& issue)
{
    issue.areas.whole = reading.flag(reading.member(json, "whole"));
    const auto most = std::max<std::int64_t>(static_cast<std::int64_t>(issue.districts.size()) - 1, 0);
    for (const Json& district : reading.list(reading.member(json, "area_districts")))
        issue.areas.districts.push_back(static_cast<std::size_t>(reading.whole(&district, 0, most)));
    for (const Json& cell : reading.list(reading.member(json, "area_cells")))
        issue.areas.cells.push_back(reading.cell(cell));
    std::sort(issue.areas.districts.begin(), issue.areas.districts.end());
    std::sort(issue.areas.cells.begin(), issue.areas.cells.end());
}

} // namespace

std::string keptIssueText(const KeptIssue& issue)
{
    Json json{{"form", form}, {"pest", issue.pest}, {"trap_type", issue.trapType},
        {"iso_year", issue.iso.year}, {"iso_week", issue.iso.week},
        {"first_day", formatDay(issue.week.first)}, {"last_day", formatDay(issue.week.last)},
        {"issue", issue.issue}, {"published_ms", toMs(issue.published)}, {"summary", issue.summary},
        {"whole", issue.areas.whole}, {"area_districts", issue.areas.districts}};
    json["districts"] = Json::array();
    for (const Uuid& district : issue.districts) json["districts"].push_back(formatUuid(district));
    json["area_cells"] = Json::array();
    for (const GridCell cell : issue.areas.cells) json["area_cells"].push_back(cellJson(cell));
    if (issue.median) json["median"] = issue.median->value();
    json["reports"] = Json::array();
    for (const WeekReport& report : issue.reports) json["reports"].push_back(reportJson(report));
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::optional<KeptIssue> readKeptIssue(std::string_view text)
{
    if (text.size() > mostBytes) return std::nullopt;
    const auto json = parseBounded(text, mostDepth, Numbers::Any);
    if (!json) return std::nullopt;
    Reading reading;
    KeptIssue issue;
    reading.whole(reading.member(*json, "form"), form, form);
    issue.pest = reading.text(reading.member(*json, "pest"));
    issue.trapType = reading.text(reading.member(*json, "trap_type"));
    issue.iso.year = static_cast<int>(reading.whole(reading.member(*json, "iso_year"), 1, 9999));
    issue.iso.week = static_cast<int>(reading.whole(reading.member(*json, "iso_week"), 1, 53));
    issue.week = {
        reading.day(reading.member(*json, "first_day")), reading.day(reading.member(*json, "last_day"))};
    issue.issue = static_cast<int>(reading.whole(reading.member(*json, "issue"), 1, 1'000'000));
    issue.published =
        instantFromMs(reading.whole(reading.member(*json, "published_ms"), 0, 253'402'300'799'999));
    issue.summary = reading.text(reading.member(*json, "summary"));
    for (const Json& district : reading.list(reading.member(*json, "districts")))
        issue.districts.push_back(reading.id(&district));
    readAreas(reading, *json, issue);
    if (const Json* median = reading.member(*json, "median", true))
        issue.median = Moths{reading.whole(median, 0, mostMoths)};
    for (const Json& report : reading.list(reading.member(*json, "reports")))
        issue.reports.push_back(readReport(reading, report, issue.districts.size()));
    if (!reading.holds()) return std::nullopt;
    return issue;
}

Renumbered renumbered(const KeptIssue& issue, std::span<const Uuid> districts)
{
    const auto numberNow = [&](std::size_t before) -> std::optional<std::size_t> {
        const auto found = std::find(districts.begin(), districts.end(), issue.districts[before]);
        if (found == districts.end()) return std::nullopt;
        return static_cast<std::size_t>(found - districts.begin());
    };
    Renumbered made{issue.reports, {issue.areas.whole, {}, issue.areas.cells}};
    for (WeekReport& report : made.reports)
        if (report.reporter.district) report.reporter.district = numberNow(*report.reporter.district);
    for (const std::size_t district : issue.areas.districts)
        if (const auto now = numberNow(district)) made.areas.districts.push_back(*now);
    std::sort(made.areas.districts.begin(), made.areas.districts.end());
    return made;
}

} // namespace duskrow::domain
