// SPDX-License-Identifier: MIT
#include <QTest>
#include <QXmlStreamReader>

#include "formats/season_chart.h"
#include "formats/svg.h"
#include "formats/utf8.h"

using namespace duskrow::formats;

namespace {

struct ReadBack {
    QByteArrayList elements;
    QByteArrayList texts;
    QList<QXmlStreamAttributes> attributes;
    QString error;
};

ReadBack readBack(const std::string& svg)
{
    ReadBack back;
    QXmlStreamReader reader(QByteArray::fromStdString(svg));
    while (!reader.atEnd()) {
        reader.readNext();
        if (reader.isStartElement()) {
            back.elements << reader.name().toUtf8();
            back.attributes << reader.attributes();
        }
        if (reader.isCharacters() && !reader.isWhitespace()) back.texts << reader.text().toUtf8();
    }
    if (reader.hasError()) back.error = reader.errorString();
    return back;
}

Picture sample()
{
    Picture picture{200, 100, "Trap <1> & \"2\"", "So far 'many'"};
    picture.primitives = {Line{{{0, 0}, {10.126, 5}}, Ink::Curve, 2, true},
        Area{{{0, 0}, {10, 0}, {5, 8}}, Ink::Unknown, Fill::Hatched, 0.5}, Bar{{5, 5, 25, 45}, Ink::Band1},
        Mark{{50, 50}, MarkShape::Circle, 8, Ink::Accent, true}, Mark{{60, 50}, MarkShape::Diamond, 8},
        Words{"a < b && c > d", {10, 90}, Anchor::End, 14, 600, Ink::Full, -90}};
    return picture;
}

} // namespace

class SvgTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aPictureIsOneWellFormedDocument()
    {
        const ReadBack back = readBack(writeSvg(sample(), {}));
        QCOMPARE(back.error, QString());
        const QByteArrayList elements{"svg", "title", "desc", "defs", "pattern", "line", "polyline",
            "polygon", "rect", "circle", "polygon", "text"};
        QCOMPARE(back.elements, elements);
        const QByteArrayList texts{"Trap <1> & \"2\"", "So far 'many'", "a < b && c > d"};
        QCOMPARE(back.texts, texts);
        QCOMPARE(back.attributes.at(6).value(QStringLiteral("points")), QStringLiteral("0,0 10.13,5"));
        QVERIFY(back.attributes.at(6).hasAttribute(QStringLiteral("stroke-dasharray")));
        QCOMPARE(back.attributes.at(8).value(QStringLiteral("width")), QStringLiteral("20"));
        QCOMPARE(
            back.attributes.at(11).value(QStringLiteral("transform")), QStringLiteral("rotate(-90 10 90)"));
        QCOMPARE(back.attributes.at(11).value(QStringLiteral("text-anchor")), QStringLiteral("end"));
    }

    void coloursFollowTheLight()
    {
        const auto fillOf = [](Light light) {
            SvgStyle style;
            style.light = light;
            return readBack(writeSvg(sample(), style))
                .attributes.at(11)
                .value(QStringLiteral("fill"))
                .toString();
        };
        QCOMPARE(fillOf(Light::Day), QStringLiteral("#1c2138"));
        QCOMPARE(fillOf(Light::Night), QStringLiteral("#f6f1e3"));
    }

    void textSurvivesXml_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QByteArray>("back");
        const QByteArray no = QStringLiteral("\uFFFD").toUtf8();
        const auto same = [](const char* name, const QByteArray& text) {
            QTest::newRow(name) << text << text;
        };
        const auto row = [](const char* name, const QByteArray& text, const QByteArray& back) {
            QTest::newRow(name) << text << back;
        };
        same("markup", "</text><script>");
        same("ampersand", "&amp; & &#65;");
        same("quotes", "\"'");
        same("end of a section", "]]>");
        same("letters of the world", QStringLiteral("Żółw 蛾 🦋").toUtf8());
        same("tab and carriage return", "a\tb\rc");
        row("bell and escape", "a\a_\x1b", "a" + no + "_" + no);
        row("nul", QByteArray("a\0b", 3), "a" + no + "b");
        row("no UTF-8", "a\xff\xc3", "a" + no + no);
        row("overlong slash", "\xc0\xaf.", no + no + ".");
        row("surrogate", "\xed\xa0\x80.", no + no + no + ".");
        row("U+FFFF", "\xef\xbf\xbf", no);
    }

    void textSurvivesXml()
    {
        QFETCH(QByteArray, text);
        QFETCH(QByteArray, back);
        Picture picture{10, 10, "t", "d"};
        picture.primitives = {Words{text.toStdString(), {}}};
        const ReadBack read = readBack(writeSvg(picture, {}));
        QCOMPARE(read.error, QString());
        QCOMPARE(read.texts.at(2), back);
    }

    void numbersAreNeverWrittenAsWords()
    {
        Picture picture{10, 10};
        const double none = std::numeric_limits<double>::quiet_NaN();
        picture.primitives = {
            Line{{{none, 1e20}, {-0.001, std::numeric_limits<double>::infinity()}}, Ink::Full, 1, false}};
        const ReadBack read = readBack(writeSvg(picture, {}));
        QCOMPARE(read.attributes.at(3).value(QStringLiteral("points")),
            QStringLiteral("0,100000000000000000000 0,0"));
    }

    void everyCodePointSurvivesUtf8()
    {
        for (char32_t point = 1; point <= 0x10FFFF; point += 37) {
            if (point >= 0xD800 && point <= 0xDFFF) continue;
            std::string text;
            appendUtf8(text, point);
            std::string_view rest = text;
            QCOMPARE(takeCodePoint(rest), point);
            QVERIFY(rest.empty());
            const QString qt = QString::fromUcs4(&point, 1);
            QCOMPARE(QByteArray::fromStdString(text), qt.toUtf8());
        }
    }
};

QTEST_APPLESS_MAIN(SvgTest)
#include "svg_test.moc"
