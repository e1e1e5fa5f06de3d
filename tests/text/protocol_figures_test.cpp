// SPDX-License-Identifier: MIT
#include <QTest>

#include <algorithm>

#include "protocols/protocol_files.h"
#include "text/protocol_figures.h"

using namespace duskrow::domain;
namespace text = duskrow::text;

class ProtocolFiguresTest : public QObject {
    Q_OBJECT

private:
    [[nodiscard]] static std::vector<text::FigureWords> figures(const char* language)
    {
        const auto protocol = duskrow::protocols::loadProtocol(QStringLiteral("bertha-armyworm"));
        return protocol ? text::figuresOf(*protocol, language) : std::vector<text::FigureWords>{};
    }

    [[nodiscard]] static text::FigureWords named(const QString& name)
    {
        const auto all = figures("en");
        const auto found = std::find_if(
            all.begin(), all.end(), [&](const text::FigureWords& figure) { return figure.name == name; });
        return found == all.end() ? text::FigureWords{} : *found;
    }

private Q_SLOTS:
    void initTestCase() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom)); }

    void everyFigureSaysWhereItComesFrom()
    {
        const auto all = figures("en");
        QVERIFY(all.size() > 40);
        for (const text::FigureWords& figure : all) {
            QVERIFY2(!figure.section.isEmpty() && !figure.name.isEmpty(), qPrintable(figure.name));
            QVERIFY2(figure.source.contains(QLatin1Char(' ')), qPrintable(figure.name + figure.source));
        }
    }

    void whatIsCaughtIsNamed()
    {
        const auto midge = duskrow::protocols::loadProtocol(QStringLiteral("wheat-midge"));
        QVERIFY(midge.has_value());
        const auto all = text::figuresOf(*midge, "en");
        QVERIFY(std::any_of(all.begin(), all.end(), [](const text::FigureWords& figure) {
            return figure.name == QStringLiteral("What it catches")
                && figure.value == QStringLiteral("midges");
        }));
        for (const text::FigureWords& figure : all)
            QVERIFY2(!(figure.name + figure.value).contains(QStringLiteral("moth"), Qt::CaseInsensitive),
                qPrintable(figure.name));
    }

    void whatNobodyPublishedHasNoValue()
    {
        int unpublished = 0;
        for (const text::FigureWords& figure : figures("en")) {
            const bool isUnpublished = figure.source == QStringLiteral("nobody has published it");
            QCOMPARE(figure.value.isEmpty(), isUnpublished);
            unpublished += isUnpublished ? 1 : 0;
        }
        QVERIFY(unpublished > 0);
    }

    void figuresInWords_data()
    {
        QTest::addColumn<QString>("value");
        QTest::newRow("A lure lasts") << QStringLiteral("42 days to 56 days");
        QTest::newRow("Entrance above the ground") << QStringLiteral("100 cm");
        QTest::newRow("Traps come down") << QStringLiteral("25 July to 31 July");
        QTest::newRow("Its weeks begin on") << QStringLiteral("Sunday");
        QTest::newRow("Low") << QStringLiteral("0 to under 300 moths");
        QTest::newRow("High") << QStringLiteral("1,200 moths or more");
        QTest::newRow("Base temperature") << QStringLiteral("7 °C");
        QTest::newRow("Frame") << QStringLiteral("0.25 m²");
        QTest::newRow("Crop stage for control") << QStringLiteral("BBCH 67 to BBCH 83");
        QTest::newRow("Years of the trials") << QStringLiteral("1974 to 1975");
        QTest::newRow("In the money of") << QStringLiteral("Canadian dollars");
        QTest::newRow("Look again after") << QStringLiteral("2 days to 3 days");
        QTest::newRow("Crop stage") << QStringLiteral("BBCH 67 to BBCH 83");
    }

    void figuresInWords()
    {
        QFETCH(QString, value);
        QCOMPARE(named(QString::fromUtf8(QTest::currentDataTag())).value, value);
    }

    void theProtocolSpeaksTheReadersLanguage()
    {
        const auto french = figures("fr");
        QVERIFY(std::any_of(french.begin(), french.end(), [](const text::FigureWords& figure) {
            return figure.name.contains(QStringLiteral("bord du champ"));
        }));
    }
};

QTEST_GUILESS_MAIN(ProtocolFiguresTest)
#include "protocol_figures_test.moc"
