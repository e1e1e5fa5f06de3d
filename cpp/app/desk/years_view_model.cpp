// SPDX-License-Identifier: MIT
#include "app/desk/years_view_model.h"

#include <QClipboard>
#include <QGuiApplication>

#include <utility>

#include "text/amounts.h"
#include "text/desk_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct Begun {
    YearNames names;
    std::optional<store::TrapKind> kind; // nothing before there is a trap
};

Result<Begun> begin(store::Reader& reader, const Season& season)
{
    auto names = YearNames::read(reader);
    if (!names) return names.error();
    Begun begun{std::move(*names), {}};
    auto kind = store::mostCommonKind(reader, season, {});
    if (kind)
        begun.kind = std::move(*kind);
    else if (kind.error().code != ErrorCode::NameMissing)
        return kind.error();
    return begun;
}

} // namespace

YearsViewModel::YearsViewModel(Session& session, QObject* parent) : ViewModel(session, parent)
{
    connect(&session, &Session::changed, this, &YearsViewModel::refresh);
    refresh();
}

YearsViewModel::~YearsViewModel()
{
    if (m_stopped) *m_stopped = true;
}

void YearsViewModel::refresh()
{
    const auto& season = session().season();
    if (!season) return;
    if (m_isReading) {
        m_mustReadAgain = true;
        return;
    }
    m_isReading = true;
    session().lookUp<Begun>(
        this, [season = *season](store::Reader& reader) { return begin(reader, season); },
        [this](const Result<Begun>& begun) {
            m_isReading = false;
            if (!begun) return tell(begun.error());
            m_names = begun->names;
            const Protocol* known = begun->kind ? session().protocol(begun->kind->pest) : nullptr;
            if (known) {
                m_kind = *begun->kind;
                m_protocol = std::make_shared<const Protocol>(*known);
                readSeason();
                readYears();
            }
            Q_EMIT shown();
            if (std::exchange(m_mustReadAgain, false)) refresh();
        });
}

void YearsViewModel::readSeason()
{
    using Read = std::shared_ptr<const store::RegionOfSeason>;
    session().lookUp<Read>(
        this,
        [season = *session().season(), protocol = m_protocol, kind = m_kind,
            today = session().clock().today()](store::Reader& reader) -> Result<Read> {
            auto read = store::regionOfSeason(reader, season, *protocol, kind, today);
            if (!read) return read.error();
            return Read(std::make_shared<const store::RegionOfSeason>(std::move(*read)));
        },
        [this](const Result<Read>& read) {
            if (!read) return tell(read.error());
            m_season = *read;
            const int last = static_cast<int>(m_season->result.whole.season.weeks.size()) - 1;
            if (m_week < 0 || m_week > last) m_week = last;
            arrange();
        });
}

// Former seasons take their time: each says that it is being read, and none is read when the page is gone.
void YearsViewModel::readYears()
{
    if (m_stopped) *m_stopped = true;
    m_stopped = std::make_shared<std::atomic<bool>>(false);
    using Read = std::shared_ptr<const std::vector<RegionYear>>;
    const auto told = [self = QPointer<YearsViewModel>(this), stopped = m_stopped, app = &session()](
                          int year) {
        if (*stopped) return false;
        QMetaObject::invokeMethod(app, [self, year] {
            if (!self) return;
            self->m_yearRead = year;
            Q_EMIT self->shown();
        });
        return true;
    };
    session().lookUpLong<Read>(
        this,
        [protocol = m_protocol, kind = m_kind, today = session().clock().today(), told](
            store::Reader& reader) -> Result<Read> {
            auto years = store::regionYears(reader, *protocol, kind, today, told);
            if (!years) return years.error();
            return Read(std::make_shared<const std::vector<RegionYear>>(std::move(*years)));
        },
        [this, stopped = m_stopped](const Result<Read>& years) {
            if (*stopped) return;
            if (!years) return tell(years.error());
            m_years = *years;
            m_yearRead = 0;
            arrange();
        });
}

