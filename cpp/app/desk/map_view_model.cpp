// SPDX-License-Identifier: MIT
#include "app/desk/map_view_model.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <QUrl>

#include <algorithm>
#include <utility>

#include "app/desk/map_words.h"
#include "app/written_file.h"
#include "formats/svg.h"
#include "text/desk_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

MapViewModel::MapViewModel(Session& session, QObject* parent) : ViewModel(session, parent)
{
    connect(&session, &Session::changed, this, &MapViewModel::refresh);
    refresh();
    readOverlays();
}

void MapViewModel::refresh()
{
    const auto& season = session().season();
    if (!season) return;
    if (m_isReading) {
        m_mustReadAgain = true;
        return;
    }
    m_isReading = true;
    using Book = std::shared_ptr<const MapBook>;
    session().lookUp<Book>(
        this,
        [season = *season, today = session().clock().today()](store::Reader& reader) -> Result<Book> {
            auto book = MapBook::read(reader, season, today);
            if (!book) return book.error();
            return Book(std::make_shared<const MapBook>(std::move(*book)));
        },
        [this](const Result<Book>& book) {
            m_isReading = false;
            if (!book) return tell(book.error());
            m_book = *book;
            m_kind = std::min(m_kind, std::max<std::size_t>(m_book->kinds().size(), 1) - 1);
            const int last = weeks() - 1;
            if (m_week < 0 || m_week > last) m_week = static_cast<int>(m_book->lastCounted());
            arrange();
            if (std::exchange(m_mustReadAgain, false)) refresh();
        });
}

void MapViewModel::arrange()
{
    if (!m_book || m_book->kinds().empty() || m_week < 0) return Q_EMIT shown();
    if (m_isArranging) {
        m_mustArrangeAgain = true;
        return;
    }
    m_isArranging = true;
    using Week = std::shared_ptr<const MapWeek>;
    const MapKind& kind = m_book->kinds()[m_kind];
    const Protocol* known = session().protocol(kind.pest);
    session().lookUp<Week>(
        this,
        [book = m_book, kind, protocol = known ? std::make_shared<const Protocol>(*known) : nullptr,
            week = m_book->weeks()[static_cast<std::size_t>(m_week)]](store::Reader&) -> Result<Week> {
            return Week(std::make_shared<const MapWeek>(mapWeek(*book, kind, protocol, week)));
        },
        [this](const Result<Week>& week) {
            m_isArranging = false;
            m_shown = *week;
            m_surface.reset();
            draw();
            showChosen();
            if (std::exchange(m_mustArrangeAgain, false))
                arrange();
            else
                krige();
        });
    Q_EMIT shown();
}

void MapViewModel::krige()
{
    if (!m_shown || m_shown->bands.empty()) return;
    if (m_isKriging) {
        m_mustKrigeAgain = true;
        return;
    }
    m_isKriging = true;
    using Surface = std::shared_ptr<const SurfaceOfRegion>;
    session().lookUpLong<Surface>(
        this,
        [book = m_book, week = m_shown](store::Reader&) -> Result<Surface> {
            return Surface(std::make_shared<const SurfaceOfRegion>(surfaceOfWeek(*book, *week)));
        },
        [this, of = m_shown](const Result<Surface>& surface) {
            m_isKriging = false;
            if (std::exchange(m_mustKrigeAgain, false) || of != m_shown) return krige();
            m_surface = *surface;
            if (!m_hasEdge && m_surface->surface.standing == SurfaceStanding::Drawn) m_edge = 0;
            draw();
        });
    Q_EMIT shown();
}

void MapViewModel::draw()
{
    m_scene = {};
    m_scene.plane = m_book ? m_book->plane() : RegionalPlane(GeoPoint{});
    if (m_shown) m_scene.traps = m_shown->signs;
    for (const MapOverlay& layer : m_layers) {
        auto paths = formats::pathsOf(layer.overlay, m_scene.plane);
        std::ranges::move(paths, std::back_inserter(m_scene.paths));
    }
    const bool isDrawn = m_surface && m_surface->surface.standing == SurfaceStanding::Drawn;
    if (isDrawn && m_edge && *m_edge < m_surface->edges.size())
        m_scene.surface = formats::sceneSurface(m_surface->surface, m_surface->where->grid, *m_edge);
    ++m_revision;
    Q_EMIT shown();
}

