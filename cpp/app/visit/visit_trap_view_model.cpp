// SPDX-License-Identifier: MIT
#include "app/visit/visit_trap_view_model.h"

#include <algorithm>
#include <cmath>

#include "app/trap_words.h"
#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// The stages of a crop's file end with the one in which it flowers no more; flowering begins two before that.
constexpr std::size_t floweringBeforeEnd = 3;

Millimetres fromCm(double cm)
{
    return Millimetres{std::llround(cm * 10.0)};
}

} // namespace

VisitTrapViewModel::VisitTrapViewModel(VisitEntry& entry) : ViewModel(entry.session()), m_entry(entry)
{
    connect(&m_entry, &VisitEntry::changed, this, &VisitTrapViewModel::changed);
}

std::optional<Millimetres> VisitTrapViewModel::entrance() const
{
    return m_entry.visit().entrance ? m_entry.visit().entrance : m_entry.before().entrance;
}

std::optional<CanopyHeight> VisitTrapViewModel::lastCanopy() const
{
    const TrapNow now = m_entry.before();
    if (now.canopy.empty()) return std::nullopt;
    return now.canopy.back();
}

std::optional<Millimetres> VisitTrapViewModel::canopy() const
{
    if (m_entry.visit().canopy) return m_entry.visit().canopy;
    const auto last = lastCanopy();
    return last ? std::optional(last->canopy) : std::nullopt;
}

std::vector<CanopyHeight> VisitTrapViewModel::heights() const
{
    std::vector<CanopyHeight> heights = m_entry.before().canopy;
    if (m_entry.visit().canopy) heights.push_back({m_entry.day(), *m_entry.visit().canopy});
    return heights;
}

int VisitTrapViewModel::entranceMm() const
{
    return static_cast<int>(entrance().value_or(Millimetres{}).value());
}

int VisitTrapViewModel::canopyMm() const
{
    return static_cast<int>(canopy().value_or(Millimetres{}).value());
}

QString VisitTrapViewModel::canopyLast() const
{
    const auto last = lastCanopy();
    return last ? tr("%1 on %2").arg(text::height(last->canopy), text::shortDay(last->day)) : QString();
}

QString VisitTrapViewModel::stillWords() const
{
    const auto last = lastCanopy();
    if (!last || canopyMeasured() || last->day == m_entry.day()) return {};
    return tr("Still %1").arg(text::height(last->canopy));
}

Millimetres VisitTrapViewModel::floweringFrom() const
{
    constexpr Millimetres notKnown{0};
    const Protocol* protocol = m_entry.book().protocol;
    if (!protocol) return notKnown;
    const std::string& crop = m_entry.book().site.crop;
    for (const ProtocolCrop& known : protocol->crops) {
        const auto& stages = known.canopyHeights;
        if (known.id != crop || stages.size() < floweringBeforeEnd) continue;
        return stages[stages.size() - floweringBeforeEnd].height.from.value_or(notKnown);
    }
    return notKnown;
}

QString VisitTrapViewModel::stage() const
{
    if (floweringOver() || m_entry.before().isFloweringOver) return QStringLiteral("podding");
    const Millimetres from = floweringFrom();
    return from.value() > 0 && canopy().value_or(Millimetres{}) > from ? QStringLiteral("flowering")
                                                                       : QStringLiteral("leafy");
}

QString VisitTrapViewModel::entranceWords() const
{
    const auto height = entrance();
    return height ? tr("entrance %1").arg(text::height(*height)) : QString();
}

QString VisitTrapViewModel::canopyWords() const
{
    const auto height = canopy();
    if (!height) return {};
    if (canopyMeasured()) return tr("canopy %1").arg(text::height(*height));
    return tr("canopy was %1").arg(text::height(*height));
}

QString VisitTrapViewModel::clearance() const
{
    if (!entranceKnown() || !canopyKnown()) return {};
    return text::clearance(clearanceOf(*entrance(), *canopy()).height);
}

QString VisitTrapViewModel::description() const
{
    QStringList parts{entranceWords(), canopyWords(), clearance()};
    parts.removeAll(QString());
    return parts.isEmpty() ? tr("No height is known yet") : parts.join(QStringLiteral(", "));
}

std::optional<RaiseSuggestion> VisitTrapViewModel::suggestion() const
{
    if (m_entry.book().heightRule() != HeightRule::FollowCanopy || !canopyMeasured() || !entranceKnown())
        return std::nullopt;
    const auto all = heights();
    const LocalDay next = countAfter(m_entry.day(), m_entry.book().dueRules);
    const auto found = suggestRaise(*entrance(), *canopy(), canopyGrowth(all),
        nightsBetween(m_entry.day(), next), m_entry.book().dueRules.stake);
    // A rise the stake does not allow is no suggestion.
    return found && found->entrance > *entrance() ? found : std::nullopt;
}

QString VisitTrapViewModel::growthWords() const
{
    const auto last = lastCanopy();
    if (!last || !canopyMeasured() || last->day >= m_entry.day()) return {};
    const Millimetres grown = *canopy() - last->canopy;
    const Nights gone = nightsBetween(last->day, m_entry.day());
    const QString days = gone.value() == 1 ? tr("a day") : tr("%1 days").arg(text::number(gone.value()));
    if (grown.value() == 0) return tr("It has not grown in %1.").arg(days);
    if (grown.value() < 0)
        return tr("It stands %1 lower than %2 before.").arg(text::height(Millimetres{-grown.value()}), days);
    return tr("It grew %1 in %2.").arg(text::height(grown), days);
}

