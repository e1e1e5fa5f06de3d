// SPDX-License-Identifier: MIT
#include "app/walk/decision_form.h"

#include <QSignalBlocker>

#include <algorithm>

#include "app/as_qstring.h"
#include "app/draft_entries.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

std::string clean(const QString& text)
{
    return text.trimmed().toStdString();
}

} // namespace

void DecisionForm::take(const Decision& decision, const QString& publishedDivisor)
{
    const QSignalBlocker quiet(this);
    m_inParts =
        !decision.costProduct.empty() || !decision.costApplication.empty() || !decision.costTracks.empty();
    m_cost = asQString(decision.costSum);
    m_product = asQString(decision.costProduct);
    m_application = asQString(decision.costApplication);
    m_tracks = asQString(decision.costTracks);
    if (!decision.costUnit.empty()) m_costUnit = asQString(decision.costUnit);
    m_price = asQString(decision.price);
    if (!decision.priceUnit.empty()) m_priceUnit = asQString(decision.priceUnit);
    m_dry = !decision.dryDivisor.empty();
    m_divisor = m_dry ? asQString(decision.dryDivisor) : publishedDivisor;
    m_labelDays = decision.labelDays ? QString::number(*decision.labelDays) : QString();
    m_cuttingDay = decision.cuttingDay ? asQString(formatDay(*decision.cuttingDay)) : QString();
    m_decided.clear();
    if (decision.decided) {
        const std::string_view code = decidedNames.at(static_cast<std::size_t>(*decision.decided));
        m_decided = QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size()));
    }
    m_remark = asQString(decision.remark);
}

void DecisionForm::fill(Decision& decision) const
{
    decision.costSum = m_inParts ? std::string() : clean(m_cost);
    decision.costProduct = m_inParts ? clean(m_product) : std::string();
    decision.costApplication = m_inParts ? clean(m_application) : std::string();
    decision.costTracks = m_inParts ? clean(m_tracks) : std::string();
    decision.costUnit = clean(m_costUnit);
    decision.price = clean(m_price);
    decision.priceUnit = clean(m_priceUnit);
    decision.dryDivisor = m_dry ? clean(m_divisor) : std::string();
    bool isNumber = false;
    const int days = m_labelDays.trimmed().toInt(&isNumber);
    decision.labelDays = isNumber ? std::optional<std::int64_t>(days) : std::nullopt;
    const auto cutting = parseDay(clean(m_cuttingDay));
    decision.cuttingDay = cutting ? std::optional(*cutting) : std::nullopt;
    const auto* found = std::find(decidedNames.begin(), decidedNames.end(), clean(m_decided));
    decision.decided = found == decidedNames.end()
        ? std::nullopt
        : std::optional(static_cast<Decided>(found - decidedNames.begin()));
    decision.remark = clean(m_remark);
}

bool DecisionForm::hasMoney() const
{
    const bool hasCost = m_inParts ? !m_product.trimmed().isEmpty() || !m_application.trimmed().isEmpty()
            || !m_tracks.trimmed().isEmpty()
                                   : !m_cost.trimmed().isEmpty();
    return hasCost && !m_price.trimmed().isEmpty();
}

QJsonObject DecisionForm::entries() const
{
    return entriesOf(*this);
}

void DecisionForm::takeEntries(const QJsonObject& entries)
{
    const QSignalBlocker quiet(this);
    app::takeEntries(*this, entries);
}

} // namespace duskrow::app
