// SPDX-License-Identifier: MIT
#include "app/import/import_view_model.h"

#include <QPointer>
#include <QUrl>

#include <algorithm>
#include <utility>

#include "app/import/import_words.h"
#include "store/queries.h"
#include "sync/exchange/import_run.h"
#include "text/amounts.h"
#include "text/import_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

bool isUnclear(const DayOrderFinding& found)
{
    return found.reason == DayOrderReason::Ambiguous || found.reason == DayOrderReason::Both;
}

QString counted(std::size_t count)
{
    return text::number(static_cast<std::int64_t>(count));
}

} // namespace

ImportViewModel::ImportViewModel(Session& session, QObject* parent)
    : ViewModel(session, parent), m_runner(session)
{
    connect(&m_runner, &ImportRunner::progressed, this, &ImportViewModel::progressed);
    m_ask.programme = session.store().programme();
    if (const auto& season = session.season()) {
        const auto uses = store::protocolsInUse(session.reader(), season->id);
        if (!uses) tell(uses.error());
        if (uses)
            for (const ProtocolUse& use : *uses)
                if (const Protocol* protocol = session.protocol(use.pest))
                    m_ask.pests.push_back({m_ask.programme, protocol->id, protocol->version,
                        protocol->trapTypes.empty() ? std::string() : protocol->trapTypes.front().id});
        m_ask.choices.weekStart = season->weekStart;
    }
    if (const auto allowed = m_runner.checkAllowed(); !allowed) tell(allowed.error());
    readEarlier();
}

QStringList ImportViewModel::columnCodes() const
{
    return app::columnCodes();
}

QStringList ImportViewModel::columnNames() const
{
    return app::columnNames();
}

QStringList ImportViewModel::pests() const
{
    QStringList all;
    for (const ImportTerms& terms : m_ask.pests) all << QString::fromStdString(terms.pest);
    return all;
}

QString ImportViewModel::emptied() const
{
    if (!m_ask.emptied) return QStringLiteral("unsaid");
    return *m_ask.emptied ? QStringLiteral("yes") : QStringLiteral("no");
}

QString ImportViewModel::emptiedLine() const
{
    return text::emptiedFinding(m_ask.emptied);
}

QString ImportViewModel::year() const
{
    return m_ask.choices.year ? QString::number(*m_ask.choices.year) : QString();
}

void ImportViewModel::open(const QString& path)
{
    const QUrl url(path);
    const QString local = url.isLocalFile() ? url.toLocalFile() : path.trimmed();
    if (local.isEmpty() || isRunning()) return;
    const auto weekStart = m_ask.choices.weekStart;
    m_ask.path = local.toStdString();
    m_ask.choices = {};
    m_ask.choices.weekStart = weekStart;
    m_ask.emptied = true;
    m_chosenColumns.clear();
    m_doneLine.clear();
    read();
}

void ImportViewModel::forget()
{
    if (isRunning()) return;
    m_ask.path.clear();
    m_seen.reset();
    clearTrouble();
    Q_EMIT shown();
}

void ImportViewModel::choose(const QString& what, const QString& code)
{
    formats::ImportChoices& choices = m_ask.choices;
    const std::string chosen = code.trimmed().toStdString();
    if (what == QLatin1String("encoding")) choices.encoding = formats::encodingNamed(chosen);
    if (what == QLatin1String("delimiter")) choices.delimiter = formats::delimiterNamed(chosen);
    if (what == QLatin1String("order"))
        choices.dayOrder = chosen.empty()
            ? std::nullopt
            : std::optional(chosen == "day" ? DayOrder::DayFirst : DayOrder::MonthFirst);
    if (what == QLatin1String("decimal"))
        choices.decimalMark = chosen.empty()
            ? std::nullopt
            : std::optional(chosen == "point" ? DecimalMark::Point : DecimalMark::Comma);
    if (what == QLatin1String("pest")) m_ask.pest = chosen;
    if (what == QLatin1String("emptied"))
        m_ask.emptied = chosen == "unsaid" ? std::nullopt : std::optional(chosen == "yes");
    if (what == QLatin1String("year")) {
        bool isNumber = false;
        const int year = code.toInt(&isNumber);
        if (!chosen.empty() && !(isNumber && year >= 1900 && year <= 2200))
            return tell(Error{ErrorCode::OutOfRange, {"year", "1900", "2200"}});
        choices.year = chosen.empty() ? std::nullopt : std::optional(year);
    }
    read();
}

void ImportViewModel::chooseColumn(const QString& column, const QString& code)
{
    const std::string field = code.toStdString();
    const std::string bare = field.substr(0, field.find(':'));
    std::erase_if(m_chosenColumns, [&](const auto& one) {
        return bare != "ignore" && one.second.substr(0, one.second.find(':')) == bare;
    });
    m_chosenColumns[column.toStdString()] = field;
    m_ask.choices.columns.clear();
    for (const auto& [number, is] : m_chosenColumns) m_ask.choices.columns.push_back({number, is});
    read();
}

void ImportViewModel::read()
{
    if (m_ask.path.empty()) return;
    if (m_isReading) {
        m_mustReadAgain = true;
        return;
    }
    m_isReading = true;
    Q_EMIT shown();
    using Seen = std::shared_ptr<const ImportSeen>;
    session().lookUpLong<Seen>(
        this, [ask = m_ask](store::Reader& reader) { return readImport(reader, ask); },
        [this](const Result<Seen>& seen) {
            m_isReading = false;
            if (std::exchange(m_mustReadAgain, false)) return read();
            if (!seen) {
                m_seen.reset();
                tell(seen.error());
                return Q_EMIT shown();
            }
            clearTrouble();
            show(*seen);
        });
}

