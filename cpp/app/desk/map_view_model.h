// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/map_book.h"
#include "app/desk/map_overlays.h"
#include "app/paint/picture_handle.h"
#include "app/row_list.h"
#include "app/view_model.h"
#include "formats/map/region_picture.h"

namespace duskrow::app {

// The region on a map for a coordinator: one week of a season, what the traps caught, overlays, and the
// chance of catching more than a band's edge between them.
class MapViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(bool isRead READ isRead NOTIFY shown FINAL)
    Q_PROPERTY(QStringList kindKeys READ kindKeys NOTIFY shown FINAL) // pest and trap type
    Q_PROPERTY(QStringList kindNames READ kindNames NOTIFY shown FINAL)
    Q_PROPERTY(QString kind READ kind WRITE setKind NOTIFY shown FINAL)
    Q_PROPERTY(int weeks READ weeks NOTIFY shown FINAL)
    Q_PROPERTY(int week READ week WRITE setWeek NOTIFY shown FINAL) // 0 is the first
    Q_PROPERTY(QString weekLine READ weekLine NOTIFY shown FINAL)
    Q_PROPERTY(QString standing READ standing NOTIFY shown FINAL) // how many counted, and the rest
    Q_PROPERTY(QStringList edgeKeys READ edgeKeys NOTIFY shown FINAL) // "none" and the bands' edges
    Q_PROPERTY(QStringList edgeNames READ edgeNames NOTIFY shown FINAL)
    Q_PROPERTY(QString edge READ edge WRITE setEdge NOTIFY shown FINAL)
    Q_PROPERTY(QString surfaceLine READ surfaceLine NOTIFY shown FINAL) // what it is, or why there is none
    Q_PROPERTY(bool isWorking READ isWorking NOTIFY shown FINAL)
    Q_PROPERTY(duskrow::app::RowList* overlays READ overlays CONSTANT FINAL)
    Q_PROPERTY(QString overlayTrouble READ overlayTrouble NOTIFY shown FINAL) // why a file was refused
    Q_PROPERTY(QString trap READ trap NOTIFY shown FINAL) // that is chosen; empty for none
    Q_PROPERTY(QString title READ title NOTIFY shown FINAL)
    Q_PROPERTY(int band READ band NOTIFY shown FINAL) // of it; 0 for none
    Q_PROPERTY(QString bandName READ bandName NOTIFY shown FINAL)
    Q_PROPERTY(duskrow::app::RowList* facts READ facts CONSTANT FINAL)
    Q_PROPERTY(QString written READ written NOTIFY shown FINAL) // where the picture was written
    Q_PROPERTY(int revision READ revision NOTIFY shown FINAL) // counts up with each change of the picture

public:
    explicit MapViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] bool isRead() const { return m_book != nullptr; }
    [[nodiscard]] QStringList kindKeys() const;
    [[nodiscard]] QStringList kindNames() const;
    [[nodiscard]] QString kind() const;
    void setKind(const QString& key);
    [[nodiscard]] int weeks() const { return m_book ? static_cast<int>(m_book->weeks().size()) : 0; }
    [[nodiscard]] int week() const { return m_week; }
    void setWeek(int week);
    [[nodiscard]] QString weekLine() const;
    [[nodiscard]] QString standing() const;
    [[nodiscard]] QStringList edgeKeys() const;
    [[nodiscard]] QStringList edgeNames() const;
    [[nodiscard]] QString edge() const;
    void setEdge(const QString& edge);
    [[nodiscard]] QString surfaceLine() const;
    [[nodiscard]] bool isWorking() const { return m_isReading || m_isArranging || m_isKriging; }
    [[nodiscard]] RowList* overlays() { return &m_overlays; }
    [[nodiscard]] QString overlayTrouble() const { return m_overlayTrouble; }
    [[nodiscard]] QString trap() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] int band() const;
    [[nodiscard]] QString bandName() const;
    [[nodiscard]] RowList* facts() { return &m_facts; }
    [[nodiscard]] QString written() const { return m_written; }
    [[nodiscard]] int revision() const { return m_revision; }

    // What the map item draws.
    [[nodiscard]] const formats::RegionScene& scene() const { return m_scene; }
    [[nodiscard]] formats::RegionWords words() const;
    [[nodiscard]] std::optional<std::size_t> chosen() const { return m_chosen; }

    void choose(std::optional<std::size_t> trap);
    Q_INVOKABLE void chooseNone() { choose(std::nullopt); }
    // The next of all traps by what they caught, the highest first.
    Q_INVOKABLE void chooseNext(int by);
    Q_INVOKABLE QString pathOf(const QString& address) const;
    // A GeoJSON file, from now on shown on this device.
    Q_INVOKABLE void addOverlay(const QString& path);
    Q_INVOKABLE void dropOverlay(const QString& path);
    // The key, for a width. `revision` is there so that a binding asks again.
    Q_INVOKABLE duskrow::app::PictureHandle key(double width, double textScale, int revision) const;
    Q_INVOKABLE double keyHeight(double width, double textScale, int revision) const;
    // Writes a picture as SVG.
    Q_INVOKABLE void write(const duskrow::app::PictureHandle& picture, const QString& folder);
    Q_INVOKABLE QString documents() const;

Q_SIGNALS:
    void shown();

private:
    void refresh();
    void arrange(); // the week
    void krige(); // its surface, which takes longer
    void draw(); // the scene of what is there
    void showChosen();
    void readOverlays();
    void showOverlays(std::vector<MapOverlay> overlays);
    [[nodiscard]] QString standingOf(const TrapOfMap& trap) const;

    std::shared_ptr<const MapBook> m_book;
    std::shared_ptr<const MapWeek> m_shown;
    std::shared_ptr<const domain::SurfaceOfRegion>
        m_surface; // of the week that is shown; null until it is known
    std::vector<MapOverlay> m_layers;
    formats::RegionScene m_scene;
    std::size_t m_kind = 0;
    int m_week = -1; // not chosen yet
    std::optional<std::size_t> m_edge; // which of the edges; nothing for no surface
    bool m_hasEdge = false; // somebody chose
    std::optional<std::size_t> m_chosen;
    RowList m_overlays;
    RowList m_facts;
    QString m_overlayTrouble;
    QString m_written;
    int m_revision = 0;
    bool m_isReading = false;
    bool m_mustReadAgain = false;
    bool m_isArranging = false;
    bool m_mustArrangeAgain = false;
    bool m_isKriging = false;
    bool m_mustKrigeAgain = false;
};

} // namespace duskrow::app
