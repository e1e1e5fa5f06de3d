// SPDX-License-Identifier: MIT
// 100,000 counts of four years out of one file: all that an import does, against sqlite3 putting the same
// file into one plain table, in turns.
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <algorithm>
#include <random>

#include "bench/figures.h"
#include "formats/import_reading.h"
#include "store/known_records.h"
#include "sync/exchange/import_run.h"

using namespace duskrow::domain;
using namespace duskrow::store;

namespace {

using Clock = std::chrono::steady_clock;

constexpr int years = 4;
constexpr int trapsAYear = 2'500;
constexpr int countsATrap = 10;
constexpr int rounds = 7;

std::string table()
{
    std::mt19937 dice(1);
    std::string text = "year,district,site,trap,latitude,longitude,date,count,observer,remark\n";
    for (int year = 2016; year < 2016 + years; ++year)
        for (int trap = 0; trap < trapsAYear; ++trap)
            for (int week = 1; week <= countsATrap; ++week) {
                const LocalDay day = dayOf(year, 6, 1) + std::chrono::days{7 * week};
                const std::string place = std::to_string(50'000 + trap) + ',';
                text += std::to_string(year) + ",District " + std::to_string(trap % 30) + ",Site "
                    + std::to_string(trap / 2) + ',' + std::to_string(trap % 2 + 1) + ",5"
                    + std::to_string(trap % 10) + '.' + place + "-106." + place + formatDay(day) + ','
                    + std::to_string(dice() % 400) + ",Observer " + std::to_string(trap % 90)
                    + (dice() % 7 == 0 ? ",rain\n" : ",\n");
            }
    return text;
}

double secondsOf(const std::function<void()>& work)
{
    const auto start = Clock::now();
    work();
    return std::chrono::duration<double>(Clock::now() - start).count();
}

double medianOf(std::vector<double> times)
{
    std::nth_element(
        times.begin(), times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2), times.end());
    return times[times.size() / 2];
}

void must(bool held, const char* what)
{
    if (held) return;
    std::fprintf(stderr, "%s\n", what);
    std::exit(1);
}

void importOnce(const QString& file, Store& store, Reader& reader, std::vector<double>& parts)
{
    const auto start = Clock::now();
    const auto part = [&](std::size_t at) {
        parts[at] += std::chrono::duration<double>(Clock::now() - start).count() / rounds;
    };
    QFile csv(file);
    must(csv.open(QIODevice::ReadOnly), "the table is not there");
    const QByteArray bytes = csv.readAll();
    auto reading = duskrow::formats::readCounts({bytes.data(), static_cast<std::size_t>(bytes.size())}, {});
    must(reading.has_value() && reading->refused.rows == 0, "the table cannot be read");
    part(0);
    const auto known = knownRecords(reader, {2016, 2017, 2018, 2019});
    const ImportPlan plan = planImport(std::move(reading->rows), std::move(reading->refused), *known,
        {store.programme(), "bertha-armyworm", "3", "green-bucket"});
    must(plan.made.at("visit") == std::size_t{years} * trapsAYear * countsATrap, "not everything is made");
    part(1);
    const auto run =
        duskrow::sync::runImport(store, plan, {"id", "table.csv"}, {store.programme(), {}, {}}, {});
    must(run.has_value() && run->kept == plan.size(), "not everything is kept");
    part(2);
}

// SQLite alone: the visits and the index that the import left, out of memory into tables of the same form, in
// one commit. Less than this no import into them can take.
double tablesAlone(const std::string& store, const std::string& file)
{
    SQLite::Database database(file, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    for (const char* setting :
        {"journal_mode=WAL", "synchronous=FULL", "cache_size=-8000", "temp_store=MEMORY"})
        database.exec(std::string("PRAGMA ") + setting);
    database.exec("ATTACH '" + store + "' AS there");
    std::vector<std::string> tables;
    SQLite::Statement form(database,
        "SELECT sql FROM there.sqlite_schema WHERE tbl_name IN ('now_visit', 'sealed') AND sql NOT NULL");
    while (form.executeStep()) tables.push_back(form.getColumn(0).getString());
    form.reset();
    for (const std::string& sql : tables) database.exec(sql);
    database.exec("CREATE TEMP TABLE visits AS SELECT * FROM there.now_visit ORDER BY id");
    database.exec("CREATE TEMP TABLE lines AS SELECT * FROM there.sealed ORDER BY record");
    return secondsOf([&] {
        database.exec("BEGIN");
        database.exec("INSERT INTO main.now_visit SELECT * FROM temp.visits");
        database.exec("INSERT INTO main.sealed SELECT * FROM temp.lines");
        database.exec("COMMIT");
    });
}

} // namespace

int main()
{
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("table.csv"));
    {
        QFile csv(file);
        const std::string text = table();
        must(csv.open(QIODevice::WriteOnly) && csv.write(text.data(), static_cast<qint64>(text.size())) > 0,
            "no room for the table");
    }
    std::vector<double> ours;
    std::vector<double> plain;
    std::vector<double> alone;
    std::vector<double> parts(3);
    for (int round = 0; round < rounds; ++round) {
        const QString name = folder.filePath(QString::number(round));
        plain.push_back(secondsOf([&] {
            const int code = QProcess::execute(QStringLiteral("sqlite3"),
                {name + QStringLiteral(".db"), QStringLiteral(".mode csv"),
                    QStringLiteral(".import \"%1\" plain").arg(file)});
            must(code == 0, "sqlite3 did not import");
        }));
        const auto store = Store::open(name.toStdString(),
            {.keyFolder = folder.filePath(QStringLiteral("keys")).toStdString(), .mayCreate = true});
        must(store.has_value(), "no store");
        const auto reader = (*store)->reader();
        ours.push_back(secondsOf([&] { importOnce(file, **store, **reader, parts); }));
        alone.push_back(tablesAlone(name.toStdString(), name.toStdString() + ".alone"));
    }
    duskrow::tests::Figures figures;
    figures.note("sqlite3 .import of 100,000 rows, median", medianOf(plain), "s");
    figures.note("import of the same file, median", medianOf(ours), "s");
    figures.note("  of that, reading it", parts[0], "s");
    figures.note("  planning it", parts[1] - parts[0], "s");
    figures.note("  keeping it", parts[2] - parts[1], "s");
    figures.note("SQLite alone, writing the rows it comes to, median", medianOf(alone), "s");
    figures.limit("import / sqlite3 .import", medianOf(ours) / medianOf(plain), "x", 3.0);
    return figures.print() ? 0 : 1;
}
