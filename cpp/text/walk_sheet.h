// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QStringList>

#include <span>
#include <vector>

#include "domain/rules/walk_result.h"

namespace duskrow::text {

// What stands on the sheet of a scouting walk, one value for the page and for the message.
enum class SheetPart {
    Map, // a picture; its lines say what it cannot show
    Frames,
    Density,
    Lines, // a picture besides its lines
    Threshold,
    Timing,
    Reasons,
    Changes,
    Cautions,
    Decided,
    Sources,
};

struct SheetFact {
    QString name;
    QString value;
};

struct SheetTable {
    QStringList heads = {};
    std::vector<QStringList> rows = {}; // as many cells as there are heads
    QStringList sums = {}; // as a last row; empty without one
};

struct SheetBlock {
    SheetPart part;
    QString heading;
    std::vector<SheetFact> facts = {}; // before the lines
    QStringList lines = {};
    SheetTable table = {};
};

struct WalkSheet {
    QString kind = {}; // "Scouting walk"
    QString title = {}; // the field
    QString programme = {};
    QString invented = {}; // what to say of an invented programme; empty for a real one
    std::vector<SheetFact> facts = {}; // day, who, pest, crop stage, frame
    QString verdict = {}; // in words; empty where no threshold is known
    std::optional<domain::ControlVerdict> verdictSign = {};
    QString mean = {}; // "22 per m²"
    QString range = {};
    QString next = {}; // what to do
    bool isDecided = false; // otherwise the paper leaves room for it
    std::vector<SheetBlock> blocks = {}; // in the order to be read

    // Null when the sheet has no such block.
    [[nodiscard]] const SheetBlock* block(SheetPart part) const;
};

// All that a sheet is made from.
//
// decision  kept for this walk; null when none was, and the money is that of the walk before
// result    of these frames, with the threshold where money was said
// day       for which timing was worked out
// language  two letters, for the words of the protocol
struct WalkSheetInput {
    const domain::Protocol& protocol;
    const domain::ThresholdRule& rule;
    const domain::Walk& walk;
    std::span<const domain::Frame> frames;
    const domain::WalkResult& result;
    const domain::Decision* decision = nullptr;
    std::string programme = {};
    bool isInvented = false;
    std::string field = {};
    std::string crop = {}; // an id of the protocol; empty for its main crop
    std::string who = {}; // walked; empty when nobody knows
    domain::LocalDay day = {};
    std::string language = "en";
};

WalkSheet walkSheet(const WalkSheetInput& input, const QLocale& locale = {});

// The choices of a decision as boxes to tick on paper: "control the larvae", ...
QStringList choicesToTick();

// Table, facts and lines of a block as lines of text; a row names its columns.
QStringList linesOf(const SheetBlock& block);

// The sheet as plain text, for a message: everything that the page says in words, pictures aside.
QString asText(const WalkSheet& sheet);

} // namespace duskrow::text
