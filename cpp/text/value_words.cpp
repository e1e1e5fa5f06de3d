// SPDX-License-Identifier: MIT
#include "text/value_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

#include <algorithm>
#include <array>

#include "text/amounts.h"
#include "text/code_names.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

QString words(const char* sentence)
{
    return QCoreApplication::translate("ValueWords", sentence);
}

QString nothing()
{
    return words(QT_TRANSLATE_NOOP("ValueWords", "nothing"));
}

QString plainWords(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

template <typename E, std::size_t N>
QString codeWords(const std::array<std::string_view, N>& names, const std::string& code)
{
    const auto* found = std::find(names.begin(), names.end(), code);
    return found == names.end() ? plainWords(code) : name(static_cast<E>(found - names.begin()));
}

using CodeWords = QString (*)(const std::string&);

struct CodeField {
    std::string_view kind;
    std::string_view field;
    CodeWords words;
};

constexpr std::array codeFields{
    CodeField{"member", "role", [](const std::string& c) { return codeWords<Role>(roleNames, c); }},
    CodeField{"ruling", "says", [](const std::string& c) { return codeWords<Says>(saysNames, c); }},
    CodeField{
        "answer", "answered", [](const std::string& c) { return codeWords<Answered>(answeredNames, c); }},
    CodeField{
        "trap", "fix_method", [](const std::string& c) { return codeWords<FixMethod>(fixMethodNames, c); }},
    CodeField{"trap", "height_rule",
        [](const std::string& c) { return codeWords<HeightRule>(heightRuleNames, c); }},
    CodeField{
        "trap", "end_reason", [](const std::string& c) { return codeWords<EndReason>(endReasonNames, c); }},
    CodeField{"service", "fix_method",
        [](const std::string& c) { return codeWords<FixMethod>(fixMethodNames, c); }},
    CodeField{
        "service", "what", [](const std::string& c) { return codeWords<ServiceWhat>(serviceWhatNames, c); }},
    CodeField{"visit", "reported_how",
        [](const std::string& c) { return codeWords<ReportedHow>(reportedHowNames, c); }},
    CodeField{"visit", "outcome", [](const std::string& c) { return codeWords<Outcome>(outcomeNames, c); }},
    CodeField{"visit", "reason",
        [](const std::string& c) { return codeWords<NoCountReason>(noCountReasonNames, c); }},
    CodeField{"visit", "state", [](const std::string& c) { return codeWords<TrapState>(trapStateNames, c); }},
    CodeField{"visit", "count_method",
        [](const std::string& c) { return codeWords<CountMethod>(countMethodNames, c); }},
    CodeField{
        "sample", "state", [](const std::string& c) { return codeWords<SampleState>(sampleStateNames, c); }},
    CodeField{
        "decision", "decided", [](const std::string& c) { return codeWords<Decided>(decidedNames, c); }},
};

QString codeOf(const RecordKind& kind, const std::string& field, const std::string& code)
{
    for (const CodeField& known : codeFields)
        if (known.kind == kind.name && known.field == field) return known.words(code);
    return plainWords(code);
}

QString momentWords(std::int64_t ms)
{
    // Without the offset that stands in another field: said as universal time.
    const QDateTime at = QDateTime::fromMSecsSinceEpoch(ms, Qt::UTC);
    return words(QT_TRANSLATE_NOOP("ValueWords", "%1 universal time"))
        .arg(QLocale().toString(at, QStringLiteral("d MMM yyyy HH:mm")));
}

QString numberWords(const Field& field, std::int64_t value, const Animal& animal)
{
    QString plainNumber = number(value);
    if (field.unit == "moths") return animal.amount(Moths{value});
    if (field.unit == "bees") return bees(Bees{value});
    if (field.name == "accuracy_mm") return accuracy(toMetres(Millimetres{value}));
    if (field.name.ends_with("distance_mm")) return distance(toMetres(Millimetres{value}));
    if (field.unit == "mm") return height(Millimetres{value});
    if (field.unit == "1e-7 degree")
        return words(QT_TRANSLATE_NOOP("ValueWords", "%1°"))
            .arg(QLocale().toString(static_cast<double>(value) * 1e-7, 'f', 5));
    if (field.unit == "larvae") return larvae(Larvae{value});
    if (field.unit == "cm2")
        return words(QT_TRANSLATE_NOOP("ValueWords", "%1 m²"))
            .arg(QLocale().toString(static_cast<double>(value) / 10'000, 'g', 3));
    if (field.unit == "0.001 degree Celsius")
        return words(QT_TRANSLATE_NOOP("ValueWords", "%1 °C"))
            .arg(QLocale().toString(static_cast<double>(value) / 1000, 'f', 1));
    if (field.unit == "h") return words(QT_TRANSLATE_NOOP("ValueWords", "%1 hours")).arg(plainNumber);
    if (field.unit.starts_with("ms since")) return momentWords(value);
    return plainNumber;
}

QString textWords(const RecordKind& kind, const Field& field, const std::string& text, const NameOf& nameOf)
{
    if (field.type == FieldType::Code) return codeOf(kind, std::string(field.name), text);
    if (field.type == FieldType::Day) {
        const auto day = parseDay(text);
        return day ? dayAndYear(*day) : plainWords(text);
    }
    if (field.type == FieldType::Id) {
        const auto id = parseUuid(text);
        const QString known = id && nameOf ? nameOf(*id) : QString();
        return known.isEmpty() ? words(QT_TRANSLATE_NOOP("ValueWords", "another record")) : known;
    }
    if (field.name == "photo") return words(QT_TRANSLATE_NOOP("ValueWords", "a photograph"));
    return words(QT_TRANSLATE_NOOP("ValueWords", "“%1”")).arg(plainWords(text));
}

} // namespace

QString valueWords(const RecordKind& kind, const std::string& fieldName, const Value& value,
    const NameOf& nameOf, const Animal& animal)
{
    if (isEmpty(value)) return nothing();
    const Field* field = kind.find(fieldName);
    if (const auto* raw = std::get_if<RawJson>(&value)) return plainWords(raw->text);
    if (const auto* flag = std::get_if<bool>(&value))
        return *flag ? words(QT_TRANSLATE_NOOP("ValueWords", "yes"))
                     : words(QT_TRANSLATE_NOOP("ValueWords", "no"));
    if (const auto* whole = std::get_if<std::int64_t>(&value))
        return field ? numberWords(*field, *whole, animal) : number(*whole);
    const auto& text = std::get<std::string>(value);
    return field ? textWords(kind, *field, text, nameOf) : plainWords(text);
}

bool isWorthReading(const std::string& field)
{
    constexpr std::array<std::string_view, 12> silent{"at_ms", "set_at_ms", "fix_at_ms", "offset_min", "site",
        "season", "station", "trap", "visit", "walk", "fix_count", "protocol_version"};
    return std::find(silent.begin(), silent.end(), field) == silent.end();
}

} // namespace duskrow::text
