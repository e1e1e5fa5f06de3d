// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>

namespace duskrow::domain {

// How the letters of a file are written down.
enum class Encoding { Utf8, Utf16LittleEndian, Utf16BigEndian, Windows1252 };

enum class EncodingReason {
    Mark, // the file begins with a byte order mark
    AllUtf8, // every byte of it is UTF-8
    NotUtf8, // at `line` stands a byte that is none
    Chosen,
};

struct EncodingFinding {
    Encoding encoding = Encoding::Utf8;
    EncodingReason reason = EncodingReason::AllUtf8;
    std::size_t line = 0; // from 1; for NotUtf8 only
};

enum class DelimiterReason {
    Steady, // it parts `agreeing` of `lines` lines into as many columns as the first
    OneColumn, // nothing parts the first line
    Chosen,
};

struct DelimiterFinding {
    char delimiter = ',';
    DelimiterReason reason = DelimiterReason::OneColumn;
    std::size_t columns = 1;
    std::size_t agreeing = 0;
    std::size_t lines = 0; // looked at
};

} // namespace duskrow::domain
