// SPDX-License-Identifier: MIT
#include "sim/link.h"

#include <nlohmann/json.hpp>

namespace duskrow::sim {

using namespace duskrow::domain;
using hub::Method;
using hub::Request;
using hub::Response;

std::string headerOf(const Response& response, const std::string& name)
{
    for (const auto& [key, value] : response.headers)
        if (key == name) return value;
    return {};
}

std::vector<std::string> itemsIn(const std::string& page)
{
    std::vector<std::string> items;
    std::size_t at = 0;
    while (at + 9 <= page.size()) {
        std::uint64_t size = 0;
        for (unsigned i = 0; i < 8; ++i)
            size |= std::uint64_t{static_cast<std::uint8_t>(page[at + 1 + i])} << (8 * i);
        if (page.size() - at - 9 < size) break;
        items.push_back(page.substr(at + 9, static_cast<std::size_t>(size)));
        at += 9 + static_cast<std::size_t>(size);
    }
    return items;
}

namespace {

bool isOfPicture(const Request& request)
{
    return request.target.find("/photographs/") != std::string::npos;
}

} // namespace

// Only the beginning of a photograph arrives, and not always as it was.
void Link::breakOff(Request request)
{
    const std::size_t size = request.body.size();
    if (size < 2 || request.headers["content-range"].rfind("bytes 0-", 0) != 0) return;
    request.body.resize(1 + m_world.random.below(size - 1));
    request.headers["content-range"] =
        "bytes 0-" + std::to_string(request.body.size() - 1) + '/' + std::to_string(size);
    m_world.fault("photograph broken off");
    if (m_world.random.percent(30)) {
        m_world.fault("photograph damaged on its way");
        request.body[0] ^= 1;
    }
    const Response response = m_world.hub->ask(request);
    if (response.status == 201) broken("a photograph is whole before it arrived");
    throw LinkDown{};
}

Response Link::ask(Request request)
{
    Random& random = m_world.random;
    request.address = "192.0.2.7";
    if (!m_isGood && random.percent(4)) {
        m_world.fault("request lost");
        throw LinkDown{};
    }
    if (!m_isGood && isOfPicture(request) && request.method == Method::Put && random.percent(60))
        breakOff(request);
    Response response = m_world.hub->ask(request);
    if (response.status >= 500 && !m_world.isFailing)
        broken("the hub answers " + std::to_string(response.status) + " " + response.body);
    if (response.status >= 500) throw LinkDown{};
    if (!m_isGood && random.percent(4)) {
        m_world.fault("request repeated");
        const Response again = m_world.hub->ask(request);
        const bool isReceipt = request.target.find("/segments/") != std::string::npos;
        if (request.method == Method::Put && response.status == 201 && again.status < 500
            && again.status != 401 // the first may have ended the very device that brought it
            && (again.status != 200 || (isReceipt && again.body != response.body)))
            broken("a repeated request is answered otherwise: " + std::to_string(again.status) + again.body);
    }
    if (!m_isGood && random.percent(4)) {
        m_world.fault("answer lost");
        throw LinkDown{};
    }
    note(request, response);
    const bool isPage = request.method == Method::Get && response.status == 200 && !response.body.empty()
        && request.target.find("/segments?") != std::string::npos;
    // While a fault is armed, something may be kept that nobody has answered for.
    if (isPage && !m_world.isFailing) checkPage(m_world, readerOf(request), response.body);
    if (isPage && !m_isGood && random.percent(5)) {
        m_world.fault("page cut");
        response.body.resize(random.below(response.body.size()));
    }
    return response;
}

// A phone that began a new stream goes on with the token of the one before.
StreamId Link::readerOf(const Request& request) const
{
    const auto found = m_world.hub->tokens.find(request.header("authorization"));
    if (found == m_world.hub->tokens.end()) broken("a page without a token");
    return found->second;
}

// What the hub has said that it holds, and whom it gave a token.
void Link::note(const Request& request, const Response& response)
{
    if (response.status != 200 && response.status != 201) return;
    if (request.target.ends_with("/token")) {
        const auto token = "Bearer " + nlohmann::json::parse(response.body)["token"].get<std::string>();
        StreamId stream{};
        parseHex(nlohmann::json::parse(request.body)["stream"].get<std::string>(), stream);
        m_world.hub->tokens[token] = stream;
    }
    const std::string name = request.target.substr(request.target.rfind('/') + 1);
    if (isOfPicture(request)) m_world.hub->pictureReceipts.insert(name);
    if (isOfPicture(request) || request.method != Method::Put) return;
    std::array<std::uint8_t, 32> id{};
    if (!parseHex(name.substr(name.rfind('-') + 1), id)) broken("a receipt for nothing: " + request.target);
    m_world.hub->receipts.insert(std::string(id.begin(), id.end()));
}

} // namespace duskrow::sim
