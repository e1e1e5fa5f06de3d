// SPDX-License-Identifier: MIT
#include <QDir>
#include <QGuiApplication>
#include <QQmlEngine>
#include <QQuickView>
#include <QTextStream>

namespace {

struct Look {
    const char* name;
    QSize size;
    bool dark;
    double textScale;
};

constexpr Look looks[] = {
    {"360x640", {360, 640}, false, 1.0},
    {"360x640-large", {360, 640}, false, 2.0},
    {"390x844", {390, 844}, false, 1.0},
    {"390x844-dark", {390, 844}, true, 1.0},
    {"390x844-dark-large", {390, 844}, true, 2.0},
    {"1280x800", {1280, 800}, false, 1.0},
    // Taller than any screen, to see the whole of a page that scrolls.
    {"whole", {360, 1500}, false, 1.0},
    {"whole-large", {360, 3000}, false, 2.0},
};

bool savePicture(QQmlEngine& engine, const QFileInfo& page, const Look& look, const QDir& folder)
{
    QQuickView view(&engine, nullptr);
    view.setResizeMode(QQuickView::SizeRootObjectToView);
    view.setInitialProperties(
        {{QStringLiteral("dark"), look.dark}, {QStringLiteral("textScale"), look.textScale}});
    view.resize(look.size);
    view.setSource(QUrl::fromLocalFile(page.absoluteFilePath()));
    if (view.status() != QQuickView::Ready) return false;
    view.show();
    // Layouts of wrapped words settle over a few frames.
    for (int i = 0; i < 3; ++i) view.grabWindow();
    QCoreApplication::processEvents();
    const auto name = page.baseName() + QLatin1Char('-') + QLatin1String(look.name) + QStringLiteral(".png");
    return view.grabWindow().save(folder.filePath(name));
}

} // namespace

int main(int argc, char** argv)
{
    QGuiApplication app(argc, argv);
    const QDir folder(QString::fromLocal8Bit(argc > 1 ? argv[1] : "."));
    const auto wanted = QString::fromLocal8Bit(argc > 2 ? argv[2] : "");
    if (!folder.mkpath(QStringLiteral("."))) return 1;

    QQmlEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    const QDir pages(QStringLiteral(GALLERY_DIR));
    int failures = 0;
    for (const auto& page : pages.entryInfoList({QStringLiteral("Page*.qml")}, QDir::Files, QDir::Name)) {
        if (!page.fileName().contains(wanted)) continue;
        for (const auto& look : looks) {
            if (savePicture(engine, page, look, folder)) continue;
            QTextStream(stderr) << "no picture of " << page.fileName() << ' ' << look.name << '\n';
            ++failures;
        }
    }
    return failures == 0 ? 0 : 1;
}
