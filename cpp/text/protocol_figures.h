// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <string>
#include <vector>

#include "domain/protocol/protocol.h"

namespace duskrow::text {

// One figure of a protocol in words.
struct FigureWords {
    QString section; // "The trap", "The season" ...
    QString name;
    QString value; // empty when nobody has published it: `source` then says so
    QString source; // a citation, "common practice, no source", or "nobody has published it"
    QString note;
};

// Every figure of a protocol in the order of the work, each with where it comes from. What a protocol says
// nothing about is left out.
//
// language  of the texts in the protocol: "en", "fr"
std::vector<FigureWords> figuresOf(const domain::Protocol& protocol, const std::string& language);

// Where something comes from, in words.
QString sourceWords(const domain::Protocol& protocol, const std::string& source);

} // namespace duskrow::text
