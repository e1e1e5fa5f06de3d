// SPDX-License-Identifier: MIT
#include "camera.h"

#include <QDir>
#include <QQuickWindow>
#include <QRegularExpression>
#include <QTest>

void Camera::take(QQuickItem* seen)
{
    const QString folder = qEnvironmentVariable("DUSKROW_PICTURES");
    if (folder.isEmpty() || !seen || !seen->window()) return;
    static const QRegularExpression notAName(
        QStringLiteral("[^a-z0-9]+"), QRegularExpression::CaseInsensitiveOption);
    QString name = QStringLiteral("%1-%2").arg(
        QString::fromUtf8(QTest::currentTestFunction()), QString::fromUtf8(QTest::currentDataTag()));
    name.replace(notAName, QStringLiteral("-"));
    const QString path =
        QDir(folder).filePath(QStringLiteral("%1-%2.png").arg(name).arg(++m_taken, 3, 10, QLatin1Char('0')));
    if (!QDir().mkpath(folder) || !seen->window()->grabWindow().save(path))
        qFatal("no picture could be saved as %s", qPrintable(path));
}
