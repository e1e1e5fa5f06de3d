// SPDX-License-Identifier: MIT
#include <QTest>

#include <limits>

#include "domain/rules/stake.h"

using namespace duskrow::domain;

namespace {

constexpr LocalDay june1 = dayOf(2026, 6, 1);

CanopyHeight height(int daysAfterJune1, std::int64_t millimetres)
{
    return {june1 + std::chrono::days{daysAfterJune1}, Millimetres{millimetres}};
}

// A row that needs no list of heights reads "day:height day:height".
std::vector<CanopyHeight> heightsFrom(const QByteArray& text)
{
    std::vector<CanopyHeight> heights;
    for (const QByteArray& pair : text.split(' ')) {
        if (pair.isEmpty()) continue;
        const QList<QByteArray> parts = pair.split(':');
        heights.push_back(height(parts[0].toInt(), parts[1].toLongLong()));
    }
    return heights;
}

} // namespace

class StakeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void clearance_data()
    {
        QTest::addColumn<qint64>("entrance");
        QTest::addColumn<qint64>("canopy");
        QTest::addColumn<qint64>("height");
        QTest::addColumn<int>("position");
        const auto row = [](const char* name, qint64 entrance, qint64 canopy, qint64 high,
                             EntrancePosition p) {
            QTest::newRow(name) << entrance << canopy << high << static_cast<int>(p);
        };
        row("in June", 1000, 350, 650, EntrancePosition::Above);
        row("level", 1000, 1000, 0, EntrancePosition::AtCanopy);
        row("tall crop", 1000, 1200, -200, EntrancePosition::Below);
        row("no crop yet", 1000, 0, 1000, EntrancePosition::Above);
        const qint64 most = std::numeric_limits<qint64>::max();
        row("absurd heights do not overflow", most, -most, 2'000'000, EntrancePosition::Above);
    }

    void clearance()
    {
        QFETCH(qint64, entrance);
        QFETCH(qint64, canopy);
        QFETCH(qint64, height);
        QFETCH(int, position);
        const Clearance found = clearanceOf(Millimetres{entrance}, Millimetres{canopy});
        QCOMPARE(found.height.value(), height);
        QCOMPARE(static_cast<int>(found.position), position);
    }

    void growthAndTheDay_data()
    {
        QTest::addColumn<QByteArray>("heights");
        QTest::addColumn<double>("growth"); // not a number: none
        QTest::addColumn<int>("reached"); // days after 1 June; -1: not said
        const double none = std::numeric_limits<double>::quiet_NaN();
        QTest::newRow("a week, 350 mm") << QByteArray("0:300 7:650") << 50.0 << 14;
        QTest::newRow("a day begun is a day") << QByteArray("0:310 7:660") << 50.0 << 14;
        QTest::newRow("thirds do not add a day") << QByteArray("0:400 7:700") << 300.0 / 7.0 << 14;
        QTest::newRow("last two of three") << QByteArray("0:100 7:650 14:790") << 20.0 << 25;
        QTest::newRow("any order") << QByteArray("14:790 0:100 7:650") << 20.0 << 25;
        QTest::newRow("twice a day, the last stands") << QByteArray("0:300 7:999 7:650") << 50.0 << 14;
        QTest::newRow("one height") << QByteArray("7:650") << none << -1;
        QTest::newRow("one day") << QByteArray("7:600 7:650") << none << -1;
        QTest::newRow("no heights") << QByteArray() << none << -1;
        QTest::newRow("not growing") << QByteArray("0:650 7:650") << 0.0 << -1;
        QTest::newRow("lodged") << QByteArray("0:900 7:830") << -10.0 << -1;
        QTest::newRow("level already") << QByteArray("0:900 7:1000") << 100.0 / 7.0 << -1;
        QTest::newRow("sixty days off") << QByteArray("0:393 1:400") << 7.0 << -1;
        QTest::newRow("sixty days is the last") << QByteArray("0:390 1:400") << 10.0 << 61;
        QTest::newRow("sixty-one is too far") << QByteArray("0:389 1:399") << 10.0 << -1;
    }

    void growthAndTheDay()
    {
        QFETCH(QByteArray, heights);
        QFETCH(double, growth);
        QFETCH(int, reached);
        const std::vector<CanopyHeight> list = heightsFrom(heights);
        const auto grown = canopyGrowth(list);
        QCOMPARE(grown.has_value(), !qIsNaN(growth));
        if (grown) QCOMPARE(grown->value(), growth);
        const auto day = dayCropReaches(Millimetres{1000}, list);
        QCOMPARE(day.has_value(), reached >= 0);
        if (day) QCOMPARE((*day - june1).count(), reached);
    }

    void raising_data()
    {
        QTest::addColumn<qint64>("entrance");
        QTest::addColumn<qint64>("canopy");
        QTest::addColumn<double>("growth"); // not a number: not known
        QTest::addColumn<qint64>("suggested"); // 0: none
        QTest::addColumn<bool>("fallsShort");
        const double none = std::numeric_limits<double>::quiet_NaN();
        // The stake takes 600 to 1500 mm; the next visit is in 7 nights.
        QTest::newRow("high enough") << 1000LL << 700LL << none << 0LL << false;
        QTest::newRow("exactly enough") << 1000LL << 800LL << none << 0LL << false;
        QTest::newRow("20 cm over, to the next 5 cm") << 1000LL << 830LL << none << 1050LL << false;
        QTest::newRow("slow growth asks 20 cm") << 1000LL << 850LL << 10.0 << 1050LL << false;
        QTest::newRow("fast growth asks a week of it") << 1000LL << 800LL << 50.0 << 1150LL << false;
        QTest::newRow("no 5 cm more by rounding") << 1000LL << 800LL << 300.0 / 7.0 << 1100LL << false;
        QTest::newRow("lodging asks 20 cm") << 1000LL << 850LL << -40.0 << 1050LL << false;
        QTest::newRow("the stake just does") << 1000LL << 1300LL << none << 1500LL << false;
        QTest::newRow("the stake ends") << 1000LL << 1310LL << none << 1500LL << true;
        QTest::newRow("never lowered") << 1600LL << 1550LL << none << 1600LL << true;
        QTest::newRow("not below the stake's lowest") << 300LL << 200LL << none << 600LL << false;
    }

    void raising()
    {
        QFETCH(qint64, entrance);
        QFETCH(qint64, canopy);
        QFETCH(double, growth);
        QFETCH(qint64, suggested);
        QFETCH(bool, fallsShort);
        std::optional<MillimetresPerDay> perDay;
        if (!qIsNaN(growth)) perDay = MillimetresPerDay{growth};
        const auto raise = suggestRaise(Millimetres{entrance}, Millimetres{canopy}, perDay, Nights{7},
            {Millimetres{600}, Millimetres{1500}});
        QCOMPARE(raise.has_value(), suggested > 0);
        if (!raise) return;
        QCOMPARE(raise->entrance.value(), suggested);
        QCOMPARE(raise->fallsShort, fallsShort);
    }
};

QTEST_APPLESS_MAIN(StakeTest)
#include "stake_test.moc"
