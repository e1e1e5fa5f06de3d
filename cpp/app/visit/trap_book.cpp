// SPDX-License-Identifier: MIT
#include "app/visit/trap_book.h"

#include <QCoreApplication>

#include "app/trap_words.h"
#include "domain/rules/protocol_rules.h"
#include "store/queries.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

SeasonWeek weekOf(const Session& session)
{
    return session.season() ? seasonWeekOf(*session.season()).value_or(SeasonWeek{}) : SeasonWeek{};
}

void takeRules(TrapBook& book, Session& session)
{
    book.protocol = session.protocol(book.trap.pest);
    book.dueRules.week = weekOf(session);
    book.seasonRules.today = session.clock().today();
    if (!book.protocol) return;
    const LocalDay day = book.trap.setDay.value_or(session.clock().today());
    const std::chrono::year year{yearOf(day)};
    book.seasonRules =
        seasonRulesOf(*book.protocol, year, book.dueRules.week.weekStart, session.clock().today());
    book.dueRules = dueRulesOf(*book.protocol, book.trap.trapType, year, book.dueRules.week);
}

template <typename T>
Result<Done> take(std::vector<T>& into, Result<std::vector<T>> found)
{
    if (!found) return found.error();
    into = std::move(*found);
    return Done{};
}

} // namespace

bool TrapBook::hasStrip() const
{
    return dueRules.hasStrip;
}

HeightRule TrapBook::heightRule() const
{
    return trap.heightRule.value_or(dueRules.heightRule);
}

QString inSentence(const LocalText& name)
{
    QString words = QString::fromStdString(name.in(Session::language()));
    if (!words.isEmpty()) words[0] = words.at(0).toLower();
    return words;
}

QString TrapBook::pestName() const
{
    return protocol ? inSentence(protocol->name) : QString::fromStdString(trap.pest);
}

text::Animal TrapBook::animal() const
{
    return animalOf(protocol);
}

QString TrapBook::oneOfPest() const
{
    //: a pest, in the singular: "bertha armyworm moth"
    return animal().isMoth() ? QCoreApplication::translate("Trap", "%1 moth").arg(pestName())
                             : animal().one();
}

QString TrapBook::manyOfPest() const
{
    //: a pest, in the plural: "bertha armyworm moths"
    return animal().isMoth() ? QCoreApplication::translate("Trap", "%1 moths").arg(pestName())
                             : animal().many();
}

bool TrapBook::isBucket() const
{
    const TrapType* type = protocol ? protocol->trapType(trap.trapType) : nullptr;
    return !type || type->shape == TrapShape::Bucket;
}

QString TrapBook::title() const
{
    const QString place = QString::fromStdString(site.name);
    const QString tag = QString::fromStdString(trap.tag);
    if (tag.isEmpty() || place.isEmpty()) return tag + place;
    return place + QStringLiteral(" · ") + tag;
}

Result<TrapBook> readTrapBook(Session& session, const Uuid& id)
{
    store::Reader& reader = session.reader();
    auto trap = store::trap(reader, id);
    if (!trap) return trap.error();
    if (!*trap) return Error{ErrorCode::RecordMissing, {"trap"}};
    TrapBook book{.trap = std::move(**trap)};
    auto site = store::site(reader, book.trap.site);
    if (!site) return site.error();
    if (*site) book.site = std::move(**site);
    if (const auto read = take(book.visits, store::visitsOf(reader, id)); !read) return read.error();
    if (const auto read = take(book.services, store::servicesOf(reader, id)); !read) return read.error();
    if (const auto read = take(book.samples, store::samplesOf(reader, id)); !read) return read.error();
    if (const auto read = take(book.leftOut, store::leftOut(reader)); !read) return read.error();
    takeRules(book, session);
    return book;
}

} // namespace duskrow::app
