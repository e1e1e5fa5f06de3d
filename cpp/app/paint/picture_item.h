// SPDX-License-Identifier: MIT
#pragma once

#include <QQuickPaintedItem>
#include <QString>

#include "app/paint/picture_handle.h"

namespace duskrow::app {

// Shows a picture in QML, scaled as a whole to fit and centred. It has no size of its own: a chart is built
// for the size the item gets, not the other way round.
class PictureItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT

    Q_PROPERTY(duskrow::app::PictureHandle picture READ picture WRITE setPicture NOTIFY pictureChanged FINAL)
    Q_PROPERTY(bool dark READ isDark WRITE setDark NOTIFY styleChanged FINAL)
    Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY styleChanged FINAL)
    Q_PROPERTY(QString fontFamily READ fontFamily WRITE setFontFamily NOTIFY styleChanged FINAL)

public:
    explicit PictureItem(QQuickItem* parent = nullptr);

    [[nodiscard]] const PictureHandle& picture() const { return m_picture; }
    void setPicture(const PictureHandle& picture);

    [[nodiscard]] bool isDark() const { return m_isDark; }
    void setDark(bool isDark);

    // For pictures laid out without a text scale of their own; charts keep 1.
    [[nodiscard]] double textScale() const { return m_textScale; }
    void setTextScale(double scale);

    [[nodiscard]] const QString& fontFamily() const { return m_fontFamily; }
    void setFontFamily(const QString& family);

    void paint(QPainter* painter) override;

Q_SIGNALS:
    void pictureChanged();
    void styleChanged();

private:
    PictureHandle m_picture;
    bool m_isDark = false;
    double m_textScale = 1;
    QString m_fontFamily;
};

} // namespace duskrow::app
