// SPDX-License-Identifier: MIT
#include <QCoreApplication>

#include "store/import_ledger.h"
#include "sync/exchange/import_run.h"
#include "text/amounts.h"
#include "text/import_text.h"
#include "tool/arguments.h"
#include "tool/commands.h"
#include "tool/import_undoing.h"
#include "tool/import_words.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

constexpr int someRefused = 1;

// Nobody but a coordinator writes for others, once there are others.
Result<Done> checkAllowed(const Holding& holding)
{
    if (holding.me.isNil()) return Error{ErrorCode::MemberUnsaid, {holding.store->path()}};
    return holding.roster.isAlone() ? Result<Done>(Done{}) : asCoordinator(holding);
}

Result<int> importTable(Holding& holding, const ImportLine& line)
{
    const auto preview = previewOf(holding, line);
    if (!preview) return preview.error();
    const DayOrderFinding& order = preview->reading.dayOrder;
    const bool isOpen = order.reason == DayOrderReason::Ambiguous || order.reason == DayOrderReason::Both;
    const bool isMade = !line.dryRun && !isOpen;
    if (!line.asJson) printPreview(*preview);
    store::ImportRun run;
    if (isMade) {
        auto done = sync::runImport(
            *holding.store, preview->plan, preview->import, importBy(holding), progressShown());
        if (!done) return done.error();
        run = *done;
    }
    if (line.asJson) {
        auto json = previewJson(*preview);
        json["dry_run"] = !isMade;
        json["kept"] = run.kept;
        json["stopped"] = run.isStopped;
        print(QString::fromStdString(
            json.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace)));
    } else if (isMade) {
        print(said(QT_TRANSLATE_NOOP("Tool", "Kept: %1 of %2 records."))
                  .arg(text::number(static_cast<std::int64_t>(run.kept)),
                      text::number(static_cast<std::int64_t>(preview->plan.size()))));
        if (run.isStopped)
            print(said(QT_TRANSLATE_NOOP("Tool", "Stopped. The same import again adds what is missing.")));
    } else {
        print(said(QT_TRANSLATE_NOOP("Tool", "Nothing was kept.")));
    }
    if (isOpen) return Error{ErrorCode::DayOrderUnsaid, {order.example}};
    return preview->plan.refused.rows > 0 || run.isStopped ? someRefused : 0;
}

Result<int> listImports(const ImportLine& line)
{
    const auto reader = openToLook(line.store, line.keys);
    if (!reader) return reader.error();
    const auto imports = store::importsNoted(**reader);
    if (!imports) return imports.error();
    nlohmann::ordered_json all = nlohmann::ordered_json::array();
    for (const store::ImportNoted& import : *imports) {
        all.push_back({{"import", import.id}, {"file", import.file}});
        if (!line.asJson)
            print(
                QStringLiteral("%1  %2").arg(QString::fromStdString(import.id), text::fromFile(import.file)));
    }
    if (line.asJson)
        print(QString::fromStdString(
            all.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace)));
    else if (imports->empty())
        print(said(QT_TRANSLATE_NOOP("Tool", "Nothing was imported on this device.")));
    return 0;
}

Result<int> import(const ImportLine& line)
{
    if (line.list) return listImports(line);
    if (line.file.empty() && line.undo.empty()) return Error{ErrorCode::Empty, {"file"}};
    auto holding = openToWrite(line.store, line.keys);
    if (!holding) return holding.error();
    if (const auto allowed = checkAllowed(*holding); !allowed) return allowed.error();
    return line.undo.empty() ? importTable(*holding, line) : undoImport(*holding, line);
}

} // namespace

Work declareImport(CLI::App& line)
{
    const auto typed = std::make_shared<ImportLine>();
    addStore(line, typed->store);
    line.add_option("FILE", typed->file, "A table as .csv, the names of its columns in the first row");
    line.add_option("--map", typed->columns,
            "What a column holds, by its name or number: \"Nearest town=site\", 4=count, "
            "\"Canopy=canopy:cm\", "
            "Phone=ignore")
        ->type_name("COLUMN=FIELD");
    line.add_option("--date-order", typed->dayOrder, "Which comes first in 03/04/2019: day or month")
        ->type_name("ORDER");
    line.add_option("--delimiter", typed->delimiter, "comma, semicolon, tab or bar (found if left out)")
        ->type_name("NAME");
    line.add_option("--decimal", typed->decimalMark, "point or comma (found if left out)")->type_name("NAME");
    line.add_option(
            "--encoding", typed->encoding, "utf-8, utf-16le, utf-16be or windows-1252 (found if left out)")
        ->type_name("NAME");
    line.add_option("--year,--season", typed->year, "The year that all days of the table lie in")
        ->type_name("YEAR");
    line.add_option("--pest", typed->pest, "The pest that was counted (the only one in use if left out)")
        ->type_name("ID");
    line.add_option(
            "--trap-type", typed->trapType, "The type of new traps (the protocol's usual one if left out)")
        ->type_name("ID");
    line.add_option("--emptied", typed->emptied,
            "Whether the traps were emptied at each count, where a row does not say: yes (if left out), no "
            "or "
            "unsaid. Only counts of emptied traps add up")
        ->type_name("ANSWER");
    line.add_flag("--dry-run", typed->dryRun, "Show what would be made or taken back, and keep nothing");
    line.add_option("--undo", typed->undo, "Take an import back, by its id or the name of its file")
        ->type_name("IMPORT");
    line.add_flag("--list", typed->list, "The imports of this device, by id and name of the file");
    line.add_flag("--json", typed->asJson, "The preview and what was kept, for other programs");
    addKeys(line, typed->keys);
    addProtocols(line, typed->protocols);
    return [typed] { return import(*typed); };
}

} // namespace duskrow::tool
