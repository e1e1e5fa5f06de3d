// SPDX-License-Identifier: MIT
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "app/exchange/exchanger.h"
#include "domain/records/visit.h"
#include "store/segments.h"
#include "sync/exchange/segments_of_store.h"

using namespace duskrow;
using namespace duskrow::app;
using namespace duskrow::domain;

class ExchangerTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aLongTailIsSealedInBetween();
};

// Long before anybody exchanges, and without a word on the screen.
void ExchangerTest::aLongTailIsSealedInBetween()
{
    const QTemporaryDir folder;
    place::PositionSource position;
    const store::OpenHow how{
        .keyFolder = folder.filePath(QStringLiteral("keys")).toStdString(), .mayCreate = true};
    auto opened = Session::open(
        folder.filePath(QStringLiteral("season.duskrow")), how, Clock(dayOf(2026, 7, 14)), position);
    QVERIFY(opened.has_value());
    Session& session = **opened;
    Exchanger exchanger(session);
    QSignalSpy troubles(&session, &Session::troubled);
    const auto sealed = [&] { return store::segmentRows(session.reader()).value().size(); };
    const auto keep = [&](std::int64_t count) {
        std::vector<Edit> edits;
        for (std::int64_t i = 0; i < count; ++i) {
            Visit visit;
            visit.id = session.newId();
            visit.day = dayOf(2026, 7, 14);
            edits.push_back(creation(visit, {}));
        }
        bool isKept = false;
        session.keep(
            std::move(edits), std::nullopt, this, [&](const auto& kept) { isKept = kept.has_value(); });
        return QTest::qWaitFor([&] { return isKept; });
    };
    QVERIFY(keep(sync::fullTail - 1));
    QTest::qWait(100);
    QCOMPARE(sealed(), std::size_t{0});
    QVERIFY(keep(1));
    QTRY_COMPARE_WITH_TIMEOUT(sealed(), std::size_t{1}, 10'000);
    QVERIFY(exchanger.said().isEmpty());
    QCOMPARE(troubles.size(), 0);
}

QTEST_GUILESS_MAIN(ExchangerTest)
#include "exchanger_test.moc"
