// SPDX-License-Identifier: MIT
#include "app/session.h"

#include <QLocale>

#include "protocols/protocol_files.h"
#include "store/queries.h"
#include "store/stream_key.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

template <typename T>
std::optional<T> valueOrTrouble(Session& session, Result<std::optional<T>> found)
{
    if (found) return std::move(*found);
    Q_EMIT session.troubled(found.error());
    return std::nullopt;
}

} // namespace

Session::Session(std::unique_ptr<store::Store> store, std::unique_ptr<store::Reader> reader, Clock clock,
    place::PositionSource& position)
    : m_store(std::move(store)), m_reader(std::move(reader)), m_clock(clock), m_position(position)
{
    m_readers.setMaxThreadCount(1);
    m_longReaders.setMaxThreadCount(1);
    refresh();
}

Session::~Session()
{
    m_readers.waitForDone();
    m_longReaders.waitForDone();
}

Result<std::unique_ptr<Session>> Session::open(
    const QString& path, const store::OpenHow& how, Clock clock, place::PositionSource& position)
{
    auto store = store::Store::open(path.toStdString(), how);
    if (!store) return store.error();
    auto reader = (*store)->reader();
    if (!reader) return reader.error();
    return std::make_unique<Session>(std::move(*store), std::move(*reader), clock, position);
}

void Session::refresh()
{
    m_programme = valueOrTrouble(*this, store::programme(*m_reader, m_store->programme()));
    m_season = valueOrTrouble(*this, store::seasonOfYear(*m_reader, yearOf(m_clock.today())));
    m_me.reset();
    const auto mine = valueOrTrouble(*this, m_reader->deviceSetting("me"));
    const auto id = mine ? parseUuid(*mine) : std::nullopt;
    if (!id) return;
    m_author = *id;
    const auto members = store::members(*m_reader);
    if (!members) return Q_EMIT troubled(members.error());
    for (const Member& member : *members)
        if (member.id == *id) m_me = member;
}

const Protocol* Session::protocol(const std::string& pest)
{
    auto& held = m_protocols[pest];
    if (held) return held.get();
    auto loaded = protocols::loadProtocol(QString::fromStdString(pest));
    if (!loaded) {
        Q_EMIT troubled(loaded.error());
        return nullptr;
    }
    held = std::make_unique<Protocol>(std::move(*loaded));
    return held.get();
}

std::string Session::language()
{
    return QLocale().name().left(2).toStdString();
}

Result<Done> Session::setMe(const Uuid& member)
{
    const auto saved = m_store->saveSettingNow("me", formatUuid(member));
    if (saved) refresh();
    return saved;
}

Uuid Session::newId() const
{
    return store::newId(m_clock.now().at);
}

void Session::keep(
    std::vector<Edit> edits, const std::optional<QString>& draftDone, QObject* context, Answer answer)
{
    const Moment now = m_clock.now();
    store::Batch batch{.author = m_author,
        .at = now.at,
        .offset = now.offset,
        .edits = std::move(edits),
        .draftDone = draftDone ? std::optional(draftDone->toStdString()) : std::nullopt};
    const QPointer<QObject> listener(context);
    m_store->keep(std::move(batch),
        [this, listener, draft = draftDone, answer = std::move(answer)](const Result<store::Kept>& kept) {
            QMetaObject::invokeMethod(this, [this, listener, draft, answer, kept] {
                if (kept && draft) m_openDrafts.erase(*draft);
                if (kept) refresh();
                if (listener) answer(kept);
                if (kept) Q_EMIT changed();
            });
        });
}

void Session::saveDraft(const QString& key, const QByteArray& body)
{
    m_store->saveDraft(key.toStdString(), body.toStdString(), [this, key](const Result<Done>& saved) {
        QMetaObject::invokeMethod(this, [this, key, saved] {
            if (!saved) return Q_EMIT troubled(saved.error());
            if (m_openDrafts.insert(key).second) Q_EMIT draftsChanged();
        });
    });
}

void Session::dropDraft(const QString& key)
{
    m_store->dropDraft(key.toStdString(), [this, key](const Result<Done>& dropped) {
        QMetaObject::invokeMethod(this, [this, key, dropped] {
            m_openDrafts.erase(key);
            if (!dropped) return Q_EMIT troubled(dropped.error());
            Q_EMIT draftsChanged();
        });
    });
}

std::optional<QByteArray> Session::draft(const QString& key) const
{
    const auto held = m_reader->draft(key.toStdString());
    if (!held || !*held) return std::nullopt;
    return QByteArray::fromStdString(**held);
}

void Session::runApart(QThreadPool& pool, Apart work)
{
    pool.start([this, work = std::move(work)] { work(m_store->reader()); });
}

} // namespace duskrow::app
