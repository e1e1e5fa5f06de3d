// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QString>

#include <cstdint>
#include <optional>
#include <vector>

namespace duskrow::app {

// One frame while it is being searched, as it lies in the store between two taps.
struct FrameEntry {
    std::vector<std::int64_t> bySize; // one for each size class of the protocol
    std::int64_t sick = 0;
    std::optional<std::int64_t> podsSeen;
    std::optional<std::int64_t> podsDamaged;
    QString remark;
    bool isSameStop = false;

    bool operator==(const FrameEntry&) const = default;
    [[nodiscard]] std::int64_t larvae() const;
};

// With its undo stack: each tap is a step of its own.
class WalkEntry {
public:
    explicit WalkEntry(std::size_t sizes = 0) { startOver(sizes); }

    [[nodiscard]] const FrameEntry& now() const { return m_now; }
    [[nodiscard]] bool canUndo() const { return !m_undo.empty(); }
    // Nothing stands in it and nothing was taken back: the undo stack alone forgets the oldest taps of a full
    // frame.
    [[nodiscard]] bool isUntouched() const;

    // False when nothing changed.
    bool change(const FrameEntry& after);
    void undo();
    void startOver(std::size_t sizes);

    [[nodiscard]] QByteArray written() const;
    // Takes up what was written. False, and nothing is changed, when it is of other size classes.
    bool read(const QByteArray& body);

private:
    FrameEntry m_now;
    std::vector<FrameEntry> m_undo;
};

} // namespace duskrow::app
