// SPDX-License-Identifier: MIT
#include <QCommandLineParser>
#include <QDir>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QStandardPaths>

#include <cstdio>

#include "app/app.h"

namespace {

QString dataFolder()
{
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
}

} // namespace

int main(int argc, char** argv)
{
    QGuiApplication::setApplicationName(QStringLiteral("duskrow"));
    QGuiApplication::setOrganizationName(QStringLiteral("duskrow"));
    const QGuiApplication application(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));

    QCommandLineParser parser;
    parser.setApplicationDescription(QStringLiteral("A season of pheromone traps, in one hand, without a signal."));
    parser.addHelpOption();
    const QCommandLineOption store(QStringLiteral("store"), QStringLiteral("The programme's file."),
        QStringLiteral("file"), dataFolder() + QStringLiteral("/programme.duskrow"));
    const QCommandLineOption keys(QStringLiteral("keys"), QStringLiteral("Where this device's keys lie."),
        QStringLiteral("folder"), dataFolder() + QStringLiteral("/keys"));
    const QCommandLineOption today(QStringLiteral("today"),
        QStringLiteral("Stand on this day instead of the clock's, e.g. 2026-07-14."), QStringLiteral("day"));
    const QCommandLineOption position(QStringLiteral("position"),
        QStringLiteral("Take positions from this NMEA log."), QStringLiteral("file"));
    parser.addOptions({store, keys, today, position});
    parser.process(application);

    duskrow::app::AppOptions options{.storePath = parser.value(store),
        .keyFolder = parser.value(keys),
        .settingsFile = {},
        .positionLog = parser.value(position),
        .today = {}};
    if (parser.isSet(today)) {
        const auto day = duskrow::domain::parseDay(parser.value(today).toStdString());
        if (!day) {
            std::fprintf(stderr, "%s\n", qPrintable(duskrow::text::sentence(day.error())));
            return 2;
        }
        options.today = *day;
    }
    QDir().mkpath(QFileInfo(options.storePath).absolutePath());
    duskrow::app::App app(options);
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.setInitialProperties({{QStringLiteral("app"), QVariant::fromValue(&app)}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Duskrow/Shell/Main.qml")));
    if (engine.rootObjects().isEmpty()) return 1;
    return QGuiApplication::exec();
}
