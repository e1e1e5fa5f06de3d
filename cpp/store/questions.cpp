// SPDX-License-Identifier: MIT
#include "store/questions.h"

#include <algorithm>
#include <utility>

#include "store/segments.h"

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

// What counts of a record, in the order in which it was said: what others wrote there beside their rights
// bears nobody's name.
Result<std::vector<Change>> countingOf(Reader& reader, const Roster& roster, const Uuid& record)
{
    auto changes = reader.changesOf(record);
    if (!changes) return changes.error();
    const std::vector<Standing> standings = roster.weigh(std::span<const Change>(*changes));
    std::vector<Change> counting;
    for (std::size_t i = 0; i < changes->size(); ++i)
        if (standings[i] == Standing::Counts) counting.push_back(std::move((*changes)[i]));
    std::ranges::stable_sort(counting, {}, &Change::at);
    return counting;
}

constexpr const char* isOpen = "(settled IS NULL OR settled = 0)";

Result<std::optional<GivenAnswer>> answerTo(Reader& reader, const Roster& roster, const Uuid& question)
{
    auto answers =
        reader.select<Answer>({.where = "question = ?", .binds = {formatUuid(question)}, .order = "id"});
    if (!answers) return answers.error();
    if (answers->empty()) return std::optional<GivenAnswer>();
    const auto said = countingOf(reader, roster, answers->back().id);
    if (!said) return said.error();
    if (said->empty()) return std::optional<GivenAnswer>();
    const Change& last = said->back();
    return std::optional(GivenAnswer{std::move(answers->back()), last.author, dayOf(last.at, last.offset)});
}

Result<std::vector<AskedQuestion>> asked(Reader& reader, const Selection& wanted)
{
    const auto questions = reader.select<Question>(wanted);
    if (!questions) return questions.error();
    std::vector<AskedQuestion> all;
    std::optional<Roster> roster;
    for (const Question& question : *questions) {
        const auto changes = reader.changesOf(question.id);
        if (!changes) return changes.error();
        if (changes->empty()) continue;
        if (!roster) {
            const auto read = rosterOf(reader, changes->front().programme);
            if (!read) return read.error();
            roster = *read;
        }
        const auto said = countingOf(reader, *roster, question.id);
        if (!said) return said.error();
        if (said->empty()) continue;
        auto answer = answerTo(reader, *roster, question.id);
        if (!answer) return answer.error();
        const Change& made = said->front();
        all.push_back({question, made.site, made.author, dayOf(made.at, made.offset), std::move(*answer)});
    }
    return all;
}

} // namespace

Result<std::vector<AskedQuestion>> openQuestions(Reader& reader)
{
    return asked(reader, {.where = isOpen, .order = "day, id"});
}

Result<std::vector<AskedQuestion>> openQuestionsOn(Reader& reader, const Uuid& record)
{
    return asked(reader,
        {.where = std::string(isOpen) + " AND record = ?", .binds = {formatUuid(record)}, .order = "id"});
}

} // namespace duskrow::store
