// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/records/field.h"
#include "text/error_text.h"
#include "text/field_names.h"

using namespace duskrow::domain;
using duskrow::text::fieldName;
using duskrow::text::sentence;

class ErrorTextTest : public QObject {
    Q_OBJECT

private:
    static constexpr int lastCode = static_cast<int>(ErrorCode::FormatUnknown);

private Q_SLOTS:
    void initTestCase() { QLocale::setDefault(QLocale(QLocale::English, QLocale::Canada)); }

    void everyCodeHasASentenceWithAWayOut_data()
    {
        QTest::addColumn<int>("code");
        for (int code = 0; code <= lastCode; ++code) QTest::addRow("code %d", code) << code;
    }

    void everyCodeHasASentenceWithAWayOut()
    {
        QFETCH(int, code);
        const QString text = sentence({static_cast<ErrorCode>(code), {"one", "2", "3"}});
        QVERIFY(text.size() > 20);
        QVERIFY2(text.endsWith(u'.'), qPrintable(text));
        QVERIFY2(text.at(0).isUpper() || !text.at(0).isLetter(), qPrintable(text));
        QVERIFY2(!text.contains(u'%'), qPrintable(text));
        QVERIFY2(!text.contains(u'!'), qPrintable(text));
    }

    void argumentsAppearInTheirPlaces_data()
    {
        QTest::addColumn<int>("code");
        QTest::addColumn<QStringList>("args");
        QTest::addColumn<QString>("expected");
        const auto row = [](const char* claim, ErrorCode code, const QStringList& args,
                             const char* expected) {
            QTest::newRow(claim) << static_cast<int>(code) << args << QString::fromUtf8(expected);
        };
        row("what was typed", ErrorCode::NotANumber, {QStringLiteral("4o")},
            "“4o” is not a number. Type it in digits.");
        row("a field and its bounds", ErrorCode::OutOfRange,
            {QStringLiteral("pest"), QStringLiteral("0"), QStringLiteral("999999")},
            "The count of the pest must be from 0 to 999,999. Look at the number again.");
        row("heights are said in centimetres", ErrorCode::OutOfRange,
            {QStringLiteral("entrance_mm"), QStringLiteral("0"), QStringLiteral("10000")},
            "The height of the entrance must be from 0 cm to 1,000 cm. Look at the number again.");
        row("distances are said in kilometres", ErrorCode::OutOfRange,
            {QStringLiteral("edge_distance_mm"), QStringLiteral("0"), QStringLiteral("100000000")},
            "The distance to the field edge must be from 0 m to 100 km. Look at the number again.");
        row("a year has no comma", ErrorCode::OutOfRange,
            {QStringLiteral("year"), QStringLiteral("1900"), QStringLiteral("2200")},
            "The year must be from 1900 to 2200. Look at the number again.");
        row("file, line and what", ErrorCode::ProtocolSyntax,
            {QStringLiteral("moth.json"), QStringLiteral("12"), QStringLiteral("the file ends early")},
            "The protocol file moth.json cannot be read: line 12, the file ends early. Correct that line, or "
            "put "
            "the file back as it came.");
        row("a kind and a name", ErrorCode::NameMissing, {QStringLiteral("trap"), QStringLiteral("Far Gate")},
            "There is no trap called “Far Gate”. Check the spelling.");
        row("a store from a newer version", ErrorCode::StoreNewer, {QStringLiteral("a.duskrow")},
            "The store a.duskrow was written by a newer version of Duskrow. It was left as it is. Update "
            "Duskrow, "
            "then open it again.");
        row("typed text is not read as a place for another argument", ErrorCode::UnknownCode,
            {QStringLiteral("role"), QStringLiteral("%1 %2")},
            "The role cannot be “%1 %2”. Choose one of the values offered.");
        row("what may be chosen is named where it is known", ErrorCode::UnknownCode,
            {QStringLiteral("price_unit"), QStringLiteral("CAD/kg"), QStringLiteral("CAD/bu, CAD/t")},
            "The unit of the price cannot be “CAD/kg”. Choose one of: CAD/bu, CAD/t.");
        row("a missing argument shows as unknown", ErrorCode::StoreBusy, {},
            "Another program has the store ? open. Close it there, then try again.");
    }

    void argumentsAppearInTheirPlaces()
    {
        QFETCH(int, code);
        QFETCH(QStringList, args);
        QFETCH(QString, expected);
        Error error{static_cast<ErrorCode>(code)};
        for (const QString& arg : args) error.args.push_back(arg.toStdString());
        QCOMPARE(sentence(error), expected);
    }

    void pastedTextIsShortenedAndStaysOnOneLine()
    {
        const std::string pasted = std::string(10'000, 'x') + "\n" + std::string(10'000, 'y');
        const QString text = sentence({ErrorCode::NotANumber, {"first\nsecond " + pasted}});
        QVERIFY(text.size() < 200);
        QVERIFY(!text.contains(u'\n'));
        QVERIFY(text.contains(QStringLiteral("first second xxx")));
        QVERIFY(text.contains(QChar(0x2026)));
    }

    void anEmojiAtTheCutIsNotHalved()
    {
        std::string moths;
        for (int i = 0; i < 100; ++i) moths += "a🦋";
        const QString text = sentence({ErrorCode::NotANumber, {moths}});
        QCOMPARE(QString::fromUtf8(text.toUtf8()), text);
    }

    void rightToLeftTextDoesNotTurnTheSentence()
    {
        const QString text = sentence({ErrorCode::NotANumber, {"שלום"}});
        QVERIFY(text.contains(QString::fromUtf8("\u2068שלום\u2069")));
    }

    void everyFieldOfEveryRecordHasWords()
    {
        for (const RecordKind* kind : recordKinds())
            for (const Field& field : kind->fields) {
                if (field.type == FieldType::Id || field.type == FieldType::Flag) continue; // never typed
                const QString code = QString::fromUtf8(field.name.data(), qsizetype(field.name.size()));
                QVERIFY2(fieldName(field.name) != code, qPrintable(code));
            }
    }
};

QTEST_GUILESS_MAIN(ErrorTextTest)
#include "error_text_test.moc"
