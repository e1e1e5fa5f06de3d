// SPDX-License-Identifier: MIT
#include "app/winter/winter_view_model.h"

#include <QClipboard>
#include <QDir>
#include <QGuiApplication>
#include <QPointer>
#include <QStandardPaths>
#include <QUrl>

#include <algorithm>

#include "app/print/pdf_paper.h"
#include "app/print/thank_you_printer.h"
#include "app/winter/winter_words.h"
#include "app/written_file.h"
#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// Names may be alike, and written in any letters: the number keeps the files apart.
QString fileNameOf(int year, std::size_t number, const QString& name)
{
    QString plain;
    for (const QChar letter : name.toLower()) plain += letter.isLetterOrNumber() ? letter : QChar(u'-');
    constexpr qsizetype longest = 40;
    return QStringLiteral("duskrow-thanks-%1-%2-%3.pdf").arg(year).arg(number).arg(plain.left(longest));
}

} // namespace

WinterViewModel::WinterViewModel(Session& session, QObject* parent)
    : ViewModel(session, parent),
      m_folder(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
{
    connect(&session, &Session::changed, this, &WinterViewModel::refresh);
    refresh();
}

void WinterViewModel::refresh()
{
    session().lookUp<WinterBook>(
        this,
        [today = session().clock().today()](store::Reader& reader) { return readWinter(reader, today); },
        [this, look = ++m_looks](const Result<WinterBook>& book) {
            if (look != m_looks) return;
            if (!book) return tell(book.error());
            m_book = *book;
            m_cooperators.show(cooperatorRows(*m_book));
            m_orders.show(orderRows(*m_book));
            Q_EMIT shown();
        });
}

QString WinterViewModel::programmeName() const
{
    const auto& programme = session().programme();
    return programme ? QString::fromStdString(programme->name) : QString();
}

QString WinterViewModel::season() const
{
    return m_book && m_book->season.year ? tr("Season %1").arg(*m_book->season.year) : QString();
}

QString WinterViewModel::goingOn() const
{
    return m_book ? goingOnWords(*m_book) : QString();
}

void WinterViewModel::setFolder(const QString& folder)
{
    if (folder == m_folder) return;
    m_folder = folder;
    m_written.clear();
    clearTrouble();
    Q_EMIT done();
}

const Cooperator* WinterViewModel::find(const QString& member) const
{
    if (!m_book) return nullptr;
    const auto id = parseUuid(member.toStdString());
    const auto found = std::ranges::find(m_book->cooperators, id ? *id : Uuid{}, &Cooperator::member);
    return found == m_book->cooperators.end() ? nullptr : &*found;
}

void WinterViewModel::say(const QString& member, const QString& goesOn)
{
    const Cooperator* person = find(member);
    const auto& programme = session().programme();
    if (!person || !programme) return;
    NextYear after = person->said.value_or(NextYear{});
    after.id = nextYearId(programme->id, person->member, nextYear());
    after.member = person->member;
    after.year = nextYear();
    after.goesOn = goesOn.isEmpty() ? std::nullopt : std::optional(goesOn == QLatin1String("yes"));
    if (person->goesOn() == after.goesOn) return;
    const Edit edit = person->said ? correction(*person->said, after, Uuid{}) : creation(after, Uuid{});
    session().keep({edit}, std::nullopt, this,
        [this](const Result<store::Kept>& kept) { kept ? clearTrouble() : tell(kept.error()); });
}

text::ThankYouSheet WinterViewModel::sheetOf(const Cooperator& person) const
{
    const auto& programme = session().programme();
    const auto& me = session().me();
    return text::thankYouSheet(person.thanks,
        {programmeName(), programme && programme->invented.value_or(false), m_book->season.year.value_or(0),
            me ? QString::fromStdString(me->name) : QString()});
}

// A hundred sheets take a few seconds: the screens do not wait for them.
void WinterViewModel::writeSheets()
{
    if (!m_book || m_isWriting) return;
    m_written.clear();
    const QString folder = m_folder.trimmed();
    if (folder.isEmpty()) {
        tell(Error{ErrorCode::Empty, {"folder"}});
        return Q_EMIT done();
    }
    const auto& me = session().me();
    const QString author = me ? QString::fromStdString(me->name) : QString();
    std::vector<std::pair<QString, text::ThankYouSheet>> sheets; // by the file they go into
    for (const Cooperator& person : m_book->cooperators) {
        const QString name =
            fileNameOf(m_book->season.year.value_or(0), sheets.size() + 1, person.thanks.name);
        sheets.emplace_back(QDir(folder).filePath(name), sheetOf(person));
    }
    m_isWriting = true;
    Q_EMIT done();
    Session* home = &session();
    // Told wherever somebody is by then: the page may be gone.
    home->lookUpLong<std::int64_t>(
        home,
        [sheets = std::move(sheets), author](store::Reader&) -> Result<std::int64_t> {
            for (const auto& [path, sheet] : sheets)
                if (const auto kept = writeFile(path, printedThanks(sheet, author, paperOf(QLocale())));
                    !kept)
                    return kept.error();
            return static_cast<std::int64_t>(sheets.size());
        },
        [home, self = QPointer<WinterViewModel>(this), folder](const Result<std::int64_t>& number) {
            if (!number) Q_EMIT home->troubled(number.error());
            if (self) self->wrote(folder, number);
        });
}

void WinterViewModel::wrote(const QString& folder, const Result<std::int64_t>& number)
{
    m_isWriting = false;
    if (number) {
        const QString where = QDir::toNativeSeparators(folder);
        clearTrouble();
        m_written = *number == 1 ? tr("One sheet is in %1.").arg(where)
                                 : tr("%1 sheets are in %2.").arg(text::number(*number), where);
    }
    Q_EMIT done();
}

void WinterViewModel::copy(const QString& what, const QString& words)
{
    QGuiApplication::clipboard()->setText(words);
    m_copied = what;
    Q_EMIT done();
}

void WinterViewModel::copyThanks(const QString& member)
{
    if (const Cooperator* person = find(member)) copy(member, text::asText(sheetOf(*person)));
}

void WinterViewModel::copyOrder()
{
    if (m_book) copy(QStringLiteral("order"), orderText(*m_book, programmeName()));
}

QString WinterViewModel::mailAddress(const QString& member) const
{
    const Cooperator* person = find(member);
    if (!person) return {};
    const text::ThankYouSheet sheet = sheetOf(*person);
    const auto encoded = [](const QString& words) {
        return QString::fromLatin1(QUrl::toPercentEncoding(words));
    };
    return QStringLiteral("mailto:?subject=%1&body=%2")
        .arg(encoded(sheet.title), encoded(text::asText(sheet)));
}

} // namespace duskrow::app
