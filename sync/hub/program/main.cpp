// SPDX-License-Identifier: MIT
#include <QCoreApplication>

#include <csignal>
#include <iostream>
#include <sodium.h>

#include "sync/hub/program/commands.h"
#include "text/error_text.h"

using namespace duskrow;

namespace {

constexpr int refused = 2;

int finished(const domain::Result<int>& code)
{
    if (code) return *code;
    std::cerr << text::sentence(code.error()).toStdString() << '\n';
    if (!code.error().detail.empty()) std::cerr << "  (" << code.error().detail << ")\n";
    return refused;
}

} // namespace

int main(int argc, char** argv)
{
    // Before there is a second thread: serving waits for these itself.
    sigset_t ends;
    sigemptyset(&ends);
    sigaddset(&ends, SIGTERM);
    sigaddset(&ends, SIGINT);
    pthread_sigmask(SIG_BLOCK, &ends, nullptr);
    std::signal(SIGPIPE, SIG_IGN);
    if (sodium_init() < 0) return refused;
    QCoreApplication application(argc, argv);

    CLI::App line("The server that devices of Duskrow exchange through.", "duskrow-hub");
    line.require_subcommand(1);
    CLI::App* serve = line.add_subcommand("serve", "Serve until SIGTERM or SIGINT");
    CLI::App* programme = line.add_subcommand("programme", "Programmes of this hub");
    programme->require_subcommand(1);
    CLI::App* made = programme->add_subcommand("new", "Make a code that founds one programme");
    CLI::App* backup =
        line.add_subcommand("backup", "Copy a store into a new file, also while a hub serves from it");
    CLI::App* restore = line.add_subcommand("restore", "Copy a backup into an empty store");
    CLI::App* check = line.add_subcommand(
        "check", "Read everything in a store that no hub writes to, and say what is wrong");
    const std::vector<std::pair<CLI::App*, hub::CommandWork>> works{{serve, hub::declareServe(*serve)},
        {made, hub::declareProgrammeNew(*made)}, {backup, hub::declareBackup(*backup)},
        {restore, hub::declareRestore(*restore)}, {check, hub::declareCheck(*check)}};
    try {
        line.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        const int code = line.exit(error);
        return code == 0 ? 0 : refused;
    }
    for (const auto& [command, work] : works)
        if (command->parsed()) return finished(work());
    return refused;
}
