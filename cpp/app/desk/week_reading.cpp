// SPDX-License-Identifier: MIT
#include "app/desk/week_reading.h"

#include "app/desk/map_overlays.h"
#include "protocols/protocol_files.h"
#include "text/error_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// Out of the files of the desk's map: the areas that bear the name of a district, and nothing else of them,
// since what a desk draws for itself may be somebody's field.
void takeFromMap(store::Reader& reader, WeekReading& reading)
{
    const auto paths = overlayPaths(reader);
    if (!paths) {
        reading.overlayTrouble = text::sentence(paths.error());
        return;
    }
    for (const QString& path : *paths) {
        const MapOverlay file = mapOverlay(path);
        if (!file.trouble.isEmpty()) reading.overlayTrouble = file.trouble;
        for (const DistrictWeek& district : reading.draft.bulletin.districts)
            if (const formats::OverlayArea* area = formats::areaNamed(file.overlay, district.name);
                area && !formats::areaNamed(reading.overlay, district.name))
                reading.overlay.areas.push_back(*area);
    }
}

void readBoundaries(store::Reader& reader, WeekReading& reading)
{
    const auto path = reader.deviceSetting(boundariesSetting);
    if (!path) {
        reading.overlayTrouble = text::sentence(path.error());
        return;
    }
    if (!*path || (*path)->empty()) return takeFromMap(reader, reading);
    MapOverlay file = mapOverlay(QString::fromStdString(**path));
    reading.overlay = std::move(file.overlay);
    reading.overlayTrouble = file.trouble;
}

} // namespace

std::string keptFolder(const QString& storePath)
{
    return storePath.toStdString() + "-bulletins";
}

Result<std::shared_ptr<WeekReading>> readWeek(store::Reader& reader, const publish::WeekAsked& asked)
{
    auto reading = std::make_shared<WeekReading>();
    const publish::ProtocolOf protocolOf = [&](const std::string& pest) -> Result<const Protocol*> {
        auto found = reading->protocols.find(pest);
        if (found == reading->protocols.end()) {
            auto protocol = protocols::loadProtocol(QString::fromStdString(pest));
            if (!protocol) return protocol.error();
            found = reading->protocols.emplace(pest, std::move(*protocol)).first;
        }
        return static_cast<const Protocol*>(&found->second);
    };
    auto draft = publish::weekDraft(reader, asked, protocolOf);
    if (!draft) return draft.error();
    reading->draft = std::move(*draft);
    const auto programmes = reader.select<Programme>({});
    if (!programmes) return programmes.error();
    if (!programmes->empty()) reading->programmeKey = formatUuid(programmes->front().id);
    readBoundaries(reader, *reading);
    return reading;
}

} // namespace duskrow::app
