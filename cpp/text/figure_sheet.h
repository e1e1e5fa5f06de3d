// SPDX-License-Identifier: MIT
#pragma once

#include <QCoreApplication>

#include "text/animal.h"
#include "text/protocol_figures.h"
#include "text/protocol_values.h"

namespace duskrow::text {

struct Figures {
    Q_DECLARE_TR_FUNCTIONS(Figure)
};

// Gathers the figures of one protocol, section by section.
class Sheet {
public:
    Sheet(const domain::Protocol& protocol, const std::string& language)
        : m_protocol(protocol), m_language(language), m_animal(animalOf(&protocol, language))
    {
    }

    [[nodiscard]] const Animal& animal() const { return m_animal; }

    void begin(const QString& section) { m_section = section; }

    template <typename T>
    void add(const QString& name, const domain::Figure<T>& figure)
    {
        put(name, figure.value ? said(*figure.value) : QString(), figure.source, figure.note);
    }

    template <typename T>
    void add(const QString& name, const domain::Range<T>& range)
    {
        QString value;
        if (range.from && range.to && *range.from == *range.to)
            value = valueWords(*range.from);
        else if (range.from && range.to)
            value = Figures::tr("%1 to %2").arg(valueWords(*range.from), valueWords(*range.to));
        put(name, value, range.source, range.note);
    }

    // A protocol that is silent has no source either.
    void put(
        const QString& name, const QString& value, const std::string& source, const domain::LocalText& note)
    {
        if (source.empty()) return;
        m_figures.push_back({m_section, name, value, sourceWords(m_protocol, source), local(note)});
    }

    // What comes from nowhere: a remark of this program on the file.
    void remark(const QString& name, const QString& value)
    {
        m_figures.push_back({m_section, name, value, QString(), QString()});
    }

    [[nodiscard]] QString local(const domain::LocalText& text) const
    {
        return QString::fromStdString(text.in(m_language));
    }

    // A value with its unit; moths by the protocol's word for them.
    template <typename T>
    [[nodiscard]] QString said(const T& value) const
    {
        if constexpr (std::is_same_v<T, domain::Moths>)
            return m_animal.amount(value);
        else
            return valueWords(value);
    }

    std::vector<FigureWords> finish() { return std::move(m_figures); }

private:
    const domain::Protocol& m_protocol;
    const std::string& m_language;
    Animal m_animal;
    QString m_section;
    std::vector<FigureWords> m_figures;
};

// The rules that are not bands of a whole season, a section each.
void addRules(Sheet& sheet, const domain::Protocol& protocol);

} // namespace duskrow::text
