// SPDX-License-Identifier: MIT
// The reference work through a real hub over HTTP: two devices in this process, the hub in its own. Prints
// one line of JSON for the table of programs, and holds the figures against their limits.
//   exchange_bench HUB-PROGRAM [RECORDS] [BYTES-PER-SECOND]     the last: of a slow link, each way
#include <QCoreApplication>
#include <QTcpServer>
#include <QTcpSocket>
#include <QThread>
#include <QTimer>

#include <atomic>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>

#include "bench/hub_process.h"
#include "bench/reference_work.h"
#include "sync/client/hub_client.h"
#include "sync/exchange_scene.h"

using namespace duskrow;
using namespace duskrow::domain;
using namespace duskrow::tests;
using Seconds = std::chrono::duration<double>;

namespace {

// Passes bytes on between devices and hub, and counts them both ways.
class CountingRelay : public QThread {
public:
    // rate  bytes a second each way; 0: as fast as may be
    CountingRelay(quint16 hub, qint64 rate) : m_hub(hub), m_rate(rate)
    {
        start();
        while (port == 0) QThread::msleep(1);
    }
    ~CountingRelay() override
    {
        quit();
        wait();
    }
    std::int64_t taken() { return bytes.exchange(0); }

    std::atomic<quint16> port{0};
    std::atomic<std::int64_t> bytes{0};

protected:
    void run() override
    {
        QTcpServer server;
        QObject::connect(&server, &QTcpServer::newConnection, [&] {
            QTcpSocket* near = server.nextPendingConnection();
            auto* far = new QTcpSocket(near);
            far->connectToHost(QStringLiteral("127.0.0.1"), m_hub);
            pass(near, far);
            pass(far, near);
            QObject::connect(near, &QTcpSocket::disconnected, near, &QObject::deleteLater);
        });
        server.listen(QHostAddress::LocalHost);
        port = server.serverPort();
        exec();
    }

private:
    void pass(QTcpSocket* from, QTcpSocket* to)
    {
        const auto move = [this, from, to](qint64 most) {
            const QByteArray some = from->read(most);
            bytes += some.size();
            to->write(some);
        };
        if (m_rate == 0) {
            QObject::connect(from, &QTcpSocket::readyRead, to, [=] { move(from->bytesAvailable()); });
            return;
        }
        constexpr int beats = 20; // a second
        from->setReadBufferSize(m_rate / beats);
        auto* beat = new QTimer(to);
        QObject::connect(beat, &QTimer::timeout, to, [=, this] { move(m_rate / beats); });
        beat->start(1000 / beats);
    }

    quint16 m_hub;
    qint64 m_rate;
};

double memoryMib()
{
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmRSS:")) return std::strtod(line.c_str() + 6, nullptr) / 1024;
    return 0;
}

double diskMb(const Person& device)
{
    double bytes = 0;
    for (const char* part : {"", "-wal"}) {
        std::error_code failure;
        const auto size = std::filesystem::file_size(device.path() + part, failure);
        if (!failure) bytes += static_cast<double>(size);
    }
    return bytes / 1e6;
}

class Held {
public:
    void figure(const char* name, double value, const char* unit, double most)
    {
        const bool isHeld = value <= most;
        m_isHeld = m_isHeld && isHeld;
        std::printf("%-28s %9.2f %-4s limit %g%s\n", name, value, unit, most, isHeld ? "" : "  NOT HELD");
    }
    void all(const char* name, std::size_t got, std::size_t wanted)
    {
        m_isHeld = m_isHeld && got == wanted;
        std::printf("%-28s %zu of %zu%s\n", name, got, wanted, got == wanted ? "" : "  NOT HELD");
    }
    [[nodiscard]] int result() const { return m_isHeld ? 0 : 1; }

private:
    bool m_isHeld = true;
};

void exchange(Person& device, const QUrl& hub)
{
    const auto report = sync::exchangeByHub(device.store(), hub, device.now);
    if (!report)
        qFatal("no exchange: %d %s", static_cast<int>(report.error().code), report.error().detail.c_str());
    for (const Error& trouble : report->troubles) qFatal("trouble: %s", trouble.args.back().c_str());
}

template <typename Work>
double timed(Work&& work)
{
    const auto before = std::chrono::steady_clock::now();
    work();
    return Seconds(std::chrono::steady_clock::now() - before).count() * 1000;
}

void keepEdits(
    Person& device, const bench::ReferenceWork& work, const std::vector<std::pair<std::size_t, Visit>>& edits)
{
    for (const auto& [which, after] : edits)
        device.keep({correction(work.visits[which], after, work.sites[which])});
}

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    if (argc < 2) return 2;
    const std::size_t count = argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 10'000;
    const bench::ReferenceWork work = bench::makeReferenceWork(count, 20260101);

