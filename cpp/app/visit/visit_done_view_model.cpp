// SPDX-License-Identifier: MIT
#include "app/visit/visit_done_view_model.h"

#include <QImageReader>

#include <algorithm>

#include "app/visit/visit_words.h"
#include "store/photos.h"
#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::app {

using namespace duskrow::domain;

VisitDoneViewModel::VisitDoneViewModel(VisitEntry& entry) : ViewModel(entry.session()), m_entry(entry)
{
    connect(&m_entry, &VisitEntry::changed, this, &VisitDoneViewModel::changed);
}

QString VisitDoneViewModel::headline() const
{
    const Visit& visit = m_entry.visit();
    if (visit.outcome == Outcome::CouldNotCount) return tr("Could not count");
    const auto caught = m_entry.caught();
    if (!caught || !caught->count) return tr("Nothing counted");
    const text::Animal animal = m_entry.book().animal();
    const QString amount = animal.amount(*caught->count);
    const QString moths = caught->isAtLeast ? tr("At least %1").arg(amount)
        : caught->count->value() == 0       ? tr("No %1").arg(animal.many())
                                            : amount;
    if (!caught->nights || caught->nights->value() == 0) return moths;
    return tr("%1 over %2").arg(moths, text::nights(*caught->nights));
}

QString VisitDoneViewModel::meaning() const
{
    const auto caught = m_entry.caught();
    if (!caught || !caught->count) return {};
    QStringList words;
    if (caught->rate) words.append(text::perNight(*caught->rate));
    words.append(text::soFar(caught->soFar));
    words.append(flightWords(m_entry));
    return words.join(QStringLiteral(" · "));
}

void VisitDoneViewModel::addCountRows(std::vector<Row>& rows) const
{
    const Visit& visit = m_entry.visit();
    if (visit.reason && visit.outcome == Outcome::CouldNotCount)
        rows.push_back({tr("Why"), text::name(*visit.reason)});
    if (visit.countMethod && *visit.countMethod != CountMethod::Each)
        rows.push_back({tr("Estimated"), text::name(*visit.countMethod)});
    if (visit.pestLow && visit.pestHigh)
        rows.push_back({tr("Likely"), text::range(*visit.pestLow, *visit.pestHigh)});
    if (visit.notIt) rows.push_back({tr("Other kinds"), m_entry.book().animal().amount(*visit.notIt)});
    if (visit.unsure) rows.push_back({tr("Not sure"), m_entry.book().animal().amount(*visit.unsure)});
    if (visit.bees) rows.push_back({tr("Bees"), text::bees(*visit.bees)});
    if (const QString longer = longIntervalWords(m_entry.caught()); !longer.isEmpty())
        rows.push_back({tr("Longer than a week"), longer});
}

void VisitDoneViewModel::addTrapRows(std::vector<Row>& rows) const
{
    const Visit& visit = m_entry.visit();
    if (visit.state && *visit.state != TrapState::Fine)
        rows.push_back({tr("Trap"), text::name(*visit.state)});
    if (visit.canopy) rows.push_back({tr("Canopy"), text::height(*visit.canopy)});
    if (visit.entrance) rows.push_back({tr("Entrance set to"), text::height(*visit.entrance)});
    if (visit.floweringOver == true) rows.push_back({tr("Flowering"), tr("over")});
}

void VisitDoneViewModel::addLureRows(std::vector<Row>& rows) const
{
    const Visit& visit = m_entry.visit();
    const VisitRecords& records = m_entry.draft().records();
    if (visit.lureThere) rows.push_back({tr("Lure"), *visit.lureThere ? tr("there") : tr("gone")});
    if (records.lure.what)
        rows.push_back({tr("New lure"),
            records.lure.lureLot.empty() ? tr("put in")
                                         : tr("lot %1").arg(QString::fromStdString(records.lure.lureLot))});
    if (visit.stripThere) rows.push_back({tr("Killing strip"), *visit.stripThere ? tr("there") : tr("gone")});
    if (records.strip.what) rows.push_back({tr("New strip"), tr("put in")});
    if (visit.mothsAlive == true) rows.push_back({tr("Moths alive"), tr("yes: the strip is spent")});
    if (visit.emptied == false)
        rows.push_back({m_entry.book().isBucket() ? tr("Bucket") : tr("Trap"), tr("not emptied")});
    if (visit.sprayed == true) {
        const QString what = QString::fromStdString(visit.sprayedWhat);
        rows.push_back({tr("Sprayed"), what.isEmpty() ? tr("yes") : what});
    }
}

