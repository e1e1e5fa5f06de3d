// SPDX-License-Identifier: MIT
#pragma once

#include "domain/log/change.h"

namespace duskrow::domain {

// What a person did to one record, before it has a number: the store adds stream, number and base references.
struct Edit {
    std::string kind;
    Uuid record;
    Uuid site;
    ByName<Value> fields;
};

// Every filled field of a new record.
Edit creation(const RecordKind& kind, const Record& record, const Uuid& site);

// The fields in which `after` differs from `before`; empty `fields` when nothing changed.
Edit correction(const RecordKind& kind, const Record& before, const Record& after, const Uuid& site);

// Takes a record back, with a reason; an empty reason lets it stand again.
Edit withdrawal(const RecordKind& kind, const Record& record, const Uuid& site, std::string reason);

template <typename R>
Edit creation(const R& record, const Uuid& site)
{
    return creation(kindOf<R>(), record, site);
}

template <typename R>
Edit correction(const R& before, const R& after, const Uuid& site)
{
    return correction(kindOf<R>(), before, after, site);
}

template <typename R>
Edit withdrawal(const R& record, const Uuid& site, std::string reason)
{
    return withdrawal(kindOf<R>(), record, site, std::move(reason));
}

// Whether every value of an edit may be kept.
//
// Errors  those of checkValue; UnknownCode when the kind or a field is unknown; RecordMissing without an id
Result<Done> checkEdit(const Edit& edit);

} // namespace duskrow::domain
