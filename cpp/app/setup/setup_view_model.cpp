// SPDX-License-Identifier: MIT
#include "app/setup/setup_view_model.h"

#include <QJsonDocument>
#include <QUrl>

#include <array>
#include <cmath>

#include "app/draft_entries.h"
#include "domain/rules/protocol_rules.h"
#include "store/photos.h"
#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr std::array pageNames{
    "field", "yes", "place", "around", "trap", "handling", "lure", "strip", "stake", "last", "kept"};

} // namespace

SetupViewModel::SetupViewModel(
    Session& session, DeviceSettings& settings, const QString& subject, QObject* parent)
    : ViewModel(session, parent), m_settings(settings), m_subject(subject),
      m_draftKey(QStringLiteral("setup/") + subject), m_site(session, m_facts, this),
      m_place(session.position(), session.clock(), this), m_around(session, m_facts, this),
      m_trap(session, m_facts, this), m_stake(session, m_facts, this), m_setDay(m_site.today())
{
    const QString replacing = QStringLiteral("replace/");
    const QString siting = QStringLiteral("site/");
    if (subject.startsWith(replacing))
        m_replaces = idIn(subject.mid(replacing.size()));
    else
        m_wantedSite = idIn(subject.startsWith(siting) ? subject.mid(siting.size()) : subject);

    loadDraft();
    connect(this, &SetupViewModel::edited, this, &SetupViewModel::takeEdit);
    connect(&m_place, &PlaceViewModel::edited, this, &SetupViewModel::takeEdit);
    connect(&m_place, &PlaceViewModel::changed, this, &SetupViewModel::changed);
    for (SetupPart* part : {static_cast<SetupPart*>(&m_site), static_cast<SetupPart*>(&m_around),
             static_cast<SetupPart*>(&m_trap), static_cast<SetupPart*>(&m_stake)})
        connect(part, &SetupPart::edited, this, &SetupViewModel::takeEdit);

    measureWhereWanted();
    if (!blocked().isEmpty()) return;
    this->session().lookUp<SetupFacts>(
        this,
        [season = this->session().season()->id, me = this->session().me()->id, replaced = m_replaces](
            store::Reader& reader) { return lookUpSetupFacts(reader, season, me, replaced); },
        [this](const Result<SetupFacts>& found) {
            if (found)
                takeFacts(*found);
            else
                tell(found.error());
        });
}

QString SetupViewModel::blocked() const
{
    if (!session().season())
        return tr("The season of %1 has not begun yet. Begin it first, then set up its traps.")
            .arg(yearOf(session().clock().today()));
    return session().me() ? QString() : tr("This device does not know yet whose it is.");
}

void SetupViewModel::takeFacts(const SetupFacts& facts)
{
    m_quiet = true;
    m_facts = facts;
    if (!m_resumed) takeSubject();
    m_site.preset();
    m_trap.preset();
    m_quiet = false;
    refresh();
    if (!m_resumed) setPage(firstPage());
}

void SetupViewModel::takeSubject()
{
    if (const Trap* earlier = m_facts.trap(m_replaces)) {
        m_wantedSite = earlier->site;
        m_trap.takeFrom(*earlier);
        m_stake.takeFrom(*earlier);
        m_around.takeFrom(*earlier);
        if (const auto point = earlier->place()) {
            KeptPlace place{
                *point, earlier->fixMethod.value_or(FixMethod::Satellite), {}, {}, earlier->fixCount};
            if (earlier->accuracy) place.accuracy = toMetres(*earlier->accuracy);
            if (earlier->fixAtMs) place.at = instantFromMs(*earlier->fixAtMs);
            m_place.setFound(place);
        }
    }
    if (m_facts.site(m_wantedSite)) m_site.choose(m_wantedSite);
}

void SetupViewModel::takeEdit()
{
    if (m_quiet) return;
    refresh();
    saveDraft();
}

// Everything that follows from the entries.
void SetupViewModel::refresh()
{
    m_quiet = true;
    const Site* chosen = m_site.chosen();
    m_trap.setSite(chosen ? chosen->id : Uuid{});
    m_stake.setProtocol(m_trap.protocol());
    m_around.look(soFar());
    m_quiet = false;
    Q_EMIT changed();
}

