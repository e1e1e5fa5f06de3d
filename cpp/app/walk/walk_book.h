// SPDX-License-Identifier: MIT
#pragma once

#include "app/session.h"
#include "domain/rules/walk_result.h"

namespace duskrow::app {

// All that is kept of one walk, with the threshold it is held against.
class WalkBook {
public:
    // Reads it anew. Errors as in store/queries.h; RecordMissing {"walk"}; ProtocolNoThreshold.
    domain::Result<domain::Done> read(Session& session, const domain::Uuid& walk);

    [[nodiscard]] bool isFound() const { return m_isFound; }
    [[nodiscard]] const domain::Walk& walk() const { return m_walk; }
    [[nodiscard]] const domain::Site& site() const { return m_site; }
    [[nodiscard]] const std::vector<domain::Frame>& frames() const { return m_frames; }
    // Of this walk; before there is one, money and label of the latest other walk.
    [[nodiscard]] const domain::Decision& decision() const { return m_decision; }
    [[nodiscard]] bool isDecisionKept() const { return m_isDecisionKept; } // of this walk
    [[nodiscard]] const domain::Protocol* protocol() const { return m_protocol; }
    [[nodiscard]] const domain::ThresholdRule* rule() const { return m_rule; }
    [[nodiscard]] const std::optional<domain::Threshold>& threshold() const { return m_threshold; }
    [[nodiscard]] QString title() const; // of the field

    // What it comes to on a day, with one more frame or without. Errors as walkResult.
    [[nodiscard]] domain::Result<domain::WalkResult> result(
        domain::LocalDay today, const std::optional<domain::Frame>& more = {}) const;

    // The threshold of other money. Errors as thresholdOf.
    [[nodiscard]] domain::Result<domain::Threshold> thresholdFor(const domain::Decision& decision) const;

private:
    domain::Result<domain::Done> readDecision(Session& session);

    domain::Walk m_walk;
    domain::Site m_site;
    std::vector<domain::Frame> m_frames;
    domain::Decision m_decision;
    const domain::Protocol* m_protocol = nullptr;
    const domain::ThresholdRule* m_rule = nullptr;
    std::optional<domain::Threshold> m_threshold;
    bool m_isDecisionKept = false;
    bool m_isFound = false;
};

} // namespace duskrow::app
