// SPDX-License-Identifier: MIT
#pragma once

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

namespace duskrow::tests {

// What a run of the program came to.
struct Ran {
    int exit = -1;
    QString out;
    QString err;

    [[nodiscard]] QJsonObject json() const { return QJsonDocument::fromJson(out.toUtf8()).object(); }
};

// The real program in a folder of its own, which is its home as well.
class ToolProgram {
protected:
    [[nodiscard]] QString path(const QString& name) const { return m_folder.filePath(name); }

    // @name is a file of the folder.
    [[nodiscard]] Ran run(QStringList args) const
    {
        for (QString& arg : args)
            if (arg.startsWith(u'@')) arg = path(arg.mid(1));
        QProcess process;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("LC_ALL"), QStringLiteral("C.UTF-8"));
        environment.insert(QStringLiteral("HOME"), m_folder.path());
        environment.insert(QStringLiteral("XDG_DATA_HOME"), path(QStringLiteral("data")));
        process.setProcessEnvironment(environment);
        process.start(QStringLiteral(DUSKROW_TOOL), args);
        if (!process.waitForFinished(60'000) || process.exitStatus() != QProcess::NormalExit) return {};
        return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
            QString::fromUtf8(process.readAllStandardError())};
    }
    [[nodiscard]] Ran run(const QString& line) const { return run(QProcess::splitCommand(line)); }
    [[nodiscard]] Ran run(const char* line) const { return run(QString::fromUtf8(line)); }

    [[nodiscard]] QByteArray bytesOf(const QString& name) const
    {
        QFile file(path(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

    void writeFile(const char* name, const QByteArray& bytes) const
    {
        QFile file(path(QString::fromUtf8(name)));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }

private:
    QTemporaryDir m_folder;
};

} // namespace duskrow::tests
