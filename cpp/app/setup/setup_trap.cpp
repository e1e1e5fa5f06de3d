// SPDX-License-Identifier: MIT
#include "app/setup/setup_trap.h"

#include <algorithm>

#include "app/as_qstring.h"
#include "app/trap_words.h"
#include "text/amounts.h"
#include "text/error_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// The next number after those written on the traps of the season.
QString nextTag(const std::vector<Trap>& traps)
{
    int highest = 0;
    for (const Trap& trap : traps) {
        bool isNumber = false;
        const int number = asQString(trap.tag).toInt(&isNumber);
        if (isNumber && number < 1'000'000) highest = std::max(highest, number);
    }
    return QString::number(highest + 1);
}

} // namespace

void SetupTrap::setLureIn(bool isIn)
{
    if (isIn == m_lureIn) return;
    m_lureIn = isIn;
    if (!isIn) m_stripIn = false;
    Q_EMIT edited();
}

void SetupTrap::setStripIn(bool isIn)
{
    const bool allowed = isIn && mayTakeStrip();
    if (allowed == m_stripIn) return;
    m_stripIn = allowed;
    Q_EMIT edited();
}

const Protocol* SetupTrap::protocol() const
{
    return m_pest.isEmpty() ? nullptr : session().protocol(m_pest.toStdString());
}

const TrapType* SetupTrap::type() const
{
    const Protocol* read = protocol();
    return read ? read->trapType(m_trapType.toStdString()) : nullptr;
}

QString SetupTrap::trapShape() const
{
    return app::trapShape(protocol(), m_trapType.toStdString());
}

bool SetupTrap::hasLure() const
{
    return protocol() && protocol()->lure.has_value();
}

bool SetupTrap::hasStrip() const
{
    return type() && type()->hasKillingStrip;
}

QStringList SetupTrap::pestKeys() const
{
    QStringList keys;
    for (const std::string& pest : facts().pests) keys << asQString(pest);
    return keys;
}

QStringList SetupTrap::pestLabels() const
{
    QStringList labels;
    for (const std::string& pest : facts().pests) {
        const Protocol* read = session().protocol(pest);
        labels << (read ? local(read->name) : asQString(pest));
    }
    return labels;
}

QStringList SetupTrap::typeKeys() const
{
    QStringList keys;
    if (const Protocol* read = protocol())
        for (const TrapType& type : read->trapTypes) keys << asQString(type.id);
    return keys;
}

QStringList SetupTrap::typeLabels() const
{
    QStringList labels;
    if (const Protocol* read = protocol())
        for (const TrapType& type : read->trapTypes) labels << local(type.name);
    return labels;
}

QString SetupTrap::typeRemark() const
{
    return type() && type()->remark ? local(type()->remark->text) : QString();
}

std::vector<const Trap*> SetupTrap::pairs() const
{
    std::vector<const Trap*> all;
    for (const Trap& trap : facts().traps)
        if (!m_site.isNil() && trap.site == m_site && stands(trap) && asQString(trap.pest) == m_pest)
            all.push_back(&trap);
    return all;
}

QStringList SetupTrap::pairKeys() const
{
    const auto all = pairs();
    if (all.empty()) return {};
    QStringList keys{QStringLiteral("none")};
    for (const Trap* trap : all) keys << idText(trap->id);
    return keys;
}

QStringList SetupTrap::pairLabels() const
{
    const auto all = pairs();
    if (all.empty()) return {};
    QStringList labels{tr("No, it stands alone")};
    for (const Trap* trap : all) labels << tr("with trap %1").arg(asQString(trap->tag));
    return labels;
}

QString SetupTrap::tagError() const
{
    if (!m_trapAsked) return {};
    if (m_tag.trimmed().isEmpty()) return text::sentence({ErrorCode::Empty, {"tag"}});
    return complaint(kindOf<Trap>(), "tag", m_tag);
}

QString SetupTrap::tagNote() const
{
    for (const Trap& trap : facts().traps) {
        if (!stands(trap) || trap.tag != clean(m_tag)) continue;
        const Site* site = facts().site(trap.site);
        return tr("A trap %1 stands already at %2. Two traps of one tag are easily mixed up.")
            .arg(asQString(trap.tag), site ? asQString(site->name) : tr("another field"));
    }
    return {};
}

QString SetupTrap::inkLabel() const
{
    const Protocol* read = protocol();
    const QString day = text::dayAndYear(session().clock().today());
    const QString species = read ? local(read->name) : m_pest;
    return tr("%1\n%2\ntrap %3").arg(species, day, m_tag.trimmed());
}

QStringList SetupTrap::handling() const
{
    QStringList lines;
    if (hasLure())
        for (const Statement& line : protocol()->lure->handling) lines << local(line.text);
    return lines;
}

QString SetupTrap::lotError() const
{
    return m_lureAsked ? complaint(kindOf<Trap>(), "lure_lot", m_lureLot) : QString();
}

QString SetupTrap::expiryNote() const
{
    const auto expiry = dayIn(m_lureExpiry);
    const LocalDay day = session().clock().today();
    if (!expiry || *expiry >= day) return {};
    return tr("This lure expired %1 ago. It may draw fewer: use a fresh one if you can.")
        .arg((day - *expiry).count() == 1 ? tr("a day")
                                          : tr("%1 days").arg(text::number((day - *expiry).count())));
}

QStringList SetupTrap::stripCautions() const
{
    QStringList lines;
    if (const Protocol* read = protocol())
        for (const Statement& caution : read->cautionsAt(CautionPlace::KillingStrip))
            lines << local(caution.text);
    return lines;
}

QString SetupTrap::stripPlace() const
{
    const Protocol* read = protocol();
    if (!read || !read->killingStrip || read->killingStrip->handling.empty()) return {};
    return local(read->killingStrip->handling.front().text);
}

void SetupTrap::preset()
{
    if (m_tag.isEmpty()) m_tag = nextTag(facts().traps);
    if (m_pest.isEmpty() && !facts().pests.empty()) m_pest = asQString(facts().pests.front());
    if (!type() && !typeKeys().isEmpty()) m_trapType = typeKeys().front();
    Q_EMIT edited();
}

bool SetupTrap::passTrap()
{
    m_trapAsked = true;
    if (!type() && !typeKeys().isEmpty()) m_trapType = typeKeys().front();
    Q_EMIT changed();
    return tagError().isEmpty();
}

bool SetupTrap::passLure()
{
    m_lureAsked = true;
    Q_EMIT changed();
    return lotError().isEmpty();
}

void SetupTrap::setSite(const Uuid& site)
{
    if (site == m_site) return;
    m_site = site;
    Q_EMIT changed();
}

void SetupTrap::fill(Trap& trap) const
{
    trap.tag = clean(m_tag);
    trap.pest = m_pest.toStdString();
    if (const Protocol* read = protocol()) trap.protocolVersion = read->version;
    trap.trapType = m_trapType.toStdString();
    trap.pairedWith = idIn(m_pairedWith);
    trap.cleaned = m_cleaned;
    if (hasLure()) {
        trap.handlingRead = m_handlingRead;
        trap.lureIn = m_lureIn;
        trap.lureLot = clean(m_lureLot);
        trap.lureExpiry = dayIn(m_lureExpiry);
    }
    if (hasStrip()) trap.stripIn = m_stripIn;
}

void SetupTrap::takeFrom(const Trap& earlier)
{
    m_pest = asQString(earlier.pest);
    m_trapType = asQString(earlier.trapType);
    Q_EMIT edited();
}

} // namespace duskrow::app
