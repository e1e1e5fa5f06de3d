// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace duskrow::text {

// A unit such as "larvae/m²" may end a line behind its stroke by the rules of Unicode, though nobody reads it
// so. Each stroke that has letters on both sides is joined to what follows by a mark that is not seen
// (U+2060).
//
// Source  Unicode Standard Annex 14, classes SY and WJ
QString unbroken(const QString& text);

// The same without these marks: for paper, which is drawn without shaping, for messages, and for terminals.
QString withoutJoiners(const QString& text);

} // namespace duskrow::text
