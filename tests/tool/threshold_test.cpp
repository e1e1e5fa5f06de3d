// SPDX-License-Identifier: MIT
#include <QJsonArray>

#include <cmath>

#include "golden_csv.h"
#include "tool/tool_program.h"

using duskrow::tests::Ran;
using duskrow::tests::readGolden;

namespace {

QString imperial(const QString& cost, const QString& price)
{
    return QStringLiteral("--cost %1 --cost-unit CAD/ac --price %2 --price-unit CAD/bu").arg(cost, price);
}

bool isNear(const QJsonValue& value, double expected)
{
    return value.isDouble() && std::abs(value.toDouble() - expected) <= 1e-9 * std::abs(expected);
}

} // namespace

// Runs the real program, as a person would.
class ThresholdCommandTest : public QObject, private duskrow::tests::ToolProgram {
    Q_OBJECT

private:
    [[nodiscard]] Ran run(const QString& line) const
    {
        return ToolProgram::run(QStringLiteral("threshold ") + line);
    }

private Q_SLOTS:
    void theNumbersForOtherPrograms()
    {
        const Ran ran = run(imperial(QStringLiteral("12"), QStringLiteral("10")) + QStringLiteral(" --json"));
        QCOMPARE(ran.exit, 0);
        const QJsonObject json = ran.json();
        QVERIFY(isNear(json[QStringLiteral("threshold_per_m2")], 12.0 / 0.58));
        QVERIFY(isNear(json[QStringLiteral("threshold_per_frame")], 3.0 / 0.58));
        QVERIFY(isNear(json[QStringLiteral("coefficient_bu_per_ac_per_larva")], 0.058));
        QCOMPARE(json[QStringLiteral("protocol")].toString(), QStringLiteral("bertha-armyworm"));
        QVERIFY(json[QStringLiteral("source")].toString().contains(QStringLiteral("Canola Watch")));
        QVERIFY(json[QStringLiteral("dry_season_divisor")].isNull());
        QVERIFY(json[QStringLiteral("notes")].toArray().isEmpty());
        QCOMPARE(json[QStringLiteral("cautions")].toArray().size(), 5);
        QVERIFY(isNear(json[QStringLiteral("loss_dollars_per_ac_per_larva_m2")], 0.58));
        const QJsonObject table = json[QStringLiteral("table")].toObject();
        const QJsonArray own = table[QStringLiteral("threshold_per_m2")].toArray()[3].toArray();
        QCOMPARE(own[3], json[QStringLiteral("threshold_per_m2")]);
        QCOMPARE(table[QStringLiteral("costs")].toArray()[3].toDouble(), 12.0);
    }

    // Government of Alberta, Economic thresholds for insects attacking oilseeds: its corners and its middle.
    void thePublishedTableByCommand()
    {
        for (const auto& row : readGolden("rules/threshold_table.csv"))
            for (const int price : {6, 9, 12}) {
                const Ran ran =
                    run(imperial(QString::fromUtf8(row.text("cost_per_acre")), QString::number(price))
                        + QStringLiteral(" --json"));
                QCOMPARE(ran.exit, 0);
                QCOMPARE(std::llround(ran.json()[QStringLiteral("threshold_per_m2")].toDouble()),
                    row.whole("price_" + QByteArray::number(price)));
            }
    }

    void otherUnitsPartsAndSeasons()
    {
        const Ran ran = run(QStringLiteral(
            "--product 20 --application 8 --wheel-tracks 2 --cost-unit USD/ha --price 441 --price-unit USD/t "
            "--dry-season 1.48 --frame 1 --json"));
        QCOMPARE(ran.exit, 0);
        const double perAcre = 30 * 0.40468564224;
        const double perBushel = 441 * 0.0226796185;
        const double usual = perAcre / (0.058 * perBushel);
        const QJsonObject json = ran.json();
        QVERIFY(isNear(json[QStringLiteral("usual_season_threshold_per_m2")], usual));
        QVERIFY(isNear(json[QStringLiteral("threshold_per_m2")], usual / 1.48));
        QVERIFY(isNear(json[QStringLiteral("threshold_per_frame")], usual / 1.48));
        QVERIFY(isNear(json[QStringLiteral("dry_season_divisor")], 1.48));
        QCOMPARE(json[QStringLiteral("currency")].toString(), QStringLiteral("USD"));
        QStringList notes;
        for (const auto& note : json[QStringLiteral("notes")].toArray()) notes << note.toString();
        const QStringList expected{QStringLiteral("other_currency"), QStringLiteral("dry_season"),
            QStringLiteral("frame_not_published")};
        QCOMPARE(notes, expected);
        QCOMPARE(json[QStringLiteral("working")].toArray().size(), 7);
    }

