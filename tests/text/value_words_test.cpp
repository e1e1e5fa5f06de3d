// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/records/trap.h"
#include "domain/records/visit.h"
#include "text/field_names.h"
#include "text/value_words.h"

using namespace duskrow::domain;
namespace text = duskrow::text;

Q_DECLARE_METATYPE(Value)

class ValueWordsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QLocale::setDefault({QLocale::English, QLocale::UnitedKingdom}); }

    void aValueIsReadWithItsUnit_data()
    {
        QTest::addColumn<QByteArray>("kind");
        QTest::addColumn<QByteArray>("field");
        QTest::addColumn<Value>("value");
        QTest::addColumn<QString>("expected");
        const auto row = [](const char* kind, const char* field, const Value& value, const char* expected) {
            QTest::addRow("%s of %s: %s", field, kind, expected)
                << QByteArray(kind) << QByteArray(field) << value << QString::fromUtf8(expected);
        };
        const auto whole = [](std::int64_t number) { return Value{number}; };
        const auto said = [](const char* words) { return Value{std::string(words)}; };
        row("visit", "pest", whole(47), "47 moths");
        row("visit", "pest", whole(0), "0 moths");
        row("visit", "pest", Value{}, "nothing");
        row("visit", "bees", whole(1), "1 bee");
        row("visit", "entrance_mm", whole(1180), "118 cm");
        row("visit", "accuracy_mm", whole(5200), "within 6 m");
        row("visit", "reentry_hours", whole(24), "24 hours");
        row("visit", "emptied", Value{true}, "yes");
        row("visit", "emptied", Value{false}, "no");
        row("visit", "day", said("2026-07-07"), "Tuesday 7 July 2026");
        row("visit", "outcome", said("could_not_count"), "could not count");
        row("visit", "state", said("fallen"), "fallen");
        row("visit", "remark", said("wet"), "“wet”");
        row("visit", "photo", said("0badcafe"), "a photograph");
        row("sample", "state", said("sent"), "sent");
        row("trap", "lat_e7", whole(521579000), "52.15790°");
        row("trap", "end_reason", said("season_over"), "season over");
        row("trap", "farmyard_distance_mm", whole(400000), "400 m");
        row("trap", "paired_with", said("01890a5d-ac96-774b-bcce-b302099a8057"), "another record");
    }

    void aValueIsReadWithItsUnit()
    {
        QFETCH(QByteArray, kind);
        QFETCH(QByteArray, field);
        QFETCH(Value, value);
        QTEST(text::valueWords(*findKind(kind.toStdString()), field.toStdString(), value, {}), "expected");
    }

    // What a newer version wrote is shown as it came, not hidden.
    void whatIsNotKnownHereIsShownAsItIs()
    {
        const RecordKind& visit = kindOf<Visit>();
        QCOMPARE(
            text::valueWords(visit, "state", Value{std::string("buried")}, {}), QStringLiteral("buried"));
        QCOMPARE(text::valueWords(visit, "wind", Value{std::int64_t{3}}, {}), QStringLiteral("3"));
        QCOMPARE(text::valueWords(visit, "wind", Value{RawJson{"[1]"}}, {}), QStringLiteral("[1]"));
    }

    void aRecordNamedElsewhereIsNamed()
    {
        const auto nameOf = [](const Uuid&) { return QStringLiteral("Ida"); };
        QCOMPARE(text::valueWords(kindOf<Site>(), "keeper",
                     Value{std::string("01890a5d-ac96-774b-bcce-b302099a8057")}, nameOf),
            QStringLiteral("Ida"));
    }

    void everyFieldThatIsShownHasWords()
    {
        for (const RecordKind* kind : recordKinds()) {
            for (const Field& field : kind->fields) {
                const std::string name(field.name);
                if (!text::isWorthReading(name)) continue;
                const QString words = text::fieldName(kind->name, name);
                QVERIFY2(words != QString::fromStdString(name), name.c_str());
                QVERIFY2(
                    !(kind->name == "trap" && name == "pest" && words.contains(QStringLiteral("number"))),
                    "a trap's pest is no number");
            }
        }
    }
};

QTEST_GUILESS_MAIN(ValueWordsTest)
#include "value_words_test.moc"
