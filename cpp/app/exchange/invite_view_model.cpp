// SPDX-License-Identifier: MIT
#include "app/exchange/invite_view_model.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QUrl>

#include <algorithm>

#include "app/exchange/people.h"
#include "app/exchange/ways.h"
#include "formats/qr_code.h"
#include "sync/roster/roster_edits.h"
#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// Invitations go out at winter meetings, months ahead. Common practice, no source.
constexpr std::chrono::days goodFor{90};

Role roleOf(const QString& word)
{
    const auto found = std::find(roleNames.begin(), roleNames.end(), word.toStdString());
    return found == roleNames.end() ? Role::Grower : static_cast<Role>(found - roleNames.begin());
}

// From the first invitation on the others see whose the founding device is.
Edit ownEnrolment(const store::Store& store, const Uuid& me)
{
    EnrolledDevice own;
    own.stream = store.stream();
    own.key = store.publicKey();
    own.member = me;
    own.label = InviteViewModel::tr("first device", "what the founding device is called").toStdString();
    return sync::enrolment(store.programme(), own);
}

} // namespace

InviteViewModel::InviteViewModel(
    Session& session, Exchanger& exchanger, const QString& member, QObject* parent)
    : ViewModel(session, parent), m_exchanger(&exchanger),
      m_member(parseUuid(member.toStdString()).value_or(Uuid{})),
      m_until(QString::fromStdString(formatDay(session.clock().today() + goodFor)))
{
    connect(&exchanger, &Exchanger::finished, this, &InviteViewModel::look);
    const auto people = People::read(session.reader(), session.store().programme(), session.store().stream());
    if (!people) {
        tell(people.error());
        return;
    }
    m_name = people->nameOf(m_member);
    m_mayInviteCoordinators = people->roster().isAlone() || people->roster().isRoot(people->own());
}

QString InviteViewModel::today() const
{
    return QString::fromStdString(formatDay(session().clock().today()));
}

void InviteViewModel::invite()
{
    if (m_busy) return;
    const auto until = parseDay(m_until.toStdString());
    if (!until) return tell(until.error());
    if (m_name.trimmed().isEmpty()) return tell(Error{ErrorCode::Empty, {"name"}});
    if (*until < session().clock().today())
        return tell(Error{ErrorCode::InvitationPast, {formatDay(*until)}});
    clearTrouble();
    m_busy = true;
    Q_EMIT busyChanged();
    Member member;
    member.id = m_member;
    member.name = m_name.trimmed().toStdString();
    member.role = roleOf(m_role);
    // The key behind a code is slow to make, on purpose.
    session().lookUp<sync::Invited>(
        this,
        [member, until = *until, now = session().clock().now().at, &store = session().store(),
            me = session().me() ? session().me()->id : Uuid{}](
            store::Reader& reader) -> Result<sync::Invited> {
            auto made = sync::invite(member, until, now);
            if (!made) return made;
            auto earlier = sync::earlierFounders(store, reader);
            if (!earlier) return earlier.error();
            made->edits.insert(made->edits.end(), earlier->begin(), earlier->end());
            const auto roster = store::rosterOf(reader, store.programme());
            if (!roster) return roster.error();
            // An exchange before the first invitation may have enrolled this device without a name.
            const auto own = roster->devices().find(store.stream());
            if (own == roster->devices().end() || own->second.member.isNil()
                || (own->second.label.empty() && own->second.member == me))
                made->edits.push_back(ownEnrolment(store, me));
            return made;
        },
        [this](const Result<sync::Invited>& made) {
            if (made) return keep(*made);
            m_busy = false;
            Q_EMIT busyChanged();
            tell(made.error());
        });
}

void InviteViewModel::keep(const sync::Invited& made)
{
    session().keep(made.edits, std::nullopt, this,
        [this, code = made.code, invitation = made.invitation](const Result<store::Kept>& kept) {
            m_busy = false;
            Q_EMIT busyChanged();
            if (!kept) return tell(kept.error());
            m_invitation = invitation;
            show(code);
            // Nobody can join before the invitation is where he looks for it.
            if (m_exchanger) m_exchanger->exchange();
            look();
        });
}

void InviteViewModel::show(const std::string& code)
{
    const auto ways = waysOf(session().reader());
    if (!ways) return tell(ways.error());
    const store::Store& store = session().store();
    m_code = QString::fromStdString(sync::shownCode(code));
    // The founding stream is the one whose word goes first; on a second main device it is another's.
    const auto people = People::read(session().reader(), store.programme(), store.stream());
    if (!people) return tell(people.error());
    const auto& founders = people->roster().founders();
    const StreamId founder =
        founders.empty() || founders.contains(store.stream()) ? store.stream() : *founders.begin();
    const std::string link =
        sync::invitationLink({code, store.programme(), founder, ways->hub.toStdString()});
    m_link = QString::fromStdString(link);
    m_where = ways->hub.isEmpty()
        ? tr("There is no hub: give the shared folder or a carried file along with the code.")
        : tr("The hub is in the picture and in the text. Over the telephone, say its address too: %1")
              .arg(ways->hub);
    if (const auto picture = formats::qrCode(link)) {
        m_pictureUnits = picture->side + 2 * formats::qrQuietZone;
        m_picture = PictureHandle(formats::qrPicture(*picture, tr("Invitation as a QR picture").toStdString(),
            tr("The same as the code and the text below it.").toStdString()));
    } else {
        tell(picture.error());
    }
    Q_EMIT invited();
}

void InviteViewModel::look()
{
    if (m_invitation.isNil()) return;
    const auto ways = waysOf(session().reader());
    if (!ways) return tell(ways.error());
    const auto got = store::handedOver(session().reader(), session().store().stream(), m_invitation);
    if (!got) return tell(got.error());
    m_isKnownOutside = got->here == 0;
    if (ways->isEmpty())
        m_reach.clear();
    else if (got->atHub > 0)
        m_reach = tr("The hub knows the code: it can be used now.");
    else if (m_isKnownOutside)
        m_reach = tr("The code lies in the shared folder: it can be used there now.");
    else if (m_exchanger && m_exchanger->running())
        m_reach = tr("The code is on its way to where the other looks for it.");
    else
        m_reach =
            tr("Nobody can use the code yet: it is only on this phone, until an exchange has gone through.");
    Q_EMIT reached();
}

QString InviteViewModel::codeSpelt() const
{
    QStringList signs;
    for (const QChar sign : m_code)
        if (sign != QLatin1Char('-')) signs << QString(sign);
    return signs.join(QStringLiteral(", "));
}

QString InviteViewModel::message() const
{
    const auto& programme = session().programme();
    const QString name = programme ? QString::fromStdString(programme->name) : QString();
    const auto until = parseDay(m_until.toStdString());
    return tr(
        "Join “%1” in Duskrow with the code %2, good once until %3. In the app choose “Join by a code” and "
        "paste this: %4")
        .arg(name, m_code, until ? text::dayAndYear(*until) : m_until, m_link);
}

void InviteViewModel::copy()
{
    QGuiApplication::clipboard()->setText(message());
    m_isCopied = true;
    Q_EMIT copied();
}

QString InviteViewModel::address(const QString& scheme) const
{
    const QString body = QString::fromLatin1(QUrl::toPercentEncoding(message()));
    if (scheme == QLatin1String("sms")) return QStringLiteral("sms:?body=") + body;
    return QStringLiteral("mailto:?subject=%1&body=%2")
        .arg(QString::fromLatin1(QUrl::toPercentEncoding(tr("Invitation"))), body);
}

} // namespace duskrow::app
