// SPDX-License-Identifier: MIT
#include <QDir>
#include <QJsonArray>
#include <QRegularExpression>
#include <QSet>

#include <cmath>

#include "store/store.h"
#include "tool/tool_program.h"

using duskrow::tests::Ran;

namespace {

// Rows of a CSV file of ours by the names of its columns. Cells with line breaks do not occur in what is
// read.
QList<QMap<QString, QString>> rowsOf(const QByteArray& csv)
{
    const auto cells = [](const QString& line) {
        QStringList found{QString()};
        bool isQuoted = false;
        for (const QChar letter : line) {
            if (letter == u'"')
                isQuoted = !isQuoted;
            else if (letter == u',' && !isQuoted)
                found << QString();
            else
                found.last() += letter;
        }
        return found;
    };
    QList<QMap<QString, QString>> rows;
    QStringList head;
    for (const QString& line : QString::fromUtf8(csv).split(QStringLiteral("\r\n"), Qt::SkipEmptyParts)) {
        const QStringList row = cells(line);
        if (head.isEmpty()) {
            head = row;
            continue;
        }
        rows.emplace_back();
        for (qsizetype i = 0; i < head.size() && i < row.size(); ++i) rows.back()[head[i]] = row[i];
    }
    return rows;
}

// What somebody who looks for fields knows already, or would like to know.
struct Secrets {
    QStringList words; // names of people, sites, fields, landowners; ids; marks of lures
    QList<std::pair<double, double>> places; // latitude, longitude
};

// Everything of it that stands in a text. A place is found where a number comes nearer to its latitude or
// longitude than a fiftieth of a cell, with more decimals than a cell's middle has.
QStringList foundIn(const QString& text, const Secrets& secrets)
{
    QStringList found;
    for (const QString& word : secrets.words)
        if (text.contains(word, Qt::CaseInsensitive)) found << word;
    static const QRegularExpression numbers(QStringLiteral("-?\\d{1,3}\\.\\d{3,}|-?\\d{8,10}"));
    QList<double> degrees;
    for (auto match = numbers.globalMatch(text); match.hasNext();) {
        const QString number = match.next().captured();
        degrees << (number.contains(u'.') ? number.toDouble() : number.toDouble() * 1e-7);
    }
    for (const auto& [latitude, longitude] : secrets.places)
        for (const double value : degrees)
            if (std::abs(value - latitude) < 0.002 || std::abs(value - longitude) < 0.002)
                found << QString::number(value, 'f', 7);
    return found;
}

} // namespace

// Runs the real program over the demo, and looks for fields in all that it publishes.
class BulletinCommandTest : public QObject, private duskrow::tests::ToolProgram {
    Q_OBJECT

    Secrets m_secrets;

    [[nodiscard]] QStringList filesIn(const QString& name) const
    {
        return QDir(path(name)).entryList(QDir::Files, QDir::Name);
    }

    // Every file of a folder as text, archives unpacked.
    [[nodiscard]] QString allTextIn(const QString& name) const
    {
        QString text;
        for (const QString& file : filesIn(name)) {
            if (!file.endsWith(QLatin1String(".zip"))) {
                text += QString::fromUtf8(bytesOf(name + u'/' + file));
                continue;
            }
            QProcess unzip;
            unzip.start(QStringLiteral("unzip"), {QStringLiteral("-p"), path(name + u'/' + file)});
            if (!unzip.waitForFinished() || unzip.exitCode() != 0) return {};
            text += QString::fromUtf8(unzip.readAllStandardOutput());
        }
        return text;
    }

    void takeSecrets()
    {
        for (const auto& trap : rowsOf(bytesOf(QStringLiteral("truth/traps.csv")))) {
            if (!trap[QStringLiteral("lat_e7")].isEmpty())
                m_secrets.places.append({trap[QStringLiteral("lat_e7")].toDouble() * 1e-7,
                    trap[QStringLiteral("lon_e7")].toDouble() * 1e-7});
            m_secrets.words << trap[QStringLiteral("id")] << trap[QStringLiteral("lure_lot")];
        }
        for (const auto& site : rowsOf(bytesOf(QStringLiteral("truth/sites.csv"))))
            for (const char* column : {"id", "name", "field", "landowner", "keeper", "gate"})
                m_secrets.words << site[QString::fromUtf8(column)];
        for (const auto& member : rowsOf(bytesOf(QStringLiteral("truth/members.csv"))))
            m_secrets.words << member[QStringLiteral("id")] << member[QStringLiteral("name")];
        m_secrets.words.removeDuplicates();
        m_secrets.words.removeIf([](const QString& word) { return word.size() < 4; });
    }

