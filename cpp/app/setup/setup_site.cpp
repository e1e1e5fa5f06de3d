// SPDX-License-Identifier: MIT
#include "app/setup/setup_site.h"

#include <algorithm>

#include "app/as_qstring.h"
#include "text/error_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr std::size_t mostShown = 6; // fields on the screen at once; typing finds the others

} // namespace

SetupSite::SetupSite(Session& session, const SetupFacts& facts, QObject* parent)
    : SetupPart(session, facts, parent), m_agreedDay(today())
{
}

std::vector<const Site*> SetupSite::fitting() const
{
    std::vector<const Site*> found;
    const QString wanted = m_search.trimmed();
    for (const Site& site : facts().sites)
        if (wanted.isEmpty() || asQString(site.name).contains(wanted, Qt::CaseInsensitive)
            || asQString(site.field).contains(wanted, Qt::CaseInsensitive))
            found.push_back(&site);
    return found;
}

QStringList SetupSite::siteKeys() const
{
    QStringList keys;
    for (const Site* site : fitting())
        if (keys.size() < qsizetype{mostShown}) keys << idText(site->id);
    return keys;
}

QStringList SetupSite::siteNames() const
{
    QStringList names;
    for (const Site* site : fitting())
        if (names.size() < qsizetype{mostShown}) names << asQString(site->name);
    return names;
}

QStringList SetupSite::siteDetails() const
{
    QStringList details;
    for (const Site* site : fitting()) {
        if (details.size() >= qsizetype{mostShown}) break;
        QStringList tags;
        for (const Trap& trap : facts().traps)
            if (trap.site == site->id && stands(trap)) tags << asQString(trap.tag);
        QStringList parts;
        if (!site->field.empty()) parts << asQString(site->field);
        parts << (tags.isEmpty() ? tr("no trap stands here") : tr("trap %1").arg(tags.join(tr(", "))));
        details << parts.join(tr(" · "));
    }
    return details;
}

QString SetupSite::moreSites() const
{
    const auto found = fitting().size();
    if (found == 0) return tr("No field of this season is called that.");
    if (found <= mostShown) return {};
    return tr("and %1 more: type a part of the name").arg(found - mostShown);
}

std::vector<const ProtocolCrop*> SetupSite::crops() const
{
    std::vector<const ProtocolCrop*> all;
    for (const std::string& pest : facts().pests) {
        const Protocol* protocol = session().protocol(pest);
        if (!protocol) continue;
        for (const ProtocolCrop& crop : protocol->crops) {
            const bool isThere = std::any_of(
                all.begin(), all.end(), [&](const ProtocolCrop* other) { return other->id == crop.id; });
            if (!isThere) all.push_back(&crop);
        }
    }
    return all;
}

QStringList SetupSite::cropKeys() const
{
    QStringList keys;
    for (const ProtocolCrop* crop : crops()) keys << asQString(crop->id);
    return keys;
}

QStringList SetupSite::cropLabels() const
{
    QStringList labels;
    for (const ProtocolCrop* crop : crops()) labels << local(crop->name);
    return labels;
}

QStringList SetupSite::districtKeys() const
{
    QStringList keys;
    for (const District& district : facts().districts) keys << idText(district.id);
    return keys;
}

QStringList SetupSite::districtLabels() const
{
    QStringList labels;
    for (const District& district : facts().districts) labels << asQString(district.name);
    return labels;
}

QString SetupSite::nameError() const
{
    if (m_known || !m_fieldAsked) return {};
    if (m_name.trimmed().isEmpty()) return text::sentence({ErrorCode::Empty, {"name"}});
    return complaint(kindOf<Site>(), "name", m_name);
}

QString SetupSite::fieldError() const
{
    return m_known || !m_fieldAsked ? QString() : complaint(kindOf<Site>(), "field", m_field);
}

QString SetupSite::siteError() const
{
    return m_known && m_fieldAsked && !chosen() ? tr("Choose the field, or enter a new one.") : QString();
}

QString SetupSite::landownerError() const
{
    if (!m_yesAsked) return {};
    // A gate without a name is no yes; what was typed is not thrown away silently.
    if (!hasYes() && !m_gate.trimmed().isEmpty())
        return tr("Who said yes? The way in is kept with the name.");
    return complaint(kindOf<Site>(), "landowner", m_landowner);
}

QString SetupSite::agreedError() const
{
    const auto day = dayIn(m_agreedDay);
    if (!m_yesAsked || !hasYes() || !day || *day <= session().clock().today()) return {};
    return tr("This day lies ahead. A yes was said today or before.");
}

QString SetupSite::gateError() const
{
    return m_yesAsked ? complaint(kindOf<Site>(), "gate", m_gate) : QString();
}

QString SetupSite::title() const
{
    const Site* site = chosen();
    return site ? asQString(site->name) : m_known ? QString() : m_name.trimmed();
}

void SetupSite::ownLand()
{
    if (!session().me()) return;
    m_landowner = asQString(session().me()->name);
    Q_EMIT edited();
}

void SetupSite::preset()
{
    if (m_crop.isEmpty() && !crops().empty()) m_crop = asQString(crops().front()->id);
    Q_EMIT edited();
}

bool SetupSite::passField()
{
    m_fieldAsked = true;
    Q_EMIT changed();
    return nameError().isEmpty() && fieldError().isEmpty() && siteError().isEmpty();
}

bool SetupSite::passYes()
{
    m_yesAsked = true;
    Q_EMIT changed();
    return landownerError().isEmpty() && agreedError().isEmpty() && gateError().isEmpty();
}

bool SetupSite::wantsYes() const
{
    const Site* site = chosen();
    return !site || !site->agreedDay;
}

void SetupSite::choose(const Uuid& site)
{
    m_known = true;
    m_site = idText(site);
    Q_EMIT edited();
}

const Site* SetupSite::chosen() const
{
    return m_known ? facts().site(idIn(m_site)) : nullptr;
}

void SetupSite::fillYes(Site& site) const
{
    if (!hasYes()) return;
    site.landowner = clean(m_landowner);
    site.agreedDay = dayIn(m_agreedDay);
    if (!m_gate.trimmed().isEmpty()) site.gate = clean(m_gate);
}

std::optional<Edit> SetupSite::edit(const Uuid& newId) const
{
    if (const Site* before = chosen()) {
        if (before->agreedDay) return std::nullopt;
        Site after = *before;
        fillYes(after);
        Edit edit = correction(*before, after, before->id);
        return edit.fields.empty() ? std::nullopt : std::optional(std::move(edit));
    }
    Site site;
    site.id = newId;
    site.season = session().season()->id;
    site.keeper = session().me()->id;
    site.district = idIn(m_district);
    site.name = clean(m_name);
    site.field = clean(m_field);
    site.crop = m_crop.toStdString();
    site.seededDay = dayIn(m_seededDay);
    fillYes(site);
    return creation(site, site.id);
}

} // namespace duskrow::app
