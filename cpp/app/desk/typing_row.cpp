// SPDX-License-Identifier: MIT
#include "app/desk/typing_row.h"

#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

#include "app/as_qstring.h"
#include "domain/rules/no_count.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

Visit reportedVisit(const TypingRow& row, const TypingHow& how)
{
    Visit visit;
    visit.id = row.visit;
    visit.trap = row.trap;
    visit.day = how.day;
    visit.observer = row.who.trimmed().toStdString();
    visit.reportedHow = how.how;
    return visit;
}

} // namespace

Result<Moths> typedMoths(const QString& typed)
{
    const QString count = typed.trimmed();
    if (count.isEmpty()) return Error{ErrorCode::Empty, {"pest"}};
    // The digits of any script; signs, blanks and points within a number can mean too many things.
    const bool isNumber = std::all_of(count.begin(), count.end(), [](QChar c) { return c.isDigit(); });
    if (!isNumber) return Error{ErrorCode::NotANumber, {count.toStdString()}};
    std::int64_t moths = 0;
    const Field& field = *kindOf<Visit>().find("pest");
    for (const QChar digit : count) {
        moths = moths * 10 + digit.digitValue();
        if (moths > field.high)
            return Error{
                ErrorCode::OutOfRange, {"pest", std::to_string(field.low), std::to_string(field.high)}};
    }
    return Moths{moths};
}

Visit visitOf(const TypingRow& row, const TypingHow& how, Moths moths)
{
    Visit visit = reportedVisit(row, how);
    visit.outcome = Outcome::Counted;
    visit.pest = moths;
    visit.emptied = how.emptied;
    return visit;
}

Visit visitOf(const TypingRow& row, const TypingHow& how, NoCountReason reason)
{
    Visit visit = reportedVisit(row, how);
    sayCouldNotCount(visit, reason);
    return visit;
}

QByteArray draftOf(const TypingRow& row)
{
    return QJsonDocument(QJsonObject{{QStringLiteral("visit"), QString::fromStdString(formatUuid(row.visit))},
                             {QStringLiteral("count"), row.count}, {QStringLiteral("who"), row.who}})
        .toJson(QJsonDocument::Compact);
}

void takeDraft(TypingRow& row, const QByteArray& draft)
{
    const QJsonObject held = QJsonDocument::fromJson(draft).object();
    const auto visit = parseUuid(held.value(QStringLiteral("visit")).toString().toStdString());
    if (!visit) return;
    row.visit = *visit;
    row.count = held.value(QStringLiteral("count")).toString();
    row.who = held.value(QStringLiteral("who")).toString();
    row.isTouched = true;
}

QByteArray draftOf(const TypingHow& how)
{
    QJsonObject held{{QStringLiteral("day"), QString::fromStdString(formatDay(how.day))},
        {QStringLiteral("how"), asQString(reportedHowNames[static_cast<std::size_t>(how.how)])}};
    if (how.emptied) held.insert(QStringLiteral("emptied"), *how.emptied);
    return QJsonDocument(held).toJson(QJsonDocument::Compact);
}

void takeDraft(TypingHow& how, const QByteArray& draft)
{
    const QJsonObject held = QJsonDocument::fromJson(draft).object();
    const auto day = parseDay(held.value(QStringLiteral("day")).toString().toStdString());
    const auto* const found =
        std::ranges::find(reportedHowNames, held.value(QStringLiteral("how")).toString().toStdString());
    if (!day || found == reportedHowNames.end()) return;
    how.day = *day;
    how.how = static_cast<ReportedHow>(found - reportedHowNames.begin());
    const QJsonValue emptied = held.value(QStringLiteral("emptied"));
    how.emptied = emptied.isBool() ? std::optional(emptied.toBool()) : std::nullopt;
}

} // namespace duskrow::app
