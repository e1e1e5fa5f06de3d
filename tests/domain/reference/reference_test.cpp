// SPDX-License-Identifier: MIT
#include <QProcess>
#include <QStandardPaths>
#include <QTest>

#include <array>
#include <cmath>
#include <functional>

#include "domain/rules/frame_estimate.h"
#include "domain/rules/mean_posterior.h"
#include "domain/rules/stop_table.h"

using namespace duskrow::domain;

namespace {

constexpr SquareMetres quarter{0.25};

LarvaePerSquareMetre density(double larvaePerFrame)
{
    return LarvaePerSquareMetre{larvaePerFrame / quarter.value()};
}

double perFrame(LarvaePerSquareMetre density)
{
    return density.value() * quarter.value();
}

struct Asked {
    QByteArray what;
    std::vector<FrameStop> stops;
    double a = 0.0;
    double b = 0.0;
    double c = 0.0;
    double answer = 0.0; // of R
    double k = 0.0; // of the field, for the table of a plan
};

std::vector<FrameStop> stopsIn(const QByteArray& counts)
{
    std::vector<FrameStop> stops;
    for (const QByteArray& count : counts.split(' ')) stops.push_back({Larvae{count.toLongLong()}});
    return stops;
}

OperatingRow rowOf(double thresholdAtAStop, double planDispersion, double mean, double dispersion)
{
    StopDesign design;
    design.threshold = density(thresholdAtAStop);
    design.dispersion = planDispersion;
    const auto plan = planStops(design);
    if (!plan) qFatal("no plan");
    const std::array densities{density(mean)};
    const auto rows = operatingTable(*plan, densities, dispersion);
    if (!rows) qFatal("no table");
    return rows->front();
}

} // namespace

// What R computes of scouting walks by frames.R beside this file, held against our rules. Left out where R is
// not installed: the goldens stand for it there.
class ReferenceTest : public QObject {
    Q_OBJECT

private:
    QList<Asked> m_asked;

    // tolerance  how far an answer of ours may lie from R's, as a part of R's
    void compareAll(const char* what, qsizetype atLeast, double tolerance,
        const std::function<double(const Asked&)>& ours) const
    {
        qsizetype compared = 0;
        double worst = 0.0;
        for (const Asked& asked : m_asked) {
            if (asked.what != what) continue;
            ++compared;
            const double found = ours(asked);
            const double off = std::abs(found - asked.answer) / std::max(std::abs(asked.answer), 1e-9);
            worst = std::max(worst, off);
            QVERIFY2(off <= tolerance,
                qPrintable(QStringLiteral("%1 of %2 stops (%3 %4 %5): %6, R says %7")
                               .arg(QString::fromLatin1(what))
                               .arg(asked.stops.size())
                               .arg(asked.a)
                               .arg(asked.b)
                               .arg(asked.c)
                               .arg(found, 0, 'g', 12)
                               .arg(asked.answer, 0, 'g', 12)));
        }
        QVERIFY2(compared >= atLeast, what);
        qInfo("%s: %d compared, at most %.1e apart", what, static_cast<int>(compared), worst);
    }

private Q_SLOTS:
    void initTestCase()
    {
        const QString program = QStandardPaths::findExecutable(QStringLiteral("Rscript"));
        if (program.isEmpty())
            QSKIP("Rscript (Debian package r-base-core) is not installed: nothing was compared with R.");
        QProcess r;
        r.start(program,
            {QStringLiteral("--vanilla"),
                QStringLiteral(DUSKROW_SOURCE_DIR "/tests/domain/reference/frames.R")});
        QVERIFY2(r.waitForFinished(120'000), "R did not end within two minutes");
        QVERIFY2(r.exitStatus() == QProcess::NormalExit && r.exitCode() == 0,
            r.readAllStandardError().constData());
        const QList<QByteArray> lines = r.readAllStandardOutput().trimmed().split('\n');
        QCOMPARE(lines.first(), QByteArray("what,counts,a,b,c,value"));
        for (const QByteArray& line : lines.mid(1)) {
            const QList<QByteArray> cells = line.split(',');
            QCOMPARE(cells.size(), 6);
            std::array<double, 4> numbers{};
            for (std::size_t i = 0; i < numbers.size(); ++i) {
                bool isRead = false;
                numbers[i] = cells[static_cast<qsizetype>(i) + 2].toDouble(&isRead);
                QVERIFY2(isRead, line.constData());
            }
            const bool isTable = cells[0].startsWith("table_"); // its counts are a dispersion
            m_asked.append({cells[0], isTable ? std::vector<FrameStop>{} : stopsIn(cells[1]), numbers[0],
                numbers[1], numbers[2], numbers[3]});
            if (isTable) m_asked.last().k = cells[1].toDouble();
        }
    }

    // By numeric integration over ln k in R, from 31 nodes here.
    void rangeOfTheMean()
    {
        compareAll("posterior_quantile", 24, 1e-7, [](const Asked& asked) {
            return MeanPosterior(*tallyOf(asked.stops)).quantile(asked.a).value();
        });
    }

    void chanceOfLyingAbove()
    {
        compareAll("posterior_above", 32, 1e-7, [](const Asked& asked) {
            return MeanPosterior(*tallyOf(asked.stops)).probabilityAbove(LarvaePerFrame{asked.a});
        });
    }

    void theTextbookRange()
    {
        const auto rangeOf = [](const Asked& asked) {
            const auto figures = textbookFigures(asked.stops, quarter);
            if (!figures) qFatal("no figures");
            return figures->tRange;
        };
        compareAll("t_low", 6, 1e-10, [&](const Asked& asked) { return perFrame(rangeOf(asked).low); });
        compareAll("t_high", 6, 1e-10, [&](const Asked& asked) { return perFrame(rangeOf(asked).high); });
    }

    void theBoundWhereNoneWasFound()
    {
        compareAll("none_found_below", 4, 1e-10, [](const Asked& asked) {
            const auto estimate = estimateFrames(asked.stops, quarter);
            if (!estimate || !estimate->upperBound) qFatal("no bound");
            return perFrame(*estimate->upperBound);
        });
    }

    // R's negative binomial, told walk by walk, against our recursion.
    void howThePlanFares()
    {
        const auto fares = [](const Asked& asked) { return rowOf(asked.a, asked.b, asked.c, asked.k); };
        compareAll("table_below", 5, 1e-10, [&](const Asked& asked) { return fares(asked).below; });
        compareAll("table_above", 5, 1e-10, [&](const Asked& asked) { return fares(asked).above; });
        compareAll("table_stops", 5, 1e-10, [&](const Asked& asked) { return fares(asked).meanStops; });
    }
};

QTEST_GUILESS_MAIN(ReferenceTest)
#include "reference_test.moc"
