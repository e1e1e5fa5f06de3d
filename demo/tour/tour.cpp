// SPDX-License-Identifier: MIT
#include <QCommandLineParser>
#include <QFile>
#include <QGuiApplication>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickStyle>
#include <QTranslator>

#include <cstdio>

#include "app/app.h"
#include "demo/nmea_log.h"
#include "demo/tour/stage.h"
#include "demo/tour/steps.h"
#include "store/queries.h"

using namespace duskrow;

namespace {

// Fixes in the log: enough for whoever comes to a page late to find the receiver still talking.
constexpr int longStand = 3000;

struct Arguments {
    QString store;
    QString keys;
    QString pictures;
    domain::LocalDay today;
};

Arguments readArguments(const QCoreApplication& application)
{
    QCommandLineParser parser;
    parser.setApplicationDescription(QStringLiteral(
        "Uses the app over the invented district by taps and keys, and saves pictures of it."));
    parser.addHelpOption();
    const auto option = [](const char* name, const char* what) {
        return QCommandLineOption(
            QString::fromLatin1(name), QString::fromLatin1(what), QString::fromLatin1(name));
    };
    parser.addOptions({option("store", "A store that holds the invented district; it is written to."),
        option("keys", "Where this device's keys lie."), option("pictures", "Where the pictures go."),
        option("today", "The day to stand on.")});
    parser.process(application);
    const auto day = domain::parseDay(parser.value(QStringLiteral("today")).toStdString());
    if (!day) demo::giveUp(QStringLiteral("--today names no day."));
    return {parser.value(QStringLiteral("store")), parser.value(QStringLiteral("keys")),
        parser.value(QStringLiteral("pictures")), *day};
}

// Somewhere the phone's owner can walk to: a little north of the first of the own traps.
domain::GeoPoint nearMyTraps(const app::Session& session)
{
    const auto sites = store::sitesOf(session.reader(), session.season()->id);
    const auto traps = store::trapsOf(session.reader(), session.season()->id);
    if (!sites || !traps) demo::giveUp(QStringLiteral("the traps could not be read."));
    for (const domain::Site& site : *sites)
        for (const domain::Trap& trap : *traps)
            if (site.keeper == session.me()->id && trap.site == site.id && trap.place())
                return {trap.place()->latE7 + 40'000, trap.place()->lonE7};
    demo::giveUp(QStringLiteral("the phone's owner has no trap in the store."));
}

QString writeLog(const QString& folder, const std::string& log)
{
    const QString path = folder + QStringLiteral("/walk.nmea");
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(QByteArray::fromStdString(log)) < 0)
        demo::giveUp(QStringLiteral("%1 cannot be written.").arg(path));
    return path;
}

} // namespace

int main(int argc, char** argv)
{
    const QGuiApplication application(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QTranslator translator; // in the language of the device, as the app
    if (translator.load(
            QLocale(), QStringLiteral("duskrow"), QStringLiteral("_"), QStringLiteral(":/translations")))
        QGuiApplication::installTranslator(&translator);
    const Arguments arguments = readArguments(application);

    app::App app({.storePath = arguments.store,
        .keyFolder = arguments.keys,
        .settingsFile = arguments.keys + QStringLiteral("/settings.ini"),
        .positionLog = {},
        .today = arguments.today});
    if (app.state() != app::App::State::Open)
        demo::giveUp(QStringLiteral("the store is not open: %1").arg(app.trouble()));
    app.settings()->setLight(app::DeviceSettings::Light::Day);
    app.settings()->setPositionLog(
        writeLog(arguments.keys, demo::nmeaLog(arguments.today, nearMyTraps(*app.session()), longStand)));

    QQmlEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QQmlComponent component(&engine, QUrl(QStringLiteral("qrc:/qt/qml/Duskrow/Shell/Main.qml")));
    const std::unique_ptr<QObject> root(
        component.createWithInitialProperties({{QStringLiteral("app"), QVariant::fromValue(&app)}}));
    auto* window = qobject_cast<QQuickWindow*>(root.get());
    if (!window) demo::giveUp(component.errorString());

    demo::Stage stage(*window, arguments.pictures);
    demo::setUpATrap(stage);
    demo::makeAVisit(stage);
    app.settings()->setLight(app::DeviceSettings::Light::Night);
    demo::lookAtTheSeason(stage);
    app.settings()->setLight(app::DeviceSettings::Light::Day);
    demo::scoutAField(stage);
    std::printf("%d pictures in %s\n", stage.pictures(), qPrintable(arguments.pictures));
    return 0;
}
