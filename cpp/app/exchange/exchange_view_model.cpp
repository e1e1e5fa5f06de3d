// SPDX-License-Identifier: MIT
#include "app/exchange/exchange_view_model.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <QUrl>

#include <utility>

#include "app/exchange/exchange_words.h"
#include "app/exchange/hub_address.h"
#include "app/exchange/people.h"
#include "sync/carry/carry_route.h"
#include "sync/client/hub_client.h"

namespace duskrow::app {

using namespace duskrow::domain;

// What the screen shows, read on another thread.
struct ExchangeViewModel::State {
    store::HandedOver counts;
    Ways ways;
    std::vector<Row> wayRows;
    std::vector<Row> waiting;
    QStringList memberKeys;
    QStringList memberNames;
    int aside = 0;
};

namespace {

Result<std::vector<Row>> rowsOf(store::Reader& reader, const Ways& ways, const Moment& now)
{
    std::vector<Row> rows;
    for (const QString& way : ways.keys()) {
        const auto last = lastTimeOf(reader, way);
        if (!last) return last.error();
        Row row{.key = way, .title = wayName(way)};
        row.subject = way.section(QLatin1Char(':'), 1);
        if (*last) {
            row.besides = momentWords((*last)->at, now);
            row.detail = (*last)->said;
            if (!(*last)->trouble.isEmpty()) row.flags << (*last)->trouble;
        } else {
            row.detail = ExchangeViewModel::tr("No exchange yet");
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

// Entries that others cite, or that came before the ones they build on.
Result<std::vector<Row>> waitingIn(store::Reader& reader, const People& people)
{
    const auto states = store::streamStates(reader);
    if (!states) return states.error();
    std::vector<Row> rows;
    for (const auto& [stream, state] : *states) {
        const QString name = people.deviceName(stream);
        if (state.known > state.used)
            rows.push_back({.key = (static_cast<int>(state.known - state.used) == 1
                                    ? ExchangeViewModel::tr("Waiting for one entry from %1")
                                    : ExchangeViewModel::tr("Waiting for %n entries from %1", nullptr,
                                        static_cast<int>(state.known - state.used)))
                                       .arg(name)});
        if (state.isForked)
            rows.push_back({.key = ExchangeViewModel::tr("Two sets of entries from %1").arg(name),
                .detail = ExchangeViewModel::tr(
                    "It was copied or restored. Everything is kept; it goes on under a new number.")});
    }
    return rows;
}

} // namespace

ExchangeViewModel::ExchangeViewModel(Session& session, Exchanger& exchanger, QObject* parent)
    : ViewModel(session, parent), m_exchanger(&exchanger)
{
    connect(&session, &Session::changed, this, &ExchangeViewModel::refresh);
    connect(&exchanger, &Exchanger::finished, this, &ExchangeViewModel::refresh);
    exchanger.watch(true);
    refresh();
    exchanger.exchange();
}

ExchangeViewModel::~ExchangeViewModel()
{
    leave();
}

void ExchangeViewModel::leave()
{
    if (std::exchange(m_isWatching, false) && m_exchanger) m_exchanger->watch(false);
}

void ExchangeViewModel::refresh()
{
    const auto read = [programme = session().store().programme(), own = session().store().stream(),
                          me = session().me() ? session().me()->id : Uuid{},
                          now = session().clock().now()](store::Reader& reader) -> Result<State> {
        State state;
        const auto people = People::read(reader, programme, own);
        if (!people) return people.error();
        const auto counts = store::handedOver(reader, own);
        if (!counts) return counts.error();
        state.counts = *counts;
        const auto ways = waysOf(reader);
        if (!ways) return ways.error();
        state.ways = *ways;
        auto rows = rowsOf(reader, *ways, now);
        if (!rows) return rows.error();
        state.wayRows = std::move(*rows);
        auto waiting = waitingIn(reader, *people);
        if (!waiting) return waiting.error();
        state.waiting = std::move(*waiting);
        for (const Member& member : people->members()) {
            if (member.id == me) continue;
            state.memberKeys << QString::fromStdString(formatUuid(member.id));
            state.memberNames << QString::fromStdString(member.name);
        }
        const auto changes = store::asideChanges(reader);
        if (!changes) return changes.error();
        const auto files = store::asideRows(reader);
        if (!files) return files.error();
        state.aside = static_cast<int>(changes->size() + files->size());
        return state;
    };
    session().lookUp<State>(this, read, [this](const Result<State>& state) {
        if (!state) return tell(state.error());
        show(*state);
    });
}

void ExchangeViewModel::show(const State& state)
{
    m_here = static_cast<int>(state.counts.here);
    m_handedOver = static_cast<int>(state.counts.handedOver);
    m_atHub = static_cast<int>(state.counts.atHub);
    m_chosen = state.ways;
    m_aside = state.aside;
    m_memberKeys = state.memberKeys;
    m_memberNames = state.memberNames;
    m_ways.show(state.wayRows);
    m_waiting.show(state.waiting);
    Q_EMIT shown();
}

QString ExchangeViewModel::next() const
{
    if (m_chosen.isEmpty())
        return tr("Choose a way: a folder that others can open too, a hub, or one file to hand on.");
    if (m_here > 0) return tr("What is only on this phone goes on its way with the next exchange.");
    return tr("Everything entered here has left this phone at least once.");
}

QString ExchangeViewModel::asideLine() const
{
    return m_aside > 0
        ? (m_aside == 1 ? tr("One thing was kept aside, with its reason")
                        : tr("%n things were kept aside, each with its reason", nullptr, m_aside))
        : QString();
}

QString ExchangeViewModel::folder() const
{
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QFileInfo(documents).isDir() ? documents : QDir::homePath();
}

QString ExchangeViewModel::pathOf(const QString& address) const
{
    const QUrl url(address);
    return url.isLocalFile() ? url.toLocalFile() : address.trimmed();
}

bool ExchangeViewModel::addFolder(const QString& folder)
{
    const QString path = QDir::cleanPath(pathOf(folder));
    if (folder.trimmed().isEmpty()) {
        tell(Error{ErrorCode::Empty, {"folder"}});
        return false;
    }
    if (!QFileInfo(path).isDir()) {
        tell(Error{ErrorCode::FolderMissing, {path.toStdString()}});
        return false;
    }
    clearTrouble();
    Ways ways = m_chosen;
    if (!ways.folders.contains(path)) ways.folders << path;
    save(ways);
    if (m_exchanger) m_exchanger->exchangeBy(QStringLiteral("folder:") + path);
    return true;
}

bool ExchangeViewModel::addHub(const QString& address, const QString& founding)
{
    const QUrl url = hubAddress(address);
    if (!url.isValid() || url.host().isEmpty()) {
        tell(Error{ErrorCode::HubUnreachable, {address.trimmed().toStdString()}});
        return false;
    }
    const auto code = founding.trimmed().isEmpty() ? Result<std::string>(std::string())
                                                   : sync::readCode(founding.toStdString());
    if (!code) {
        tell(code.error());
        return false;
    }
    clearTrouble();
    Ways ways = m_chosen;
    ways.hub = url.toString();
    save(ways);
    if (!m_exchanger) return true;
    const QString way = QStringLiteral("hub:") + ways.hub;
    if (code->empty()) {
        m_exchanger->exchangeBy(way);
        return true;
    }
    const auto& programme = session().programme();
    m_exchanger->run(
        wayName(way),
        [url, code = *code, name = programme ? programme->name : std::string()](store::Store& store,
            const Moment&, const sync::Journey& journey) -> Result<sync::ExchangeReport> {
            const auto key = sync::keyOfCode(code);
            if (!key) return key.error();
            const auto founded = sync::foundAtHub(store, url, *key, name, journey);
            if (!founded) return founded.error();
            return sync::ExchangeReport{};
        },
        this,
        [this, way](const Result<sync::ExchangeReport>& founded) {
            if (!founded) return tell(founded.error());
            if (m_exchanger) m_exchanger->exchangeBy(way);
        });
    return true;
}

void ExchangeViewModel::removeWay(const QString& way)
{
    Ways ways = m_chosen;
    const QString where = way.section(QLatin1Char(':'), 1);
    if (way.startsWith(QLatin1String("hub:")))
        ways.hub.clear();
    else
        ways.folders.removeAll(where);
    save(ways);
}

void ExchangeViewModel::save(const Ways& ways)
{
    if (const auto saved = saveWays(session().store(), ways); !saved) return tell(saved.error());
    m_chosen = ways;
    refresh();
}

void ExchangeViewModel::writeFile(const QString& folder, const QString& member)
{
    if (!m_exchanger) return;
    const QString where = pathOf(folder);
    if (where.isEmpty()) return tell(Error{ErrorCode::Empty, {"folder"}});
    if (!QFileInfo(where).isDir()) return tell(Error{ErrorCode::FolderMissing, {where.toStdString()}});
    clearTrouble();
    m_written.clear();
    Q_EMIT writtenChanged();
    const sync::CarryWhat what{parseUuid(member.toStdString()).value_or(Uuid{})};
    const QString day = QString::fromStdString(formatDay(session().clock().today()));
    const QString name =
        what.forMember.isNil() ? QString() : m_memberNames.value(m_memberKeys.indexOf(member));
    QString file = QStringLiteral("duskrow-%1").arg(day);
    if (!name.isEmpty()) file += QLatin1Char('-') + QString(name).replace(QLatin1Char('/'), QLatin1Char('-'));
    const QString path = QDir(where).filePath(file + QStringLiteral(".dusk"));
    m_exchanger->run(
        tr("Writing a file"),
        [path = path.toStdString(), what](store::Store& store, const Moment& now,
            const sync::Journey& journey) { return sync::writeCarried(store, path, what, now.at, journey); },
        this,
        [this, path](const Result<sync::ExchangeReport>& outcome) {
            if (!outcome) return tell(outcome.error());
            const QString place = QDir::toNativeSeparators(path);
            m_written = outcome->wasStopped
                ? tr("Stopped: the file is not whole, leave it.")
                : tr("Written: %1. Whoever has it can read all of it.").arg(place);
            Q_EMIT writtenChanged();
        });
}

} // namespace duskrow::app
