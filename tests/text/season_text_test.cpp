// SPDX-License-Identifier: MIT
#include <QTest>

#include "text/season_text.h"

using namespace duskrow::domain;
namespace text = duskrow::text;

class SeasonTextTest : public QObject {
    Q_OBJECT

private:
    const QLocale m_english{QLocale::English, QLocale::UnitedKingdom};

    static TrapSeason counted(int moths, SeasonStanding standing)
    {
        TrapSeason season;
        season.standing = standing;
        season.total = Moths{moths};
        season.visits = {VisitCatch{.day = dayOf(2026, 7, 7), .count = Moths{moths}}};
        return season;
    }

private Q_SLOTS:
    void aTotalSaysWhatItIs_data()
    {
        QTest::addColumn<int>("moths");
        QTest::addColumn<SeasonStanding>("standing");
        QTest::addColumn<bool>("isAtLeast");
        QTest::addColumn<QString>("expected");
        const auto row = [](const char* name, int moths, SeasonStanding standing, bool isAtLeast,
                             const char* expected) {
            QTest::newRow(name) << moths << standing << isAtLeast << QString::fromUtf8(expected);
        };
        row("so far", 1259, SeasonStanding::SoFar, false, "1,259 moths so far");
        row("one", 1, SeasonStanding::SoFar, false, "1 moth so far");
        row("none caught", 0, SeasonStanding::SoFar, false, "0 moths so far");
        row("whole", 300, SeasonStanding::Whole, false, "300 moths in the whole season");
        row("failed", 140, SeasonStanding::Whole, true, "at least 140 moths in the whole season");
        row("set-up not known", 12, SeasonStanding::NotKnown, false, "12 moths so far");
    }

    void aTotalSaysWhatItIs()
    {
        QFETCH(int, moths);
        QFETCH(SeasonStanding, standing);
        QFETCH(bool, isAtLeast);
        TrapSeason season = counted(moths, standing);
        season.isAtLeast = isAtLeast;
        const QString said =
            text::seasonTotal(season, m_english) + QLatin1Char(' ') + text::seasonCaption(season);
        QTEST(said, "expected");
    }

    void withoutACountThereIsNoNumber()
    {
        TrapSeason season;
        season.standing = SeasonStanding::SoFar;
        season.visits = {VisitCatch{.day = dayOf(2026, 7, 7)}}; // could not be counted
        QCOMPARE(text::seasonTotal(season, m_english), QStringLiteral("–"));
        QCOMPARE(text::seasonCaption(season), QStringLiteral("no counts yet"));
    }

    void theFlightIsAsFarAsPastSeasonsAgree_data()
    {
        QTest::addColumn<double>("low");
        QTest::addColumn<double>("high");
        QTest::addColumn<QString>("expected");
        QTest::newRow("begun") << 0.0 << 0.1 << QStringLiteral("flight hardly begun");
        QTest::newRow("a quarter") << 0.2 << 0.3 << QStringLiteral("flight about a quarter over");
        QTest::newRow("half") << 0.42 << 0.58 << QStringLiteral("flight about half over");
        QTest::newRow("three quarters") << 0.7 << 0.8 << QStringLiteral("flight about three quarters over");
        QTest::newRow("nearly") << 0.9 << 1.0 << QStringLiteral("flight nearly over");
        QTest::newRow("they differ") << 0.25 << 0.75 << QStringLiteral("flight 25 to 75 % over");
    }

    void theFlightIsAsFarAsPastSeasonsAgree()
    {
        QFETCH(double, low);
        QFETCH(double, high);
        const SeasonOutlook outlook{.fractionLow = low, .fractionHigh = high, .seasons = 5, .years = 1};
        QTEST(text::flightWords(counted(50, SeasonStanding::SoFar), outlook), "expected");
    }

    void aWholeSeasonAsksNoPastOnes()
    {
        const SeasonOutlook outlook{.fractionLow = 0.4, .fractionHigh = 0.5, .seasons = 5, .years = 1};
        QCOMPARE(
            text::flightWords(counted(50, SeasonStanding::Whole), outlook), QStringLiteral("flight over"));
    }

