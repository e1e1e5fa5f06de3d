// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTest>
#include <QTranslator>
#include <QXmlStreamReader>

#include <set>

#include "text/amounts.h"

using namespace duskrow::domain;
namespace text = duskrow::text;

namespace {

std::set<QString> placeholders(const QString& words)
{
    static const QRegularExpression pattern(QStringLiteral("%[0-9nL]+"));
    std::set<QString> found;
    auto matches = pattern.globalMatch(words);
    while (matches.hasNext()) found.insert(matches.next().captured());
    return found;
}

struct Entry {
    QString source;
    QStringList translations; // one, or each plural form
};

std::vector<Entry> entriesOf(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return {};
    QXmlStreamReader reader(&file);
    std::vector<Entry> entries;
    bool hasForms = false;
    while (!reader.atEnd()) {
        reader.readNext();
        if (!reader.isStartElement()) continue;
        const auto name = reader.name();
        if (name == QLatin1String("message"))
            hasForms = reader.attributes().value(QLatin1String("numerus")) == QLatin1String("yes");
        else if (name == QLatin1String("source"))
            entries.push_back({reader.readElementText(), {}});
        else if (name == QLatin1String(hasForms ? "numerusform" : "translation"))
            entries.back().translations << reader.readElementText();
    }
    for (Entry& entry : entries) entry.translations.removeAll(QString());
    return entries;
}

} // namespace

class TranslationsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aTranslationNamesTheSameThings_data()
    {
        QTest::addColumn<QString>("path");
        const QDir folder(QStringLiteral(DUSKROW_SOURCE_DIR "/assets/translations"));
        const QStringList files = folder.entryList({QStringLiteral("*.ts")});
        QVERIFY(!files.isEmpty());
        for (const QString& file : files) QTest::newRow(qPrintable(file)) << folder.filePath(file);
    }

    void aTranslationNamesTheSameThings()
    {
        QFETCH(QString, path);
        const auto entries = entriesOf(path);
        QVERIFY(entries.size() > 300);
        int translated = 0;
        for (const Entry& entry : entries)
            for (const QString& words : entry.translations) {
                ++translated;
                QVERIFY2(placeholders(words) == placeholders(entry.source),
                    qPrintable(entry.source + QStringLiteral(" -> ") + words));
            }
        QVERIFY2(translated > 300, qPrintable(QString::number(translated)));
    }

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
