// SPDX-License-Identifier: MIT
#pragma once

#include <QPointer>
#include <QQuickPaintedItem>

#include "app/desk/map_view_model.h"

namespace duskrow::app {

// The map of a region in a window: what is seen of it, and where that moves. Every frame draws only what is
// seen.
class RegionMapItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(duskrow::app::MapViewModel* map READ map WRITE setMap NOTIFY mapChanged FINAL)
    Q_PROPERTY(bool dark READ isDark WRITE setDark NOTIFY styleChanged FINAL)
    Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY styleChanged FINAL)
    Q_PROPERTY(QString fontFamily READ fontFamily WRITE setFontFamily NOTIFY styleChanged FINAL)
    Q_PROPERTY(QString description READ description NOTIFY moved FINAL)
    Q_PROPERTY(double metresPerPixel READ metresPerPixel NOTIFY moved FINAL)

public:
    explicit RegionMapItem(QQuickItem* parent = nullptr);

    [[nodiscard]] MapViewModel* map() const { return m_map; }
    void setMap(MapViewModel* map);
    [[nodiscard]] bool isDark() const { return m_isDark; }
    void setDark(bool isDark);
    [[nodiscard]] double textScale() const { return m_textScale; }
    void setTextScale(double scale);
    [[nodiscard]] const QString& fontFamily() const { return m_fontFamily; }
    void setFontFamily(const QString& family);
    [[nodiscard]] QString description() const;
    [[nodiscard]] double metresPerPixel() const { return m_view.metresPerPixel; }

    void paint(QPainter* painter) override;

    Q_INVOKABLE void pan(double right, double down); // what is seen moves so many pixels
    Q_INVOKABLE void zoom(double factor, double x, double y); // what is seen at x, y stays there
    Q_INVOKABLE void fit(); // all traps
    Q_INVOKABLE bool touch(double x, double y); // chooses the trap that is meant, or none
    Q_INVOKABLE void showChosen(); // moves only as far as it takes to see it
    Q_INVOKABLE QPointF placeOfChosen() const; // in pixels; outside of the item where it is not seen
    // What is seen with its key, to be kept.
    Q_INVOKABLE duskrow::app::PictureHandle sheet() const;

Q_SIGNALS:
    void mapChanged();
    void styleChanged();
    void moved();

protected:
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    void look(const formats::MapView& view);
    void takeScene();

    QPointer<MapViewModel> m_map;
    formats::PlainGround m_ground;
    formats::MapView m_view;
    bool m_isPlaced = false; // somebody moved it, or it shows all of a scene with traps
    bool m_isDark = false;
    double m_textScale = 1;
    QString m_fontFamily;
};

} // namespace duskrow::app