    void aRangeThatNobodyCanSayIsNotSaid()
    {
        const SeasonOutlook outlook{.fractionLow = 0.01, .fractionHigh = 0.1, .seasons = 6, .years = 1};
        QCOMPARE(text::likelyRange(outlook, m_english), QString());
        QCOMPARE(text::outlookReason(outlook),
            QStringLiteral("Too early to say where the season may end (6 past trap seasons of one year)."));
    }

    void halfAsLongAgainIsLong_data()
    {
        QTest::addColumn<int>("nights");
        QTest::addColumn<bool>("expected");
        QTest::newRow("a week") << 7 << false;
        QTest::newRow("ten nights") << 10 << false;
        QTest::newRow("eleven nights") << 11 << true;
        QTest::newRow("two weeks") << 14 << true;
    }

    void halfAsLongAgainIsLong()
    {
        QFETCH(int, nights);
        QTEST(text::isLong(Nights{nights}, std::chrono::days{7}), "expected");
        QVERIFY(!text::isLong(Nights{nights}, std::nullopt));
    }

    void aWeekNobodyCountedIsNotZero()
    {
        const ReportingWeek week{dayOf(2026, 7, 6), dayOf(2026, 7, 12)};
        QCOMPARE(text::weekCatch({.week = week}, m_english), QStringLiteral("not counted"));
        QCOMPARE(text::weekCatch({.week = week, .moths = 0.0}, m_english), QStringLiteral("0 moths"));
        QCOMPARE(text::weekCatch({.week = week, .moths = 1.4, .isDerived = true}, m_english),
            QStringLiteral("about 1 moth"));
    }

    // A protocol may name something else than moths; every sentence then says it.
    void whatIsCountedIsNamedAsTheProtocolDoes()
    {
        const CountedWord word{{"midge", "cécidomyie"}, {"midges", "cécidomyies"}};
        const text::Animal midges(word, "en");
        QCOMPARE(midges.amount(Moths{1}, m_english), QStringLiteral("1 midge"));
        QCOMPARE(midges.amount(Moths{0}, m_english), QStringLiteral("0 midges"));
        QCOMPARE(midges.amount(Moths{1234}, m_english), QStringLiteral("1,234 midges"));
        const text::Animal french(word, "fr_CA");
        QCOMPARE(french.amount(Moths{0}, m_english), QStringLiteral("0 cécidomyie"));
        QCOMPARE(french.amount(Moths{2}, m_english), QStringLiteral("2 cécidomyies"));
        QCOMPARE(text::Animal().amount(Moths{2}, m_english), QStringLiteral("2 moths"));
        const TrapSeason season = counted(20, SeasonStanding::SoFar);
        QCOMPARE(text::seasonCaption(season, midges), QStringLiteral("midges so far"));
        QCOMPARE(text::seasonCaption(season), QStringLiteral("moths so far"));
        const ReportingWeek week{dayOf(2026, 7, 6), dayOf(2026, 7, 12)};
        QCOMPARE(text::weekCatch({.week = week, .moths = 1.0}, m_english, midges), QStringLiteral("1 midge"));
        QVERIFY(text::animalOf(nullptr, "en").isMoth());
    }

    void openQuestionsAreAsked()
    {
        TrapSeason season = counted(20, SeasonStanding::SoFar);
        season.visits.front().visit.bytes[0] = 7;
        season.questions = {{season.visits.front().visit, CatchQuestion::EmptiedUnknown}};
        season.range = MothRange{Moths{15}, Moths{31}};
        const QStringList said = text::totalRemarks(season, m_english);
        QCOMPARE(said.size(), 2);
        QVERIFY2(said[0].startsWith(QStringLiteral("Was the trap emptied on 7 Jul?")), qPrintable(said[0]));
        QCOMPARE(said[1], QStringLiteral("A heavy catch was estimated: 15 to 31 moths."));
    }
};

QTEST_GUILESS_MAIN(SeasonTextTest)
#include "season_text_test.moc"
