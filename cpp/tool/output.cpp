// SPDX-License-Identifier: MIT
#include "tool/output.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <cstdio>

#include "text/unbroken.h"

namespace duskrow::tool {

namespace {

void write(std::FILE* to, const QString& line)
{
    const QByteArray bytes = text::withoutJoiners(line).toUtf8() + '\n';
    std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), to);
}

QString joined(
    const QStringList& cells, const std::vector<qsizetype>& widths, const std::vector<int>& numbers)
{
    QString line;
    for (qsizetype i = 0; i < cells.size(); ++i) {
        const bool isNumber = std::find(numbers.begin(), numbers.end(), static_cast<int>(i)) != numbers.end();
        const qsizetype width = widths[static_cast<std::size_t>(i)];
        if (i > 0) line += QStringLiteral("  ");
        line += isNumber ? cells[i].rightJustified(width) : cells[i].leftJustified(width);
    }
    while (line.endsWith(u' ')) line.chop(1);
    return line;
}

} // namespace

QString said(const char* words)
{
    return QCoreApplication::translate("Tool", words);
}

QString inLanguage(const domain::LocalText& text)
{
    return QString::fromStdString(text.in(QLocale().name().toStdString()));
}

void print(const QString& line)
{
    write(stdout, line);
}

void printError(const QString& line)
{
    write(stderr, line);
}

bool isPrinted()
{
    return std::fflush(stdout) == 0 && std::ferror(stdout) == 0;
}

void printTable(
    const QStringList& header, const std::vector<QStringList>& rows, const std::vector<int>& numbers)
{
    std::vector<qsizetype> widths(static_cast<std::size_t>(header.size()));
    const auto widen = [&](const QStringList& cells) {
        for (qsizetype i = 0; i < cells.size(); ++i) {
            auto& width = widths[static_cast<std::size_t>(i)];
            width = std::max(width, cells[i].size());
        }
    };
    widen(header);
    for (const QStringList& row : rows) widen(row);
    print(joined(header, widths, numbers));
    for (const QStringList& row : rows) print(joined(row, widths, numbers));
}

} // namespace duskrow::tool
