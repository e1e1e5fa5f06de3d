// SPDX-License-Identifier: MIT
#include "domain/protocol/source_check.h"

#include <algorithm>

namespace duskrow::domain {

namespace {

using Kind = LocatedJson::Kind;

bool isKnown(const std::string& source, const LocatedJson& sources)
{
    return source == commonPractice || source == notPublished || sources.find(source);
}

// The first part of a group that has to come from somewhere.
const LocatedJson* needingSource(const LocatedJson& group)
{
    for (const char* key : {"value", "from", "to"})
        if (const LocatedJson* found = group.find(key)) return found;
    const auto number = std::find_if(
        group.items.begin(), group.items.end(), [](const LocatedJson& item) { return item.isNumber(); });
    return number == group.items.end() ? nullptr : &*number;
}

void checkGroup(Reading& reading, const LocatedJson& group, const LocatedJson& sources)
{
    const LocatedJson* source = group.find("source");
    const LocatedJson* needing = needingSource(group);
    if (source && source->kind != Kind::Text) return reading.refuse(*source, "a source is an id in quotes");
    if (!source) {
        if (needing) reading.refuse(*needing, "this number or value has no source");
        return;
    }
    if (!isKnown(source->text, sources))
        return reading.refuse(*source, "the source \"" + source->text + "\" is not in the table of sources");
    const LocatedJson* value = group.find("value") ? group.find("value") : group.find("from");
    if (!value) return;
    const bool unknown = value->kind == Kind::Null;
    if (unknown != (source->text == notPublished))
        return reading.refuse(
            *value, "an unknown value is null with the source \"not-published\", and only such");
    if (unknown && !group.find("note"))
        reading.refuse(*value, "an unknown value needs a note that says what nobody has published");
}

} // namespace

void checkSources(Reading& reading, const LocatedJson& section, const LocatedJson& sources)
{
    if (section.isNumber()) return reading.refuse(section, "this number has no source");
    if (section.kind == Kind::Object) checkGroup(reading, section, sources);
    for (const LocatedJson& item : section.items)
        if (section.kind == Kind::List || !item.isNumber()) checkSources(reading, item, sources);
}

} // namespace duskrow::domain
