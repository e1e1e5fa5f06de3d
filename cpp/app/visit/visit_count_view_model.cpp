// SPDX-License-Identifier: MIT
#include "app/visit/visit_count_view_model.h"

#include <algorithm>

#include "app/visit/visit_words.h"
#include "domain/rules/no_count.h"
#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

const QStringList bins{
    QStringLiteral("pest"), QStringLiteral("not_it"), QStringLiteral("unsure"), QStringLiteral("bees")};

std::optional<NoCountReason> reasonOf(const QString& key)
{
    const auto found = std::find(noCountReasonNames.begin(), noCountReasonNames.end(), key.toStdString());
    if (found == noCountReasonNames.end()) return std::nullopt;
    return static_cast<NoCountReason>(found - noCountReasonNames.begin());
}

template <typename Q>
std::optional<std::int64_t> plain(const std::optional<Q>& value)
{
    return value ? std::optional<std::int64_t>(value->value()) : std::nullopt;
}

} // namespace

VisitCountViewModel::VisitCountViewModel(VisitEntry& entry) : ViewModel(entry.session()), m_entry(entry)
{
    connect(&m_entry, &VisitEntry::changed, this, &VisitCountViewModel::changed);
}

std::optional<std::int64_t> VisitCountViewModel::held(const QString& bin) const
{
    const Visit& visit = m_entry.visit();
    if (bin == bins[1]) return plain(visit.notIt);
    if (bin == bins[2]) return plain(visit.unsure);
    if (bin == bins[3]) return plain(visit.bees);
    return plain(visit.pest);
}

void VisitCountViewModel::setBin(const QString& bin)
{
    if (!bins.contains(bin) || bin == this->bin()) return;
    clearTrouble();
    m_entry.go([&](VisitPosition& position) { position.bin = bin; });
}

QStringList VisitCountViewModel::binCounts() const
{
    QStringList counts;
    for (const QString& bin : bins) counts.append(text::number(held(bin).value_or(0)));
    return counts;
}

QString VisitCountViewModel::shown() const
{
    const auto count = held(bin());
    // Nothing counted yet is not zero.
    return count ? text::number(*count) : QStringLiteral("–");
}

QString VisitCountViewModel::caption() const
{
    const TrapBook& book = m_entry.book();
    if (bin() == bins[1]) return tr("%1 of other kinds").arg(book.animal().many());
    if (bin() == bins[2]) return tr("%1 nobody is sure of: bag them").arg(book.animal().many());
    if (bin() == bins[3]) return book.isBucket() ? tr("bees in the bucket") : tr("bees in the trap");
    if (!isCounted()) return tr("no %1 counted yet").arg(book.oneOfPest());
    return (book.isBucket() ? tr("%1 in the bucket") : tr("%1 in the trap")).arg(book.manyOfPest());
}

QStringList VisitCountViewModel::lines() const
{
    if (bin() == bins[2] && held(bins[2]).value_or(0) > 0)
        return {tr("a sample, numbered"), tr("when the visit is kept")};
    if (bin() != bins[0]) return {};
    const auto caught = m_entry.caught();
    const Moths before = m_entry.soFarBefore();
    if (!caught || !caught->count) {
        if (m_entry.book().visits.empty()) return {};
        return {text::soFar(before), flightWords(m_entry)};
    }
    QStringList lines;
    if (caught->rate) lines.append(text::perNight(*caught->rate));
    if (caught->isAtLeast) lines.append(text::atLeast(*caught->count));
    lines.append(tr("so far %1 → %2").arg(text::number(before.value()), text::number(caught->soFar.value())));
    lines.append(flightWords(m_entry));
    return lines;
}

QString VisitCountViewModel::longInterval() const
{
    return isCounted() ? longIntervalWords(m_entry.caught()) : QString();
}

QString VisitCountViewModel::oneMore() const
{
    const TrapBook& book = m_entry.book();
    if (bin() == bins[1]) return tr("One more %1 of another kind").arg(book.animal().one());
    if (bin() == bins[2]) return tr("One more %1 nobody is sure of").arg(book.animal().one());
    if (bin() == bins[3]) return tr("One more bee");
    return tr("One more %1").arg(book.oneOfPest());
}

bool VisitCountViewModel::isCounted() const
{
    return m_entry.visit().pest.has_value();
}

bool VisitCountViewModel::isUntouched() const
{
    return std::none_of(bins.begin(), bins.end(), [&](const QString& bin) { return held(bin).has_value(); });
}

bool VisitCountViewModel::isEstimate() const
{
    const auto method = m_entry.visit().countMethod;
    return method && *method != CountMethod::Each;
}

