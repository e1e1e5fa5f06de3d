// SPDX-License-Identifier: MIT
#include <QTest>

#include "domain/rules/typed_place.h"

using namespace duskrow::domain;

class TypedPlaceTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void accepted_data()
    {
        QTest::addColumn<QByteArray>("latitude");
        QTest::addColumn<QByteArray>("longitude");
        QTest::addColumn<int>("latE7");
        QTest::addColumn<int>("lonE7");
        const auto row = [](const char* name, const char* latitude, const char* longitude, int lat, int lon) {
            QTest::newRow(name) << QByteArray(latitude) << QByteArray(longitude) << lat << lon;
        };
        row("decimal", "52.157902", "-106.670158", 521579020, -1066701580);
        row("decimal comma", "52,157902", "-106,670158", 521579020, -1066701580);
        row("letters behind", "52.157902 N", "106.670158W", 521579020, -1066701580);
        row("letters in front", "S 33.5", "w 70.6", -335000000, -706000000);
        row("small letters", "33.5s", "70.6 e", -335000000, 706000000);
        row("plus", "+52", "+106", 520000000, 1060000000);
        row("minus sign of print", "\u221233.5", "\u2212 70.6", -335000000, -706000000);
        row("blanks around", "  52.1 ", "\t-106.6\u00A0", 521000000, -1066000000);
        row("degree sign", "52.5°", "106.25° W", 525000000, -1062500000);
        row("minutes", "52° 30'", "106° 40.2095' W", 525000000, -1066701583);
        row("minutes with comma", "52° 30,6' N", "106°40'W", 525100000, -1066666667);
        row("seconds", "52° 9' 28.4472\" N", "106°40'12.5688\"W", 521579020, -1066701580);
        row("primes", "52° 9′ 28.4472″", "-106° 40′ 12.5688″", 521579020, -1066701580);
        row("quotes of print", "52° 9’ 28.4472” S", "106º 40’ 12.5688” E", -521579020, 1066701580);
        row("two apostrophes", "52°9'28.4472''S", "106°40'12.5688′′E", -521579020, 1066701580);
        row("blanks only", "52 9 28.4472 N", "106 40 12.5688 W", 521579020, -1066701580);
        row("poles and date line", "-90", "180", -900000000, 1800000000);
        row("zero", "0", "-0", 0, 0);
    }

    void accepted()
    {
        QFETCH(QByteArray, latitude);
        QFETCH(QByteArray, longitude);
        QFETCH(int, latE7);
        QFETCH(int, lonE7);
        const auto place = parsePlace(latitude.toStdString(), longitude.toStdString());
        QVERIFY(place.has_value());
        QCOMPARE(place->latE7, latE7);
        QCOMPARE(place->lonE7, lonE7);
    }

    void refused_data()
    {
        QTest::addColumn<QByteArray>("latitude");
        QTest::addColumn<int>("code");
        QTest::addColumn<QByteArray>("argument");
        const auto row = [](const char* name, const QByteArray& latitude, ErrorCode code,
                             const char* argument) {
            QTest::newRow(name) << latitude << static_cast<int>(code) << QByteArray(argument);
        };
        const auto notAPlace = [&row](const char* name, const char* latitude) {
            row(name, latitude, ErrorCode::NotAPlace, latitude);
        };
        notAPlace("empty", "");
        notAPlace("blank", "   ");
        notAPlace("letters", "north");
        notAPlace("letter only", "N");
        notAPlace("sign only", "-");
        notAPlace("the other axis", "52.1 E");
        notAPlace("sign and letter", "-52.1 N");
        notAPlace("letter twice", "N 52.1 N");
        notAPlace("two signs", "--52.1");
        notAPlace("comma and point", "1.052,5");
        notAPlace("point without digits", ".5");
        notAPlace("digits missing behind the point", "52.");
        notAPlace("exponent", "5e1");
        notAPlace("hexadecimal", "0x34");
        notAPlace("not a number", "nan");
        notAPlace("decimals before minutes", "52.5° 30'");
        notAPlace("minutes without degrees", "30'");
        notAPlace("four figures", "52 1 2 3");
        notAPlace("minus in the middle", "52 -30");
        notAPlace("sign letters typed", "52d 30m");
        notAPlace("emoji", "52\U0001F33E");
        notAPlace("right to left", "\u0665\u0662");
        row("too far north", "90.0000001", ErrorCode::OutOfRange, "latitude");
        row("too far by seconds", "90° 0' 0.1\"", ErrorCode::OutOfRange, "latitude");
        row("sixty minutes", "52° 60'", ErrorCode::OutOfRange, "minutes");
        row("sixty seconds", "52° 59' 60\"", ErrorCode::OutOfRange, "seconds");
        row("many digits", QByteArray(60, '9'), ErrorCode::OutOfRange, "latitude");
        row("a page", QByteArray(10'000, '1'), ErrorCode::TooLong, "latitude");
    }

    void refused()
    {
        QFETCH(QByteArray, latitude);
        QFETCH(int, code);
        QFETCH(QByteArray, argument);
        const auto place = parsePlace(latitude.toStdString(), "-106");
        QVERIFY(!place.has_value());
        QCOMPARE(static_cast<int>(place.error().code), code);
        QCOMPARE(QByteArray::fromStdString(place.error().args.front()), argument);
    }

    void theLongitudeIsCheckedToo()
    {
        QCOMPARE(parsePlace("52", "180.1").error().args.front(), std::string("longitude"));
        QCOMPARE(parsePlace("52", "106 N").error().code, ErrorCode::NotAPlace);
        QCOMPARE(parsePlace("52", "-179.9999999")->lonE7, -1799999999);
    }
};

QTEST_APPLESS_MAIN(TypedPlaceTest)
#include "typed_place_test.moc"
