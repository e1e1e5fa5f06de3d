// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace duskrow::text {

// A name from the middle of a sentence where it begins one.
inline QString upperFirst(QString words)
{
    if (!words.isEmpty()) words[0] = words.at(0).toUpper();
    return words;
}

} // namespace duskrow::text
