// SPDX-License-Identifier: MIT
#include "app/desk/map_overlays.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>

#include "text/error_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr const char* overlaysKey = "map_overlays"; // paths, one a line
constexpr qint64 mostBytes = 16 * 1024 * 1024;

} // namespace

Result<QStringList> overlayPaths(store::Reader& reader)
{
    const auto held = reader.deviceSetting(overlaysKey);
    if (!held) return held.error();
    return QString::fromStdString(held->value_or(std::string())).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
}

Result<Done> keepOverlayPaths(store::Store& store, const QStringList& paths)
{
    return store.saveSettingNow(overlaysKey, paths.join(QLatin1Char('\n')).toStdString());
}

MapOverlay mapOverlay(const QString& path)
{
    MapOverlay made{path};
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        made.trouble = text::sentence(Error{ErrorCode::FileUnreadable, {path.toStdString()}});
        return made;
    }
    // One byte more than is taken: what has no size, such as a pipe, is bounded too.
    const QByteArray bytes = file.size() > mostBytes ? QByteArray() : file.read(mostBytes + 1);
    const QString name = QFileInfo(path).fileName();
    if (file.size() > mostBytes || bytes.size() > mostBytes) {
        made.trouble = QCoreApplication::translate(
            "Map", "%1 is larger than 16 MB and is not read. Save a simpler outline.")
                           .arg(name);
        return made;
    }
    auto overlay = formats::readOverlay({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    if (overlay)
        made.overlay = std::move(*overlay);
    else
        made.trouble = QCoreApplication::translate("Map",
            "%1 is no GeoJSON of areas or lines that can be shown. Save it as GeoJSON in degrees, with at "
            "most "
            "400,000 positions.")
                           .arg(name);
    return made;
}

} // namespace duskrow::app
