// SPDX-License-Identifier: MIT
#include "app/program.h"

#include <QCommandLineParser>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QStandardPaths>
#include <QSurfaceFormat>
#include <QTranslator>
#include <QUrl>

#include <algorithm>
#include <cstdio>

#include "app/app.h"
#include "app/print/print_command.h"

namespace duskrow::app {

namespace {

QString dataFolder()
{
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
}

// Prints what opening cost, for benchmarks: milliseconds until the first frame stood, and memory then.
void quitAfterFirstFrame(QQuickWindow& window, const QElapsedTimer& since)
{
    QObject::connect(&window, &QQuickWindow::frameSwapped, &window, [since] {
        QFile status(QStringLiteral("/proc/self/status"));
        QByteArray resident = "?";
        if (status.open(QIODevice::ReadOnly))
            for (const QByteArray& line : status.readAll().split('\n'))
                if (line.startsWith("VmRSS:")) resident = line.mid(6).simplified().split(' ').first();
        std::printf("first_frame_ms %lld resident_kib %s\n", static_cast<long long>(since.elapsed()),
            resident.constData());
        std::fflush(stdout);
        QCoreApplication::quit();
    });
}

// Desktops hand over a path or a file: address; an invitation stays as it is.
QString openedBy(const QStringList& arguments)
{
    if (arguments.isEmpty()) return {};
    const QUrl url(arguments.constFirst());
    if (url.isLocalFile()) return url.toLocalFile();
    if (arguments.constFirst().startsWith(QLatin1String("duskrow:"))) return arguments.constFirst();
    return QFileInfo(arguments.constFirst()).absoluteFilePath();
}

int refuse(const QString& sentence)
{
    std::fprintf(stderr, "%s\n", qPrintable(sentence));
    return 2;
}

// Printing needs fonts but no screen, so it runs where there is none.
void doWithoutScreen(int argc, char** argv)
{
    const auto isPrint = [](const char* arg) { return qstrncmp(arg, "--print", 7) == 0; };
    if (std::any_of(argv + 1, argv + argc, isPrint) && !qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
}

int print(const AppOptions& options, const QString& what, const QString& path)
{
    const QString joined = DeviceSettings(options.settingsFile).storeInsteadOf(options.storePath);
    const auto done = printNow({.storePath = joined.isEmpty() ? options.storePath : joined,
        .keyFolder = options.keyFolder,
        .what = what,
        .path = path,
        .clock = options.today ? Clock(*options.today) : Clock()});
    if (!done) return refuse(text::sentence(done.error()));
    if (!done->isEmpty()) std::fprintf(stderr, "%s\n", qPrintable(*done));
    return 0;
}

// The screens, until they are closed.
int show(const AppOptions& options, const std::function<void(QQuickWindow&)>& whenShown)
{
    QDir().mkpath(QFileInfo(options.storePath).absolutePath());
    App app(options);
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.setInitialProperties({{QStringLiteral("app"), QVariant::fromValue(&app)}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Duskrow/Shell/Main.qml")));
    if (engine.rootObjects().isEmpty()) return 1;
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    if (window && whenShown) whenShown(*window);
    return QGuiApplication::exec();
}

} // namespace

int runProgram(int argc, char** argv, const std::function<void(QQuickWindow&)>& whenShown)
{
    QElapsedTimer sinceStart;
    sinceStart.start();
    QGuiApplication::setApplicationName(QStringLiteral("duskrow"));
    QGuiApplication::setOrganizationName(QStringLiteral("duskrow"));
    // Drawn shapes have smooth edges only with samples.
    QSurfaceFormat format = QSurfaceFormat::defaultFormat();
    format.setSamples(4);
    QSurfaceFormat::setDefaultFormat(format);
    doWithoutScreen(argc, argv);
    const QGuiApplication application(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QTranslator translator;
    if (translator.load(
            QLocale(), QStringLiteral("duskrow"), QStringLiteral("_"), QStringLiteral(":/translations")))
        QGuiApplication::installTranslator(&translator);

    QCommandLineParser parser;
    parser.setApplicationDescription(
        QStringLiteral("A season of pheromone traps, in one hand, without a signal."));
    parser.addHelpOption();
    const QCommandLineOption store(QStringLiteral("store"), QStringLiteral("The programme's file."),
        QStringLiteral("file"), dataFolder() + QStringLiteral("/programme.duskrow"));
    const QCommandLineOption keys(QStringLiteral("keys"), QStringLiteral("Where this device's keys lie."),
        QStringLiteral("folder"), dataFolder() + QStringLiteral("/keys"));
    const QCommandLineOption today(QStringLiteral("today"),
        QStringLiteral("Stand on this day instead of the clock's, e.g. 2026-07-14."), QStringLiteral("day"));
    const QCommandLineOption position(QStringLiteral("position"),
        QStringLiteral("Take positions from this NMEA log."), QStringLiteral("file"));
    const QCommandLineOption firstFrame(QStringLiteral("time-first-frame"),
        QStringLiteral("Print how long the first frame took and what memory it needed, then quit."));
    const QCommandLineOption printed(QStringLiteral("print"),
        QStringLiteral("Print and quit: the sheet of a scouting walk, by its id or a field's name for its "
                       "latest walk; or "
                       "the bulletin of a week, such as 2026-W28."),
        QStringLiteral("walk or week"));
    const QCommandLineOption to(
        QStringLiteral("to"), QStringLiteral("With --print: the PDF to write."), QStringLiteral("file"));
    parser.addPositionalArgument(QStringLiteral("file"),
        QStringLiteral("A carried file to look into, or an invitation as text."), QStringLiteral("[file]"));
    parser.addOptions({store, keys, today, position, firstFrame, printed, to});
    parser.process(application);

    AppOptions options{.storePath = parser.value(store),
        .keyFolder = parser.value(keys),
        .settingsFile = {},
        .positionLog = parser.value(position),
        .today = {},
        .opened = openedBy(parser.positionalArguments())};
    if (parser.isSet(today)) {
        const auto day = domain::parseDay(parser.value(today).toStdString());
        if (!day) return refuse(text::sentence(day.error()));
        options.today = *day;
    }
    if (parser.isSet(printed)) {
        if (!parser.isSet(to)) return refuse(QStringLiteral("Say where the sheet goes: --to FILE.pdf."));
        return print(options, parser.value(printed), parser.value(to));
    }
    if (!parser.isSet(firstFrame)) return show(options, whenShown);
    return show(options, [&](QQuickWindow& window) { quitAfterFirstFrame(window, sinceStart); });
}

} // namespace duskrow::app
