// SPDX-License-Identifier: MIT
#include "text/bulletin_draft.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

#include "text/amounts.h"
#include "text/animal.h"
#include "text/bulletin_text.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct BulletinDraft {
    Q_DECLARE_TR_FUNCTIONS(BulletinDraft)
};

class Draft {
public:
    Draft(const Bulletin& bulletin, const Protocol& protocol, const QLocale& locale)
        : m_bulletin(bulletin), m_protocol(protocol), m_locale(locale),
          m_language(locale.name().toStdString()), m_animal(animalOf(&protocol, m_language))
    {
    }

    [[nodiscard]] QString week(const AreaFigures& all) const
    {
        const QString in = BulletinDraft::tr("%1 of %2 traps were counted this week.")
                               .arg(whole(all.counted), whole(all.expected));
        if (!all.caughtAny)
            return in + u' '
                + BulletinDraft::tr("None of those counted in full had caught any %1.").arg(m_animal.many());
        if (all.weekMedian == Moths{0})
            return in + u' '
                + BulletinDraft::tr("The median trap caught none; some caught %1.").arg(m_animal.many());
        return in + u' '
            + BulletinDraft::tr(
                "The median trap caught about %1 in seven nights: half caught more, half fewer.")
                  .arg(amount(all.weekMedian));
    }

    [[nodiscard]] QString season(const AreaFigures& all) const
    {
        const QString soFar = BulletinDraft::tr("So far this season the median trap has caught %1.")
                                  .arg(aboutOrNone(all.seasonMedian));
        if (!all.typicalLevel)
            return soFar + u' ' + BulletinDraft::tr("Nobody has published bands for this trap.");
        QStringList groups;
        std::size_t inFull = 0;
        for (const BandGroup& group : m_bulletin.bandGroups) {
            inFull += group.traps;
            const QString name = bandGroupName(group, m_bulletin.bands, m_locale);
            if (group.traps > 0)
                //: a name of a band; a number of traps
                groups << BulletinDraft::tr("%1 %2").arg(name, whole(group.traps));
            else
                //: a name of a band that no trap has reached
                groups << BulletinDraft::tr("%1 none").arg(name);
        }
        return soFar + u' '
            + BulletinDraft::tr("The %1 traps counted in full this week, by the band reached so far: %2.")
                  .arg(whole(inFull), groups.join(QStringLiteral(", ")))
            + u' ' + BulletinDraft::tr("Bands are for whole seasons: a trap can still move up, never down.");
    }

    // Medians and highest bands, for districts that have figures.
    [[nodiscard]] QString districts() const
    {
        const DistrictWeek* most = nullptr;
        QStringList highest;
        int level = 0;
        bool isHeldBack = false;
        for (const DistrictWeek& district : m_bulletin.districts) {
            isHeldBack = isHeldBack || !district.figures;
            if (!district.figures) continue;
            if (!most || district.figures->seasonMedian > most->figures->seasonMedian) most = &district;
            const int reached = district.figures->highestLevel.value_or(0);
            if (reached > level) highest.clear();
            level = std::max(level, reached);
            if (reached == level) highest << QString::fromStdString(district.name);
        }
        if (!most)
            return BulletinDraft::tr("In no district do enough farms report to give figures of its own.");
        QString words =
            BulletinDraft::tr("Of the districts with figures, %1 has the highest median so far, about %2.")
                .arg(QString::fromStdString(most->name), amount(most->figures->seasonMedian));
        if (level > 1)
            words += u' '
                + BulletinDraft::tr("The highest band that any trap has reached is “%1”, in %2.")
                      .arg(bandGroupName({level, level, 0}, m_bulletin.bands, m_locale),
                          highest.join(QStringLiteral(", ")));
        if (isHeldBack)
            words += u' ' + BulletinDraft::tr("Districts whose figures are held back may stand higher.");
        return words;
    }

