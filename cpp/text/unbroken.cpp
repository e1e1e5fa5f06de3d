// SPDX-License-Identifier: MIT
#include "text/unbroken.h"

namespace duskrow::text {

namespace {

constexpr QChar joiner{0x2060};

} // namespace

QString unbroken(const QString& text)
{
    QString joined = text;
    for (qsizetype i = joined.size() - 2; i > 0; --i)
        if (joined[i] == u'/' && joined[i - 1].isLetter() && joined[i + 1].isLetter())
            joined.insert(i + 1, joiner);
    return joined;
}

QString withoutJoiners(const QString& text)
{
    QString plain = text;
    return plain.remove(joiner);
}

} // namespace duskrow::text
