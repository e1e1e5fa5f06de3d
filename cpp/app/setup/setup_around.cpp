// SPDX-License-Identifier: MIT
#include "app/setup/setup_around.h"

#include <cmath>

#include "domain/rules/geodesy.h"
#include "domain/rules/protocol_rules.h"
#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

std::optional<Metres> given(int metres)
{
    return metres < 0 ? std::nullopt : std::optional(Metres{static_cast<double>(metres)});
}

std::optional<Millimetres> toMillimetres(int metres)
{
    return metres < 0 ? std::nullopt : std::optional(Millimetres{std::int64_t{metres} * 1000});
}

int wholeMetres(const std::optional<Millimetres>& length)
{
    return length ? static_cast<int>(std::lround(toMetres(*length).value())) : -1;
}

double errorOf(const Trap& trap)
{
    return trap.accuracy ? toMetres(*trap.accuracy).value() : 0.0;
}

} // namespace

const Protocol* SetupAround::protocol() const
{
    return m_pest.empty() ? nullptr : session().protocol(m_pest);
}

void SetupAround::look(const Trap& trap)
{
    m_pest = trap.pest;
    m_neighbours.clear();
    const auto here = trap.place();
    std::optional<Neighbour> same;
    std::optional<Neighbour> other;
    for (const Trap& near : facts().traps) {
        if (!here || !near.place() || !stands(near) || near.id == trap.replaces) continue;
        const bool isSame = near.pest == trap.pest;
        const Metres distance = courseBetween(*here, *near.place()).distance;
        auto& nearest = isSame ? same : other;
        if (nearest && nearest->measure.distance <= distance) continue;
        nearest = Neighbour{&near,
            {isSame ? PlacementKind::SamePestTrap : PlacementKind::OtherPestTrap, distance,
                Metres{std::hypot(errorOf(trap), errorOf(near))}}};
    }
    if (same) m_neighbours.push_back(*same);
    if (other) m_neighbours.push_back(*other);
    Q_EMIT changed();
}

QString SetupAround::advice(PlacementKind kind) const
{
    const Protocol* asked = protocol();
    if (!asked) return {};
    for (const PlacementAdvice& advice : asked->placement)
        if (placementKindOf(advice) == kind) return local(advice.text);
    return {};
}

QStringList SetupAround::trapLabels() const
{
    QStringList labels;
    for (const Neighbour& near : m_neighbours) {
        const Site* site = facts().site(near.trap->site);
        const QString tag = QString::fromStdString(near.trap->tag);
        labels << (site ? tr("Trap %1, %2").arg(tag, QString::fromStdString(site->name))
                        : tr("Trap %1").arg(tag));
    }
    return labels;
}

QStringList SetupAround::trapDistances() const
{
    QStringList distances;
    for (const Neighbour& near : m_neighbours) distances << text::distance(near.measure.distance);
    return distances;
}

QString SetupAround::unmeasured() const
{
    const Protocol* asked = protocol();
    if (!asked) return {};
    QStringList lines;
    for (const PlacementAdvice& advice : asked->placement)
        if (!advice.distance.value || advice.relation == PlacementRelation::AwayFrom)
            lines << tr("%1.").arg(local(advice.text));
    return lines.join(QLatin1Char(' '));
}

std::vector<PlacementMeasure> SetupAround::measures() const
{
    std::vector<PlacementMeasure> all;
    const auto add = [&](PlacementKind kind, int metres) {
        if (const auto distance = given(metres)) all.push_back({kind, *distance, Metres{0.0}});
    };
    add(PlacementKind::FieldEdge, m_edge);
    add(PlacementKind::Farmyard, m_farmyard);
    add(PlacementKind::StrongLight, m_light);
    for (const Neighbour& near : m_neighbours) all.push_back(near.measure);
    return all;
}

QString SetupAround::concern() const
{
    const Protocol* asked = protocol();
    if (!asked) return {};
    const auto rules = placementRulesOf(*asked);
    QStringList lines;
    for (const PlacementFinding& finding : checkPlacement(rules, measures())) {
        if (finding.verdict != PlacementVerdict::TooClose && finding.verdict != PlacementVerdict::TooFar)
            continue;
        const QString here = text::distance(finding.measured.value_or(Metres{}));
        lines << (finding.verdict == PlacementVerdict::TooClose
                ? tr("%1: %2 is too close.").arg(advice(finding.rule.kind), here)
                : tr("%1: %2 is too far.").arg(advice(finding.rule.kind), here));
    }
    return lines.join(QLatin1Char('\n'));
}

void SetupAround::fill(Trap& trap) const
{
    trap.edgeDistance = toMillimetres(m_edge);
    trap.farmyardDistance = toMillimetres(m_farmyard);
    trap.lightDistance = toMillimetres(m_light);
}

void SetupAround::takeFrom(const Trap& earlier)
{
    m_edge = wholeMetres(earlier.edgeDistance);
    m_farmyard = wholeMetres(earlier.farmyardDistance);
    m_light = wholeMetres(earlier.lightDistance);
    Q_EMIT edited();
}

} // namespace duskrow::app
