// SPDX-License-Identifier: MIT
#pragma once

#include <QtGlobal>

#include "domain/records/programme.h"
#include "domain/records/roster.h"
#include "domain/records/trap.h"
#include "domain/records/visit.h"
#include "domain/records/walk.h"
#include "store/queries.h"
#include "store/store.h"

// Records of a small programme, and all records of a store as text.
namespace duskrow::tests {

inline domain::Moment noonOf(int month, unsigned day)
{
    const domain::LocalDay date = domain::dayOf(2026, static_cast<unsigned>(month), day);
    const std::chrono::minutes offset{-360};
    const domain::Instant at{
        std::chrono::sys_days{date.time_since_epoch()} + std::chrono::hours{12} - offset};
    return {date, at, offset};
}

inline const domain::Moment today = noonOf(7, 14);

// A value that must be there.
template <typename T>
T got(domain::Result<T> result)
{
    if (!result)
        qFatal("error %d: %s %s", static_cast<int>(result.error().code),
            result.error().args.empty() ? "" : result.error().args.front().c_str(),
            result.error().detail.c_str());
    return std::move(*result);
}

template <typename T>
std::optional<domain::ErrorCode> codeOf(const domain::Result<T>& result)
{
    return result ? std::optional<domain::ErrorCode>() : result.error().code;
}

template <typename R>
void addRows(store::Reader& reader, std::string& all)
{
    store::Selection everything;
    everything.withWithdrawn = true;
    for (const R& record : got(reader.select<R>(everything))) {
        domain::Change written;
        written.kind = domain::kindOf<R>().name;
        written.record = record.id;
        for (const auto& [name, value] : domain::creation(record, {}).fields)
            written.fields[name] = {value, {}};
        all += domain::canonicalJson(written) + '\n';
    }
}

// Every record as it stands, of all kinds.
inline std::string dumpOf(const store::Store& store)
{
    const auto reader = got(store.reader());
    std::string all;
    using namespace domain;
    addRows<Programme>(*reader, all);
    addRows<Season>(*reader, all);
    addRows<District>(*reader, all);
    addRows<Member>(*reader, all);
    addRows<Device>(*reader, all);
    addRows<Invitation>(*reader, all);
    addRows<Site>(*reader, all);
    addRows<Trap>(*reader, all);
    addRows<Service>(*reader, all);
    addRows<Loan>(*reader, all);
    addRows<Visit>(*reader, all);
    addRows<Sample>(*reader, all);
    addRows<Walk>(*reader, all);
    addRows<Frame>(*reader, all);
    addRows<Decision>(*reader, all);
    return all;
}

inline domain::Site siteNamed(const std::string& name)
{
    domain::Site site;
    site.id = store::newId(today.at);
    site.name = name;
    site.season = store::newId(today.at); // whoever says its season made it
    return site;
}

inline domain::Trap trapAt(const domain::Site& site, const std::string& tag)
{
    domain::Trap trap;
    trap.id = store::newId(today.at);
    trap.site = site.id;
    trap.season = site.season;
    trap.tag = tag;
    trap.pest = "bertha-armyworm";
    trap.setDay = domain::dayOf(2026, 6, 1);
    return trap;
}

inline domain::Visit visitTo(const domain::Trap& trap, std::int64_t moths)
{
    domain::Visit visit;
    visit.id = store::newId(today.at);
    visit.trap = trap.id;
    visit.day = today.day;
    visit.outcome = domain::Outcome::Counted;
    visit.pest = domain::Moths{moths};
    visit.remark = std::to_string(moths) + " in the bucket";
    return visit;
}

inline std::int64_t countedIn(store::Store& store, const domain::Uuid& visit)
{
    const auto reader = got(store.reader());
    const auto found = got(store::visit(*reader, visit));
    return found && found->pest ? found->pest->value() : -1;
}

} // namespace duskrow::tests
