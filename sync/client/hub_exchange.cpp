// SPDX-License-Identifier: MIT
#include "sync/client/hub_exchange.h"

#include <algorithm>
#include <sstream>

#include "sync/carry/carried_reader.h"
#include "sync/exchange/intake.h"
#include "sync/exchange/segments_of_store.h"

namespace duskrow::sync {

using namespace duskrow::domain;

namespace {

constexpr int mostPageBytes = 1 << 20;
constexpr std::size_t mostHad = 64; // named in one request

std::string tokenMessage(const Uuid& programme, std::span<const std::uint8_t> nonce)
{
    std::string text = "duskrow-token-v1";
    text.append(reinterpret_cast<const char*>(programme.bytes.data()), programme.bytes.size());
    text.append(reinterpret_cast<const char*>(nonce.data()), nonce.size());
    return text;
}

std::int64_t numberIn(const nlohmann::json& object, const char* key)
{
    const auto found = object.find(key);
    return found != object.end() && found->is_number_integer() ? found->get<std::int64_t>() : 0;
}

std::int64_t numberOf(const std::string& text)
{
    std::istringstream stream(text);
    std::int64_t number = 0;
    stream >> number;
    return number;
}

std::string nameOf(const store::SegmentRow& row)
{
    return std::to_string(row.first) + '-' + std::to_string(row.last) + '-' + formatHex(row.id);
}

} // namespace

HubExchange::HubExchange(store::Store& store, store::Reader& reader, const QUrl& hub, Instant now,
    const Journey& journey, const HubTransport& transport)
    : m_store(store), m_reader(reader), m_route(hubRoute(hub)),
      m_link(
          hub, [this] { return goesOn(m_done, m_all); }, transport),
      m_now(now), m_journey(journey), m_home("/programmes/" + formatUuid(store.programme()))
{
}

// A hub that does not answer must not hold up whoever wants to stop: the journey is asked while one waits.
bool HubExchange::goesOn(std::int64_t done, std::int64_t all)
{
    m_done = done;
    m_all = all;
    return sync::goesOn(m_journey, done, all, m_report);
}

Result<ExchangeReport> HubExchange::run()
{
    const auto exchanged = exchangeAll();
    const bool isGivenUp =
        !exchanged && m_report.wasStopped && exchanged.error().code == ErrorCode::HubUnreachable;
    if (!exchanged && !isGivenUp) return exchanged.error();
    return m_report;
}

Result<Done> HubExchange::exchangeAll()
{
    if (const auto sealed = sealTail(m_store, m_reader); !sealed) return sealed.error();
    if (const auto entered = enter(); !entered) return entered.error();
    if (const auto met = meetEpoch(); !met) return met.error();
    if (const auto handed = handOverAll(); !handed) return handed.error();
    if (const auto fetched = fetchAll(); !fetched) return fetched.error();
    if (const auto published = handOverPublications(); !published) return published.error();
    return exchangePhotos();
}

Result<Done> HubExchange::enter()
{
    const auto token = m_reader.deviceSetting("token/" + m_route);
    if (!token) return token.error();
    if (*token) m_link.setToken(**token);
    if (!*token)
        if (const auto asked = askForToken(); !asked) return asked.error();
    const auto answer = withToken("GET", m_home + "/state", {});
    if (!answer) return answer.error();
    const auto state = objectIn(*answer);
    if (answer->status != 200) return m_link.refusal(*answer);
    if (!state || !state->contains("epoch")) return Error{ErrorCode::HubNotOurs, {m_link.address()}};
    m_epoch = (*state)["epoch"].dump();
    return Done{};
}

// A request with the token, or with a fresh one when the hub does not know it any more.
Result<HubAnswer> HubExchange::withToken(const char* method, const std::string& path, std::string_view bytes,
    const std::map<std::string, std::string>& headers)
{
    auto answer = m_link.send(method, path, bytes, headers);
    if (!answer || answer->status != 401) return answer;
    if (const auto asked = askForToken(); !asked) return asked.error();
    return m_link.send(method, path, bytes, headers);
}

Result<Done> HubExchange::askForToken()
{
    for (int attempt = 0; attempt < 2; ++attempt) {
        m_link.setToken({});
        const std::string stream = formatHex(m_store.stream());
        const auto challenge = m_link.post(m_home + "/challenge", {{"stream", stream}});
        if (!challenge) return challenge.error();
        if (challenge->status == 404) return Error{ErrorCode::NotEnrolled, {m_link.address()}};
        const auto asked = objectIn(*challenge);
        std::array<std::uint8_t, 32> nonce{};
        if (challenge->status != 200) return m_link.refusal(*challenge);
        if (!asked || !parseHex(textIn(*asked, "nonce"), nonce))
            return Error{ErrorCode::HubNotOurs, {m_link.address()}, "nonce"};
        const Signature proof = m_store.sign(tokenMessage(m_store.programme(), nonce));
        const auto answer = m_link.post(m_home + "/token",
            {{"nonce", formatHex(nonce)}, {"proof", formatHex(proof)}, {"stream", stream}});
        if (!answer) return answer.error();
        const auto given = objectIn(*answer);
        if (answer->status == 201 && given) {
            const std::string token = textIn(*given, "token");
            m_link.setToken(token);
            return m_store.saveSettingNow("token/" + m_route, token);
        }
        // The hub may not know this device yet: its first change claims an invitation.
        if (answer->status != 403 || attempt > 0) return m_link.refusal(*answer);
        if (const auto claimed = claim(); !claimed) return claimed.error();
    }
    return Error{ErrorCode::NotEnrolled, {m_link.address()}};
}

Result<Done> HubExchange::claim()
{
    const auto rows = store::segmentRows(m_reader);
    if (!rows) return rows.error();
    const auto first = std::find_if(rows->begin(), rows->end(), [&](const store::SegmentRow& row) {
        return row.stream == m_store.stream() && row.first == 1 && row.isWhole;
    });
    const Error stranger{ErrorCode::NotEnrolled, {m_link.address()}};
    if (first == rows->end()) return stranger;
    const auto bytes = bytesOf(m_reader, first->id);
    if (!bytes) return bytes.error();
    const auto answer = m_link.send(
        "POST", m_home + "/join", bytes->value_or(""), {{"Content-Type", "application/octet-stream"}});
    if (!answer) return answer.error();
    if (answer->status == 403 || answer->status == 404 || answer->status == 422) return stranger;
    if (answer->status != 200 && answer->status != 201) return m_link.refusal(*answer);
    return Done{};
}

Result<HubExchange::Cursor> HubExchange::cursor()
{
    const auto text = m_reader.deviceSetting("cursor/" + m_route);
    if (!text) return text.error();
    Cursor cursor;
    const auto held = nlohmann::json::parse(text->value_or(""), nullptr, false);
    if (!held.is_object()) return cursor;
    cursor.after = numberIn(held, "after");
    cursor.epoch = textIn(held, "epoch");
    cursor.scope = textIn(held, "scope");
    return cursor;
}

Result<Done> HubExchange::keepCursor(const Cursor& cursor)
{
    const nlohmann::json held{{"after", cursor.after}, {"epoch", cursor.epoch}, {"scope", cursor.scope}};
    return m_store.saveSettingNow("cursor/" + m_route, held.dump());
}

// A hub that was put back from a backup is asked for everything it has, from the beginning; what of ours does
// not come is handed over again. That the epoch is another one is noted before anything is, so that no visit
// that breaks off leaves marks of an epoch that nobody remembers.
Result<Done> HubExchange::meetEpoch()
{
    auto place = cursor();
    if (!place) return place.error();
    if (place->epoch == m_epoch) return Done{};
    const bool wasRestored = !place->epoch.empty();
    if (wasRestored)
        if (const auto forgotten = m_store.forgetPassedOnNow(m_route); !forgotten) return forgotten;
    if (const auto kept = keepCursor({0, m_epoch, place->scope}); !kept) return kept;
    return wasRestored ? fetchAll() : Result<Done>(Done{});
}

Result<Done> HubExchange::handOverAll()
{
    auto place = cursor();
    if (!place) return place.error();
    auto rows = store::segmentRows(m_reader, m_route);
    if (!rows) return rows.error();
    std::erase_if(*rows, [](const store::SegmentRow& row) { return !row.isWhole; });
    std::int64_t done = 0;
    for (const store::SegmentRow& row : *rows) {
        if (!goesOn(done++, static_cast<std::int64_t>(rows->size()))) break;
        if (const auto handed = handOver(row, *place); !handed) return handed.error();
    }
    return keepCursor(*place);
}

Result<int> HubExchange::put(const store::SegmentRow& row, HubAnswer& answer)
{
    const auto bytes = bytesOf(m_reader, row.id);
    if (!bytes) return bytes.error();
    auto sent = withToken("PUT", m_home + "/segments/" + formatHex(row.stream) + '/' + nameOf(row),
        bytes->value_or(""), {{"Content-Type", "application/octet-stream"}});
    if (!sent) return sent.error();
    answer = std::move(*sent);
    // Without the receipt for just this one nothing was handed over, whoever answers so.
    const auto object = objectIn(answer);
    const bool isReceipt = object && textIn(*object, "id") == formatHex(row.id);
    if (((answer.status == 200 || answer.status == 201) && !isReceipt)
        || (answer.status == 202 && (!object || textIn(*object, "reason").empty())))
        return Error{ErrorCode::HubNotOurs, {m_link.address()}, "receipt"};
    return answer.status;
}

Result<Done> HubExchange::handOver(const store::SegmentRow& row, Cursor& place)
{
    HubAnswer answer;
    const auto status = put(row, answer);
    if (!status) return status.error();
    if (*status == 409) return closeGap(row, answer);
    if (*status == 401 || *status == 429 || *status >= 500) return m_link.refusal(answer);
    if (*status != 200 && *status != 201 && *status != 202) {
        m_report.troubles.push_back(m_link.refusal(answer));
        return Done{};
    }
    const auto object = objectIn(answer);
    if (*status == 201) ++m_report.sent;
    // What was handed over just now need not be fetched again.
    if (*status != 202 && object) {
        const std::int64_t at = numberIn(*object, "at");
        if (at == place.after + 1)
            ++place.after;
        else
            m_had.push_back(at);
    }
    if (*status == 202) {
        m_report.troubles.push_back(
            {ErrorCode::HubKeptAside, {m_link.address(), object ? textIn(*object, "reason") : ""}});
    }
    return m_store.markPassedOnNow(m_route, {row.id}, m_now);
}

// The hub lacks what goes before: hand that over first, from the number it asks for. What is not here in
// whole form waits.
Result<Done> HubExchange::closeGap(const store::SegmentRow& row, const HubAnswer& answer)
{
    const auto object = objectIn(answer);
    const std::int64_t next = object ? numberIn(*object, "next") : 0;
    auto rows = store::segmentRows(m_reader);
    if (!rows) return rows.error();
    std::erase_if(*rows, [&](const store::SegmentRow& other) {
        return other.stream != row.stream || !other.isWhole || other.last < next || other.first > row.first;
    });
    std::sort(rows->begin(), rows->end(),
        [](const store::SegmentRow& a, const store::SegmentRow& b) { return a.first < b.first; });
    if (next < 1 || rows->empty() || rows->front().first > next || rows->front().id == row.id) return Done{};
    for (const store::SegmentRow& before : *rows) {
        HubAnswer said;
        const auto status = put(before, said);
        if (!status) return status.error();
        if (*status != 200 && *status != 201 && *status != 202) return Done{};
        if (*status == 201) ++m_report.sent;
        if (const auto marked = m_store.markPassedOnNow(m_route, {before.id}, m_now); !marked)
            return marked.error();
    }
    return Done{};
}

Result<Done> HubExchange::fetchAll()
{
    if (m_report.wasStopped) return Done{};
    auto place = cursor();
    if (!place) return place.error();
    while (true) {
        const auto more = fetchPage(*place);
        if (!more) return more.error();
        if (const auto kept = keepCursor(*place); !kept) return kept.error();
        if (!*more || m_report.wasStopped) return Done{};
    }
}

// Takes in one page; false when there is nothing more.
Result<bool> HubExchange::fetchPage(Cursor& cursor)
{
    std::string path =
        m_home + "/segments?after=" + std::to_string(cursor.after) + "&most=" + std::to_string(mostPageBytes);
    for (std::size_t i = 0; i < std::min(m_had.size(), mostHad); ++i)
        path += (i == 0 ? "&had=" : "-") + std::to_string(m_had[i]);
    const auto answer = withToken("GET", path, {});
    if (!answer) return answer.error();
    if (answer->status != 200 && answer->status != 204) return m_link.refusal(*answer);
    const std::string scope = answer->header("duskrow-scope");
    if (scope != cursor.scope) {
        // What may be read has changed: from the beginning, fuller forms take the place of partial ones.
        const bool wasElse = !cursor.scope.empty() && cursor.after > 0;
        cursor.scope = scope;
        if (wasElse) {
            cursor.after = 0;
            return true;
        }
    }
    if (answer->status == 204) return false;
    std::istringstream source(answer->body);
    CarriedReader items(source, Frame::ItemsOnly);
    Intake intake(m_store, m_now, m_report);
    std::vector<store::SegmentId> there;
    while (auto item = items.next()) {
        if (const auto added = intake.add(item->bytes, m_link.address()); !added) return added.error();
        if (const auto head = readHead(item->bytes)) there.push_back(head->id);
    }
    if (const auto taken = intake.finish(); !taken) return taken.error();
    // A page that was cut on its way is asked for again.
    if (items.report().ending != Ending::Whole)
        return Error{ErrorCode::HubUnreachable, {m_link.address()}, "cut"};
    if (const auto marked = m_store.markPassedOnNow(m_route, there, m_now); !marked) return marked.error();
    const std::int64_t next = numberOf(answer->header("duskrow-next"));
    const std::int64_t head = numberOf(answer->header("duskrow-head"));
    if (next <= cursor.after) return false;
    cursor.after = next;
    goesOn(cursor.after, head);
    return cursor.after < head;
}

} // namespace duskrow::sync
