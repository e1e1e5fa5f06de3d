// SPDX-License-Identifier: MIT
#include "tool/import_file.h"

#include <QFile>
#include <QFileInfo>

#include "store/known_records.h"
#include "store/queries.h"
#include "tool/arguments.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

constexpr qsizetype longestName = 40; // characters; it goes into the reason of an undoing

Error unknown(const char* field, const std::string& typed, const char* known)
{
    return {ErrorCode::UnknownCode, {field, typed, known}};
}

Result<std::string> bytesOf(const std::string& path)
{
    QFile file(QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly)) return Error{ErrorCode::FileUnreadable, {path}};
    constexpr qint64 most = qint64{formats::mostImportMiB} * 1024 * 1024;
    const QByteArray bytes = file.read(most + 1);
    if (file.error() != QFileDevice::NoError) return Error{ErrorCode::FileUnreadable, {path}};
    if (bytes.size() > most)
        return Error{ErrorCode::FileTooLarge, {path, std::to_string(formats::mostImportMiB)}};
    return bytes.toStdString();
}

// "Site name=site"; the heading may itself hold the sign.
Result<std::vector<ColumnChoice>> columnsTyped(const std::vector<std::string>& typed)
{
    std::vector<ColumnChoice> choices;
    for (const std::string& one : typed) {
        const std::size_t sign = one.rfind('=');
        if (sign == std::string::npos) return unknown("column", one, "COLUMN=FIELD");
        choices.push_back({one.substr(0, sign), one.substr(sign + 1)});
    }
    return choices;
}

Result<formats::ImportChoices> choicesOf(const ImportLine& line)
{
    formats::ImportChoices choices;
    const auto year = yearTyped(line.year);
    if (!year) return year.error();
    choices.year = *year;
    auto columns = columnsTyped(line.columns);
    if (!columns) return columns.error();
    choices.columns = std::move(*columns);
    if (!line.encoding.empty()) {
        choices.encoding = formats::encodingNamed(line.encoding);
        if (!choices.encoding)
            return unknown("encoding", line.encoding, "utf-8, utf-16le, utf-16be, windows-1252");
    }
    if (!line.delimiter.empty()) {
        choices.delimiter = formats::delimiterNamed(line.delimiter);
        if (!choices.delimiter) return unknown("delimiter", line.delimiter, "comma, semicolon, tab, bar");
    }
    if (line.dayOrder == "day" || line.dayOrder == "month")
        choices.dayOrder = line.dayOrder == "day" ? DayOrder::DayFirst : DayOrder::MonthFirst;
    else if (!line.dayOrder.empty())
        return unknown("date_order", line.dayOrder, "day, month");
    if (line.decimalMark == "point" || line.decimalMark == "comma")
        choices.decimalMark = line.decimalMark == "point" ? DecimalMark::Point : DecimalMark::Comma;
    else if (!line.decimalMark.empty())
        return unknown("decimal", line.decimalMark, "point, comma");
    return choices;
}

// The pest that was named, else the only one that the programme has in use.
Result<std::string> pestOf(const ImportLine& line, const KnownRecords& known)
{
    if (!line.pest.empty()) return line.pest;
    std::set<std::string> pests;
    for (const ProtocolUse& use : known.uses)
        if (use.withdrawn.empty()) pests.insert(use.pest);
    if (pests.size() != 1) return Error{ErrorCode::Empty, {"pest_in_use"}};
    return *pests.begin();
}

// Whether the traps were emptied at each count, where a row does not say.
Result<std::optional<bool>> emptiedTyped(const std::string& typed)
{
    if (typed == "unsaid") return std::optional<bool>();
    if (typed.empty() || typed == "yes" || typed == "no") return std::optional(typed != "no");
    return unknown("emptied", typed, "yes, no, unsaid");
}

Result<ImportTerms> termsOf(const ImportLine& line, const KnownRecords& known, const Uuid& programme)
{
    const auto emptied = emptiedTyped(line.emptied);
    if (!emptied) return emptied.error();
    const auto pest = pestOf(line, known);
    if (!pest) return pest.error();
    const auto protocol = protocolOf(*pest, line.protocols);
    if (!protocol) return protocol.error();
    ImportTerms terms{programme, protocol->id, protocol->version, protocol->trapTypes.front().id};
    terms.emptied = *emptied;
    if (line.trapType.empty()) return terms;
    std::string all;
    for (const auto& type : protocol->trapTypes) {
        all += (all.empty() ? "" : ", ") + type.id;
        if (type.id == line.trapType) terms.trapType = type.id;
    }
    if (terms.trapType != line.trapType)
        return Error{ErrorCode::UnknownCode, {"trap_type", line.trapType, all}};
    return terms;
}

} // namespace

Result<ImportPreview> previewOf(Holding& holding, const ImportLine& line)
{
    auto choices = choicesOf(line);
    if (!choices) return choices.error();
    const auto seasons = store::seasons(*holding.reader);
    if (!seasons) return seasons.error();
    if (!seasons->empty()) choices->weekStart = seasons->back().weekStart;
    const auto bytes = bytesOf(line.file);
    if (!bytes) return bytes.error();
    auto reading = formats::readCounts(*bytes, *choices);
    if (!reading && reading.error().code == ErrorCode::TableEmpty)
        return Error{ErrorCode::TableEmpty, {line.file}};
    if (!reading) return reading.error();
    std::set<int> years;
    for (const CountRow& row : reading->rows) years.insert(row.year);
    const auto known = store::knownRecords(*holding.reader, years);
    if (!known) return known.error();
    const Uuid& programme = holding.store->programme();
    const auto terms = termsOf(line, *known, programme);
    if (!terms) return terms.error();
    ImportPreview preview;
    preview.import.id = formatUuid(store::importId(programme, reading->hash));
    preview.import.file =
        QFileInfo(QString::fromStdString(line.file)).fileName().left(longestName).toStdString();
    preview.terms = *terms;
    preview.plan = planImport(std::move(reading->rows), std::move(reading->refused), *known, *terms);
    preview.reading = std::move(*reading);
    return preview;
}

} // namespace duskrow::tool
