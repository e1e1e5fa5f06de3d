// SPDX-License-Identifier: MIT
#include <QTest>
#include <QTextBoundaryFinder>

#include "text/unbroken.h"

namespace text = duskrow::text;

namespace {

// The pieces that lines may be made of.
QStringList piecesOf(const QString& words)
{
    QStringList pieces;
    QTextBoundaryFinder ends(QTextBoundaryFinder::Line, words);
    for (qsizetype from = 0, at = ends.toNextBoundary(); at > 0; from = at, at = ends.toNextBoundary())
        pieces << text::withoutJoiners(words.mid(from, at - from)).trimmed();
    return pieces;
}

} // namespace

class UnbrokenTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void pieces_data()
    {
        QTest::addColumn<QString>("words");
        QTest::addColumn<QStringList>("pieces");
        const auto row = [](const char* claim, const char* words, const char* pieces) {
            QTest::newRow(claim) << QString::fromUtf8(words) << QString::fromUtf8(pieces).split(u'|');
        };
        row("a density", "20.7 larvae/m²", "20.7|larvae/m²");
        row("money", "12 CAD/ac ÷ 10", "12|CAD/ac|÷|10");
        row("two strokes in one word", "a/b/c d", "a/b/c|d");
        row("a day of numbers", "14/07 or so", "14/07|or|so");
        row("at the end", "a larva/", "a|larva/");
        row("nothing", "", "");
    }

    void pieces()
    {
        QFETCH(QString, words);
        QFETCH(QStringList, pieces);
        const QString joined = text::unbroken(words);
        if (!words.isEmpty()) QCOMPARE(piecesOf(joined), pieces);
        QCOMPARE(text::withoutJoiners(joined), words);
        QCOMPARE(text::unbroken(joined), joined);
    }

    // What the marks are for; if this fails they can go.
    void withoutThemAUnitIsBroken() { QCOMPARE(piecesOf(QString::fromUtf8("20.7 larvae/m²")).size(), 3); }
};

QTEST_APPLESS_MAIN(UnbrokenTest)
#include "unbroken_test.moc"
