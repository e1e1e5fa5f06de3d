// SPDX-License-Identifier: MIT
#include <QDir>
#include <QFile>
#include <QMimeDatabase>
#include <QTemporaryDir>
#include <QTest>

// A desktop that has our description of carried files knows them by name and by content, and opens them with
// us.
class OpenedFileTest : public QObject {
    Q_OBJECT

    static QString asset(const char* name)
    {
        return QStringLiteral(ASSET_DIR "/linux/") + QString::fromLatin1(name);
    }

private Q_SLOTS:
    void aDesktopKnowsACarriedFile()
    {
        const QTemporaryDir data;
        QVERIFY(QDir(data.path()).mkpath(QStringLiteral("mime/packages")));
        QVERIFY(
            QFile::copy(asset("duskrow.xml"), data.filePath(QStringLiteral("mime/packages/duskrow.xml"))));
        qputenv("XDG_DATA_HOME", data.path().toUtf8());
        qputenv("XDG_DATA_DIRS", data.path().toUtf8());
        const QMimeDatabase database;
        const QString ours = QStringLiteral("application/vnd.duskrow.carried");
        QCOMPARE(database.mimeTypeForName(ours).name(), ours);
        QCOMPARE(
            database.mimeTypeForFile(QStringLiteral("of Ida.dusk"), QMimeDatabase::MatchExtension).name(),
            ours);
        QCOMPARE(database.mimeTypeForData(QByteArray("DUSK1\ns\0\0", 9)).name(), ours);
        QVERIFY(database.mimeTypeForData(QByteArray("DSEG1\nxxxx")).name() != ours);
    }

    void theDesktopFileOpensThem()
    {
        QFile file(asset("duskrow.desktop"));
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray text = file.readAll();
        QVERIFY(text.contains("\nMimeType=application/vnd.duskrow.carried;"));
        QVERIFY(text.contains("\nExec=duskrow %u\n"));
    }
};

QTEST_GUILESS_MAIN(OpenedFileTest)
#include "opened_file_test.moc"
