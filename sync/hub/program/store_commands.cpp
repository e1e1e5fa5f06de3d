// SPDX-License-Identifier: MIT
#include <chrono>
#include <filesystem>
#include <iostream>

#include "sync/hub/program/commands.h"
#include "sync/hub/store/copy.h"
#include "sync/roster/invitation_code.h"

namespace duskrow::hub {

using domain::Error;
using domain::ErrorCode;

namespace {

Instant clockNow()
{
    return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

bool isFile(const std::string& where)
{
    return where.find("://") == std::string::npos;
}

// A store that is to be looked at must be there: nothing is made by looking.
Result<std::unique_ptr<Engine>> openExisting(const std::string& where)
{
    std::error_code failure;
    if (isFile(where) && !std::filesystem::exists(where, failure))
        return Error{ErrorCode::StoreMissing, {where}};
    return openEngine(where, Opening::Beside);
}

Result<int> makeProgramme(const std::string& where, const std::string& name, int days)
{
    auto engine = openEngine(where, Opening::Beside);
    if (!engine) return engine.error();
    HubStore store(std::move(*engine));
    const std::string code = sync::freshCode();
    const auto key = sync::keyOfCode(code);
    if (!key) return key.error();
    const auto until = clockNow() + std::chrono::hours(24) * days;
    const auto added = store.addFounding({key->key, name, until, {}, {}});
    if (!added) return added.error();
    std::cout << sync::shownCode(code) << std::endl;
    return 0;
}

Result<int> backup(const std::string& where, const std::string& file)
{
    std::error_code failure;
    if (std::filesystem::exists(file, failure)) return Error{ErrorCode::StoreExists, {file}};
    const auto from = openExisting(where);
    if (!from) return from.error();
    const std::string part = file + ".part";
    std::filesystem::remove(part, failure);
    {
        const auto to = openSqlite(part, Opening::Serve);
        if (!to) return to.error();
        const auto copied = copyStore(**from, **to);
        if (!copied) return copied.error();
    }
    // A backup under its own name is a whole one.
    std::filesystem::rename(part, file, failure);
    std::error_code ignored;
    std::filesystem::remove(part + ".lock", ignored);
    if (failure) return Error{ErrorCode::FileUnwritable, {file}, failure.message()};
    return 0;
}

Result<int> restore(const std::string& file, const std::string& where)
{
    const auto from = openExisting(file);
    if (!from) return from.error();
    const auto to = openEngine(where, Opening::Serve);
    if (!to) return to.error();
    auto copied = copyStore(**from, **to);
    if (!copied) return copied.error();
    const auto renewed = renewEpochs(**to, clockNow());
    if (!renewed) return renewed.error();
    return 0;
}

Result<int> check(const std::string& where)
{
    auto engine = openExisting(where);
    if (!engine) return engine.error();
    HubStore store(std::move(*engine));
    const auto report = checkStore(store);
    if (!report) return report.error();
    std::cout << report->programmes << " programmes, " << report->segments << " segments, " << report->changes
              << " changes, " << report->aside << " segments kept aside, " << report->photographs
              << " photographs\n";
    for (const std::string& fault : report->faults) std::cout << fault << '\n';
    std::cout << (report->faults.empty() ? "Sound." : "Not sound.") << std::endl;
    return report->faults.empty() ? 0 : 1;
}

struct Places {
    std::string store;
    std::string file;
    std::string name;
    int days = 30;
};

} // namespace

CommandWork declareProgrammeNew(CLI::App& line)
{
    const auto places = std::make_shared<Places>();
    line.add_option("--store", places->store, "A file, or postgresql://...")->required();
    line.add_option("--name", places->name, "Of the programme")->required();
    line.add_option("--days", places->days, "For so long the code may be used")
        ->capture_default_str()
        ->check(CLI::Range(1, 400));
    return [places] { return makeProgramme(places->store, places->name, places->days); };
}

CommandWork declareBackup(CLI::App& line)
{
    const auto places = std::make_shared<Places>();
    line.add_option("--store", places->store, "A file, or postgresql://...")->required();
    line.add_option("file", places->file, "To be made")->required();
    return [places] { return backup(places->store, places->file); };
}

CommandWork declareRestore(CLI::App& line)
{
    const auto places = std::make_shared<Places>();
    line.add_option("file", places->file, "The backup")->required();
    line.add_option("--store", places->store, "A file, or postgresql://..., that holds nothing yet")
        ->required();
    return [places] { return restore(places->file, places->store); };
}

CommandWork declareCheck(CLI::App& line)
{
    const auto places = std::make_shared<Places>();
    line.add_option("--store", places->store, "A file, or postgresql://...")->required();
    return [places] { return check(places->store); };
}

} // namespace duskrow::hub
