// SPDX-License-Identifier: MIT
#include <QFile>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include "formats/qr_code.h"

using namespace duskrow::domain;
using namespace duskrow::formats;

namespace {

// What a picture shows, one pixel a module, painted by the bars alone.
std::vector<std::string> painted(const Picture& picture)
{
    const auto side = static_cast<std::size_t>(picture.width);
    std::vector<std::string> rows(side, std::string(side, '?'));
    for (const Primitive& one : picture.primitives) {
        const auto& bar = std::get<Bar>(one);
        for (auto y = static_cast<std::size_t>(bar.frame.top); y < static_cast<std::size_t>(bar.frame.bottom);
             ++y)
            for (auto x = static_cast<std::size_t>(bar.frame.left);
                 x < static_cast<std::size_t>(bar.frame.right); ++x)
                rows[y][x] = bar.ink == Ink::Full ? '#' : '.';
    }
    return rows;
}

// A portable grey map, four pixels a module.
QByteArray greyMap(const std::vector<std::string>& rows)
{
    constexpr int scale = 4;
    const auto side = static_cast<int>(rows.size()) * scale;
    QByteArray bytes = QStringLiteral("P5 %1 %1 255\n").arg(side).toLatin1();
    for (const std::string& row : rows)
        for (int line = 0; line < scale; ++line)
            for (const char module : row) bytes.append(scale, module == '#' ? '\0' : '\xff');
    return bytes;
}

QString decoded(const Picture& picture)
{
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("code.pgm")));
    if (!file.open(QIODevice::WriteOnly)) return QStringLiteral("the picture could not be written");
    file.write(greyMap(painted(picture)));
    file.close();
    QProcess reader;
    reader.start(QStringLiteral("zbarimg"),
        {QStringLiteral("--quiet"), QStringLiteral("--raw"), QStringLiteral("-Sdisable"),
            QStringLiteral("-Sqrcode.enable"), file.fileName()});
    if (!reader.waitForFinished()) return reader.errorString();
    return QString::fromUtf8(reader.readAllStandardOutput()).chopped(1);
}

} // namespace

class QrCodeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void anIndependentReaderReadsIt_data()
    {
        QTest::addColumn<QString>("text");
        QTest::newRow("a short code") << QStringLiteral("7K2QD-M4XWA");
        QTest::newRow("an invitation") << QStringLiteral(
            "duskrow:join?code=7K2QD-M4XWA&programme=0190a5b2-7c11-7d3e-9f10-6d2b8e4f7a55&root="
            "000102030405060708090a0b0c0d0e0f&hub=https://hub.example:8460");
        QTest::newRow("a long text") << QString(1000, QLatin1Char('q'));
    }

    void anIndependentReaderReadsIt()
    {
        QFETCH(const QString, text);
        QVERIFY2(!QStandardPaths::findExecutable(QStringLiteral("zbarimg")).isEmpty(),
            "the package zbar-tools is needed");
        const auto code = qrCode(text.toStdString());
        QVERIFY(code.has_value());
        QCOMPARE(decoded(qrPicture(*code, {}, {})), text);
    }

    void lightGroundStandsAround()
    {
        const auto code = qrCode("duskrow");
        QVERIFY(code.has_value());
        const auto rows = painted(qrPicture(*code, {}, {}));
        QCOMPARE(static_cast<int>(rows.size()), code->side + 8);
        for (std::size_t i = 0; i < rows.size(); ++i)
            for (std::size_t edge = 0; edge < qrQuietZone; ++edge) {
                QCOMPARE(rows[edge][i], '.');
                QCOMPARE(rows[i][rows.size() - 1 - edge], '.');
            }
        QCOMPARE(rows[4].substr(4, 7), std::string("#######"));
    }

    void bounds()
    {
        QCOMPARE(qrCode("").error().code, ErrorCode::Empty);
        QVERIFY(qrCode(std::string(2331, 'x')).has_value());
        QCOMPARE(qrCode(std::string(2332, 'x')).error().code, ErrorCode::TooLong);
    }
};

QTEST_GUILESS_MAIN(QrCodeTest)
#include "qr_code_test.moc"
