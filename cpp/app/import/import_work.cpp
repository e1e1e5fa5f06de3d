// SPDX-License-Identifier: MIT
#include "app/import/import_work.h"

#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <set>

#include "store/known_records.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr qsizetype longestName = 40; // characters; it goes into the reason of an undoing

// Whether a choice about the columns may mend it.
bool isAboutColumns(const Error& error)
{
    return error.code == ErrorCode::ColumnMissing || error.code == ErrorCode::ColumnTwice;
}

std::optional<ImportTerms> termsOf(const ImportAsk& ask)
{
    if (ask.pest.empty() && ask.pests.size() == 1) return ask.pests.front();
    const auto found = std::ranges::find(ask.pests, ask.pest, &ImportTerms::pest);
    return found == ask.pests.end() ? std::nullopt : std::optional(*found);
}

} // namespace

Result<std::string> importBytes(const std::string& path)
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

std::string importName(const std::string& path)
{
    return QFileInfo(QString::fromStdString(path)).fileName().left(longestName).toStdString();
}

Result<std::shared_ptr<const ImportSeen>> readImport(store::Reader& reader, const ImportAsk& ask)
{
    const auto bytes = importBytes(ask.path);
    if (!bytes) return bytes.error();
    const auto seen = std::make_shared<ImportSeen>();
    seen->import.file = importName(ask.path);
    auto reading = formats::readCounts(*bytes, ask.choices);
    if (!reading && isAboutColumns(reading.error())) {
        seen->missing = reading.error();
        reading = formats::lookAtTable(*bytes, ask.choices);
    }
    if (!reading && reading.error().code == ErrorCode::TableEmpty)
        return Error{ErrorCode::TableEmpty, {seen->import.file}};
    if (!reading) return reading.error();
    seen->import.id = formatUuid(store::importId(ask.programme, reading->hash));
    auto terms = termsOf(ask);
    if (terms) terms->emptied = ask.emptied;
    if (!terms && !seen->missing) seen->missing = Error{ErrorCode::Empty, {"pest_in_use"}};
    if (!seen->missing) {
        std::set<int> years;
        for (const CountRow& row : reading->rows) years.insert(row.year);
        const auto known = store::knownRecords(reader, years);
        if (!known) return known.error();
        seen->plan = planImport(std::move(reading->rows), std::move(reading->refused), *known, *terms);
    }
    seen->reading = std::move(*reading);
    return std::shared_ptr<const ImportSeen>(seen);
}

} // namespace duskrow::app
