// SPDX-License-Identifier: MIT
#include "app/setup/setup_stake.h"

#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

Millimetres fromCentimetres(int cm)
{
    return Millimetres{std::int64_t{cm} * 10};
}

// Heights in which a crop flowers, of the protocol's stages.
bool isFlowering(const StageHeight& stage)
{
    return stage.id.find("flower") != std::string::npos;
}

} // namespace

Clearance SetupStake::gap() const
{
    return clearanceOf(fromCentimetres(m_entrance), fromCentimetres(m_canopy));
}

QString SetupStake::stage() const
{
    const QString leafy = QStringLiteral("leafy");
    if (!m_protocol || m_protocol->crops.empty() || m_canopy < 0) return leafy;
    for (const StageHeight& stage : m_protocol->crops.front().canopyHeights)
        if (isFlowering(stage) && stage.height.from && fromCentimetres(m_canopy) >= *stage.height.from)
            return QStringLiteral("flowering");
    return leafy;
}

QString SetupStake::entranceWords() const
{
    return m_entrance < 0 ? QString() : tr("entrance %1").arg(text::height(fromCentimetres(m_entrance)));
}

QString SetupStake::canopyWords() const
{
    return m_canopy < 0 ? QString() : tr("canopy %1").arg(text::height(fromCentimetres(m_canopy)));
}

QString SetupStake::clearance() const
{
    return isMeasured() ? text::clearance(gap().height) : QString();
}

QString SetupStake::description() const
{
    QStringList parts{entranceWords(), canopyWords(), clearance()};
    parts.removeAll(QString());
    return parts.isEmpty() ? tr("The trap on its stake over the crop") : parts.join(tr(", "));
}

QString SetupStake::warning() const
{
    if (!isMeasured()) return {};
    switch (gap().position) {
    case EntrancePosition::Above:
        return {};
    case EntrancePosition::AtCanopy:
        return tr(
            "The crop reaches the entrance already. Set the trap higher, so that its entrance is free.");
    case EntrancePosition::Below:
        return tr("The crop hides the entrance. Set the trap higher, so that its entrance is free.");
    }
    return {};
}

QString SetupStake::growth() const
{
    if (!isMeasured() || gap().position != EntrancePosition::Above) return {};
    auto heights = facts().heights;
    heights.push_back({session().clock().today(), fromCentimetres(m_canopy)});
    const auto day = dayCropReaches(fromCentimetres(m_entrance), heights);
    if (day)
        return tr("By the last heights here the crop reaches the entrance about %1. This is an estimate.")
            .arg(text::day(*day));
    return tr("When the crop will reach the entrance is not known yet: the height at the next visit tells "
              "how fast it grows.");
}

QString SetupStake::advice() const
{
    if (!m_protocol || !m_protocol->height) return {};
    const HeightAdvice& height = *m_protocol->height;
    QStringList lines;
    if (!height.entrance.note.isEmpty()) lines << local(height.entrance.note);
    if (!height.rule.note.isEmpty()) lines << local(height.rule.note);
    return lines.join(QLatin1Char(' '));
}

QStringList SetupStake::ruleKeys() const
{
    QStringList keys;
    for (const auto name : heightRuleNames) keys << QString::fromLatin1(name.data(), qsizetype(name.size()));
    return keys;
}

QStringList SetupStake::ruleLabels() const
{
    return {text::name(HeightRule::Fixed), text::name(HeightRule::FollowCanopy)};
}

void SetupStake::setProtocol(const Protocol* protocol)
{
    if (protocol == m_protocol) return;
    m_protocol = protocol;
    if (!protocol || !protocol->height) return;
    const HeightAdvice& height = *protocol->height;
    if (m_entrance == notPreset && height.entrance.value)
        m_entrance = static_cast<int>(height.entrance.value->value() / 10);
    if (m_heightRule.isEmpty() && height.rule.value)
        m_heightRule = ruleKeys().at(static_cast<qsizetype>(*height.rule.value));
    Q_EMIT edited();
}

void SetupStake::takeFrom(const Trap& earlier)
{
    if (earlier.heightRule) m_heightRule = ruleKeys().at(static_cast<qsizetype>(*earlier.heightRule));
    Q_EMIT edited();
}

void SetupStake::fill(Trap& trap) const
{
    if (m_entrance >= 0) trap.entrance = fromCentimetres(m_entrance);
    if (m_canopy >= 0) trap.canopy = fromCentimetres(m_canopy);
    const qsizetype rule = ruleKeys().indexOf(m_heightRule);
    if (rule >= 0) trap.heightRule = static_cast<HeightRule>(rule);
}

} // namespace duskrow::app
