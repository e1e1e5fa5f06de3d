// SPDX-License-Identifier: MIT
#include "app/walk/frame_view_model.h"

#include <QLocale>

#include <algorithm>

#include "formats/stop_lines_chart.h"
#include "text/amounts.h"
#include "text/frame_text.h"
#include "text/walk_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr std::int64_t mostInAFrame = 9'999;
const QString howRead = QStringLiteral("walk_how");

std::int64_t within(std::int64_t count)
{
    return std::clamp<std::int64_t>(count, 0, mostInAFrame);
}

} // namespace

FrameViewModel::FrameViewModel(
    Session& session, DeviceSettings& settings, const QString& walk, QObject* parent)
    : ViewModel(session, parent), m_settings(settings)
{
    const auto read = m_book.read(session, parseUuid(walk.toStdString()).value_or(Uuid{}));
    if (!read) {
        tell(read.error());
        return;
    }
    m_tiles.show(*m_book.protocol()->scouting);
    m_entry.startOver(m_book.protocol()->scouting->sizeClasses.size());
    if (const auto draft = session.draft(draftKey())) m_entry.read(*draft);
    connect(&session, &Session::changed, this, &FrameViewModel::refresh);
    connect(&session.position(), &place::PositionSource::reading, this, &FrameViewModel::placeChanged);
    m_tiles.setCounts(m_entry.now().bySize);
    showKept();
    evaluate();
}

QString FrameViewModel::draftKey() const
{
    return QStringLiteral("walk/") + QString::fromStdString(formatUuid(m_book.walk().id));
}

void FrameViewModel::refresh()
{
    if (!m_book.isFound()) return;
    if (const auto read = m_book.read(session(), m_book.walk().id); !read) return tell(read.error());
    showKept();
    evaluate();
    Q_EMIT refreshed();
    Q_EMIT placeChanged();
}

void FrameViewModel::showKept()
{
    std::vector<Row> rows;
    for (std::size_t i = 0; i < m_book.frames().size(); ++i) {
        const Frame& frame = m_book.frames()[i];
        const QString id = QString::fromStdString(formatUuid(frame.id));
        Row row{.key = id, .title = tr("Frame %1").arg(text::number(static_cast<std::int64_t>(i + 1)))};
        row.besides = frame.larvae ? text::larvae(*frame.larvae) : tr("not counted");
        if (frame.stop) row.detail = tr("stop %1").arg(text::number(*frame.stop));
        row.route = QStringLiteral("history");
        row.subject = QStringLiteral("frame/") + id;
        rows.push_back(std::move(row));
    }
    std::reverse(rows.begin(), rows.end());
    m_kept.show(std::move(rows));
}

// With the frame at hand once it holds anything: what is seen is what keeping it will come to.
void FrameViewModel::evaluate()
{
    const bool isBegun = !m_entry.isUntouched();
    const auto result =
        m_book.result(session().clock().today(), isBegun ? std::optional(frameNow()) : std::nullopt);
    if (result)
        m_result = *result;
    else
        tell(result.error());
    ++m_revision;
    Q_EMIT entryChanged();
}

void FrameViewModel::change(const FrameEntry& after)
{
    if (!m_book.isFound() || !m_entry.change(after)) return;
    m_tiles.setCounts(m_entry.now().bySize);
    evaluate();
    Q_EMIT placeChanged();
    saveDraft();
}

void FrameViewModel::saveDraft()
{
    session().saveDraft(draftKey(), m_entry.written());
}

void FrameViewModel::add(int size, int by)
{
    FrameEntry after = m_entry.now();
    if (size < 0 || static_cast<std::size_t>(size) >= after.bySize.size()) return;
    std::int64_t& count = after.bySize[static_cast<std::size_t>(size)];
    count = within(count + by);
    if (after.larvae() <= mostInAFrame) change(after);
}

void FrameViewModel::addSick(int by)
{
    FrameEntry after = m_entry.now();
    after.sick = within(after.sick + by);
    change(after);
}

void FrameViewModel::setPods(int seen, int damaged)
{
    FrameEntry after = m_entry.now();
    after.podsSeen = within(seen);
    after.podsDamaged = std::min(within(damaged), *after.podsSeen);
    change(after);
}

void FrameViewModel::clearPods()
{
    FrameEntry after = m_entry.now();
    after.podsSeen.reset();
    after.podsDamaged.reset();
    change(after);
}