QString VisitTrapViewModel::advice() const
{
    if (!entranceKnown() || !canopyMeasured()) return {};
    QStringList words{growthWords()};
    const auto all = heights();
    const Clearance clear = clearanceOf(*entrance(), *canopy());
    const auto reaches = dayCropReaches(*entrance(), all);
    const bool follows = m_entry.book().heightRule() == HeightRule::FollowCanopy;
    if (clear.position != EntrancePosition::Above)
        words.append(follows ? tr("The crop stands at the entrance: raise it now.")
                             : tr("The crop stands at the entrance; this trap keeps its height."));
    else if (reaches && raiseNow())
        words.append(tr("At that pace it reaches the entrance about %1 (estimate): raise it now.")
                         .arg(text::shortDay(*reaches)));
    else if (reaches)
        words.append(
            tr("At that pace it reaches the entrance about %1 (estimate).").arg(text::shortDay(*reaches)));
    else if (raiseNow())
        words.append(tr("Little air is left over the crop: raise it now."));
    const auto entranceBefore = m_entry.before().entrance;
    if (m_entry.visit().entrance && entranceBefore && *m_entry.visit().entrance > *entranceBefore)
        words.append(tr("Raised by %1, and logged so.")
                         .arg(text::height(*m_entry.visit().entrance - *entranceBefore)));
    words.removeAll(QString());
    return words.join(QLatin1Char(' '));
}

QString VisitTrapViewModel::raiseWords() const
{
    const auto found = suggestion();
    if (!found) return {};
    const QString words = tr("I raised it to %1").arg(text::height(found->entrance));
    return found->fallsShort ? tr("%1, as high as the stake goes").arg(words) : words;
}

bool VisitTrapViewModel::heightsAsked() const
{
    const Visit& visit = m_entry.visit();
    if (visit.entrance || visit.canopy) return !floweringOver();
    return !floweringOver() && !m_entry.before().isFloweringOver;
}

bool VisitTrapViewModel::floweringAsked() const
{
    if (m_entry.before().isFloweringOver) return false;
    return floweringOver() || (canopy() && *canopy() > floweringFrom());
}

void VisitTrapViewModel::setFloweringOver(bool over)
{
    m_entry.change([&](VisitRecords& records) {
        records.visit.floweringOver = over ? std::optional(true) : std::nullopt;
    });
}

QString VisitTrapViewModel::state() const
{
    const auto state = m_entry.visit().state;
    return state ? stateKeys().at(static_cast<qsizetype>(*state)) : QString();
}

void VisitTrapViewModel::setState(const QString& key)
{
    const auto index = stateKeys().indexOf(key);
    if (index < 0) return tell({ErrorCode::UnknownCode, {"state", key.toStdString()}});
    m_entry.change([&](VisitRecords& records) {
        Visit& visit = records.visit;
        visit.state = static_cast<TrapState>(index);
        visit.atLeast.reset();
        visit.atLeast = hasFailed(visit) ? std::optional(true) : std::nullopt;
    });
}

QStringList VisitTrapViewModel::stateKeys()
{
    QStringList keys;
    for (const std::string_view name : trapStateNames)
        keys.append(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
    return keys;
}

QStringList VisitTrapViewModel::stateNames()
{
    QStringList names;
    for (std::size_t i = 0; i < trapStateNames.size(); ++i)
        names.append(text::name(static_cast<TrapState>(i)));
    return names;
}

QString VisitTrapViewModel::atLeastWords() const
{
    const Visit& visit = m_entry.visit();
    if (!hasFailed(visit)) return {};
    if (visit.outcome == Outcome::CouldNotCount)
        return tr("The trap may have lost some: the season so far is “at least”.");
    return tr("The trap may have lost some, so this count is “at least”, and the catch a night leaves these "
              "nights out.");
}

void VisitTrapViewModel::setEntrance(double cm)
{
    m_entry.change([&](VisitRecords& records) { records.visit.entrance = fromCm(cm); }, Undoing::AsTyped);
}

void VisitTrapViewModel::setCanopy(double cm)
{
    m_entry.change([&](VisitRecords& records) { records.visit.canopy = fromCm(cm); }, Undoing::AsTyped);
}

void VisitTrapViewModel::clearCanopy()
{
    m_entry.change([](VisitRecords& records) { records.visit.canopy.reset(); });
}

void VisitTrapViewModel::stillAsBefore()
{
    if (const auto last = lastCanopy())
        m_entry.change([&](VisitRecords& records) { records.visit.canopy = last->canopy; });
}

void VisitTrapViewModel::raise()
{
    if (const auto found = suggestion())
        m_entry.change([&](VisitRecords& records) { records.visit.entrance = found->entrance; });
}

QString VisitTrapViewModel::trapShape() const
{
    return app::trapShape(m_entry.book().protocol, m_entry.book().trap.trapType);
}

} // namespace duskrow::app
