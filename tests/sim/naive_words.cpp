// SPDX-License-Identifier: MIT
// Whose word is a coordinator's, and what only a root may say.
#include <algorithm>

#include "sim/naive_roster.h"

namespace duskrow::sim {

using namespace duskrow::domain;

// Whether a root said the same in this field of the record, or answered it.
bool NaiveRoster::hasRootAgreed(const Change& change, const std::string& field) const
{
    const auto record = of(change.kind).find(change.record);
    if (record == of(change.kind).end()) return false;
    for (const Change* other : record->second) {
        const auto set = other->fields.find(field);
        if (set == other->fields.end() || !isRootWord(*other)) continue;
        if (set->second.value == change.fields.at(field).value) return true;
        for (const ChangeRef& ref : set->second.base)
            if (ref == change.ref) return true;
    }
    return false;
}

bool NaiveRoster::says(const Change& change, std::initializer_list<const char*> fields) const
{
    return std::any_of(fields.begin(), fields.end(),
        [&](const char* field) { return change.fields.contains(field) && !hasRootAgreed(change, field); });
}

bool NaiveRoster::isForRoots(const Change& change) const
{
    const Word byRoot = [this](const Change& c) { return isRootWord(c); };
    if (change.kind == "invitation") {
        const Changes& changes = of("invitation").at(change.record);
        return isHeard(changes, byRoot) && stands(changes, byRoot)
            && m_coordinators.contains(idOf(pick(changes, "member", byRoot)));
    }
    if (change.kind == "member") {
        const auto role = change.fields.find("role");
        const bool raises =
            role != change.fields.end() && role->second.value == Value{std::string("coordinator")};
        if (raises && says(change, {"role"})) return true;
        return m_coordinators.contains(change.record) && says(change, {"role", "until_day", "withdrawn"});
    }
    if (change.kind != "device") return false;
    if (change.fields.contains("root")) return true;
    const auto stream = streamOf(change.record);
    if (!stream || !(m_roots.contains(*stream) || m_coordinatorStreams.contains(*stream))) return false;
    if (says(change, {"ended_after", "member", "withdrawn"})) return true;
    return *stream != change.ref.stream && says(change, {"key"});
}

void NaiveRoster::readWordsForRoots()
{
    for (const auto& [kind, records] : m_records)
        for (const auto& [record, changes] : records)
            for (const Change* change : changes) {
                const StreamId& stream = change->ref.stream;
                if (m_coordinatorStreams.contains(stream) && !m_roots.contains(stream) && isForRoots(*change))
                    m_forRoots.insert(change->ref);
            }
}

bool NaiveRoster::isWord(const Change& change) const
{
    if (isRootWord(change)) return true;
    const auto stream = m_coordinatorStreams.find(change.ref.stream);
    if (stream == m_coordinatorStreams.end() || m_roots.contains(change.ref.stream)) return false;
    if (m_forRoots.contains(change.ref)) return false;
    const std::string& until = m_coordinators.at(stream->second);
    if (!until.empty() && formatDay(dayOf(change.at, change.offset)) > until) return false;
    const auto end = m_rootEnds.find(change.ref.stream);
    return end == m_rootEnds.end() || change.ref.seq <= end->second;
}

} // namespace duskrow::sim
