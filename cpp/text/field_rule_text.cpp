// SPDX-License-Identifier: MIT
#include "text/field_rule_text.h"

#include <QCoreApplication>
#include <QStringList>

#include "text/amounts.h"
#include "text/protocol_figures.h"
#include "text/protocol_values.h"
#include "text/rule_text.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FieldRule)
};

class Line {
public:
    Line(const Protocol& protocol, const std::string& language) : m_protocol(protocol), m_language(language)
    {
    }

    QString made(const FieldRule& rule)
    {
        std::visit([this](const auto& one) { say(one); }, rule);
        for (const Statement& remark : headOf(rule).reading) m_sentences << local(remark.text);
        //: where a rule was published, what it says, its source
        return Words::tr("%1: %2 (%3)")
            .arg(local(headOf(rule).name), m_sentences.join(QLatin1Char(' ')), m_source);
    }

private:
    [[nodiscard]] QString local(const LocalText& text) const
    {
        return QString::fromStdString(text.in(m_language));
    }

    template <typename T, typename Said>
    void take(const Range<T>& range, const QString& sentence, const Said& said)
    {
        m_source = sourceWords(m_protocol, range.source);
        if (!range.from || !range.to) {
            m_sentences << local(range.note);
            return;
        }
        const QString span = *range.from == *range.to
            ? said(*range.from)
            : Words::tr("%1 to %2").arg(said(*range.from), said(*range.to));
        m_sentences << sentence.arg(span);
        if (!range.note.isEmpty()) m_sentences << local(range.note);
    }

    void say(const PlantShareRule& rule)
    {
        const bool isSummed = rule.isSummedOverVisits.value.value_or(false);
        take(rule.threshold,
            isSummed ? Words::tr("from %1 of the plants, the visits added up.")
                     : Words::tr("from %1 of the plants."),
            [](Percent share) { return valueWords(share); });
        if (rule.plantsPerStop.value && rule.stops.value)
            m_sentences << Words::tr("Look at %1 plants at each of %2 stops.")
                               .arg(number(*rule.plantsPerStop.value), number(*rule.stops.value));
    }

    void say(const LarvaePerAreaRule& rule)
    {
        const bool isFoot = rule.area.value == AreaUnit::SquareFoot;
        take(rule.larvae,
            isFoot ? Words::tr("from %1 larvae on a square foot.")
                   : Words::tr("from %1 larvae on a square metre."),
            [](double larvae) { return meanCatch(larvae); });
        if (rule.longestCounted.value)
            m_sentences << Words::tr("Those longer than %1 are not counted.")
                               .arg(valueWords(*rule.longestCounted.value));
        if (rule.isWithoutParasitised.value.value_or(false))
            m_sentences << Words::tr("Parasitised ones are left out.");
    }

    void say(const BenefitCostRule& rule)
    {
        m_source = sourceWords(m_protocol, rule.lossPerBorer.source);
        m_sentences << Words::tr("what control saves is weighed against its cost, from the %1.")
                           .arg(local(rule.found));
    }

    const Protocol& m_protocol;
    const std::string& m_language;
    QStringList m_sentences;
    QString m_source;
};

} // namespace

QString fieldRuleLine(const Protocol& protocol, const FieldRule& rule, const std::string& language)
{
    return Line(protocol, language).made(rule);
}

} // namespace duskrow::text
