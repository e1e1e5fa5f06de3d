// SPDX-License-Identifier: MIT
#include "app/desk/desk_view_model.h"

#include <QClipboard>
#include <QGuiApplication>

#include <algorithm>
#include <set>
#include <utility>

#include "app/desk/desk_words.h"
#include "app/trap_words.h"
#include "store/season_flags.h"
#include "sync/roster/roster_edits.h"
#include "text/desk_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// What is read for the table: the flags take longer and come by themselves.
struct DeskRead {
    std::shared_ptr<const DeskBook> book;
    std::map<Uuid, std::string> leftOut;
    std::vector<store::AskedQuestion> questions;
};

} // namespace

DeskViewModel::DeskViewModel(Session& session, QObject* parent) : ViewModel(session, parent)
{
    connect(&session, &Session::changed, this, &DeskViewModel::refresh);
    refresh();
}

void DeskViewModel::refresh()
{
    if (m_isReading) {
        m_mustReadAgain = true;
        return;
    }
    const auto& season = session().season();
    if (!season) return;
    m_isReading = true;
    session().lookUp<DeskRead>(
        this,
        [season = *season, own = session().store().stream()](store::Reader& reader) -> Result<DeskRead> {
            auto book = DeskBook::read(reader, season, own);
            if (!book) return book.error();
            const auto rulings = store::rulings(reader);
            if (!rulings) return rulings.error();
            auto questions = store::openQuestions(reader);
            if (!questions) return questions.error();
            DeskRead read{std::make_shared<const DeskBook>(std::move(*book)), {}, std::move(*questions)};
            for (const Ruling& ruling : *rulings)
                if (!ruling.leftOut.empty()) read.leftOut[ruling.subject] = ruling.leftOut;
            return read;
        },
        [this](const Result<DeskRead>& read) {
            m_isReading = false;
            if (!read) {
                tell(read.error());
            } else {
                const bool isFirst = m_book == nullptr;
                m_book = read->book;
                m_leftOut = read->leftOut;
                m_questions = read->questions;
                // Who never looked before begins to look now.
                const auto marked = session().reader().deviceSetting(deskMark);
                if (isFirst && marked && !*marked) saveMark();
                arrange();
            }
            check();
            if (std::exchange(m_mustReadAgain, false)) refresh();
        });
}

void DeskViewModel::check()
{
    const auto& season = session().season();
    if (!season) return;
    if (m_isChecking) {
        m_mustCheckAgain = true;
        return;
    }
    m_isChecking = true;
    Q_EMIT shown();
    using Flags = std::vector<Flag>;
    session().lookUpLong<Flags>(
        this,
        [season = *season, today = session().clock().today()](
            store::Reader& reader) { return store::flagsOfSeason(reader, season, today); },
        [this](const Result<Flags>& found) {
            m_isChecking = false;
            if (!found)
                tell(found.error());
            else
                m_flags = *found;
            arrange();
            if (std::exchange(m_mustCheckAgain, false)) check();
        });
}

void DeskViewModel::arrange()
{
    if (!m_book) return;
    const LocalDay today = session().clock().today();
    if (!m_hasWeek) m_desk.week = weekToSettle(today, m_book->rhythm());
    m_hasWeek = true;
    m_desk = m_book->weekOf(m_desk.week, today);
    std::vector<Row> districts;
    for (const DistrictReported& district : m_desk.districts)
        districts.push_back(
            {.title = m_book->districtName(district.district), .besides = text::reportedLine(district.sum)});
    std::ranges::sort(districts, {}, &Row::title);
    m_districts.show(std::move(districts));
    m_cameIn = static_cast<int>(std::ranges::count_if(
        m_book->records().visits, [this](const VisitOfDesk& visit) { return m_book->cameIn(visit); }));
    m_lines.show(linesOfView());
    showChosen();
    Q_EMIT shown();
}

DeskLine DeskViewModel::lineOf(const TrapWeek& of) const
{
    const Trap& trap = m_book->records().traps[of.trap];
    const VisitOfDesk* visit = of.visit ? &m_book->records().visits[*of.visit] : nullptr;
    DeskLine line{.key = idWords(trap.id), .trap = idWords(trap.id), .title = m_book->title(of.trap)};
    QStringList besides{m_book->person(of.trap, countDayOf(m_desk.week, m_book->rhythm().countDay))};
    if (visit) besides << visitWords(*visit);
    if (visit && m_leftOut.contains(visit->visit)) besides << tr("left out");
    if (visit) besides << askedState(visit->visit);
    if (const std::size_t flags = flagsOf(trap.id)) besides << tr("%1 to look at").arg(flags);
    besides.removeAll(QString());
    line.besides = besides.join(QStringLiteral(" · "));
    line.right = standingWords(of.standing, visit, animalOf(session(), trap.pest));
    line.section = m_book->districtName(m_book->records().trapsOfDesk[of.trap].district);
    line.isDue = of.standing == WeekStanding::Late;
    line.isNew = visit && m_book->cameIn(*visit);
    return line;
}

