// SPDX-License-Identifier: MIT
// The client of the product, over a link that may be bad.
#include <algorithm>

#include "sim/link.h"
#include "sync/client/hub_client.h"

namespace duskrow::sim {

using namespace duskrow::domain;
using sync::HubAnswer;
using sync::HubQuestion;

namespace {

std::string lower(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(), [](unsigned char one) {
        return static_cast<char>(one < 'A' || one > 'Z' ? one : one + ('a' - 'A'));
    });
    return text;
}

hub::Request requestOf(const HubQuestion& question)
{
    static const std::map<std::string, hub::Method> methods{{"GET", hub::Method::Get},
        {"HEAD", hub::Method::Head}, {"PUT", hub::Method::Put}, {"POST", hub::Method::Post}};
    hub::Request request;
    request.method = methods.at(question.method);
    request.target = question.path;
    request.body = question.body;
    for (const auto& [name, value] : question.headers) request.headers[lower(name)] = value;
    return request;
}

HubAnswer answerOf(const hub::Response& response)
{
    HubAnswer answer{response.status, response.body, {}};
    for (const auto& [name, value] : response.headers) answer.headers[lower(name)] = value;
    answer.headers["content-type"] = response.type;
    return answer;
}

} // namespace

bool visitHub(World& world, Phone& phone, bool isLinkGood)
{
    if (!world.hub->isOpen()) return false;
    Link link(world, isLinkGood);
    bool isDown = false;
    const sync::HubTransport transport = [&](const HubQuestion& question) -> Result<HubAnswer> {
        try {
            return answerOf(link.ask(requestOf(question)));
        } catch (const LinkDown&) {
            isDown = true;
            return Error{ErrorCode::HubUnreachable, {"hub"}};
        }
    };
    const auto report = sync::exchangeByHub(
        *phone.store, QUrl(QStringLiteral("https://hub.invalid")), world.timeOf(phone), {}, transport);
    if (!report) {
        const ErrorCode code = report.error().code;
        // A page that was cut says so as well.
        if (world.isFailing || isDown || !isLinkGood) return false;
        if (code == ErrorCode::NotEnrolled || code == ErrorCode::HubRefused) return false;
        broken("phone " + std::to_string(phone.number) + " cannot exchange with the hub: "
            + std::to_string(static_cast<int>(code)) + " " + report.error().detail);
    }
    if (report->keptAside > 0) broken("the hub sent what is not sound");
    phone.mayRenew = phone.mayRenew || report->metFork;
    world.count("visits to the hub by the client of the product", 1);
    return true;
}

} // namespace duskrow::sim
