// SPDX-License-Identifier: MIT
#include <QTest>

#include "text/amounts.h"

using namespace duskrow::domain;
namespace text = duskrow::text;

class AmountsTest : public QObject {
    Q_OBJECT

private:
    const QLocale m_english{QLocale::English, QLocale::Canada};
    const QLocale m_french{QLocale::French, QLocale::Canada};

private Q_SLOTS:
    void numbersSayWhatTheyMean_data()
    {
        QTest::addColumn<QString>("said");
        QTest::addColumn<QString>("expected");
        const auto row = [](const char* expected, const QString& said) {
            QTest::newRow(expected) << said << QString::fromUtf8(expected);
        };
        row("0 moths", text::moths(Moths{0}, m_english));
        row("1 moth", text::moths(Moths{1}, m_english));
        row("47 moths", text::moths(Moths{47}, m_english));
        row("1,234 moths", text::moths(Moths{1234}, m_english));
        row("2 bees", text::bees(Bees{2}, m_english));
        row("1 night", text::nights(Nights{1}, m_english));
        row("14 nights", text::nights(Nights{14}, m_english));
        row("1 day", text::days(std::chrono::days{1}, m_english));
        row("56 days", text::days(std::chrono::days{56}, m_english));
        row("6.7 a night", text::perNight(MothsPerNight{47.0 / 7.0}, m_english));
        row("0.0 a night", text::perNight(MothsPerNight{0.0}, m_english));
        row("under 0.1 a night", text::perNight(MothsPerNight{0.02}, m_english));
        row("143 a night", text::perNight(MothsPerNight{142.9}, m_english));
        row("259 so far", text::soFar(Moths{259}, m_english));
        row("at least 140", text::atLeast(Moths{140}, m_english));
        row("330 to 640", text::range(Moths{330}, Moths{640}, m_english));
        row("118 cm", text::height(Millimetres{1180}, m_english));
        row("23 cm clear", text::clearance(Millimetres{230}, m_english));
        row("level with the canopy", text::clearance(Millimetres{4}, m_english));
        row("5 cm below the canopy", text::clearance(Millimetres{-50}, m_english));
        row("8 m", text::distance(Metres{8.2}, m_english));
        row("999 m", text::distance(Metres{999.4}, m_english));
        row("1.0 km", text::distance(Metres{999.6}, m_english));
        row("3.4 km", text::distance(Metres{3418.0}, m_english));
        row("10 km", text::distance(Metres{9960.0}, m_english));
        row("within 6 m", text::accuracy(Metres{5.2}, m_english));
        row("Tuesday 7 July", text::day(dayOf(2026, 7, 7), m_english));
        row("Tuesday 7 July 2026", text::dayAndYear(dayOf(2026, 7, 7), m_english));
        row("Tuesday", text::weekday(2, m_english));
    }

    void numbersSayWhatTheyMean()
    {
        QFETCH(QString, said);
        QFETCH(QString, expected);
        QCOMPARE(said, expected);
    }

    void separatorsAndDayNamesFollowTheLocale()
    {
        QVERIFY(text::perNight(MothsPerNight{6.71}, m_french).contains(QStringLiteral("6,7")));
        QVERIFY(text::day(dayOf(2026, 7, 7), m_french).contains(QStringLiteral("juillet")));
        QCOMPARE(text::timeOfDay(12 * 60, QLocale(QLocale::English, QLocale::UnitedKingdom)),
            QStringLiteral("12:00"));
    }

    void theCalendarDayIsTheSameDay() { QCOMPARE(text::calendarDay(dayOf(2024, 2, 29)), QDate(2024, 2, 29)); }
};

QTEST_GUILESS_MAIN(AmountsTest)
#include "amounts_test.moc"
