// SPDX-License-Identifier: MIT
#include <QTest>

#include <cmath>

#include "domain/rules/kriging.h"
#include "golden_csv.h"

using namespace duskrow::domain;
using duskrow::tests::readGolden;

namespace {

std::vector<PlacedValue> traps()
{
    std::vector<PlacedValue> values;
    for (const auto& row : readGolden("rules/kriging_synth_traps.csv"))
        values.push_back({{row.number("x"), row.number("y")}, row.number("z")});
    return values;
}

constexpr Covariance truth{0.8, Metres{40'000}, 0.35};

bool isNear(double actual, double expected, double most)
{
    return std::abs(actual - expected) <= most;
}

} // namespace

class KrigingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void placesAreAsPublishedSoftwareHasThem_data()
    {
        QTest::addColumn<double>("x");
        QTest::addColumn<double>("y");
        QTest::addColumn<double>("value");
        QTest::addColumn<double>("field");
        for (const auto& row : readGolden("rules/kriging_synth_pred.csv"))
            QTest::addRow("%s %s", row.text("x").constData(), row.text("y").constData()) << row.number(
                "x") << row.number("y") << row.number("ok_filtered_pred") << row.number("ok_filtered_var");
    }

    // R package gstat 2.1.0 on the same places; the file says which settings.
    void placesAreAsPublishedSoftwareHasThem()
    {
        QFETCH(double, x);
        QFETCH(double, y);
        QFETCH(double, value);
        QFETCH(double, field);
        const auto kriging = Kriging::from(traps(), truth);
        QVERIFY(kriging.has_value());
        const Kriged kriged = kriging->at({x, y});
        QVERIFY2(isNear(kriged.value, value, 1e-6), qPrintable(QString::number(kriged.value, 'g', 12)));
        QVERIFY2(isNear(kriged.varianceOfField, field, 1e-6),
            qPrintable(QString::number(kriged.varianceOfField, 'g', 12)));
        QVERIFY(isNear(kriged.varianceOfOne, field + 0.35, 1e-6));
    }

    // The header of the same file.
    void eachIsHeldAgainstTheOthers()
    {
        const LeftOut left = Kriging::from(traps(), truth)->leaveOneOut();
        QVERIFY(isNear(left.rootMeanSquare, 0.8562449209, 1e-9));
        QVERIFY(isNear(left.meanSquareOfScore, 0.9066572096, 1e-9));
    }

    // By leaving each out in earnest.
    void leavingOutNeedsNoNewFactor()
    {
        const auto all = traps();
        double squares = 0;
        for (std::size_t i = 0; i < all.size(); ++i) {
            auto others = all;
            others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
            const double residual = all[i].value - Kriging::from(others, truth)->at(all[i].place).value;
            squares += residual * residual;
        }
        const double found = Kriging::from(all, truth)->leaveOneOut().rootMeanSquare;
        QVERIFY(isNear(found, std::sqrt(squares / static_cast<double>(all.size())), 1e-9));
    }

    void likelihoods_data()
    {
        QTest::addColumn<int>("likelihood");
        QTest::addColumn<double>("sill");
        QTest::addColumn<double>("range");
        QTest::addColumn<double>("nugget");
        QTest::addColumn<double>("expected");
        for (const auto& row : readGolden("rules/kriging_synth_ml.csv")) {
            const QByteArray criterion = row.text("criterion");
            const auto likelihood = criterion == "ML" ? Likelihood::Maximum
                : criterion == "REML"                 ? Likelihood::Restricted
                                                      : Likelihood::Penalised;
            QTest::addRow("%s %s", row.text("what").constData(), criterion.constData())
                << static_cast<int>(likelihood) << row.number("sill") << row.number("range_m")
                << row.number("nugget") << row.number("neg_loglik");
        }
    }

    // Computed with numpy and scipy; the file says how.
    void likelihoods()
    {
        QFETCH(int, likelihood);
        QFETCH(double, sill);
        QFETCH(double, range);
        QFETCH(double, nugget);
        QFETCH(double, expected);
        const auto found = negativeLogLikelihood(
            traps(), {sill, Metres{range}, nugget}, static_cast<Likelihood>(likelihood));
        QVERIFY(found.has_value());
        QVERIFY2(isNear(*found, expected, 1e-5), qPrintable(QString::number(*found, 'g', 12)));
    }

    void theLikeliestCovarianceIsFound()
    {
        const auto rows = readGolden("rules/kriging_synth_ml.csv");
        const auto row = std::find_if(rows.begin(), rows.end(),
            [](const auto& one) { return one.text("what") == "optimum_penalised"; });
        QVERIFY(row != rows.end());
        const auto found = fitCovariance(traps());
        QVERIFY(found.has_value());
        const auto isClose = [](double actual, double expected) {
            return std::abs(actual / expected - 1) < 1e-3;
        };
        QVERIFY2(isClose(found->sill, row->number("sill")), qPrintable(QString::number(found->sill)));
        QVERIFY(isClose(found->range.value(), row->number("range_m")));
        QVERIFY(isClose(found->nugget, row->number("nugget")));
        // No neighbour is likelier.
        const double best = *negativeLogLikelihood(traps(), *found, Likelihood::Penalised);
        QVERIFY(best <= row->number("neg_loglik") + 1e-6);
        for (const double factor : {0.98, 1.02}) {
            Covariance other = *found;
            other.range = Metres{found->range.value() * factor};
            QVERIFY(*negativeLogLikelihood(traps(), other, Likelihood::Penalised) > best);
            other = *found;
            other.nugget *= factor;
            QVERIFY(*negativeLogLikelihood(traps(), other, Likelihood::Penalised) > best);
            other = *found;
            other.sill *= factor;
            QVERIFY(*negativeLogLikelihood(traps(), other, Likelihood::Penalised) > best);
        }
    }

    void whatHasNoAnswer()
    {
        QVERIFY(!fitCovariance({}).has_value());
        std::vector<PlacedValue> same{{{0, 0}, 2}, {{1000, 0}, 2}, {{0, 1000}, 2}};
        QVERIFY(!fitCovariance(same).has_value());
        const std::vector<PlacedValue> twice{{{0, 0}, 1}, {{0, 0}, 2}};
        QVERIFY(!Kriging::from(twice, {1, Metres{1000}, 0}).has_value());
        QVERIFY(Kriging::from(twice, {1, Metres{1000}, 0.1}).has_value());
    }

    void manyPlacesAreAsEachAlone()
    {
        const auto kriging = Kriging::from(traps(), truth);
        std::vector<PlaneOffset> places;
        for (int i = 0; i < 700; ++i) places.push_back({300.0 * i, 150'000 - 200.0 * i});
        const auto all = kriging->at(places);
        const auto values = kriging->valuesAt(places);
        QCOMPARE(all.size(), places.size());
        QCOMPARE(values.size(), places.size());
        for (const std::size_t i : {0U, 255U, 256U, 699U}) {
            const Kriged one = kriging->at(places[i]);
            QVERIFY(isNear(all[i].value, one.value, 1e-12));
            QVERIFY(isNear(all[i].varianceOfField, one.varianceOfField, 1e-12));
            QVERIFY(isNear(values[i], one.value, 1e-12));
        }
    }
};

QTEST_APPLESS_MAIN(KrigingTest)
#include "kriging_test.moc"