    [[nodiscard]] Ran publish(const QString& more) const
    {
        return run(QStringLiteral("bulletin @demo @out --week 2026-W27 --on 2026-07-14 --json ") + more);
    }

private Q_SLOTS:
    void initTestCase()
    {
        QCOMPARE(run("demo @demo --traps 150 --seasons 1 --today 2026-07-14").exit, 0);
        QCOMPARE(run("export @demo @truth --as csv --on 2026-07-14").exit, 0);
        takeSecrets();
        QVERIFY(m_secrets.places.size() == 150);
        QVERIFY(m_secrets.words.size() > 300);
    }

    void aWeekIsPublished()
    {
        const Ran ran = publish(QString());
        QVERIFY2(ran.exit == 0, qPrintable(ran.err));
        QCOMPARE(ran.json()[QStringLiteral("outcome")].toString(), QStringLiteral("new"));
        QVERIFY(ran.json()[QStringLiteral("is_published")].toBool());
        QCOMPARE(filesIn(QStringLiteral("out")),
            (QStringList{QStringLiteral("bulletin-2026-W27-dwca.zip"),
                QStringLiteral("bulletin-2026-W27.csv"), QStringLiteral("bulletin-2026-W27.geojson"),
                QStringLiteral("bulletin-2026-W27.html"), QStringLiteral("feed.atom"),
                QStringLiteral("index.html")}));
        QVERIFY(QFile::exists(path(QStringLiteral("demo-bulletins"))));
    }

