// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <utility>
#include <vector>

// What the calls of the hub see of HTTP: no socket, no library.
namespace duskrow::hub {

enum class Method : std::uint8_t { Get, Head, Put, Post, Other };

struct Request {
    Method method = Method::Other;
    std::string target; // path and query as sent
    std::map<std::string, std::string> headers; // names in lower case; of repeated ones the last
    std::string address; // of the other side, without its port
    std::string body;

    [[nodiscard]] std::string header(const std::string& name) const
    {
        const auto found = headers.find(name);
        return found == headers.end() ? std::string() : found->second;
    }
};

struct Response {
    int status = 200;
    std::string type; // Content-Type; empty for an answer without a body
    std::string body;
    std::vector<std::pair<std::string, std::string>> headers; // values of our own making only
};

// Whoever answers. Called by several threads at once; may block.
class Answerer {
public:
    Answerer() = default;
    Answerer(const Answerer&) = delete;
    Answerer& operator=(const Answerer&) = delete;
    virtual ~Answerer() = default;

    virtual Response answer(const Request& request) = 0;
    // Most bytes of a body for this request, asked before any of it is read.
    [[nodiscard]] virtual std::size_t bodyLimit(Method method, const std::string& target) const = 0;
    // The answer to what is no request at all, or came too slowly; for the count only.
    virtual void refused(int status, const std::string& address) = 0;
};

} // namespace duskrow::hub
