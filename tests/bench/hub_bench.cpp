// SPDX-License-Identifier: MIT
// Fifty phones at real hubs over HTTP: first all hand over a season of weekly segments, then all hand over
// and fetch at once. Every receipt is held against the others: no number twice, none left out.
//   hub_bench HUB-PROGRAM STORE [HUBS]     STORE a file or postgresql://...; HUBS processes over it, 1 by
//   default
#include <QCoreApplication>

#include <chrono>
#include <cstdio>
#include <mutex>
#include <set>
#include <thread>

#include "bench/hub_link.h"
#include "bench/hub_process.h"

using namespace duskrow;
using namespace duskrow::domain;
using tests::Phone;
using tests::uuidOf;
using Steady = std::chrono::steady_clock;

namespace {

constexpr std::uint32_t phoneCount = 50;
constexpr int weeks = 10;
constexpr int visitsAWeek = 20;

struct Figures {
    std::mutex mutex;
    std::vector<double> pushMs;
    std::vector<double> pullMs;
    std::multiset<std::int64_t> places;
    int failures = 0;
};

std::string homeOf(const Phone& phone)
{
    return "/programmes/" + formatUuid(phone.programme);
}

template <typename Work>
double timed(Work&& work)
{
    const auto before = Steady::now();
    work();
    return std::chrono::duration<double, std::milli>(Steady::now() - before).count();
}

bench::Answer put(bench::HubLink& link, const Phone& phone, const sync::SegmentHead& head)
{
    return link.ask("PUT",
        homeOf(phone) + "/segments/" + formatHex(phone.stream) + '/' + std::to_string(head.header.first) + '-'
            + std::to_string(head.header.last) + '-' + formatHex(head.id),
        sync::segmentBytes(head), phone.token);
}

void handOver(bench::HubLink& link, Phone& phone, std::uint32_t number, Figures& figures)
{
    for (int visit = 0; visit < visitsAWeek; ++visit)
        phone.visit(static_cast<std::uint32_t>(phone.lines.size()) + number * 10'000, uuidOf(3, number));
    const sync::SegmentHead head = phone.seal();
    bench::Answer answer;
    const double took = timed([&] { answer = put(link, phone, head); });
    const std::lock_guard guard(figures.mutex);
    figures.pushMs.push_back(took);
    if (answer.status == 201)
        figures.places.insert(nlohmann::json::parse(answer.body).at("at").get<std::int64_t>());
    else
        ++figures.failures;
}

// Fetches all that is new, page after page.
void fetch(bench::HubLink& link, const Phone& phone, std::int64_t& after, Figures& figures)
{
    while (true) {
        bench::Answer page;
        const double took = timed([&] {
            page =
                link.ask("GET", homeOf(phone) + "/segments?after=" + std::to_string(after), {}, phone.token);
        });
        const std::lock_guard guard(figures.mutex);
        figures.pullMs.push_back(took);
        if (page.status != 200 && page.status != 204) ++figures.failures;
        if (page.status != 200) return;
        after = page.number("Duskrow-Next");
        if (after >= page.number("Duskrow-Head")) return;
    }
}

double at(std::vector<double> values, double share)
{
    std::sort(values.begin(), values.end());
    return values.empty() ? 0
                          : values[static_cast<std::size_t>(static_cast<double>(values.size() - 1) * share)];
}

// All phones do the same at once; gives the seconds until the last is done.
template <typename Work>
double together(std::vector<Phone>& phones, const std::vector<quint16>& ports, Work&& work)
{
    return timed([&] {
        std::vector<std::thread> threads;
        for (std::uint32_t number = 0; number < phones.size(); ++number)
            threads.emplace_back([&, number] {
                bench::HubLink link(ports[number % ports.size()]);
                work(link, phones[number], number);
            });
        for (std::thread& thread : threads) thread.join();
    }) / 1000;
}

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    if (argc < 3 || sodium_init() < 0) return 2;
    const QString program = QString::fromLocal8Bit(argv[1]);
    const QString store = QString::fromLocal8Bit(argv[2]);
    const sync::InvitationKey code = bench::newProgramme(program, store);
    std::vector<std::unique_ptr<bench::HubProcess>> hubs;
    std::vector<quint16> ports;
    for (int i = 0; i < (argc > 3 ? std::atoi(argv[3]) : 1); ++i) {
        hubs.push_back(std::make_unique<bench::HubProcess>(program, store));
        ports.push_back(hubs.back()->port);
    }

    const Uuid programme = uuidOf(7, 1);
    Phone founder(programme, 1);
    bench::HubLink link(ports.front());
    const bench::Answer founded = link.post("/programmes",
        {{"invitation", formatHex(code.key)}, {"key", formatHex(founder.keys.key)},
            {"name", "Invented district"}, {"programme", formatUuid(programme)},
            {"proof", formatHex(code.sign(claimMessage(programme, founder.stream)))},
            {"stream", formatHex(founder.stream)}});
    if (founded.status != 201) qFatal("not founded: %s", founded.body.c_str());
    link.enter(founder);
    founder.writeFounding();
    std::vector<Phone> phones;
    for (std::uint32_t number = 0; number < phoneCount; ++number) {
        Phone phone(programme, number + 10);
        founder.writeMember(phone.member, "agronomist");
        founder.writeDevice(phone, phone.member);
        phones.push_back(std::move(phone));
    }
    if (put(link, founder, founder.seal()).status != 201) qFatal("the roster is refused");
    for (Phone& phone : phones) { // a hub knows a device's key from its first segment
        phone.visit(1, uuidOf(3, 0));
        phone.token = founder.token;
        if (put(link, phone, phone.seal()).status != 201) qFatal("a phone is refused");
        link.enter(phone);
    }

    Figures alone;
    const double pushing =
        together(phones, ports, [&](bench::HubLink& hub, Phone& phone, std::uint32_t number) {
            for (int week = 0; week < weeks; ++week) handOver(hub, phone, number, alone);
        });
    const double changes = phoneCount * weeks * visitsAWeek / pushing;
    std::printf("handing over alone: %.0f changes a second durable, %.0f requests a second; median %.1f ms, "
                "99 %% %.1f ms\n",
        changes, static_cast<double>(alone.pushMs.size()) / pushing, at(alone.pushMs, 0.5),
        at(alone.pushMs, 0.99));

    Figures both;
    const double seconds =
        together(phones, ports, [&](bench::HubLink& hub, Phone& phone, std::uint32_t number) {
            std::int64_t after = 0;
            for (int week = 0; week < weeks; ++week) {
                handOver(hub, phone, number, both);
                fetch(hub, phone, after, both);
            }
        });
    std::printf(
        "handing over and fetching: %.0f requests a second; push median %.1f ms, 99 %% %.1f ms; pull median "
        "%.1f ms, 99 %% %.1f ms\n",
        static_cast<double>(both.pushMs.size() + both.pullMs.size()) / seconds, at(both.pushMs, 0.5),
        at(both.pushMs, 0.99), at(both.pullMs, 0.5), at(both.pullMs, 0.99));

    std::multiset<std::int64_t> places = alone.places;
    places.insert(both.places.begin(), both.places.end());
    const std::set<std::int64_t> once(places.begin(), places.end());
    const bool isWhole = once.size() == places.size() && once.size() == std::size_t{phoneCount} * weeks * 2
        && *once.rbegin() - *once.begin() + 1 == static_cast<std::int64_t>(once.size());
    std::printf("%zu receipts, %s; %d failures\n", places.size(),
        isWhole ? "no number twice and none left out" : "NOT WHOLE", alone.failures + both.failures);
    const bool isFile = !store.startsWith(QLatin1String("postgresql://"));
    if (isFile && changes < 1000) std::printf("limit 1000 changes a second  NOT HELD\n");
    return isWhole && alone.failures + both.failures == 0 && (!isFile || changes >= 1000) ? 0 : 1;
}
