// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QTest>
#include <QTranslator>

#include "domain/bulletin_scene.h"
#include "protocols/protocol_files.h"
#include "text/bulletin_text.h"

using namespace duskrow;
using namespace duskrow::domain;

namespace {

Bulletin bulletinOf(FlightPhase phase, int farms = 12)
{
    Bulletin bulletin;
    bulletin.programme = "Valley";
    bulletin.iso = {2026, 28};
    bulletin.week = *weekFromIso(bulletin.iso, std::chrono::Sunday);
    bulletin.bands = fourBands();
    const std::array<const char*, 4> names{"Low", "Uncertain", "Moderate", "High"};
    for (std::size_t i = 0; i < names.size(); ++i) {
        bulletin.bands[i].name = {names.at(i), names.at(i)};
        bulletin.bands[i].meaning.text = {"Meaning.", "Sens."};
    }
    std::vector<WeekReport> reports;
    for (int i = 0; i < farms; ++i) {
        reports.push_back(reported(i, 0, {521, -1067}, 20 + i, 250 + 10 * i));
        reports.back().phase = phase;
    }
    const std::vector<std::string> districts{"North"};
    fillIn(bulletin, reports, districts, areasOf(reports));
    return bulletin;
}

QString joined(const std::vector<std::string>& texts)
{
    QString all;
    for (const std::string& one : texts) all += QString::fromStdString(one) + u'\n';
    return all;
}

} // namespace

class BulletinTextTest : public QObject {
    Q_OBJECT

    Protocol m_protocol;

private Q_SLOTS:
    void initTestCase()
    {
        auto protocol = protocols::loadProtocol(QStringLiteral("bertha-armyworm"));
        QVERIFY(protocol);
        m_protocol = std::move(*protocol);
        QLocale::setDefault(QLocale(QLocale::English, QLocale::Canada));
    }

    void theWeekIsToldInPlainWords()
    {
        const auto words = text::bulletinWords(bulletinOf(FlightPhase::Rising), m_protocol);
        QCOMPARE(words.title, std::string("Bertha armyworm: week 28 of 2026"));
        const QString all = joined(words.paragraphs);
        for (const char* said :
            {"12 of 12 traps were counted this week.", "about 25 moths in seven nights", "about 310 moths",
                "The 12 traps counted in full this week, by the band reached so far: low 5, uncertain 7, "
                "moderate none, high none.",
                "North has the highest median so far", "“uncertain”, in North", "The flight is rising"})
            QVERIFY2(
                all.contains(QString::fromUtf8(said)), qPrintable(QString::fromUtf8(said) + u'\n' + all));
        QCOMPARE(words.districts.size(), std::size_t{2});
        QCOMPARE(words.districts[1].cells[0], std::string("12 of 12"));
    }

    // A district that is held back may be the one where most were caught.
    void whatIsHeldBackIsSaid()
    {
        Bulletin bulletin = bulletinOf(FlightPhase::Rising);
        const QString said = QStringLiteral("Districts whose figures are held back may stand higher.");
        QVERIFY(!joined(text::bulletinWords(bulletin, m_protocol).paragraphs).contains(said));
        bulletin.districts.push_back({"South", std::nullopt});
        const auto words = text::bulletinWords(bulletin, m_protocol);
        QVERIFY(joined(words.paragraphs).contains(said));
        QCOMPARE(
            words.districts.back().reason, std::string("held back, so that no farm can be told from it"));
    }

    void nothingCaughtIsNoNumber()
    {
        Bulletin bulletin = bulletinOf(FlightPhase::Rising);
        bulletin.whole->weekMedian = Moths{0};
        bulletin.whole->seasonMedian = Moths{0};
        const auto words = text::bulletinWords(bulletin, m_protocol);
        const QString all = joined(words.paragraphs);
        QVERIFY2(all.contains(QStringLiteral("So far this season the median trap has caught none.")),
            qPrintable(all));
        QVERIFY(!all.contains(QStringLiteral("about 0")));
        QCOMPARE(words.summary,
            std::string("12 of 12 traps counted; the median trap caught none this week and none so far."));
    }

