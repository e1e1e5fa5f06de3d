// SPDX-License-Identifier: MIT
#include "app/winter/winter_book.h"

#include <algorithm>
#include <map>

#include "app/session.h"
#include "app/trap_words.h"
#include "domain/base/take.h"
#include "domain/rules/bands.h"
#include "domain/rules/protocol_rules.h"
#include "protocols/protocol_files.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

class Reading {
public:
    Reading(store::SeasonRecords records, LocalDay today) : m_records(std::move(records)), m_today(today) { }

    // Errors  those of loadProtocol
    std::optional<Error> readProtocols();
    void meet(const Member& member, std::span<const NextYear> said);
    void take(const Trap& trap);
    [[nodiscard]] const std::vector<Trap>& traps() const { return m_records.traps; }
    WinterBook book();

private:
    void order(const Trap& trap, const Cooperator* keeper);
    [[nodiscard]] text::ThankYouTrap told(const Trap& trap, Cooperator& keeper) const;

    store::SeasonRecords m_records;
    LocalDay m_today;
    std::map<std::string, Protocol> m_protocols; // by pest
    std::map<Uuid, Cooperator> m_people;
    std::map<std::pair<std::string, std::string>, PestOrder> m_orders; // by pest and type
    std::int64_t m_withoutKeeper = 0;
};

std::optional<Error> Reading::readProtocols()
{
    for (const Trap& trap : m_records.traps) {
        if (trap.pest.empty() || m_protocols.contains(trap.pest)) continue;
        auto protocol = protocols::loadProtocol(QString::fromStdString(trap.pest));
        if (!protocol) return protocol.error();
        m_protocols.emplace(trap.pest, std::move(*protocol));
    }
    return std::nullopt;
}

void Reading::meet(const Member& member, std::span<const NextYear> said)
{
    Cooperator& person = m_people[member.id];
    person.member = member.id;
    person.thanks.name = QString::fromStdString(member.name);
    const int next = m_records.season.year.value_or(yearOf(m_today)) + 1;
    for (const NextYear& one : said)
        if (one.member == member.id && one.year == next) person.said = one;
}

text::ThankYouTrap Reading::told(const Trap& trap, Cooperator& keeper) const
{
    const Site* site = m_records.siteOf(trap);
    text::ThankYouTrap line{.title = site ? trapTitle(*site, trap) : tagWords(trap)};
    const TrapFacts facts = m_records.facts(trap);
    for (const Visit& visit : facts.visits) {
        if (!visit.withdrawn.empty() || !visit.day) continue;
        ++line.visits;
        auto& [first, last] = keeper.thanks.days;
        first = first ? std::min(*first, *visit.day) : *visit.day;
        last = last ? std::max(*last, *visit.day) : *visit.day;
    }
    const auto protocol = m_protocols.find(trap.pest);
    if (protocol == m_protocols.end()) return line;
    const SeasonWeek week = seasonWeekOf(m_records.season).value_or(SeasonWeek{});
    const std::chrono::year year{m_records.season.year.value_or(yearOf(m_today))};
    const TrapSeason season =
        trapSeason(facts, seasonRulesOf(protocol->second, year, week.weekStart, m_today));
    line.caught = season.total;
    line.animal = text::animalOf(&protocol->second, Session::language());
    line.isMinimum = season.isMinimum();
    const auto bands = bandsFor(protocol->second, trap.trapType);
    if (bands && season.takesBand())
        line.band = QString::fromStdString(bandOf(*bands, season.total).name.in(Session::language()));
    return line;
}

void Reading::order(const Trap& trap, const Cooperator* keeper)
{
    const auto [place, isNew] = m_orders.try_emplace({trap.pest, trap.trapType});
    PestOrder& order = place->second;
    const auto protocol = m_protocols.find(trap.pest);
    if (isNew && protocol != m_protocols.end()) {
        const std::string language = Session::language();
        order.pest = QString::fromStdString(protocol->second.name.in(language));
        const TrapType* type = protocol->second.trapType(trap.trapType);
        if (type) order.trapType = QString::fromStdString(type->name.in(language));
        order.rules = supplyRulesOf(protocol->second, trap.trapType);
    }
    if (trap.endReason == EndReason::Lost || trap.endReason == EndReason::Replaced) ++order.lost;
    // Another one stands for it, and is counted itself.
    if (trap.endReason == EndReason::Replaced || trap.endReason == EndReason::Moved) return;
    if (keeper && keeper->goesOn() == false) return;
    ++(keeper && keeper->goesOn() == true ? order.surely : order.perhaps);
}

void Reading::take(const Trap& trap)
{
    const Site* site = m_records.siteOf(trap);
    const auto keeper = site ? m_people.find(site->keeper) : m_people.end();
    if (keeper == m_people.end()) {
        ++m_withoutKeeper;
        return order(trap, nullptr);
    }
    keeper->second.thanks.traps.push_back(told(trap, keeper->second));
    order(trap, &keeper->second);
}

WinterBook Reading::book()
{
    WinterBook book;
    book.season = m_records.season;
    book.withoutKeeper = m_withoutKeeper;
    std::int64_t visits = 0;
    for (auto& [id, person] : m_people) {
        if (person.thanks.traps.empty()) continue;
        for (const text::ThankYouTrap& trap : person.thanks.traps) visits += trap.visits;
        book.cooperators.push_back(std::move(person));
    }
    for (Cooperator& person : book.cooperators) {
        person.thanks.everybodysVisits = visits;
        person.thanks.people = static_cast<std::int64_t>(book.cooperators.size());
    }
    std::ranges::stable_sort(book.cooperators, [](const Cooperator& a, const Cooperator& b) {
        return a.thanks.name.localeAwareCompare(b.thanks.name) < 0;
    });
    for (auto& [key, order] : m_orders) book.orders.push_back(std::move(order));
    return book;
}

} // namespace

Result<WinterBook> readWinter(store::Reader& reader, LocalDay today)
{
    const auto seasons = store::seasons(reader);
    if (!seasons) return seasons.error();
    const Season* latest = nullptr;
    for (const Season& season : *seasons)
        if (season.year && *season.year <= yearOf(today)) latest = &season;
    if (!latest) return WinterBook{};
    auto records = store::seasonRecords(reader, *latest, store::VisitsFor::Catch);
    if (!records) return records.error();
    const auto members = store::members(reader);
    if (!members) return members.error();
    const auto said = reader.select<NextYear>({});
    if (!said) return said.error();
    Reading reading(std::move(*records), today);
    if (auto error = reading.readProtocols()) return *error;
    for (const Member& member : *members) reading.meet(member, *said);
    for (const Trap& trap : reading.traps()) reading.take(trap);
    return reading.book();
}

} // namespace duskrow::app
