// SPDX-License-Identifier: MIT
#include <QTest>

#include <functional>
#include <random>
#include <set>

#include "domain/bulletin/disclosure.h"

using namespace duskrow::domain;

namespace {

Uuid farm(int number)
{
    Uuid id;
    id.bytes[14] = static_cast<std::uint8_t>(number / 256);
    id.bytes[15] = static_cast<std::uint8_t>(number % 256);
    return id;
}

// "A1:1,2,3 A2:4,5 B1:6 -:7" is a trap of farms 1, 2 and 3 in cell 1 of district A, and so on; "A-:" has no
// place, "-1:" no district.
std::vector<Reporter> told(const QByteArray& text)
{
    std::vector<Reporter> reporters;
    for (const QByteArray& word : text.simplified().split(' ')) {
        const qsizetype colon = word.indexOf(':');
        Reporter reporter;
        if (word[0] != '-') reporter.district = static_cast<std::size_t>(word[0] - 'A');
        if (colon > 1 && word[1] != '-') reporter.cell = GridCell{520, word.mid(1, colon - 1).toInt()};
        for (const QByteArray& number : word.mid(colon + 1).split(',')) {
            reporter.farm = farm(number.toInt());
            reporters.push_back(reporter);
        }
    }
    return reporters;
}

QByteArray said(const PublishedAreas& areas)
{
    QByteArray text = areas.whole ? "whole" : "nothing";
    for (const std::size_t district : areas.districts)
        text += ' ' + QByteArray(1, static_cast<char>('A' + district));
    for (const GridCell cell : areas.cells) text += ' ' + QByteArray::number(cell.column);
    return text;
}

using Traps = std::set<std::size_t>;

// Every published area as the traps in it.
std::vector<Traps> publishedSets(const std::vector<Reporter>& reporters, const PublishedAreas& areas)
{
    std::vector<Traps> sets;
    const auto add = [&](const std::function<bool(const Reporter&)>& belongs) {
        Traps traps;
        for (std::size_t i = 0; i < reporters.size(); ++i)
            if (belongs(reporters[i])) traps.insert(i);
        sets.push_back(traps);
    };
    if (areas.whole) add([](const Reporter&) { return true; });
    for (const std::size_t district : areas.districts)
        add([district](const Reporter& one) { return one.district == district; });
    for (const GridCell cell : areas.cells) add([cell](const Reporter& one) { return one.cell == cell; });
    return sets;
}

std::size_t farmsOf(const std::vector<Reporter>& reporters, const Traps& traps)
{
    std::set<Uuid> farms;
    for (const std::size_t trap : traps) farms.insert(reporters[trap].farm);
    return farms.size();
}

// All groups that can be reached from the published ones by cutting and subtracting, as far as they are not
// empty.
std::set<Traps> reachable(const std::vector<Traps>& published)
{
    std::set<Traps> known(published.begin(), published.end());
    for (int round = 0; round < 3; ++round) {
        std::set<Traps> more = known;
        for (const Traps& one : known)
            for (const Traps& other : published) {
                Traps left;
                Traps both;
                std::set_difference(
                    one.begin(), one.end(), other.begin(), other.end(), std::inserter(left, left.end()));
                std::set_intersection(
                    one.begin(), one.end(), other.begin(), other.end(), std::inserter(both, both.end()));
                if (!left.empty()) more.insert(left);
                if (!both.empty()) more.insert(both);
            }
        if (more.size() == known.size()) break;
        known = std::move(more);
    }
    return known;
}

// The fewest farms that anybody can tell apart.
std::size_t fewestToldApart(const std::vector<Reporter>& reporters, const PublishedAreas& areas)
{
    std::size_t fewest = reporters.size() + 1;
    for (const Traps& traps : reachable(publishedSets(reporters, areas)))
        fewest = std::min(fewest, farmsOf(reporters, traps));
    return fewest;
}

// What asking each area by itself for five farms would publish.
PublishedAreas withoutLookingAround(const std::vector<Reporter>& reporters)
{
    PublishedAreas areas{true, {}, {}};
    std::map<std::size_t, FarmTally> districts;
    std::map<GridCell, FarmTally> cells;
    for (const Reporter& one : reporters) {
        if (one.district) districts[*one.district].add(one.farm);
        if (one.cell) cells[*one.cell].add(one.farm);
    }
    for (const auto& [district, farms] : districts)
        if (farms.mayShow()) areas.districts.push_back(district);
    for (const auto& [cell, farms] : cells)
        if (farms.mayShow()) areas.cells.push_back(cell);
    return areas;
}

std::vector<Reporter> invented(std::mt19937& random)
{
    const auto upTo = [&random](
                          int most) { return static_cast<int>(random() % static_cast<unsigned>(most + 1)); };
    std::vector<Reporter> reporters;
    const int traps = 5 + upTo(70);
    const int farms = 5 + upTo(40);
    for (int i = 0; i < traps; ++i) {
        Reporter one{farm(upTo(farms)), std::nullopt, std::nullopt};
        const int district = upTo(4);
        if (district > 0) one.district = static_cast<std::size_t>(district - 1);
        // Cells mostly follow districts, some lie across.
        if (upTo(9) > 0) one.cell = GridCell{520, district * 2 + upTo(2)};
        reporters.push_back(one);
    }
    return reporters;
}

} // namespace

class DisclosureTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatIsPublished_data()
    {
        QTest::addColumn<QByteArray>("traps");
        QTest::addColumn<QByteArray>("areas");
        const auto row = [](const char* claim, const char* traps, const char* areas) {
            QTest::newRow(claim) << QByteArray(traps) << QByteArray(areas);
        };
        row("four farms are nothing", "A1:1,2,3,4", "nothing");
        row("four farms with many traps are nothing", "A1:1,1,2,2,3,3,4,4", "nothing");
        row("five farms are a district, and its one cell", "A1:1,2,3,4,5", "whole A 1");
        row("a farm with more than half of the traps hides behind none", "A1:1,1,1,1,1,2,3,4,5", "nothing");
        row("a farm with half of the traps may", "A1:1,1,1,1,2,3,4,5", "whole A 1");
        row("two districts of five", "A1:1,2,3,4,5 B2:6,7,8,9,10", "whole A B 1 2");
        row("a small district takes the smallest other with it", "A1:1,2,3,4,5,6 B2:7,8,9,10,11 C3:12,13",
            "whole A 1");
        row("with one other only the whole is left", "A1:1,2,3,4,5,6 B2:7,8", "whole");
        row("two small ones hide each other", "A1:1,2,3,4,5,6 B2:7,8 C3:9,10,11", "whole A 1");
        row("traps without a district are a rest like any", "A1:1,2,3,4,5,6 -2:7,8", "whole");
        row("a cell whose rest is small is held back", "A1:1,2,3,4,5 A2:6,7", "whole A");
        row("of two cells the smaller goes back to the rest", "A1:1,2,3,4,5,6 A2:7,8,9,10,11 A3:12",
            "whole A 1");
        row("traps without a place are a rest like any", "A1:1,2,3,4,5 A-:6", "whole A");
        row("a cell across two districts needs five in each",
            "A1:1,2,3,4,5 A2:6,7,8,9,10 B1:11 B3:12,13,14,15,16", "whole A B 2");
        row("a farm in two districts counts in both", "A1:1,2,3,4,5 B2:1,2,3,4,5", "whole A B 1 2");
        row("no trap at all", "A1:1", "nothing");
    }

    void whatIsPublished()
    {
        QFETCH(QByteArray, traps);
        const auto reporters = told(traps);
        const PublishedAreas areas = publishedAreas(reporters);
        QTEST(said(areas), "areas");
    }

    void nobodyTellsFewerThanFiveApart()
    {
        std::mt19937 random(20260714);
        std::size_t withCells = 0;
        std::size_t withDistricts = 0;
        std::size_t brokenWithoutLooking = 0;
        for (int i = 0; i < 400; ++i) {
            const auto reporters = invented(random);
            const PublishedAreas areas = publishedAreas(reporters);
            if (!areas.whole) continue;
            withCells += areas.cells.empty() ? 0 : 1;
            withDistricts += areas.districts.empty() ? 0 : 1;
            QVERIFY2(fewestToldApart(reporters, areas) >= fewestFarms, qPrintable(QString::number(i)));
            // The control: the same search finds single farms where each area only counts its own.
            if (fewestToldApart(reporters, withoutLookingAround(reporters)) < fewestFarms)
                ++brokenWithoutLooking;
        }
        QVERIFY2(withCells > 50 && withDistricts > 100,
            qPrintable(QStringLiteral("%1 %2").arg(withCells).arg(withDistricts)));
        QVERIFY2(brokenWithoutLooking > 100, qPrintable(QString::number(brokenWithoutLooking)));
    }

    void aLaterIssuePublishesNoMore()
    {
        const auto before = told("A1:1,2,3,4,5 A2:6,7,8,9,10 B3:11,12,13,14,15");
        const PublishedAreas wide = publishedAreas(before);
        QCOMPARE(said(wide), QByteArray("whole A B 1 2 3"));
        const PublishedAreas narrow{true, {0}, {}};
        QCOMPARE(said(publishedAreas(before, &narrow)), QByteArray("whole A"));
        const PublishedAreas none;
        QCOMPARE(said(publishedAreas(before, &none)), QByteArray("nothing"));
        const auto fewer = told("A1:1,2,3,4,5 A2:6,7,8 B3:11,12,13,14,15");
        QCOMPARE(said(publishedAreas(fewer, &wide)), QByteArray("whole A B 3"));
    }

    void piecesFollowWhatIsPublished()
    {
        const PublishedAreas areas{true, {0}, {GridCell{520, 1}}};
        const Reporter inside{farm(1), 0, GridCell{520, 1}};
        const Reporter beside{farm(1), 0, GridCell{520, 2}};
        const Reporter outside{farm(1), 1, GridCell{520, 2}};
        QCOMPARE(pieceOf(inside, areas), (Piece{0, GridCell{520, 1}}));
        QCOMPARE(pieceOf(beside, areas), (Piece{0, std::nullopt}));
        QCOMPARE(pieceOf(outside, areas), (Piece{}));
    }
};

QTEST_APPLESS_MAIN(DisclosureTest)
#include "disclosure_test.moc"
