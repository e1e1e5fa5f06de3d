// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "formats/picture.h"

namespace duskrow::formats {

// Lines of words that stay together, with room kept in front of them for a sign.
struct WordBlock {
    std::vector<std::string> lines;
    double size = 14;
    int weight = 400;
    Ink ink = Ink::Full;
    Anchor anchor = Anchor::Start;
    double room = 0; // width kept in front
    double leastHeight = 0;

    [[nodiscard]] double width() const;
    [[nodiscard]] double height() const;
};

// The text broken at spaces into lines no wider than asked, as far as its words allow, and about equally
// long.
std::vector<std::string> brokenIntoLines(std::string_view text, double size, double mostWidth);

// Finds room for words in a picture so that none covers another; a wish says whether they may cover signs
// (bars, hatching) or the whole drawing, curves included.
class WordPlacer {
public:
    enum class Over { Nothing, Signs, Drawing };

    struct Wish {
        Frame within; // the words do not leave it
        Point corner; // wanted place of the upper left corner
        double farthest = 1e9; // from the wanted place
        Over over = Over::Nothing;
    };

    void keepClearOf(const Frame& frame) { m_frames.push_back(frame); }
    void keepClearOfCurve(const std::vector<Point>& points);
    void keepClearOfSign(const Frame& frame) { m_signs.push_back(frame); }

    // The room taken, nearest to the wish; nothing when there is none.
    std::optional<Frame> place(const WordBlock& block, const Wish& wish);

    // An upright or level line without the parts that run through words.
    [[nodiscard]] std::vector<Line> cutAroundWords(const Line& line) const;

    // The words placed so far, in the order of placing.
    [[nodiscard]] const std::vector<Words>& words() const { return m_words; }

private:
    [[nodiscard]] bool isFree(const Frame& frame, Over over) const;

    std::vector<Frame> m_frames; // of words
    std::vector<Frame> m_signs;
    std::vector<std::pair<Point, Point>> m_curve; // its segments
    std::vector<Words> m_words;
};

} // namespace duskrow::formats
