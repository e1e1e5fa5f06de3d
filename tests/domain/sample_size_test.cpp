// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>

#include "domain/rules/sample_size.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

class SampleSizeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Computed with scipy, see the head of the table. Its rows of stop lines for a fixed precision (T_green,
    // T_kuno_nb) belong to plans that are not used here.
    void framesFollowTheGoldens()
    {
        int checked = 0;
        for (const auto& row : readGolden("rules/sample_size.csv")) {
            const QByteArray formula = row.text("formula");
            if (formula.startsWith("T_")) continue;
            ++checked;
            const LarvaePerFrame mean{row.number("mean_per_frame")};
            const double precision = row.number("D");
            Result<Frames> frames = Frames{0};
            if (formula == "n_poisson") frames = framesForPrecision(mean, precision, ByChance{});
            if (formula == "n_negbin") frames = framesForPrecision(mean, precision, Clumped{row.number("k")});
            if (formula == "n_taylor")
                frames = framesForPrecision(
                    mean, precision, PowerLaw{row.number("taylor_a"), row.number("taylor_b")});
            if (formula == "n_negbin_ci_halfwidth")
                frames = framesForHalfWidth(mean, precision, Clumped{row.number("k")});
            QVERIFY2(frames.has_value(), formula.constData());
            QVERIFY2(frames->value() == std::max<qint64>(5, row.whole("value_ceil")), formula.constData());
        }
        QVERIFY(checked > 60);
    }

    // At 20 per square metre: five frames give half of the mean, a quarter needs about twenty.
    void precisionFollowsTheFrames_data()
    {
        QTest::addColumn<double>("dispersion");
        QTest::addColumn<int>("frames");
        QTest::addColumn<double>("precision");
        QTest::newRow("k 1, 5 frames") << 1.0 << 5 << 0.49;
        QTest::newRow("k 1, 10 frames") << 1.0 << 10 << 0.35;
        QTest::newRow("k 1, 20 frames") << 1.0 << 20 << 0.245;
        QTest::newRow("k 1, 30 frames") << 1.0 << 30 << 0.20;
        QTest::newRow("k 2, 5 frames") << 2.0 << 5 << 0.37;
        QTest::newRow("k 2, 20 frames") << 2.0 << 20 << 0.19;
    }

    void precisionFollowsTheFrames()
    {
        QFETCH(double, dispersion);
        QFETCH(int, frames);
        QFETCH(double, precision);
        const auto reached = precisionOf(Frames{frames}, LarvaePerFrame{5.0}, Clumped{dispersion});
        QVERIFY(std::abs(*reached - precision) < 0.0051);
        // And back.
        const auto wanted = framesForPrecision(LarvaePerFrame{5.0}, *reached, Clumped{dispersion});
        QCOMPARE(wanted->value(), qint64{frames});
    }

    void neverBelowFive()
    {
        QCOMPARE(framesForPrecision(LarvaePerFrame{100.0}, 1.0, ByChance{})->value(), qint64{5});
    }

    void refusals()
    {
        const auto fieldOf = [](const auto& result) {
            return result ? QString() : QString::fromStdString(result.error().args.front());
        };
        const LarvaePerFrame five{5.0};
        const double nan = std::nan("");
        for (const double mean : {0.0, -1.0, nan})
            QCOMPARE(
                fieldOf(framesForPrecision(LarvaePerFrame{mean}, 0.25, Clumped{})), QStringLiteral("mean"));
        for (const double precision : {0.0, -0.2, 1.5, nan})
            QCOMPARE(fieldOf(framesForPrecision(five, precision, Clumped{})), QStringLiteral("precision"));
        for (const double k : {0.0, -1.0, nan}) {
            QCOMPARE(fieldOf(framesForPrecision(five, 0.25, Clumped{k})), QStringLiteral("dispersion"));
            QCOMPARE(fieldOf(framesForHalfWidth(five, 0.25, Clumped{k})), QStringLiteral("dispersion"));
        }
        QCOMPARE(fieldOf(framesForPrecision(five, 0.25, PowerLaw{0.0, 1.4})), QStringLiteral("factor"));
        QCOMPARE(fieldOf(framesForPrecision(five, 0.25, PowerLaw{2.0, -1.0})), QStringLiteral("exponent"));
        QCOMPARE(fieldOf(precisionOf(Frames{0}, five, Clumped{})), QStringLiteral("frames"));
    }
};

QTEST_APPLESS_MAIN(SampleSizeTest)
#include "sample_size_test.moc"
