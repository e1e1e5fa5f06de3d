// SPDX-License-Identifier: MIT
#pragma once

#include <QProcess>
#include <QRegularExpression>

#include "sync/roster/invitation_code.h"

// Real hubs for benchmarks.
namespace duskrow::bench {

// Makes a programme in a store; gives the key of the code that founds it.
inline sync::InvitationKey newProgramme(const QString& program, const QString& store)
{
    QProcess made;
    made.start(program,
        {QStringLiteral("programme"), QStringLiteral("new"), QStringLiteral("--store"), store,
            QStringLiteral("--name"), QStringLiteral("Invented district")});
    made.waitForFinished();
    const QString said = QString::fromUtf8(made.readAllStandardOutput());
    const auto code = QRegularExpression(QStringLiteral("[0-9A-Z]{5}-[0-9A-Z]{5}")).match(said);
    const auto read = sync::readCode(code.captured().toStdString());
    if (!read) qFatal("no founding code: %s", qPrintable(said));
    return *sync::keyOfCode(*read);
}

class HubProcess {
public:
    quint16 port = 0;

    HubProcess(const QString& program, const QString& store)
    {
        m_process.setStandardErrorFile(QProcess::nullDevice());
        m_process.start(program,
            {QStringLiteral("serve"), QStringLiteral("--store"), store, QStringLiteral("--listen"),
                QStringLiteral("127.0.0.1:0")});
        m_process.setReadChannel(QProcess::StandardOutput);
        if (!m_process.waitForReadyRead()) qFatal("the hub does not begin");
        const auto at =
            QRegularExpression(QStringLiteral(":(\\d+)")).match(QString::fromUtf8(m_process.readLine()));
        port = at.captured(1).toUShort();
    }
    ~HubProcess()
    {
        m_process.terminate();
        m_process.waitForFinished();
    }

private:
    QProcess m_process;
};

} // namespace duskrow::bench
