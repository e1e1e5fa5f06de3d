// SPDX-License-Identifier: MIT
#include <QTest>

#include "app/visit/visit_draft.h"

using namespace duskrow::app;
using namespace duskrow::domain;

namespace {

Uuid idOf(std::uint8_t number)
{
    Uuid id;
    id.bytes[15] = number;
    return id;
}

VisitDraft fresh()
{
    VisitRecords begun;
    begun.visit.id = idOf(1);
    begun.visit.day = dayOf(2026, 7, 14);
    begun.visit.emptied = true;
    begun.lure.id = idOf(2);
    begun.sample.number = "T-1";
    return {{}, begun};
}

void countOne(VisitRecords& records)
{
    records.visit.pest = records.visit.pest.value_or(Moths{0}) + Moths{1};
}

} // namespace

class VisitDraftTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyTapIsAStep();
    void typingIsOneStep();
    void whatChangesNothingIsNoStep();
    void aDraftReadAgainIsTheSame();
    void aDraftKeepsTheDayItWasBegunOn();
    void aCorrectionWritesOnlyWhatDiffers();
    void brokenDraftsAreRefused_data();
    void brokenDraftsAreRefused();
    void startingOverLeavesNothing();
    void aHeavyCatchIsHalfCounted();
};

void VisitDraftTest::everyTapIsAStep()
{
    VisitDraft draft = fresh();
    for (int i = 0; i < 200; ++i) QVERIFY(draft.change(countOne));
    QCOMPARE(draft.records().visit.pest->value(), 200);
    for (int i = 0; i < 199; ++i) QVERIFY(draft.undo());
    QCOMPARE(draft.records().visit.pest->value(), 1);
    QVERIFY(draft.undo());
    QVERIFY2(!draft.records().visit.pest, "before the first tap nothing was counted, not zero");
    QVERIFY(!draft.canUndo());
    QVERIFY(!draft.undo());
}

void VisitDraftTest::typingIsOneStep()
{
    VisitDraft draft = fresh();
    draft.change(countOne);
    for (const char* text : {"w", "wi", "win", "wind"})
        draft.change([&](VisitRecords& records) { records.visit.remark = text; }, Undoing::AsTyped);
    draft.change([](VisitRecords& records) { records.visit.canopy = Millimetres{900}; }, Undoing::AsTyped);
    QVERIFY(draft.undo());
    QVERIFY(!draft.records().visit.canopy);
    QCOMPARE(draft.records().visit.remark, std::string("wind"));
    QVERIFY(draft.undo());
    QCOMPARE(draft.records().visit.remark, std::string());
    QCOMPARE(draft.records().visit.pest->value(), 1);
}

void VisitDraftTest::whatChangesNothingIsNoStep()
{
    VisitDraft draft = fresh();
    QVERIFY(!draft.change([](VisitRecords& records) { records.visit.emptied = true; }));
    QVERIFY(!draft.canUndo());
    QVERIFY(draft.isUntouched());
}

void VisitDraftTest::aDraftReadAgainIsTheSame()
{
    VisitDraft draft = fresh();
    draft.change(countOne);
    draft.change([](VisitRecords& records) {
        records.visit.remark = "wind \xF0\x9F\xA6\x8B\n\"north\"";
        records.visit.reentryHours = 48;
        records.lure.what = ServiceWhat::Lure;
        records.lure.lureExpiry = dayOf(2027, 1, 31);
        records.visit.sprayed = false;
    });
    draft.position().step = QStringLiteral("lure");
    draft.position().bin = QStringLiteral("bees");
    draft.position().answered = {QStringLiteral("3:60:1")};
    VisitDraft again = fresh();
    QVERIFY(again.read(draft.written()));
    QCOMPARE(again.written(), draft.written());
    QCOMPARE(again.records().visit.remark, draft.records().visit.remark);
    QCOMPARE(again.records().visit.sprayed, std::optional(false));
    QCOMPARE(again.position().step, QStringLiteral("lure"));
    QVERIFY(again.undo());
    QVERIFY(!again.records().lure.what);
    QVERIFY(again.undo());
    QVERIFY(again.isUntouched());
}

void VisitDraftTest::aDraftKeepsTheDayItWasBegunOn()
{
    VisitDraft draft = fresh();
    draft.change(countOne);
    VisitRecords nextDay;
    nextDay.visit.id = idOf(9);
    nextDay.visit.day = dayOf(2026, 7, 15);
    VisitDraft again({}, nextDay);
    QVERIFY(again.read(draft.written()));
    QVERIFY(again.records().visit.day == dayOf(2026, 7, 14));
    QVERIFY(again.records().visit.id == idOf(1));
}

void VisitDraftTest::aCorrectionWritesOnlyWhatDiffers()
{
    VisitRecords kept;
    kept.visit.id = idOf(1);
    kept.visit.pest = Moths{470};
    kept.visit.bees = Bees{1};
    VisitDraft draft(kept, kept);
    draft.change([](VisitRecords& records) { records.visit.pest = Moths{47}; });
    // Somebody else corrected the bees while this lay half entered.
    kept.visit.bees = Bees{3};
    VisitDraft again(kept, kept);
    QVERIFY(again.read(draft.written()));
    QCOMPARE(again.records().visit.pest->value(), 47);
    QCOMPARE(again.records().visit.bees->value(), 3);
}

void VisitDraftTest::brokenDraftsAreRefused_data()
{
    QTest::addColumn<QByteArray>("body");
    QTest::newRow("nothing") << QByteArray();
    QTest::newRow("cut in half") << fresh().written().left(20);
    QTest::newRow("a list") << QByteArray("[1]");
}

void VisitDraftTest::brokenDraftsAreRefused()
{
    QFETCH(const QByteArray, body);
    VisitDraft draft = fresh();
    QVERIFY(!draft.read(body));
    QVERIFY(draft.isUntouched());
}

void VisitDraftTest::startingOverLeavesNothing()
{
    VisitDraft draft = fresh();
    draft.change(countOne);
    draft.position().step = QStringLiteral("done");
    draft.startOver();
    QVERIFY(draft.isUntouched());
    QVERIFY(!draft.canUndo());
    QCOMPARE(draft.position().step, QStringLiteral("count"));
}

void VisitDraftTest::aHeavyCatchIsHalfCounted()
{
    VisitDraft draft = fresh();
    HeavyCatchDraft& heavy = draft.position().heavy;
    heavy.byWeight = true;
    heavy.whole = 412'000;
    heavy.parts = {{46, 20'400}, {std::nullopt, 19'700}, {39, std::nullopt}};
    VisitDraft again = fresh();
    QVERIFY(again.read(draft.written()));
    const HeavyCatchDraft& read = again.position().heavy;
    QVERIFY(read.byWeight);
    QCOMPARE(read.parts.size(), std::size_t{3});
    QVERIFY(read.parts[1].amount == 19'700 && !read.parts[1].counted);
    QVERIFY(read.parts[2].counted == 39 && !read.parts[2].amount);
}

QTEST_GUILESS_MAIN(VisitDraftTest)
#include "visit_draft_test.moc"
