// SPDX-License-Identifier: MIT
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

#include "app/print/thank_you_printer.h"
#include "app/written_file.h"

using namespace duskrow;
using namespace duskrow::domain;
using namespace std::chrono;

// A thank-you sheet as words and as a PDF, which is read back by pdftotext and pdfinfo.
class ThankYouTest : public QObject {
    Q_OBJECT

private:
    QTemporaryDir m_folder;

    static text::ThankYou thanks(int traps)
    {
        text::ThankYou thanks{.name = QStringLiteral("Zoë Ålund")};
        for (int i = 1; i <= traps; ++i) {
            text::ThankYouTrap trap{.title = QStringLiteral("Field %1 · bertha %1").arg(i)};
            trap.visits = 4;
            trap.caught = Moths{100 + i};
            trap.isMinimum = i == 2;
            if (i == 1) trap.band = QStringLiteral("Low");
            thanks.traps.push_back(trap);
        }
        thanks.days = {LocalDay{2026y / June / 15}, LocalDay{2026y / August / 2}};
        thanks.everybodysVisits = 812;
        thanks.people = 31;
        return thanks;
    }

    static text::ThankYouSheet sheet(int traps)
    {
        return text::thankYouSheet(thanks(traps),
            {QStringLiteral("Slough district"), true, 2026, QStringLiteral("Wren, coordinator")});
    }

    QString read(const QString& program, const QStringList& arguments) const
    {
        QProcess process;
        process.start(program, arguments);
        process.waitForFinished();
        return QString::fromUtf8(process.readAllStandardOutput()).simplified();
    }

private Q_SLOTS:
    void asWords()
    {
        const QString words = text::asText(sheet(2));
        QVERIFY2(
            words.startsWith(QStringLiteral("Thank you, Zoë Ålund\nSlough district · 2026 · invented\n")),
            qPrintable(words));
        QVERIFY2(
            words.contains(QStringLiteral("That took 8 visits, from 15 Jun to 2 Aug.")), qPrintable(words));
        QVERIFY(words.contains(QStringLiteral("the 812 visits by which 31 people together")));
        QVERIFY(words.contains(QStringLiteral("Field 1 · bertha 1: 4 visits, 101 moths, Low")));
        QVERIFY(words.contains(QStringLiteral("Field 2 · bertha 2: 4 visits, at least 102")));
        QVERIFY(words.contains(QStringLiteral("by the label, by local rules and with a licensed adviser")));
    }

    void whoeverNeverCameIsThankedForTheTrap()
    {
        text::ThankYou quiet = thanks(1);
        quiet.traps.front().visits = 0;
        quiet.days = {};
        const QString words = text::asText(text::thankYouSheet(quiet, {}));
        QVERIFY(words.contains(QStringLiteral("you kept one trap")));
        QVERIFY(!words.contains(QStringLiteral("took")) && !words.contains(QStringLiteral("They are part")));
    }

    void asAPage_data()
    {
        QTest::addColumn<int>("traps");
        QTest::addColumn<int>("pages");
        QTest::newRow("one trap") << 1 << 1;
        QTest::newRow("a dozen") << 12 << 1;
        QTest::newRow("more than a page holds") << 70 << 3;
    }

    void asAPage()
    {
        QFETCH(int, traps);
        QFETCH(int, pages);
        const QString path = m_folder.filePath(QStringLiteral("%1.pdf").arg(traps));
        const QByteArray pdf = app::printedThanks(
            sheet(traps), QStringLiteral("Wren, coordinator"), QPageSize(QPageSize::Letter));
        QVERIFY(app::writeFile(path, pdf));
        const QString info = read(QStringLiteral("pdfinfo"), {path});
        QVERIFY2(info.contains(QStringLiteral("Pages: %1 ").arg(pages)), qPrintable(info));
        const QString words =
            read(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
        QVERIFY2(words.contains(QStringLiteral("Thank you, Zoë Ålund")), qPrintable(words));
        for (int i = 1; i <= traps; ++i)
            QVERIFY2(words.contains(QStringLiteral("Field %1 · bertha %1 4").arg(i)), qPrintable(words));
        QVERIFY2(words.endsWith(QStringLiteral("Wren, coordinator")), qPrintable(words));
    }
};

QTEST_MAIN(ThankYouTest)
#include "thank_you_test.moc"
