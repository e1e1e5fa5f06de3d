// SPDX-License-Identifier: MIT
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <map>
#include <set>

#include "demo/district.h"
#include "demo/names.h"
#include "demo/summer.h"
#include "store/check.h"
#include "store/queries.h"

using namespace duskrow::domain;
namespace demo = duskrow::demo;
namespace store = duskrow::store;

namespace {

const Uuid sameProgramme = *parseUuid("01900000-0000-7000-8000-000000000001");

// The value itself: a loop over a part of a temporary Result would look into what is gone.
template <typename T>
T taken(Result<T> result)
{
    if (!result) qFatal("error %d: %s", static_cast<int>(result.error().code), result.error().detail.c_str());
    return std::move(result).value();
}

struct Filled {
    QTemporaryDir folder;
    std::string path;
    demo::District district;
    std::string dump; // of the current tables

    Filled(const demo::Parameters& wanted, std::optional<Uuid> programme = {})
    {
        path = folder.filePath(QStringLiteral("demo.duskrow")).toStdString();
        auto opened = store::Store::open(path,
            {.keyFolder = folder.filePath(QStringLiteral("keys")).toStdString(),
                .mayCreate = true,
                .progress = {},
                .vfs = {},
                .programme = programme});
        auto held = taken(std::move(opened));
        district = taken(demo::fillStore(*held, wanted));
        held.reset();
        const auto database = taken(store::openReader(path, {}));
        dump = store::CurrentTables(*database).dump();
    }

    [[nodiscard]] std::unique_ptr<store::Reader> reader() const { return taken(store::openForReading(path)); }
};

demo::Parameters small(std::int64_t seed)
{
    return {.traps = 16, .seasons = 2, .seed = seed};
}

// What one trap caught in a season, as far as it was counted.
std::map<Uuid, std::int64_t> totals(store::Reader& reader, const Uuid& season)
{
    std::map<Uuid, std::int64_t> sums;
    for (const Trap& trap : taken(store::trapsOf(reader, season))) sums[trap.id] = 0;
    for (const Visit& visit : taken(store::visitsForCatch(reader, season)))
        if (visit.pest) sums[visit.trap] += visit.pest->value();
    return sums;
}

} // namespace

class DistrictTest : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<Filled> m_usual;

