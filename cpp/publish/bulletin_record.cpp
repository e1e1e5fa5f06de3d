// SPDX-License-Identifier: MIT
#include "publish/bulletin_record.h"

#include <algorithm>

#include "domain/base/utf8.h"
#include "domain/bulletin/area_news.h"
#include "formats/bulletin/document.h"

namespace duskrow::publish {

using namespace duskrow::domain;

namespace {

constexpr std::size_t mostTextBytes = 24'000;

// Whole paragraphs, as many as have room.
std::string joined(const std::vector<std::string>& paragraphs)
{
    std::string text;
    for (const std::string& paragraph : paragraphs) {
        if (text.size() + paragraph.size() + 2 > mostTextBytes) break;
        if (!text.empty()) text += "\n\n";
        text += paragraph;
    }
    return text;
}

PublishedBulletin recordOf(
    const Uuid& programme, const Uuid& season, const WeekDraft& draft, const text::BulletinWords& words)
{
    const Bulletin& bulletin = draft.bulletin;
    PublishedBulletin record;
    record.week = formats::weekText(bulletin.iso);
    record.id = bulletinId(programme, bulletin.pest, bulletin.trapType, record.week);
    record.season = season;
    record.pest = bulletin.pest;
    record.trapType = bulletin.trapType;
    record.issue = bulletin.issue;
    if (const KeptIssue* issue = draft.kept.last(bulletin.iso)) record.publishedMs = toMs(issue->published);
    record.language = words.language;
    record.title = words.title;
    record.text = joined(words.paragraphs);
    record.areas = areaNewsText(areaNewsOf(bulletin, draft.districts), mostTextBytes);
    return record;
}

} // namespace

Result<std::optional<Edit>> bulletinEdit(
    store::Reader& reader, const Uuid& season, const WeekDraft& draft, const text::BulletinWords& words)
{
    const auto programmes = reader.select<Programme>({});
    if (!programmes) return programmes.error();
    if (programmes->empty()) return Error{ErrorCode::RecordMissing, {"programme"}};
    const PublishedBulletin record = recordOf(programmes->front().id, season, draft, words);
    const auto all = reader.select<PublishedBulletin>({});
    if (!all) return all.error();
    const auto known = std::find_if(
        all->begin(), all->end(), [&](const PublishedBulletin& one) { return one.id == record.id; });
    if (known == all->end()) return std::optional(creation(record, {}));
    Edit edit = correction(*known, record, {});
    if (edit.fields.empty()) return std::optional<Edit>();
    return std::optional(std::move(edit));
}

Result<std::string> publishedText(store::Reader& reader, const WeekDraft& draft)
{
    const auto all = reader.select<PublishedBulletin>({});
    if (!all) return all.error();
    const Bulletin& bulletin = draft.bulletin;
    const std::string week = formats::weekText(bulletin.iso);
    for (const PublishedBulletin& one : *all)
        if (one.week == week && one.pest == bulletin.pest && one.trapType == bulletin.trapType
            && one.issue == bulletin.issue)
            return one.text;
    return std::string();
}

Result<std::vector<PublishedBulletin>> bulletinsOf(store::Reader& reader, const Uuid& season)
{
    auto all = reader.select<PublishedBulletin>({});
    if (!all) return all;
    std::erase_if(
        *all, [&](const PublishedBulletin& one) { return one.season != season || !one.withdrawn.empty(); });
    std::sort(all->begin(), all->end(), [](const PublishedBulletin& a, const PublishedBulletin& b) {
        return std::tie(b.week, a.pest) < std::tie(a.week, b.pest);
    });
    return all;
}

} // namespace duskrow::publish
