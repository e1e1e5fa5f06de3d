// SPDX-License-Identifier: MIT
#include "app/exchange/record_marks.h"

#include <QCoreApplication>

#include "app/exchange/exchange_words.h"
#include "app/exchange/ways.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct MarkText {
    Q_DECLARE_TR_FUNCTIONS(MarkText)
};

} // namespace

Result<RecordMarks> RecordMarks::read(store::Reader& reader, const StreamId& own)
{
    RecordMarks marks;
    marks.m_own = own;
    const auto ways = waysOf(reader);
    if (!ways) return ways.error();
    const auto counts = store::handedOver(reader, own);
    if (!counts) return counts.error();
    marks.m_isExchanged = !ways->isEmpty() || counts->handedOver + counts->atHub > 0;
    const auto differences = store::openDifferences(reader);
    if (!differences) return differences.error();
    for (const store::OpenDifference& one : *differences) marks.m_differing.insert(one.record);
    const auto aside = store::asideChanges(reader);
    if (!aside) return aside.error();
    for (const store::AsideChange& one : *aside) {
        marks.m_aside[one.change] = one.reason;
        (one.reason == "proposal" ? marks.m_proposed : marks.m_keptAside).insert(one.record);
    }
    return marks;
}

Result<QStringList> RecordMarks::of(store::Reader& reader, const Uuid& record) const
{
    QStringList lines;
    if (m_differing.contains(record))
        lines << MarkText::tr("People differ on it: the highest is drawn until it is settled.");
    if (m_proposed.contains(record))
        lines << MarkText::tr("A change is proposed to it, and waits for a coordinator.");
    if (m_keptAside.contains(record)) lines << MarkText::tr("A change of it was kept aside.");
    if (!m_isExchanged) return lines;
    const auto counts = store::handedOver(reader, m_own, record);
    if (!counts) return counts.error();
    const QString travel = travelWords(*counts);
    if (!travel.isEmpty()) lines << travel;
    return lines;
}

std::string RecordMarks::asideReason(const ChangeRef& change) const
{
    const auto found = m_aside.find(change);
    return found == m_aside.end() ? std::string() : found->second;
}

} // namespace duskrow::app