void SetupViewModel::loadDraft()
{
    const auto body = session().draft(m_draftKey);
    if (!body) return;
    const QJsonObject draft = QJsonDocument::fromJson(*body).object();
    m_quiet = true;
    takeEntries(m_site, draft.value(QLatin1String("site")).toObject());
    m_place.takeEntries(draft.value(QLatin1String("place")).toObject());
    takeEntries(m_around, draft.value(QLatin1String("around")).toObject());
    takeEntries(m_trap, draft.value(QLatin1String("trap")).toObject());
    takeEntries(m_stake, draft.value(QLatin1String("stake")).toObject());
    takeEntries(*this, draft.value(QLatin1String("last")).toObject());
    m_quiet = false;
    const QString page = draft.value(QLatin1String("page")).toString();
    for (std::size_t i = 0; i < pageNames.size(); ++i)
        if (page == QLatin1String(pageNames.at(i))) m_page = static_cast<Page>(i);
    m_resumed = true;
}

void SetupViewModel::saveDraft()
{
    if (m_page == Page::Kept || m_busy) return;
    const QJsonObject draft{{QStringLiteral("page"), page()}, {QStringLiteral("site"), entriesOf(m_site)},
        {QStringLiteral("place"), m_place.entries()}, {QStringLiteral("around"), entriesOf(m_around)},
        {QStringLiteral("trap"), entriesOf(m_trap)}, {QStringLiteral("stake"), entriesOf(m_stake)},
        {QStringLiteral("last"), entriesOf(*this)}};
    session().saveDraft(m_draftKey, QJsonDocument(draft).toJson(QJsonDocument::Compact));
}

void SetupViewModel::startOver()
{
    m_quiet = true;
    session().dropDraft(m_draftKey);
    session().store().flush();
    Q_EMIT startedOver();
}

QString SetupViewModel::page() const
{
    return QString::fromLatin1(pageNames.at(static_cast<std::size_t>(m_page)));
}

void SetupViewModel::setPage(Page page)
{
    if (page == m_page) return;
    m_page = page;
    if (page == Page::Lure && m_settings.wasDoneOn(lureHandlingRead, toQDate(session().clock().today())))
        m_trap.setProperty("handlingRead", true);
    measureWhereWanted();
    Q_EMIT pageChanged();
    Q_EMIT changed();
}

// Fixes count only while the person stands at the place.
void SetupViewModel::measureWhereWanted()
{
    if (m_page == Page::Place)
        m_place.measure();
    else
        m_place.rest();
}

bool SetupViewModel::wants(Page page) const
{
    switch (page) {
    case Page::Field:
        return m_wantedSite.isNil();
    case Page::Yes:
        return m_site.wantsYes() && m_replaces.isNil();
    case Page::Handling:
        return m_trap.hasLure()
            && !m_settings.wasDoneOn(lureHandlingRead, toQDate(session().clock().today()));
    case Page::Lure:
        return m_trap.hasLure();
    case Page::Strip:
        return m_trap.hasStrip();
    case Page::Place:
    case Page::Around:
    case Page::Trap:
    case Page::Stake:
    case Page::Last:
    case Page::Kept:
        break;
    }
    return true;
}

SetupViewModel::Page SetupViewModel::firstPage() const
{
    return wants(Page::Field) ? Page::Field : after(Page::Field);
}

SetupViewModel::Page SetupViewModel::after(Page page) const
{
    auto next = static_cast<Page>(static_cast<int>(page) + 1);
    while (!wants(next)) next = static_cast<Page>(static_cast<int>(next) + 1);
    return next;
}

bool SetupViewModel::atStart() const
{
    return m_page == firstPage() || m_page == Page::Kept;
}

void SetupViewModel::goBack()
{
    auto page = m_page;
    while (page > firstPage()) {
        page = static_cast<Page>(static_cast<int>(page) - 1);
        if (wants(page)) break;
    }
    setPage(page);
    saveDraft();
}

bool SetupViewModel::pass(Page page)
{
    switch (page) {
    case Page::Field:
        return m_site.passField();
    case Page::Yes:
        return m_site.passYes();
    case Page::Place:
        if (m_place.isFound()) return true;
        // Nothing to take is no obstacle; something typed that is no place is.
        return m_place.canTake() || m_place.hasTyped() ? m_place.take() : true;
    case Page::Trap:
        return m_trap.passTrap();
    case Page::Handling:
        m_settings.firstTimeOn(lureHandlingRead, toQDate(session().clock().today()));
        return true;
    case Page::Lure:
        if (!m_trap.passLure()) return false;
        m_trap.setLureIn(!m_leavingOut);
        return true;
    case Page::Strip:
        m_trap.setStripIn(!m_leavingOut);
        return true;
    case Page::Last:
        return remarkError().isEmpty();
    case Page::Around:
    case Page::Stake:
    case Page::Kept:
        break;
    }
    return true;
}

