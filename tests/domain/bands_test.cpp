// SPDX-License-Identifier: MIT
#include <QFile>
#include <QTest>

#include <map>

#include "domain/protocol/protocol_reader.h"
#include "domain/protocol_files.h"
#include "domain/rules/bands.h"
#include "domain/rules/season_days.h"

using namespace duskrow::domain;

class BandsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        const auto read = readProtocol(protocolText("bertha-armyworm"), "bertha-armyworm.json");
        QVERIFY(read.has_value());
        m_protocol = *read;
    }

    void publishedClasses_data()
    {
        QTest::addColumn<qint64>("moths");
        QTest::addColumn<QByteArray>("band");
        QFile golden(QStringLiteral(DUSKROW_SOURCE_DIR "/tests/golden/protocols/bertha-armyworm-bands.csv"));
        QVERIFY(golden.open(QIODevice::ReadOnly));
        const QList<QByteArray> lines = golden.readAll().trimmed().split('\n');
        for (const QByteArray& line : lines) {
            const QList<QByteArray> cells = line.split(',');
            bool isNumber = false;
            const qint64 moths = cells.at(0).toLongLong(&isNumber);
            if (isNumber) QTest::newRow(line.constData()) << moths << cells.at(1);
        }
    }

    void publishedClasses()
    {
        QFETCH(qint64, moths);
        QFETCH(QByteArray, band);
        QCOMPARE(QByteArray::fromStdString(bertha(moths).id), band);
    }

    // The published text does not settle the edges; the protocol file does.
    void anEdgeBelongsToTheHigherBand_data()
    {
        QTest::addColumn<qint64>("moths");
        QTest::addColumn<QByteArray>("band");
        QTest::addColumn<int>("level");
        QTest::newRow("0") << qint64{0} << QByteArray("low") << 1;
        QTest::newRow("299") << qint64{299} << QByteArray("low") << 1;
        QTest::newRow("300") << qint64{300} << QByteArray("uncertain") << 2;
        QTest::newRow("301") << qint64{301} << QByteArray("uncertain") << 2;
        QTest::newRow("899") << qint64{899} << QByteArray("uncertain") << 2;
        QTest::newRow("900") << qint64{900} << QByteArray("moderate") << 3;
        QTest::newRow("1199") << qint64{1199} << QByteArray("moderate") << 3;
        QTest::newRow("1200") << qint64{1200} << QByteArray("high") << 4;
        QTest::newRow("1e9") << qint64{1'000'000'000} << QByteArray("high") << 4;
    }

    void anEdgeBelongsToTheHigherBand()
    {
        QFETCH(qint64, moths);
        QFETCH(QByteArray, band);
        QFETCH(int, level);
        QCOMPARE(QByteArray::fromStdString(bertha(moths).id), band);
        QCOMPARE(bertha(moths).level, level);
    }

    void everyCatchLiesInsideItsBand()
    {
        const auto bands = bandsFor(m_protocol, "green-bucket");
        std::map<std::string, int> counted;
        for (std::int64_t moths = 0; moths < 1500; ++moths) {
            const Band& band = bandOf(*bands, Moths{moths});
            QVERIFY(band.from <= Moths{moths} && (!band.below || Moths{moths} < *band.below));
            ++counted[band.id];
        }
        const std::map<std::string, int> widths{
            {"low", 300}, {"uncertain", 600}, {"moderate", 300}, {"high", 300}};
        QVERIFY(counted == widths);
    }

    void bandsBelongToTheTrapType()
    {
        QCOMPARE(bandsFor(m_protocol, "green-bucket")->size(), std::size_t{4});
        const auto none = bandsFor(m_protocol, "multicolour-bucket");
        QVERIFY(!none.has_value() && none.error().code == ErrorCode::ProtocolNoBands);
        QVERIFY((none.error().args == std::vector<std::string>{"bertha-armyworm", "multicolour-bucket"}));
        const auto unknown = bandsFor(m_protocol, "delta");
        QVERIFY(!unknown.has_value() && unknown.error().code == ErrorCode::UnknownCode);
    }

    void everyBandSaysWhatItMeansAndWhoSaysSo()
    {
        const auto bands = bandsFor(m_protocol, "green-bucket");
        for (const Band& band : *bands) {
            QVERIFY(!band.name.fr.empty() && !band.meaning.text.en.empty() && !band.meaning.text.fr.empty());
            QVERIFY(m_protocol.citation(band.source));
            const bool isOurs = band.level >= 3; // the published wording was cut off
            QCOMPARE(band.meaning.source == commonPractice, isOurs);
            QCOMPARE(band.meaning.note.en.empty(), !isOurs);
        }
    }

    // Province of Manitoba, bertha armyworm risk forecasts 2017, 2018, 2021, 2022: the official seasons.
    void officialSeasons_data()
    {
        QTest::addColumn<int>("year");
        QTest::addColumn<QByteArray>("first");
        QTest::addColumn<QByteArray>("last");
        QTest::newRow("2017") << 2017 << QByteArray("2017-06-04") << QByteArray("2017-07-29");
        QTest::newRow("2018") << 2018 << QByteArray("2018-06-03") << QByteArray("2018-07-28");
        QTest::newRow("2021") << 2021 << QByteArray("2021-06-06") << QByteArray("2021-07-31");
        QTest::newRow("2022") << 2022 << QByteArray("2022-06-05") << QByteArray("2022-07-30");
    }

    void officialSeasons()
    {
        QFETCH(int, year);
        QFETCH(QByteArray, first);
        QFETCH(QByteArray, last);
        const auto days = seasonDaysOf(m_protocol.season, std::chrono::year{year});
        QVERIFY(days.has_value());
        QCOMPARE(QByteArray::fromStdString(formatDay(days->first)), first);
        QCOMPARE(QByteArray::fromStdString(formatDay(days->last)), last);
        QCOMPARE(nightsBetween(days->first, days->last).value() + 1, 56);
        QVERIFY(std::chrono::weekday{days->first} == std::chrono::Sunday);
        QVERIFY(std::chrono::weekday{days->last} == std::chrono::Saturday);
    }

    void aSeasonNobodyHasLaidDownIsNotInvented()
    {
        SeasonPlan plan = m_protocol.season;
        plan.weeks.value.reset();
        QVERIFY(!seasonDaysOf(plan, std::chrono::year{2026}).has_value());
    }

private:
    [[nodiscard]] const Band& bertha(qint64 moths) const
    {
        return bandOf(*bandsFor(m_protocol, "green-bucket"), Moths{moths});
    }

    Protocol m_protocol;
};

QTEST_APPLESS_MAIN(BandsTest)
#include "bands_test.moc"
