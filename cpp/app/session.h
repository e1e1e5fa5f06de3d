// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QPointer>
#include <QThreadPool>

#include <functional>
#include <memory>
#include <set>

#include "app/clock.h"
#include "domain/protocol/protocol.h"
#include "domain/records/programme.h"
#include "domain/records/trap.h"
#include "place/position_source.h"
#include "store/store.h"

namespace duskrow::app {

// One open programme: its store, the day, the position, and who holds the device. View models are handed
// this.
class Session : public QObject {
    Q_OBJECT

public:
    Session(std::unique_ptr<store::Store> store, std::unique_ptr<store::Reader> reader, Clock clock,
        place::PositionSource& position);
    ~Session() override;

    // Errors  those of store::Store::open
    static domain::Result<std::unique_ptr<Session>> open(
        const QString& path, const store::OpenHow& how, Clock clock, place::PositionSource& position);

    [[nodiscard]] store::Reader& reader() const { return *m_reader; }
    [[nodiscard]] store::Store& store() const { return *m_store; }
    [[nodiscard]] const Clock& clock() const { return m_clock; }
    [[nodiscard]] place::PositionSource& position() const { return m_position; }

    // Nothing until a programme was begun, respectively a season of this year.
    [[nodiscard]] const std::optional<domain::Programme>& programme() const { return m_programme; }
    [[nodiscard]] const std::optional<domain::Season>& season() const { return m_season; }
    [[nodiscard]] const std::optional<domain::Member>& me() const { return m_me; }

    // The protocol of a pest, read once. Null when it cannot be had; `troubled` then says why.
    [[nodiscard]] const domain::Protocol* protocol(const std::string& pest);
    // The two-letter language of the device, for texts of protocol files.
    [[nodiscard]] static std::string language();

    domain::Result<domain::Done> setMe(const domain::Uuid& member);
    [[nodiscard]] domain::Uuid newId() const;

    // Keeps edits on the writer's thread; `answer` is called here, after the commit, unless `context` is
    // gone. Every view of the records hears `changed` afterwards.
    using Answer = std::function<void(const domain::Result<store::Kept>&)>;
    void keep(std::vector<domain::Edit> edits, const std::optional<QString>& draftDone, QObject* context,
        Answer answer);

    // Half-entered work. A failure to save one is told by `troubled`.
    void saveDraft(const QString& key, const QByteArray& body);
    void dropDraft(const QString& key);
    [[nodiscard]] std::optional<QByteArray> draft(const QString& key) const;

    // Looks something up on another thread; `answer` is called here, unless `context` is gone.
    template <typename T>
    void lookUp(QObject* context, std::function<domain::Result<T>(store::Reader&)> work,
        std::function<void(const domain::Result<T>&)> answer)
    {
        apart(m_readers, context, std::move(work), std::move(answer));
    }
    // The same for what may take seconds: it holds up no other look.
    template <typename T>
    void lookUpLong(QObject* context, std::function<domain::Result<T>(store::Reader&)> work,
        std::function<void(const domain::Result<T>&)> answer)
    {
        apart(m_longReaders, context, std::move(work), std::move(answer));
    }

    void refresh(); // reads programme, season and member again

Q_SIGNALS:
    void changed();
    void draftsChanged(); // one was begun or dropped; not: one went on
    void troubled(const domain::Error& error);

private:
    using Apart = std::function<void(domain::Result<std::unique_ptr<store::Reader>>)>;
    template <typename T>
    void apart(QThreadPool& pool, QObject* context, std::function<domain::Result<T>(store::Reader&)> work,
        std::function<void(const domain::Result<T>&)> answer)
    {
        runApart(pool,
            [this, context = QPointer<QObject>(context), work = std::move(work), answer = std::move(answer)](
                domain::Result<std::unique_ptr<store::Reader>> reader) {
                domain::Result<T> found = reader ? work(**reader) : domain::Result<T>(reader.error());
                QMetaObject::invokeMethod(this, [context, answer, found = std::move(found)] {
                    if (context) answer(found);
                });
            });
    }

    void runApart(QThreadPool& pool, Apart work);

    std::unique_ptr<store::Store> m_store;
    std::unique_ptr<store::Reader> m_reader;
    Clock m_clock;
    place::PositionSource& m_position;
    std::optional<domain::Programme> m_programme;
    std::optional<domain::Season> m_season;
    domain::Uuid m_author; // whose name stands under what is kept; the member's own record may come with it
    std::optional<domain::Member> m_me;
    std::map<std::string, std::unique_ptr<domain::Protocol>> m_protocols;
    std::set<QString> m_openDrafts; // that are known to be there
    QThreadPool m_readers;
    QThreadPool m_longReaders;
};

} // namespace duskrow::app