void SetupViewModel::leaveOut()
{
    m_leavingOut = true;
    goOn();
    m_leavingOut = false;
}

void SetupViewModel::goOn()
{
    if (m_busy || !m_facts.isKnown || m_page == Page::Kept || !pass(m_page)) return;
    if (m_page != Page::Last) {
        setPage(after(m_page));
        refresh();
        return saveDraft();
    }
    const LocalDay today = session().clock().today();
    if (day() > today)
        Q_EMIT asked(tr("The day of set-up lies ahead"),
            tr("%1 has not come yet. Counts start from the day of set-up.").arg(text::dayAndYear(day())));
    else if (yearOf(day()) != yearOf(today))
        Q_EMIT asked(tr("Another year?"), lateness());
    else
        keep();
}

void SetupViewModel::keepAnyway()
{
    if (!m_busy && m_page == Page::Last) keep();
}

QString SetupViewModel::title() const
{
    const QString site = m_site.title();
    if (site.isEmpty() || m_page == Page::Field) return tr("Set up a trap");
    const QString tag = QString::fromStdString(soFar().tag);
    return m_page > Page::Trap ? tr("%1 · trap %2").arg(site, tag) : site;
}

QString SetupViewModel::nextText() const
{
    switch (m_page) {
    case Page::Field:
        return wants(Page::Yes) ? tr("Next: the landowner’s yes") : tr("Next: the place");
    case Page::Yes:
        return m_site.hasYes() ? tr("Next: the place") : tr("Go on without the yes");
    case Page::Place:
        if (m_place.isFound()) return tr("Next: what stands around");
        if (m_place.hasTyped()) return tr("Use these coordinates");
        return m_place.canTake() ? tr("Use this place") : tr("Go on without a place");
    case Page::Around:
        return tr("Next: the trap");
    case Page::Trap:
        return m_trap.hasLure() ? tr("Next: the lure") : tr("Next: the stake");
    case Page::Handling:
        return tr("I have read this");
    case Page::Lure:
        if (!m_trap.lureIn()) return tr("The lure is in its basket");
        return m_trap.hasStrip() ? tr("Next: the killing strip") : tr("Next: the stake");
    case Page::Strip:
        if (m_trap.stripIn()) return tr("Next: the stake");
        return m_trap.mayTakeStrip() ? tr("The strip is in") : tr("Go on without the strip");
    case Page::Stake:
        return tr("Next: a last look");
    case Page::Last:
        return tr("Keep this trap");
    case Page::Kept:
        break;
    }
    return tr("See its season");
}

QString SetupViewModel::remarkError() const
{
    const auto checked = checkValue(*kindOf<Trap>().find("remark"), Value{clean(m_remark)});
    return checked ? QString() : text::sentence(checked.error());
}

LocalDay SetupViewModel::day() const
{
    return dayIn(m_setDay).value_or(session().clock().today());
}

QString SetupViewModel::lateness() const
{
    const Protocol* protocol = m_trap.protocol();
    return protocol && session().season()
        ? app::lateness(*protocol, day(), session().season()->year.value_or(yearOf(day())))
        : QString();
}

SetupOutlook SetupViewModel::outlook() const
{
    const Protocol* protocol = m_trap.protocol();
    if (!protocol || !session().season()) return {};
    return outlookAfter(*protocol, m_trap.type() ? m_trap.type()->id : std::string(), day(),
        seasonWeekOf(*session().season()));
}

QStringList SetupViewModel::nextLabels() const
{
    return outlook().labels;
}

QStringList SetupViewModel::nextValues() const
{
    return outlook().values;
}

QString SetupViewModel::stillOpen() const
{
    const Protocol* protocol = m_trap.protocol();
    if (!protocol) return {};
    const DueRules rules = dueRulesOf(
        *protocol, m_trap.type() ? m_trap.type()->id : std::string(), std::chrono::year{yearOf(day())}, {});
    return openSteps(soFar(), rules, session().clock().today());
}

} // namespace duskrow::app