QString VisitCountViewModel::estimate() const
{
    const Visit& visit = m_entry.visit();
    if (!isEstimate() || !visit.pest) return {};
    const QString how = text::name(*visit.countMethod);
    if (!visit.pestLow || !visit.pestHigh) return how;
    return tr("Estimated %1: likely %2.").arg(how, text::range(*visit.pestLow, *visit.pestHigh));
}

QString VisitCountViewModel::zeroQuestion() const
{
    return isUntouched() ? tr("None caught?") : tr("No %1 among them?").arg(m_entry.book().oneOfPest());
}

QString VisitCountViewModel::noCountReason() const
{
    const Visit& visit = m_entry.visit();
    if (visit.outcome != Outcome::CouldNotCount || !visit.reason) return {};
    return reasonKeys().at(static_cast<qsizetype>(*visit.reason));
}

QString VisitCountViewModel::noCountWords() const
{
    const Visit& visit = m_entry.visit();
    if (visit.outcome != Outcome::CouldNotCount || !visit.reason) return {};
    if (hasFailed(visit))
        return tr("The %1. No number is kept for these nights, and the season is “at least”.")
            .arg(text::name(*visit.reason));
    return tr("No number is kept: %1. That is neither zero nor a missed week.")
        .arg(text::name(*visit.reason));
}

QStringList VisitCountViewModel::reasonKeys()
{
    QStringList keys;
    for (const std::string_view name : noCountReasonNames)
        keys.append(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
    return keys;
}

QStringList VisitCountViewModel::reasonNames()
{
    QStringList names;
    for (std::size_t i = 0; i < noCountReasonNames.size(); ++i)
        names.append(text::name(static_cast<NoCountReason>(i)));
    return names;
}

bool VisitCountViewModel::canTakeAway() const
{
    return held(bin()).value_or(0) > 0;
}

QString VisitCountViewModel::caution() const
{
    if (!m_entry.book().protocol) return {};
    const auto cautions = m_entry.book().protocol->cautionsAt(CautionPlace::Counting);
    return cautions.empty() ? QString()
                            : QString::fromStdString(cautions.front().text.in(Session::language()));
}

void VisitCountViewModel::put(std::optional<std::int64_t> number)
{
    const QString bin = this->bin();
    if (number) {
        const Field* field = kindOf<Visit>().find(bin.toStdString());
        if (const auto checked = checkValue(*field, Value{*number}); !checked) return tell(checked.error());
    }
    clearTrouble();
    m_entry.change([&](VisitRecords& records) {
        Visit& visit = records.visit;
        const auto moths = number ? std::optional<Moths>(Moths{*number}) : std::nullopt;
        if (bin == bins[1])
            visit.notIt = moths;
        else if (bin == bins[2])
            visit.unsure = moths;
        else if (bin == bins[3])
            visit.bees = number ? std::optional<Bees>(Bees{*number}) : std::nullopt;
        else {
            visit.pest = moths;
            visit.outcome = moths ? std::optional(Outcome::Counted) : std::nullopt;
            visit.reason.reset();
            clearEstimate(visit);
        }
    });
}

void VisitCountViewModel::add(int by)
{
    const auto before = held(bin());
    if (by < 0 && before.value_or(0) == 0) return;
    const std::int64_t after = std::max<std::int64_t>(0, before.value_or(0) + by);
    put(after == 0 ? std::nullopt : std::optional(after));
}

void VisitCountViewModel::type(int number)
{
    put(number);
}

void VisitCountViewModel::noneCaught()
{
    clearTrouble();
    m_entry.go([](VisitPosition& position) { position.bin = bins[0]; });
    m_entry.change([](VisitRecords& records) {
        records.visit.pest = Moths{0};
        records.visit.outcome = Outcome::Counted;
        records.visit.reason.reset();
        clearEstimate(records.visit);
    });
}

void VisitCountViewModel::couldNotCount(const QString& key)
{
    const auto reason = reasonOf(key);
    if (!reason) return tell({ErrorCode::UnknownCode, {"reason", key.toStdString()}});
    clearTrouble();
    m_entry.change([&](VisitRecords& records) { sayCouldNotCount(records.visit, *reason); });
}

void VisitCountViewModel::countAfterAll()
{
    m_entry.change([](VisitRecords& records) {
        records.visit.outcome.reset();
        records.visit.reason.reset();
        records.visit.emptied = true;
        records.visit.state = TrapState::Fine;
        records.visit.atLeast.reset();
    });
}

void VisitCountViewModel::undo()
{
    clearTrouble();
    m_entry.undo();
}

} // namespace duskrow::app
