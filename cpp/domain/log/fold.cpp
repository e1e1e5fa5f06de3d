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
    folded.values.reserve(folded.heads.size());
    const auto add = [&](const std::string& field, Value value) {
        folded.values.emplace_hint(folded.values.end(), field, std::move(value));
    };
    for (const auto& [field, heads] : folded.heads) {
        if (heads.size() == 1 || sameValue(heads)) {
            add(field, heads.front().value);
            continue;
        }
        const MergeClass merge = mergeClassOf(folded.kind, field);
        add(field, merge == MergeClass::Remark ? bothRemarks(heads) : provisional(heads));
        if (merge == MergeClass::Measured) folded.differences.push_back({field, heads});
    }
}

using Ordered = std::vector<const Change*>;

// An edit that the withdrawal did not see brings the record back: nothing a person entered disappears unseen.
void weighWithdrawal(Folded& folded, const Ordered& changes)
{
    const auto found = folded.values.find(std::string(withdrawnField));
    if (found == folded.values.end()) return;
    if (found->second == Value{std::string()}) found->second = Value{}; // no reason at all: it stands
    if (isEmpty(found->second)) return;
    // What stands of the withdrawal, and what that saw; what an earlier one saw, which it replaces, is
    // nothing to it.
    std::set<ChangeRef> standing;
    for (const Head& head : folded.heads.at(std::string(withdrawnField))) standing.insert(head.ref);
    std::set<ChangeRef> seen = standing;
    for (const Change* change : changes)
        if (standing.contains(change->ref) && change->fields.contains(std::string(withdrawnField)))
            seen.insert(change->saw.begin(), change->saw.end());
    for (const auto& [field, heads] : folded.heads)
        for (const Head& head : heads)
            if (!seen.contains(head.ref)) folded.broughtBack = true;
    if (folded.broughtBack) found->second = Value{};
}

// In the order of references, each change once. Two of one reference stand in the order of their bytes.
Ordered inOrder(std::span<const Change> changes)
{
    Ordered ordered;
    ordered.reserve(changes.size());
    for (const Change& change : changes) ordered.push_back(&change);
    const auto before = [](const Change* a, const Change* b) {
        return a->ref != b->ref ? a->ref < b->ref : *a != *b && canonicalJson(*a) < canonicalJson(*b);
    };
    const auto same = [](const Change* a, const Change* b) { return *a == *b; };
    std::sort(ordered.begin(), ordered.end(), before);
    ordered.erase(std::unique(ordered.begin(), ordered.end(), same), ordered.end());
    return ordered;
}

void keepAside(Folded& folded, Ordered& changes, const Roster& roster)
{
    const std::vector<Standing> standings = roster.weigh(std::span<const Change* const>(changes));
    Ordered counting;
    for (std::size_t i = 0; i < changes.size(); ++i)
        if (standings[i] == Standing::Counts)
            counting.push_back(changes[i]);
        else
            folded.aside.emplace_back(changes[i]->ref, standings[i]);
    changes = std::move(counting);
}

// Edits of a record that stands wait for a coordinator: by a change that cites them, or a newer word on the
// record.
void setProposalsApart(Folded& folded, Ordered& changes, const FoldContext& context)
{
    const auto isCoordinators = [&](const Change& change) {
        return context.roster && context.roster->isCoordinator(change.ref.stream);
    };
    std::set<ChangeRef> taken = context.ruling->saw;
    for (const Change* change : changes)
        if (isCoordinators(*change))
            for (const auto& [field, set] : change->fields) taken.insert(set.base.begin(), set.base.end());
    Ordered counting;
    for (const Change* change : changes) {
        if (!context.ruling->saw.contains(change->ref)) folded.isRulingStale = true;
        if (isCoordinators(*change) || taken.contains(change->ref))
            counting.push_back(change);
        else
            folded.proposals.push_back(change->ref);
    }
    changes = std::move(counting);
}

} // namespace

std::optional<RulingSeen> rulingIn(std::span<const Change> ofTheRuling, const Roster& roster)
{
    if (ofTheRuling.empty()) return std::nullopt;
    const Folded ruling = fold(ofTheRuling, {&roster, nullptr});
    const auto says = ruling.values.find("says");
    const auto withdrawn = ruling.values.find("withdrawn");
    const bool isTaken = withdrawn != ruling.values.end() && !isEmpty(withdrawn->second);
    if (isTaken || says == ruling.values.end() || says->second != Value{std::string("stands")})
        return std::nullopt;
    RulingSeen seen;
    for (const Head& head : ruling.heads.at("says"))
        for (const Change& change : ofTheRuling)
            if (change.ref == head.ref) seen.saw.insert(change.saw.begin(), change.saw.end());
    return seen;
}

Folded fold(std::span<const Change> changes, const FoldContext& context)
{
    Ordered ordered = inOrder(changes);
    Folded folded;
    folded.kind = ordered.front()->kind;
    folded.record = ordered.front()->record;
    const auto isFree = [&](const Change* change) {
        return context.roster->countsAlways(change->ref.stream);
    };
    if (context.roster && !std::all_of(ordered.begin(), ordered.end(), isFree))
        keepAside(folded, ordered, *context.roster);
    if (context.ruling) setProposalsApart(folded, ordered, context);
    folded.isThere = !ordered.empty();
    if (!folded.isThere) return folded;
    folded.kind = ordered.front()->kind;

    std::set<std::pair<std::string_view, ChangeRef>> cited;
    for (const Change* change : ordered) {
        for (const auto& [field, set] : change->fields)
            for (const ChangeRef& ref : set.base) cited.emplace(field, ref);
        if (folded.site.isNil()) folded.site = change->site;
    }
    folded.heads.reserve(ordered.front()->fields.size());
    for (const Change* change : ordered)
        for (const auto& [field, set] : change->fields)
            if (cited.empty() || !cited.contains({field, change->ref}))
                folded.heads[field].push_back({change->ref, set.value});

    pickValues(folded);
    weighWithdrawal(folded, ordered);
    return folded;
}

const Value& onlyValue(std::string_view field, const FieldSet& set)
{
    static const Value nothing;
    const bool isNoReason = field == withdrawnField && set.value == Value{std::string()};
    return isNoReason ? nothing : set.value;
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