private Q_SLOTS:
    void initTestCase() { m_usual = std::make_unique<Filled>(demo::Parameters{}); }
    void cleanupTestCase() { m_usual.reset(); }

    void itHasTheSitesAndSeasonsAskedFor()
    {
        const auto reader = m_usual->reader();
        const auto seasons = store::seasons(*reader);
        QCOMPARE(seasons->size(), std::size_t{4});
        for (std::size_t i = 0; i < 4; ++i) {
            QCOMPARE(*(*seasons)[i].year, 2023 + static_cast<int>(i));
            QCOMPARE(store::sitesOf(*reader, (*seasons)[i].id)->size(), std::size_t{40});
            QCOMPARE(store::trapsOf(*reader, (*seasons)[i].id)->size(), std::size_t{40});
            QCOMPARE(store::protocolsInUse(*reader, (*seasons)[i].id)->size(), std::size_t{1});
        }
        QCOMPARE(store::districts(*reader)->size(), std::size_t{5});
        const auto programme = store::programme(*reader, m_usual->district.programme);
        QCOMPARE((*programme)->invented, std::optional(true));
        QVERIFY(QString::fromStdString((*programme)->region).contains(QStringLiteral("invented")));
    }

    void namesOfSitesAndTagsAreNotRepeatedWithinASeason()
    {
        const auto reader = m_usual->reader();
        for (const Season& season : taken(store::seasons(*reader))) {
            std::set<std::string> names;
            std::set<std::string> tags;
            for (const Site& site : taken(store::sitesOf(*reader, season.id))) names.insert(site.name);
            for (const Trap& trap : taken(store::trapsOf(*reader, season.id))) tags.insert(trap.tag);
            QCOMPARE(names.size(), std::size_t{40});
            QCOMPARE(tags.size(), std::size_t{40});
        }
        std::set<std::string> people;
        std::set<std::string> sites;
        for (std::size_t i = 0; i < 20'000; ++i) {
            people.insert(demo::personName(7, i));
            sites.insert(demo::siteName(7, i));
        }
        QCOMPARE(people.size(), std::size_t{20'000});
        QCOMPARE(sites.size(), std::size_t{20'000});
    }

    void theFlightIsBelievable()
    {
        for (std::uint64_t seed = 1; seed <= 20; ++seed) {
            const demo::Summer summer(2026, demo::Dice(seed));
            const auto over = [&](unsigned month, unsigned day) {
                return summer.flightOver(dayOf(2026, month, day));
            };
            QVERIFY2(over(6, 8) < 0.06, qPrintable(QString::number(over(6, 8))));
            QVERIFY2(over(7, 1) > 0.01 && over(7, 1) < 0.4, qPrintable(QString::number(over(7, 1))));
            QVERIFY2(over(7, 14) > 0.12 && over(7, 14) < 0.8, qPrintable(QString::number(over(7, 14))));
            QVERIFY2(over(8, 3) > 0.65, qPrintable(QString::number(over(8, 3))));
            for (int day = 0; day < 120; ++day) {
                const LocalDay morning = dayOf(2026, 4, 10) + std::chrono::days{day};
                QVERIFY(summer.flightOver(morning) <= summer.flightOver(morning + std::chrono::days{1}));
            }
        }
    }

    void pastTotalsArePlausible()
    {
        const auto reader = m_usual->reader();
        for (const int year : {2023, 2024, 2025}) {
            const auto season = store::seasonOfYear(*reader, year);
            const auto sums = totals(*reader, (*season)->id);
            const auto usual = std::count_if(sums.begin(), sums.end(),
                [](const auto& sum) { return sum.second >= 15 && sum.second <= 330; });
            const auto high =
                std::count_if(sums.begin(), sums.end(), [](const auto& sum) { return sum.second >= 500; });
            QVERIFY2(usual >= 28, qPrintable(QString::number(usual)));
            QCOMPARE(high >= 3, year == 2025); // the outbreak corner began last year
            for (const auto& [trap, sum] : sums) QVERIFY2(sum < 2500, qPrintable(QString::number(sum)));
        }
    }

    void missedWeeksAndMishapsAreThere()
    {
        const auto reader = m_usual->reader();
        std::map<Uuid, LocalDay> last;
        int longGaps = 0;
        int fallen = 0;
        int couldNotCount = 0;
        int zeros = 0;
        int bees = 0;
        int byCups = 0;
        for (const Season& season : taken(store::seasons(*reader)))
            for (const Trap& trap : taken(store::trapsOf(*reader, season.id)))
                for (const Visit& visit : taken(store::visitsOf(*reader, trap.id))) {
                    const auto before = last.find(trap.id);
                    if (before != last.end() && *visit.day - before->second >= std::chrono::days{12})
                        ++longGaps;
                    last[trap.id] = *visit.day;
                    fallen += visit.state == TrapState::Fallen && visit.atLeast == true;
                    couldNotCount += visit.outcome == Outcome::CouldNotCount && visit.reason && !visit.pest;
                    zeros += visit.pest == Moths{0};
                    bees += visit.bees > Bees{0};
                    byCups += visit.countMethod == CountMethod::Volume && visit.pestLow < visit.pest
                        && visit.pest < visit.pestHigh;
                }
        QVERIFY(longGaps >= 10);
        QVERIFY(fallen >= 1);
        QVERIFY(couldNotCount >= 1);
        QVERIFY(zeros >= 10);
        QVERIFY(bees >= 100);
        QVERIFY(byCups >= 2);
    }

    void servicesSamplesAndLoansAreThere()
    {
        const auto reader = m_usual->reader();
        const auto season = store::seasonOfYear(*reader, 2026);
        std::map<ServiceWhat, int> done;
        for (const Service& service : taken(store::servicesOfSeason(*reader, (*season)->id)))
            ++done[*service.what];
        QVERIFY(done[ServiceWhat::Raise] >= 5);
        QVERIFY(done[ServiceWhat::Lure] >= 1);
        QVERIFY(done[ServiceWhat::Strip] >= 1);
        const auto samples = store::samplesOfSeason(*reader, (*season)->id);
        QVERIFY(std::any_of(samples->begin(), samples->end(),
            [](const Sample& sample) { return sample.state == SampleState::Named && sample.pest; }));
        int loans = 0;
        for (const Trap& trap : taken(store::trapsOf(*reader, (*season)->id)))
            loans += static_cast<int>(store::loansOf(*reader, trap.id)->size());
        QCOMPARE(loans, 1);
    }

    void oneCountIsTenfoldAndOneLureIsBad()
    {
        const auto reader = m_usual->reader();
        const auto season = store::seasonOfYear(*reader, 2026);
        std::map<Uuid, std::vector<std::int64_t>> counts;
        for (const Visit& visit : taken(store::visitsForCatch(*reader, (*season)->id)))
            if (visit.pest) counts[visit.trap].push_back(visit.pest->value());
        const auto sums = totals(*reader, (*season)->id);
        int tenfold = 0;
        int badLure = 0;
        for (const Trap& trap : taken(store::trapsOf(*reader, (*season)->id))) {
            auto& own = counts[trap.id];
            std::sort(own.rbegin(), own.rend());
            tenfold += own.size() > 2 && own[0] >= 40 && own[0] >= 4 * own[1] && own[0] % 10 == 0;
            if (!QString::fromStdString(trap.remark).contains(QStringLiteral("picked up by hand"))) continue;
            ++badLure;
            QVERIFY(sums.at(trap.id) < 120); // a low trap among high ones
        }
        QVERIFY(tenfold >= 1);
        QCOMPARE(badLure, 1);
    }

    void pastTrapsEndedWithTheirClosingSteps()
    {
        const auto reader = m_usual->reader();
        const auto past = store::seasonOfYear(*reader, 2025);
        for (const Trap& trap : taken(store::trapsOf(*reader, (*past)->id))) {
            QVERIFY(trap.endDay && trap.endReason);
            QVERIFY(*trap.endDay > *trap.setDay);
            if (trap.endReason == EndReason::SeasonOver)
                QVERIFY(trap.lureOut == true && trap.stripOut == true);
        }
        const auto present = store::seasonOfYear(*reader, 2026);
        const auto traps = store::trapsOf(*reader, (*present)->id);
        QVERIFY(
            std::count_if(traps->begin(), traps->end(), [](const Trap& trap) { return !trap.endDay; }) >= 38);
    }

    void theGrowerHasThreeTrapsNearbyWithThisWeekToCount()
    {
        const auto reader = m_usual->reader();
        const auto season = store::seasonOfYear(*reader, 2026);
        std::vector<Trap> own;
        for (const Trap& trap : taken(store::trapsOf(*reader, (*season)->id))) {
            const auto site = store::site(*reader, trap.site);
            if ((*site)->keeper == m_usual->district.grower.id) own.push_back(trap);
        }
        QCOMPARE(own.size(), std::size_t{3});
        int forgotten = 0;
        for (const Trap& trap : own) {
            QVERIFY(std::abs(*trap.latE7 - *own.front().latE7) < 500'000); // 5.5 km
            const LocalDay last = *taken(store::visitsOf(*reader, trap.id)).back().day;
            QVERIFY(last < dayOf(2026, 7, 12)); // the reporting week began that Sunday
            forgotten += last < dayOf(2026, 7, 5);
        }
        QCOMPARE(forgotten, 1);
        const auto members = store::members(*reader);
        const auto isGrower = [&](const Member& member) { return member.id == m_usual->district.grower.id; };
        const auto found = std::find_if(members->begin(), members->end(), isGrower);
        QVERIFY(found != members->end() && found->role == Role::Grower);
    }

    void nothingIsEnteredAfterToday_data()
    {
        QTest::addColumn<QByteArray>("today");
        for (const char* day : {"2026-01-03", "2026-06-10", "2026-07-14", "2026-12-31"})
            QTest::newRow(day) << QByteArray(day);
    }

    void nothingIsEnteredAfterToday()
    {
        QFETCH(QByteArray, today);
        demo::Parameters wanted = small(3);
        wanted.seasons = 1;
        wanted.today = *parseDay(today.toStdString());
        const Filled filled(wanted);
        const auto reader = filled.reader();
        const auto tonight =
            Instant{std::chrono::sys_days{wanted.today.time_since_epoch()}} + std::chrono::hours{24 + 6};
        for (const Season& season : taken(store::seasons(*reader)))
            for (const Trap& trap : taken(store::trapsOf(*reader, season.id))) {
                QVERIFY(*trap.setDay <= wanted.today);
                for (const Visit& visit : taken(store::visitsOf(*reader, trap.id))) {
                    QVERIFY(*visit.day <= wanted.today);
                    for (const Change& change : taken(reader->changesOf(visit.id)))
                        QVERIFY(change.at < tonight);
                }
            }
    }

    void theSameSeedGivesTheSameDistrict()
    {
        const Filled one(small(5), sameProgramme);
        const Filled other(small(5), sameProgramme);
        const Filled another(small(6), sameProgramme);
        QVERIFY(one.dump.size() > 10'000);
        QCOMPARE(one.dump, other.dump);
        QVERIFY(one.dump != another.dump);
    }

    void theStoreIsSound()
    {
        const auto report = store::checkStore(m_usual->path);
        QVERIFY(report.has_value());
        QVERIFY(report->isSound());
        QVERIFY(report->changes > 1500);
    }

    void parametersOutOfBoundsAreRefused_data()
    {
        QTest::addColumn<qint64>("traps");
        QTest::addColumn<qint64>("seasons");
        QTest::addColumn<qint64>("seed");
        QTest::newRow("no traps") << qint64{0} << qint64{1} << qint64{1};
        QTest::newRow("no seasons") << qint64{1} << qint64{0} << qint64{1};
        QTest::newRow("too many traps") << qint64{1'000'000} << qint64{1} << qint64{1};
        QTest::newRow("a negative seed") << qint64{1} << qint64{1} << qint64{-1};
    }

    void parametersOutOfBoundsAreRefused()
    {
        QFETCH(qint64, traps);
        QFETCH(qint64, seasons);
        QFETCH(qint64, seed);
        const QTemporaryDir folder;
        const auto opened = store::Store::open(folder.filePath(QStringLiteral("x")).toStdString(),
            {.keyFolder = folder.path().toStdString(), .mayCreate = true});
        const auto filled = demo::fillStore(**opened, {.traps = traps, .seasons = seasons, .seed = seed});
        QVERIFY(!filled.has_value());
        QCOMPARE(filled.error().code, ErrorCode::OutOfRange);
    }

    void oneTrapAloneIsEnoughAndAFilledStoreIsLeftAlone()
    {
        const QTemporaryDir folder;
        const auto opened = store::Store::open(folder.filePath(QStringLiteral("x")).toStdString(),
            {.keyFolder = folder.path().toStdString(), .mayCreate = true});
        const auto filled = demo::fillStore(**opened, {.traps = 1, .seasons = 1});
        QVERIFY(filled.has_value());
        QCOMPARE(filled->traps, std::int64_t{1});
        const auto again = demo::fillStore(**opened, {.traps = 1, .seasons = 1});
        QVERIFY(!again.has_value());
        QCOMPARE(again.error().code, ErrorCode::StoreExists);
    }
};

QTEST_GUILESS_MAIN(DistrictTest)
#include "district_test.moc"
