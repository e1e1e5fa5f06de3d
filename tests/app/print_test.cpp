// SPDX-License-Identifier: MIT
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTest>

#include "app/walk_scene.h"

using namespace duskrow::domain;
using duskrow::tests::Ran;
using duskrow::tests::WalkScene;

namespace {

const std::vector<int> nearThreshold{4, 9, 2, 15, 0, 6, 3, 8, 1, 7};

std::vector<int> manyFrames(int count)
{
    std::vector<int> larvae;
    for (int i = 0; i < count; ++i) larvae.push_back(i * 7 % 13);
    return larvae;
}

// Line breaks are the page's own.
QString flat(const QString& text)
{
    return text.simplified();
}

} // namespace

// Prints sheets with the real program, and reads them back with a program that is not ours.
class PrintTest : public QObject {
    Q_OBJECT

private:
    WalkScene m_scene;
    QString m_decidedWalk;

    QString pdf(const QString& name) const { return m_scene.path(name); }

    Ran print(
        const QString& walk, const QString& name, const QString& language = QStringLiteral("en_CA")) const
    {
        return m_scene.run({QStringLiteral("--print"), walk, QStringLiteral("--to"), pdf(name)}, language);
    }

    QString textOf(const QString& name) const
    {
        const Ran read = WalkScene::runProgram(QStringLiteral("pdftotext"), {pdf(name), QStringLiteral("-")});
        return read.exit == 0 ? flat(read.out) : QString();
    }

    QString figureOf(const QString& name, const QString& figure) const
    {
        const Ran read = WalkScene::runProgram(QStringLiteral("pdfinfo"), {pdf(name)});
        for (const QString& line : read.out.split(u'\n'))
            if (line.startsWith(figure + u':')) return line.section(u':', 1).trimmed();
        return {};
    }

    static QString longName()
    {
        return QString::fromUtf8("The quarter beyond the slough (old Ölander place) ").repeated(3).trimmed();
    }
    static std::string longRemark()
    {
        return QString::fromUtf8(
            " Hail in the north-east corner; fields \u0645\u0632\u0631\u0639\u0629 and \U0001F98B. ")
            .repeated(8)
            .toStdString();
    }

    // Nothing is written beyond the edges of the paper.
    void staysOnThePage(const QString& name) const
    {
        const Ran boxes = WalkScene::runProgram(
            QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), pdf(name), QStringLiteral("-")});
        static const QRegularExpression size(
            QStringLiteral("<page width=\"([0-9.]+)\" height=\"([0-9.]+)\""));
        static const QRegularExpression word(QStringLiteral(
            "xMin=\"([0-9.-]+)\" yMin=\"([0-9.-]+)\" xMax=\"([0-9.-]+)\" yMax=\"([0-9.-]+)\">([^<]*)"));
        const auto page = size.match(boxes.out);
        QVERIFY(page.hasMatch());
        constexpr double margin = 35; // half an inch, and what a box of type sticks out
        int words = 0;
        for (auto found = word.globalMatch(boxes.out); found.hasNext(); ++words) {
            const auto box = found.next();
            const bool isInside = box.captured(1).toDouble() >= margin
                && box.captured(2).toDouble() >= margin - 4
                && box.captured(3).toDouble() <= page.captured(1).toDouble() - margin
                && box.captured(4).toDouble() <= page.captured(2).toDouble() - margin + 4;
            QVERIFY2(isInside, qPrintable(box.captured()));
        }
        QVERIFY(words > 150);
    }

    static bool isRefusal(const Ran& ran)
    {
        return ran.exit == 2 && ran.out.isEmpty() && ran.err.endsWith(QStringLiteral(".\n"))
            && ran.err.count(u'\n') == 1;
    }