text::Animal DeskViewModel::animalAt(const Uuid& trap) const
{
    const auto at = m_book ? m_book->trapAt(trap) : std::nullopt;
    return at ? animalOf(session(), m_book->records().traps[*at].pest) : text::Animal();
}

DeskLine DeskViewModel::lineOf(const Flag& flag) const
{
    const auto trap = m_book->trapAt(flag.trap);
    const FlagWords words = flagWords(flag, animalAt(flag.trap));
    DeskLine line{.key = words.key, .trap = flag.trap.isNil() ? QString() : idWords(flag.trap)};
    line.title = trap ? m_book->title(*trap) : tr("No trap that is known here");
    if (flag.trap.isNil() && flag.observer.isKnown()) line.title = observerWords(*m_book, flag.observer);
    const QString asked = askedState(flag.visit);
    line.besides = asked.isEmpty() ? words.head : QStringLiteral("%1 · %2").arg(words.head, asked);
    line.remark = words.reason;
    line.isDue = true;
    line.canMark = !flag.visit.isNil();
    return line;
}

std::vector<DeskLine> DeskViewModel::linesOfView() const
{
    std::vector<DeskLine> lines;
    if (m_view == QLatin1String("flags")) {
        const auto asked = unflagged();
        lines.reserve(m_flags.size() + asked.size());
        for (const store::AskedQuestion* question : asked) lines.push_back(lineOf(*question));
        for (const Flag& flag : m_flags) lines.push_back(lineOf(flag));
        return lines;
    }
    if (m_view == QLatin1String("new")) {
        for (const VisitOfDesk& visit : m_book->records().visits) {
            const auto trap = m_book->cameIn(visit) ? m_book->trapAt(visit.trap) : std::nullopt;
            if (!trap) continue;
            DeskLine line{
                .key = idWords(visit.visit), .trap = idWords(visit.trap), .title = m_book->title(*trap)};
            line.besides = visitWords(visit);
            line.right = standingWords(
                visit.pest ? WeekStanding::Counted : WeekStanding::NotCounted, &visit, animalAt(visit.trap));
            line.isNew = true;
            lines.push_back(std::move(line));
        }
        return lines;
    }
    const bool isLate = m_view == QLatin1String("late");
    lines.reserve(m_desk.traps.size());
    for (const TrapWeek& of : m_desk.traps)
        if (!isLate || of.standing == WeekStanding::Late) lines.push_back(lineOf(of));
    return lines;
}

std::size_t DeskViewModel::flagsOf(const Uuid& trap) const
{
    return static_cast<std::size_t>(std::ranges::count(m_flags, trap, &Flag::trap));
}

QString DeskViewModel::week() const
{
    return m_book ? QString::fromStdString(formatDay(m_desk.week.first)) : QString();
}

QString DeskViewModel::weekLine() const
{
    return m_book ? text::weekDays(m_desk.week) : QString();
}

QString DeskViewModel::totalLine() const
{
    if (!m_book) return tr("Reading");
    return text::reportedLine(m_desk.total);
}

bool DeskViewModel::canGoOn() const
{
    return m_book && m_desk.week.last < session().clock().today();
}

void DeskViewModel::setView(const QString& view)
{
    if (view == m_view) return;
    m_view = view;
    arrange();
}

void DeskViewModel::goWeeks(int by)
{
    if (!m_book || (by > 0 && !canGoOn())) return;
    m_desk.week.first += std::chrono::days{7 * by};
    m_desk.week.last += std::chrono::days{7 * by};
    arrange();
}

void DeskViewModel::choose(const QString& key, const QString& trap)
{
    if (key == m_chosen) return;
    m_chosen = key;
    m_trap = parseUuid(trap.toStdString()).value_or(Uuid{});
    m_isCopied = false;
    showChosen();
}

QString DeskViewModel::trap() const
{
    return m_trap.isNil() ? QString() : idWords(m_trap);
}

QString DeskViewModel::title() const
{
    const auto trap = m_book ? m_book->trapAt(m_trap) : std::nullopt;
    return trap ? m_book->title(*trap) : QString();
}

