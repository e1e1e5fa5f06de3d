// SPDX-License-Identifier: MIT
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>
#include <QXmlStreamReader>

#include "formats/bulletin/area_features.h"
#include "formats/bulletin/area_table.h"
#include "formats/bulletin/atom.h"
#include "formats/bulletin/darwin_core.h"
#include "formats/bulletin/page.h"
#include "formats/bulletin/page_style.h"
#include "formats/bulletin_scene.h"
#include "formats/csv_reader.h"

using namespace duskrow;
using namespace duskrow::domain;
using namespace duskrow::tests;

namespace {

// A square around the cell of the scene, running the wrong way, and a hole running the wrong way as well.
const char* const overlayText = R"({"type":"FeatureCollection","features":[
 {"type":"Feature","properties":{"NAME":"valley"},"geometry":{"type":"Polygon","coordinates":[
  [[-106.8,52.0],[-106.8,52.3],[-106.4,52.3],[-106.4,52.0],[-106.8,52.0]],
  [[-106.5,52.05],[-106.45,52.05],[-106.45,52.1],[-106.5,52.1],[-106.5,52.05]]]}},
 {"type":"Feature","properties":{"name":"Hidden"},"geometry":{"type":"MultiPolygon","coordinates":[
  [[[-106.0,53.0],[-105.9,53.0],[-105.9,53.123456789],[-106.0,53.0]]]]}},
 {"type":"Feature","properties":null,"geometry":{"type":"LineString","coordinates":[[-106.7,52.1],[-106.5,52.2]]}},
 {"type":"Feature","properties":{},"geometry":null}]})";

struct Scene {
    explicit Scene(const std::string& name = "Valley")
        : bulletin(someBulletin(name)), words(someWords(bulletin)),
          overlay(*formats::readOverlay(overlayText)), document{bulletin, words, &overlay,
                                                           instantFromMs(1'783'958'400'000),
                                                           formats::OccurrenceTerms::Detected, "key"}
    {
    }
    Bulletin bulletin;
    text::BulletinWords words;
    formats::Overlay overlay;
    formats::BulletinDocument document;
};

// What libxml2 says of a file that is to be well-formed.
QString complaintsOf(const QTemporaryDir& folder, const char* name, const std::string& bytes)
{
    QFile file(folder.filePath(QString::fromUtf8(name)));
    if (!file.open(QIODevice::WriteOnly)) return QStringLiteral("unwritable");
    file.write(bytes.data(), static_cast<qint64>(bytes.size()));
    file.close();
    QProcess lint;
    lint.start(
        QStringLiteral("xmllint"), {QStringLiteral("--noout"), QStringLiteral("--nonet"), file.fileName()});
    if (!lint.waitForFinished()) return QStringLiteral("xmllint is missing");
    return lint.exitCode() == 0 ? QString() : QString::fromUtf8(lint.readAllStandardError());
}

double turning(const QJsonArray& ring)
{
    double sum = 0;
    for (qsizetype i = 0; i + 1 < ring.size(); ++i) {
        const QJsonArray a = ring[i].toArray();
        const QJsonArray b = ring[i + 1].toArray();
        sum += a[0].toDouble() * b[1].toDouble() - b[0].toDouble() * a[1].toDouble();
    }
    return sum;
}

QStringList elementsOf(const std::string& xml)
{
    QStringList names;
    QXmlStreamReader reader(QByteArray::fromStdString(xml));
    while (!reader.atEnd())
        if (reader.readNext() == QXmlStreamReader::StartElement) names << reader.name().toString();
    return names;
}

} // namespace

class BulletinFormatsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void thePageIsWellFormedAndClosed()
    {
        const Scene scene;
        const QTemporaryDir folder;
        const std::string page = formats::bulletinPage(scene.document);
        QCOMPARE(complaintsOf(folder, "page.html", page), QString());
        const QByteArray bytes = QByteArray::fromStdString(page);
        for (const char* never : {"<script", "javascript:", " onload", " style=", "<img", "<iframe",
                 "src=", "@import", "url(http"})
            QVERIFY2(!bytes.contains(never), never);
        QVERIFY(bytes.contains("default-src &#39;none&#39;"));
        QCOMPARE(bytes.count("<title id="), 2);
        QCOMPARE(bytes.count("<desc id="), 2);
        QVERIFY(bytes.contains("prefers-color-scheme:dark"));
        QVERIFY(bytes.contains("@media print"));
        QVERIFY(bytes.count("<table") >= 3);
        // Every address is one of its own files, or names a language of marks.
        for (qsizetype at = bytes.indexOf("http"); at >= 0; at = bytes.indexOf("http", at + 4))
            QVERIFY2(bytes.mid(at).startsWith("http-equiv") || bytes.mid(at).startsWith("http://www.w3.org/"),
                bytes.mid(at, 60).constData());
    }

    void manyCellsStayClosed_data()
    {
        QTest::addColumn<int>("cells");
        QTest::addColumn<bool>("isClosed");
        QTest::newRow("a dozen stands open") << 12 << false;
        QTest::newRow("more stay closed until somebody opens them") << 13 << true;
    }

    void manyCellsStayClosed()
    {
        QFETCH(const int, cells);
        QFETCH(const bool, isClosed);
        Scene scene;
        scene.words.cells.assign(static_cast<std::size_t>(cells), {"52.15", {"Low", "High"}, {}});
        const QTemporaryDir folder;
        const std::string page = formats::bulletinPage(scene.document);
        QCOMPARE(complaintsOf(folder, "page.html", page), QString());
        const QByteArray bytes = QByteArray::fromStdString(page);
        QCOMPARE(bytes.contains("<details>"), isClosed);
        const qsizetype from = isClosed ? bytes.indexOf("<details>") : 0;
        const qsizetype to = isClosed ? bytes.indexOf("</details>") : bytes.size();
        QCOMPARE(bytes.mid(from, to - from).count(">52.15<"), cells);
        QCOMPARE(bytes.count(">52.15<"), cells);
    }

    void thePolicyIsOfTheStyleThatStandsThere()
    {
        const std::string style = "a{color:red}";
        // printf 'a{color:red}' | openssl dgst -sha256 -binary | base64
        QProcess hash;
        hash.start(QStringLiteral("sh"),
            {QStringLiteral("-c"),
                QStringLiteral("printf 'a{color:red}' | openssl dgst -sha256 -binary | base64")});
        QVERIFY(hash.waitForFinished());
        QCOMPARE(QString::fromStdString(formats::pagePolicy(style)),
            QStringLiteral("default-src 'none'; style-src 'sha256-%1'; base-uri 'none'; form-action 'none'")
                .arg(QString::fromUtf8(hash.readAllStandardOutput().trimmed())));
        const Scene scene;
        const QByteArray page = QByteArray::fromStdString(formats::bulletinPage(scene.document));
        const qsizetype from = page.indexOf("<style>") + 7;
        const std::string inPage = page.mid(from, page.indexOf("</style>") - from).toStdString();
        QCOMPARE(inPage, formats::pageStyle());
    }

    void hostileNamesStayText()
    {
        const Scene plain;
        const Scene hostile(hostileName);
        const QTemporaryDir folder;
        const std::string page = formats::bulletinPage(hostile.document);
        QCOMPARE(complaintsOf(folder, "page.html", page), QString());
        QVERIFY(!QByteArray::fromStdString(page).contains("<script"));
        QVERIFY(!QByteArray::fromStdString(page).contains('\x01'));
        formats::Feed feed{hostileName, hostileName, "en", hostileName,
            {{{2026, 28}, hostileName, hostileName, hostileName, hostileName, {}, {}}}};
        const std::string atom = formats::writeAtom(feed);
        QCOMPARE(complaintsOf(folder, "feed.atom", atom), QString());
        feed = {"x", "x", "en", "x", {{{2026, 28}, "x", "x", "x", "x", {}, {}}}};
        QCOMPARE(elementsOf(atom), elementsOf(formats::writeAtom(feed)));
        const auto files = formats::darwinCoreFiles(hostile.document);
        const auto plainFiles = formats::darwinCoreFiles(plain.document);
        QVERIFY(files && plainFiles);
        for (const std::size_t i : {2U, 3U}) {
            QCOMPARE(complaintsOf(folder, "one.xml", (*files)[i].bytes), QString());
            QCOMPARE(elementsOf((*files)[i].bytes), elementsOf((*plainFiles)[i].bytes));
        }
        const auto csv = formats::writeCsv(formats::areaTable(hostile.document));
        QVERIFY(csv);
        for (const std::string* bytes : {&*csv, &(*files)[0].bytes}) {
            const QByteArray table = QByteArray::fromStdString(*bytes);
            QVERIFY(table.contains("'=cmd"));
            QVERIFY(!table.contains(",=") && !table.contains("\n=") && !table.contains("\"="));
        }
        const auto json =
            QJsonDocument::fromJson(QByteArray::fromStdString(formats::areaFeatures(hostile.document)));
        const auto name =
            json[QStringLiteral("features")][0][QStringLiteral("properties")][QStringLiteral("name")];
        QCOMPARE(name.toString(), QString::fromUtf8(hostileName));
    }

    void featuresFollowTheStandard()
    {
        const Scene scene;
        const QByteArray bytes = QByteArray::fromStdString(formats::areaFeatures(scene.document));
        const QJsonObject json = QJsonDocument::fromJson(bytes).object();
        QCOMPARE(json[QStringLiteral("type")].toString(), QStringLiteral("FeatureCollection"));
        QVERIFY(!json.contains(QStringLiteral("crs")));
        const QJsonArray features = json[QStringLiteral("features")].toArray();
        QCOMPARE(features.size(), 5); // four districts and one cell
        int polygons = 0;
        for (const auto& value : features) {
            const QJsonObject geometry = value.toObject()[QStringLiteral("geometry")].toObject();
            if (geometry[QStringLiteral("type")].toString() != QLatin1String("Polygon")) continue;
            ++polygons;
            const QJsonArray rings = geometry[QStringLiteral("coordinates")].toArray();
            for (qsizetype i = 0; i < rings.size(); ++i) {
                QCOMPARE(turning(rings[i].toArray()) > 0, i == 0);
                QCOMPARE(rings[i].toArray().first(), rings[i].toArray().last());
            }
        }
        QCOMPARE(polygons, 3);
        QVERIFY(!bytes.contains("53.1234567"));
        QVERIFY(bytes.contains("53.123457"));
        const QJsonArray box = json[QStringLiteral("bbox")].toArray();
        QCOMPARE(box, (QJsonArray{-106.8, 52.0, -105.9, 53.123457}));
        QVERIFY(features[1].toObject()[QStringLiteral("geometry")].isNull()); // nobody gave its boundary
        const QJsonObject hidden = features[2].toObject()[QStringLiteral("properties")].toObject();
        QVERIFY(!hidden[QStringLiteral("is_published")].toBool());
        QVERIFY(!hidden.contains(QStringLiteral("week_median_moths")));
        const QJsonObject cell = features[4].toObject()[QStringLiteral("properties")].toObject();
        QCOMPARE(cell[QStringLiteral("coordinateUncertaintyInMeters")].toInt(), 6600);
        QVERIFY(!cell.contains(QStringLiteral("traps_counted")));
    }

    void gdalOpensTheFeatures()
    {
        const Scene scene;
        const QTemporaryDir folder;
        QFile file(folder.filePath(QStringLiteral("areas.geojson")));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(QByteArray::fromStdString(formats::areaFeatures(scene.document)));
        file.close();
        QProcess info;
        info.start(
            QStringLiteral("ogrinfo"), {QStringLiteral("-al"), QStringLiteral("-so"), file.fileName()});
        QVERIFY2(info.waitForFinished(), "ogrinfo is missing: gdal-bin");
        const QString out = QString::fromUtf8(info.readAllStandardOutput());
        QCOMPARE(info.exitCode(), 0);
        QVERIFY2(out.contains(QStringLiteral("Feature Count: 5")), qPrintable(out));
        QVERIFY2(out.contains(QStringLiteral("WGS 84")), qPrintable(out));
        QCOMPARE(QString::fromUtf8(info.readAllStandardError()), QString());
    }

    void theArchiveHoldsWhatItsMetaSays()
    {
        Scene scene;
        const QTemporaryDir folder;
        const auto archive = formats::darwinCoreArchive(scene.document);
        QVERIFY(archive);
        QFile file(folder.filePath(QStringLiteral("a.zip")));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(archive->data(), static_cast<qint64>(archive->size()));
        file.close();
        QProcess unzip;
        unzip.setWorkingDirectory(folder.path());
        unzip.start(QStringLiteral("unzip"), {QStringLiteral("-q"), file.fileName()});
        QVERIFY(unzip.waitForFinished());
        QCOMPARE(unzip.exitCode(), 0);
        QFile meta(folder.filePath(QStringLiteral("meta.xml")));
        QVERIFY(meta.open(QIODevice::ReadOnly));
        QXmlStreamReader reader(&meta);
        QString element;
        int tables = 0;
        QMap<int, QString> fields;
        const auto check = [&](const QString& name) {
            QFile table(folder.filePath(name));
            QVERIFY(table.open(QIODevice::ReadOnly));
            const QList<QByteArray> head = table.readLine().trimmed().split(',');
            QCOMPARE(head.size(), fields.size() + 1);
            for (auto it = fields.cbegin(); it != fields.cend(); ++it)
                QCOMPARE(it.value().section(u'/', -1), QString::fromUtf8(head[it.key()]));
            ++tables;
        };
        while (!reader.atEnd()) {
            reader.readNext();
            if (reader.isStartElement() && reader.name() == QLatin1String("location"))
                element = reader.readElementText();
            if (reader.isStartElement() && reader.name() == QLatin1String("field"))
                fields[reader.attributes().value(QLatin1String("index")).toInt()] =
                    reader.attributes().value(QLatin1String("term")).toString();
            if (reader.isEndElement()
                && (reader.name() == QLatin1String("core") || reader.name() == QLatin1String("extension"))) {
                check(element);
                fields.clear();
            }
        }
        QVERIFY(!reader.hasError());
        QCOMPARE(tables, 2);
        QVERIFY(QFile::exists(folder.filePath(QStringLiteral("eml.xml"))));
        QCOMPARE(*formats::darwinCoreArchive(scene.document), *archive); // the same bytes every time
    }

    void absenceIsAnEvent_data()
    {
        QTest::addColumn<int>("terms");
        QTest::addColumn<QByteArray>("found");
        QTest::addColumn<QByteArray>("none");
        QTest::newRow("as recommended now")
            << 0 << QByteArray(",detected,") << QByteArray(",notDetected,0,,");
        QTest::newRow("as before") << 1 << QByteArray(",present,") << QByteArray(",absent,0,,");
    }

    void absenceIsAnEvent()
    {
        QFETCH(int, terms);
        QFETCH(QByteArray, found);
        QFETCH(QByteArray, none);
        Scene scene;
        scene.document.terms = static_cast<formats::OccurrenceTerms>(terms);
        const auto files = formats::darwinCoreFiles(scene.document);
        QVERIFY(files);
        const QByteArray events = QByteArray::fromStdString((*files)[0].bytes);
        const QByteArray occurrences = QByteArray::fromStdString((*files)[1].bytes);
        QCOMPARE(events.count("urn:uuid:"), 3); // two districts and a cell
        QVERIFY(!events.contains("Hidden") && !events.contains("Lower")); // which is silent beside it
        QCOMPARE(occurrences.count(found), 2);
        QCOMPARE(occurrences.count(none), 1);
        QVERIFY(events.contains("2026-07-05/2026-07-11"));
        QVERIFY(events.contains(",52.15,-106.65,EPSG:4326,6600,"));
    }

    void overlaysThatAreNotOnes_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<bool>("isRead");
        const auto row = [](const char* claim, const QByteArray& text, bool isRead) {
            QTest::newRow(claim) << text << isRead;
        };
        row("as it should be", overlayText, true);
        row("empty", "", false);
        row("cut", QByteArray(overlayText).left(300), false);
        row("no GeoJSON", "{\"type\":\"Topology\"}", false);
        row("a ring that is open", R"({"type":"Polygon","coordinates":[[[0,0],[1,0],[1,1],[0,1]]]})", false);
        row("a ring of three", R"({"type":"Polygon","coordinates":[[[0,0],[1,0],[0,0]]]})", false);
        row("beyond the earth", R"({"type":"Polygon","coordinates":[[[0,0],[1,0],[1,999],[0,0]]]})", false);
        row("words for numbers", R"({"type":"Polygon","coordinates":[[["a",0],[1,0],[1,1],["a",0]]]})",
            false);
        row("a polygon without rings", R"({"type":"Polygon","coordinates":[]})", false);
        row("nested without end", QByteArray(5000, '['), false);
        row("a point is passed over", R"({"type":"Point","coordinates":[0,0]})", true);
        row("with a mark in front", "\xEF\xBB\xBF" + QByteArray(overlayText), true);
    }

    void overlaysThatAreNotOnes()
    {
        QFETCH(QByteArray, text);
        QTEST(formats::readOverlay(text.toStdString()).has_value(), "isRead");
    }

    void theMapSaysNothingByColourAlone()
    {
        const Scene scene;
        const formats::Picture map = formats::mapOf(scene.document, 460);
        QVERIFY(map.height > 200);
        int dots = 0;
        int hatched = 0;
        QStringList words;
        for (const formats::Primitive& one : map.primitives) {
            if (std::holds_alternative<formats::Mark>(one)) ++dots;
            if (const auto* area = std::get_if<formats::Area>(&one))
                hatched += area->fill == formats::Fill::Hatched ? 1 : 0;
            if (const auto* label = std::get_if<formats::Words>(&one))
                words << QString::fromStdString(label->text);
        }
        QVERIFY(dots >= 10 + 2 + 2); // the key, the district and its cell
        QCOMPARE(hatched, 1); // the hidden district
        QVERIFY(words.contains(QStringLiteral("N")));
        QVERIFY(words.join(u' ').contains(QStringLiteral(" km")));
        QVERIFY(words.join(u' ').contains(QStringLiteral("°")));
        QVERIFY(words.contains(QStringLiteral("unknown")));
    }
};

QTEST_GUILESS_MAIN(BulletinFormatsTest)
#include "bulletin_test.moc"
