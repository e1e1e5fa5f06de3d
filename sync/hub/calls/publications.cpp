// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include "sync/hub/call.h"

// A programme's bulletins: handed over by its coordinators, read by anybody.
namespace duskrow::hub {

namespace {

struct Kind {
    std::string_view ending;
    const char* type;
};

constexpr std::array kinds{
    Kind{".html", "text/html; charset=utf-8"},
    Kind{".atom", "application/atom+xml"},
    Kind{".csv", "text/csv; charset=utf-8"},
    Kind{".geojson", "application/geo+json"},
    Kind{".zip", "application/zip"},
    Kind{".pdf", "application/pdf"},
};

const char* typeOf(std::string_view name)
{
    const auto* const found = std::find_if(
        kinds.begin(), kinds.end(), [&](const Kind& kind) { return name.ends_with(kind.ending); });
    return found == kinds.end() ? nullptr : found->type;
}

// Small letters, digits, points and hyphens, with an ending that is served; no way leads elsewhere.
bool mayBeCalled(std::string_view name)
{
    constexpr std::size_t longest = 80;
    return name.size() <= longest && typeOf(name) && name.front() != '.'
        && std::all_of(name.begin(), name.end(), [](char letter) {
               return (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z')
                   || (letter >= '0' && letter <= '9') || letter == '.' || letter == '-';
           });
}

Response noSuchBulletin()
{
    return refusal(404, "unknown", "There is no such bulletin here.");
}

std::string escaped(const std::string& text)
{
    std::string safe;
    for (const char letter : text) {
        if (letter == '&')
            safe += "&amp;";
        else if (letter == '<')
            safe += "&lt;";
        else if (letter == '>')
            safe += "&gt;";
        else if (letter == '"')
            safe += "&quot;";
        else
            safe += letter;
    }
    return safe;
}

// Whoever handed a page over: it runs nothing, loads nothing and frames nothing.
const std::vector<std::pair<std::string, std::string>>& publicHeaders()
{
    static const std::vector<std::pair<std::string, std::string>> headers{
        {"Content-Security-Policy",
            "sandbox allow-popups; default-src 'none'; style-src 'unsafe-inline'; img-src data:"},
        {"X-Content-Type-Options", "nosniff"}, {"Cache-Control", "public, max-age=60"}};
    return headers;
}

Response fileOf(Hub& hub, Call& call, const Uuid& programme, const std::string& name)
{
    if (!mayBeCalled(name)) return noSuchBulletin();
    const auto file = hub.store.publication(programme, name);
    if (!file) return storeFailed(file.error());
    if (!*file) return noSuchBulletin();
    auto headers = publicHeaders();
    const std::string tag = '"' + domain::formatHex((*file)->hash) + '"';
    headers.emplace_back("ETag", tag);
    if (call.request.header("if-none-match") == tag) return {304, {}, {}, headers};
    return {200, typeOf(name), std::move((*file)->bytes), std::move(headers)};
}

} // namespace

Response putPublication(Hub& hub, Call& call)
{
    if (!call.known.roster->isCoordinator(call.stream))
        return refusal(403, "role", "Only coordinators publish.");
    const std::string& name = call.parts[1];
    if (!mayBeCalled(name) || call.request.body.empty())
        return refusal(400, "name", "A publication has a plain name with a known ending, and content.");
    const Publication file{
        name, domain::hashOf(call.request.body), call.stream, hub.now(), call.request.body};
    const auto hasRoom = hub.store.putPublication(call.programme, file);
    if (!hasRoom) return storeFailed(hasRoom.error());
    if (!*hasRoom)
        return refusal(507, "full", "This programme has published as many files as there is room for.");
    return jsonAnswer(201, {{"hash", domain::formatHex(file.hash)}, {"name", name}});
}

Response listPublications(Hub& hub, Call& call)
{
    const auto files = hub.store.publications(call.programme);
    if (!files) return storeFailed(files.error());
    nlohmann::json list = nlohmann::json::object();
    for (const auto& [name, hash] : *files) list[name] = domain::formatHex(hash);
    return jsonAnswer(200, list);
}

// With one programme its latest bulletin, else a list of programmes to choose from.
Response bulletins(Hub& hub, Call& /*call*/)
{
    const auto programmes = hub.store.publishing();
    if (!programmes) return storeFailed(programmes.error());
    auto headers = publicHeaders();
    if (programmes->size() == 1) {
        headers.emplace_back(
            "Location", "/bulletin/" + domain::formatUuid(programmes->front().programme) + "/");
        return {302, {}, {}, std::move(headers)};
    }
    std::string page = "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/>"
                       "<meta name=\"viewport\" content=\"width=device-width\"/><title>Bulletins</title>"
                       "<style>body{font:18px sans-serif;margin:2em auto;max-width:40em;padding:0 1em}"
                       "</style></head><body><h1>Bulletins</h1>";
    if (programmes->empty()) page += "<p>No bulletin has been published here yet.</p>";
    page += "<ul>";
    for (const ProgrammeRow& row : *programmes)
        page += "<li><a href=\"/bulletin/" + domain::formatUuid(row.programme) + "/\">" + escaped(row.name)
            + "</a></li>";
    page += "</ul></body></html>\n";
    return {200, "text/html; charset=utf-8", std::move(page), std::move(headers)};
}

Response bulletinFile(Hub& hub, Call& call)
{
    const auto programme = domain::parseUuid(call.parts[0]);
    if (!programme) return noSuchBulletin();
    return fileOf(hub, call, *programme, call.parts[1].empty() ? "index.html" : call.parts[1]);
}

} // namespace duskrow::hub
