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
#include "sync/exchange/segments_of_store.h"
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

// As the app does after each keep.
void keep(Person& device, std::vector<Edit> edits, store::Reader& reader)
{
    device.keep(std::move(edits));
    if (!sync::sealFullTail(device.store(), reader)) qFatal("not sealed");
}

void keepEdits(
    Person& device, const bench::ReferenceWork& work, const std::vector<std::pair<std::size_t, Visit>>& edits)
{
    const auto reader = device.reader();
    for (const auto& [which, after] : edits)
        keep(device, {correction(work.visits[which], after, work.sites[which])}, *reader);
}

// What the reference work came to over one link.
struct Figures {
    double create = 0; // ms
    double push = 0;
    double pull = 0;
    double editing = 0;
    double second = 0;
    std::int64_t pushBytes = 0;
    std::int64_t pullBytes = 0;
    std::int64_t secondBytes = 0;
    double memoryMib = 0;
    double diskMb = 0;
    std::size_t bothKept = 0;
    std::size_t bothMerged = 0;
    bool isEqual = false;
};

void look(Figures& figures, const Person& left, const bench::ReferenceWork& work)
{
    for (std::size_t i = 0; i < bench::touchedByBoth; ++i) {
        const auto history = left.reader()->changesOf(work.left[i].second.id);
        const Folded folded = fold(*history);
        if (i < bench::touchedByBoth / 2)
            figures.bothKept +=
                folded.differences.size() == 1 && folded.differences.front().heads.size() == 2 ? 1 : 0;
        else
            figures.bothMerged += folded.values.at("pest") == Value{work.left[i].second.pest->value()}
                    && folded.values.at("remark") == Value{work.right[i].second.remark}
                ? 1
                : 0;
    }
}

enum class Link { Direct, Counted };

Figures doWork(const QString& program, const bench::ReferenceWork& work, Link link, qint64 rate)
{
    ProgrammeScene scene;
    const QString store = QString::fromStdString(scene.at("hub.db"));
    const sync::InvitationKey founding = bench::newProgramme(program, store);
    const bench::HubProcess hubProcess(program, store);
    std::optional<CountingRelay> relay;
    if (link == Link::Counted) relay.emplace(hubProcess.port, rate);
    const auto counted = [&] { return relay ? relay->taken() : 0; };
    const QUrl hub(QStringLiteral("http://127.0.0.1:%1").arg(relay ? relay->port.load() : hubProcess.port));
    Person& left = scene.coordinator();
    const auto right = scene.invite(2, Role::Coordinator, "right");
    if (!sync::foundAtHub(left.store(), hub, founding, "Invented district")) qFatal("not founded");
    for (int round = 0; round < 2; ++round) {
        exchange(left, hub);
        exchange(*right, hub);
    }
    Figures figures;
    const double memoryBefore = memoryMib();

    std::vector<Edit> made;
    const std::size_t count = work.visits.size();
    figures.create = timed([&] {
        const auto reader = left.reader();
        for (std::size_t i = 0; i < count; ++i) {
            made.push_back(creation(work.visits[i], work.sites[i]));
            if (made.size() == 500 || i + 1 == count) keep(left, std::exchange(made, {}), *reader);
        }
    });
    counted();
    figures.push = timed([&] { exchange(left, hub); });
    figures.pushBytes = counted();
    figures.pull = timed([&] { exchange(*right, hub); });
    figures.pullBytes = counted();
    figures.memoryMib = memoryMib() - memoryBefore;

    figures.editing = timed([&] {
        keepEdits(left, work, work.left);
        keepEdits(*right, work, work.right);
    });
    counted();
    figures.second = timed([&] {
        exchange(left, hub);
        exchange(*right, hub);
        exchange(left, hub);
    });
    figures.secondBytes = counted();

    look(figures, left, work);
    figures.isEqual = left.records() == right->records();
    left.close();
    right->close();
    figures.diskMb = diskMb(left);
    return figures;
}

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    if (argc < 2) return 2;
    const QString program = QString::fromLocal8Bit(argv[1]);
    const std::size_t count = argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 10'000;
    const qint64 rate = argc > 3 ? std::strtol(argv[3], nullptr, 10) : 0;
    const bench::ReferenceWork work = bench::makeReferenceWork(count, 20260101);
    // Bytes are counted on a way of their own, that costs time; times are those of the bare link, unless it
    // is to be slow.
    const Figures counted = doWork(program, work, Link::Counted, rate);
    const Figures timed = rate > 0 ? counted : doWork(program, work, Link::Direct, 0);

    const double scale = static_cast<double>(count) / 10'000;
    Held held;
    held.figure("first push, bytes", static_cast<double>(counted.pushBytes) / 1000, "kB", 700 * scale);
    held.figure("first pull, bytes", static_cast<double>(counted.pullBytes) / 1000, "kB", 700 * scale);
    held.figure("second exchange, bytes", static_cast<double>(counted.secondBytes) / 1000, "kB", 110);
    held.figure("disk of a device", counted.diskMb, "MB", 3.5 * scale);
    held.figure("growth of memory", counted.memoryMib, "MiB", count > 10'000 ? 150 : 40);
    if (count >= 100'000) held.figure("first pull", timed.pull / 1000, "s", count >= 1'000'000 ? 90 : 4);
    held.all("same field, both kept", timed.bothKept, bench::touchedByBoth / 2);
    held.all("other fields, both merged", timed.bothMerged, bench::touchedByBoth / 2);
    held.all("both devices show the same", timed.isEqual && counted.isEqual ? 1 : 0, 1);
    std::printf("create %.0f ms, push %.0f ms, pull %.0f ms, 2,000 edits %.0f ms, second exchange %.0f ms\n",
        timed.create, timed.push, timed.pull, timed.editing, timed.second);
    const nlohmann::json row{{"tool", "duskrow"}, {"create_ms", timed.create}, {"edit_ms", timed.editing},
        {"push1_ms", timed.push}, {"pull1_ms", timed.pull}, {"sync2_ms", timed.second},
        {"push1_up", counted.pushBytes}, {"pull1_down", counted.pullBytes}, {"sync2_up", counted.secondBytes},
        {"disk_bytes", counted.diskMb * 1e6}, {"rss_mb", memoryMib()},
        {"same_field_conflict_detectable", timed.bothKept}, {"diff_field_merged", timed.bothMerged}};
    std::printf("%s\n", row.dump().c_str());
    return held.result();
}