    void whatABandMeansWaitsForMostOfTheFlight()
    {
        const auto early = text::bulletinWords(bulletinOf(FlightPhase::Rising), m_protocol);
        QVERIFY(!joined(early.toDo).contains(QStringLiteral("Meaning.")));
        const auto late = text::bulletinWords(bulletinOf(FlightPhase::PastHighest), m_protocol);
        QVERIFY(joined(late.toDo).contains(QStringLiteral("Meaning.")));
    }

    // Moths never tell anybody to spray, whatever was caught.
    void nobodyIsToldToSpray()
    {
        for (const FlightPhase phase : {FlightPhase::NotKnown, FlightPhase::NoneYet, FlightPhase::Rising,
                 FlightPhase::NearHighest, FlightPhase::PastHighest}) {
            const auto words = text::bulletinWords(bulletinOf(phase), m_protocol);
            const QString said = joined(words.paragraphs) + joined(words.toDo);
            for (const char* never : {"spray", "insecticide", "treat", "control"})
                QVERIFY2(!said.contains(QString::fromUtf8(never), Qt::CaseInsensitive), qPrintable(said));
            QVERIFY(joined(words.cautions).contains(QStringLiteral("A trap catch never decides a spray.")));
            QVERIFY(joined(words.cautions).contains(QStringLiteral("licensed adviser")));
        }
    }

    void withFourFarmsOnlyThatIsSaid()
    {
        const auto words = text::bulletinWords(bulletinOf(FlightPhase::Rising, 4), m_protocol);
        QCOMPARE(words.paragraphs.size(), std::size_t{1});
        QVERIFY(words.toDo.empty());
        QVERIFY(words.districts[0].cells.empty() && !words.districts[0].reason.empty());
    }

    void groupsHaveNames_data()
    {
        QTest::addColumn<int>("lowest");
        QTest::addColumn<int>("highest");
        QTest::addColumn<QString>("name");
        QTest::newRow("one band") << 2 << 2 << QStringLiteral("uncertain");
        QTest::newRow("up to the top") << 2 << 4 << QStringLiteral("uncertain or higher");
        QTest::newRow("in between") << 2 << 3 << QStringLiteral("uncertain to moderate");
        QTest::newRow("all") << 1 << 4 << QStringLiteral("low to high");
    }

    void groupsHaveNames()
    {
        QFETCH(int, lowest);
        QFETCH(int, highest);
        const Bulletin bulletin = bulletinOf(FlightPhase::Rising);
        QTEST(text::bandGroupName({lowest, highest, 5}, bulletin.bands, QLocale()), "name");
    }

    void ownTextIsParagraphs()
    {
        const auto paragraphs =
            text::ownParagraphs(QStringLiteral("One\ntwo.\r\n\r\n\r\n<b>\x01three</b>\n\n \n"));
        QCOMPARE(paragraphs, (std::vector<std::string>{"One two.", "<b>three</b>"}));
        QCOMPARE(text::ownParagraphs(QStringLiteral("a\n\n").repeated(100)).size(), std::size_t{40});
    }

    void frenchIsCarried()
    {
        const QLocale french(QLocale::French, QLocale::Canada);
        QTranslator translator;
        QVERIFY(translator.load(
            french, QStringLiteral("duskrow"), QStringLiteral("_"), QStringLiteral(":/translations")));
        QVERIFY(QCoreApplication::installTranslator(&translator));
        const auto words = text::bulletinWords(bulletinOf(FlightPhase::NearHighest), m_protocol, french);
        QCoreApplication::removeTranslator(&translator);
        const QString all = joined(words.paragraphs) + joined(words.toDo) + joined(words.cautions)
            + joined(words.privacy) + joined(words.columns);
        for (const char* said : {"12 pièges sur 12 ont été relevés cette semaine.", "environ 25 papillons",
                 "près de son maximum", "conseiller agréé", "au moins 5 fermes"})
            QVERIFY2(all.contains(QString::fromUtf8(said)), qPrintable(all));
        for (const char* english : {" the ", " moths", " week", " farms"})
            QVERIFY2(!all.contains(QString::fromUtf8(english)), qPrintable(all));
    }
};

QTEST_GUILESS_MAIN(BulletinTextTest)
#include "bulletin_text_test.moc"