void YearsViewModel::arrange()
{
    std::vector<Row> rows;
    if (m_view == QLatin1String("weeks") && m_season && m_week >= 0)
        rows = weekRows(
            m_names, *m_season, m_season->result.whole.season.weeks[static_cast<std::size_t>(m_week)].week);
    if (m_view == QLatin1String("years") && m_years)
        rows = yearRows(m_names, *m_years, m_by == QLatin1String("keeper"));
    if (m_view == QLatin1String("bands") && m_years) rows = bandRows(*m_years, *m_protocol, m_kind.trapType);
    m_rows.show(std::move(rows));
    m_isCopied = false;
    ++m_revision;
    Q_EMIT shown();
}

void YearsViewModel::setView(const QString& view)
{
    if (view == m_view) return;
    m_view = view;
    arrange();
}

void YearsViewModel::setBy(const QString& by)
{
    if (by == m_by) return;
    m_by = by;
    arrange();
}

QString YearsViewModel::kindLine() const
{
    return m_protocol ? QString::fromStdString(m_protocol->name.in(Session::language())) : QString();
}

QString YearsViewModel::heading() const
{
    if (m_view == QLatin1String("weeks") && m_season && m_week >= 0)
        return text::weekDays(m_season->result.whole.season.weeks[static_cast<std::size_t>(m_week)].week);
    if (m_view == QLatin1String("years") && m_years && !m_years->empty())
        return tr("Catch up to %1 of each year").arg(text::shortDay(session().clock().today()));
    if (m_view == QLatin1String("bands") && m_years) return tr("Share of the traps in each band");
    return {};
}

QString YearsViewModel::doing() const
{
    if (!session().season()) return tr("There is no season of this year yet.");
    if (m_isReading) return tr("The records are being read.");
    if (!m_protocol) return tr("No trap stands yet.");
    if (m_view == QLatin1String("weeks"))
        return !m_season ? tr("The records are being read.")
            : m_week < 0 ? tr("No trap stands yet.")
                         : QString();
    if (m_years) return {};
    return m_yearRead > 0 ? tr("%1 is being read.").arg(m_yearRead) : tr("The records are being read.");
}

bool YearsViewModel::canGoOn() const
{
    return m_season && m_week + 1 < static_cast<int>(m_season->result.whole.season.weeks.size());
}

void YearsViewModel::goWeeks(int by)
{
    if (!m_season || (by > 0 ? !canGoOn() : !canGoBack())) return;
    m_week += by;
    arrange();
}

void YearsViewModel::copy()
{
    if (!hasRows()) return;
    formats::Table table;
    if (m_view == QLatin1String("weeks"))
        table = weekTable(m_names, *m_season);
    else if (m_view == QLatin1String("years"))
        table = yearTable(m_names, *m_years, m_by == QLatin1String("keeper"));
    else
        table = bandTable(bandYearsInput(*m_years, *m_protocol, m_kind.trapType));
    const auto written = formats::writeCsv(table);
    if (!written) return tell(written.error());
    QGuiApplication::clipboard()->setText(QString::fromStdString(*written));
    m_isCopied = true;
    Q_EMIT shown();
}

PictureHandle YearsViewModel::bands(double width, double textScale, int /*revision*/) const
{
    if (!m_years || !m_protocol) return {};
    formats::BandYearsInput input = bandYearsInput(*m_years, *m_protocol, m_kind.trapType);
    if (input.bands.empty()) return {};
    input.width = width;
    input.textScale = textScale;
    return PictureHandle(formats::bandYears(input));
}

double YearsViewModel::bandsHeight(double width, double textScale, int revision) const
{
    const PictureHandle made = bands(width, textScale, revision);
    return made.picture() ? made.picture()->height : 0;
}

} // namespace duskrow::app
