// SPDX-License-Identifier: MIT
#include "app/visit/samples_view_model.h"

#include <QQmlEngine>

#include <algorithm>
#include <map>

#include "app/trap_words.h"
#include "app/visit/trap_book.h"
#include "app/visit/visit_words.h"
#include "store/queries.h"
#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::app {

using namespace duskrow::domain;

SamplesViewModel::SamplesViewModel(Session& session, const QString& trap)
    : ViewModel(session), m_trap(parseUuid(trap.toStdString())), m_list(nullptr)
{
    QQmlEngine::setObjectOwnership(&m_list, QQmlEngine::CppOwnership);
    connect(&session, &Session::changed, this, &SamplesViewModel::refresh);
    refresh();
}

Result<std::vector<SampleRow>> SamplesViewModel::read(
    store::Reader& reader, const Uuid& season, const std::optional<Uuid>& trap)
{
    const auto samples = trap ? store::samplesOf(reader, *trap) : store::samplesOfSeason(reader, season);
    if (!samples) return samples.error();
    std::vector<SampleRow> rows;
    std::map<Uuid, TrapBook> books;
    for (const Sample& sample : *samples) {
        TrapBook& book = books[sample.trap];
        if (book.trap.id.isNil()) {
            auto held = store::trap(reader, sample.trap);
            if (!held) return held.error();
            if (*held) book.trap = std::move(**held);
            auto site = store::site(reader, book.trap.site);
            if (!site) return site.error();
            if (*site) book.site = std::move(**site);
        }
        rows.push_back({sample, book.trap.site, book.title(), book.trap.pest});
    }
    return rows;
}

void SamplesViewModel::refresh()
{
    const Uuid season = session().season() ? session().season()->id : Uuid{};
    session().lookUp<std::vector<SampleRow>>(
        this, [season, trap = m_trap](store::Reader& reader) { return read(reader, season, trap); },
        [this](const Result<std::vector<SampleRow>>& rows) {
            if (!rows) return tell(rows.error());
            take(*rows);
        });
}

void SamplesViewModel::take(std::vector<SampleRow> rows)
{
    std::optional<LocalDay> latest;
    for (SampleRow& row : rows) {
        row.animal = animalOf(session(), row.pest);
        if (!row.sample.sentDay || (latest && *row.sample.sentDay < *latest)) continue;
        latest = row.sample.sentDay;
        m_lastSentTo = QString::fromStdString(row.sample.sentTo);
    }
    m_open = static_cast<int>(std::count_if(rows.begin(), rows.end(),
        [](const SampleRow& row) { return row.sample.state != SampleState::Named; }));
    m_list.take(std::move(rows));
    m_isKnown = true;
    Q_EMIT changed();
}

const Sample* SamplesViewModel::sample() const
{
    const SampleRow* row = m_list.find(m_chosen);
    return row ? &row->sample : nullptr;
}

void SamplesViewModel::choose(const QString& sample)
{
    m_chosen = sample;
    clearTrouble();
    Q_EMIT changed();
}

QString SamplesViewModel::number() const
{
    return sample() ? QString::fromStdString(sample()->number) : QString();
}

QString SamplesViewModel::trapTitle() const
{
    const SampleRow* row = m_list.find(m_chosen);
    return row ? row->trapTitle : QString();
}

QString SamplesViewModel::visitId() const
{
    return sample() ? QString::fromStdString(formatUuid(sample()->visit)) : QString();
}

int SamplesViewModel::moths() const
{
    return sample() ? static_cast<int>(sample()->moths.value_or(Moths{}).value()) : 0;
}

