// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/protocol/protocol_reader.h"
#include "domain/protocol_files.h"

using namespace duskrow::domain;

class ProtocolReaderTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        m_text = protocolText("bertha-armyworm");
        const auto read = readProtocol(m_text, "bertha-armyworm.json");
        QVERIFY2(read.has_value(), read ? "" : told(read.error()).constData());
        m_protocol = *read;
    }

    void namesAndSections()
    {
        QCOMPARE(m_protocol.id, std::string("bertha-armyworm"));
        QCOMPARE(m_protocol.version, std::string("2026-1"));
        QCOMPARE(m_protocol.name.in("en_CA"), std::string("Bertha armyworm"));
        QCOMPARE(m_protocol.name.in("fr_CA"), std::string("Légionnaire bertha"));
        QCOMPARE(m_protocol.name.in("fry"), std::string("Bertha armyworm"));
        QCOMPARE(m_protocol.latin, std::string("Mamestra configurata"));
        QCOMPARE(m_protocol.crops.front().id, std::string("canola"));
        QVERIFY(m_protocol.trapType("green-bucket"));
        QVERIFY(m_protocol.trapType("green-bucket")->hasKillingStrip);
        QVERIFY(!m_protocol.trapType("delta"));
        QVERIFY(m_protocol.lure && m_protocol.killingStrip && m_protocol.height && m_protocol.scouting);
        QVERIFY(m_protocol.phenology.has_value());
        QCOMPARE(m_protocol.lookAlikes.size(), std::size_t{4});
    }

    void whatIsCountedIsMothsUnlessTheFileNamesIt()
    {
        QVERIFY(!m_protocol.counted);
        const auto midge = readProtocol(protocolText("wheat-midge"), "wheat-midge.json");
        QVERIFY2(midge.has_value(), midge ? "" : told(midge.error()).constData());
        QVERIFY(midge->counted.has_value());
        QCOMPARE(midge->counted->one.in("en"), std::string("midge"));
        QCOMPARE(midge->counted->many.in("fr_CA"), std::string("cécidomyies"));
    }

    void numbersComeWithUnitAndSource()
    {
        const HeightAdvice& height = *m_protocol.height;
        QVERIFY(height.entrance.value == Millimetres{1000});
        QVERIFY(m_protocol.citation(height.entrance.source));
        QVERIFY(height.rule.value == HeightRule::FollowCanopy);
        QCOMPARE(height.rule.source, std::string(commonPractice));
        QVERIFY(!m_protocol.citation(commonPractice));
        QVERIFY(height.stake.from == Millimetres{600} && height.stake.to == Millimetres{1200});
        QVERIFY(m_protocol.lure->life.to == std::chrono::days{56});
        QVERIFY(m_protocol.season.visitInterval.value == std::chrono::days{7});
        QVERIFY(m_protocol.scouting->frame.value == SquareMetres{0.25});
        QVERIFY(m_protocol.scouting->framesExpected.value == Frames{10});
        QVERIFY(m_protocol.scouting->sizeClasses[1].below == Millimetres{26});
        QVERIFY(m_protocol.phenology->damagingLarvaeAfter.to == std::chrono::days{42});
        QVERIFY(m_protocol.heat->unit == HeatUnit::Celsius && m_protocol.heat->lower.value == 7.0);
        QVERIFY(m_protocol.heat->method.value == HeatMethod::SingleSine);
        QVERIFY(m_protocol.heat->cutOff.value == CutOff::None && !m_protocol.heat->upper.value);
        QVERIFY(m_protocol.heat->start.value == std::chrono::April / 1);
        QVERIFY(m_protocol.heat->sums.at(2).after == SumAfter::Start);
        QVERIFY(m_protocol.flightModel->median.value == std::chrono::July / 15);
        QVERIFY(m_protocol.flightModel->widthLogSpread.value == 0.35);
        const ThresholdRule& rule = m_protocol.thresholdRules.at(0);
        QVERIFY(rule.lossPerLarva.value == BushelsPerAcrePerLarva{0.058});
        QVERIFY(rule.drySeasonDivisor.value == 1.48);
        QVERIFY(rule.publishedCost.to == DollarsPerAcre{12});
        QVERIFY(rule.publishedLarvae.to == LarvaePerSquareMetre{34});
        QVERIFY(rule.publishedCurrency.value == Currency::Canadian);
        QVERIFY(rule.trialYears.to == std::chrono::year{1975});
        QVERIFY(rule.control.stage.from == BbchStage{67} && rule.control.stage.to == BbchStage{83});
        QVERIFY(rule.control.decideBeforePodDamage.value == Percent{20});
        QCOMPARE(rule.control.largeLarvae.source, std::string(commonPractice));
        QVERIFY(rule.control.lookAgain.to == std::chrono::days{3});
    }

    void whatNobodyHasPublishedSaysSo()
    {
        for (const LocalText* note : {&m_protocol.heat->method.note,
                 &m_protocol.heat->sums.at(0).degreeDays.note, &m_protocol.thresholdRules.at(0).floor.note})
            QVERIFY(note->en.find("Nobody has published") != std::string::npos && !note->fr.empty());
        QVERIFY(!m_protocol.heat->upper.value && !m_protocol.thresholdRules.at(0).floor.value);
        QCOMPARE(m_protocol.heat->upper.source, std::string(notPublished));
    }

    void cautionsAreShownAtTheirPlace()
    {
        QCOMPARE(m_protocol.cautionsAt(CautionPlace::Counting).size(), std::size_t{1});
        QCOMPARE(m_protocol.cautionsAt(CautionPlace::Decision).size(), std::size_t{5});
        QCOMPARE(m_protocol.cautionsAt(CautionPlace::KillingStrip).size(), std::size_t{4});
        QCOMPARE(m_protocol.cautionsAt(CautionPlace::Decision).front().text.en,
            std::string("A trap catch never decides a spray."));
    }

    void aFileCutAnywhereIsRefusedWithItsLine()
    {
        const std::size_t end = m_text.rfind('}');
        int cuts = 0;
        for (std::size_t cut = 0; cut <= end;
             cut = cut + 97 > end - 200 ? std::max(cut + 1, end - 200) : cut + 97) {
            const auto read = readProtocol(std::string_view(m_text).substr(0, cut), "cut.json");
            QVERIFY(!read.has_value());
            QVERIFY(read.error().code == ErrorCode::ProtocolSyntax);
            const auto lines =
                std::count(m_text.begin(), m_text.begin() + static_cast<std::ptrdiff_t>(cut), '\n');
            // A cut just after a line break is told on the line that was last begun with something on it.
            const int line = std::stoi(read.error().args[1]);
            QVERIFY(line == lines + 1 || (cut > 0 && m_text[cut - 1] == '\n' && line == lines));
            QVERIFY(!read.error().args[2].empty());
            ++cuts;
        }
        QVERIFY(cuts > 500);
    }

    // A damaged file is read or refused with file, line and words; it never brings the program down.
    void aFileWithOneWrongByteIsReadOrRefused()
    {
        const std::string bytes = "0\"{}[],:x-\n\xff";
        int refused = 0;
        for (std::size_t at = 0; at < m_text.size(); at += 211) {
            std::string text = m_text;
            text[at] = bytes[at / 211 % bytes.size()];
            const auto read = readProtocol(text, "f.json");
            if (read) continue;
            QCOMPARE(read.error().args.size(), std::size_t{3});
            QVERIFY(std::stoi(read.error().args[1]) >= 1 && !read.error().args[2].empty());
            ++refused;
        }
        QVERIFY(refused > 80);
    }

    void whatIsNewerIsPassedOver()
    {
        const auto read =
            readProtocol(edited("  \"crops\":", "  \"moon\": [1, {\"phase\": 2}],\n  \"crops\":"), "f");
        QVERIFY2(read.has_value(), read ? "" : told(read.error()).constData());
        const auto rule = readProtocol(
            edited("  \"rules\": [", "  \"rules\": [{\"id\": \"week\", \"shape\": \"weekly_rate\"},"), "f");
        QVERIFY2(rule.has_value(), rule ? "" : told(rule.error()).constData());
        QCOMPARE(rule->unknownRules.at(0).shape, std::string("weekly_rate"));
    }

    void mistakesAreToldWithTheirLine_data()
    {
        QTest::addColumn<QByteArray>("before");
        QTest::addColumn<QByteArray>("after");
        QTest::addColumn<QByteArray>("word");
        const auto row = [](const char* name, const char* before, const char* after, const char* word) {
            QTest::newRow(name) << QByteArray(before) << QByteArray(after) << QByteArray(word);
        };
        row("one word of two", "  \"crops\":",
            "  \"counted\": { \"one\": { \"en\": \"fly\", \"fr\": \"mouche\" } },\n  \"crops\":", "many");
        row("a word in one language", "  \"crops\":",
            "  \"counted\": { \"one\": { \"en\": \"fly\" }, \"many\": { \"en\": \"flies\" } },\n  \"crops\":",
            "fr");
        row("a gap between bands", "\"from_moths\": 900", "\"from_moths\": 901", "must be 900");
        row("bands that overlap", "\"from_moths\": 300", "\"from_moths\": 299", "must be 300");
        row("bands not from 0", "\"from_moths\": 0", "\"from_moths\": 1", "must be 0");
        row("a band upside down", "\"below_moths\": 900", "\"below_moths\": 300", "more than");
        row("a top in the middle", "\"below_moths\": 1200", "\"below_moths\": null", "nothing can follow");
        row("no open top", "\"below_moths\": null", "\"below_moths\": 5000", "open at the top");
        row("half a moth", "\"from_moths\": 900", "\"from_moths\": 900.5", "whole number");
        row("a negative edge", "\"below_moths\": 300", "\"below_moths\": -300", "whole number");
        row("the other edge rule", "\"value\": \"higher_band\"", "\"value\": \"lower_band\"", "higher_band");
        row("bands for no trap", "\"trap_types\": [\"green-bucket\"]", "\"trap_types\": [\"delta\"]",
            "\"delta\"");
        row("a number without source", "\"value\": 2, \"source\": \"manitoba-protocol\"", "\"value\": 2",
            "source");
        row("an unknown source", "\"value\": 400, \"source\": \"manitoba-protocol\"",
            "\"value\": 400, \"source\": \"hearsay\"", "\"hearsay\"");
        row("a bare number", "\"shape\": \"bucket\",", "\"shape\": \"bucket\", \"weight_g\": 120,",
            "no source");
        row("null with a source", "\"value\": 80, \"source\": \"ppmn-2017\"",
            "\"value\": null, \"source\": \"ppmn-2017\"", "not-published");
        row("not published, yet known", "\"value\": 80, \"source\": \"ppmn-2017\"",
            "\"value\": 80, \"source\": \"not-published\"", "not-published");
        row("not published, not said", "\"value\": 80, \"source\": \"ppmn-2017\"",
            "\"value\": null, \"source\": \"not-published\"", "note");
        row("a way to sum nobody knows", "\"value\": \"single_sine\"", "\"value\": \"cosine\"",
            "single_sine");
        row("a unit nobody knows", "\"unit\": \"celsius\"", "\"unit\": \"kelvin\"", "celsius");
        row("a cut-off at nothing", "\"cut_off\": { \"value\": \"none\"",
            "\"cut_off\": { \"value\": \"horizontal\"", "upper limit");
        row("a flight without width", "\"width_days\": { \"value\": 10", "\"width_days\": { \"value\": 0",
            "above 0");
        row("a stage no crop has", "\"id\": \"flower-end\",\n      \"crop\"",
            "\"id\": \"flower-start\",\n      \"crop\"", "no stage");
        row("a reserved source", "\"ppmn-2025\": \"Prairie", "\"common-practice\": \"Prairie", "reserved");
        row("an id with a capital", "\"id\": \"mustard\"", "\"id\": \"Mustard\"", "lower-case");
        row("an id twice", "\"id\": \"mustard\"", "\"id\": \"canola\"", "used twice");
        row("another form", "\"form\": \"1\"", "\"form\": \"2\"", "another version");
        row("no version", "\"version\": \"2026-1\"", "\"version\": \"new\"", "a year and a number");
        row("a day that is none", "\"value\": \"07-08\"", "\"value\": \"07-32\"", "day of the year");
        row("a range upside down", "\"from\": 600, \"to\": 1200", "\"from\": 1300, \"to\": 1200",
            "lower end");
        row("a missing text", "\"fr\": \"Moutarde\"", "\"de\": \"Senf\"", "\"fr\" is missing");
        row("an empty text", "\"fr\": \"Moutarde\"", "\"fr\": \"\"", "empty");
        row("a text for a number", "\"value\": 0.25", "\"value\": \"a quarter\"", "a number");
        row("an unknown shape of trap", "\"shape\": \"bucket\"", "\"shape\": \"box\"", "\"delta\"");
        row("a dry season that raises", "\"value\": 1.48", "\"value\": 0.68", "divisor");
        row("a share of more than all pods", "\"value\": 20, \"source\": \"bracken-1987\"",
            "\"value\": 120, \"source\": \"bracken-1987\"", "at most 100");
        row("a section of another kind", "\"marks\": {", "\"marks\": 3, \"moths\": {", "no source");
    }

    void mistakesAreToldWithTheirLine()
    {
        QFETCH(QByteArray, before);
        QFETCH(QByteArray, after);
        QFETCH(QByteArray, word);
        QVERIFY2(m_text.find(before.toStdString()) != std::string::npos, before.constData());
        const auto read = readProtocol(edited(before, after), "f.json");
        QVERIFY(!read.has_value());
        QVERIFY(read.error().code == ErrorCode::ProtocolRule);
        QVERIFY2(read.error().args[2].find(word.toStdString()) != std::string::npos,
            told(read.error()).constData());
        const std::size_t at = m_text.find(before.toStdString());
        const auto line =
            1 + std::count(m_text.begin(), m_text.begin() + static_cast<std::ptrdiff_t>(at), '\n');
        // What is wrong with a whole group is told where the group opens, one line up.
        QVERIFY2(std::abs(std::stol(read.error().args[1]) - line) <= 1, told(read.error()).constData());
    }

    void everySectionMayBeMissingButNotTheNeeded_data()
    {
        QTest::addColumn<QByteArray>("section");
        QTest::addColumn<bool>("needed");
        for (const char* name :
            {"form", "id", "version", "name", "crops", "trap_types", "season", "rules", "sources"})
            QTest::newRow(name) << QByteArray(name) << true;
        for (const char* name :
            {"other_hosts", "traps_per_field", "lure", "killing_strip", "height", "placement", "phenology",
                "heat", "flight_model", "crop_calendar", "scouting", "marks", "look_alikes", "cautions"})
            QTest::newRow(name) << QByteArray(name) << false;
    }

    void everySectionMayBeMissingButNotTheNeeded()
    {
        QFETCH(QByteArray, section);
        QFETCH(bool, needed);
        const QByteArray key = "\n  \"" + section + "\":";
        QVERIFY(m_text.find(key.toStdString()) != std::string::npos);
        const auto read = readProtocol(edited(key, "\n  \"of_another_name\":"), "f.json");
        QCOMPARE(read.has_value(), !needed);
        if (needed) QVERIFY(read.error().code == ErrorCode::ProtocolRule);
    }

    void anythingButAGroupIsRefused_data()
    {
        QTest::addColumn<QByteArray>("text");
        for (const char* text : {"[]", "1", "null", "\"a\"", "{}", "[[]]"})
            QTest::newRow(text) << QByteArray(text);
    }

    void anythingButAGroupIsRefused()
    {
        QFETCH(QByteArray, text);
        const auto read = readProtocol(text.toStdString(), "f.json");
        QVERIFY(!read.has_value() && read.error().code == ErrorCode::ProtocolRule);
        QCOMPARE(read.error().args[1], std::string("1"));
    }

private:
    [[nodiscard]] std::string edited(const QByteArray& before, const QByteArray& after) const
    {
        std::string text = m_text;
        if (const auto at = text.find(before.toStdString()); at != std::string::npos)
            text.replace(at, static_cast<std::size_t>(before.size()), after.toStdString());
        return text;
    }

    static QByteArray told(const Error& error)
    {
        QByteArray words;
        for (const std::string& arg : error.args) words += QByteArray::fromStdString(arg) + ": ";
        return words;
    }

    std::string m_text;
    Protocol m_protocol;
};

QTEST_APPLESS_MAIN(ProtocolReaderTest)
#include "protocol_reader_test.moc"
