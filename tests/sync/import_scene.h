// SPDX-License-Identifier: MIT
#pragma once

#include "store/import_undo.h"
#include "store/known_records.h"
#include "store/store_scene.h"
#include "sync/exchange/import_run.h"

// A store, and tables of counts to be taken in.
namespace duskrow::tests {

inline const store::ImportNoted noted{"018f0000-0000-8000-8000-000000000001", "counts.csv"};

inline store::ImportBy by()
{
    return {idOf(2), domain::instantFromMs(1'783'980'000'000), std::chrono::minutes{-300}};
}

// Ten counts at each of so many traps.
inline std::vector<domain::CountRow> rowsOf(int traps)
{
    std::vector<domain::CountRow> rows;
    for (int trap = 0; trap < traps; ++trap)
        for (int week = 0; week < 10; ++week) {
            domain::CountRow row;
            row.line = rows.size() + 2;
            row.day = domain::dayOf(2019, 6, 8) + std::chrono::days{7 * week};
            row.year = 2019;
            row.pest = domain::Moths{trap + week};
            row.district = "North";
            row.site = "Site " + std::to_string(trap);
            rows.push_back(row);
        }
    return rows;
}

inline domain::ImportPlan planOf(const store::Store& store, store::Reader& reader, int traps)
{
    const auto known = store::knownRecords(reader, {2019});
    return domain::planImport(
        rowsOf(traps), {}, *known, {store.programme(), "bertha-armyworm", "3", "green-bucket"});
}

struct ImportScene : StoreScene {
    std::unique_ptr<store::Store> store = open();
    std::unique_ptr<store::Reader> reader = store->reader().value();

    [[nodiscard]] domain::ImportPlan plan(int traps) const { return planOf(*store, *reader, traps); }
    [[nodiscard]] store::ImportRun run(
        const domain::ImportPlan& plan, const store::Progress& progress = {}) const
    {
        const auto run = sync::runImport(*store, plan, noted, by(), progress);
        if (!run) qFatal("not kept");
        return *run;
    }
    [[nodiscard]] std::int64_t changes() const { return *reader->countOfChanges(); }
    [[nodiscard]] std::vector<domain::Visit> visits() const { return *reader->select<domain::Visit>({}); }
};

} // namespace duskrow::tests
