// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QTest>
#include <QTranslator>

#include "text/amounts.h"

using namespace duskrow::domain;
namespace text = duskrow::text;

class TranslationsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void frenchIsCarriedAndCounts()
    {
        const QLocale french(QLocale::French, QLocale::Canada);
        QTranslator translator;
        QVERIFY(translator.load(
            french, QStringLiteral("duskrow"), QStringLiteral("_"), QStringLiteral(":/translations")));
        QVERIFY(QCoreApplication::installTranslator(&translator));
        QCOMPARE(text::moths(Moths{1}, french), QStringLiteral("1 papillon"));
        QCOMPARE(text::moths(Moths{47}, french), QStringLiteral("47 papillons"));
        QCOMPARE(text::moths(Moths{0}, french), QStringLiteral("0 papillon"));
        QCoreApplication::removeTranslator(&translator);
        QCOMPARE(text::moths(Moths{47}, french), QStringLiteral("47 moths"));
    }
};

QTEST_GUILESS_MAIN(TranslationsTest)
#include "translations_test.moc"
