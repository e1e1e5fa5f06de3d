// SPDX-License-Identifier: MIT
#pragma once

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>

#include "sync/joining_scene.h"

namespace duskrow::tests {

struct Ran {
    int exit = -1;
    QString out;
    QString err;

    [[nodiscard]] QJsonObject json() const { return QJsonDocument::fromJson(out.toUtf8()).object(); }
    [[nodiscard]] QString at(const char* key) const { return json()[QLatin1String(key)].toString(); }
    [[nodiscard]] int numberAt(const char* key) const { return json()[QLatin1String(key)].toInt(-1); }
    // One line that ends like a sentence, and nothing else.
    [[nodiscard]] bool isRefusal(const char* said) const
    {
        return exit == 2 && out.isEmpty() && err.endsWith(QStringLiteral(".\n")) && err.count(u'\n') == 1
            && err.contains(QString::fromUtf8(said));
    }
};

// The real program, on the devices of a scene: each has a store and a folder of keys of its own.
class ExchangeTool {
public:
    JoiningScene scene;

    // "@name" is a path of the scene; keys are those of the device named.
    [[nodiscard]] Ran run(const QString& device, QStringList args) const
    {
        for (QString& arg : args)
            if (arg.startsWith(u'@')) arg = path(arg.mid(1));
        if (args.value(0) != QStringLiteral("check")) // which needs none
            args << QStringLiteral("--keys") << path(device + QStringLiteral("-keys"));
        QProcess process;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("LC_ALL"), QStringLiteral("C.UTF-8"));
        process.setProcessEnvironment(environment);
        process.start(QStringLiteral(DUSKROW_TOOL), args);
        if (!process.waitForFinished(120'000) || process.exitStatus() != QProcess::NormalExit) return {};
        return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
            QString::fromUtf8(process.readAllStandardError())};
    }

    [[nodiscard]] Ran run(const char* device, const char* line) const
    {
        return run(QString::fromUtf8(device), QProcess::splitCommand(QString::fromUtf8(line)));
    }

    [[nodiscard]] QString path(const QString& name) const
    {
        return QString::fromStdString(scene.path(name.toStdString()));
    }
};

} // namespace duskrow::tests