    void theSheetSaysAllThatBelongsToIt_data()
    {
        QTest::addColumn<QString>("words");
        for (const char* words : {"20.7 larvae/m²", "5.2 larvae a frame", "0.58 CAD/ac",
                 "How it is worked out", "12 CAD/ac ÷ 0.58", "[20.7]", "computed, not published",
                 "1.48 gives 14.0", "trials of 1974 to 1975", "A trap catch never decides a spray.",
                 "older varieties", "Read the label", "bees", "licensed adviser", "counts back from cutting",
                 "By the protocol bertha-armyworm 2026-1", "Source: Canola Council"})
            QTest::newRow(words) << QString::fromUtf8(words);
    }

    void theSheetSaysAllThatBelongsToIt()
    {
        QFETCH(QString, words);
        static const Ran ran = run(imperial(QStringLiteral("12"), QStringLiteral("10")));
        QCOMPARE(ran.exit, 0);
        QVERIFY2(ran.out.contains(words), qPrintable(ran.out));
    }

    void beyondThePublishedRangeIsSaid()
    {
        const Ran ran = run(imperial(QStringLiteral("20"), QStringLiteral("18")));
        QCOMPARE(ran.exit, 0);
        QVERIFY(ran.out.contains(QStringLiteral("The price lies above those of the published table")));
        QVERIFY(ran.out.contains(QStringLiteral("The cost lies above those of the published table")));
        QVERIFY(ran.out.contains(QStringLiteral("[19.2]*")));
    }

    void badInputIsRefusedInOneSentence_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("said");
        const auto row = [](const char* claim, const char* line, const char* said) {
            QTest::newRow(claim) << QString::fromUtf8(line) << QString::fromUtf8(said);
        };
        const auto money = [&](const char* claim, const char* cost, const char* price, const char* said) {
            QTest::newRow(claim) << imperial(QString::fromUtf8(cost), QString::fromUtf8(price))
                                 << QString::fromUtf8(said);
        };
        money("no cost", "0", "10", "The cost on an acre must be from 0.1 to 1,000");
        money("no price", "12", "0", "The price of a bushel must be from 1 to 200");
        money("a negative cost", "-12", "10", "The cost on an acre must be from");
        money("letters", "twelve", "10", "“twelve” is not a number");
        money("an absurd price", "12", "99999", "The price of a bushel must be from");
        money("a power of ten", "1e1", "10", "“1e1” is not a number");
        money("thousands or thousandths", "12", "1,250", "“1,250” is not a number");
        row("an unknown unit", "--cost 12 --cost-unit EUR/ac --price 10 --price-unit CAD/bu",
            "The unit of the cost cannot be “EUR/ac”. Choose one of: CAD/ac, CAD/ha, USD/ac, USD/ha.");
        row("two currencies", "--cost 12 --cost-unit CAD/ac --price 10 --price-unit USD/bu",
            "The cost is in CAD/ac but the price is in USD/bu");
        row("no cost at all", "--cost-unit CAD/ac --price 10 --price-unit CAD/bu",
            "The cost of control is empty");
        row("the cost twice", "--cost 12 --product 8 --cost-unit CAD/ac --price 10 --price-unit CAD/bu",
            "both as one sum and in parts");
        row("a price left out", "--cost 12 --cost-unit CAD/ac", "See duskrow-tool threshold --help.");
        row("a crop without a threshold",
            "--cost 12 --cost-unit CAD/ac --price 10 --price-unit CAD/bu --crop flax",
            "no threshold for the crop “flax”");
        row("an unknown pest",
            "--cost 12 --cost-unit CAD/ac --price 10 --price-unit CAD/bu --protocol purple-moth",
            "no protocol for “purple-moth”");
        row("a divisor that raises",
            "--cost 12 --cost-unit CAD/ac --price 10 --price-unit CAD/bu --dry-season 0.5",
            "The dry-season divisor must be from 1 to 5");
        row("no frame", "--cost 12 --cost-unit CAD/ac --price 10 --price-unit CAD/bu --frame 0",
            "The area of the frame must be from");
    }

    void badInputIsRefusedInOneSentence()
    {
        QFETCH(QString, line);
        QFETCH(QString, said);
        for (const char* form : {"", " --json"}) {
            const Ran ran = run(line + QString::fromUtf8(form));
            QCOMPARE(ran.exit, 2);
            QVERIFY(ran.out.isEmpty());
            QVERIFY2(ran.err.contains(said), qPrintable(ran.err));
            QVERIFY(ran.err.endsWith(QStringLiteral(".\n")) && ran.err.count(u'\n') == 1);
        }
    }
};

QTEST_GUILESS_MAIN(ThresholdCommandTest)
#include "threshold_test.moc"
