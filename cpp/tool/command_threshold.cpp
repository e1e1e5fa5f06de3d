// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QLocale>

#include "domain/rules/threshold_table.h"
#include "text/protocol_figures.h"
#include "text/protocol_values.h"
#include "text/threshold_text.h"
#include "tool/arguments.h"
#include "tool/commands.h"
#include "tool/output.h"
#include "tool/threshold_json.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

struct ThresholdLine {
    ThresholdInput input;
    std::string pest = "bertha-armyworm";
    std::string crop;
    std::string protocols;
    bool asJson = false;
};

void printWorking(const Threshold& threshold)
{
    print(said(QT_TRANSLATE_NOOP("Tool", "How it is worked out")));
    for (const WorkingStep& step : threshold.working)
        print(
            QStringLiteral("  %1: %2").arg(text::workingName(step.what), text::workingLine(step, threshold)));
}

QString cellWords(const ThresholdCell& cell, bool isOwn)
{
    const QString larvae = QLocale().toString(cell.larvae.value(), 'f', 1);
    const QString mark = cell.isPublished ? QString() : QStringLiteral("*");
    return isOwn ? QStringLiteral("[%1]%2").arg(larvae, mark) : larvae + mark;
}

void printAround(const ThresholdRule& rule, const Threshold& threshold)
{
    const ThresholdTable table = thresholdTable(rule, threshold);
    const auto plain = [](double amount) { return QLocale().toString(amount, 'g', 6); };
    QStringList header{QStringLiteral("%1 \\ %2")
                           .arg(QString::fromStdString(codeOf(threshold.cost.unit)),
                               QString::fromStdString(codeOf(threshold.price.unit)))};
    std::vector<int> numbers{0};
    for (const double price : table.prices) {
        header << plain(price);
        numbers.push_back(static_cast<int>(numbers.size()));
    }
    std::vector<QStringList> rows;
    bool isPublished = true;
    for (std::size_t i = 0; i < table.costs.size(); ++i) {
        QStringList row{plain(table.costs[i])};
        for (std::size_t j = 0; j < table.prices.size(); ++j) {
            row << cellWords(table.cells[i][j], i == table.ownCost && j == table.ownPrice);
            isPublished = isPublished && table.cells[i][j].isPublished;
        }
        rows.push_back(std::move(row));
    }
    print(said(QT_TRANSLATE_NOOP("Tool", "Larvae/m² at other costs (down) and prices (across)")));
    printTable(header, rows, numbers);
    if (!isPublished)
        print(said(QT_TRANSLATE_NOOP("Tool", "* not within the published table: computed, not published")));
}

void printGround(const Protocol& protocol, const ThresholdRule& rule)
{
    if (rule.trialYears.from && rule.trialVarieties.value)
        print(
            said(QT_TRANSLATE_NOOP("Tool", "The loss comes from trials of %1 to %2; varieties in them: %3."))
                .arg(text::valueWords(*rule.trialYears.from), text::valueWords(*rule.trialYears.to),
                    text::valueWords(*rule.trialVarieties.value)));
    for (const Statement& finding : rule.evidence) print(inLanguage(finding.text));
    for (const Statement& caution : protocol.cautionsAt(CautionPlace::Decision))
        print(inLanguage(caution.text));
    for (const Statement& moment : rule.timing) print(inLanguage(moment.text));
    print(said(QT_TRANSLATE_NOOP("Tool", "By the protocol %1 %2. Source: %3"))
              .arg(QString::fromStdString(protocol.id), QString::fromStdString(protocol.version),
                  text::sourceWords(protocol, rule.lossPerLarva.source)));
}

Result<int> sayThreshold(const ThresholdLine& line)
{
    const auto protocol = protocolOf(line.pest, line.protocols);
    if (!protocol) return protocol.error();
    const auto rule = thresholdRuleFor(*protocol, line.crop);
    if (!rule) return rule.error();
    const auto threshold = thresholdOf(*protocol, **rule, line.input);
    if (!threshold) return threshold.error();
    if (line.asJson) {
        print(QString::fromStdString(thresholdJson(*protocol, **rule, *threshold)));
        return 0;
    }
    print(text::thresholdSentence(*threshold));
    print(text::lossSentence(*threshold));
    for (const ThresholdNote note : threshold->notes) print(text::noteSentence(note, *threshold, **rule));
    const QString dry = text::drySeasonOffer(*threshold, **rule);
    if (!dry.isEmpty()) print(dry);
    print(QString());
    printWorking(*threshold);
    print(QString());
    printAround(**rule, *threshold);
    print(QString());
    printGround(*protocol, **rule);
    return 0;
}

void addMoney(CLI::App& line, ThresholdInput& input)
{
    line.add_option("--cost", input.cost.sum, "What control costs in all")->type_name("AMOUNT");
    line.add_option("--product", input.cost.product, "Or its parts: the product")->type_name("AMOUNT");
    line.add_option("--application", input.cost.application, "The application")->type_name("AMOUNT");
    line.add_option("--wheel-tracks", input.cost.wheelTracks, "The crop trodden down, in money")
        ->type_name("AMOUNT");
    line.add_option("--cost-unit", input.costUnit, "CAD/ac, CAD/ha, USD/ac or USD/ha")
        ->required()
        ->type_name("UNIT");
    line.add_option("--price", input.price, "What the harvest sells for")->required()->type_name("AMOUNT");
    line.add_option("--price-unit", input.priceUnit, "CAD/bu, CAD/t, USD/bu or USD/t")
        ->required()
        ->type_name("UNIT");
}

} // namespace

Work declareThreshold(CLI::App& line)
{
    const auto typed = std::make_shared<ThresholdLine>();
    addMoney(line, typed->input);
    line.add_option("--dry-season", typed->input.drySeasonDivisor,
            "Divide by this because you call the season dry; the plain output names the published one")
        ->type_name("DIVISOR");
    line.add_option("--frame", typed->input.frameM2,
            "Area of your frame in square metres (the protocol's if left out)")
        ->type_name("AREA");
    line.add_option("--protocol", typed->pest, "The pest (bertha-armyworm if left out)")->type_name("ID");
    line.add_option("--crop", typed->crop, "The crop (the protocol's main one if left out)")->type_name("ID");
    line.add_flag("--json", typed->asJson, "For other programs: JSON, unrounded, with working and table");
    addProtocols(line, typed->protocols);
    return [typed] { return sayThreshold(*typed); };
}

} // namespace duskrow::tool
