// SPDX-License-Identifier: MIT
#include "domain/records/question.h"

#include "domain/records/field_table.h"

namespace duskrow::domain {

using enum MergeClass;

template <>
const RecordKind& kindOf<Question>()
{
    static const RecordKind kind{"question",
        {
            table::withdrawn(),
            table::id("record", &Question::subject),
            table::id("trap", &Question::trap),
            table::id("member", &Question::member),
            table::day("day", &Question::day, Label),
            table::text("words", &Question::words, Label, table::longText),
            table::flag("settled", &Question::settled, Label),
        }};
    return kind;
}

template <>
const RecordKind& kindOf<Answer>()
{
    static const RecordKind kind{"answer",
        {
            table::withdrawn(),
            table::id("question", &Answer::question),
            table::id("trap", &Answer::trap),
            table::day("day", &Answer::day, Label),
            table::code("answered", &Answer::answered, answeredNames, Label),
            table::text("words", &Answer::words, Remark, table::longText),
        }};
    return kind;
}

Uuid answerId(const Uuid& programme, const Uuid& question)
{
    const std::array parts{formatUuid(programme), std::string("answer"), formatUuid(question)};
    return uuidFromName(parts);
}

} // namespace duskrow::domain
