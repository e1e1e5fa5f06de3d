// SPDX-License-Identifier: MIT
#include "text/error_text.h"

#include <QCoreApplication>

#include "text/error_sentences.h"
#include "text/field_names.h"
#include "text/upper_first.h"

namespace duskrow::text {

using domain::Error;

namespace {

constexpr qsizetype longestChoices = 600;
constexpr qsizetype longestValue = 80; // characters; a path or a pasted text may be far longer

// A value as it stands in a sentence: on one line, not too long, and not turning the line around.
QString shown(const std::string& value, qsizetype longest = longestValue)
{
    QString text = QString::fromStdString(value).simplified();
    if (text.size() > longest) {
        const bool splitsPair = text.at(longest - 2).isHighSurrogate();
        text = text.left(longest - (splitsPair ? 2 : 1)) + QChar(0x2026);
    }
    if (text.isRightToLeft()) text = QChar(0x2068) + text + QChar(0x2069);
    return text;
}

QString argument(const Error& error, std::size_t at, Shows shows)
{
    if (at >= error.args.size()) return QStringLiteral("?");
    const std::string& value = error.args[at];
    switch (shows) {
    case Shows::Field:
        return fieldName(value);
    case Shows::Bound:
        return boundName(error.args.front(), value);
    case Shows::Kind:
        return kindName(value);
    case Shows::Value:
        break;
    }
    // Of the values there are, every one is named.
    if (error.code == domain::ErrorCode::UnknownCode && at == 2) return shown(value, longestChoices);
    return shown(value);
}

} // namespace

QString sentence(const Error& error)
{
    const Sentence wanted = sentenceOf(error);
    const QString words = QCoreApplication::translate("ErrorText", wanted.words);
    QString filled;
    // In one pass: what a person typed may itself hold a %2.
    for (qsizetype i = 0; i < words.size(); ++i) {
        const int digit = words.at(i) == u'%' && i + 1 < words.size() ? words.at(i + 1).digitValue() : -1;
        if (digit < 1 || digit > 3) {
            filled += words.at(i);
            continue;
        }
        const auto at = static_cast<std::size_t>(digit - 1);
        filled += argument(error, at, wanted.shows[at]);
        ++i;
    }
    return upperFirst(filled);
}

} // namespace duskrow::text
