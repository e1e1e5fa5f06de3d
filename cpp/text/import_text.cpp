// SPDX-License-Identifier: MIT
#include "text/import_text.h"

#include <QCoreApplication>

#include "text/error_text.h"
#include "text/field_names.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

constexpr qsizetype longestCell = 60; // characters

QString said(const char* words)
{
    return QCoreApplication::translate("ImportText", words);
}

QString encodingName(Encoding encoding)
{
    switch (encoding) {
    case Encoding::Utf16LittleEndian:
    case Encoding::Utf16BigEndian:
        return QStringLiteral("UTF-16");
    case Encoding::Windows1252:
        return QStringLiteral("Windows-1252");
    case Encoding::Utf8:
        break;
    }
    return QStringLiteral("UTF-8");
}

QString delimiterName(char delimiter)
{
    switch (delimiter) {
    case ';':
        return said(QT_TRANSLATE_NOOP("ImportText", "Semicolon"));
    case '\t':
        return said(QT_TRANSLATE_NOOP("ImportText", "Tab"));
    case '|':
        return said(QT_TRANSLATE_NOOP("ImportText", "Bar"));
    default:
        return said(QT_TRANSLATE_NOOP("ImportText", "Comma"));
    }
}

QString chosen(const QString& what)
{
    return said(QT_TRANSLATE_NOOP("ImportText", "%1, as you chose.")).arg(what);
}

QString orderName(const std::optional<DayOrder>& order)
{
    return order == DayOrder::MonthFirst ? said(QT_TRANSLATE_NOOP("ImportText", "Month first"))
                                         : said(QT_TRANSLATE_NOOP("ImportText", "Day first"));
}

QString markName(const std::optional<DecimalMark>& mark)
{
    return mark == DecimalMark::Comma ? said(QT_TRANSLATE_NOOP("ImportText", "Comma"))
                                      : said(QT_TRANSLATE_NOOP("ImportText", "Point"));
}

// Safe to print; what our own sentences put around a text of the other direction stays.
QString printable(QString text)
{
    for (QChar& sign : text) {
        const bool isOurs = sign == QChar(0x2068) || sign == QChar(0x2069);
        if (!sign.isPrint() && !sign.isSurrogate() && !isOurs) sign = QChar(0xFFFD);
    }
    return text;
}

} // namespace

QString fromFile(const std::string& cell)
{
    QString text = QString::fromStdString(cell.substr(0, 400)).simplified();
    if (text.size() > longestCell) text = text.left(longestCell - 1) + QChar(0x2026);
    for (QChar& sign : text)
        if (sign == QChar(0x2068) || sign == QChar(0x2069)) sign = QChar(0xFFFD);
    return printable(text);
}

QString finding(const EncodingFinding& found)
{
    const QString name = encodingName(found.encoding);
    switch (found.reason) {
    case EncodingReason::Mark:
        return said(QT_TRANSLATE_NOOP("ImportText", "%1, because the file begins with its mark.")).arg(name);
    case EncodingReason::NotUtf8:
        return said(QT_TRANSLATE_NOOP("ImportText", "%1, because line %2 holds a letter that is no UTF-8."))
            .arg(name)
            .arg(found.line);
    case EncodingReason::Chosen:
        return chosen(name);
    case EncodingReason::AllUtf8:
        break;
    }
    return said(QT_TRANSLATE_NOOP("ImportText", "%1, because every letter can be read so.")).arg(name);
}

QString finding(const DelimiterFinding& found)
{
    const QString name = delimiterName(found.delimiter);
    switch (found.reason) {
    case DelimiterReason::Steady:
        return said(
            QT_TRANSLATE_NOOP("ImportText", "%1, because it makes %2 columns in %3 of the first %4 lines."))
            .arg(name)
            .arg(found.columns)
            .arg(found.agreeing)
            .arg(found.lines);
    case DelimiterReason::Chosen:
        return chosen(name);
    case DelimiterReason::OneColumn:
        break;
    }
    return said(QT_TRANSLATE_NOOP("ImportText", "None found: the first line is one column."));
}

