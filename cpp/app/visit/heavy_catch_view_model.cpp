// SPDX-License-Identifier: MIT
#include "app/visit/heavy_catch_view_model.h"

#include <algorithm>
#include <cmath>

#include "app/visit/visit_words.h"
#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

bool isComplete(const HeavyCatchDraft::Part& part)
{
    return part.counted && part.amount;
}

template <typename Part, typename Amount>
Result<HeavyCatch> estimateOf(const HeavyCatchDraft& heavy)
{
    std::vector<Part> parts;
    for (const HeavyCatchDraft::Part& part : heavy.parts)
        if (isComplete(part)) parts.push_back({Moths{*part.counted}, Amount{*part.amount}});
    return estimateHeavyCatch(parts, Amount{*heavy.whole});
}

std::string joined(const HeavyCatchDraft& heavy, std::optional<std::int64_t> HeavyCatchDraft::Part::*number)
{
    std::string all;
    for (const HeavyCatchDraft::Part& part : heavy.parts) {
        if (!isComplete(part)) continue;
        if (!all.empty()) all += ' ';
        all += std::to_string(*(part.*number));
    }
    return all;
}

Result<Done> checkEstimate(const HeavyCatch& estimate)
{
    const RecordKind& kind = kindOf<Visit>();
    const auto checked = checkValue(*kind.find("pest"), Value{estimate.estimate.value()});
    if (!checked || !estimate.high) return checked;
    return checkValue(*kind.find("pest_high"), Value{estimate.high->value()});
}

} // namespace

HeavyCatchViewModel::HeavyCatchViewModel(VisitEntry& entry)
    : ViewModel(entry.session()), m_entry(entry), m_parts(entry)
{
    connect(&m_entry, &VisitEntry::changed, this, &HeavyCatchViewModel::changed);
}

QString HeavyCatchViewModel::method() const
{
    return heavy().byWeight ? QStringLiteral("weight") : QStringLiteral("volume");
}

void HeavyCatchViewModel::setMethod(const QString& method)
{
    m_entry.go([&](VisitPosition& position) { position.heavy.byWeight = method == QLatin1String("weight"); });
}

QString HeavyCatchViewModel::unit() const
{
    return heavy().byWeight ? tr("g") : tr("ml");
}

double HeavyCatchViewModel::whole() const
{
    return static_cast<double>(heavy().whole.value_or(0)) / 1000.0;
}

bool HeavyCatchViewModel::canAddPart() const
{
    return heavy().parts.size() < static_cast<std::size_t>(CatchParts::most);
}

void HeavyCatchViewModel::setWhole(double amount)
{
    m_entry.go([&](VisitPosition& position) { position.heavy.whole = std::llround(amount * 1000.0); });
}

void HeavyCatchViewModel::clearWhole()
{
    m_entry.go([](VisitPosition& position) { position.heavy.whole.reset(); });
}

void HeavyCatchViewModel::addPart()
{
    m_parts.add();
}

std::optional<Result<HeavyCatch>> HeavyCatchViewModel::estimated() const
{
    const bool hasPart = std::any_of(heavy().parts.begin(), heavy().parts.end(), isComplete);
    if (!hasPart || !heavy().whole) return std::nullopt;
    auto estimate = heavy().byWeight ? estimateOf<WeightPart, Milligrams>(heavy())
                                     : estimateOf<VolumePart, Microlitres>(heavy());
    if (!estimate) return estimate;
    if (const auto checked = checkEstimate(*estimate); !checked) return Result<HeavyCatch>(checked.error());
    return estimate;
}

QString HeavyCatchViewModel::estimate() const
{
    const auto estimate = estimated();
    return estimate && *estimate ? heavyCatchWords(**estimate, m_entry.book().animal()) : QString();
}

QString HeavyCatchViewModel::shown() const
{
    const auto estimate = estimated();
    return estimate && *estimate ? text::number((*estimate)->estimate.value()) : QStringLiteral("–");
}

QString HeavyCatchViewModel::range() const
{
    const auto estimate = estimated();
    if (!estimate || !*estimate || !(*estimate)->low) return {};
    return tr("likely %1").arg(text::range(*(*estimate)->low, *(*estimate)->high));
}

QString HeavyCatchViewModel::why() const
{
    const auto estimate = estimated();
    return estimate && *estimate ? heavyCatchWhy(**estimate, m_entry.book().animal()) : QString();
}

QString HeavyCatchViewModel::problem() const
{
    const auto estimate = estimated();
    return estimate && !*estimate ? text::sentence(estimate->error()) : QString();
}

bool HeavyCatchViewModel::use()
{
    const auto estimate = estimated();
    if (!estimate || !*estimate) return false;
    const HeavyCatch& found = **estimate;
    m_entry.change([&](VisitRecords& records) {
        Visit& visit = records.visit;
        visit.outcome = Outcome::Counted;
        visit.reason.reset();
        visit.pest = found.estimate;
        visit.pestLow = found.low;
        visit.pestHigh = found.high;
        visit.countMethod = heavy().byWeight ? CountMethod::Weight : CountMethod::Volume;
        visit.partCounts = joined(heavy(), &HeavyCatchDraft::Part::counted);
        visit.partAmounts = joined(heavy(), &HeavyCatchDraft::Part::amount);
        visit.wholeAmount = heavy().whole;
    });
    m_entry.go([](VisitPosition& position) { position.bin = QStringLiteral("pest"); });
    return true;
}

} // namespace duskrow::app
