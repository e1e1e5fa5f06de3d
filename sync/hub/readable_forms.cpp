// SPDX-License-Identifier: MIT
#include "sync/hub/readable_forms.h"

#include "sync/segment/segment.h"

namespace duskrow::hub {

namespace {

constexpr std::size_t mostBytes = std::size_t{32} << 20;
constexpr std::size_t hashBytes = 32;

std::size_t sizeOf(const std::vector<Uuid>& sites)
{
    return 256 + sites.size() * sizeof(Uuid);
}

} // namespace

Result<ReadableForms::Entry> ReadableForms::read(const std::string& bytes)
{
    auto head = sync::readHead(bytes);
    if (!head) return head.error();
    Entry entry;
    entry.author = head->header.stream;
    const auto segment = sync::openSegment(std::move(*head));
    entry.isNewer = !segment && segment.error().code == domain::ErrorCode::SegmentNewer;
    if (entry.isNewer) return entry;
    if (!segment) return segment.error();
    for (const sync::SegmentLine& line : segment->lines)
        entry.sites.push_back(line.change.kind == "site" ? line.change.record : line.change.site);
    return entry;
}

// Without the forms: they are asked for one by one.
Result<ReadableForms::Entry> ReadableForms::entryOf(const Key& key, const std::string& bytes)
{
    {
        const std::lock_guard guard(m_mutex);
        if (const auto found = m_byKey.find(key); found != m_byKey.end()) {
            m_entries.splice(m_entries.begin(), m_entries, found->second);
            const Entry& held = found->second->second;
            return Entry{held.author, held.isNewer, held.sites, {}};
        }
    }
    auto entry = read(bytes);
    if (!entry) return entry;
    const std::lock_guard guard(m_mutex);
    if (!m_byKey.contains(key)) {
        m_entries.emplace_front(key, *entry);
        m_byKey.emplace(key, m_entries.begin());
        m_bytes += sizeOf(entry->sites);
        makeRoom();
    }
    return entry;
}

std::string ReadableForms::formKept(const Key& key, const std::string& shown)
{
    const std::lock_guard guard(m_mutex);
    const auto found = m_byKey.find(key);
    if (found == m_byKey.end()) return {};
    const auto form = found->second->second.forms.find(shown);
    return form == found->second->second.forms.end() ? std::string() : form->second;
}

void ReadableForms::keepForm(const Key& key, const std::string& shown, const std::string& form)
{
    const std::lock_guard guard(m_mutex);
    const auto found = m_byKey.find(key);
    if (found == m_byKey.end()) return;
    if (found->second->second.forms.emplace(shown, form).second) m_bytes += shown.size() + form.size();
    makeRoom();
}

void ReadableForms::makeRoom()
{
    while (m_bytes > mostBytes && m_entries.size() > 1) {
        const auto& [key, entry] = m_entries.back();
        m_bytes -= sizeOf(entry.sites);
        for (const auto& [shown, form] : entry.forms) m_bytes -= shown.size() + form.size();
        m_byKey.erase(key);
        m_entries.pop_back();
    }
}

Result<std::string> ReadableForms::of(const Known& known, const StreamId& reader, const std::string& bytes)
{
    const Key key = bytes.size() < hashBytes ? bytes : bytes.substr(bytes.size() - hashBytes);
    const auto entry = entryOf(key, bytes);
    if (!entry) return entry.error();
    const domain::Roster& roster = *known.roster;
    if (entry->isNewer) {
        const Uuid author = roster.memberOf(entry->author);
        return !author.isNil() && author == roster.memberOf(reader) ? bytes : std::string();
    }
    domain::Change line;
    line.ref.stream = entry->author;
    std::string shown;
    for (const Uuid& site : entry->sites) {
        line.site = site;
        shown += roster.mayRead(reader, line) ? 'x' : '-';
    }
    if (shown.find('-') == std::string::npos) return bytes;
    if (std::string form = formKept(key, shown); !form.empty()) return form;
    auto head = sync::readHead(bytes);
    if (!head) return head.error();
    const auto segment = sync::openSegment(std::move(*head));
    if (!segment) return segment.error();
    const std::int64_t first = segment->head.header.first;
    std::string form = sync::segmentBytes(sync::partialForm(*segment, [&](const domain::Change& change) {
        return shown[static_cast<std::size_t>(change.ref.seq - first)] == 'x';
    }));
    keepForm(key, shown, form);
    return form;
}

} // namespace duskrow::hub
