// SPDX-License-Identifier: MIT
#include <QTest>
#include <QXmlStreamReader>

#include <cmath>

#include "formats/geo_uri.h"
#include "formats/gpx.h"

using namespace duskrow::domain;
using namespace duskrow::formats;

namespace {

constexpr auto gpxNamespace = u"http://www.topografix.com/GPX/1/1";

struct ReadPoint {
    QString tag;
    QString lat;
    QString lon;
    QString name;
    QString description;
};

struct ReadFile {
    QStringList elements; // every element in its order
    QList<ReadPoint> points;
    QString version;
    QString error;
};

ReadFile readBack(const std::string& bytes)
{
    ReadFile file;
    QXmlStreamReader reader(QByteArray::fromStdString(bytes));
    while (!reader.atEnd()) {
        if (reader.readNext() != QXmlStreamReader::StartElement) continue;
        const QString tag = reader.name().toString();
        if (reader.namespaceUri() != gpxNamespace) file.error = QStringLiteral("another namespace: ") + tag;
        file.elements << tag;
        const auto attributes = reader.attributes();
        if (tag == QStringLiteral("gpx"))
            file.version = attributes.value(QStringLiteral("version")).toString();
        const bool isPoint = tag == QStringLiteral("wpt") || tag == QStringLiteral("rtept");
        if (isPoint)
            file.points.append({tag, attributes.value(QStringLiteral("lat")).toString(),
                attributes.value(QStringLiteral("lon")).toString(), {}, {}});
        const bool isInPoint = !file.points.isEmpty();
        if (isInPoint && tag == QStringLiteral("name")) file.points.last().name = reader.readElementText();
        if (isInPoint && tag == QStringLiteral("desc"))
            file.points.last().description = reader.readElementText();
    }
    if (reader.hasError()) file.error = reader.errorString();
    return file;
}

const GpxPoint slough{{521'579'020, -1'066'701'580}, "Slough corner", "count due, 8 nights"};

} // namespace

class GpxTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void pointsComeBackAsTheyWere()
    {
        const GpxPoint gate{{-1, 1}, "Far gate"};
        const auto bytes = writeGpx({"Round", "A suggestion", instantFromMs(1'783'400'589'000),
            {slough, gate}, {{"Order", "", {gate, slough}}}});
        const ReadFile file = readBack(*bytes);
        QVERIFY2(file.error.isEmpty(), qPrintable(file.error));
        QCOMPARE(file.version, QStringLiteral("1.1"));
        QCOMPARE(file.points.size(), 4);
        QCOMPARE(file.points[0].lat, QStringLiteral("52.1579020"));
        QCOMPARE(file.points[0].lon, QStringLiteral("-106.6701580"));
        QCOMPARE(file.points[0].description, QStringLiteral("count due, 8 nights"));
        QCOMPARE(file.points[1].lat, QStringLiteral("-0.0000001"));
        QCOMPARE(file.points[1].lon, QStringLiteral("0.0000001"));
        QCOMPARE(file.points[2].tag, QStringLiteral("rtept"));
        QCOMPARE(file.points[2].name, QStringLiteral("Far gate"));
        // The schema lays down the order: metadata, waypoints, routes; inside name, desc, time.
        const QStringList head{QStringLiteral("gpx"), QStringLiteral("metadata"), QStringLiteral("name"),
            QStringLiteral("desc"), QStringLiteral("time"), QStringLiteral("wpt")};
        QCOMPARE(file.elements.mid(0, head.size()), head);
        QVERIFY(
            file.elements.indexOf(QStringLiteral("rte")) > file.elements.lastIndexOf(QStringLiteral("wpt")));
        QVERIFY(bytes->find("<time>2026-07-07T05:03:09Z</time>") != std::string::npos);
    }

    void namesInAnyScript_data()
    {
        QTest::addColumn<QString>("name");
        QTest::newRow("markup") << QStringLiteral("Smith & sons <\"north\"> 'quarter' ]]>");
        QTest::newRow("French") << QString::fromUtf8("L’étang à Hélène");
        QTest::newRow("Cree syllabics") << QString::fromUtf8("ᓀᐦᐃᔭᐍᐏᐣ");
        QTest::newRow("Ukrainian") << QString::fromUtf8("Північне поле");
        QTest::newRow("right to left") << QString::fromUtf8("الحقل الشمالي");
        QTest::newRow("beyond the first plane") << QString::fromUtf8("🦋 trap 𝟜");
        QTest::newRow("a line break") << QStringLiteral("first\nsecond");
    }

    void namesInAnyScript()
    {
        QFETCH(QString, name);
        const auto bytes = writeGpx({{}, {}, {}, {{{1, 2}, name.toStdString()}}, {}});
        const ReadFile file = readBack(*bytes);
        QVERIFY2(file.error.isEmpty(), qPrintable(file.error));
        QCOMPARE(file.points.at(0).name, name);
    }

    void whatXmlCannotHoldIsReplaced()
    {
        const auto bytes = writeGpx({{}, {}, {},
            {{{1, 2},
                std::string("a\x01"
                            "b\xFF"
                            "c\0d",
                    7)}},
            {}});
        const ReadFile file = readBack(*bytes);
        QVERIFY2(file.error.isEmpty(), qPrintable(file.error));
        QCOMPARE(file.points.at(0).name, QString::fromUtf8("a\uFFFDb\uFFFDc\uFFFDd"));
    }

    void anEmptyFileIsStillOne()
    {
        const auto bytes = writeGpx({});
        QCOMPARE(readBack(*bytes).elements, QStringList{QStringLiteral("gpx")});
        QVERIFY(readBack(*bytes).error.isEmpty());
    }

    void longitudesEndBelow180()
    {
        const auto lonOf = [](std::int32_t lonE7) {
            return readBack(*writeGpx({{}, {}, {}, {{{0, lonE7}, "x"}}, {}})).points.at(0).lon;
        };
        QCOMPARE(lonOf(1'800'000'000), QStringLiteral("-180.0000000"));
        QCOMPARE(lonOf(1'799'999'999), QStringLiteral("179.9999999"));
        QCOMPARE(lonOf(-1'800'000'000), QStringLiteral("-180.0000000"));
    }

    void whatIsNoPlaceIsRefused()
    {
        QCOMPARE(writeGpx({{}, {}, {}, {{{900'000'001, 0}, "x"}}, {}}).error().args.at(0),
            std::string("latitude"));
        QCOMPARE(writeGpx({{}, {}, {}, {}, {{"r", "", {{{0, -1'800'000'001}, "x"}}}}}).error().args.at(0),
            std::string("longitude"));
    }

    // RFC 5870, section 6 has the examples geo:13.4125,103.8667 and geo:48.2010,16.3695,183 (from memory).
    void placesAsLinks_data()
    {
        QTest::addColumn<int>("lat");
        QTest::addColumn<int>("lon");
        QTest::addColumn<double>("accuracy");
        QTest::addColumn<QByteArray>("uri");
        QTest::newRow("no zeros at the end")
            << 134'125'000 << 1'038'667'000 << 0.0 << QByteArray("geo:13.4125,103.8667");
        QTest::newRow("with its accuracy, rounded up")
            << 521'579'020 << -1'066'701'580 << 5.2 << QByteArray("geo:52.157902,-106.670158;u=6");
        QTest::newRow("whole degrees") << 520'000'000 << -1'060'000'000 << 0.0 << QByteArray("geo:52,-106");
        QTest::newRow("nothing at all") << 0 << 0 << 0.0 << QByteArray("geo:0,0");
        QTest::newRow("a hair south") << -1 << -10 << 0.0 << QByteArray("geo:-0.0000001,-0.000001");
        QTest::newRow("the pole has no longitude") << 900'000'000 << 123 << 0.0 << QByteArray("geo:90,0");
        QTest::newRow("an accuracy that is none")
            << 10'000'000 << 20'000'000 << std::nan("") << QByteArray("geo:1,2");
    }

    void placesAsLinks()
    {
        QFETCH(int, lat);
        QFETCH(int, lon);
        QFETCH(double, accuracy);
        QFETCH(QByteArray, uri);
        QCOMPARE(QByteArray::fromStdString(geoUri({lat, lon}, Metres{accuracy})), uri);
    }
};

QTEST_APPLESS_MAIN(GpxTest)
#include "gpx_test.moc"
