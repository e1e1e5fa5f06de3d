// SPDX-License-Identifier: MIT
#include <QTest>

#include <chrono>
#include <csignal>
#include <random>
#include <sys/wait.h>
#include <unistd.h>

#include "store/check.h"
#include "store/store_scene.h"

using namespace duskrow::domain;
using namespace duskrow::store;
using namespace duskrow::tests;
using namespace std::string_literals;

namespace {

// What the killed process had been answered.
struct Heard {
    std::uint32_t kept = 0; // the last visit said to be kept; 0 for none
    std::uint32_t drafted = 0;
    int lines = 0;
};

// A process that keeps visits until it is killed.
class KeepLoop {
public:
    KeepLoop(const std::string& store, const std::string& keys, std::uint32_t first)
    {
        std::array<int, 2> ends{};
        if (pipe(ends.data()) != 0) qFatal("no pipe");
        m_child = fork();
        if (m_child == 0) {
            dup2(ends[1], STDOUT_FILENO);
            close(ends[0]);
            execl(KEEP_LOOP, KEEP_LOOP, store.c_str(), keys.c_str(), std::to_string(first).c_str(), nullptr);
            _exit(127);
        }
        close(ends[1]);
        m_read = ends[0];
    }
    ~KeepLoop() { close(m_read); }
    KeepLoop(const KeepLoop&) = delete;
    KeepLoop& operator=(const KeepLoop&) = delete;

    // Reads answers until that many have come. False when the process ended by itself.
    bool hear(int lines)
    {
        while (m_heard.lines < lines)
            if (!readSome()) return false;
        return true;
    }

    // Kills at once; what had been said but not yet read counts too.
    Heard kill()
    {
        ::kill(m_child, SIGKILL);
        while (readSome()) { }
        int status = 0;
        waitpid(m_child, &status, 0);
        m_wasKilled = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
        return m_heard;
    }
    [[nodiscard]] bool wasKilled() const { return m_wasKilled; }

private:
    bool readSome()
    {
        std::array<char, 256> some{};
        const ssize_t size = read(m_read, some.data(), some.size());
        if (size <= 0) return false;
        m_text.append(some.data(), static_cast<std::size_t>(size));
        for (auto end = m_text.find('\n'); end != std::string::npos; end = m_text.find('\n')) {
            const auto space = m_text.find(' ');
            const auto number =
                static_cast<std::uint32_t>(std::stoul(m_text.substr(space + 1, end - space - 1)));
            (m_text.starts_with("kept") ? m_heard.kept : m_heard.drafted) = number;
            ++m_heard.lines;
            m_text.erase(0, end + 1);
        }
        return true;
    }

    pid_t m_child = -1;
    int m_read = -1;
    std::string m_text;
    Heard m_heard;
    bool m_wasKilled = false;
};

void spin(std::chrono::microseconds time)
{
    const auto end = std::chrono::steady_clock::now() + time;
    while (std::chrono::steady_clock::now() < end) { }
}

} // namespace

class KillTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Killed at random moments through 200 visits and more: every visit that was answered is there, whole,
    // and so is the draft of the one that was half entered.
    void everyAcknowledgedVisitIsThere()
    {
        const StoreScene scene;
        std::mt19937 random(20260714);
        std::uint32_t last = 0; // found after the last kill
        std::uint32_t answered = 0;
        int draftsBack = 0;
        for (int round = 0; answered < 220 || draftsBack < 5; ++round) {
            QVERIFY2(round < 400, "the loop does not get on");
            KeepLoop loop(scene.path(), scene.path("keys"), last + 1);
            // Every fifth is killed while it opens, the others after some answers.
            const int lines = round % 5 == 4 ? 0 : 1 + static_cast<int>(random() % 18);
            QVERIFY2(loop.hear(lines), "the loop ended by itself");
            const int longest = lines == 0 ? 60'000 : std::array{100, 1'000, 5'000}[random() % 3];
            spin(std::chrono::microseconds(random() % static_cast<unsigned>(longest)));
            const Heard heard = loop.kill();
            QVERIFY(loop.wasKilled());
            if (heard.kept > last) answered += heard.kept - last;
            last = found(scene, heard, last, draftsBack);
            if (QTest::currentTestFailed()) return;
        }
        const auto report = checkStore(scene.path());
        QVERIFY(report.has_value() && report->isSound());
        QCOMPARE(report->changes, std::int64_t{last});
    }

private:
    // Opens what the kill left; returns the number of the last visit.
    static std::uint32_t found(
        const StoreScene& scene, const Heard& heard, std::uint32_t before, int& draftsBack)
    {
        const auto store = Store::open(scene.path(), scene.how());
        if (!store) {
            QTest::qFail(store.error().detail.c_str(), __FILE__, __LINE__);
            return 0;
        }
        const auto reader = (*store)->reader();
        const auto visits = visitsOf(**reader, idOf(7));
        const auto count = static_cast<std::uint32_t>(visits->size());
        const std::uint32_t acknowledged = std::max(heard.kept, before);
        // One more may have been kept without the answer getting through, never one less.
        if (count < acknowledged || count > acknowledged + 1)
            QTest::qFail("visits are missing or more than were asked for", __FILE__, __LINE__);
        for (std::uint32_t number = 1; number <= count; ++number)
            if (!correction(visitOf(number, number), (*visits)[number - 1], {}).fields.empty())
                QTest::qFail("a visit is not whole", __FILE__, __LINE__);
        const std::optional<std::string> draft = *(*reader)->draft("visit/7");
        if (heard.drafted > count) {
            ++draftsBack;
            if (*draft != "half of " + std::to_string(heard.drafted))
                QTest::qFail("the draft is gone", __FILE__, __LINE__);
        }
        if (draft && *draft != "half of " + std::to_string(count + 1))
            QTest::qFail("a draft outlived its visit", __FILE__, __LINE__);
        return count;
    }
};

QTEST_APPLESS_MAIN(KillTest)
#include "kill_test.moc"
