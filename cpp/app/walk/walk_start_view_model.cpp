// SPDX-License-Identifier: MIT
#include "app/walk/walk_start_view_model.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

#include "app/as_qstring.h"
#include "domain/rules/frame_estimate.h"
#include "store/queries.h"
#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// As many chips as a thumb goes over.
constexpr std::size_t mostSites = 8;
// A walk may go on another day, but larvae grow: after a week it is another walk.
constexpr std::chrono::days longestWalk{7};

} // namespace

WalkStartViewModel::WalkStartViewModel(Session& session, const QString& subject, QObject* parent)
    : ViewModel(session, parent)
{
    read(subject);
}

void WalkStartViewModel::read(const QString& subject)
{
    const auto& season = session().season();
    if (!season) return tell(Error{ErrorCode::RecordMissing, {"season"}});
    store::Reader& reader = session().reader();
    const auto sites = store::sitesOf(reader, season->id);
    const auto uses = store::protocolsInUse(reader, season->id);
    const auto walks = store::walksOf(reader, season->id);
    for (const auto* failed :
        {sites ? nullptr : &sites.error(), uses ? nullptr : &uses.error(), walks ? nullptr : &walks.error()})
        if (failed) return tell(*failed);
    m_sites = *sites;
    const Uuid me = session().me() ? session().me()->id : Uuid{};
    std::stable_partition(
        m_sites.begin(), m_sites.end(), [&](const Site& site) { return site.keeper == me; });
    // The first pest in use whose larvae are searched for.
    for (const ProtocolUse& use : *uses) {
        const Protocol* protocol = session().protocol(use.pest);
        if (!m_protocol && protocol && protocol->scouting) m_protocol = protocol;
    }
    const LocalDay today = session().clock().today();
    for (const Walk& walk : *walks)
        if (!walk.finished.value_or(false) && walk.day && today - *walk.day <= longestWalk)
            m_open.push_back(walk);
    if (subject.startsWith(QLatin1String("site/"))) m_site = subject.mid(5);
    const auto trap = store::trap(reader, parseUuid(subject.toStdString()).value_or(Uuid{}));
    if (trap && *trap) m_site = asQString((*trap)->site);
    if (m_site.isEmpty() && m_sites.size() == 1) m_site = asQString(m_sites.front().id);
}

std::vector<const Site*> WalkStartViewModel::fitting() const
{
    std::vector<const Site*> found;
    const QString wanted = m_search.trimmed();
    for (const Site& site : m_sites)
        if (asQString(site.id) == m_site || wanted.isEmpty()
            || asQString(site.name).contains(wanted, Qt::CaseInsensitive))
            found.push_back(&site);
    std::stable_partition(
        found.begin(), found.end(), [this](const Site* site) { return asQString(site->id) == m_site; });
    return found;
}

QStringList WalkStartViewModel::siteKeys() const
{
    QStringList keys;
    for (const Site* site : fitting())
        if (static_cast<std::size_t>(keys.size()) < mostSites) keys << asQString(site->id);
    return keys << QString();
}

QStringList WalkStartViewModel::siteNames() const
{
    QStringList names;
    for (const Site* site : fitting())
        if (static_cast<std::size_t>(names.size()) < mostSites) names << asQString(site->name);
    return names << tr("Another field");
}

QString WalkStartViewModel::moreSites() const
{
    const std::size_t all = fitting().size();
    if (all <= mostSites) return {};
    return tr("%1 more fit: type a part of the name.")
        .arg(text::number(static_cast<std::int64_t>(all - mostSites)));
}

const ProtocolCrop* WalkStartViewModel::crop() const
{
    if (!m_protocol) return nullptr;
    for (const Site& site : m_sites) {
        if (asQString(site.id) != m_site) continue;
        for (const ProtocolCrop& crop : m_protocol->crops)
            if (crop.id == site.crop && !crop.growthStages.empty()) return &crop;
    }
    return &m_protocol->crops.front();
}

