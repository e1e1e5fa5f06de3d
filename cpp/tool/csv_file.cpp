// SPDX-License-Identifier: MIT
#include "tool/csv_file.h"

#include <QFile>

#include <algorithm>

namespace duskrow::tool {

using namespace duskrow::domain;
using formats::CsvRow;

namespace {

constexpr qint64 largestTable = 10 * 1024 * 1024; // bytes; no table written by hand is larger

bool hasNothing(const CsvRow& row)
{
    return std::all_of(row.cells.begin(), row.cells.end(),
        [](const std::string& cell) { return cell.find_first_not_of(" \t") == std::string::npos; });
}

} // namespace

Result<std::vector<CsvRow>> rowsOfFile(const std::string& path)
{
    QFile file(QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly) || file.size() > largestTable)
        return Error{ErrorCode::FileUnreadable, {path}};
    auto rows = formats::readCsv(file.readAll().toStdString());
    if (rows) std::erase_if(*rows, hasNothing);
    return rows;
}

std::optional<std::size_t> columnOf(const CsvRow& header, std::initializer_list<const char*> names)
{
    for (std::size_t i = 0; i < header.cells.size(); ++i) {
        const QString cell = QString::fromStdString(header.cells[i]).trimmed();
        for (const char* name : names)
            if (cell.compare(QLatin1String(name), Qt::CaseInsensitive) == 0) return i;
    }
    return std::nullopt;
}

} // namespace duskrow::tool