void ImportViewModel::show(std::shared_ptr<const ImportSeen> seen)
{
    m_seen = std::move(seen);
    std::vector<Row> form = formRows(m_seen->reading);
    // Days and numbers were not looked at while nobody knows in which columns they stand.
    if (!m_seen->plan && m_seen->reading.rows.empty()) form.resize(2);
    m_form.show(std::move(form));
    m_columns.show(columnRows(m_seen->reading));
    const RowWords none;
    const auto& plan = m_seen->plan;
    m_makes.show(plan ? makesRows(*plan) : std::vector<Row>{});
    m_refused.show(wordRows(plan ? plan->refused : none));
    m_notes.show(wordRows(plan ? plan->notes : none));
    m_moreRefused = moreWords(plan ? plan->refused : none);
    m_moreNotes = moreWords(plan ? plan->notes : none);
    Q_EMIT shown();
}

QString ImportViewModel::missing() const
{
    if (!m_seen) return {};
    if (m_seen->missing) return text::sentence(*m_seen->missing);
    if (isUnclear(m_seen->reading.dayOrder))
        return text::sentence(Error{ErrorCode::DayOrderUnsaid, {m_seen->reading.dayOrder.example}});
    return {};
}

bool ImportViewModel::canBring() const
{
    return m_seen && !m_isReading && !isRunning() && missing().isEmpty() && m_seen->plan
        && m_seen->plan->size() > 0 && m_runner.checkAllowed().has_value();
}

QString ImportViewModel::bringLine() const
{
    const std::size_t size = m_seen && m_seen->plan ? m_seen->plan->size() : 0;
    return size == 0 ? tr("Nothing of it is new") : tr("Bring in %1 records").arg(counted(size));
}

std::optional<store::ImportBy> ImportViewModel::by()
{
    const auto allowed = m_runner.checkAllowed();
    if (!allowed) tell(allowed.error());
    if (!allowed || !session().me()) return std::nullopt;
    const Moment now = session().clock().now();
    return store::ImportBy{session().me()->id, now.at, now.offset};
}

void ImportViewModel::run(const ImportRunner::Work& work, std::function<void(const store::ImportRun&)> done)
{
    m_runner.run(work, [this, done = std::move(done)](const Result<store::ImportRun>& run) {
        if (!run)
            tell(run.error());
        else
            done(*run);
        readEarlier();
        Q_EMIT shown();
    });
    Q_EMIT shown();
}

void ImportViewModel::bring()
{
    const auto who = canBring() ? by() : std::nullopt;
    if (!who) return;
    run(
        [store = &session().store(), seen = m_seen, who = *who](const store::Progress& progress) {
            return sync::runImport(*store, *seen->plan, seen->import, who, progress);
        },
        [this](const store::ImportRun& run) {
            m_doneLine = run.isStopped
                ? tr("Stopped after %1 records. The same file again brings in the rest; taking it back takes "
                     "back these.")
                      .arg(counted(run.kept))
                : tr("%1 records were brought in.").arg(counted(run.kept));
            read();
        });
}

void ImportViewModel::stop()
{
    m_runner.stop();
}

void ImportViewModel::readEarlier()
{
    auto imports = store::importsNoted(session().reader());
    if (!imports) return tell(imports.error());
    m_imports = std::move(*imports);
    std::vector<Row> rows;
    for (const store::ImportNoted& import : m_imports)
        rows.push_back(
            {.key = QString::fromStdString(import.id), .title = QString::fromStdString(import.file)});
    m_earlier.show(std::move(rows));
}

void ImportViewModel::askBack(const QString& import)
{
    const auto found = std::ranges::find(m_imports, import.toStdString(), &store::ImportNoted::id);
    if (found == m_imports.end() || isRunning()) return;
    m_undone = *found;
    m_undo.reset();
    m_undoLine = tr("What would be taken back is being worked out.");
    Q_EMIT shown();
    using Undo = std::shared_ptr<const store::ImportUndo>;
    session().lookUpLong<Undo>(
        this,
        [import = *found](store::Reader& reader) -> Result<Undo> {
            auto undo = store::planUndo(reader, import);
            if (!undo) return undo.error();
            return Undo(std::make_shared<const store::ImportUndo>(std::move(*undo)));
        },
        [this](const Result<Undo>& undo) {
            if (!undo) {
                m_undoLine.clear();
                tell(undo.error());
                return Q_EMIT shown();
            }
            m_undo = *undo;
            m_undoLine = tr("Taken back: %1. Stays, because somebody changed or uses it: %2.")
                             .arg(countsByKind(m_undo->withdrawn), counted(m_undo->staying.size()));
            Q_EMIT shown();
        });
}

void ImportViewModel::takeBack()
{
    const auto who = m_undo && !isRunning() ? by() : std::nullopt;
    if (!who) return;
    run([store = &session().store(), undo = m_undo, import = m_undone, who = *who](
            const store::Progress& progress) { return store::runUndo(*store, *undo, import, who, progress); },
        [this](const store::ImportRun& run) {
            m_doneLine = tr("%1 records were taken back.").arg(counted(run.kept));
            m_undo.reset();
            m_undoLine.clear();
            read();
        });
}

} // namespace duskrow::app
