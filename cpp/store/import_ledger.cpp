// SPDX-License-Identifier: MIT
#include "store/import_ledger.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace duskrow::store {

using namespace duskrow::domain;

namespace {

constexpr std::string_view ranges = "import_range/";
constexpr std::string_view names = "device/import/";

// The rows of the settings whose key begins so: the rest of the key, and the value.
Result<std::vector<std::pair<std::string, std::string>>> settingsUnder(
    Reader& reader, const std::string& begins)
{
    std::vector<std::pair<std::string, std::string>> found;
    const auto read =
        reader.eachRow("SELECT key, value FROM setting WHERE substr(key, 1, ?) = ? ORDER BY key",
            {static_cast<std::int64_t>(begins.size()), begins}, [&](SQLite::Statement& row) {
                found.emplace_back(
                    row.getColumn(0).getString().substr(begins.size()), row.getColumn(1).getString());
            });
    if (!read) return read.error();
    return found;
}

std::int64_t numberIn(std::string_view text)
{
    std::int64_t number = 0;
    std::from_chars(text.data(), text.data() + text.size(), number);
    return number;
}

} // namespace

Uuid importId(const Uuid& programme, const std::string& fileHash)
{
    const std::array parts{formatUuid(programme), std::string("import"), fileHash};
    return uuidFromName(parts);
}

std::string importRangeKey(const std::string& import, const StreamId& stream, std::int64_t first)
{
    return std::string(ranges) + import + '/' + formatHex(stream) + '/' + std::to_string(first);
}

Result<Done> noteImportNow(Store& store, const ImportNoted& import)
{
    return store.saveSettingNow("import/" + import.id, import.file);
}

Result<std::vector<ImportNoted>> importsNoted(Reader& reader)
{
    const auto found = settingsUnder(reader, std::string(names));
    if (!found) return found.error();
    std::vector<ImportNoted> imports;
    for (const auto& [id, file] : *found) imports.push_back({id, file});
    return imports;
}

Result<std::vector<ImportRange>> rangesOfImport(Reader& reader, const std::string& import)
{
    const auto found = settingsUnder(reader, std::string(ranges) + import + '/');
    if (!found) return found.error();
    std::vector<ImportRange> all;
    for (const auto& [rest, last] : *found) {
        ImportRange range{{}, 0, numberIn(last)};
        const std::size_t slash = rest.find('/');
        if (slash == std::string::npos || !parseHex(std::string_view(rest).substr(0, slash), range.stream))
            continue;
        range.first = numberIn(std::string_view(rest).substr(slash + 1));
        all.push_back(range);
    }
    std::sort(all.begin(), all.end(), [](const ImportRange& a, const ImportRange& b) {
        return a.stream != b.stream ? a.stream < b.stream : a.first < b.first;
    });
    return all;
}

} // namespace duskrow::store
