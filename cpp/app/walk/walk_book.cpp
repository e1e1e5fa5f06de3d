// SPDX-License-Identifier: MIT
#include "app/walk/walk_book.h"

#include "store/queries.h"

namespace duskrow::app {

using namespace duskrow::domain;

Result<Done> WalkBook::read(Session& session, const Uuid& id)
{
    store::Reader& reader = session.reader();
    const auto walk = store::walk(reader, id);
    if (!walk) return walk.error();
    if (!*walk) return Error{ErrorCode::RecordMissing, {"walk"}};
    m_walk = **walk;
    const auto site = store::site(reader, m_walk.site);
    if (!site) return site.error();
    if (*site) m_site = **site;
    const auto frames = store::framesOf(reader, id);
    if (!frames) return frames.error();
    m_frames = *frames;
    m_protocol = session.protocol(m_walk.pest);
    if (!m_protocol) return Error{ErrorCode::RecordMissing, {"protocol"}};
    const auto rule = thresholdRuleFor(*m_protocol, m_site.crop);
    if (!rule) return rule.error();
    if (!m_protocol->scouting) return Error{ErrorCode::ProtocolNoThreshold, {m_protocol->id, m_site.crop}};
    m_rule = *rule;
    m_isFound = true;
    return readDecision(session);
}

Result<Done> WalkBook::readDecision(Session& session)
{
    const auto own = store::decisionsOf(session.reader(), m_walk.id);
    if (!own) return own.error();
    m_isDecisionKept = !own->empty();
    m_decision = {};
    if (m_isDecisionKept) {
        m_decision = own->back();
    } else {
        const auto last = store::lastDecision(session.reader());
        if (!last) return last.error();
        // Money and label hold for the next field as well; what was decided, and when it is cut, do not.
        if (*last) {
            m_decision = **last;
            m_decision.id = {};
            m_decision.cuttingDay.reset();
            m_decision.verdict.clear();
            m_decision.decided.reset();
            m_decision.lookAgainDay.reset();
            m_decision.remark.clear();
        }
    }
    m_threshold.reset();
    if (auto threshold = thresholdFor(m_decision)) m_threshold = *threshold;
    return Done{};
}

QString WalkBook::title() const
{
    return QString::fromStdString(m_site.name);
}

Result<Threshold> WalkBook::thresholdFor(const Decision& decision) const
{
    const ScoutingAdvice* scouting = m_protocol->scouting ? &*m_protocol->scouting : nullptr;
    return thresholdOf(*m_protocol, *m_rule, thresholdInput(decision, m_walk, scouting));
}

Result<WalkResult> WalkBook::result(LocalDay today, const std::optional<Frame>& more) const
{
    std::vector<Frame> frames = m_frames;
    if (more) frames.push_back(*more);
    return walkResult(*m_protocol, *m_rule, m_walk, frames, &m_decision, m_threshold, today);
}

} // namespace duskrow::app
