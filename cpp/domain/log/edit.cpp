// SPDX-License-Identifier: MIT
#include "domain/log/edit.h"

namespace duskrow::domain {

Edit creation(const RecordKind& kind, const Record& record, const Uuid& site)
{
    Edit edit{std::string(kind.name), record.id, site, {}};
    for (const Field& field : kind.fields)
        if (Value value = field.get(record); !isEmpty(value))
            edit.fields.emplace(field.name, std::move(value));
    return edit;
}

Edit correction(const RecordKind& kind, const Record& before, const Record& after, const Uuid& site)
{
    Edit edit{std::string(kind.name), before.id, site, {}};
    for (const Field& field : kind.fields)
        if (Value value = field.get(after); value != field.get(before))
            edit.fields.emplace(field.name, std::move(value));
    return edit;
}

Edit withdrawal(const RecordKind& kind, const Record& record, const Uuid& site, std::string reason)
{
    Edit edit{std::string(kind.name), record.id, site, {}};
    edit.fields.emplace("withdrawn", reason.empty() ? Value{} : Value{std::move(reason)});
    return edit;
}

Result<Done> checkEdit(const Edit& edit)
{
    const RecordKind* kind = findKind(edit.kind);
    if (!kind) return Error{ErrorCode::UnknownCode, {"kind", edit.kind}};
    if (edit.record.isNil()) return Error{ErrorCode::RecordMissing, {edit.kind}};
    for (const auto& [name, value] : edit.fields) {
        const Field* field = kind->find(name);
        if (!field) return Error{ErrorCode::UnknownCode, {edit.kind, name}};
        if (const auto checked = checkValue(*field, value); !checked) return checked.error();
    }
    return Done{};
}

} // namespace duskrow::domain