void FrameViewModel::setRemark(const QString& remark)
{
    FrameEntry after = m_entry.now();
    after.remark = remark;
    change(after);
}

void FrameViewModel::setSameStop(bool isSame)
{
    FrameEntry after = m_entry.now();
    after.isSameStop = isSame;
    change(after);
}

void FrameViewModel::undo()
{
    m_entry.undo();
    m_tiles.setCounts(m_entry.now().bySize);
    evaluate();
    saveDraft();
}

int FrameViewModel::stop() const
{
    return nextStop(m_book.frames(), m_entry.now().isSameStop);
}

Frame FrameViewModel::frameNow() const
{
    const Moment now = session().clock().now();
    const FrameEntry& entry = m_entry.now();
    Frame frame;
    frame.walk = m_book.walk().id;
    frame.day = now.day;
    frame.atMs = toMs(now.at);
    frame.offsetMin = static_cast<int>(now.offset.count());
    frame.stop = stop();
    frame.larvae = Larvae{entry.larvae()};
    frame.bySize = writeSizes(*m_book.protocol()->scouting, entry.bySize);
    frame.sick = Larvae{entry.sick};
    frame.podsSeen = entry.podsSeen;
    frame.podsDamaged = entry.podsDamaged;
    frame.remark = entry.remark.trimmed().toStdString();
    if (const auto& here = session().position().last()) {
        frame.latE7 = here->point.latE7;
        frame.lonE7 = here->point.lonE7;
        frame.accuracy = Millimetres{
            std::max<std::int64_t>(1, static_cast<std::int64_t>(here->accuracy.value() * 1000.0 + 0.5))};
    }
    return frame;
}

void FrameViewModel::keep(std::vector<Edit> edits, const std::function<void()>& then)
{
    if (m_busy || !m_book.isFound()) return;
    m_busy = true;
    Q_EMIT busyChanged();
    session().keep(std::move(edits), draftKey(), this, [this, then](const Result<store::Kept>& kept) {
        m_busy = false;
        Q_EMIT busyChanged();
        if (!kept) return tell(kept.error());
        clearTrouble();
        m_entry.startOver(m_book.protocol()->scouting->sizeClasses.size());
        m_tiles.setCounts(m_entry.now().bySize);
        refresh();
        then();
    });
}

void FrameViewModel::keepFrame()
{
    Frame frame = frameNow();
    frame.id = session().newId();
    keep({creation(frame, m_book.walk().site)}, [this] { Q_EMIT frameKept(); });
}

void FrameViewModel::finish()
{
    std::vector<Edit> edits;
    if (!m_entry.isUntouched()) {
        Frame frame = frameNow();
        frame.id = session().newId();
        edits.push_back(creation(frame, m_book.walk().site));
    }
    Walk after = m_book.walk();
    after.finished = true;
    if (Edit edit = correction(m_book.walk(), after, after.site); !edit.fields.empty())
        edits.push_back(std::move(edit));
    const QString walk = QString::fromStdString(formatUuid(after.id));
    if (edits.empty()) return Q_EMIT finished(walk);
    keep(std::move(edits), [this, walk] { Q_EMIT finished(walk); });
}

QString FrameViewModel::title() const
{
    if (!isFound()) return {};
    //: a field's name, then the number of the frame
    return tr("%1 · frame %2").arg(m_book.title(), text::number(framesKept() + 1));
}

QString FrameViewModel::walk() const
{
    return QString::fromStdString(formatUuid(m_book.walk().id));
}

QList<double> FrameViewModel::edges() const
{
    QList<double> edges;
    if (!isFound()) return edges;
    for (const SizeClass& size : m_book.protocol()->scouting->sizeClasses)
        if (size.from.value() > 0) edges << static_cast<double>(size.from.value());
    return edges;
}

QString FrameViewModel::frameLine() const
{
    if (!isFound() || !m_book.walk().frameCm2) return {};
    const double area = static_cast<double>(*m_book.walk().frameCm2) / 10'000.0;
    const QString line = tr("%1 m², searched to the ground").arg(QLocale().toString(area, 'g', 3));
    //: the frame, then a note of the walk
    return m_book.walk().drySeason.value_or(false) ? tr("%1 · dry season").arg(line) : line;
}

