// SPDX-License-Identifier: MIT
#include "domain/records/roster.h"

#include "domain/records/field_table.h"

namespace duskrow::domain {

using enum MergeClass;

namespace {

constexpr std::int64_t mostNumber = 9'007'199'254'740'991; // that every JSON reader holds

} // namespace

template <>
const RecordKind& kindOf<Device>()
{
    static const RecordKind kind{"device",
        {
            table::withdrawn(),
            table::text("stream", &Device::stream, Label),
            table::text("key", &Device::key, Label),
            table::text("label", &Device::label, Label),
            table::id("member", &Device::member),
            table::flag("root", &Device::root, Label),
            table::integer("ended_after", &Device::endedAfter, "changes", 0, mostNumber, Label),
            table::id("invitation", &Device::invitation),
            table::text("proof", &Device::proof, Label),
            table::text("follows_key", &Device::followsKey, Label),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<Invitation>()
{
    static const RecordKind kind{"invitation",
        {
            table::withdrawn(),
            table::id("member", &Invitation::member),
            table::text("key", &Invitation::key, Label),
            table::day("until_day", &Invitation::untilDay, Label),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<Assignment>()
{
    static const RecordKind kind{"assignment",
        {
            table::withdrawn(),
            table::id("member", &Assignment::member),
            table::id("site", &Assignment::site),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<Ruling>()
{
    static const RecordKind kind{"ruling",
        {
            table::withdrawn(),
            table::id("record", &Ruling::subject),
            table::code("says", &Ruling::says, saysNames, Label),
            table::text("left_out", &Ruling::leftOut, Label),
            table::text("remark", &Ruling::remark, Remark, table::longText),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<Admission>()
{
    static const RecordKind kind{"admission",
        {
            table::withdrawn(),
            table::text("change", &Admission::change, Label),
        }};
    return kind;
}

namespace {

Uuid named(const Uuid& programme, const char* kind, std::initializer_list<std::string> key)
{
    std::vector<std::string> parts{formatUuid(programme), kind};
    parts.insert(parts.end(), key);
    return uuidFromName(parts);
}

} // namespace

Uuid deviceId(const Uuid& programme, const StreamId& stream)
{
    return named(programme, "device", {formatHex(stream)});
}

Uuid assignmentId(const Uuid& programme, const Uuid& member, const Uuid& site)
{
    return named(programme, "assignment", {formatUuid(member), formatUuid(site)});
}

Uuid rulingId(const Uuid& programme, const Uuid& record)
{
    return named(programme, "ruling", {formatUuid(record)});
}

Uuid admissionId(const Uuid& programme, const std::string& change)
{
    return named(programme, "admission", {change});
}

} // namespace duskrow::domain
