// SPDX-License-Identifier: MIT
#include "text/thank_you_text.h"

#include <QCoreApplication>

#include "text/amounts.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct ThankYouWords {
    Q_DECLARE_TR_FUNCTIONS(ThankYou)
};

QString trapsWords(std::size_t traps)
{
    return traps == 1 ? ThankYouWords::tr("one trap")
                      : ThankYouWords::tr("%1 traps").arg(number(static_cast<std::int64_t>(traps)));
}

QString caughtWords(const ThankYouTrap& trap)
{
    if (!trap.caught) return ThankYouWords::tr("not summed");
    return trap.isMinimum ? atLeast(*trap.caught) : trap.animal.amount(*trap.caught);
}

} // namespace

ThankYouSheet thankYouSheet(const ThankYou& thanks, const ThankYouFrom& from)
{
    ThankYouSheet sheet;
    sheet.title = ThankYouWords::tr("Thank you, %1").arg(thanks.name);
    sheet.above = QStringLiteral("%1 · %2").arg(from.programme).arg(from.year);
    if (from.isInvented) sheet.above += QStringLiteral(" · ") + ThankYouWords::tr("invented");
    std::int64_t visits = 0;
    for (const ThankYouTrap& trap : thanks.traps) visits += trap.visits;
    //: a year, "one trap" or "3 traps"
    sheet.before << ThankYouWords::tr("In %1 you kept %2 for everybody who grows the crop around you.")
                        .arg(QString::number(from.year), trapsWords(thanks.traps.size()));
    const auto& [first, last] = thanks.days;
    if (visits == 1 && first)
        sheet.before << ThankYouWords::tr("It was visited on %1.").arg(shortDay(*first));
    if (visits > 1 && first && last)
        sheet.before << ThankYouWords::tr("That took %1 visits, from %2 to %3.")
                            .arg(number(visits), shortDay(*first), shortDay(*last));
    if (thanks.people > 1 && visits > 0)
        sheet.before << ThankYouWords::tr(
            "They are part of the %1 visits by which %2 people together knew how the flight went.")
                            .arg(number(thanks.everybodysVisits), number(thanks.people));
    sheet.table.heads << ThankYouWords::tr("Trap") << ThankYouWords::tr("Visits")
                      << ThankYouWords::tr("In the season") << ThankYouWords::tr("That is");
    for (const ThankYouTrap& trap : thanks.traps)
        sheet.table.rows.push_back({trap.title, number(trap.visits), caughtWords(trap), trap.band});
    sheet.after << ThankYouWords::tr("A week without a catch is worth as much as one with a great one: it "
                                     "tells others that they need not worry.");
    sheet.after << ThankYouWords::tr("A catch tells of what flies, not of larvae: whether to act is decided "
                                     "by scouting, by the label, by local "
                                     "rules and with a licensed adviser.");
    if (!from.coordinator.isEmpty()) sheet.after << from.coordinator;
    return sheet;
}

QString asText(const ThankYouSheet& sheet)
{
    QStringList lines{sheet.title, sheet.above, {}};
    lines << sheet.before << QString();
    for (const QStringList& row : sheet.table.rows) {
        QStringList said = row;
        said.removeAll(QString());
        lines << ThankYouWords::tr("%1: %2 visits, %3")
                     .arg(row[0], row[1], said.mid(2).join(QStringLiteral(", ")));
    }
    lines << QString() << sheet.after;
    return lines.join(QChar(u'\n'));
}

} // namespace duskrow::text