QString FrameViewModel::placeLine() const
{
    const auto& here = session().position().last();
    if (!isFound() || m_book.frames().empty()) return {};
    const auto& spacing = m_book.protocol()->scouting->spacing.value;
    const QString wanted =
        spacing ? tr("%1, %2").arg(text::distance(*spacing), text::paces(*spacing)) : QString();
    if (!here) return spacing ? tr("Walk at least %1 between stops.").arg(wanted) : QString();
    const auto away = fromNearestStop(m_book.frames(), here->point, stop());
    if (!away) return {};
    if (isTooNear()) return tr("%1 from the nearest stop: walk on to %2.").arg(text::distance(*away), wanted);
    return tr("%1 from the nearest stop").arg(text::distance(*away));
}

bool FrameViewModel::isTooNear() const
{
    const auto& here = session().position().last();
    if (!isFound() || !here || m_entry.now().isSameStop) return false;
    const auto& spacing = m_book.protocol()->scouting->spacing.value;
    const auto away = fromNearestStop(m_book.frames(), here->point, stop());
    // Within the fix's own error nobody is told to walk on.
    return spacing && away && *away + here->accuracy < *spacing;
}

QString FrameViewModel::mean() const
{
    return m_result ? text::shortDensity(m_result->estimate) : QString();
}

QString FrameViewModel::rangeLine() const
{
    return m_result ? text::shortRange(*m_result) : QString();
}

QString FrameViewModel::callLine() const
{
    return m_result ? text::shortCall(*m_result) : QString();
}

QString FrameViewModel::caution() const
{
    if (!isFound()) return {};
    const auto cautions = m_book.protocol()->cautionsAt(CautionPlace::Counting);
    return cautions.empty() ? QString()
                            : QString::fromStdString(cautions.front().text.in(Session::language()));
}

bool FrameViewModel::isDecided() const
{
    return m_entry.isUntouched() && m_result && m_result->plan && m_result->report.state != StopState::GoOn;
}

QString FrameViewModel::keepText() const
{
    if (!isFound()) return {};
    const auto& spacing = m_book.protocol()->scouting->spacing.value;
    if (!spacing) return tr("Keep this frame");
    return tr("Keep this frame, walk on %1").arg(text::distance(*spacing));
}

bool FrameViewModel::needsHow() const
{
    return isFound() && framesKept() == 0 && m_entry.isUntouched()
        && !m_settings.wasDoneOn(
            howRead, QDate(session().season() ? session().season()->year.value_or(2000) : 2000, 1, 1));
}

// Easiest in the early morning and the evening, when larvae are up feeding: Canola Council of Canada, Canola
// Watch, 17 July 2013. The hours are common practice, no source.
QString FrameViewModel::now() const
{
    const Moment now = session().clock().now();
    const auto local = std::chrono::floor<std::chrono::hours>(now.at + now.offset);
    const auto hour = (local - std::chrono::floor<std::chrono::days>(local)).count();
    if (hour < 10) return tr("It is early: many larvae are up on the plants, feeding.");
    if (hour >= 18) return tr("It is evening: many larvae are up on the plants, feeding.");
    return tr("It is day: look on the ground, under litter and clods and in cracks.");
}

QStringList FrameViewModel::how() const
{
    QStringList sentences;
    if (!isFound()) return sentences;
    for (const Statement& statement : m_book.protocol()->scouting->where)
        sentences << QString::fromStdString(statement.text.in(Session::language()));
    return sentences;
}

// Once a season is enough.
void FrameViewModel::readHow()
{
    m_settings.firstTimeOn(
        howRead, QDate(session().season() ? session().season()->year.value_or(2000) : 2000, 1, 1));
    Q_EMIT howChanged();
}

PictureHandle FrameViewModel::lines(double width, double height, double textScale, int /*revision*/) const
{
    if (!m_result || !m_result->plan) return {};
    formats::StopLinesInput input{
        .width = width, .height = height, .textScale = textScale, .plan = *m_result->plan};
    Larvae total{0};
    for (const FrameStop& stop : m_result->stops) {
        total = Larvae{total.value() + stop.larvae.value()};
        input.totals.push_back(total);
    }
    input.title = tr("Larvae so far, by stop").toStdString();
    input.description =
        text::stopSentence(*m_result->plan, m_result->report, m_result->estimate).toStdString();
    input.aboveLabel = tr("above", "the threshold").toStdString();
    input.onLabel = tr("keep looking").toStdString();
    input.belowLabel = tr("below", "the threshold").toStdString();
    return PictureHandle(formats::stopLinesChart(input));
}

} // namespace duskrow::app