QString SamplesViewModel::state() const
{
    if (!sample()) return {};
    const auto name = sampleStateNames[static_cast<std::size_t>(sample()->state.value_or(SampleState::Kept))];
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

QString SamplesViewModel::summary() const
{
    const SampleRow* row = m_list.find(m_chosen);
    return row ? sampleWords(row->sample, row->animal) : QString();
}

QStringList SamplesViewModel::trailLabels() const
{
    QStringList labels;
    if (!sample()) return labels;
    const auto add = [&](const std::optional<LocalDay>& day, SampleState state) {
        if (day) labels.append(text::name(state));
    };
    add(sample()->keptDay, SampleState::Kept);
    add(sample()->sentDay, SampleState::Sent);
    add(sample()->receivedDay, SampleState::Received);
    add(sample()->namedDay, SampleState::Named);
    return labels;
}

QStringList SamplesViewModel::trailValues() const
{
    QStringList values;
    const Sample* held = sample();
    if (!held) return values;
    const auto add = [&](const std::optional<LocalDay>& day, const QString& more) {
        if (day)
            values.append(text::shortDay(*day) + (more.isEmpty() ? QString() : QStringLiteral(", ") + more));
    };
    const auto told = [](const char* words, const std::string& name) {
        return name.empty() ? QString() : tr(words).arg(QString::fromStdString(name));
    };
    add(held->keptDay, {});
    add(held->sentDay, told(QT_TR_NOOP("to %1"), held->sentTo));
    add(held->receivedDay, {});
    add(held->namedDay, told(QT_TR_NOOP("by %1"), held->namedBy));
    return values;
}

QString SamplesViewModel::pestName() const
{
    const SampleRow* row = m_list.find(m_chosen);
    if (!row) return {};
    const auto trap = store::trap(session().reader(), row->sample.trap);
    if (!trap || !*trap) return {};
    const Protocol* protocol = session().protocol((*trap)->pest);
    return protocol ? inSentence(protocol->name) : QString::fromStdString((*trap)->pest);
}

void SamplesViewModel::keep(const std::function<void(Sample&)>& act)
{
    const SampleRow* row = m_list.find(m_chosen);
    if (!row || m_isBusy) return;
    Sample after = row->sample;
    act(after);
    Edit edit = correction(row->sample, after, row->site);
    if (edit.fields.empty()) return;
    m_isBusy = true;
    Q_EMIT changed();
    session().keep({std::move(edit)}, std::nullopt, this, [this](const Result<store::Kept>& kept) {
        m_isBusy = false;
        Q_EMIT changed();
        if (!kept) return tell(kept.error());
        clearTrouble();
        Q_EMIT stepKept();
    });
}

void SamplesViewModel::send(const QString& to)
{
    keep([&](Sample& sample) {
        sample.state = SampleState::Sent;
        sample.sentDay = session().clock().today();
        sample.sentTo = to.trimmed().toStdString();
    });
}

void SamplesViewModel::receive()
{
    keep([&](Sample& sample) {
        sample.state = SampleState::Received;
        sample.receivedDay = session().clock().today();
    });
}

void SamplesViewModel::nameAs(const QString& kind, const QString& by, int pest)
{
    if (!sample()) return;
    if (pest < 0 || pest > moths())
        return tell({ErrorCode::OutOfRange, {"pest", "0", std::to_string(moths())}});
    keep([&](Sample& sample) {
        sample.state = SampleState::Named;
        sample.namedDay = session().clock().today();
        sample.namedAs = kind.trimmed().toStdString();
        sample.namedBy = by.trimmed().toStdString();
        sample.pest = Moths{pest};
    });
}

void SamplesViewModel::stepBack()
{
    keep([](Sample& sample) {
        switch (sample.state.value_or(SampleState::Kept)) {
        case SampleState::Kept:
            break;
        case SampleState::Sent:
            sample.state = SampleState::Kept;
            sample.sentDay.reset();
            sample.sentTo.clear();
            break;
        case SampleState::Received:
            sample.state = sample.sentDay ? SampleState::Sent : SampleState::Kept;
            sample.receivedDay.reset();
            break;
        case SampleState::Named:
            sample.state = sample.receivedDay ? SampleState::Received
                : sample.sentDay              ? SampleState::Sent
                                              : SampleState::Kept;
            sample.namedDay.reset();
            sample.namedAs.clear();
            sample.namedBy.clear();
            sample.pest.reset();
            break;
        }
    });
}

} // namespace duskrow::app
