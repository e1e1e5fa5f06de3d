// SPDX-License-Identifier: MIT
#include <QDir>
#include <QJsonArray>

#include "tool/tool_program.h"

using duskrow::tests::Ran;

namespace {

QByteArray carried(const QString& pest)
{
    QFile file(QStringLiteral(DUSKROW_SOURCE_DIR "/assets/protocols/%1.json").arg(pest));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

// The file that the page on new pests shows.
QByteArray exampleOfThePage()
{
    QFile page(QStringLiteral(DUSKROW_SOURCE_DIR "/DEVELOPERS.md"));
    if (!page.open(QIODevice::ReadOnly)) return {};
    const QByteArray text = page.readAll();
    const qsizetype section = text.indexOf("## A pest in ten minutes");
    const qsizetype begin = text.indexOf("```json\n", section);
    if (section < 0 || begin < 0) return {};
    return text.mid(begin + 8, text.indexOf("```", begin + 8) - begin - 8);
}

} // namespace

class ProtocolCommandTest : public QObject, private duskrow::tests::ToolProgram {
    Q_OBJECT

private Q_SLOTS:
    void everyCarriedFileIsSound_data()
    {
        QTest::addColumn<QString>("pest");
        const QDir folder(QStringLiteral(DUSKROW_SOURCE_DIR "/assets/protocols"));
        for (const QString& file : folder.entryList({QStringLiteral("*-*.json")}))
            QTest::newRow(qPrintable(file)) << file.chopped(5);
    }

    void everyCarriedFileIsSound()
    {
        QFETCH(QString, pest);
        writeFile("p.json", carried(pest));
        const Ran ran = run("protocol check @p.json --json");
        QVERIFY2(ran.exit == 0, qPrintable(ran.out + ran.err));
        QCOMPARE(ran.json()[QStringLiteral("id")].toString(), pest);
        QVERIFY(ran.json()[QStringLiteral("rules_not_understood")].toArray().isEmpty());
        const QJsonArray figures = ran.json()[QStringLiteral("figures")].toArray();
        QVERIFY(figures.size() > 8);
        for (const QJsonValue& figure : figures) {
            const QString name = figure[QStringLiteral("name")].toString();
            const bool isWord = name == QStringLiteral("What it catches"); // no figure, and without a source
            QVERIFY2(isWord || !figure[QStringLiteral("source")].toString().isEmpty(), qPrintable(name));
        }
        QVERIFY(run("protocol check @p.json").out.contains(pest));
    }

    void whatIsWrongIsToldWithLineAndField_data()
    {
        QTest::addColumn<QByteArray>("before");
        QTest::addColumn<QByteArray>("after");
        QTest::addColumn<QString>("field");
        const auto row = [](const char* name, const char* before, const char* after, const char* field) {
            QTest::newRow(name) << QByteArray(before) << QByteArray(after) << QString::fromLatin1(field);
        };
        row("no source", "\"value\": 9, \"source\": \"example-guide\"", "\"value\": 9",
            "rules[0].moths.value");
        row("zero moths", "\"value\": 9,", "\"value\": 0,", "rules[0].moths");
        row("no nights", "\"nights\":", "\"days\":", "rules[0]");
        row("another trap", "[\"delta\"]", "[\"wing\"]", "rules[0].trap_types[0]");
        row("no French", "\"fr\": \"Chanvre\"", "\"de\": \"Hanf\"", "crops[0].name");
        row("no colon", "\"form\": \"1\"", "\"form\" \"1\"", "");
    }

