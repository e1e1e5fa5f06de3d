// SPDX-License-Identifier: MIT
#include <QDir>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QTest>

#include "app/paint/picture_item.h"
#include "app/paint/picture_painter.h"
#include "formats/season_cases.h"
#include "formats/season_chart.h"

using namespace duskrow;
using namespace duskrow::formats;

namespace {

QImage painted(const Picture& picture, Light light, double density = 1)
{
    QImage image(QSizeF(picture.width * density, picture.height * density).toSize(), QImage::Format_RGB32);
    const Rgb paper = rgbOf(Ink::Paper, light);
    image.fill(QColor(paper.red, paper.green, paper.blue));
    QPainter painter(&image);
    painter.scale(density, density);
    app::paintPicture(painter, picture, {light, 1, QStringLiteral("Inter")});
    return image;
}

QColor colourOf(Ink ink, Light light)
{
    const Rgb rgb = rgbOf(ink, light);
    return {rgb.red, rgb.green, rgb.blue};
}

} // namespace

class PaintTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void primitivesLandWhereTheySay_data()
    {
        QTest::addColumn<QPoint>("at");
        QTest::addColumn<QColor>("colour");
        const auto day = [](Ink ink) { return colourOf(ink, Light::Day); };
        QTest::newRow("bar") << QPoint(10, 10) << day(Ink::Band2);
        QTest::newRow("beside the bar") << QPoint(25, 10) << day(Ink::Paper);
        QTest::newRow("area") << QPoint(45, 15) << day(Ink::Band3);
        QTest::newRow("line") << QPoint(50, 50) << day(Ink::Full);
        QTest::newRow("mark") << QPoint(20, 70) << day(Ink::Accent);
        QTest::newRow("hollow mark") << QPoint(50, 70) << day(Ink::Card);
    }

    void primitivesLandWhereTheySay()
    {
        QFETCH(QPoint, at);
        QFETCH(QColor, colour);
        Picture picture{100, 100};
        picture.primitives = {Bar{{0, 0, 20, 20}, Ink::Band2}, Area{{{30, 0}, {60, 0}, {45, 30}}, Ink::Band3},
            Line{{{0, 50}, {100, 50}}, Ink::Full, 6}, Mark{{20, 70}, MarkShape::Diamond, 14, Ink::Accent},
            Mark{{50, 70}, MarkShape::Circle, 14, Ink::Full, true}};
        QCOMPARE(painted(picture, Light::Day).pixelColor(at), colour);
    }

    void hatchingLeavesGapsAndStaysInside()
    {
        Picture picture{100, 100};
        picture.primitives = {Bar{{20, 20, 80, 80}, Ink::Unknown, Fill::Hatched}};
        const QImage image = painted(picture, Light::Day);
        const QColor paper = colourOf(Ink::Paper, Light::Day);
        int inkedInside = 0;
        int bareInside = 0;
        for (int x = 0; x < 100; ++x) {
            for (int y = 0; y < 100; ++y) {
                const bool isInside = x >= 20 && x < 80 && y >= 20 && y < 80;
                const bool isBare = image.pixelColor(x, y) == paper;
                if (!isInside) QVERIFY(isBare);
                if (isInside) ++(isBare ? bareInside : inkedInside);
            }
        }
        QVERIFY(inkedInside > 500);
        QVERIFY(bareInside > 500);
    }

    // The layout reckons with a width that the real type must not exceed.
    void wordsAreNoWiderThanReckoned_data()
    {
        QTest::addColumn<QString>("text");
        for (const char* text : {"season likely 330 to 640", "one count over 14 nights", "at least 9,000",
                 "1,200", "geringes Risiko für die Gegend", "мало бабочек", "蛾の数", "28"}) {
            QTest::newRow(text) << QString::fromUtf8(text);
        }
    }

    void wordsAreNoWiderThanReckoned()
    {
        QFETCH(QString, text);
        for (const int weight : {400, 600}) {
            QFont font(QStringLiteral("Inter"));
            font.setPixelSize(16);
            font.setWeight(static_cast<QFont::Weight>(weight));
            const double real = QFontMetricsF(font).horizontalAdvance(text);
            QVERIFY2(real <= widthOf(text.toStdString(), 16) + 2, qPrintable(QString::number(real)));
        }
    }

    void theSeasonIsPaintedByDayAndByNight_data()
    {
        QTest::addColumn<int>("index");
        const auto cases = seasonCases();
        for (std::size_t i = 0; i < cases.size(); ++i)
            QTest::newRow(cases[i].name.c_str()) << static_cast<int>(i);
    }

    // With DUSKROW_PICTURES=DIR the pictures are kept there for a person to look at.
    void theSeasonIsPaintedByDayAndByNight()
    {
        QFETCH(int, index);
        const auto cases = seasonCases();
        const SeasonCase& season = cases[static_cast<std::size_t>(index)];
        struct Format {
            double width, height, textScale;
        };
        for (const Format format : {Format{360, 360, 1}, Format{320, 360, 2}, Format{900, 500, 1.3}}) {
            SeasonChartInput input = season.input;
            input.width = format.width;
            input.height = format.height;
            input.textScale = format.textScale;
            const Picture picture = seasonChart(input);
            const QImage day = painted(picture, Light::Day, 2);
            const QImage night = painted(picture, Light::Night, 2);
            QCOMPARE(day.pixelColor(day.width() / 2, 6), colourOf(Ink::Card, Light::Day));
            QCOMPARE(night.pixelColor(night.width() / 2, 6), colourOf(Ink::Card, Light::Night));
            const QString folder = qEnvironmentVariable("DUSKROW_PICTURES");
            if (folder.isEmpty()) continue;
            const QString name =
                QStringLiteral("%1 %2").arg(QString::fromStdString(season.name)).arg(format.width);
            QVERIFY(day.save(QDir(folder).filePath(name + QStringLiteral(" day.png"))));
            QVERIFY(night.save(QDir(folder).filePath(name + QStringLiteral(" night.png"))));
        }
    }

    void qmlShowsAPictureScaledToFit()
    {
        QQmlEngine engine;
        engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        QQmlComponent component(&engine);
        component.setData(
            "import QtQuick\nimport Duskrow.Paint\nPictureItem { width: 200; height: 100; dark: true\n"
            "property string spoken: picture.title + \": \" + picture.description }",
            QUrl());
        const std::unique_ptr<QObject> made(component.create());
        QVERIFY2(made != nullptr, qPrintable(component.errorString()));
        auto* item = qobject_cast<app::PictureItem*>(made.get());
        QVERIFY(item != nullptr);
        Picture picture{10, 10, "Square", "all wheat"};
        picture.primitives = {Bar{{0, 0, 10, 10}, Ink::Band2}};
        item->setPicture(app::PictureHandle(picture));
        QCOMPARE(item->property("spoken").toString(), QStringLiteral("Square: all wheat"));
        QImage image(200, 100, QImage::Format_RGB32);
        image.fill(Qt::black);
        QPainter painter(&image);
        item->paint(&painter);
        painter.end();
        QCOMPARE(image.pixelColor(51, 50), colourOf(Ink::Band2, Light::Night));
        QCOMPARE(image.pixelColor(149, 99), colourOf(Ink::Band2, Light::Night));
        QCOMPARE(image.pixelColor(48, 50), QColor(Qt::black));
        QCOMPARE(image.pixelColor(152, 50), QColor(Qt::black));
    }
};

QTEST_MAIN(PaintTest)
#include "paint_test.moc"
