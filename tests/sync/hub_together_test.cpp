// SPDX-License-Identifier: MIT
#include <QTest>

#include <chrono>
#include <mutex>
#include <set>
#include <thread>

#include "sync/hub/store/copy.h"
#include "sync/hub_scene.h"

using namespace duskrow::tests;
using duskrow::sync::SegmentHead;

namespace {

constexpr std::uint32_t phoneCount = 50;
constexpr int weeks = 10;
constexpr int visitsAWeek = 20;
constexpr unsigned threadCount = 8;

using Steady = std::chrono::steady_clock;

struct Pushed {
    std::int64_t at = 0;
    std::int64_t last = 0;
    std::string stream;
    double ms = 0;
};

} // namespace

// Many at once, without sockets: what the store alone does.
class HubTogetherTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QVERIFY(sodium_init() >= 0); }

    void fiftyPhonesLeaveNoGapAndNoDouble()
    {
        HubScene scene;
        Phone founder = scene.founded();
        std::vector<Phone> phones;
        std::vector<std::vector<SegmentHead>> seasons;
        for (std::uint32_t number = 0; number < phoneCount; ++number) {
            Phone phone(scene.programme, number + 10);
            founder.writeMember(phone.member, "agronomist");
            founder.writeDevice(phone, phone.member);
            seasons.push_back(seasonOf(phone, number));
            phones.push_back(std::move(phone));
        }
        QCOMPARE(scene.push(founder.seal(), founder.token).status, 201);
        const auto began = Steady::now();
        const std::vector<Pushed> pushed = pushAll(scene, founder.token, seasons);
        const double seconds = std::chrono::duration<double>(Steady::now() - began).count();
        QCOMPARE(pushed.size(), std::size_t{phoneCount * weeks});

        std::set<std::int64_t> numbers;
        for (const Pushed& one : pushed) numbers.insert(one.at);
        QCOMPARE(numbers.size(), pushed.size());
        QCOMPARE(*numbers.rbegin(), static_cast<std::int64_t>(pushed.size()) + 2);
        const auto report = checkStore(*scene.store);
        QVERIFY(report.has_value() && report->faults.empty());
        QCOMPARE(report->segments, static_cast<std::int64_t>(pushed.size()) + 2);
        tell(pushed, seconds);
    }

private:
    static std::vector<SegmentHead> seasonOf(Phone& phone, std::uint32_t number)
    {
        std::vector<SegmentHead> season;
        for (int week = 0; week < weeks; ++week) {
            for (int visit = 0; visit < visitsAWeek; ++visit)
                phone.visit(number * 1000 + static_cast<std::uint32_t>(week * visitsAWeek + visit),
                    uuidOf(3, number));
            season.push_back(phone.seal());
        }
        return season;
    }

    static std::vector<Pushed> pushAll(
        const HubScene& scene, const std::string& token, const std::vector<std::vector<SegmentHead>>& seasons)
    {
        std::vector<Pushed> pushed;
        std::mutex mutex;
        std::vector<std::thread> threads;
        for (unsigned thread = 0; thread < threadCount; ++thread)
            threads.emplace_back([&, thread] {
                for (int week = 0; week < weeks; ++week)
                    for (std::size_t phone = thread; phone < seasons.size(); phone += threadCount) {
                        const auto began = Steady::now();
                        const Response answer =
                            scene.push(seasons[phone][static_cast<std::size_t>(week)], token);
                        const std::chrono::duration<double, std::milli> took = Steady::now() - began;
                        if (answer.status != 201) continue;
                        const json receipt = json::parse(answer.body);
                        const std::lock_guard guard(mutex);
                        pushed.push_back({receipt["at"], receipt["last"], receipt["stream"], took.count()});
                    }
            });
        for (std::thread& thread : threads) thread.join();
        return pushed;
    }

    static void tell(const std::vector<Pushed>& pushed, double seconds)
    {
        std::vector<double> times;
        for (const Pushed& one : pushed) times.push_back(one.ms);
        std::sort(times.begin(), times.end());
        qInfo("%.0f changes and %.0f segments a second durably; median %.1f ms, 99 %% %.1f ms",
            static_cast<double>(pushed.size()) * visitsAWeek / seconds,
            static_cast<double>(pushed.size()) / seconds, times[times.size() / 2],
            times[times.size() * 99 / 100]);
    }
};

QTEST_APPLESS_MAIN(HubTogetherTest)
#include "hub_together_test.moc"