    void whatIsWrongIsToldWithLineAndField()
    {
        QFETCH(QByteArray, before);
        QFETCH(QByteArray, after);
        QFETCH(QString, field);
        QByteArray text = exampleOfThePage();
        const qsizetype at = text.indexOf(before);
        QVERIFY(at > 0);
        const int line = static_cast<int>(text.left(at).count('\n')) + 1;
        text.replace(at, before.size(), after);
        writeFile("wrong.json", text);
        const Ran ran = run("protocol check @wrong.json --json");
        QCOMPARE(ran.exit, 1);
        QCOMPARE(ran.json()[QStringLiteral("field")].toString(), field);
        QVERIFY(!ran.json()[QStringLiteral("what")].toString().isEmpty());
        const int told = ran.json()[QStringLiteral("line")].toInt();
        QVERIFY2(qAbs(told - line) <= 6, qPrintable(QString::number(told)));
        const Ran words = run("protocol check @wrong.json");
        QCOMPARE(words.exit, 1);
        QVERIFY(words.out.contains(QStringLiteral("Line %1:").arg(told)));
        QVERIFY(field.isEmpty() || words.out.contains(field));
    }

    void aFileThatIsNotThereCannotBeChecked()
    {
        const Ran ran = run("protocol check @nowhere.json");
        QCOMPARE(ran.exit, 2);
        QVERIFY(ran.err.contains(QStringLiteral("nowhere.json")));
        QCOMPARE(run("protocol").exit, 2);
    }

    void aShapeOfANewerVersionIsKeptAndSaid()
    {
        QByteArray text = exampleOfThePage();
        text.replace("\"rules\": [", "\"rules\": [{ \"id\": \"moon\", \"shape\": \"moon_phase\" },");
        writeFile("newer.json", text);
        const Ran ran = run("protocol check @newer.json");
        QVERIFY2(ran.exit == 0, qPrintable(ran.err));
        QVERIFY(ran.out.contains(QStringLiteral("moon_phase")));
    }

    // The page of the developers' guide, done: file, check, programme, counts, season.
    void aPestInTenMinutes()
    {
        QVERIFY(QDir(path(QString())).mkpath(QStringLiteral("pests")));
        writeFile("pests/example-moth.json", exampleOfThePage());
        const Ran checked = run("protocol check @pests/example-moth.json --json");
        QVERIFY2(checked.exit == 0, qPrintable(checked.out + checked.err));
        const QJsonObject type = checked.json()[QStringLiteral("trap_types")].toArray().at(0).toObject();
        QCOMPARE(type[QStringLiteral("has_bands")].toBool(), false);
        QCOMPARE(type[QStringLiteral("rules")].toArray().at(0).toString(), QStringLiteral("many-moths"));

        QVERIFY(run("programme new @elm --name Elm --me Ida").exit == 0);
        writeFile("counts.csv",
            "Site,Trap,Set "
            "up,Date,Count\nSlough,1,2026-06-01,2026-06-03,9\nRidge,2,2026-06-01,2026-06-03,8\n");
        const Ran imported = run("import @elm @counts.csv --pest example-moth --protocols @pests");
        QVERIFY2(imported.exit == 0, qPrintable(imported.out + imported.err));

        const Ran season = run("season @elm --on 2026-06-06 --json --protocols @pests");
        QVERIFY2(season.exit == 0, qPrintable(season.err));
        const QJsonArray traps = season.json()[QStringLiteral("traps")].toArray();
        QCOMPARE(traps.size(), 2);
        for (const QJsonValue& trap : traps) {
            const QJsonValue rule = trap[QStringLiteral("rules")].toArray().at(0);
            const bool isReached = trap[QStringLiteral("site")] == QStringLiteral("Slough");
            QCOMPARE(rule[QStringLiteral("is_reached")].toBool(), isReached);
            QVERIFY(trap[QStringLiteral("band")].isNull());
            if (isReached)
                QCOMPARE(rule[QStringLiteral("span")][QStringLiteral("to")].toString(),
                    QStringLiteral("2026-06-03"));
        }
        const Ran told = run("season @elm --trap Slough --on 2026-06-06 --protocols @pests");
        QVERIFY2(told.exit == 0, qPrintable(told.err));
        for (const char* words : {"Many moths at once: 9 moths in 2 nights", "Look at the crop.",
                 "Nobody has published bands.", "A trap catch never decides a spray."})
            QVERIFY2(told.out.contains(QString::fromUtf8(words)), qPrintable(told.out));
    }
};

QTEST_GUILESS_MAIN(ProtocolCommandTest)
#include "protocol_test.moc"
