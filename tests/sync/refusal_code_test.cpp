// SPDX-License-Identifier: MIT
#include <QTest>

#include "sync/exchange/refusal_code.h"

using namespace duskrow::domain;
using namespace duskrow::sync;

class RefusalCodeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // The words stand in stores: they never change.
    void theWordsStay()
    {
        QCOMPARE(refusalText({ErrorCode::SegmentMalformed, {"payload"}}), std::string("malformed\npayload"));
        QCOMPARE(refusalText({ErrorCode::SegmentTooLarge, {"size"}}), std::string("too_large\nsize"));
        QCOMPARE(refusalText({ErrorCode::SegmentForged}), std::string("forged"));
        QCOMPARE(refusalText({ErrorCode::OtherProgramme, {"a", ""}}), std::string("other_programme\na\n"));
    }

    void whatWasWrittenIsRead()
    {
        for (const Error& error :
            {Error{ErrorCode::SegmentMalformed, {"payload"}}, Error{ErrorCode::SegmentForged},
                Error{ErrorCode::SegmentTooLarge, {"size"}}, Error{ErrorCode::OtherProgramme, {"a", ""}}}) {
            const auto read = refusalIn(refusalText(error));
            QVERIFY(read.has_value());
            QCOMPARE(read->code, error.code);
            QCOMPARE(read->args, error.args);
        }
    }

    void whatIsNotKnownIsNothing()
    {
        QVERIFY(!refusalIn("singed\nx"));
        QVERIFY(!refusalIn(""));
        QVERIFY(!refusalIn(refusalText({ErrorCode::DiskFull, {"x"}})));
    }
};

QTEST_APPLESS_MAIN(RefusalCodeTest)
#include "refusal_code_test.moc"
