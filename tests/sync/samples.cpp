// SPDX-License-Identifier: MIT
#include <filesystem>
#include <fstream>
#include <iostream>

#include "sync/carry/carried_writer.h"
#include "sync/segment_forger.h"

using namespace duskrow::domain;
using namespace duskrow::sync;
using namespace duskrow::test;

// Writes segments and a carried file into a folder, and beside each what a reader must find in it:
//   sync_samples FOLDER
namespace {

const Scene scene;

void write(const std::filesystem::path& path, const std::string& bytes)
{
    std::ofstream(path, std::ios::binary) << bytes;
}

std::string shown(const Segment& segment)
{
    std::string text;
    for (const SegmentLine& line : segment.lines)
        text += (line.bytes.empty() ? '-' + formatHex(line.leaf) : line.bytes) + '\n';
    return text;
}

Segment opened(const SegmentHead& head)
{
    return std::move(openSegment(head).value());
}

} // namespace

int main(int argc, char** argv)
{
    if (argc != 2 || sodium_init() < 0) return 1;
    const std::filesystem::path folder = argv[1];
    const Segment first = opened(scene.sealed(1, 30));
    const Segment second = opened(scene.sealed(31, 40));
    const Segment part = opened(partialForm(first, [](const Change& change) { return change.site.isNil(); }));
    write(folder / "whole.seg", segmentBytes(first.head));
    write(folder / "whole.txt", shown(first));
    write(folder / "second.seg", segmentBytes(second.head));
    write(folder / "second.txt", shown(second));
    write(folder / "partial.seg", segmentBytes(part.head));
    write(folder / "partial.txt", shown(part));
    auto writer = CarriedWriter::open(folder / "all.dusk", scene.programme);
    if (!writer || !writer->add(ItemKind::Segment, segmentBytes(first.head))
        || !writer->add(ItemKind::Photograph, "not looked at here")
        || !writer->add(ItemKind::Segment, segmentBytes(second.head)) || !writer->finish())
        return 1;
    write(folder / "all.txt", shown(first) + shown(second));
    return 0;
}
