// SPDX-License-Identifier: MIT
#include <QTemporaryDir>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>

#include "bench/big_store.h"
#include "bench/figures.h"
#include "store/desk_records.h"
#include "store/season_flags.h"
#include "store/season_years.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;

// A desk over 5,000 traps and ten seasons: opening it, its week, and its flags, beside the same question
// asked of the file by the sqlite3 shell.

namespace {

constexpr int allSeasons = 10;
const SeasonWeek rhythm{std::chrono::Monday, std::chrono::Monday, std::chrono::days{1}, {}, {}};

double millisecondsOf(const std::function<void()>& work)
{
    using Clock = std::chrono::steady_clock;
    const auto start = Clock::now();
    work();
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

double medianOf(const std::function<void()>& work, int times)
{
    std::vector<double> taken;
    for (int i = 0; i < times; ++i) taken.push_back(millisecondsOf(work));
    std::ranges::sort(taken);
    return taken[taken.size() / 2];
}

// The shell's own time for a question, in milliseconds; nothing where there is no shell.
std::optional<double> shellMs(const std::string& path, const std::string& sql)
{
    const std::string command = "printf '.timer on\\n%s;\\n' \"" + sql + "\" | sqlite3 -readonly '" + path
        + "' 2>/dev/null | sed -n 's/^Run Time: real \\([0-9.]*\\).*/\\1/p'";
    std::optional<double> best;
    for (int i = 0; i < 5; ++i) {
        std::FILE* const pipe = popen(command.c_str(), "r");
        std::array<char, 64> line{};
        const bool isSaid = pipe && std::fgets(line.data(), static_cast<int>(line.size()), pipe);
        if (pipe) pclose(pipe);
        if (!isSaid) return std::nullopt;
        const double ms = 1000 * std::atof(line.data());
        best = best ? std::min(*best, ms) : ms;
    }
    return best;
}

// Traps that reported, and those that stood, for one week of a season.
std::string weekSql(const ReportingWeek& week, int year)
{
    return "SELECT s.district, count(*), count(v.trap) FROM now_trap t JOIN now_site s ON s.id=t.site LEFT "
           "JOIN "
           "(SELECT DISTINCT trap FROM now_visit WHERE withdrawn IS NULL AND day BETWEEN '"
        + formatDay(week.first + std::chrono::days{2}) + "' AND '"
        + formatDay(week.last + std::chrono::days{1})
        + "' AND trap IN (SELECT id FROM now_trap WHERE season=(SELECT id FROM now_season WHERE year="
        + std::to_string(year) + "))) v ON v.trap=t.id WHERE t.season=(SELECT id FROM now_season WHERE year="
        + std::to_string(year) + ") AND t.withdrawn IS NULL GROUP BY s.district";
}

template <typename T>
T orStop(Result<T> found, const char* what)
{
    if (found) return std::move(*found);
    std::fprintf(stderr, "%s: %s\n", what, found.error().detail.c_str());
    std::exit(1);
}

// Districts by week of one season, and every season on the same day; both apart from the screens.
void tables(Reader& reader, const Season& season, LocalDay today)
{
    const Protocol protocol;
    const TrapKind kind{"bertha-armyworm", "bucket"};
    std::size_t weeks = 0;
    const double byWeek = millisecondsOf([&] {
        weeks = orStop(regionOfSeason(reader, season, protocol, kind, today), "weeks")
                    .result.whole.season.weeks.size();
    });
    std::size_t years = 0;
    const double byYear = millisecondsOf([&] {
        years = orStop(regionYears(reader, protocol, kind, today, [](int) { return true; }), "years").size();
    });
    if (weeks == 0 || years != std::size_t{allSeasons}) std::abort();
    figures().note("districts by week, read and worked out", byWeek, "ms");
    figures().note("ten years on the same day, likewise", byYear, "ms");
}

} // namespace

int main()
{
    QTemporaryDir folder;
    const std::string path = folder.filePath(QStringLiteral("big.duskrow")).toStdString();
    auto opened =
        orStop(Store::open(path,
                   {.keyFolder = folder.filePath(QStringLiteral("keys")).toStdString(), .mayCreate = true}),
            "open");
    fillBigStore(*opened, allSeasons);
    const int year = 2023 + allSeasons - 1;
    const ReportingWeek week = weekOf(dayOf(year, 7, 3), rhythm.weekStart);
    const LocalDay today = week.last;
    const auto reader = orStop(opened->reader(), "reader");
    const Uuid season = seasonAt(allSeasons - 1);

    DeskRecords records;
    const auto read = [&] {
        records = orStop(deskRecords(*reader, season, std::nullopt, opened->stream()), "desk");
        if (records.visits.size() != std::size_t{trapsASeason} * visitsATrap) std::abort();
    };
    figures().limit("opening the desk, the first time", millisecondsOf(read), "ms", 1000);
    figures().limit("opening it again, median", medianOf(read, 5), "ms", 1000);

    WeekDesk desk;
    const double table =
        medianOf([&] { desk = weekDesk(records.trapsOfDesk, records.visits, rhythm, week, today); }, 21);
    if (desk.total.expected != trapsASeason || desk.total.reported != trapsASeason) std::abort();
    figures().limit("the table of a week, median", table, "ms", 50);
    if (const auto shell = shellMs(path, weekSql(week, year))) {
        figures().note("the same by the sqlite3 shell, best of five", *shell, "ms");
        figures().limit("the table / the shell", table / std::max(*shell, 0.5), "x", 3);
    }

    Season of;
    of.id = season;
    of.year = year;
    tables(*reader, of, today);
    std::size_t found = 0;
    const double flags =
        millisecondsOf([&] { found = orStop(flagsOfSeason(*reader, of, today), "flags").size(); });
    figures().note("flags of that season", static_cast<double>(found), "");
    figures().note("finding them, apart from the screens", flags, "ms");
    return figures().print() ? 0 : 1;
}
