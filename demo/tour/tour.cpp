// SPDX-License-Identifier: MIT
#include <QGuiApplication>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickStyle>

#include "app/app.h"
#include "demo/tour/stage.h"

using namespace duskrow;

int main(int argc, char** argv)
{
    const QGuiApplication application(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    const QStringList arguments = QGuiApplication::arguments();
    app::App app({.storePath = arguments.at(1),
        .keyFolder = arguments.at(2),
        .settingsFile = arguments.at(2) + QStringLiteral("/settings.ini"),
        .positionLog = {},
        .today = domain::dayOf(2026, 7, 14)});
    QQmlEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QQmlComponent component(&engine, QUrl(QStringLiteral("qrc:/qt/qml/Duskrow/Shell/Main.qml")));
    const std::unique_ptr<QObject> root(
        component.createWithInitialProperties({{QStringLiteral("app"), QVariant::fromValue(&app)}}));
    auto* window = qobject_cast<QQuickWindow*>(root.get());
    if (!window) demo::giveUp(component.errorString());
    window->resize(arguments.at(4).toInt(), arguments.at(5).toInt());
    app.settings()->setTextScale(arguments.at(6).toDouble());
    app.settings()->setLight(arguments.at(7) == QStringLiteral("night") ? app::DeviceSettings::Light::Night : app::DeviceSettings::Light::Day);
    demo::Stage stage(*window, arguments.at(3));
    stage.waitFor(QStringLiteral("begin"));
    stage.shoot(QStringLiteral("start"));
    return 0;
}
