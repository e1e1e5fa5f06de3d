// SPDX-License-Identifier: MIT
#include "tool/import_undoing.h"

#include <csignal>

#include "store/import_undo.h"
#include "text/amounts.h"
#include "text/field_names.h"
#include "tool/import_words.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

volatile std::sig_atomic_t isStopWanted = 0;

Result<store::ImportNoted> importNamed(store::Reader& reader, const std::string& name)
{
    const auto imports = store::importsNoted(reader);
    if (!imports) return imports.error();
    std::vector<store::ImportNoted> found;
    for (const store::ImportNoted& import : *imports)
        if (import.id == name || import.file == name) found.push_back(import);
    if (found.empty()) return Error{ErrorCode::NothingToUndo, {name}};
    if (found.size() > 1) return Error{ErrorCode::NameAmbiguous, {"import", name}};
    return found.front();
}

QString whyStays(const store::StayingRecord& staying)
{
    const char* words = staying.reason == store::StayReason::Changed
        ? QT_TRANSLATE_NOOP("Tool", "    %1 %2 stays: it was changed since.")
        : QT_TRANSLATE_NOOP("Tool", "    %1 %2 stays: something that stays belongs to it.");
    return said(words).arg(text::kindName(staying.kind), QString::fromStdString(formatUuid(staying.record)));
}

nlohmann::ordered_json undoJson(const store::ImportNoted& import, const store::ImportUndo& undo)
{
    nlohmann::ordered_json withdrawn = nlohmann::ordered_json::object();
    for (const auto& [kind, count] : undo.withdrawn) withdrawn[kind] = count;
    nlohmann::ordered_json staying = nlohmann::ordered_json::array();
    for (const store::StayingRecord& one : undo.staying)
        staying.push_back({{"kind", one.kind}, {"id", formatUuid(one.record)},
            {"why", one.reason == store::StayReason::Changed ? "changed" : "in_use"}});
    return {{"import", import.id}, {"file", import.file}, {"taken_back", std::move(withdrawn)},
        {"staying", std::move(staying)}};
}

} // namespace

store::ImportBy importBy(const Holding& holding)
{
    const Moment now = rightNow();
    return {holding.me, now.at, now.offset};
}

store::Progress progressShown()
{
    isStopWanted = 0;
    std::signal(SIGINT, [](int) { isStopWanted = 1; });
    return [](std::int64_t done, std::int64_t all) {
        if (done < all)
            printError(
                said(QT_TRANSLATE_NOOP("Tool", "%1 of %2 kept")).arg(text::number(done), text::number(all)));
        return isStopWanted == 0;
    };
}

Result<int> undoImport(Holding& holding, const ImportLine& line)
{
    const auto import = importNamed(*holding.reader, line.undo);
    if (!import) return import.error();
    const auto undo = store::planUndo(*holding.reader, *import);
    if (!undo) return undo.error();
    std::size_t kept = 0;
    if (!line.dryRun) {
        const auto run = store::runUndo(*holding.store, *undo, *import, importBy(holding), progressShown());
        if (!run) return run.error();
        kept = run->kept;
    }
    if (line.asJson) {
        auto json = undoJson(*import, *undo);
        json["kept"] = kept;
        print(QString::fromStdString(json.dump(2)));
        return 0;
    }
    const std::map<std::string, std::size_t, std::less<>> withdrawn(
        undo->withdrawn.begin(), undo->withdrawn.end());
    print(said(QT_TRANSLATE_NOOP("Tool", "Of the import %1 is taken back: %2"))
              .arg(QString::fromStdString(import->id), countsByKind(withdrawn)));
    for (const store::StayingRecord& one : undo->staying) print(whyStays(one));
    if (line.dryRun) print(said(QT_TRANSLATE_NOOP("Tool", "A dry run: nothing was taken back.")));
    return 0;
}

} // namespace duskrow::tool
