// SPDX-License-Identifier: MIT
#include "app/desk/typing_view_model.h"

#include <algorithm>

#include "app/as_qstring.h"
#include "app/trap_words.h"
#include "domain/log/edit.h"
#include "text/amounts.h"
#include "text/code_names.h"
#include "text/desk_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr const char* howDraft = "typing";

} // namespace

TypingViewModel::TypingViewModel(Session& session, const QString& week, QObject* parent)
    : ViewModel(session, parent)
{
    if (const auto day = parseDay(week.toStdString())) m_wanted = *day;
    const auto& season = session.season();
    if (!season) return;
    using Book = std::shared_ptr<const DeskBook>;
    session.lookUp<Book>(
        this,
        [season = *season, own = session.store().stream()](store::Reader& reader) -> Result<Book> {
            auto book = DeskBook::read(reader, season, own);
            if (!book) return book.error();
            return std::make_shared<const DeskBook>(std::move(*book));
        },
        [this](const Result<Book>& book) {
            if (!book) return tell(book.error());
            take(**book);
        });
}

void TypingViewModel::take(const DeskBook& book)
{
    const LocalDay today = session().clock().today();
    m_rhythm = book.rhythm();
    m_week = m_wanted ? weekOf(*m_wanted, m_rhythm.weekStart) : weekToSettle(today, m_rhythm);
    const LocalDay countDay = countDayOf(m_week, m_rhythm.countDay);
    m_how.day = std::min(countDay, today);
    if (const auto draft = session().draft(QString::fromLatin1(howDraft))) takeDraft(m_how, *draft);
    // The day of another week would be refused at each row.
    if (weekCountedFor(m_how.day, m_rhythm.weekStart, m_rhythm.countDay, m_rhythm.grace) != m_week)
        m_how.day = std::min(countDay, today);
    const auto drafts = session().reader().draftKeys();
    if (!drafts) return tell(drafts.error());
    const WeekDesk desk = book.weekOf(m_week, today);
    std::vector<TypingRow> rows;
    for (const TrapWeek& of : desk.traps)
        if (!of.visit) rows.push_back(rowOf(book, of.trap, countDay));
    for (TypingRow& row : rows) {
        const QString key = draftKey(row);
        if (!std::ranges::binary_search(*drafts, key.toStdString())) continue;
        if (const auto draft = session().draft(key)) takeDraft(row, *draft);
    }
    m_rows.show(std::move(rows));
    m_isRead = true;
    Q_EMIT howChanged();
    Q_EMIT shown();
}

TypingRow TypingViewModel::rowOf(const DeskBook& book, std::size_t trap, LocalDay countDay)
{
    const Trap& record = book.records().traps[trap];
    TypingRow row{.trap = record.id, .site = record.site, .visit = session().newId()};
    row.title = book.title(trap);
    row.section = book.districtName(book.records().trapsOfDesk[trap].district);
    row.who = book.person(trap, countDay);
    if (const Protocol* protocol = session().protocol(record.pest))
        row.pest = QString::fromStdString(protocol->name.in(Session::language()));
    row.animal = animalOf(session(), record.pest);
    return row;
}

QString TypingViewModel::draftKey(const TypingRow& row) const
{
    return QStringLiteral("typed/%1/%2")
        .arg(QString::fromStdString(formatUuid(row.trap)), QString::fromStdString(formatDay(m_week.first)));
}

QString TypingViewModel::weekLine() const
{
    return m_isRead ? text::weekDays(m_week) : QString();
}

QString TypingViewModel::typist() const
{
    return session().me() ? QString::fromStdString(session().me()->name) : QString();
}

QString TypingViewModel::day() const
{
    return m_isRead ? QString::fromStdString(formatDay(m_how.day)) : QString();
}

void TypingViewModel::setDay(const QString& day)
{
    const auto typed = parseDay(day.toStdString());
    if (!typed || *typed == m_how.day) return;
    m_how.day = *typed;
    saveHow();
}

QString TypingViewModel::today() const
{
    return QString::fromStdString(formatDay(session().clock().today()));
}

QString TypingViewModel::dayError() const
{
    if (!m_isRead) return {};
    if (m_how.day > session().clock().today()) return tr("This day is still to come.");
    const ReportingWeek own =
        weekCountedFor(m_how.day, m_rhythm.weekStart, m_rhythm.countDay, m_rhythm.grace);
    if (own == m_week) return {};
    return tr("A count of this day is for the week %1. Go to that week to type it.").arg(text::weekDays(own));
}

QString TypingViewModel::how() const
{
    return asQString(reportedHowNames[static_cast<std::size_t>(m_how.how)]);
}

void TypingViewModel::setHow(const QString& how)
{
    const auto* const found = std::ranges::find(reportedHowNames, how.toStdString());
    if (found == reportedHowNames.end()) return;
    m_how.how = static_cast<ReportedHow>(found - reportedHowNames.begin());
    saveHow();
}

QStringList TypingViewModel::howKeys()
{
    QStringList keys;
    for (const std::string_view name : reportedHowNames) keys << asQString(name);
    return keys;
}