QString WalkStartViewModel::scale() const
{
    return crop() ? asQString(crop()->growthScale.in(Session::language())) : QString();
}

QStringList WalkStartViewModel::stageKeys() const
{
    QStringList keys;
    if (!crop()) return keys;
    for (const GrowthStage& stage : crop()->growthStages) keys << QString::number(stage.code.value());
    return keys;
}

QStringList WalkStartViewModel::stageNames() const
{
    QStringList names;
    if (!crop()) return names;
    for (const GrowthStage& stage : crop()->growthStages)
        names << QStringLiteral("%1 · %2")
                     .arg(stage.code.value())
                     .arg(asQString(stage.name.in(Session::language())));
    return names;
}

QString WalkStartViewModel::stageLine() const
{
    if (!m_protocol || m_stage.isEmpty()) return {};
    const auto& window = m_protocol->scouting->stage;
    if (!window.from || !window.to) return {};
    const BbchStage stage{m_stage.toInt()};
    if (stage < *window.from)
        return tr("Early: most larvae are still small or not hatched. Look again near the end of flowering.");
    if (stage > *window.to)
        return tr("Late: the seed is nearly safe, and a label may leave no time before cutting.");
    return tr("This is the time to look.");
}

QString WalkStartViewModel::frameLine() const
{
    if (!m_protocol) return {};
    const double area = frameAreaOf(*m_protocol).value();
    const auto side = static_cast<std::int64_t>(std::llround(std::sqrt(area) * 100));
    return tr("The frame: %1 m², %2 × %2 cm inside.")
        .arg(QLocale().toString(area, 'g', 3), text::number(side));
}

bool WalkStartViewModel::canBegin() const
{
    return m_protocol && (!m_site.isEmpty() || !m_name.trimmed().isEmpty());
}

const Walk* WalkStartViewModel::openWalk() const
{
    for (const Walk& walk : m_open)
        if (asQString(walk.site) == m_site) return &walk;
    return nullptr;
}

QString WalkStartViewModel::goOnWith() const
{
    return openWalk() ? asQString(openWalk()->id) : QString();
}

QString WalkStartViewModel::goOnLine() const
{
    return openWalk()
        ? tr("A walk in this field was begun on %1 and is not finished.").arg(text::day(*openWalk()->day))
        : QString();
}

void WalkStartViewModel::begin()
{
    if (m_busy || !canBegin()) return;
    const Moment now = session().clock().now();
    std::vector<Edit> edits;
    Site site;
    site.id = parseUuid(m_site.toStdString()).value_or(Uuid{});
    if (site.id.isNil()) {
        site.id = session().newId();
        site.season = session().season()->id;
        site.keeper = session().me() ? session().me()->id : Uuid{};
        site.name = m_name.trimmed().toStdString();
        site.crop = m_protocol->crops.front().id;
        edits.push_back(creation(site, site.id));
    }
    Walk walk;
    walk.id = session().newId();
    walk.site = site.id;
    walk.season = session().season()->id;
    walk.pest = m_protocol->id;
    walk.protocolVersion = m_protocol->version;
    walk.day = now.day;
    walk.atMs = toMs(now.at);
    walk.offsetMin = static_cast<int>(now.offset.count());
    if (!m_stage.isEmpty()) walk.stageBbch = m_stage.toInt();
    if (m_drySeason) walk.drySeason = true;
    walk.frameCm2 = std::llround(frameAreaOf(*m_protocol).value() * 10'000);
    edits.push_back(creation(walk, site.id));
    m_busy = true;
    Q_EMIT busyChanged();
    session().keep(std::move(edits), std::nullopt, this,
        [this, id = asQString(walk.id)](const Result<store::Kept>& kept) {
            m_busy = false;
            Q_EMIT busyChanged();
            if (!kept) return tell(kept.error());
            clearTrouble();
            Q_EMIT began(id);
        });
}

} // namespace duskrow::app