QStringList MapViewModel::kindKeys() const
{
    QStringList keys;
    if (m_book)
        for (const MapKind& kind : m_book->kinds()) keys << kind.key();
    return keys;
}

QStringList MapViewModel::kindNames() const
{
    QStringList names;
    if (m_book)
        for (const MapKind& kind : m_book->kinds()) names << kindWords(kind, session().protocol(kind.pest));
    return names;
}

QString MapViewModel::kind() const
{
    return m_book && m_kind < m_book->kinds().size() ? m_book->kinds()[m_kind].key() : QString();
}

void MapViewModel::setKind(const QString& key)
{
    const auto at = kindKeys().indexOf(key);
    if (at < 0 || static_cast<std::size_t>(at) == m_kind) return;
    m_kind = static_cast<std::size_t>(at);
    m_chosen.reset();
    m_hasEdge = false;
    m_edge.reset();
    arrange();
}

void MapViewModel::setWeek(int week)
{
    if (week < 0 || week >= weeks() || week == m_week) return;
    m_week = week;
    arrange();
}

QString MapViewModel::weekLine() const
{
    return m_book && m_week >= 0 ? text::weekDays(m_book->weeks()[static_cast<std::size_t>(m_week)])
                                 : QString();
}

QString MapViewModel::standing() const
{
    if (!m_book) return tr("Reading");
    return m_shown ? weekWords(*m_shown) : tr("No trap stands yet.");
}

QStringList MapViewModel::edgeKeys() const
{
    QStringList keys{QStringLiteral("none")};
    if (m_shown)
        for (const Band& band : m_shown->bands)
            if (band.from > Moths{0}) keys << QString::number(band.from.value());
    return keys;
}

QStringList MapViewModel::edgeNames() const
{
    QStringList names = edgeKeys();
    for (QString& name : names)
        name = name == QLatin1String("none") ? tr("traps alone", "what a map shows")
                                             : QLocale().toString(name.toLongLong());
    return names;
}

QString MapViewModel::edge() const
{
    const QStringList keys = edgeKeys();
    return m_edge ? keys.value(static_cast<int>(*m_edge) + 1, keys.front()) : keys.front();
}

void MapViewModel::setEdge(const QString& edge)
{
    const auto at = edgeKeys().indexOf(edge);
    if (at < 0) return;
    m_hasEdge = true;
    m_edge = at == 0 ? std::nullopt : std::optional(static_cast<std::size_t>(at - 1));
    draw();
}

QString MapViewModel::surfaceLine() const
{
    if (!m_shown || m_shown->traps.empty()) return {};
    if (m_shown->bands.empty()) return tr("Nobody has published bands for this trap type: traps alone.");
    return m_surface ? surfaceWords(*m_surface) : tr("What lies between the traps is being worked out.");
}

formats::RegionWords MapViewModel::words() const
{
    const bool isSoFar = m_surface && m_surface->isSoFar;
    const QString edge = m_scene.surface ? this->edge() : QString();
    const QString kind = m_book && m_kind < m_book->kinds().size()
        ? kindWords(m_book->kinds()[m_kind], session().protocol(m_book->kinds()[m_kind].pest))
        : QString();
    return regionWords(m_shown.get(), kind, edge, isSoFar);
}

PictureHandle MapViewModel::key(double width, double textScale, int /*revision*/) const
{
    return PictureHandle(formats::regionKey(words(), width, textScale));
}

double MapViewModel::keyHeight(double width, double textScale, int /*revision*/) const
{
    return formats::regionKey(words(), width, textScale).height;
}

void MapViewModel::choose(std::optional<std::size_t> trap)
{
    m_chosen = trap;
    showChosen();
}

void MapViewModel::chooseNext(int by)
{
    if (m_scene.traps.empty()) return;
    const auto count = static_cast<int>(m_scene.traps.size());
    const auto at = std::ranges::find_if(
        m_scene.traps, [this](const formats::SceneTrap& trap) { return m_chosen && trap.trap == *m_chosen; });
    const int from = at == m_scene.traps.end() ? count : static_cast<int>(at - m_scene.traps.begin());
    const int to = at == m_scene.traps.end() && by < 0 ? 0 : (from - by + count) % count;
    choose(m_scene.traps[static_cast<std::size_t>(to)].trap);
}

