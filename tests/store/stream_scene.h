// SPDX-License-Identifier: MIT
#pragma once

#include <QTest>

#include "store/segment_scene.h"

// A store with its streams: put back, copied, alone or not.
namespace duskrow::tests {

inline void copyFile(const std::string& from, const std::string& to)
{
    QFile::remove(QString::fromStdString(to));
    if (!QFile::copy(QString::fromStdString(from), QString::fromStdString(to))) qFatal("not copied");
}

inline std::set<domain::StreamId> foundersOf(const StoreScene& scene)
{
    SQLite::Database database = scene.raw();
    SQLite::Statement query(database, "SELECT value FROM setting WHERE key='founders'");
    return query.executeStep() ? store::streamsIn(query.getColumn(0).getString())
                               : std::set<domain::StreamId>{};
}

inline void keepOne(store::Store& opened, std::uint32_t number)
{
    QVERIFY(opened.keepNow(batchOf(visitOf(number, number))).has_value());
}

inline store::SegmentRow sealOwn(store::Store& opened)
{
    const auto reader = opened.reader();
    const auto tail = store::unsealedTail(**reader, opened.stream(), 100);
    const store::IncomingSegment segment =
        segmentOf(opened.stream(), tail->first, tail->lines, tail->previous);
    if (!opened.sealNow(segment.row)) qFatal("not sealed");
    return segment.row;
}

// Lets another device in, so that the maker is no longer alone.
inline void letIn(store::Store& opened)
{
    const domain::StreamId other = RosterScene::stream("gus");
    domain::Device device;
    device.id = domain::deviceId(opened.programme(), other);
    device.stream = domain::formatHex(other);
    device.member = idOf(60);
    QVERIFY(opened.keepNow(batchOf(std::vector{domain::creation(device, {})})).has_value());
}

inline bool isSound(const StoreScene& scene)
{
    const auto report = store::checkStore(scene.path());
    return report.has_value() && report->isSound();
}

} // namespace duskrow::tests
