// SPDX-License-Identifier: MIT
#include <QJsonArray>

#include "domain/log/edit.h"
#include "domain/records/question.h"
#include "store/queries.h"
#include "store/store.h"
#include "tool/tool_program.h"

using namespace duskrow::domain;
using duskrow::store::Batch;
using duskrow::store::Store;
using duskrow::tests::Ran;

namespace {

Uuid idOf(std::uint8_t number)
{
    Uuid id;
    id.bytes[0] = 0x77;
    id.bytes[15] = number;
    return id;
}

QJsonArray flagsOf(const Ran& ran)
{
    return ran.json()[QStringLiteral("flags")].toArray();
}

// Of two visits the later one gets the flag and names the other.
QStringList checksAt(const Ran& ran, const Uuid& visit)
{
    const QString id = QString::fromStdString(formatUuid(visit));
    QStringList checks;
    for (const auto& value : flagsOf(ran)) {
        const QJsonObject flag = value.toObject();
        if (flag[QStringLiteral("visit")].toString() == id
            || flag[QStringLiteral("others")].toArray().contains(id))
            checks << flag[QStringLiteral("check")].toString();
    }
    return checks;
}

} // namespace

// Runs the real program over the demo, and over the same with planted faults.
class FlagsCommandTest : public QObject, private duskrow::tests::ToolProgram {
    Q_OBJECT

    std::map<std::string, Uuid> m_planted; // a visit by the flag it is to get

    void plant(Batch& batch, Visit visit, const char* check)
    {
        visit.id = idOf(static_cast<std::uint8_t>(m_planted.size() + 1));
        visit.outcome = Outcome::Counted;
        visit.emptied = true;
        m_planted[check] = visit.id;
        batch.edits.push_back(creation(visit, {}));
    }

