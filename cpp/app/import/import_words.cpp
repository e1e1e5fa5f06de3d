// SPDX-License-Identifier: MIT
#include "app/import/import_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

#include "text/amounts.h"
#include "text/field_names.h"
#include "text/import_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr std::size_t enoughWords = 30;

struct ImportWords {
    Q_DECLARE_TR_FUNCTIONS(Import)
};

QString plain(std::string_view ascii)
{
    return QString::fromUtf8(ascii.data(), static_cast<qsizetype>(ascii.size()));
}

QString number(std::size_t count)
{
    return text::number(static_cast<std::int64_t>(count));
}

bool isHeight(ImportField field)
{
    return field == ImportField::Entrance || field == ImportField::Canopy;
}

constexpr std::array heightUnits{HeightUnit::Centimetre, HeightUnit::Inch, HeightUnit::Millimetre};

QString kindWords(const std::string& kind, std::size_t count)
{
    return QStringLiteral("%1: %2").arg(text::kindName(kind), number(count));
}

constexpr std::array kindsInOrder{"season", "protocol_use", "district", "site", "trap", "visit"};

} // namespace

std::vector<Row> formRows(const formats::ImportReading& reading)
{
    const auto& order = reading.dayOrder.order;
    const auto& mark = reading.decimalMark.mark;
    std::vector<Row> rows;
    rows.push_back({.key = QStringLiteral("encoding"),
        .title = ImportWords::tr("Letters"),
        .besides = text::finding(reading.encoding),
        .subject = plain(formats::codeOf(reading.encoding.encoding))});
    rows.push_back({.key = QStringLiteral("delimiter"),
        .title = ImportWords::tr("Between the columns"),
        .besides = text::finding(reading.delimiter),
        .subject = plain(formats::delimiterCode(reading.delimiter.delimiter))});
    rows.push_back({.key = QStringLiteral("order"),
        .title = ImportWords::tr("Day or month first"),
        .besides = text::finding(reading.dayOrder),
        .subject = !order                  ? QString()
            : *order == DayOrder::DayFirst ? QStringLiteral("day")
                                           : QStringLiteral("month")});
    rows.push_back({.key = QStringLiteral("decimal"),
        .title = ImportWords::tr("Decimal mark"),
        .besides = text::finding(reading.decimalMark),
        .subject = !mark                  ? QString()
            : *mark == DecimalMark::Point ? QStringLiteral("point")
                                          : QStringLiteral("comma")});
    return rows;
}

std::vector<Row> columnRows(const formats::ImportReading& reading)
{
    std::vector<Row> rows;
    for (std::size_t i = 0; i < reading.columns.size(); ++i) {
        const MappedColumn& column = reading.columns[i];
        QStringList samples;
        for (const auto& sample : reading.samples)
            if (i < sample.size() && !sample[i].empty() && samples.size() < 3)
                samples << text::fromFile(sample[i]);
        QString code =
            column.field == ImportField::Ignored ? QStringLiteral("ignore") : plain(rowOf(column.field).code);
        if (column.unit) code += QLatin1Char(':') + plain(codeOf(*column.unit));
        const QString heading = text::fromFile(column.heading);
        rows.push_back({.key = QString::number(i + 1),
            .title = heading.isEmpty() ? ImportWords::tr("Column %1").arg(i + 1) : heading,
            .besides = text::columnIs(column),
            .detail = text::columnWhy(column),
            .flags = samples,
            .subject = code});
    }
    return rows;
}

std::vector<Row> makesRows(const ImportPlan& plan)
{
    std::vector<Row> rows;
    for (const char* kind : kindsInOrder)
        if (const auto found = plan.made.find(kind); found != plan.made.end() && found->second > 0)
            rows.push_back({.title = ImportWords::tr("New: %1").arg(text::kindName(kind)),
                .besides = number(found->second)});
    if (rows.empty())
        rows.push_back({.title = ImportWords::tr("New"), .besides = ImportWords::tr("nothing")});
    if (const auto names = plan.newNames("district"); !names.empty())
        rows.push_back(
            {.title = ImportWords::tr("Names of new districts"), .besides = text::namesFromFile(names)});
    if (const auto names = plan.newNames("site"); !names.empty())
        rows.push_back(
            {.title = ImportWords::tr("Names of new sites"), .besides = text::namesFromFile(names)});
    if (plan.alreadyThere > 0)
        rows.push_back(
            {.title = ImportWords::tr("Rows that are here already"), .besides = number(plan.alreadyThere)});
    if (plan.repeated > 0)
        rows.push_back({.title = ImportWords::tr("Rows said twice"), .besides = number(plan.repeated)});
    if (plan.trapsWithoutSetDay > 0)
        rows.push_back({.title = ImportWords::tr("Traps without a day of set-up"),
            .besides = number(plan.trapsWithoutSetDay)});
    rows.push_back({.title = ImportWords::tr("Rows refused"), .besides = number(plan.refused.rows)});
    return rows;
}

std::vector<Row> wordRows(const RowWords& words)
{
    std::vector<Row> rows;
    const std::size_t shown = std::min(words.words.size(), enoughWords);
    for (std::size_t i = 0; i < shown; ++i) rows.push_back({.title = text::rowWord(words.words[i])});
    return rows;
}

QString moreWords(const RowWords& words)
{
    const std::size_t shown = std::min(words.words.size(), enoughWords);
    return words.rows > shown ? ImportWords::tr("and %1 more").arg(number(words.rows - shown)) : QString();
}

QStringList columnCodes()
{
    QStringList codes{QStringLiteral("ignore")};
    for (const ImportFieldRow& row : importFields()) {
        if (!isHeight(row.field)) codes << plain(row.code);
        for (const HeightUnit unit : heightUnits)
            if (isHeight(row.field)) codes << plain(row.code) + QLatin1Char(':') + plain(codeOf(unit));
    }
    return codes;
}

QStringList columnNames()
{
    QStringList names;
    const auto add = [&](ImportField field, std::optional<HeightUnit> unit) {
        names << text::columnIs({{}, field, ColumnReason::Chosen, {}, unit});
    };
    add(ImportField::Ignored, {});
    for (const ImportFieldRow& row : importFields()) {
        if (!isHeight(row.field)) add(row.field, {});
        for (const HeightUnit unit : heightUnits)
            if (isHeight(row.field)) add(row.field, unit);
    }
    return names;
}

QString countsByKind(const std::map<std::string, std::size_t>& counts)
{
    QStringList parts;
    for (const char* kind : kindsInOrder)
        if (const auto found = counts.find(kind); found != counts.end() && found->second > 0)
            parts << kindWords(kind, found->second);
    return parts.isEmpty() ? ImportWords::tr("nothing") : parts.join(QStringLiteral(", "));
}

} // namespace duskrow::app
