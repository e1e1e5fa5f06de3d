// SPDX-License-Identifier: MIT
#include <QCoreApplication>

#include "store/queries.h"
#include "text/amounts.h"
#include "text/field_names.h"
#include "text/value_words.h"
#include "tool/arguments.h"
#include "tool/commands.h"
#include "tool/difference_list.h"
#include "tool/holding.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

struct DifferencesLine {
    std::string store;
    std::string keys;
    bool asJson = false;
};

// "Tuesday 7 July · Slough corner · bertha 1", as far as it is known.
QString placeOf(store::Reader& reader, const OpenField& open)
{
    QStringList parts;
    if (open.day) parts << text::day(*open.day);
    const auto trap = store::trap(reader, open.trap);
    const auto site = store::site(reader, trap && *trap ? (*trap)->site : open.site);
    if (site && *site) parts << QString::fromStdString((*site)->name);
    if (trap && *trap && !(*trap)->tag.empty()) parts << QString::fromStdString((*trap)->tag);
    return parts.join(QStringLiteral(" · "));
}

void printDifference(store::Reader& reader, const OpenField& open)
{
    const RecordKind* kind = findKind(open.kind);
    print(QStringLiteral("%1 %2: %3 (%4)")
              .arg(text::kindName(open.kind), QString::fromStdString(formatUuid(open.record)),
                  text::fieldName(open.kind, open.field), QString::fromStdString(open.field)));
    if (const QString place = placeOf(reader, open); !place.isEmpty())
        print(QStringLiteral("  %1").arg(place));
    for (const OpenValue& value : open.values) {
        const QString words = kind ? text::valueWords(*kind, open.field, value.value,
                                  [](const Uuid& id) { return QString::fromStdString(formatUuid(id)); })
                                   : QString();
        print(QStringLiteral("  %1  %2  %3")
                  .arg(words, QString::fromStdString(value.member),
                      QString::fromStdString(formatRef(value.change))));
    }
}

Result<int> sayDifferences(const DifferencesLine& line)
{
    const auto seen = lookInto(line.store, line.keys);
    if (!seen) return seen.error();
    const auto open = openFields(*seen->reader, seen->programme, seen->roster);
    if (!open) return open.error();
    const auto aside = store::asideChanges(*seen->reader);
    if (!aside) return aside.error();
    const auto stale = store::staleRulings(*seen->reader);
    if (!stale) return stale.error();
    if (line.asJson) {
        print(QString::fromStdString(differencesJson(*open, *aside, *stale).dump(2)));
        return 0;
    }
    if (open->empty()) print(QCoreApplication::translate("Tool", "Nothing differs."));
    for (const OpenField& one : *open) printDifference(*seen->reader, one);
    for (const store::AsideChange& one : *aside)
        print(QCoreApplication::translate("Tool", "Kept aside: a change of %1 %2 (%3), %4.")
                  .arg(text::kindName(one.kind), QString::fromStdString(formatUuid(one.record)),
                      QString::fromStdString(one.reason), QString::fromStdString(formatRef(one.change))));
    for (const store::OpenDifference& one : *stale)
        print(QCoreApplication::translate(
            "Tool", "A coordinator let it stand, and it was changed since: %1 %2.")
                  .arg(text::kindName(one.kind), QString::fromStdString(formatUuid(one.record))));
    return 0;
}

} // namespace

Work declareDifferences(CLI::App& line)
{
    const auto typed = std::make_shared<DifferencesLine>();
    addStore(line, typed->store);
    line.add_flag("--json", typed->asJson, "The differences for other programs");
    addKeys(line, typed->keys);
    return [typed] { return sayDifferences(*typed); };
}

} // namespace duskrow::tool
