// SPDX-License-Identifier: MIT
#include "app/exchange/record_words.h"

#include <QCoreApplication>

#include "app/exchange/exchange_words.h"
#include "app/trap_words.h"
#include "store/queries.h"
#include "text/amounts.h"
#include "text/field_names.h"
#include "text/upper_first.h"
#include "text/value_words.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct RecordText {
    Q_DECLARE_TR_FUNCTIONS(RecordText)
};

} // namespace

std::string textIn(const Folded& folded, const char* field)
{
    const auto found = folded.values.find(field);
    const auto* held = found == folded.values.end() ? nullptr : std::get_if<std::string>(&found->second);
    return held ? *held : std::string();
}

Uuid idIn(const Folded& folded, const char* field)
{
    return parseUuid(textIn(folded, field)).value_or(Uuid{});
}

QString RecordWords::placeOf(const Uuid& trapId, const Uuid& siteId) const
{
    const auto trap = store::trap(m_reader, trapId);
    const Uuid at = trap && *trap ? (*trap)->site : siteId;
    const auto site = store::site(m_reader, at);
    if (trap && *trap) return trapTitle(site && *site ? **site : Site{}, **trap);
    return site && *site ? QString::fromStdString((*site)->name) : QString();
}

QString RecordWords::titleOf(const std::vector<Change>& changes) const
{
    const Folded now = fold(changes); // whatever stands: it is only named here
    const bool isTrap = now.kind == "trap";
    const bool isSite = now.kind == "site";
    QStringList parts{text::upperFirst(text::kindName(now.kind))};
    if (const auto day = parseDay(textIn(now, "day")))
        //: a kind of record and its day
        parts.front() = RecordText::tr("%1 of %2").arg(parts.front(), text::day(*day));
    const QString name = QString::fromStdString(textIn(now, "name"));
    if (!name.isEmpty()) parts << name;
    const QString place = placeOf(isTrap ? now.record : idIn(now, "trap"), isSite ? now.record : now.site);
    if (!place.isEmpty() && place != name) parts << place;
    return parts.join(QStringLiteral(" · "));
}

text::Animal RecordWords::animalOf(const std::vector<Change>& changes) const
{
    const Folded now = fold(changes);
    const auto trap = store::trap(m_reader, now.kind == "trap" ? now.record : idIn(now, "trap"));
    const auto found = trap && *trap ? m_animals.find((*trap)->pest) : m_animals.end();
    return found == m_animals.end() ? text::Animal() : found->second;
}

QString RecordWords::valueOf(
    const std::string& kind, const std::string& field, const Value& value, const text::Animal& animal) const
{
    const RecordKind* known = findKind(kind);
    if (!known || !known->find(field)) return RecordText::tr("something from a newer version");
    return text::valueWords(
        *known, field, value, [this](const Uuid& id) { return m_people.nameOf(id); }, animal);
}

QStringList RecordWords::linesOf(const Change& change, const text::Animal& animal) const
{
    QStringList lines;
    for (const auto& [field, set] : change.fields)
        if (text::isWorthReading(field))
            //: field and value
            lines << RecordText::tr("%1: %2").arg(text::upperFirst(text::fieldName(change.kind, field)),
                valueOf(change.kind, field, set.value, animal));
    return lines;
}

QString RecordWords::whoAndWhen(const Change& change) const
{
    QString who = m_people.nameOf(change.author);
    if (who.isEmpty()) who = m_people.deviceName(change.ref.stream);
    return RecordText::tr("%1, %2", "who, when").arg(text::upperFirst(who), momentWords(change.at, m_now));
}

} // namespace duskrow::app
