// SPDX-License-Identifier: MIT
#include "formats/bulletin/atom.h"

#include <algorithm>

#include "domain/base/uuid.h"
#include "formats/bulletin/document.h"
#include "formats/svg.h"

namespace duskrow::formats {

using namespace duskrow::domain;

namespace {

std::string atomElement(const char* name, const std::string& text)
{
    return std::string("<") + name + ">" + escapedXml(text) + "</" + name + ">\n";
}

std::string urn(const std::vector<std::string>& parts)
{
    return "urn:uuid:" + formatUuid(uuidFromName(parts));
}

} // namespace

std::string writeAtom(const Feed& feed)
{
    Instant updated = instantFromMs(0);
    for (const FeedEntry& entry : feed.entries) updated = std::max(updated, entry.updated);
    std::string xml =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<feed xmlns=\"http://www.w3.org/2005/Atom\" xml:lang=\""
        + escapedXml(feed.language) + "\">\n" + atomElement("title", feed.title)
        + atomElement("id", urn({feed.programmeKey, "bulletins"}))
        + atomElement("updated", momentText(updated)) + "<author>"
        + atomElement("name", feed.author.empty() ? feed.title : feed.author)
        + "</author>\n<link rel=\"self\" type=\"application/atom+xml\" href=\"feed.atom\"/>\n"
          "<link rel=\"alternate\" type=\"text/html\" href=\"index.html\"/>\n"
          "<generator>Duskrow</generator>\n";
    for (const FeedEntry& entry : feed.entries)
        xml += "<entry>\n" + atomElement("title", entry.title)
            + atomElement("id", urn({feed.programmeKey, "bulletin", entry.pest, weekText(entry.week)}))
            + atomElement("published", momentText(entry.published))
            + atomElement("updated", momentText(entry.updated))
            + "<link rel=\"alternate\" type=\"text/html\" href=\"" + escapedXml(entry.link) + "\"/>\n"
            + "<summary type=\"text\">" + escapedXml(entry.summary) + "</summary>\n</entry>\n";
    return xml + "</feed>\n";
}

} // namespace duskrow::formats
