// SPDX-License-Identifier: MIT
#pragma once

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <cmath>

#include "domain/records/programme.h"
#include "domain/records/trap.h"
#include "domain/records/walk.h"
#include "store/store.h"

namespace duskrow::tests {

struct Ran {
    int exit = -1;
    QString out;
    QString err;
};

// A store with one field and its scouting walks, closed again so that a program can open it.
class WalkScene {
public:
    [[nodiscard]] QString path(const QString& name) const { return m_folder.filePath(name); }

    static domain::Uuid idOf(int number)
    {
        domain::Uuid id;
        id.bytes[0] = 1;
        id.bytes[14] = static_cast<std::uint8_t>(number / 256);
        id.bytes[15] = static_cast<std::uint8_t>(number % 256);
        return id;
    }

    // Programme, season, grower and one field called so.
    void begin(const QString& field, bool isInvented)
    {
        open();
        domain::Programme programme;
        programme.id = m_store->programme();
        programme.name = "Willow bend";
        programme.invented = isInvented;
        domain::Season season;
        season.year = 2026;
        season.id = domain::seasonId(programme.id, 2026);
        m_season = season.id;
        domain::Member me;
        me.id = idOf(1);
        me.name = "Wren Alder";
        me.role = domain::Role::Grower;
        keep({domain::creation(programme, {}), domain::creation(season, {}), domain::creation(me, {})});
        addField(2, field);
    }

    void addField(int number, const QString& name)
    {
        domain::Site site;
        site.id = idOf(number);
        site.season = m_season;
        site.keeper = idOf(1);
        site.name = name.toStdString();
        keep({domain::creation(site, {})});
    }

    // Frames 50 m apart, back and forth; with or without a place. Gives the walk's id as text.
    QString addWalk(int number, int field, domain::LocalDay day, const std::vector<int>& larvae,
        bool isPlaced, const std::string& remark = {})
    {
        domain::Walk walk;
        walk.id = idOf(number);
        walk.site = idOf(field);
        walk.season = m_season;
        walk.pest = "bertha-armyworm";
        walk.protocolVersion = "2026-1";
        walk.day = day;
        walk.atMs = 1'784'000'000'000 + number;
        walk.offsetMin = -300;
        walk.stageBbch = 75;
        walk.frameCm2 = 2500;
        walk.remark = remark;
        std::vector<domain::Edit> edits{domain::creation(walk, walk.site)};
        for (std::size_t i = 0; i < larvae.size(); ++i)
            edits.push_back(
                domain::creation(frameOf(walk, static_cast<int>(i), larvae[i], isPlaced), walk.site));
        keep(std::move(edits));
        return QString::fromStdString(domain::formatUuid(walk.id));
    }

    void decide(int number, int walk, std::optional<domain::Decided> decided)
    {
        domain::Decision decision;
        decision.id = idOf(number);
        decision.walk = idOf(walk);
        decision.day = domain::dayOf(2026, 7, 14);
        decision.costSum = "12";
        decision.costUnit = "CAD/ac";
        decision.price = "10";
        decision.priceUnit = "CAD/bu";
        decision.labelDays = 7;
        decision.cuttingDay = domain::dayOf(2026, 8, 20);
        decision.decided = decided;
        keep({domain::creation(decision, idOf(2))});
    }

    void close() { m_store.reset(); }
    void open()
    {
        auto opened = store::Store::open(path(QStringLiteral("trial.duskrow")).toStdString(),
            {.keyFolder = path(QStringLiteral("keys")).toStdString(), .mayCreate = true});
        if (!opened) qFatal("the store does not open: %s", opened.error().detail.c_str());
        m_store = std::move(*opened);
    }

    // The real program over this store, on 14 July 2026, without a screen.
    [[nodiscard]] Ran run(QStringList args, const QString& language = QStringLiteral("en_CA"),
        const QString& store = QStringLiteral("trial.duskrow")) const
    {
        args << QStringLiteral("--store") << path(store) << QStringLiteral("--keys")
             << path(QStringLiteral("keys")) << QStringLiteral("--today") << QStringLiteral("2026-07-14");
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("LC_ALL"), language + QStringLiteral(".UTF-8"));
        environment.insert(QStringLiteral("LANGUAGE"), language);
        environment.insert(QStringLiteral("XDG_RUNTIME_DIR"), m_folder.path());
        for (const char* name : {"QT_QPA_PLATFORM", "DISPLAY", "WAYLAND_DISPLAY"})
            environment.remove(QString::fromUtf8(name));
        return runProgram(QStringLiteral(DUSKROW_APP), args, environment);
    }

    static Ran runProgram(const QString& program, const QStringList& args,
        const QProcessEnvironment& environment = QProcessEnvironment::systemEnvironment())
    {
        QProcess process;
        process.setProcessEnvironment(environment);
        process.start(program, args);
        if (!process.waitForFinished(60'000) || process.exitStatus() != QProcess::NormalExit) return {};
        return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
            QString::fromUtf8(process.readAllStandardError())};
    }

private:
    static domain::Frame frameOf(const domain::Walk& walk, int index, int larvae, bool isPlaced)
    {
        domain::Frame frame;
        frame.id = walk.id;
        frame.id.bytes[8] = static_cast<std::uint8_t>(index / 256 + 1);
        frame.id.bytes[9] = static_cast<std::uint8_t>(index % 256);
        frame.walk = walk.id;
        frame.day = walk.day;
        frame.atMs = *walk.atMs + index * 300'000;
        frame.stop = index + 1;
        frame.larvae = domain::Larvae{larvae};
        const int small = larvae / 4;
        const int large = larvae / 5;
        frame.bySize = "small:" + std::to_string(small) + " medium:" + std::to_string(larvae - small - large)
            + " large:" + std::to_string(large);
        frame.sick = domain::Larvae{index % 4 == 1 ? 1 : 0};
        if (index % 2 == 0) {
            frame.podsSeen = 25;
            frame.podsDamaged = index % 3;
        }
        if (isPlaced) {
            const int row = index / 4;
            const int column = row % 2 == 0 ? index % 4 : 3 - index % 4;
            frame.latE7 = 521'000'000 + row * 4'500 + (index * 37 % 11) * 120;
            frame.lonE7 = -1'066'000'000 + column * 7'400 + (index * 53 % 13) * 150;
            frame.accuracy = domain::Millimetres{4'000};
        }
        return frame;
    }

    void keep(std::vector<domain::Edit> edits)
    {
        const auto kept = m_store->keepNow({.author = idOf(1),
            .at = domain::instantFromMs(1'784'000'000'000 + m_acts++),
            .offset = std::chrono::minutes{-300},
            .edits = std::move(edits),
            .draftDone = {}});
        if (!kept) qFatal("the scene could not be made: %s", kept.error().detail.c_str());
    }

    QTemporaryDir m_folder;
    std::unique_ptr<store::Store> m_store;
    domain::Uuid m_season;
    int m_acts = 0;
};

} // namespace duskrow::tests
