// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>

#include "domain/protocol/protocol_reader.h"
#include "domain/protocol_files.h"
#include "domain/rules/threshold.h"

using namespace duskrow::domain;

namespace {

ThresholdInput perAcreAndBushel(const std::string& cost, const std::string& price)
{
    ThresholdInput input;
    input.cost.sum = cost;
    input.costUnit = "CAD/ac";
    input.price = price;
    input.priceUnit = "CAD/bu";
    return input;
}

bool isClose(double a, double b)
{
    return std::abs(a - b) <= 1e-12 * std::abs(b);
}

} // namespace

// Amounts as people type them, on their way into a threshold.
class TypedMoneyTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        const auto read = readProtocol(protocolText("bertha-armyworm"), "bertha-armyworm.json");
        QVERIFY(read.has_value());
        m_protocol = *read;
        m_rule = m_protocol.thresholdRules.front();
    }

    void partsOfTheCostAddUp()
    {
        ThresholdInput input = perAcreAndBushel("", "10");
        input.cost = {"", "7.10", "3,2", "1.7"};
        QVERIFY(isClose(of(input).larvae.value(), of("12", "10").larvae.value()));
        QVERIFY(of(input).working.front().what == WorkingWhat::SumCost);
        input.cost.wheelTracks = "0";
        input.cost.product = "8.8";
        QVERIFY(isClose(of(input).larvae.value(), of("12", "10").larvae.value()));
    }

    void whatMakesNoSenseIsRefused_data()
    {
        QTest::addColumn<QStringList>("typed"); // cost, its unit, price, its unit, divisor
        QTest::addColumn<int>("code");
        QTest::addColumn<QString>("field"); // the error's first argument
        const auto row = [](const char* name, const QStringList& line, ErrorCode code, const char* field) {
            QTest::newRow(name) << line << static_cast<int>(code) << QString::fromUtf8(field);
        };
        const auto line = [](const char* cost, const char* costUnit, const char* price, const char* priceUnit,
                              const char* divisor = "") {
            return QStringList{QString::fromUtf8(cost), QString::fromUtf8(costUnit), QString::fromUtf8(price),
                QString::fromUtf8(priceUnit), QString::fromUtf8(divisor)};
        };
        const char* ac = "CAD/ac";
        const char* bu = "CAD/bu";
        row("no price", line("12", ac, "0", bu), ErrorCode::OutOfRange, "price_per_bu");
        row("no cost", line("0.00", ac, "10", bu), ErrorCode::OutOfRange, "cost_per_ac");
        row("a negative price", line("12", ac, "-10", bu), ErrorCode::OutOfRange, "price_per_bu");
        row("a negative cost", line("-12", "CAD/ha", "10", bu), ErrorCode::OutOfRange, "cost_per_ha");
        row("letters", line("twelve", ac, "10", bu), ErrorCode::NotANumber, "twelve");
        row("letters behind", line("12", ac, "10x", bu), ErrorCode::NotANumber, "10x");
        row("a power of ten", line("1e1", ac, "10", bu), ErrorCode::NotANumber, "1e1");
        row("not a number, in words", line("nan", ac, "10", bu), ErrorCode::NotANumber, "nan");
        row("infinity", line("inf", ac, "10", bu), ErrorCode::NotANumber, "inf");
        row("two points", line("1.2.3", ac, "10", bu), ErrorCode::NotANumber, "1.2.3");
        row("a point alone", line(".", ac, "10", bu), ErrorCode::NotANumber, ".");
        row("thousands or thousandths", line("12", "CAD/ac", "1,250", "CAD/t"), ErrorCode::NotANumber,
            "1,250");
        row("a dollar sign", line("$12", ac, "10", bu), ErrorCode::NotANumber, "$12");
        row("nothing typed", line(" ", ac, "10", bu), ErrorCode::Empty, "cost");
        row("no price typed", line("12", ac, "", bu), ErrorCode::Empty, "price");
        row("absurdly dear", line("100000", ac, "10", bu), ErrorCode::OutOfRange, "cost_per_ac");
        row("a price of the tonne for a bushel", line("12", ac, "650", bu), ErrorCode::OutOfRange,
            "price_per_bu");
        row("a price of the bushel for a tonne", line("12", ac, "14", "CAD/t"), ErrorCode::OutOfRange,
            "price_per_t");
        row("more digits than there is sense in", line("12.000000000000000000001", ac, "10", bu),
            ErrorCode::TooLong, "cost_per_ac");
        row("an unknown unit", line("12", "CAD/are", "10", bu), ErrorCode::UnknownCode, "cost_unit");
        row("some dollar or other", line("12", "$/ac", "10", bu), ErrorCode::UnknownCode, "cost_unit");
        row("a unit of land for the harvest", line("12", ac, "10", "CAD/ac"), ErrorCode::UnknownCode,
            "price_unit");
        row("two kinds of dollar", line("12", ac, "10", "USD/bu"), ErrorCode::CurrenciesDiffer, "CAD/ac");
        row("a divisor that raises", line("12", ac, "10", bu, "0.9"), ErrorCode::OutOfRange,
            "dry_season_divisor");
        row("an absurd divisor", line("12", ac, "10", bu, "48"), ErrorCode::OutOfRange, "dry_season_divisor");
        row("letters for a divisor", line("12", ac, "10", bu, "dry"), ErrorCode::NotANumber, "dry");
    }

    void whatMakesNoSenseIsRefused()
    {
        QFETCH(QStringList, typed);
        QFETCH(int, code);
        QFETCH(QString, field);
        ThresholdInput input = perAcreAndBushel(typed[0].toStdString(), typed[2].toStdString());
        input.costUnit = typed[1].toStdString();
        input.priceUnit = typed[3].toStdString();
        input.drySeasonDivisor = typed[4].toStdString();
        const auto threshold = thresholdOf(m_protocol, m_rule, input);
        QVERIFY(!threshold.has_value());
        QCOMPARE(static_cast<int>(threshold.error().code), code);
        QCOMPARE(QString::fromStdString(threshold.error().args.at(0)), field);
    }

    void costsAreSaidOnce()
    {
        ThresholdInput input = perAcreAndBushel("12", "10");
        input.cost.product = "8";
        QVERIFY(thresholdOf(m_protocol, m_rule, input).error().code == ErrorCode::CostTwice);
        input.cost = {"", "0", "0", "0"};
        QVERIFY(thresholdOf(m_protocol, m_rule, input).error().code == ErrorCode::OutOfRange);
        input.cost = {"", "-3", "9", ""};
        QCOMPARE(thresholdOf(m_protocol, m_rule, input).error().args.at(0), std::string("cost_product"));
    }

    void unitsAreReadInAnyCase()
    {
        ThresholdInput input = perAcreAndBushel(" 12 ", "10,0");
        input.costUnit = "cad/AC";
        QVERIFY(isClose(of(input).larvae.value(), 12.0 / 0.58));
        for (const char* code : {"CAD/ac", "CAD/ha", "USD/ac", "USD/ha"})
            QCOMPARE(codeOf(*parseCostUnit(code)), std::string(code));
        for (const char* code : {"CAD/bu", "CAD/t", "USD/bu", "USD/t"})
            QCOMPARE(codeOf(*parsePriceUnit(code)), std::string(code));
    }

private:
    [[nodiscard]] Threshold of(const ThresholdInput& input) const
    {
        auto threshold = thresholdOf(m_protocol, m_rule, input);
        if (!threshold) qFatal("refused: %s", threshold.error().args.at(0).c_str());
        return std::move(*threshold);
    }
    [[nodiscard]] Threshold of(const std::string& cost, const std::string& price) const
    {
        return of(perAcreAndBushel(cost, price));
    }

    Protocol m_protocol;
    ThresholdRule m_rule;
};

QTEST_APPLESS_MAIN(TypedMoneyTest)
#include "typed_money_test.moc"