std::vector<VisitDoneViewModel::Row> VisitDoneViewModel::rows() const
{
    std::vector<Row> rows;
    addCountRows(rows);
    addTrapRows(rows);
    addLureRows(rows);
    return rows;
}

QStringList VisitDoneViewModel::labels() const
{
    QStringList labels;
    for (const Row& row : rows()) labels.append(row.label);
    return labels;
}

QStringList VisitDoneViewModel::values() const
{
    QStringList values;
    for (const Row& row : rows()) values.append(row.value);
    return values;
}

std::vector<AskedQuestion> VisitDoneViewModel::open() const
{
    std::vector<AskedQuestion> open = m_entry.questions();
    std::erase_if(open,
        [&](const AskedQuestion& asked) { return m_entry.position().answered.contains(questionKey(asked)); });
    return open;
}

QStringList VisitDoneViewModel::questions() const
{
    QStringList words;
    for (const AskedQuestion& asked : open()) words.append(questionWords(asked, m_entry.book().animal()));
    return words;
}

void VisitDoneViewModel::answer(int question)
{
    const auto asked = open();
    if (question < 0 || static_cast<std::size_t>(question) >= asked.size()) return;
    const QString key = questionKey(asked[static_cast<std::size_t>(question)]);
    m_entry.go([&](VisitPosition& position) { position.answered.append(key); });
}

QString VisitDoneViewModel::day() const
{
    return QString::fromStdString(formatDay(m_entry.day()));
}

void VisitDoneViewModel::setDay(const QString& day)
{
    const auto parsed = parseDay(day.toStdString());
    if (!parsed) return tell(parsed.error());
    if (*parsed == m_entry.day()) return;
    clearTrouble();
    // The hour of the day stays: who types a count in later knows the day and hardly the minute.
    const std::chrono::milliseconds moved{*parsed - m_entry.day()};
    m_entry.change(
        [&](VisitRecords& records) {
            Visit& visit = records.visit;
            visit.day = *parsed;
            if (visit.atMs) visit.atMs = std::max<std::int64_t>(0, *visit.atMs + moved.count());
        },
        Undoing::AsTyped);
}

QString VisitDoneViewModel::today() const
{
    return QString::fromStdString(formatDay(session().clock().today()));
}

void VisitDoneViewModel::setRemark(const QString& remark)
{
    m_entry.change(
        [&](VisitRecords& records) { records.visit.remark = remark.toStdString(); }, Undoing::AsTyped);
}

bool VisitDoneViewModel::hasSample() const
{
    return m_entry.visit().unsure.value_or(Moths{}).value() > 0;
}

QString VisitDoneViewModel::sampleNumber() const
{
    return QString::fromStdString(m_entry.draft().records().sample.number);
}

void VisitDoneViewModel::setSampleNumber(const QString& number)
{
    m_entry.change(
        [&](VisitRecords& records) { records.sample.number = number.toStdString(); }, Undoing::AsTyped);
}

QString VisitDoneViewModel::sampleError() const
{
    if (!hasSample()) return {};
    const QString number = sampleNumber().trimmed();
    if (number.isEmpty()) return text::sentence(Error{ErrorCode::Empty, {"number"}});
    for (const Sample& sample : m_entry.book().samples)
        if (sample.visit != m_entry.visit().id && sample.number == number.toStdString())
            return tr("Another bag of this trap bears this number already.");
    return {};
}

QUrl VisitDoneViewModel::photo() const
{
    if (!hasPhoto()) return {};
    return QUrl::fromLocalFile(
        QString::fromStdString(store::photoPath(session().store().path(), m_entry.visit().photo)));
}

void VisitDoneViewModel::addPhoto(const QUrl& file)
{
    const std::string source =
        file.isLocalFile() ? file.toLocalFile().toStdString() : file.toString().toStdString();
    const std::string storePath = session().store().path();
    session().lookUp<std::string>(
        this,
        [=](store::Reader&) -> Result<std::string> {
            if (!QImageReader(QString::fromStdString(source)).canRead())
                return Error{ErrorCode::PictureUnreadable, {source}};
            return store::keepPhoto(storePath, source);
        },
        [this](const Result<std::string>& kept) {
            if (!kept) return tell(kept.error());
            clearTrouble();
            m_entry.change([&](VisitRecords& records) { records.visit.photo = *kept; });
        });
}

void VisitDoneViewModel::removePhoto()
{
    m_entry.change([](VisitRecords& records) { records.visit.photo.clear(); });
}

} // namespace duskrow::app
