// SPDX-License-Identifier: MIT
#include <QDir>
#include <QTest>

#include "domain/pest_files.h"
#include "domain/rules/bands.h"
#include "domain/rules/field_rule_results.h"

using namespace duskrow::domain;
using duskrow::tests::GoldenRow;
using duskrow::tests::readGolden;

// The protocol files of all pests, what is wrong in a broken one, and their rules for the crop.
class PestFilesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyFileIsReadWhole_data()
    {
        QTest::addColumn<QString>("pest");
        QTest::addColumn<int>("trapRules");
        QTest::addColumn<int>("fieldRules");
        const auto row = [](const char* pest, int trapRules, int fieldRules) {
            QTest::newRow(pest) << QString::fromLatin1(pest) << trapRules << fieldRules;
        };
        row("bertha-armyworm", 0, 0);
        row("black-cutworm", 1, 2);
        row("corn-earworm", 2, 0);
        row("diamondback-moth", 1, 2);
        row("european-corn-borer", 1, 3);
        row("pea-moth", 1, 0);
        row("sunflower-moth", 1, 0);
        row("true-armyworm", 0, 7);
        row("western-bean-cutworm", 3, 5);
        row("wheat-midge", 2, 0);
    }

    void everyFileIsReadWhole()
    {
        QFETCH(QString, pest);
        const Protocol protocol = protocolNamed(qPrintable(pest));
        QTEST(static_cast<int>(protocol.trapRules.size()), "trapRules");
        QTEST(static_cast<int>(protocol.fieldRules.size()), "fieldRules");
        QVERIFY(protocol.unknownRules.empty());
        QVERIFY(!protocol.cautionsAt(CautionPlace::Counting).empty());
        if (pest == QStringLiteral("bertha-armyworm")) return;
        // Nobody has published bands of a whole season for these: none is shown, and the file says why.
        QVERIFY(protocol.catchRules.empty() && protocol.noBands && !protocol.noBands->fr.empty());
        for (const TrapType& type : protocol.trapTypes)
            QVERIFY(bandsFor(protocol, type.id).error().code == ErrorCode::ProtocolNoBands);
    }

    void noFileIsForgotten()
    {
        const QDir folder(QStringLiteral(DUSKROW_SOURCE_DIR "/assets/protocols"));
        QCOMPARE(folder.entryList({QStringLiteral("*.json")}).size(), 11); // ten pests and the schema
    }

    void benefitCostSheets_data() { rowsOf("protocols/corn-borer-sheets.csv"); }

    void benefitCostSheets()
    {
        QFETCH(int, row);
        const GoldenRow golden = readGolden("protocols/corn-borer-sheets.csv").at(row);
        const Protocol protocol = protocolNamed("european-corn-borer");
        const auto& rule = fieldRule<BenefitCostRule>(protocol, golden.text("rule").constData());
        const auto sheet = benefitCost(rule,
            {golden.number("found"), golden.number("yield"), DollarsPerBushel{golden.number("price")},
                DollarsPerAcre{golden.number("cost")}});
        const auto isNear = [&](double value, const char* column) {
            return golden.isBlank(column) || qAbs(value - golden.number(column)) < 5e-6;
        };
        QVERIFY(isNear(sheet.saved.value(), "saved"));
        QVERIFY(isNear(sheet.gain, "gain"));
        QVERIFY(isNear(sheet.costOverSaved, "ratio"));
        QVERIFY(isNear(sheet.breakEvenBorers, "break_even_borers"));
        QVERIFY(isNear(sheet.breakEvenFound, "break_even_found"));
    }

    void nothingFoundSavesNothing()
    {
        const Protocol protocol = protocolNamed("european-corn-borer");
        const auto& rule = fieldRule<BenefitCostRule>(protocol, "second-generation");
        const auto sheet = benefitCost(rule, {0, 150, DollarsPerBushel{3.5}, DollarsPerAcre{15}});
        QCOMPARE(sheet.gain, -15.0);
        QVERIFY(qIsInf(sheet.costOverSaved));
    }

    void percentOfPlants()
    {
        const Protocol protocol = protocolNamed("western-bean-cutworm");
        const std::array visits{PlantsLookedAt{100, 2}, PlantsLookedAt{100, 2}, PlantsLookedAt{100, 1}};
        const auto& michigan = fieldRule<PlantShareRule>(protocol, "corn-michigan");
        const auto& ontario = fieldRule<PlantShareRule>(protocol, "corn-ontario");
        QCOMPARE(plantShare(michigan, visits).value(), 5.0);
        QVERIFY(against(michigan, plantShare(michigan, visits)) == Against::Over);
        QCOMPARE(plantShare(ontario, visits).value(), 1.0);
        QVERIFY(against(ontario, plantShare(ontario, visits)) == Against::Below);
        const auto& nebraska = fieldRule<PlantShareRule>(protocol, "corn-nebraska");
        QVERIFY(against(nebraska, Percent{4.9}) == Against::Below);
        QVERIFY(against(nebraska, Percent{5}) == Against::Within);
        QVERIFY(against(nebraska, Percent{8}) == Against::Over);
    }

    void larvaeOnAnArea()
    {
        const Protocol protocol = protocolNamed("true-armyworm");
        const auto& manitoba = fieldRule<LarvaePerAreaRule>(protocol, "cereals-manitoba");
        QCOMPARE(qRound(perSquareMetre(manitoba).from->value()), 43); // 4 on a square foot
        const auto& alberta = fieldRule<LarvaePerAreaRule>(protocol, "cereals-alberta");
        QCOMPARE(perSquareMetre(alberta).to->value(), 11.0);
        const auto& ontario = fieldRule<LarvaePerAreaRule>(protocol, "cereals-ontario");
        const std::array found{LarvaFound{Millimetres{12}}, LarvaFound{Millimetres{25}},
            LarvaFound{Millimetres{26}}, LarvaFound{Millimetres{20}, true}};
        QCOMPARE(countedLarvae(ontario, found, SquareMetres{0.5}).value(), 4.0);
        QCOMPARE(countedLarvae(manitoba, found, SquareMetres{0.5}).value(), 8.0);
        QVERIFY(against(manitoba, LarvaePerSquareMetre{43}) == Against::Below); // 43.06 exactly
        QVERIFY(against(ontario, LarvaePerSquareMetre{50}) == Against::Within);
    }

    void mistakesInRulesAreTold_data()
    {
        QTest::addColumn<QByteArray>("pest");
        QTest::addColumn<QByteArray>("before");
        QTest::addColumn<QByteArray>("after");
        QTest::addColumn<QByteArray>("word");
        const auto row = [](const char* name, const char* pest, const char* before, const char* after,
                             const char* word) {
            QTest::newRow(name) << QByteArray(pest) << QByteArray(before) << QByteArray(after)
                                << QByteArray(word);
        };
        row("steps that fall", "wheat-midge", "\"over_moths\": 120", "\"over_moths\": 20", "higher than");
        row("steps not from 0", "diamondback-moth", "\"from_moths\": 0", "\"from_moths\": 1",
            "the first step");
        row("a step of text", "corn-earworm", "\"from_moths\": 0.2", "\"from_moths\": \"few\"", "a number");
        row("both edges", "corn-earworm", "\"from_moths\": 0.2", "\"over_moths\": 1, \"from_moths\": 0.2",
            "not both");
        row("no nights", "black-cutworm", "\"nights\": { \"value\": 2,", "\"nights\": { \"value\": 0,",
            "more than 0");
        row("warmth that falls", "black-cutworm", "\"value\": 300,", "\"value\": 20,", "rise");
        row("a trap of another file", "pea-moth", "\"trap_types\": [\"delta\"]",
            "\"trap_types\": [\"bucket\"]", "\"bucket\"");
        row("half a visit", "pea-moth", "\"visits\": { \"value\": 2,", "\"visits\": { \"value\": 2.5,",
            "whole number");
        row("a milestone nobody knows", "western-bean-cutworm", "\"value\": \"peak\"", "\"value\": \"noon\"",
            "\"half_of_flight\"");
        row("more than all plants", "western-bean-cutworm", "\"to\": 8, \"source\": \"nebraska-2025\"",
            "\"to\": 180, \"source\": \"nebraska-2025\"", "at most 100");
        row("a share over one", "european-corn-borer", "\"value\": 0.72", "\"value\": 72", "at most 1");
        row("nothing is controlled", "european-corn-borer", "\"value\": 0.72", "\"value\": 0", "more than 0");
        row("an area nobody knows", "true-armyworm", "\"value\": \"ft2\"", "\"value\": \"yard\"", "\"m2\"");
        row("a word for yes", "western-bean-cutworm", "\"value\": true", "\"value\": \"yes\"",
            "true or false");
        row("a step without source", "wheat-midge", "\"from_moths\": 0,\n          \"source\"",
            "\"from_moths\": 0,\n          \"origin\"", "source");
        row("a crop of another file", "true-armyworm", "\"crops\": [\"corn\"]", "\"crops\": [\"hay\"]",
            "\"hay\"");
        row("bands under another name", "pea-moth", "\"season_bands\": {\n    \"value\": null",
            "\"season_bands\": {\n    \"value\": \"low\"", "not-published");
    }

    void mistakesInRulesAreTold()
    {
        QFETCH(QByteArray, pest);
        QFETCH(QByteArray, before);
        QFETCH(QByteArray, after);
        QFETCH(QByteArray, word);
        std::string text = protocolText(pest.constData());
        const auto at = text.find(before.toStdString());
        QVERIFY2(at != std::string::npos, before.constData());
        text.replace(at, static_cast<std::size_t>(before.size()), after.toStdString());
        const auto read = readProtocol(text, "f.json");
        QVERIFY(!read.has_value());
        QVERIFY(read.error().code == ErrorCode::ProtocolRule);
        QVERIFY2(
            read.error().args[2].find(word.toStdString()) != std::string::npos, read.error().args[2].c_str());
        QVERIFY(std::stoi(read.error().args[1]) > 1);
    }
};

QTEST_APPLESS_MAIN(PestFilesTest)
#include "pest_files_test.moc"
