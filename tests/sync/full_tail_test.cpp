// SPDX-License-Identifier: MIT
#include <QTest>

#include "sync/exchange/segments_of_store.h"
#include "sync/exchange_scene.h"
#include "sync/folder/folder_route.h"

using namespace duskrow;
using namespace duskrow::domain;
using namespace duskrow::tests;

namespace {

std::int64_t sealedBy(const Person& device)
{
    const auto rows = store::segmentRows(*device.reader());
    if (!rows) qFatal("rows cannot be read");
    return std::count_if(
        rows->begin(), rows->end(), [&](const auto& row) { return row.stream == device.store().stream(); });
}

// So many visits, in one stroke.
void keepVisits(Person& device, std::uint32_t first, std::int64_t count)
{
    std::vector<Edit> edits;
    for (std::int64_t i = 0; i < count; ++i)
        edits.push_back(creation(countAt(first + static_cast<std::uint32_t>(i), 200, i), idOf(300)));
    device.keep(std::move(edits));
}

// Segments made; -1 when it failed.
std::int64_t sealFull(const Person& device)
{
    const auto made = sync::sealFullTail(device.store(), *device.reader());
    return made ? *made : -1;
}

void keep(Person& device, std::uint32_t first, std::int64_t count)
{
    constexpr std::int64_t atOnce = 250;
    for (std::int64_t done = 0; done < count; done += atOnce)
        keepVisits(device, first + static_cast<std::uint32_t>(done), std::min(atOnce, count - done));
}

} // namespace

class FullTailTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void onlyAFullTailIsSealed_data();
    void onlyAFullTailIsSealed();
    void whatWasSealedEarlyArrivesLikeTheRest();
    void whenItCannotBeSealedNothingIsLost();
};

void FullTailTest::onlyAFullTailIsSealed_data()
{
    QTest::addColumn<std::int64_t>("changes");
    QTest::addColumn<std::int64_t>("segments");
    QTest::newRow("one short") << sync::fullTail - 1 << std::int64_t{0};
    QTest::newRow("just full") << sync::fullTail << std::int64_t{1};
    QTest::newRow("one more") << sync::fullTail + 1 << std::int64_t{1};
}

void FullTailTest::onlyAFullTailIsSealed()
{
    QFETCH(std::int64_t, changes);
    QFETCH(std::int64_t, segments);
    ProgrammeScene scene;
    Person& ada = scene.coordinator(); // whose stream begins with programme, member and season
    keep(ada, 10'000, changes - 3);
    const auto before = ada.records();
    QCOMPARE(sealFull(ada), segments);
    QCOMPARE(sealedBy(ada), segments);
    QCOMPARE(ada.records(), before);
    QVERIFY(ada.isSound());
    // The next tail begins empty.
    QCOMPARE(sealFull(ada), std::int64_t{0});
}

void FullTailTest::whatWasSealedEarlyArrivesLikeTheRest()
{
    ProgrammeScene scene;
    Person& ada = scene.coordinator();
    const auto ben = scene.invite(2, Role::Coordinator, "ben");
    scene.setUp(ada, 300, 200);
    keep(ada, 10'000, sync::fullTail);
    QCOMPARE(sealFull(ada), std::int64_t{1});
    keep(ada, 20'000, 5); // stay in the tail
    const auto now = ada.now;
    for (Person* one : {&ada, ben.get(), &ada, ben.get()})
        QVERIFY(sync::exchangeByFolder(one->store(), scene.shared(), now).has_value());
    QCOMPARE(ben->records(), ada.records());
    QCOMPARE(ben->visit(idOf(10'999)).has_value(), true);
    QCOMPARE(ben->visit(idOf(20'004)).has_value(), true);
}

// A store that is closed in the midst, or whose sealing fails, keeps the tail as it was.
void FullTailTest::whenItCannotBeSealedNothingIsLost()
{
    ProgrammeScene scene;
    Person& ada = scene.coordinator();
    keep(ada, 10'000, sync::fullTail);
    const auto before = ada.records();
    {
        // Nobody can write while another program holds the file.
        SQLite::Database other(ada.path(), SQLite::OPEN_READWRITE);
        other.exec("BEGIN IMMEDIATE");
        QCOMPARE(sealFull(ada), std::int64_t{-1});
    }
    QCOMPARE(sealedBy(ada), std::int64_t{0});
    QCOMPARE(ada.records(), before);
    QCOMPARE(sealFull(ada), std::int64_t{1});
    QVERIFY(ada.isSound());
}

QTEST_APPLESS_MAIN(FullTailTest)
#include "full_tail_test.moc"