private Q_SLOTS:
    void initTestCase()
    {
        QVERIFY2(!QStandardPaths::findExecutable(QStringLiteral("pdftotext")).isEmpty(),
            "poppler-utils is needed, see tests/packages");
        m_scene.begin(QStringLiteral("Slough corner"), true);
        m_scene.addField(3, QStringLiteral("Twin"));
        m_scene.addField(4, QStringLiteral("Twin"));
        m_scene.addWalk(10, 2, dayOf(2026, 7, 7), {0, 0, 1}, true);
        m_decidedWalk = m_scene.addWalk(11, 2, dayOf(2026, 7, 14), nearThreshold, true);
        m_scene.decide(40, 11, Decided::LookAgain);
        m_scene.addWalk(12, 3, dayOf(2026, 7, 14), nearThreshold, true);
        m_scene.addWalk(13, 4, dayOf(2026, 7, 14), nearThreshold, true);
        m_scene.addField(5, QStringLiteral("No place"));
        m_scene.addWalk(14, 5, dayOf(2026, 7, 14), nearThreshold, false);
        m_scene.addField(6, QStringLiteral("Twenty"));
        m_scene.addWalk(15, 6, dayOf(2026, 7, 14), manyFrames(20), true);
        m_scene.addField(7, QStringLiteral("Ninety"));
        m_scene.addWalk(16, 7, dayOf(2026, 7, 14), manyFrames(90), true);
        m_scene.addField(8, QStringLiteral("Nothing yet"));
        m_scene.addWalk(17, 8, dayOf(2026, 7, 14), {}, true);
        m_scene.addField(9, QStringLiteral("Thirty"));
        m_scene.addWalk(18, 9, dayOf(2026, 7, 14), manyFrames(30), true);
        m_scene.addField(20, longName());
        m_scene.addWalk(
            19, 20, dayOf(2026, 7, 14), manyFrames(12), true, std::string(400, 'x') + longRemark());
        m_scene.close();
    }

    void allThatMattersIsOnOnePage()
    {
        const Ran ran = print(QStringLiteral("slough CORNER"), QStringLiteral("sheet.pdf"));
        QCOMPARE(ran.err, QString());
        QCOMPARE(ran.exit, 0);
        QCOMPARE(figureOf(QStringLiteral("sheet.pdf"), QStringLiteral("Pages")), QStringLiteral("1"));
        const QString text = textOf(QStringLiteral("sheet.pdf"));
        for (const char* wanted : {"Slough corner", "Willow bend", "Invented", "Wren Alder", "14 July 2026",
                 "75 ·", "BBCH scale", "Too close to call", "22 per m²", "your threshold 21",
                 "10 frames, 55 larvae", "12 CAD/ac ÷ 0.58 CAD/ac", "20.7 larvae/m²",
                 "A trap catch never decides a spray.", "older varieties", "pre-harvest interval",
                 "pollinators", "licensed adviser", "Look again", "version 2026-1", "Who"})
            QVERIFY2(text.contains(QString::fromUtf8(wanted)),
                qPrintable(QString::fromUtf8(wanted) + u'\n' + text));
    }

    void theIdOfAWalkIsTakenAsWell()
    {
        QCOMPARE(print(m_decidedWalk, QStringLiteral("by_id.pdf")).exit, 0);
        QVERIFY(textOf(QStringLiteral("by_id.pdf")).contains(QStringLiteral("14 July 2026")));
    }

    void readersFindTitleAndAuthor()
    {
        QCOMPARE(print(m_decidedWalk, QStringLiteral("named.pdf")).exit, 0);
        QVERIFY(figureOf(QStringLiteral("named.pdf"), QStringLiteral("Title"))
                    .contains(QStringLiteral("Slough corner")));
        const Ran meta = WalkScene::runProgram(
            QStringLiteral("pdfinfo"), {QStringLiteral("-meta"), pdf(QStringLiteral("named.pdf"))});
        QVERIFY2(meta.out.contains(QStringLiteral("Wren Alder")), qPrintable(meta.out));
    }

    void thePaperIsThatOfTheCountry()
    {
        QCOMPARE(print(m_decidedWalk, QStringLiteral("letter.pdf")).exit, 0);
        QVERIFY(figureOf(QStringLiteral("letter.pdf"), QStringLiteral("Page size"))
                    .contains(QStringLiteral("letter")));
        QCOMPARE(print(m_decidedWalk, QStringLiteral("a4.pdf"), QStringLiteral("en_GB")).exit, 0);
        QVERIFY(
            figureOf(QStringLiteral("a4.pdf"), QStringLiteral("Page size")).contains(QStringLiteral("A4")));
        QCOMPARE(figureOf(QStringLiteral("a4.pdf"), QStringLiteral("Pages")), QStringLiteral("1"));
    }

    void withoutAPlaceItSaysSo()
    {
        QCOMPARE(print(QStringLiteral("No place"), QStringLiteral("no_place.pdf")).exit, 0);
        const QString text = textOf(QStringLiteral("no_place.pdf"));
        QVERIFY2(text.contains(QStringLiteral("No frame knows")), qPrintable(text));
        QVERIFY(text.contains(QStringLiteral("nothing was kept for this one")));
    }

    void howManyPagesItTakes_data()
    {
        QTest::addColumn<QString>("field");
        QTest::addColumn<int>("pages");
        QTest::newRow("no frame") << QStringLiteral("Nothing yet") << 1;
        QTest::newRow("twenty frames") << QStringLiteral("Twenty") << 1;
        QTest::newRow("thirty frames") << QStringLiteral("Thirty") << 2;
        QTest::newRow("a name and a remark beyond measure") << longName() << 2;
        QTest::newRow("ninety frames") << QStringLiteral("Ninety") << 3;
    }

    void howManyPagesItTakes()
    {
        QFETCH(QString, field);
        QFETCH(int, pages);
        const QString name = field.left(12) + QStringLiteral(".pdf");
        QCOMPARE(print(field, name).exit, 0);
        QCOMPARE(figureOf(name, QStringLiteral("Pages")).toInt(), pages);
        staysOnThePage(name);
        const QString text = textOf(name);
        QVERIFY(text.contains(QStringLiteral("A trap catch never decides a spray.")));
        if (pages > 1) QVERIFY2(text.contains(QStringLiteral("All")), qPrintable(text));
    }

    void inFrench()
    {
        QCOMPARE(print(m_decidedWalk, QStringLiteral("french.pdf"), QStringLiteral("fr_CA")).exit, 0);
        const QString text = textOf(QStringLiteral("french.pdf"));
        QVERIFY2(text.contains(QString::fromUtf8("14 juillet 2026")), qPrintable(text));
        QVERIFY(text.contains(QString::fromUtf8("Une capture au piège ne décide jamais")));
    }

    void refusals_data()
    {
        QTest::addColumn<QStringList>("args");
        QTest::addColumn<QString>("said");
        const auto row = [](const char* name, const QStringList& args, const char* said) {
            QTest::newRow(name) << args << QString::fromUtf8(said);
        };
        const QString print = QStringLiteral("--print");
        const QString to = QStringLiteral("--to");
        const QString file = m_scene.path(QStringLiteral("refused.pdf"));
        row("no such field", {print, QStringLiteral("Elm flats"), to, file}, "Elm flats");
        row("no such id", {print, QStringLiteral("01234567-89ab-7def-8123-456789abcdef"), to, file},
            "called");
        row("two fields of one name", {print, QStringLiteral("Twin"), to, file}, "More than one");
        row("a folder that is not there",
            {print, m_decidedWalk, to, m_scene.path(QStringLiteral("nowhere/a.pdf"))}, "cannot be written");
        row("a folder instead of a file", {print, m_decidedWalk, to, m_scene.path(QString())},
            "cannot be written");
        row("no file said", {print, m_decidedWalk}, "--to");
    }

    void refusals()
    {
        QFETCH(QStringList, args);
        QFETCH(QString, said);
        const Ran ran = m_scene.run(args);
        QVERIFY2(isRefusal(ran), qPrintable(ran.out + ran.err + QString::number(ran.exit)));
        QVERIFY2(ran.err.contains(said), qPrintable(ran.err));
        QVERIFY(!QFile::exists(m_scene.path(QStringLiteral("refused.pdf"))));
    }

    void aStoreThatIsNotThereIsNotMade()
    {
        const QString store = m_scene.path(QStringLiteral("other.duskrow"));
        const Ran ran = m_scene.run({QStringLiteral("--print"), QStringLiteral("x"), QStringLiteral("--to"),
                                        m_scene.path(QStringLiteral("x.pdf"))},
            QStringLiteral("en_CA"), QStringLiteral("other.duskrow"));
        QVERIFY2(isRefusal(ran), qPrintable(ran.err));
        QVERIFY(!QFile::exists(store));
    }
};

QTEST_GUILESS_MAIN(PrintTest)
#include "print_test.moc"
