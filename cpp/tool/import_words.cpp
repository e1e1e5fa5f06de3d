// SPDX-License-Identifier: MIT
#include "tool/import_words.h"

#include <array>

#include "text/amounts.h"
#include "text/field_names.h"
#include "text/import_text.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

constexpr std::size_t enoughWords = 20;

QString number(std::size_t count)
{
    return text::number(static_cast<std::int64_t>(count));
}

QString plain(std::string_view ascii)
{
    return QString::fromUtf8(ascii.data(), static_cast<qsizetype>(ascii.size()));
}

void printWords(const RowWords& words)
{
    const std::size_t shown = std::min(words.words.size(), enoughWords);
    for (std::size_t i = 0; i < shown; ++i) print(QStringLiteral("    ") + text::rowWord(words.words[i]));
    if (words.rows > shown)
        print(said(QT_TRANSLATE_NOOP("Tool", "    and %1 more; --json names them."))
                  .arg(number(words.rows - shown)));
}

void printColumns(const ColumnMap& columns)
{
    std::vector<QStringList> rows;
    for (const MappedColumn& column : columns)
        rows.push_back({text::fromFile(column.heading), text::columnIs(column), text::columnWhy(column)});
    printTable({said(QT_TRANSLATE_NOOP("Tool", "column")), said(QT_TRANSLATE_NOOP("Tool", "is")),
                   said(QT_TRANSLATE_NOOP("Tool", "why"))},
        rows, {});
}

Json wordsJson(const RowWords& words)
{
    Json all = Json::array();
    for (const RowWord& word : words.words)
        all.push_back({{"line", word.line}, {"column", word.column.empty() ? Json() : Json(word.column)},
            {"words", text::rowWord(word).toStdString()}});
    return all;
}

Json columnJson(const MappedColumn& column)
{
    constexpr std::array why{"heading", "unknown", "doubtful", "chosen", "day"};
    return {{"heading", column.heading}, {"field", rowOf(column.field).code},
        {"why", why.at(static_cast<std::size_t>(column.reason))},
        {"unit", column.unit ? Json(codeOf(*column.unit)) : Json()}};
}

Json formJson(const formats::ImportReading& reading)
{
    const auto& order = reading.dayOrder.order;
    const auto& mark = reading.decimalMark.mark;
    return {
        {"encoding",
            {{"is", formats::codeOf(reading.encoding.encoding)},
                {"words", text::finding(reading.encoding).toStdString()}}},
        {"delimiter",
            {{"is", formats::delimiterCode(reading.delimiter.delimiter)},
                {"words", text::finding(reading.delimiter).toStdString()}}},
        {"date_order",
            {{"is", order ? Json(*order == DayOrder::DayFirst ? "day" : "month") : Json()},
                {"words", text::finding(reading.dayOrder).toStdString()}}},
        {"decimal",
            {{"is", mark ? Json(*mark == DecimalMark::Point ? "point" : "comma") : Json()},
                {"words", text::finding(reading.decimalMark).toStdString()}}},
    };
}

} // namespace

QString countsByKind(const std::map<std::string, std::size_t, std::less<>>& counts)
{
    QStringList parts;
    for (const char* kind : {"season", "protocol_use", "district", "site", "trap", "visit"})
        if (const auto found = counts.find(kind); found != counts.end())
            parts << QStringLiteral("%1: %2").arg(text::kindName(kind), number(found->second));
    return parts.isEmpty() ? said(QT_TRANSLATE_NOOP("Tool", "nothing")) : parts.join(QStringLiteral(", "));
}

void printPreview(const ImportPreview& preview)
{
    const auto& [import, reading, terms, plan] = preview;
    const auto row = [](const QString& name, const QString& words) {
        print(QStringLiteral("%1: %2").arg(name, words));
    };
    row(said(QT_TRANSLATE_NOOP("Tool", "File")), text::fromFile(import.file));
    row(said(QT_TRANSLATE_NOOP("Tool", "Import")), QString::fromStdString(import.id));
    row(said(QT_TRANSLATE_NOOP("Tool", "Encoding")), text::finding(reading.encoding));
    row(said(QT_TRANSLATE_NOOP("Tool", "Delimiter")), text::finding(reading.delimiter));
    row(said(QT_TRANSLATE_NOOP("Tool", "Day or month first")), text::finding(reading.dayOrder));
    row(said(QT_TRANSLATE_NOOP("Tool", "Decimal mark")), text::finding(reading.decimalMark));
    row(said(QT_TRANSLATE_NOOP("Tool", "Pest")),
        said(QT_TRANSLATE_NOOP("Tool", "%1, protocol version %2, trap type %3"))
            .arg(plain(terms.pest), plain(terms.protocolVersion), plain(terms.trapType)));
    row(said(QT_TRANSLATE_NOOP("Tool", "Traps emptied at each count")), text::emptiedFinding(terms.emptied));
    print(QString());
    printColumns(reading.columns);
    print(QString());
    row(said(QT_TRANSLATE_NOOP("Tool", "Makes")), countsByKind(plan.made));
    if (const auto names = plan.newNames("district"); !names.empty())
        row(said(QT_TRANSLATE_NOOP("Tool", "New districts")), text::namesFromFile(names));
    if (const auto names = plan.newNames("site"); !names.empty())
        row(said(QT_TRANSLATE_NOOP("Tool", "New sites")), text::namesFromFile(names));
    row(said(QT_TRANSLATE_NOOP("Tool", "Rows already there")), number(plan.alreadyThere));
    row(said(QT_TRANSLATE_NOOP("Tool", "Rows said twice")), number(plan.repeated));
    if (plan.trapsWithoutSetDay > 0)
        row(said(QT_TRANSLATE_NOOP("Tool", "Traps whose day of set-up nobody says")),
            number(plan.trapsWithoutSetDay));
    row(said(QT_TRANSLATE_NOOP("Tool", "Rows to look at")), number(plan.notes.rows));
    printWords(plan.notes);
    row(said(QT_TRANSLATE_NOOP("Tool", "Rows refused")), number(plan.refused.rows));
    printWords(plan.refused);
}

Json previewJson(const ImportPreview& preview)
{
    const auto& [import, reading, terms, plan] = preview;
    Json columns = Json::array();
    for (const MappedColumn& column : reading.columns) columns.push_back(columnJson(column));
    Json makes = Json::object();
    for (const auto& [kind, count] : plan.made) makes[kind] = count;
    return {{"import", import.id}, {"file", import.file}, {"form", formJson(reading)}, {"pest", terms.pest},
        {"protocol_version", terms.protocolVersion}, {"trap_type", terms.trapType},
        {"emptied", terms.emptied ? Json(*terms.emptied) : Json()}, {"columns", std::move(columns)},
        {"makes", std::move(makes)}, {"already_there", plan.alreadyThere}, {"said_twice", plan.repeated},
        {"traps_without_set_day", plan.trapsWithoutSetDay}, {"rows_refused", plan.refused.rows},
        {"refused", wordsJson(plan.refused)}, {"rows_to_look_at", plan.notes.rows},
        {"notes", wordsJson(plan.notes)}};
}

} // namespace duskrow::tool
