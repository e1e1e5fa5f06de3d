// SPDX-License-Identifier: MIT
#include "tool/flags_json.h"

#include <QLocale>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "text/flag_text.h"
#include "text/question_text.h"
#include "tool/json_values.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

// In the order of the numbers of each check.
std::vector<const char*> numberNames(Check check)
{
    switch (check) {
    case Check::InFuture:
        return {"days_after_today"};
    case Check::BeforeSetUp:
        return {"days_before_set_up"};
    case Check::AfterTakeDown:
        return {"days_after_take_down"};
    case Check::WithoutTrap:
    case Check::DoubleEntry:
        return {"moths"};
    case Check::NightsCountedTwice:
    case Check::CountFell:
        return {"moths", "moths_before"};
    case Check::ReplacedTrapCounted:
        return {"days_after_other_set_up"};
    case Check::LongSinceEmptied:
        return {"nights"};
    case Check::MovedTrap:
        return {"distance_m", "explained_m", "accuracy_m", "trap_accuracy_m"};
    case Check::FasterThanDriving:
        return {"traps", "minutes", "distance_m", "driving_minutes"};
    case Check::FarAboveAround:
    case Check::FarBelowAround:
        return {"moths", "nights", "moths_per_week", "expected_per_week"};
    case Check::FarAboveBefore:
        return {"moths", "nights", "moths_before", "nights_before"};
    case Check::CatchUnlikelyLarge:
        return {"moths", "asked_above"};
    case Check::RoundedCounts:
        return {"rounded", "counts"};
    }
    return {};
}

Json numbersJson(const Flag& flag)
{
    Json numbers = Json::object();
    const auto names = numberNames(flag.check);
    for (std::size_t i = 0; i < std::min(names.size(), flag.numbers.size()); ++i)
        numbers[names[i]] = flag.numbers[i];
    if (flag.check == Check::WithoutTrap && flag.numbers.front() < 0) numbers["moths"] = nullptr;
    return numbers;
}

Json idJson(const Uuid& id)
{
    return id.isNil() ? Json() : Json(formatUuid(id));
}

Json titleJson(const SeasonRecords& records, const Uuid& id)
{
    const Trap* trap = trapIn(records, id);
    return trap ? Json(records.title(*trap).toStdString()) : Json();
}

Json aroundJson(const SeasonRecords& records, const Flag& flag)
{
    Json around = Json::array();
    for (const CountNearby& count : flag.around)
        around.push_back({{"trap", formatUuid(count.trap)}, {"trap_name", titleJson(records, count.trap)},
            {"visit", formatUuid(count.visit)}, {"moths_per_week", count.rate.value()},
            {"distance_m", count.distance.value()}});
    return around;
}

Json observerJson(const SeasonRecords& records, const Observer& observer)
{
    if (!observer.isKnown()) return {};
    return {{"member", idJson(observer.member)}, {"name", observerName(records, observer).toStdString()}};
}

Json flagJson(const SeasonRecords& records, const Flag& flag, ProtocolShelf& shelf)
{
    const FalseAlarms alarms = falseAlarmsOf(flag.check);
    Json others = Json::array();
    for (const Uuid& other : flag.others) others.push_back(formatUuid(other));
    return {{"check", checkNames[static_cast<std::size_t>(flag.check)]}, {"day", orNull(flag.day)},
        {"visit", idJson(flag.visit)}, {"trap", idJson(flag.trap)},
        {"trap_name", titleJson(records, flag.trap)}, {"observer", observerJson(records, flag.observer)},
        {"numbers", numbersJson(flag)},
        {"reason", text::flagReason(flag, {}, animalAt(records, flag.trap, shelf)).toStdString()},
        {"good_counts", goodCountsNames[static_cast<std::size_t>(alarms.which)]},
        {"good_counts_one_in", alarms.which == GoodCounts::OneIn ? Json(alarms.oneIn) : Json()},
        {"good_counts_words", text::goodCounts(flag.check).toStdString()},
        {"around", aroundJson(records, flag)}, {"others", std::move(others)}};
}

} // namespace

QString observerName(const SeasonRecords& records, const Observer& observer)
{
    if (!observer.typed.empty()) return QString::fromStdString(observer.typed);
    const auto found = records.names.find(observer.member);
    return found == records.names.end() ? QString() : found->second;
}

const Trap* trapIn(const SeasonRecords& records, const Uuid& id)
{
    const auto found = std::find_if(
        records.traps.begin(), records.traps.end(), [&](const Trap& trap) { return trap.id == id; });
    return found == records.traps.end() ? nullptr : &*found;
}

text::Animal animalAt(const SeasonRecords& records, const Uuid& trapId, ProtocolShelf& shelf)
{
    const Trap* trap = trapIn(records, trapId);
    const auto protocol = trap ? shelf.of(trap->pest) : Result<const Protocol*>(nullptr);
    return text::animalOf(protocol ? *protocol : nullptr, QLocale().name().toStdString());
}

namespace {

Json memberJson(const SeasonRecords& records, const Uuid& member)
{
    const auto name = records.names.find(member);
    return {{"member", idJson(member)},
        {"name", name == records.names.end() ? Json() : Json(name->second.toStdString())}};
}

Json questionJson(const SeasonRecords& records, const store::AskedQuestion& asked)
{
    Json answer;
    if (asked.answer)
        answer = {{"by", memberJson(records, asked.answer->by)}, {"on", formatDay(asked.answer->on)},
            {"words", text::answerWords(asked.answer->answer).toStdString()}};
    const Question& question = asked.question;
    return {{"question", formatUuid(question.id)}, {"about", idJson(question.subject)},
        {"trap", idJson(question.trap)}, {"trap_name", titleJson(records, question.trap)},
        {"day", orNull(question.day)}, {"words", question.words}, {"by", memberJson(records, asked.by)},
        {"on", formatDay(asked.on)}, {"asked", memberJson(records, question.member)},
        {"answer", std::move(answer)}};
}

} // namespace

std::string flagsJson(const SeasonRecords& records, const std::vector<Flag>& flags,
    const std::vector<store::AskedQuestion>& questions, LocalDay today, ProtocolShelf& shelf)
{
    Json all = Json::array();
    for (const Flag& flag : flags) all.push_back(flagJson(records, flag, shelf));
    Json open = Json::array();
    for (const store::AskedQuestion& asked : questions) open.push_back(questionJson(records, asked));
    const auto& year = records.season.year;
    const Json json{{"season", year ? Json(*year) : Json()}, {"day", formatDay(today)},
        {"flags", std::move(all)}, {"questions", std::move(open)}};
    return json.dump(2, ' ', false, Json::error_handler_t::replace);
}

} // namespace duskrow::tool