    void noFieldIsFoundInAnyFile()
    {
        const QString text = allTextIn(QStringLiteral("out"));
        QVERIFY(text.size() > 10'000);
        QCOMPARE(foundIn(text, m_secrets), QStringList());
        // The control: the same search over the desk's own export finds every trap and every word.
        const QStringList control = foundIn(allTextIn(QStringLiteral("truth")), m_secrets);
        QVERIFY2(control.size() > m_secrets.words.size() + m_secrets.places.size(),
            qPrintable(QString::number(control.size())));
    }

    // Each published area, and all that is left of the region or of a district beside others, is of five
    // keepers or more; asked of the records, not of the program.
    void noDifferenceIsOfFewerThanFive()
    {
        QMap<QString, QString> keepers;
        QMap<QString, QString> districtOf;
        QMap<QString, QString> names;
        for (const auto& district : rowsOf(bytesOf(QStringLiteral("truth/districts.csv"))))
            names[district[QStringLiteral("id")]] = district[QStringLiteral("name")];
        for (const auto& site : rowsOf(bytesOf(QStringLiteral("truth/sites.csv")))) {
            keepers[site[QStringLiteral("id")]] = site[QStringLiteral("keeper")];
            districtOf[site[QStringLiteral("id")]] = names[site[QStringLiteral("district")]];
        }
        QSet<QString> shownDistricts;
        QSet<QString> shownCells;
        int lines = 0;
        for (const auto& row : rowsOf(bytesOf(QStringLiteral("out/bulletin-2026-W27.csv")))) {
            ++lines;
            if (row[QStringLiteral("week_median_moths")].isEmpty()) continue;
            if (row[QStringLiteral("area_kind")] == QLatin1String("district"))
                shownDistricts << row[QStringLiteral("area_name")];
            if (row[QStringLiteral("area_kind")] == QLatin1String("cell")) {
                shownCells << row[QStringLiteral("latitude")] + u' ' + row[QStringLiteral("longitude")];
                QVERIFY(row[QStringLiteral("traps_counted")].isEmpty());
            }
        }
        QVERIFY(lines > 3);
        QVERIFY(!shownDistricts.isEmpty());
        QMap<QString, QSet<QString>> pieces;
        for (const auto& trap : rowsOf(bytesOf(QStringLiteral("truth/traps.csv")))) {
            const QString site = trap[QStringLiteral("site")];
            const auto middle = [&](const char* column) {
                const double degrees = trap[QString::fromUtf8(column)].toDouble() * 1e-7;
                return QString::number((std::floor(degrees * 10) + 0.5) / 10, 'f', 2);
            };
            const QString cell = middle("lat_e7") + u' ' + middle("lon_e7");
            const QString district = districtOf[site];
            pieces[(shownDistricts.contains(district) ? district : QString()) + u'|'
                + (shownCells.contains(cell) ? cell : QString())]
                << keepers[site];
        }
        for (auto piece = pieces.cbegin(); piece != pieces.cend(); ++piece)
            QVERIFY2(piece.value().size() >= 5, qPrintable(piece.key()));
    }

    void aPublishedWeekStaysAsItIs()
    {
        QMap<QString, QByteArray> before;
        for (const QString& file : filesIn(QStringLiteral("out")))
            before[file] = bytesOf(QStringLiteral("out/") + file);
        QCOMPARE(publish(QString()).json()[QStringLiteral("outcome")].toString(), QStringLiteral("again"));
        for (auto file = before.cbegin(); file != before.cend(); ++file)
            QCOMPARE(bytesOf(QStringLiteral("out/") + file.key()), file.value());
        const Ran none = publish(QStringLiteral("--reissue"));
        QCOMPARE(none.exit, 1);
        QVERIFY2(none.err.contains(QStringLiteral("No new issue")), qPrintable(none.err));
    }

    // Records of another summer stand in for late counts: everything has changed behind the published week.
    void aPublishedWeekDoesNotFollowTheRecords()
    {
        const QByteArray before = bytesOf(QStringLiteral("out/bulletin-2026-W27.csv"));
        QCOMPARE(run("demo @later --traps 150 --seasons 1 --today 2026-07-21").exit, 0);
        const QString line =
            QStringLiteral("bulletin @later @out2 --week 2026-W27 --on 2026-07-22 --json --kept %1")
                .arg(path(QStringLiteral("demo-bulletins")));
        const Ran ran = run(line);
        QVERIFY2(ran.exit == 0, qPrintable(ran.err));
        QCOMPARE(ran.json()[QStringLiteral("outcome")].toString(), QStringLiteral("again"));
        QCOMPARE(bytesOf(QStringLiteral("out2/bulletin-2026-W27.csv")), before);
        // The next week shows the earlier one as it was published, and the feed has both.
        const Ran next = run(QString(line).replace(QStringLiteral("W27"), QStringLiteral("W28")));
        QVERIFY2(next.exit == 0, qPrintable(next.err));
        QCOMPARE(bytesOf(QStringLiteral("out2/feed.atom")).count("<entry>"), 2);
        QCOMPARE(bytesOf(QStringLiteral("out2/index.html")),
            bytesOf(QStringLiteral("out2/bulletin-2026-W28.html")));
        QCOMPARE(foundIn(allTextIn(QStringLiteral("out2")), m_secrets), QStringList());
    }

    // The page for the wall: read back with a program that is not ours, and without a word that tells a
    // field.
    void printed()
    {
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("HOME"), path({}));
        environment.insert(QStringLiteral("XDG_DATA_HOME"), path(QStringLiteral("data")));
        environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
        environment.insert(QStringLiteral("LC_ALL"), QStringLiteral("en_CA.UTF-8"));
        const auto started = [&](const QString& program, const QStringList& line) {
            QProcess process;
            process.setProcessEnvironment(environment);
            process.start(program, line);
            process.waitForFinished(60'000);
            return Ran{process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
                QString::fromUtf8(process.readAllStandardError())};
        };
        const auto print = [&](const QString& week, const QString& day) {
            return started(QStringLiteral(DUSKROW_APP),
                {QStringLiteral("--store"), path(QStringLiteral("demo")), QStringLiteral("--print"), week,
                    QStringLiteral("--to"), path(week + QStringLiteral(".pdf")), QStringLiteral("--today"),
                    day});
        };
        const auto textOf = [&](const QString& week) {
            return started(QStringLiteral("pdftotext"),
                {QStringLiteral("-layout"), path(week + QStringLiteral(".pdf")), QStringLiteral("-")})
                .out;
        };
        const Ran ran = print(QStringLiteral("2026-W27"), QStringLiteral("2026-07-14"));
        QVERIFY2(ran.exit == 0, qPrintable(ran.err));
        const QString text = textOf(QStringLiteral("2026-W27"));
        QVERIFY2(text.contains(QStringLiteral("week 27 of 2026")), qPrintable(text));
        QVERIFY(text.contains(QStringLiteral("never decides")) || text.contains(QStringLiteral("label")));
        QVERIFY(text.contains(QStringLiteral("invented"), Qt::CaseInsensitive));
        QVERIFY(!text.contains(QStringLiteral("A draft")));
        QVERIFY(text.contains(QStringLiteral("How fields are kept private")));
        QCOMPARE(foundIn(text, m_secrets), QStringList());
        const QString info =
            started(QStringLiteral("pdfinfo"), {path(QStringLiteral("2026-W27.pdf"))}).out.simplified();
        QVERIFY2(info.contains(QStringLiteral("Pages: 1 ")), qPrintable(info));
        // What is not published yet says so; what is not over has no page.
        QCOMPARE(print(QStringLiteral("2026-W26"), QStringLiteral("2026-07-14")).exit, 0);
        QVERIFY(textOf(QStringLiteral("2026-W26")).contains(QStringLiteral("A draft: not published")));
        const Ran early = print(QStringLiteral("2026-W29"), QStringLiteral("2026-07-14"));
        QVERIFY(early.exit != 0);
        QVERIFY2(early.err.contains(QStringLiteral("not all due")), qPrintable(early.err));
        // Boundaries that are gone keep no page from being printed, and are not passed over in silence.
        const auto setBoundaries = [&](const std::string& file) {
            const auto opened = duskrow::store::Store::open(path(QStringLiteral("demo")).toStdString(),
                {.keyFolder = path(QStringLiteral("data/duskrow/keys")).toStdString()});
            return opened && (*opened)->saveSettingNow("boundaries_file", file).has_value();
        };
        QVERIFY(setBoundaries(path(QStringLiteral("gone.geojson")).toStdString()));
        const Ran without = print(QStringLiteral("2026-W27"), QStringLiteral("2026-07-14"));
        QCOMPARE(without.exit, 0);
        QVERIFY2(
            without.err.contains(QStringLiteral("gone.geojson cannot be read")), qPrintable(without.err));
        QVERIFY(setBoundaries({}));
    }

    // Every phone learns of it by a record; a desk that kept nothing of the week does not publish it anew.
    void theRecordsSayThatItIsOut()
    {
        QCOMPARE(run("export @demo @records --as csv --on 2026-07-14").exit, 0);
        const auto rows = rowsOf(bytesOf(QStringLiteral("records/bulletins.csv")));
        QCOMPARE(rows.size(), 1);
        QCOMPARE(rows.front()[QStringLiteral("week")], QStringLiteral("2026-W27"));
        const Ran lost = run("bulletin @demo @anew --week 2026-W27 --on 2026-07-14 --kept @empty");
        QVERIFY(lost.exit != 0);
        QVERIFY2(lost.err.contains(QStringLiteral("another desk")), qPrintable(lost.err));
        QVERIFY(!QFile::exists(path(QStringLiteral("anew"))));
        QCOMPARE(bytesOf(QStringLiteral("demo-bulletins/public/bulletin-2026-W27.html")),
            bytesOf(QStringLiteral("out/bulletin-2026-W27.html")));
    }

    void aWeekThatGoesOnIsNotPublished()
    {
        const Ran ran = run("bulletin @demo @early --week 2026-W29 --on 2026-07-14");
        QCOMPARE(ran.exit, 1);
        QVERIFY2(ran.err.contains(QStringLiteral("not all due yet")), qPrintable(ran.err));
        QVERIFY(!QFile::exists(path(QStringLiteral("early"))));
    }

    void frenchAndOwnText()
    {
        writeFile("own.txt", "First words.\n\n<b>Second</b> \x02words.\n");
        const Ran ran =
            run("bulletin @demo @french --week 2026-W27 --on 2026-07-14 --language fr --text @own.txt");
        QVERIFY2(ran.exit == 0, qPrintable(ran.err));
        const QByteArray page = bytesOf(QStringLiteral("french/bulletin-2026-W27.html"));
        QVERIFY(page.contains("lang=\"fr"));
        QVERIFY(page.contains("Que faire maintenant"));
        QVERIFY(page.contains("semaine 27 de 2026"));
        QVERIFY(page.contains("<p>First words.</p>"));
        QVERIFY(page.contains("&lt;b&gt;Second&lt;/b&gt; words."));
        QVERIFY(!page.contains("<b>Second"));
        // They stay until others are given.
        const Ran stays = run("bulletin @demo @stays --week 2026-W27 --on 2026-07-14");
        QVERIFY2(stays.exit == 0, qPrintable(stays.err));
        QVERIFY(bytesOf(QStringLiteral("stays/bulletin-2026-W27.html")).contains("<p>First words.</p>"));
    }

    void aLookPublishesNothing()
    {
        const Ran look = run("bulletin @demo @look --week 2026-W26 --on 2026-07-14 --dry-run");
        QVERIFY2(look.exit == 0, qPrintable(look.err));
        QVERIFY2(look.out.contains(QStringLiteral("A look only: nothing was kept")), qPrintable(look.out));
        QVERIFY(bytesOf(QStringLiteral("look/bulletin-2026-W26.html")).contains("week 26 of 2026"));
        QVERIFY(!QFile::exists(path(QStringLiteral("demo-bulletins/public/bulletin-2026-W26.html"))));
        const Ran published = run("bulletin @demo @w26 --week 2026-W26 --on 2026-07-14");
        QVERIFY2(published.out.contains(QStringLiteral("Published for the first time")),
            qPrintable(published.out));
    }

    void aWeekWithoutTrapsIsNotPublished()
    {
        const Ran ran = run("bulletin @demo @march --week 2026-W10 --on 2026-07-14");
        QCOMPARE(ran.exit, 1);
        QVERIFY2(ran.err.contains(QStringLiteral("No trap stood out in this week.")), qPrintable(ran.err));
        QVERIFY(!QFile::exists(path(QStringLiteral("march"))));
    }

    void boundariesWithoutADistrictAreSaid()
    {
        writeFile("far.geojson",
            R"({"type":"Feature","properties":{"name":"Nowhere"},"geometry":{"type":"Polygon","coordinates":[[[0,0],[1,0],[1,1],[0,0]]]}})");
        const Ran ran = run("bulletin @demo @far --week 2026-W27 --on 2026-07-14 --overlay @far.geojson");
        QVERIFY2(ran.exit == 0, qPrintable(ran.err));
        QVERIFY2(ran.out.contains(QStringLiteral("No boundary in the file bears the name of: ")),
            qPrintable(ran.out));
    }

    void whatIsWrongIsSaid_data()
    {
        QTest::addColumn<QByteArray>("line");
        QTest::addColumn<QString>("says");
        const auto row = [](const char* line, const char* says) {
            QTest::newRow(line) << QByteArray(line) << QString::fromUtf8(says);
        };
        row("bulletin @none @x --week 2026-W27", "There is no store at");
        row("bulletin @demo @x --week 27", "27");
        row("bulletin @demo @x --week 2026-W60 --on 2026-07-14", "53");
        row("bulletin @demo @x --week 1999-W27 --on 2026-07-14", "1999");
        row("bulletin @demo @x --week 2026-W27 --on 2026-07-14 --pest none", "none");
        row("bulletin @demo @x --week 2026-W27 --on 2026-07-14 --overlay @none", "none");
        row("bulletin @demo @x --week 2026-W27 --on 2026-07-14 --overlay @own.txt", "own.txt");
    }

    void whatIsWrongIsSaid()
    {
        QFETCH(QByteArray, line);
        QFETCH(QString, says);
        const Ran ran = run(QString::fromUtf8(line));
        QVERIFY(ran.exit != 0);
        QVERIFY2(ran.err.contains(says), qPrintable(ran.err));
    }
};

QTEST_GUILESS_MAIN(BulletinCommandTest)
#include "bulletin_test.moc"
