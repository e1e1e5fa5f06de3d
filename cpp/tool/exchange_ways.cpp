// SPDX-License-Identifier: MIT
#include "tool/exchange_ways.h"

#include <QCoreApplication>

#include <functional>

#include "sync/carry/carry_route.h"
#include "sync/client/hub_client.h"
#include "sync/folder/folder_route.h"
#include "sync/roster/roster_edits.h"
#include "text/amounts.h"
#include "text/error_text.h"
#include "tool/holding.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using sync::ExchangeReport;

namespace {

using Route = std::function<Result<ExchangeReport>()>;

void addReport(ExchangeReport& all, const ExchangeReport& more)
{
    all.sent += more.sent;
    all.received += more.received;
    all.changes += more.changes;
    all.waiting = more.waiting;
    all.unfinished = more.unfinished;
    all.keptAside = std::max(all.keptAside, more.keptAside);
    all.photosSent += more.photosSent;
    all.photosReceived += more.photosReceived;
    all.metFork = all.metFork || more.metFork;
    all.troubles = more.troubles;
}

// Both directions; what was confirmed goes out in a second turn.
Result<Exchanged> thereAndBack(store::Store& store, const Route& route)
{
    Exchanged done;
    auto first = route();
    if (!first) return first.error();
    done.report = std::move(*first);
    const auto confirmed = sync::confirmClaims(store, rightNow());
    if (!confirmed) return confirmed.error();
    done.confirmed = *confirmed;
    if (done.confirmed == 0) return done;
    const auto second = route();
    if (!second) return second.error();
    addReport(done.report, *second);
    return done;
}

Result<Exchanged> writeFile(store::Store& store, const WayLine& way)
{
    Exchanged done;
    sync::CarryWhat what;
    if (!way.forMember.empty()) {
        const auto reader = store.reader();
        if (!reader) return reader.error();
        const auto member = memberNamed(**reader, way.forMember);
        if (!member) return member.error();
        what.forMember = member->id;
    }
    auto written = sync::writeCarried(store, way.write, what, rightNow().at);
    if (!written) return written.error();
    done.report = std::move(*written);
    return done;
}

Result<Exchanged> readFile(store::Store& store, const std::string& path)
{
    Exchanged done;
    auto read = sync::readCarried(store, path, rightNow().at);
    if (!read) return read.error();
    done.report = std::move(*read);
    const auto confirmed = sync::confirmClaims(store, rightNow());
    if (!confirmed) return confirmed.error();
    done.confirmed = *confirmed;
    return done;
}

void say(const char* words, std::int64_t number)
{
    if (number > 0) print(QCoreApplication::translate("Tool", words).arg(text::number(number)));
}

} // namespace

CLI::Option_group* addWays(CLI::App& line, WayLine& way)
{
    CLI::Option_group* ways = line.add_option_group("way", "Which way records go");
    ways->add_option("--folder", way.folder, "A folder that others can open too")->type_name("FOLDER");
    ways->add_option("--hub", way.hub, "The address of a hub")->type_name("URL");
    ways->add_option("--read", way.read, "A file that was carried here")->type_name("FILE");
    ways->require_option(0, 1);
    return ways;
}

Result<QUrl> hubAddress(const std::string& typed)
{
    const QUrl url(QString::fromStdString(typed), QUrl::StrictMode);
    const bool isWeb = url.scheme() == QLatin1String("https") || url.scheme() == QLatin1String("http");
    if (!url.isValid() || !isWeb || url.host().isEmpty()) return Error{ErrorCode::HubUnreachable, {typed}};
    return url;
}

Result<Exchanged> exchangeBy(store::Store& store, const WayLine& way)
{
    if (!way.write.empty()) return writeFile(store, way);
    if (!way.read.empty()) return readFile(store, way.read);
    if (!way.folder.empty())
        return thereAndBack(store, [&] { return sync::exchangeByFolder(store, way.folder, rightNow().at); });
    const auto hub = hubAddress(way.hub);
    if (!hub) return hub.error();
    return thereAndBack(store, [&] { return sync::exchangeByHub(store, *hub, rightNow().at); });
}

nlohmann::ordered_json exchangeJson(const Exchanged& exchanged)
{
    const ExchangeReport& report = exchanged.report;
    nlohmann::ordered_json troubles = nlohmann::ordered_json::array();
    for (const Error& trouble : report.troubles) troubles.push_back(text::sentence(trouble).toStdString());
    return {{"segments_sent", report.sent}, {"segments_received", report.received},
        {"changes_used", report.changes}, {"segments_waiting", report.waiting},
        {"files_unfinished", report.unfinished}, {"files_kept_aside", report.keptAside},
        {"photographs_sent", report.photosSent}, {"photographs_received", report.photosReceived},
        {"devices_confirmed", exchanged.confirmed}, {"met_fork", report.metFork},
        {"troubles", std::move(troubles)}};
}

void printExchange(const Exchanged& exchanged)
{
    const ExchangeReport& report = exchanged.report;
    print(QCoreApplication::translate(
        "Tool", "Bundles handed over: %1. Bundles that came in: %2, with %3 changes.")
              .arg(text::number(report.sent), text::number(report.received), text::number(report.changes)));
    say(QT_TRANSLATE_NOOP("Tool", "Photographs handed over: %1."), report.photosSent);
    say(QT_TRANSLATE_NOOP("Tool", "Photographs that came in: %1."), report.photosReceived);
    say(QT_TRANSLATE_NOOP("Tool", "Devices that were let in: %1."), exchanged.confirmed);
    say(QT_TRANSLATE_NOOP("Tool", "Bundles that wait for an earlier one: %1."), report.waiting);
    say(QT_TRANSLATE_NOOP("Tool", "Files that are not finished copying: %1. Exchange again later."),
        report.unfinished);
    say(QT_TRANSLATE_NOOP("Tool", "Files that were refused and kept aside beside the store: %1."),
        report.keptAside);
    if (report.metFork)
        print(QCoreApplication::translate("Tool",
            "One device wrote two different histories, as a copied store does. Both are kept and used."));
    for (const Error& trouble : report.troubles) print(text::sentence(trouble));
}

int exitCode(const Exchanged& exchanged)
{
    return exchanged.report.troubles.empty() && exchanged.report.keptAside == 0 ? 0 : 1;
}

} // namespace duskrow::tool