    // Visits on days that do not fit, entered twice, noted far away, and without a trap.
    void plantAt(const Trap& trap, const std::vector<Visit>& visits, Batch& batch)
    {
        Visit visit;
        visit.trap = trap.id;
        visit.pest = Moths{12};
        visit.day = *trap.setDay - std::chrono::days{3};
        plant(batch, visit, "before_set_up");
        visit.day = dayOf(2026, 7, 20);
        plant(batch, visit, "in_future");
        visit.day = visits.back().day;
        visit.pest = visits.back().pest;
        plant(batch, visit, "double_entry");
        visit.day = *visits.front().day + std::chrono::days{2};
        visit.pest = Moths{3};
        visit.latE7 = *trap.latE7 + 100'000; // 1.1 km to the north
        visit.lonE7 = trap.lonE7;
        visit.accuracy = Millimetres{4'000};
        plant(batch, visit, "moved_trap");
        visit.latE7.reset();
        visit.lonE7.reset();
        visit.accuracy.reset();
        visit.trap = idOf(200);
        plant(batch, visit, "without_trap");
    }

    void plantFaults(const QString& name)
    {
        const auto opened = Store::open(
            path(name).toStdString(), {.keyFolder = path(QStringLiteral("data/duskrow/keys")).toStdString()});
        QVERIFY(opened.has_value());
        const auto reader = (*opened)->reader();
        const auto season = duskrow::store::seasonOfYear(**reader, 2026);
        auto traps = duskrow::store::trapsOf(**reader, (*season)->id);
        Batch batch{.author = idOf(100),
            .at = instantFromMs(1'784'000'000'000),
            .offset = {},
            .edits = {},
            .draftDone = {}};
        for (const Trap& trap : *traps) {
            const auto visits = duskrow::store::visitsOf(**reader, trap.id);
            const bool isPlain =
                visits->size() >= 4 && std::all_of(visits->begin(), visits->end(), [](const Visit& visit) {
                    return visit.pest && visit.emptied == true && visit.pest->value() >= 1;
                });
            if (!isPlain) continue;
            plantAt(trap, *visits, batch);
            Visit slip = (*visits)[2];
            slip.pest = Moths{4'000};
            batch.edits.push_back(correction((*visits)[2], slip, trap.site));
            m_planted["far_above_around"] = slip.id;
            Question question;
            question.id = idOf(150);
            question.subject = slip.id;
            question.trap = trap.id;
            question.day = slip.day;
            question.words = "4,000 moths are far above the traps around. Is it right?";
            batch.edits.push_back(creation(question, trap.site));
            break;
        }
        QVERIFY(m_planted.size() == 6);
        QVERIFY((*opened)->keepNow(std::move(batch)).has_value());
    }

private Q_SLOTS:
    void initTestCase()
    {
        QCOMPARE(run("demo @demo --traps 40 --seasons 2 --today 2026-07-14").exit, 0);
        QCOMPARE(run("demo @faulty --traps 40 --seasons 2 --today 2026-07-14").exit, 0);
        plantFaults(QStringLiteral("faulty"));
    }

    // The invented district has mishaps of its own: a slip of the finger, a spoiled lure.
    void theDemoHasFewFlags()
    {
        const Ran ran = run("flags @demo --on 2026-07-14");
        QCOMPARE(ran.exit, 0);
        QVERIFY(ran.out.startsWith(QStringLiteral("Season 2026, as on Tuesday 14 July 2026\n")));
        const auto flags = flagsOf(run("flags @demo --on 2026-07-14 --json"));
        QVERIFY2(flags.size() >= 1 && flags.size() <= 4, qPrintable(ran.out));
        QVERIFY(ran.out.contains(QStringLiteral("Flags: %1. ").arg(flags.size())));
        QVERIFY(ran.out.contains(QStringLiteral("Far above the traps around · ")));
        QVERIFY(ran.out.contains(QStringLiteral("1 good count in 400 gets this flag; it may be real.")));
        QVERIFY(ran.out.contains(QStringLiteral("in 7 nights, ")));
    }

    void plantedFaultsAreFound_data()
    {
        QTest::addColumn<QString>("check");
        for (const auto& [check, visit] : m_planted)
            QTest::newRow(check.c_str()) << QString::fromStdString(check);
    }

    void plantedFaultsAreFound()
    {
        QFETCH(QString, check);
        static const Ran ran = run("flags @faulty --on 2026-07-14 --json");
        QCOMPARE(ran.exit, 0);
        const QStringList checks = checksAt(ran, m_planted[check.toStdString()]);
        QVERIFY2(checks.contains(check), qPrintable(checks.join(u' ')));
    }

    void theNumbersForOtherPrograms()
    {
        const Ran ran = run("flags @faulty --on 2026-07-14 --json");
        const QJsonObject json = ran.json();
        QCOMPARE(json[QStringLiteral("season")].toInt(), 2026);
        QCOMPARE(json[QStringLiteral("day")].toString(), QStringLiteral("2026-07-14"));
        bool isSeen = false;
        for (const auto& value : flagsOf(ran)) {
            const QJsonObject flag = value.toObject();
            QVERIFY(flag[QStringLiteral("reason")].toString().endsWith(u'.'));
            QVERIFY(flag[QStringLiteral("good_counts_words")].toString().endsWith(u'.'));
            if (flag[QStringLiteral("check")].toString() != QStringLiteral("far_above_around")) continue;
            QCOMPARE(flag[QStringLiteral("good_counts_one_in")].toInt(), 400);
            QVERIFY(flag[QStringLiteral("around")].toArray().size() >= 3);
            const QJsonObject numbers = flag[QStringLiteral("numbers")].toObject();
            QVERIFY(numbers[QStringLiteral("moths_per_week")].toInt()
                > numbers[QStringLiteral("expected_per_week")].toInt());
            isSeen = isSeen || numbers[QStringLiteral("moths")].toInt() == 4'000;
        }
        QVERIFY(isSeen);
    }

    void whatIsAskedAndNotSettled()
    {
        const auto questions =
            run("flags @faulty --on 2026-07-14 --json").json()[QStringLiteral("questions")].toArray();
        QCOMPARE(questions.size(), 1);
        const QJsonObject asked = questions[0].toObject();
        QCOMPARE(asked[QStringLiteral("about")].toString().toStdString(),
            formatUuid(m_planted["far_above_around"]));
        QVERIFY(asked[QStringLiteral("trap_name")].isString());
        QVERIFY(asked[QStringLiteral("answer")].isNull());
        QVERIFY(asked[QStringLiteral("words")].toString().startsWith(QStringLiteral("4,000 moths")));
        const Ran ran = run("flags @faulty --on 2026-07-14");
        QVERIFY2(ran.out.contains(QStringLiteral("Asked and not settled: 1.")), qPrintable(ran.out));
        QVERIFY(ran.out.contains(QStringLiteral("No answer yet.")));
        QVERIFY(!run("flags @demo --on 2026-07-14").out.contains(QStringLiteral("Asked and not settled")));
    }

    void midgesAreNoMoths()
    {
        QCOMPARE(run("demo @midges --traps 40 --seasons 1 --today 2026-07-14").exit, 0);
        {
            const auto opened = Store::open(path(QStringLiteral("midges")).toStdString(),
                {.keyFolder = path(QStringLiteral("data/duskrow/keys")).toStdString()});
            QVERIFY(opened.has_value());
            const auto reader = (*opened)->reader();
            const auto season = duskrow::store::seasonOfYear(**reader, 2026);
            const auto traps = duskrow::store::trapsOf(**reader, (*season)->id);
            const Trap& trap = traps->front();
            Trap midges = trap;
            midges.pest = "wheat-midge";
            Batch batch{.author = idOf(100),
                .at = instantFromMs(1'784'000'000'000),
                .offset = {},
                .edits = {correction(trap, midges, trap.site)},
                .draftDone = {}};
            for (const std::uint8_t number : {std::uint8_t{201}, std::uint8_t{202}}) {
                Visit visit;
                visit.id = idOf(number);
                visit.trap = trap.id;
                visit.day = dayOf(2026, 7, 13);
                visit.outcome = Outcome::Counted;
                visit.pest = Moths{77};
                batch.edits.push_back(creation(visit, trap.site));
            }
            QVERIFY((*opened)->keepNow(std::move(batch)).has_value());
        }
        const Ran ran = run("flags @midges --on 2026-07-14");
        QVERIFY2(ran.out.contains(QStringLiteral("both say 77 midges.")), qPrintable(ran.out));
        QVERIFY(!ran.out.contains(QStringLiteral("77 moths")));
    }

    void lookingChangesNothing()
    {
        const QByteArray before = bytesOf(QStringLiteral("faulty"));
        QCOMPARE(run("flags @faulty --on 2026-07-14").exit, 0);
        QCOMPARE(bytesOf(QStringLiteral("faulty")), before);
        QCOMPARE(run("check @faulty").exit, 0);
    }

    void anotherYear()
    {
        const Ran ran = run("flags @faulty --on 2026-07-14 --year 2025");
        QCOMPARE(ran.exit, 0);
        QVERIFY(ran.out.startsWith(QStringLiteral("Season 2025, ")));
        QVERIFY(!ran.out.contains(QStringLiteral("In the future")));
    }

    void badInputIsRefusedInOneSentence_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("said");
        const auto row = [](const char* line, const char* said) {
            QTest::newRow(line) << QString::fromUtf8(line) << QString::fromUtf8(said);
        };
        row("flags @none", "There is no store at");
        row("flags @demo --year 1999", "There is no season called “1999”");
        row("flags @demo --year last", "“last” is not a number");
        row("flags @demo --on 14.7.2026", "is not a day of the calendar");
        row("flags", "See duskrow-tool flags --help.");
    }

    void badInputIsRefusedInOneSentence()
    {
        QFETCH(QString, line);
        QFETCH(QString, said);
        const Ran ran = run(line);
        QCOMPARE(ran.exit, 2);
        QVERIFY(ran.out.isEmpty());
        QVERIFY2(ran.err.contains(said) && ran.err.count(u'\n') == 1, qPrintable(ran.err));
    }
};

QTEST_GUILESS_MAIN(FlagsCommandTest)
#include "flags_test.moc"
