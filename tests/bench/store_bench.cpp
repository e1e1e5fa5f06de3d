// SPDX-License-Identifier: MIT
#include <QTemporaryDir>

#include <algorithm>
#include <benchmark/benchmark.h>
#include <filesystem>

#include "bench/big_store.h"
#include "bench/figures.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;

namespace {

using Clock = std::chrono::steady_clock;

double millisecondsOf(const std::function<void()>& work)
{
    const auto start = Clock::now();
    work();
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

double medianOf(std::vector<double> times)
{
    std::nth_element(
        times.begin(), times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2), times.end());
    return times[times.size() / 2];
}

// Folders on the disk, not in memory: here waiting for the disk is the point.
struct BigScene {
    QTemporaryDir folder;
    std::string path = folder.filePath(QStringLiteral("big.duskrow")).toStdString();
    OpenHow how{.keyFolder = folder.filePath(QStringLiteral("keys")).toStdString(), .mayCreate = true};
    std::unique_ptr<Store> store;

    void open()
    {
        auto opened = Store::open(path, how);
        if (!opened) std::abort();
        store = std::move(*opened);
    }
};

BigScene& bigScene()
{
    static BigScene scene;
    if (!scene.store) {
        scene.open();
        const double filling = millisecondsOf([] { fillBigStore(*scene.store); });
        figures().note("making the store of 4 x 5,000 traps", filling / 1000, "s");
        figures().note(
            "its size", static_cast<double>(std::filesystem::file_size(scene.path)) / 1048576, "MiB");
    }
    return scene;
}

// The bytes of one kept visit in one plain table, one transaction: what SQLite itself needs.
class Floor {
public:
    explicit Floor(const std::string& path) : m_database(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
    {
        m_database.exec("PRAGMA journal_mode=WAL");
        m_database.exec("PRAGMA synchronous=FULL");
        m_database.exec("CREATE TABLE plain (number INTEGER PRIMARY KEY, body TEXT)");
        m_insert.emplace(m_database, "INSERT INTO plain (body) VALUES (?)");
    }
    void keep(const std::string& bytes)
    {
        m_database.exec("BEGIN IMMEDIATE");
        m_insert->bind(1, bytes);
        m_insert->exec();
        m_insert->reset();
        m_database.exec("COMMIT");
    }

private:
    SQLite::Database m_database;
    std::optional<SQLite::Statement> m_insert;
};

// Both in one run, one after the other, so that a slow moment of the disk meets both.
void keepingAVisit(benchmark::State& state)
{
    BigScene& scene = bigScene();
    const auto reader = scene.store->reader();
    std::uint32_t number = 900'000'000;
    const Visit sample = fullVisit(number, trapAt(3, 1), dayOf(2026, 8, 1));
    if (!scene.store->keepNow(batchOf(sample))) return state.SkipWithError("not kept");
    const std::string bytes = canonicalJson((*reader)->changesOf(sample.id)->front());
    Floor floor(scene.path + ".floor");
    std::vector<double> kept;
    std::vector<double> plain;
    for (auto _ : state) {
        ++number;
        const Uuid at = trapAt(3, static_cast<int>(number % trapsASeason));
        const Visit visit = fullVisit(number, at, dayOf(2026, 8, 1));
        kept.push_back(millisecondsOf([&] {
            if (!scene.store->keepNow(batchOf(visit))) std::abort();
        }));
        plain.push_back(millisecondsOf([&] { floor.keep(bytes); }));
    }
    figures().note("keeping a visit, median", medianOf(kept), "ms");
    figures().note("one plain SQLite transaction, median", medianOf(plain), "ms");
    figures().limit("keeping a visit / plain transaction", medianOf(kept) / medianOf(plain), "x", 2.0);
}
BENCHMARK(keepingAVisit)->Iterations(400)->Unit(benchmark::kMillisecond);

void seasonOfOneTrap(benchmark::State& state)
{
    const auto reader = bigScene().store->reader();
    std::vector<double> times;
    int number = 0;
    for (auto _ : state) {
        number = (number + 37) % trapsASeason;
        times.push_back(millisecondsOf([&] {
            const Uuid id = trapAt(2, number);
            const auto found = trap(**reader, id);
            if (!found || !*found) std::abort();
            if (!*site(**reader, (*found)->site)) std::abort();
            if (visitsOf(**reader, id)->size() != visitsATrap) std::abort();
            if (servicesOf(**reader, id)->size() != 1) std::abort();
            if (!samplesOf(**reader, id)) std::abort();
        }));
    }
    std::sort(times.begin(), times.end());
    figures().limit("season of one trap, median", times[times.size() / 2], "ms", 5.0);
    figures().limit("season of one trap, 95 of 100 within", times[times.size() * 95 / 100], "ms", 5.0);
    figures().note("season of one trap, slowest", times.back(), "ms");
}
BENCHMARK(seasonOfOneTrap)->Iterations(400)->Unit(benchmark::kMillisecond);

void dueOfOneSeason(benchmark::State& state)
{
    const auto reader = bigScene().store->reader();
    std::vector<double> times;
    for (auto _ : state)
        times.push_back(millisecondsOf([&] {
            if (visitsForDue(**reader, seasonAt(2))->size() != std::size_t{trapsASeason} * visitsATrap)
                std::abort();
        }));
    figures().note("what is due of 5,000 traps (40,000 visits) read", medianOf(times), "ms");
}
BENCHMARK(dueOfOneSeason)->Iterations(5)->Unit(benchmark::kMillisecond);

void opening(benchmark::State& state)
{
    BigScene& scene = bigScene();
    BigScene empty;
    empty.open();
    std::vector<double> big;
    std::vector<double> small;
    for (auto _ : state)
        for (auto [of, times] : {std::pair{&scene, &big}, std::pair{&empty, &small}}) {
            of->store.reset();
            times->push_back(millisecondsOf([of = of] { of->open(); }));
        }
    figures().note("opening an empty store, median", medianOf(small), "ms");
    figures().limit("opening the big store, median", medianOf(big), "ms", 50.0);
}
BENCHMARK(opening)->Iterations(20)->Unit(benchmark::kMillisecond);

void foldingAgain(benchmark::State& state)
{
    BigScene& scene = bigScene();
    const double changes = static_cast<double>(*(*scene.store->reader())->countOfChanges());
    std::vector<double> times;
    for (auto _ : state) {
        scene.store.reset();
        SQLite::Database(scene.path, SQLite::OPEN_READWRITE)
            .exec("UPDATE setting SET value='old' WHERE key='declaration'");
        times.push_back(millisecondsOf([&] { scene.open(); }));
    }
    figures().note("folding the whole log again", medianOf(times) / 1000, "s");
    figures().limit("folding again, a change", 1000 * medianOf(times) / changes, "us", 100.0);
}
BENCHMARK(foldingAgain)->Iterations(1)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv)
{
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return figures().print() ? 0 : 1;
}