void DeskViewModel::showChosen()
{
    if (!m_book) return;
    const auto trap = m_book->trapAt(m_trap);
    m_facts.show(trap ? trapFacts(*m_book, *trap, m_desk, animalAt(m_trap)) : std::vector<Row>{});
    std::vector<Row> flags;
    m_asked.clear();
    for (const Flag& flag : m_flags) {
        const bool isChosen = flagWords(flag).key == m_chosen;
        if (trap ? flag.trap != m_trap : !isChosen) continue;
        flags.push_back(flagRow(*m_book, flag, animalAt(flag.trap)));
        if (isChosen || m_asked.isEmpty()) m_asked = flags.back().subject;
    }
    m_trapFlags.show(std::move(flags));
    showQuestions();
    m_visits.show(trap ? visitRows(*m_book, m_trap, m_leftOut, animalAt(m_trap)) : std::vector<Row>{});
    writeMessage();
    Q_EMIT chosenChanged();
}

// One message for all that is late of the same person.
void DeskViewModel::writeMessage()
{
    m_message.clear();
    const auto trap = m_book->trapAt(m_trap);
    const auto own =
        std::ranges::find_if(m_desk.traps, [&](const TrapWeek& of) { return trap && of.trap == *trap; });
    if (own == m_desk.traps.end() || own->standing != WeekStanding::Late) return;
    m_message = text::lateMessage(lateAsk(
        *m_book, m_desk, *trap, session().me() ? QString::fromStdString(session().me()->name) : QString()));
}

// Without an address the device's own program asks for whom. Source  RFC 6068
QUrl DeskViewModel::mail() const
{
    if (m_message.isEmpty()) return {};
    const QString subject = text::lateSubject({.to = {}, .from = {}, .week = m_desk.week, .traps = {}});
    QString body = m_message;
    body.replace(QLatin1Char('\n'), QStringLiteral("\r\n"));
    return QUrl::fromEncoded(
        "mailto:?subject=" + QUrl::toPercentEncoding(subject) + "&body=" + QUrl::toPercentEncoding(body));
}

void DeskViewModel::copyMessage()
{
    if (m_message.isEmpty()) return;
    QGuiApplication::clipboard()->setText(m_message);
    m_isCopied = true;
    Q_EMIT chosenChanged();
}

bool DeskViewModel::saveMark()
{
    const auto saved = session().store().saveSettingNow(deskMark, std::to_string(m_book->records().mark));
    if (!saved) tell(saved.error());
    return saved.has_value();
}

void DeskViewModel::looked()
{
    if (m_book && saveMark()) refresh();
}

// Flags of what is settled go at once: to find the others again takes its time.
void DeskViewModel::keep(std::vector<Edit> edits, const std::set<Uuid>& settled)
{
    if (m_busy || edits.empty()) return;
    m_busy = true;
    Q_EMIT busyChanged();
    session().keep(std::move(edits), std::nullopt, this, [this, settled](const Result<store::Kept>& kept) {
        m_busy = false;
        Q_EMIT busyChanged();
        if (!kept) return tell(kept.error());
        clearTrouble();
        std::erase_if(m_flags, [&](const Flag& flag) { return settled.contains(flag.visit); });
        std::erase_if(m_questions, [&](const store::AskedQuestion& asked) {
            return settled.contains(asked.question.subject) || settled.contains(asked.question.id);
        });
        arrange();
    });
}

void DeskViewModel::stands(const QString& visit)
{
    const auto id = parseUuid(visit.toStdString());
    if (!id) return;
    std::vector<Edit> edits = settlingOf({*id});
    edits.push_back(sync::ruling(session().store().programme(), *id, Says::Stands));
    keep(std::move(edits), {*id});
}

void DeskViewModel::markedStand()
{
    std::set<Uuid> visits; // two flags of one visit are one word
    for (const Flag& flag : m_flags)
        if (!flag.visit.isNil() && m_lines.marked().contains(flagWords(flag).key)) visits.insert(flag.visit);
    std::vector<Edit> edits = settlingOf(visits);
    for (const Uuid& visit : visits)
        edits.push_back(sync::ruling(session().store().programme(), visit, Says::Stands));
    keep(std::move(edits), visits);
}

void DeskViewModel::leaveOut(const QString& visit, const QString& reason)
{
    const auto id = parseUuid(visit.toStdString());
    if (!id) return;
    const QString why = reason.trimmed();
    const std::set<Uuid> settled = why.isEmpty() ? std::set<Uuid>{} : std::set{*id};
    std::vector<Edit> edits = settlingOf(settled);
    edits.push_back(sync::leavingOut(session().store().programme(), *id, why.toStdString()));
    keep(std::move(edits), settled);
}

} // namespace duskrow::app
