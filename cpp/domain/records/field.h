// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <limits>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "domain/base/result.h"
#include "domain/base/uuid.h"
#include "domain/records/value.h"

namespace duskrow::domain {

// What every record has. `fromNewer` keeps fields and codes this version cannot read, so that they travel on.
struct Record {
    Uuid id;
    std::map<std::string, Value> fromNewer;
    std::string withdrawn; // why; empty while the record stands
};

enum class FieldType { Flag, Integer, Text, Code, Day, Id, Decimal };

// How concurrent values of a field meet.
enum class MergeClass {
    Measured, // all kept, a difference is opened, the highest is drawn until it is settled
    Remark, // both kept, one after the other
    Label, // a fixed rule picks, the other stays in the history
};

// One row of a record's table: everything the store, the log, the merge and the formats know of a field.
struct Field {
    std::string_view name;
    FieldType type = FieldType::Text;
    MergeClass merge = MergeClass::Label;
    std::string_view unit = {};
    std::int64_t low = std::numeric_limits<std::int64_t>::min();
    std::int64_t high = std::numeric_limits<std::int64_t>::max(); // of a text: most bytes
    std::vector<std::string_view> codes = {};
    bool indexed = false;
    bool required = false; // nobody may empty it
    std::function<Value(const Record&)> get = {};
    std::function<bool(Record&, const Value&)> set = {}; // false when the value cannot be held
};

struct RecordKind {
    std::string_view name;
    std::vector<Field> fields;

    [[nodiscard]] const Field* find(std::string_view field) const;
};

// Every kind this version knows. The first field of each is `withdrawn`.
const std::vector<const RecordKind*>& recordKinds();
const RecordKind* findKind(std::string_view name);

// Which kind a struct is; specialised beside each struct.
template <typename R>
const RecordKind& kindOf();

// Whether a value may be kept in a field.
//
// Errors  Empty {field} where one must stand; OutOfRange, TooLong, UnknownCode {field ...}; NotADay {what was
// typed, field}; NotANumber {field}
//         when the value is of another type; ChangeMalformed {field} when a text is no UTF-8 or holds a NUL
Result<Done> checkValue(const Field& field, const Value& value);

// Whether a record of this version can hold a value without changing it. Wider than checkValue: a text that
// is longer than people may type (two joined remarks, a newer version's limit) is held all the same.
bool canHold(const Field& field, const Value& value);

// Writes a value into a record; what the record cannot hold goes to `fromNewer`.
void assign(const RecordKind& kind, Record& record, const std::string& field, const Value& value);

} // namespace duskrow::domain
