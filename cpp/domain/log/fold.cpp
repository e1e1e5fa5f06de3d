// SPDX-License-Identifier: MIT
#include "domain/log/fold.h"

#include <algorithm>
#include <set>

namespace duskrow::domain {

namespace {

constexpr std::string_view withdrawnField = "withdrawn";

MergeClass mergeClassOf(const std::string& kind, const std::string& field)
{
    const RecordKind* known = findKind(kind);
    const Field* row = known ? known->find(field) : nullptr;
    return row ? row->merge : MergeClass::Label;
}

// The value drawn until a difference is settled: the highest number, else the last in a fixed order of
// values.
Value provisional(const std::vector<Head>& heads)
{
    const auto higher = [](const Head& a, const Head& b) { return a.value < b.value; };
    return std::max_element(heads.begin(), heads.end(), higher)->value;
}

Value bothRemarks(const std::vector<Head>& heads)
{
    std::set<std::string> texts;
    for (const Head& head : heads)
        if (const auto* text = std::get_if<std::string>(&head.value)) texts.insert(*text);
    std::string joined;
    for (const std::string& text : texts) joined += (joined.empty() ? "" : "\n") + text;
    return joined.empty() ? Value{} : Value{joined};
}

bool sameValue(const std::vector<Head>& heads)
{
    return std::all_of(
        heads.begin(), heads.end(), [&](const Head& h) { return h.value == heads.front().value; });
}

void pickValues(Folded& folded)
{
    for (const auto& [field, heads] : folded.heads) {
        if (heads.size() == 1 || sameValue(heads)) {
            folded.values[field] = heads.front().value;
            continue;
        }
        const MergeClass merge = mergeClassOf(folded.kind, field);
        folded.values[field] = merge == MergeClass::Remark ? bothRemarks(heads) : provisional(heads);
        if (merge == MergeClass::Measured) folded.differences.push_back({field, heads});
    }
}

// An edit that the withdrawal did not see brings the record back: nothing a person entered disappears unseen.
void weighWithdrawal(Folded& folded, const std::map<ChangeRef, const Change*>& changes)
{
    const auto found = folded.values.find(std::string(withdrawnField));
    if (found == folded.values.end()) return;
    if (found->second == Value{std::string()}) found->second = Value{}; // no reason at all: it stands
    if (isEmpty(found->second)) return;
    std::set<ChangeRef> seen;
    for (const Head& head : folded.heads.at(std::string(withdrawnField))) {
        seen.insert(head.ref);
        const Change& change = *changes.at(head.ref);
        seen.insert(change.saw.begin(), change.saw.end());
    }
    for (const auto& [field, heads] : folded.heads)
        for (const Head& head : heads)
            if (!seen.contains(head.ref)) folded.broughtBack = true;
    if (folded.broughtBack) found->second = Value{};
}

} // namespace

Folded fold(std::span<const Change> changes)
{
    std::map<ChangeRef, const Change*> ordered;
    for (const Change& change : changes) ordered.emplace(change.ref, &change);

    Folded folded;
    folded.kind = ordered.begin()->second->kind;
    folded.record = ordered.begin()->second->record;

    std::map<std::string, std::set<ChangeRef>> cited;
    for (const auto& [ref, change] : ordered) {
        for (const auto& [field, set] : change->fields) cited[field].insert(set.base.begin(), set.base.end());
        if (folded.site.isNil()) folded.site = change->site;
    }
    for (const auto& [ref, change] : ordered)
        for (const auto& [field, set] : change->fields)
            if (!cited[field].contains(ref)) folded.heads[field].push_back({ref, set.value});

    pickValues(folded);
    weighWithdrawal(folded, ordered);
    return folded;
}

std::vector<ChangeRef> baseOf(const Folded& folded, const std::string& field)
{
    std::vector<ChangeRef> refs;
    const auto found = folded.heads.find(field);
    if (found == folded.heads.end()) return refs;
    for (const Head& head : found->second) refs.push_back(head.ref);
    return refs;
}

std::vector<ChangeRef> allSeen(const Folded& folded)
{
    std::set<ChangeRef> refs;
    for (const auto& [field, heads] : folded.heads)
        for (const Head& head : heads) refs.insert(head.ref);
    return {refs.begin(), refs.end()};
}

} // namespace duskrow::domain