    [[nodiscard]] QString flight(FlightPhase phase) const
    {
        switch (phase) {
        case FlightPhase::NoneYet:
            return BulletinDraft::tr("Most traps have caught no %1 yet.").arg(m_animal.many());
        case FlightPhase::Rising:
            return BulletinDraft::tr(
                "The flight is rising: in most traps the last count is the highest so far.");
        case FlightPhase::NearHighest:
            return BulletinDraft::tr("The flight is near its highest in most traps.");
        case FlightPhase::PastHighest:
            return BulletinDraft::tr("The flight is past its highest in most traps.");
        case FlightPhase::NotKnown:
            break;
        }
        return BulletinDraft::tr("How far the flight is cannot be told from the counts so far.");
    }

    [[nodiscard]] std::vector<std::string> toDo(const AreaFigures& all) const
    {
        std::vector<std::string> things{
            BulletinDraft::tr("Keep counting every trap on the day of count; a zero is a "
                              "count as well.")
                .toStdString()};
        if (m_protocol.scouting) things.push_back(scouting());
        if (all.highestLevel.value_or(1) > 1)
            things.push_back(
                BulletinDraft::tr("Fields near traps in the higher bands are the first to be looked at, and "
                                  "fields without a trap are looked at all the same.")
                    .toStdString());
        // What a band means is said of whole seasons: not before most of the flight is over.
        if (all.typicalLevel && all.phase == FlightPhase::PastHighest)
            if (const auto at = static_cast<std::size_t>(*all.typicalLevel - 1); at < m_bulletin.bands.size())
                if (const std::string& meaning = m_bulletin.bands[at].meaning.text.in(m_language);
                    !meaning.empty())
                    things.push_back(meaning);
        return things;
    }

    [[nodiscard]] std::vector<std::string> cautions() const
    {
        std::vector<std::string> all;
        for (const Statement& caution : m_protocol.cautionsAt(CautionPlace::Counting))
            all.push_back(caution.text.in(m_language));
        all.push_back(BulletinDraft::tr(
            "Only larvae counted in a field tell of that field. What labels, local rules and a "
            "licensed adviser say comes before anything here.")
                          .toStdString());
        return all;
    }

    [[nodiscard]] QString summary(const AreaFigures& all) const
    {
        return BulletinDraft::tr("%1 of %2 traps counted; the median trap caught %3 this week and %4 so far.")
            .arg(whole(all.counted), whole(all.expected), aboutOrNone(all.weekMedian),
                aboutOrNone(all.seasonMedian));
    }

private:
    [[nodiscard]] QString aboutOrNone(Moths median) const
    {
        return median == Moths{0} ? BulletinDraft::tr("none", "moths")
                                  : BulletinDraft::tr("about %1", "moths").arg(amount(median));
    }

    [[nodiscard]] QString amount(Moths count) const { return m_animal.amount(count, m_locale); }

    [[nodiscard]] QString whole(std::size_t count) const
    {
        return number(static_cast<std::int64_t>(count), m_locale);
    }

    [[nodiscard]] std::string scouting() const
    {
        const auto& after = m_protocol.scouting->startsAfterPeak.value;
        if (!after) return BulletinDraft::tr("Look for larvae in the field, with a frame.").toStdString();
        return BulletinDraft::tr(
            "Look for larvae in the field, with a frame, from about %1 after the highest catches.")
            .arg(days(*after, m_locale))
            .toStdString();
    }

    const Bulletin& m_bulletin;
    const Protocol& m_protocol;
    const QLocale& m_locale;
    std::string m_language;
    Animal m_animal;
};

} // namespace

void draftParagraphs(
    BulletinWords& words, const Bulletin& bulletin, const Protocol& protocol, const QLocale& locale)
{
    const Draft draft(bulletin, protocol, locale);
    words.toDoHeading = BulletinDraft::tr("What to do now").toStdString();
    words.cautions = draft.cautions();
    if (!bulletin.whole) {
        words.summary =
            BulletinDraft::tr("Fewer than 5 farms reported this week; no figures are given.").toStdString();
        words.paragraphs = {words.summary};
        return;
    }
    words.summary = draft.summary(*bulletin.whole).toStdString();
    for (const QString& paragraph : {draft.week(*bulletin.whole), draft.season(*bulletin.whole),
             draft.districts(), draft.flight(bulletin.whole->phase)})
        words.paragraphs.push_back(paragraph.toStdString());
    words.toDo = draft.toDo(*bulletin.whole);
}

} // namespace duskrow::text
