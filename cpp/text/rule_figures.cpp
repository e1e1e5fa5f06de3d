// SPDX-License-Identifier: MIT
#include "text/amounts.h"
#include "text/figure_sheet.h"
#include "text/rule_text.h"
#include "text/upper_first.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

class RuleFigures {
public:
    explicit RuleFigures(Sheet& sheet) : m_sheet(sheet) { }

    template <typename Rule>
    void operator()(const Rule& rule)
    {
        m_sheet.begin(m_sheet.local(rule.head.name));
        add(rule);
        for (const Statement& remark : rule.head.reading)
            m_sheet.put(
                Figures::tr("How to read it"), m_sheet.local(remark.text), remark.source, remark.note);
    }

private:
    void add(const SumSoFarRule& rule) { addSteps(rule.steps); }

    void add(const RateRule& rule)
    {
        m_sheet.add(Figures::tr("Catch of"), rule.per);
        addSteps(rule.steps);
    }

    void add(const MilestoneRule& rule)
    {
        put(Figures::tr("Weighed at"), rule.milestone, [](Milestone milestone) {
            return milestone == Milestone::Peak ? Figures::tr("the peak of the flight")
                                                : Figures::tr("half of the flight");
        });
        addSteps(rule.steps);
    }

    void add(const MothsInNightsRule& rule)
    {
        m_sheet.add(upperFirst(m_sheet.animal().many()), rule.moths);
        m_sheet.add(Figures::tr("Within"), rule.nights);
        for (const HeatStep& step : rule.then)
            m_sheet.put(m_sheet.local(step.name), step.sum.value ? warmthWords(step) : QString(),
                step.sum.source, step.sum.note);
        addMeaning(rule.meaning);
    }

    void add(const VisitsInARowRule& rule)
    {
        m_sheet.add(Figures::tr("On each visit at least"), rule.moths);
        m_sheet.add(Figures::tr("Visits in a row"), rule.visits);
        m_sheet.add(Figures::tr("A visit covers"), rule.apart);
        addMeaning(rule.meaning);
    }

    void add(const PlantShareRule& rule)
    {
        m_sheet.add(Figures::tr("Share of the plants"), rule.threshold);
        put(Figures::tr("Visits are added up"), rule.isSummedOverVisits, yesOrNo);
        m_sheet.add(Figures::tr("Plants at a stop"), rule.plantsPerStop);
        m_sheet.add(Figures::tr("Stops"), rule.stops);
    }

    void add(const LarvaePerAreaRule& rule)
    {
        m_sheet.add(Figures::tr("Larvae"), rule.larvae);
        put(Figures::tr("On"), rule.area, [](AreaUnit area) {
            return area == AreaUnit::SquareFoot ? Figures::tr("a square foot")
                                                : Figures::tr("a square metre");
        });
        m_sheet.add(Figures::tr("Longest larva counted"), rule.longestCounted);
        put(Figures::tr("Parasitised larvae are left out"), rule.isWithoutParasitised, yesOrNo);
    }

    void add(const BenefitCostRule& rule)
    {
        m_sheet.add(
            Figures::tr("Borers for each found (%1)").arg(m_sheet.local(rule.found)), rule.borersPerFound);
        m_sheet.add(Figures::tr("Share of the yield lost to one borer on a plant"), rule.lossPerBorer);
        m_sheet.add(Figures::tr("Share of the borers that control reaches"), rule.controlled);
    }

    void addSteps(const RuleSteps& steps)
    {
        for (const RuleStep& step : steps) {
            const QString from = meanCatch(step.from);
            QString value =
                step.isOver ? Figures::tr("more than %1").arg(from) : Figures::tr("%1 or more").arg(from);
            if (step.betweenSprays)
                value +=
                    QStringLiteral("; ") + Figures::tr("%1 between sprays").arg(days(*step.betweenSprays));
            m_sheet.put(m_sheet.local(step.name), value, step.source, step.meaning.text);
        }
    }

    void addMeaning(const Statement& meaning)
    {
        m_sheet.put(Figures::tr("What it means"), m_sheet.local(meaning.text), meaning.source, meaning.note);
    }

    template <typename T, typename Words>
    void put(const QString& name, const Figure<T>& figure, const Words& words)
    {
        m_sheet.put(name, figure.value ? words(*figure.value) : QString(), figure.source, figure.note);
    }

    static QString yesOrNo(bool value) { return value ? Figures::tr("yes") : Figures::tr("no"); }

    Sheet& m_sheet;
};

} // namespace

void addRules(Sheet& sheet, const Protocol& protocol)
{
    RuleFigures figures(sheet);
    for (const TrapRule& rule : protocol.trapRules) std::visit(figures, rule);
    for (const FieldRule& rule : protocol.fieldRules) std::visit(figures, rule);
    if (protocol.unknownRules.empty()) return;
    sheet.begin(Figures::tr("Rules that this version does not understand"));
    for (const UnknownRule& rule : protocol.unknownRules)
        sheet.remark(QString::fromStdString(rule.id),
            Figures::tr("shape “%1”").arg(QString::fromStdString(rule.shape)));
}

} // namespace duskrow::text