QString finding(const DayOrderFinding& found)
{
    const QString example = fromFile(found.example);
    switch (found.reason) {
    case DayOrderReason::Shown:
        return said(QT_TRANSLATE_NOOP("ImportText", "%1, because “%2” can be read no other way."))
            .arg(orderName(found.order), example);
    case DayOrderReason::Both:
        return said(QT_TRANSLATE_NOOP("ImportText",
                        "Not clear: “%1” begins with the day and “%2” with the month. Say which."))
            .arg(example, fromFile(found.other));
    case DayOrderReason::Ambiguous:
        return said(QT_TRANSLATE_NOOP(
                        "ImportText", "Not clear: “%1” may begin with the day or the month. Say which."))
            .arg(example);
    case DayOrderReason::Chosen:
        return chosen(orderName(found.order));
    case DayOrderReason::NotNeeded:
        break;
    }
    return said(QT_TRANSLATE_NOOP("ImportText", "Every date can be read in one way only."));
}

QString namesFromFile(const std::vector<std::string>& names)
{
    constexpr std::size_t most = 12;
    QStringList shown;
    for (std::size_t i = 0; i < std::min(most, names.size()); ++i) shown << fromFile(names[i]);
    const QString all = shown.join(QStringLiteral(", "));
    return names.size() <= most
        ? all
        : said(QT_TRANSLATE_NOOP("ImportText", "%1 and %2 more")).arg(all).arg(names.size() - most);
}

QString emptiedFinding(std::optional<bool> emptied)
{
    if (!emptied)
        return said(QT_TRANSLATE_NOOP(
            "ImportText", "Nobody knows. Counts are not added up: the higher of two stands, as a question."));
    return *emptied
        ? said(QT_TRANSLATE_NOOP("ImportText", "Yes, where a row does not say otherwise: counts add up."))
        : said(QT_TRANSLATE_NOOP(
            "ImportText", "No, where a row does not say otherwise: each count holds the one before it."));
}

QString finding(const DecimalFinding& found)
{
    switch (found.reason) {
    case DecimalReason::Shown:
        return said(QT_TRANSLATE_NOOP("ImportText", "%1, because of “%2”."))
            .arg(markName(found.mark), fromFile(found.example));
    case DecimalReason::Both:
        return said(QT_TRANSLATE_NOOP("ImportText", "Not clear: there are both “%1” and “%2”. Say which."))
            .arg(fromFile(found.example), fromFile(found.other));
    case DecimalReason::Chosen:
        return chosen(markName(found.mark));
    case DecimalReason::NotNeeded:
        break;
    }
    return said(QT_TRANSLATE_NOOP("ImportText", "None is needed: all numbers are whole."));
}

QString columnIs(const MappedColumn& column)
{
    if (column.field == ImportField::Ignored) return said(QT_TRANSLATE_NOOP("ImportText", "kept out"));
    const std::string_view code = rowOf(column.field).code;
    const QString name = fieldName(code);
    if (!column.unit) return name;
    const std::string_view unit = codeOf(*column.unit);
    return said(QT_TRANSLATE_NOOP("ImportText", "%1, in %2"))
        .arg(name, QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size())));
}

QString columnWhy(const MappedColumn& column)
{
    switch (column.reason) {
    case ColumnReason::Heading:
        return said(QT_TRANSLATE_NOOP("ImportText", "by its name"));
    case ColumnReason::Doubtful:
        return said(QT_TRANSLATE_NOOP("ImportText", "another column may be %1 as well"))
            .arg(fieldName(rowOf(column.meant).code));
    case ColumnReason::Chosen:
        return said(QT_TRANSLATE_NOOP("ImportText", "as you chose"));
    case ColumnReason::DayHeading:
        return said(QT_TRANSLATE_NOOP("ImportText", "its name is the day"));
    case ColumnReason::Unknown:
        break;
    }
    return said(QT_TRANSLATE_NOOP("ImportText", "its name is not known"));
}

QString rowWord(const RowWord& word)
{
    const QString what = printable(sentence(word.error));
    if (word.column.empty())
        return said(QT_TRANSLATE_NOOP("ImportText", "Line %1: %2")).arg(word.line).arg(what);
    return said(QT_TRANSLATE_NOOP("ImportText", "Line %1, column “%2”: %3"))
        .arg(QString::number(word.line), fromFile(word.column), what);
}

} // namespace duskrow::text