void MapViewModel::showChosen()
{
    const TrapOfMap* of = m_shown && m_chosen ? m_shown->of(*m_chosen) : nullptr;
    if (!of) m_chosen.reset();
    m_facts.show(of ? trapRows(*m_book, *m_shown, *of) : std::vector<Row>{});
    ++m_revision;
    Q_EMIT shown();
}

QString MapViewModel::trap() const
{
    return m_chosen ? QString::fromStdString(formatUuid(m_book->records().traps[*m_chosen].id)) : QString();
}

QString MapViewModel::title() const
{
    return m_chosen ? m_book->title(*m_chosen) : QString();
}

int MapViewModel::band() const
{
    const TrapOfMap* of = m_chosen ? m_shown->of(*m_chosen) : nullptr;
    return of && of->band ? of->band->level : 0;
}

QString MapViewModel::bandName() const
{
    const TrapOfMap* of = m_chosen ? m_shown->of(*m_chosen) : nullptr;
    return of ? bandWords(*of) : QString();
}

QString MapViewModel::pathOf(const QString& address) const
{
    const QUrl url(address);
    return url.isLocalFile() ? url.toLocalFile() : address.trimmed();
}

void MapViewModel::readOverlays()
{
    using Overlays = std::vector<MapOverlay>;
    session().lookUp<Overlays>(
        this,
        [](store::Reader& reader) -> Result<Overlays> {
            const auto paths = overlayPaths(reader);
            if (!paths) return paths.error();
            Overlays overlays;
            for (const QString& path : *paths) overlays.push_back(mapOverlay(path));
            return overlays;
        },
        [this](const Result<Overlays>& overlays) {
            if (!overlays) return tell(overlays.error());
            showOverlays(*overlays);
        });
}

void MapViewModel::showOverlays(std::vector<MapOverlay> overlays)
{
    m_layers = std::move(overlays);
    std::vector<Row> rows;
    for (const MapOverlay& layer : m_layers)
        rows.push_back({.key = layer.path,
            .title = QFileInfo(layer.path).fileName(),
            .besides = layer.trouble.isEmpty() ? overlayWords(layer.overlay) : layer.trouble});
    m_overlays.show(std::move(rows));
    draw();
}

void MapViewModel::addOverlay(const QString& path)
{
    const QString name = QDir::cleanPath(pathOf(path));
    if (path.trimmed().isEmpty()) return tell(Error{ErrorCode::Empty, {"file"}});
    using Read = std::shared_ptr<MapOverlay>;
    session().lookUp<Read>(
        this,
        [name](store::Reader&) -> Result<Read> { return std::make_shared<MapOverlay>(mapOverlay(name)); },
        [this, name](const Result<Read>& read) {
            m_overlayTrouble = (*read)->trouble;
            if (!m_overlayTrouble.isEmpty()) return Q_EMIT shown();
            QStringList paths;
            std::vector<MapOverlay> layers = m_layers;
            std::erase_if(layers, [&](const MapOverlay& layer) { return layer.path == name; });
            layers.push_back(std::move(**read));
            for (const MapOverlay& layer : layers) paths << layer.path;
            if (const auto kept = keepOverlayPaths(session().store(), paths); !kept)
                return tell(kept.error());
            clearTrouble();
            showOverlays(std::move(layers));
        });
}

void MapViewModel::dropOverlay(const QString& path)
{
    std::vector<MapOverlay> layers = m_layers;
    std::erase_if(layers, [&](const MapOverlay& layer) { return layer.path == path; });
    QStringList paths;
    for (const MapOverlay& layer : layers) paths << layer.path;
    if (const auto kept = keepOverlayPaths(session().store(), paths); !kept) return tell(kept.error());
    showOverlays(std::move(layers));
}

QString MapViewModel::documents() const
{
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

void MapViewModel::write(const PictureHandle& picture, const QString& folder)
{
    if (!picture.picture() || !m_shown) return;
    const QString day = QString::fromStdString(formatDay(m_shown->week.first));
    const QString path = QDir(pathOf(folder)).filePath(QStringLiteral("duskrow-map-%1.svg").arg(day));
    const std::string svg =
        formats::writeSvg(*picture.picture(), {.language = QLocale().bcp47Name().toStdString()});
    const auto done = writeFile(path, QByteArray::fromStdString(svg));
    if (!done) return tell(done.error());
    clearTrouble();
    m_written = path;
    Q_EMIT shown();
}

} // namespace duskrow::app
