// SPDX-License-Identifier: MIT
#include <QCoreApplication>

#include "text/error_text.h"
#include "tool/commands.h"
#include "tool/output.h"

using namespace duskrow;

namespace {

constexpr int refused = 2;

QString misread(const CLI::ParseError& error, const CLI::App& line)
{
    QString program = QString::fromStdString(line.get_name());
    for (const CLI::App* meant = &line; !meant->get_subcommands().empty();) {
        meant = meant->get_subcommands().back();
        program += QLatin1Char(' ') + QString::fromStdString(meant->get_name());
    }
    QString what = QString::fromUtf8(error.what()).simplified();
    while (what.endsWith(u'.')) what.chop(1);
    return QCoreApplication::translate("Tool", "%1. See %2 --help.").arg(what, program);
}

int finished(const domain::Result<int>& code)
{
    if (!code) {
        tool::printError(text::sentence(code.error()));
        return refused;
    }
    if (tool::isPrinted()) return *code;
    tool::printError(text::sentence({domain::ErrorCode::FileUnwritable, {"-"}}));
    return refused;
}

} // namespace

int main(int argc, char** argv)
{
    QCoreApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("duskrow"));

    CLI::App line(
        "Look into, check and export a store of Duskrow, and make the invented district.", "duskrow-tool");
    line.require_subcommand(1);
    line.failure_message([](const CLI::App*, const CLI::Error&) { return std::string(); });
    std::vector<std::pair<CLI::App*, tool::Work>> works;
    for (const tool::Command& command : tool::commands()) {
        CLI::App* own = line.add_subcommand(command.name, command.summary);
        works.emplace_back(own, command.declare(*own));
    }
    try {
        line.parse(argc, argv);
    } catch (const CLI::CallForHelp& help) {
        return line.exit(help);
    } catch (const CLI::ParseError& error) {
        tool::printError(misread(error, line));
        return refused;
    }
    for (const auto& [own, work] : works)
        if (own->parsed()) return finished(work());
    return refused;
}