QStringList TypingViewModel::howLabels()
{
    QStringList labels;
    for (std::size_t i = 0; i < reportedHowNames.size(); ++i)
        labels << text::name(static_cast<ReportedHow>(i));
    return labels;
}

QStringList TypingViewModel::reasonKeys()
{
    QStringList keys;
    for (const std::string_view name : noCountReasonNames) keys << asQString(name);
    return keys;
}

QStringList TypingViewModel::reasonLabels()
{
    QStringList labels;
    for (std::size_t i = 0; i < noCountReasonNames.size(); ++i)
        labels << text::name(static_cast<NoCountReason>(i));
    return labels;
}

QString TypingViewModel::emptied() const
{
    if (!m_how.emptied) return QStringLiteral("unsaid");
    return *m_how.emptied ? QStringLiteral("yes") : QStringLiteral("no");
}

void TypingViewModel::setEmptied(const QString& emptied)
{
    if (emptied == QLatin1String("unsaid"))
        m_how.emptied.reset();
    else
        m_how.emptied = emptied == QLatin1String("yes");
    saveHow();
}

void TypingViewModel::saveHow()
{
    session().saveDraft(QString::fromLatin1(howDraft), draftOf(m_how));
    Q_EMIT howChanged();
}

void TypingViewModel::typeCount(int row, const QString& typed)
{
    if (!m_rows.has(row) || m_rows.at(row).count == typed) return;
    m_rows.at(row).count = typed;
    touched(row);
}

void TypingViewModel::typeWho(int row, const QString& typed)
{
    if (!m_rows.has(row) || m_rows.at(row).who == typed) return;
    m_rows.at(row).who = typed;
    touched(row);
}

void TypingViewModel::touched(int row)
{
    TypingRow& of = m_rows.at(row);
    of.error.clear();
    of.isTouched = true;
    session().saveDraft(draftKey(of), draftOf(of));
    m_rows.tellOf(row);
}

void TypingViewModel::refuse(int row, const QString& sentence)
{
    m_rows.at(row).error = sentence;
    m_rows.tellOf(row);
}

// Day and person are needed whatever a row says.
bool TypingViewModel::isReady(int row)
{
    if (!dayError().isEmpty()) return refuse(row, dayError()), false;
    if (m_rows.at(row).who.trimmed().isEmpty()) return refuse(row, tr("Say who reported it.")), false;
    return true;
}

bool TypingViewModel::keep(int row)
{
    if (!m_rows.has(row)) return false;
    const TypingRow& of = m_rows.at(row);
    if (of.isKeeping || !of.kept.isEmpty()) return true;
    const auto moths = typedMoths(of.count);
    if (!moths) return refuse(row, text::sentence(moths.error())), false;
    if (!isReady(row)) return false;
    //: "47 moths", a day, "by phone", a person
    const QString said = tr("Kept: %1 on %2, %3, from %4")
                             .arg(of.animal.amount(*moths), text::shortDay(m_how.day), text::name(m_how.how),
                                 of.who.trimmed());
    return keepVisit(row, visitOf(of, m_how, *moths), said);
}

bool TypingViewModel::keepNoCount(int row, const QString& reason)
{
    if (!m_rows.has(row)) return false;
    const TypingRow& of = m_rows.at(row);
    if (of.isKeeping || !of.kept.isEmpty()) return true;
    const auto found = std::ranges::find(noCountReasonNames, reason.toStdString());
    if (found == noCountReasonNames.end())
        return tell(Error{ErrorCode::UnknownCode, {"reason", reason.toStdString()}}), false;
    if (!isReady(row)) return false;
    const auto why = static_cast<NoCountReason>(found - noCountReasonNames.begin());
    //: a day, "by phone", a person, "trap had fallen"
    const QString said =
        tr("Kept: could not count on %1, %2, from %3: %4")
            .arg(text::shortDay(m_how.day), text::name(m_how.how), of.who.trimmed(), text::name(why));
    return keepVisit(row, visitOf(of, m_how, why), said);
}

bool TypingViewModel::keepVisit(int row, const Visit& visit, const QString& said)
{
    TypingRow& of = m_rows.at(row);
    const Edit edit = creation(visit, of.site);
    if (const auto checked = checkEdit(edit); !checked)
        return refuse(row, text::sentence(checked.error())), false;
    of.isKeeping = true;
    of.error.clear();
    m_rows.tellOf(row);
    session().keep({edit}, draftKey(of), this,
        [this, trap = of.trap, said](const Result<store::Kept>& kept) { answer(trap, kept, said); });
    return true;
}

void TypingViewModel::answer(const Uuid& trap, const Result<store::Kept>& kept, const QString& said)
{
    const int row = m_rows.rowOf(trap);
    if (row < 0) return;
    TypingRow& of = m_rows.at(row);
    of.isKeeping = false;
    if (!kept) return refuse(row, text::sentence(kept.error()));
    of.kept = said;
    of.isTouched = false;
    m_rows.tellOf(row);
    ++m_kept;
    Q_EMIT keptChanged();
}

} // namespace duskrow::app
