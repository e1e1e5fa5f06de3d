// SPDX-License-Identifier: MIT
#include "app/exchange/join_view_model.h"

#include <QDir>
#include <QFileInfo>
#include <QUrl>

#include "app/exchange/hub_address.h"
#include "app/exchange/people.h"
#include "domain/records/visit.h"
#include "domain/records/walk.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr qsizetype codeSigns = 10;

template <typename R>
Result<int> countOf(store::Reader& reader)
{
    const auto found = reader.select<R>({.only = {"withdrawn"}});
    if (!found) return found.error();
    return static_cast<int>(found->size());
}

// "3 fields, 4 traps, 27 visits, 2 walks"; empty where nothing was kept yet.
Result<QString> whatIsThere(store::Reader& reader)
{
    const auto sites = countOf<Site>(reader);
    const auto traps = countOf<Trap>(reader);
    const auto visits = countOf<Visit>(reader);
    const auto walks = countOf<Walk>(reader);
    for (const auto* count : {&sites, &traps, &visits, &walks})
        if (!*count) return count->error();
    QStringList parts;
    if (*sites > 0)
        parts << (*sites == 1 ? JoinViewModel::tr("1 field")
                              : JoinViewModel::tr("%n fields", nullptr, *sites));
    if (*traps > 0)
        parts << (*traps == 1 ? JoinViewModel::tr("1 trap") : JoinViewModel::tr("%n traps", nullptr, *traps));
    if (*visits > 0)
        parts << (*visits == 1 ? JoinViewModel::tr("1 visit")
                               : JoinViewModel::tr("%n visits", nullptr, *visits));
    if (*walks > 0)
        parts << (*walks == 1 ? JoinViewModel::tr("1 walk") : JoinViewModel::tr("%n walks", nullptr, *walks));
    return parts.join(QStringLiteral(", "));
}

QString broughtWords(const sync::Brought& brought)
{
    QStringList said{(static_cast<int>(brought.records) == 1
            ? JoinViewModel::tr("One record came along.")
            : JoinViewModel::tr("%n records came along.", nullptr, static_cast<int>(brought.records)))};
    if (brought.photosMissing > 0)
        said << (static_cast<int>(brought.photosMissing) == 1
                ? JoinViewModel::tr("One photograph was not there any more.")
                : JoinViewModel::tr("%n photographs were not there any more.", nullptr,
                    static_cast<int>(brought.photosMissing)));
    for (const int year : brought.yearsNotHere)
        said << JoinViewModel::tr("The season %1 is not begun here; its records lie ready for it.").arg(year);
    for (const std::string& pest : brought.pestsNotHere)
        said << JoinViewModel::tr(
            "“%1” is not trapped in this programme; its records came along all the same.")
                    .arg(QString::fromStdString(pest));
    return said.join(QLatin1Char(' '));
}

} // namespace

JoinViewModel::JoinViewModel(
    Session& session, Exchanger& exchanger, Place place, const QString& subject, QObject* parent)
    : ViewModel(session, parent), m_exchanger(&exchanger), m_place(std::move(place))
{
#ifdef Q_OS_ANDROID
    m_label = tr("phone");
#else
    m_label = tr("computer");
#endif
    if (subject.startsWith(QLatin1String("duskrow:"))) {
        setTyped(subject);
    } else if (!subject.isEmpty()) {
        m_file = subject;
        m_from = QStringLiteral("file");
    }
    countAlong();
}

// Only what one kept alone comes along: the records of a programme with others belong to it.
void JoinViewModel::countAlong()
{
    if (!session().programme() || !session().me()) return;
    const auto people =
        People::read(session().reader(), session().store().programme(), session().store().stream());
    if (!people) return tell(people.error());
    if (people->hasOthers()) return;
    const auto there = whatIsThere(session().reader());
    if (!there) return tell(there.error());
    m_alongLine = *there;
    m_bringsAlong = !there->isEmpty();
}

void JoinViewModel::setTyped(const QString& typed)
{
    if (typed == m_typed) return;
    m_typed = typed;
    m_typedError.clear();
    m_invitation = {};
    // Half a code is no mistake yet.
    if (const auto read = sync::readInvitation(typed.toStdString())) {
        m_invitation = *read;
        if (!read->hub.empty()) {
            m_hub = QString::fromStdString(read->hub);
            m_from = QStringLiteral("hub");
        }
    } else if (typed.size() > codeSigns + 1) {
        m_typedError = text::sentence(read.error());
    }
    Q_EMIT edited();
}

void JoinViewModel::setFrom(const QString& from)
{
    if (from == m_from) return;
    m_from = from;
    clearTrouble();
    Q_EMIT edited();
}

QString JoinViewModel::pathOf(const QString& address) const
{
    const QUrl url(address);
    return url.isLocalFile() ? url.toLocalFile() : address.trimmed();
}

Result<QString> JoinViewModel::way() const
{
    if (m_from == QLatin1String("hub")) {
        const QUrl url = hubAddress(m_hub);
        if (m_hub.trimmed().isEmpty()) return Error{ErrorCode::Empty, {"hub"}};
        if (!url.isValid() || url.host().isEmpty())
            return Error{ErrorCode::HubUnreachable, {m_hub.trimmed().toStdString()}};
        return QStringLiteral("hub:") + url.toString();
    }
    const bool isFolder = m_from == QLatin1String("folder");
    const QString path = pathOf(isFolder ? m_folder : m_file);
    if (path.isEmpty()) return Error{ErrorCode::Empty, {isFolder ? "folder" : "file"}};
    if (isFolder && !QFileInfo(path).isDir()) return Error{ErrorCode::FolderMissing, {path.toStdString()}};
    return m_from + QLatin1Char(':') + QDir::cleanPath(path);
}

void JoinViewModel::join()
{
    if (m_busy || !m_exchanger) return;
    if (m_invitation.code.empty()) {
        const auto read = sync::readInvitation(m_typed.toStdString());
        m_typedError = text::sentence(
            m_typed.trimmed().isEmpty() || read ? Error{ErrorCode::Empty, {"code"}} : read.error());
        return Q_EMIT edited();
    }
    const auto chosen = way();
    if (!chosen) return tell(chosen.error());
    clearTrouble();
    m_busy = true;
    Q_EMIT busyChanged();
    const JoinAsk ask{m_invitation, *chosen, m_label.trimmed(), m_place.storeFolder, m_place.keyFolder,
        session().clock().now(), m_bringsAlong && !m_alongLine.isEmpty()};
    const auto joined = std::make_shared<std::optional<Joined>>();
    m_exchanger->run(
        tr("Joining"),
        [ask, joined](
            store::Store& solo, const Moment&, const sync::Journey& journey) -> Result<sync::ExchangeReport> {
            auto done = joinProgramme(ask, solo, journey);
            if (!done) return done.error();
            *joined = std::move(*done);
            return sync::ExchangeReport{};
        },
        this,
        [this, joined](
            const Result<sync::ExchangeReport>& outcome) { finish(outcome, *joined ? &**joined : nullptr); });
}

void JoinViewModel::finish(const Result<sync::ExchangeReport>& outcome, Joined* joined)
{
    m_busy = false;
    Q_EMIT busyChanged();
    if (!outcome) return tell(outcome.error());
    if (!joined) return;
    QStringList said;
    if (joined->brought) said << broughtWords(*joined->brought);
    for (const Error& error : joined->troubles) said << text::sentence(error);
    m_place.adopt(std::move(joined->store), said.join(QLatin1Char(' ')));
}

} // namespace duskrow::app
