// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <memory>
#include <utility>

#include "formats/picture.h"

namespace duskrow::app {

// A picture as QML passes it on: shared, never changed once made. Two handles are equal when they hold the
// same picture; a new picture is a new handle.
class PictureHandle {
    Q_GADGET
    QML_VALUE_TYPE(pictureHandle)

    Q_PROPERTY(QString title READ title FINAL)
    Q_PROPERTY(QString description READ description FINAL)
    Q_PROPERTY(double ratio READ ratio FINAL) // height by width; 0 without a picture

public:
    PictureHandle() = default;
    explicit PictureHandle(formats::Picture picture)
        : m_picture(std::make_shared<const formats::Picture>(std::move(picture)))
    {
    }

    // Null when there is no picture.
    [[nodiscard]] const formats::Picture* picture() const { return m_picture.get(); }

    [[nodiscard]] QString title() const
    {
        return m_picture ? QString::fromStdString(m_picture->title) : QString();
    }
    [[nodiscard]] QString description() const
    {
        return m_picture ? QString::fromStdString(m_picture->description) : QString();
    }

    [[nodiscard]] double ratio() const
    {
        return m_picture && m_picture->width > 0 ? m_picture->height / m_picture->width : 0;
    }

    bool operator==(const PictureHandle& other) const { return m_picture == other.m_picture; }
    bool operator!=(const PictureHandle& other) const { return m_picture != other.m_picture; }

private:
    std::shared_ptr<const formats::Picture> m_picture;
};

} // namespace duskrow::app
