// SPDX-License-Identifier: MIT
#include "tool/arguments.h"

#include <QCoreApplication>
#include <QDate>
#include <QDir>
#include <QRegularExpression>
#include <QStandardPaths>

#include "protocols/protocol_files.h"
#include "store/store.h"

namespace duskrow::tool {

using namespace duskrow::domain;

void addStore(CLI::App& line, std::string& store)
{
    line.add_option("STORE", store, "The file of the store")->required();
}

void addKeys(CLI::App& line, std::string& folder)
{
    line.add_option("--keys", folder, "Folder of this installation's keys (your own data folder if left out)")
        ->type_name("FOLDER");
}

void addProtocols(CLI::App& line, std::string& folder)
{
    line.add_option("--protocols", folder, "Folder of protocol files to use before those carried inside")
        ->type_name("FOLDER");
}

Result<std::int64_t> wholeNumber(
    const std::string& text, const char* field, std::int64_t low, std::int64_t high)
{
    static const QRegularExpression whole(QStringLiteral("^[+-]?[0-9]+$"));
    static const QRegularExpression fraction(QStringLiteral("^[+-]?[0-9]+[.,][0-9]+$"));
    const QString typed = QString::fromStdString(text).trimmed();
    if (fraction.match(typed).hasMatch()) return Error{ErrorCode::NotWhole, {text}};
    if (!whole.match(typed).hasMatch()) return Error{ErrorCode::NotANumber, {text}};
    bool fits = false;
    const qlonglong number = typed.toLongLong(&fits);
    if (!fits || number < low || number > high)
        return Error{ErrorCode::OutOfRange, {field, std::to_string(low), std::to_string(high)}};
    return std::int64_t{number};
}

Result<LocalDay> dayOrToday(const std::string& text)
{
    if (!text.empty()) return parseDay(text);
    const QDate today = QDate::currentDate();
    return dayOf(today.year(), static_cast<unsigned>(today.month()), static_cast<unsigned>(today.day()));
}

Result<std::optional<int>> yearTyped(const std::string& text)
{
    if (text.empty()) return std::optional<int>{};
    const auto year = wholeNumber(text, "year", 1900, 2200);
    if (!year) return year.error();
    return std::optional{static_cast<int>(*year)};
}

std::string keyFolder(const std::string& named)
{
    if (!named.empty()) return named;
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation))
        .filePath(QStringLiteral("keys"))
        .toStdString();
}

Result<Protocol> protocolOf(const std::string& pest, const std::string& namedFolder)
{
    QString folder = QString::fromStdString(namedFolder);
    if (!folder.isEmpty() && !QDir(folder).exists()) return Error{ErrorCode::FileUnreadable, {namedFolder}};
    if (folder.isEmpty())
        folder = QDir(QCoreApplication::applicationDirPath())
                     .filePath(QStringLiteral("../share/duskrow/protocols"));
    return protocols::loadProtocol(QString::fromStdString(pest), folder);
}

Result<std::unique_ptr<store::Reader>> openToLook(const std::string& path, const std::string& namedKeyFolder)
{
    auto reader = store::openForReading(path);
    if (reader || reader.error().code != ErrorCode::StoreOlder) return reader;
    store::OpenHow how;
    how.keyFolder = keyFolder(namedKeyFolder);
    if (const auto opened = store::Store::open(path, how); !opened) return opened.error();
    return store::openForReading(path);
}

} // namespace duskrow::tool