    ProgrammeScene scene;
    const QString program = QString::fromLocal8Bit(argv[1]);
    const QString store = QString::fromStdString(scene.at("hub.db"));
    const sync::InvitationKey founding = bench::newProgramme(program, store);
    const bench::HubProcess hubProcess(program, store);
    CountingRelay relay(hubProcess.port, argc > 3 ? std::strtol(argv[3], nullptr, 10) : 0);
    const QUrl hub(QStringLiteral("http://127.0.0.1:%1").arg(relay.port.load()));
    Person& left = scene.coordinator();
    const auto right = scene.invite(2, Role::Coordinator, "right");
    if (!sync::foundAtHub(left.store(), hub, founding, "Invented district")) return 1;
    for (int round = 0; round < 2; ++round) {
        exchange(left, hub);
        exchange(*right, hub);
    }
    const double memoryBefore = memoryMib();

    std::vector<Edit> made;
    const double create = timed([&] {
        for (std::size_t i = 0; i < count; ++i) {
            made.push_back(creation(work.visits[i], work.sites[i]));
            if (made.size() == 500 || i + 1 == count) left.keep(std::exchange(made, {}));
        }
    });
    relay.taken();
    const double push = timed([&] { exchange(left, hub); });
    const std::int64_t pushBytes = relay.taken();
    const double pull = timed([&] { exchange(*right, hub); });
    const std::int64_t pullBytes = relay.taken();
    const double memory = memoryMib() - memoryBefore;

    const double editing = timed([&] {
        keepEdits(left, work, work.left);
        keepEdits(*right, work, work.right);
    });
    relay.taken();
    const double second = timed([&] {
        exchange(left, hub);
        exchange(*right, hub);
        exchange(left, hub);
    });
    const std::int64_t secondBytes = relay.taken();

    std::size_t bothKept = 0;
    std::size_t bothMerged = 0;
    for (std::size_t i = 0; i < bench::touchedByBoth; ++i) {
        const auto history = left.reader()->changesOf(work.left[i].second.id);
        const Folded folded = fold(*history);
        if (i < bench::touchedByBoth / 2)
            bothKept +=
                folded.differences.size() == 1 && folded.differences.front().heads.size() == 2 ? 1 : 0;
        else
            bothMerged += folded.values.at("pest") == Value{work.left[i].second.pest->value()}
                    && folded.values.at("remark") == Value{work.right[i].second.remark}
                ? 1
                : 0;
    }
    const bool isEqual = left.records() == right->records();
    left.close();
    right->close();

    const double scale = static_cast<double>(count) / 10'000;
    Held held;
    held.figure("first push, bytes", static_cast<double>(pushBytes) / 1000, "kB", 700 * scale);
    held.figure("first pull, bytes", static_cast<double>(pullBytes) / 1000, "kB", 700 * scale);
    held.figure("second exchange, bytes", static_cast<double>(secondBytes) / 1000, "kB", 110);
    held.figure("disk of a device", diskMb(left), "MB", 3.5 * scale);
    held.figure("growth of memory", memory, "MiB", count > 10'000 ? 150 : 40);
    if (count >= 100'000) held.figure("first pull", pull / 1000, "s", count >= 1'000'000 ? 90 : 4);
    held.all("same field, both kept", bothKept, bench::touchedByBoth / 2);
    held.all("other fields, both merged", bothMerged, bench::touchedByBoth / 2);
    held.all("both devices show the same", isEqual ? 1 : 0, 1);
    std::printf("create %.0f ms, push %.0f ms, pull %.0f ms, 2,000 edits %.0f ms, second exchange %.0f ms\n",
        create, push, pull, editing, second);
    const nlohmann::json row{{"tool", "duskrow"}, {"create_ms", create}, {"push1_ms", push},
        {"pull1_ms", pull}, {"sync2_ms", second}, {"push1_up", pushBytes}, {"pull1_down", pullBytes},
        {"sync2_up", secondBytes}, {"disk_bytes", diskMb(left) * 1e6}, {"rss_mb", memoryMib()},
        {"same_field_conflict_detectable", bothKept}, {"diff_field_merged", bothMerged}};
    std::printf("%s\n", row.dump().c_str());
    return held.result();
}
