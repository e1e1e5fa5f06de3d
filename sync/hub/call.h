// SPDX-License-Identifier: MIT
#pragma once

#include "sync/hub/answers.h"
#include "sync/hub/hub.h"

namespace duskrow::hub {

// One request on its way through the hub.
struct Call {
    const Request& request;
    std::string address; // behind a proxy, the one it speaks for
    std::vector<std::string> parts; // of the path, what the pattern left open
    std::map<std::string, std::string> query;
    Uuid programme; // when the path names one
    Known known; // of calls that need a programme
    StreamId stream{}; // whose token it is; all zero without one
    std::string remark; // for the log
};

enum class Needs : std::uint8_t {
    Nothing,
    Programme, // in the path, and known
    Token, // of a stream that is active in that programme
};

struct CallRow {
    std::string_view name;
    Method method;
    std::string_view pattern; // ":" stands for one part of the path; the first after programmes is its id
    Needs needs;
    std::size_t mostBytes; // of the body
    Response (*answer)(Hub&, Call&);
};

const std::vector<CallRow>& callRows();

// The row for a request, and what the pattern left open; whether the path is known under another method.
struct Found {
    const CallRow* row = nullptr;
    std::vector<std::string> parts;
    bool isOtherMethod = false;
};
Found findCall(Method method, std::string_view path);

Response health(Hub& hub, Call& call);
Response metricsText(Hub& hub, Call& call);
Response askInvitation(Hub& hub, Call& call);
Response foundProgramme(Hub& hub, Call& call);
Response join(Hub& hub, Call& call);
Response challenge(Hub& hub, Call& call);
Response token(Hub& hub, Call& call);
Response state(Hub& hub, Call& call);
Response push(Hub& hub, Call& call);
Response pull(Hub& hub, Call& call);
Response vectorOf(Hub& hub, Call& call);
Response listAside(Hub& hub, Call& call);
Response getAside(Hub& hub, Call& call);
Response headPhotograph(Hub& hub, Call& call);
Response getPhotograph(Hub& hub, Call& call);
Response putPhotograph(Hub& hub, Call& call);
Response putPublication(Hub& hub, Call& call);
Response listPublications(Hub& hub, Call& call);
Response bulletins(Hub& hub, Call& call);
Response bulletinFile(Hub& hub, Call& call);

// A body that is one JSON object of texts with exactly these keys; nothing otherwise.
std::optional<std::map<std::string, std::string>> textsOf(
    const std::string& body, const std::vector<std::string>& keys);

// Hex of exactly this length.
template <std::size_t size>
std::optional<std::array<std::uint8_t, size>> hexOf(std::string_view text)
{
    std::array<std::uint8_t, size> bytes{};
    if (text.size() != size * 2 || !domain::parseHex(text, bytes)) return std::nullopt;
    return bytes;
}

// A decimal number without sign, at most 15 digits.
std::optional<std::int64_t> numberOf(std::string_view text);

// Whether the stream is refused for too many wrong invitations; counts one more when `isWrong`.
std::optional<Response> tooManyWrong(Hub& hub, const Call& call);
void countWrong(Hub& hub, const Call& call);

} // namespace duskrow::hub
