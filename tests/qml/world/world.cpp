// SPDX-License-Identifier: MIT
#include "world.h"

#include <QCoreApplication>
#include <QDesktopServices>
#include <QFile>
#include <QQmlComponent>
#include <QQmlEngine>

#include <cmath>

#include "demo/nmea_log.h"
#include "domain/records/visit.h"
#include "store/queries.h"

using namespace duskrow;
using namespace duskrow::domain;

World::~World()
{
    for (const QString& scheme : std::as_const(m_schemes)) QDesktopServices::unsetUrlHandler(scheme);
    if (!m_language.isEmpty()) QLocale::setDefault(QLocale::system());
}

void World::speak()
{
    if (m_language.isEmpty()) return;
    QLocale::setDefault(QLocale(m_language));
    if (!m_translator.load(
            QLocale(), QStringLiteral("duskrow"), QStringLiteral("_"), QStringLiteral(":/translations")))
        qFatal("there is no translation to %s", qPrintable(m_language));
    QCoreApplication::installTranslator(&m_translator);
}

QQuickWindow* World::openWindow(int width, int height, const QString& route, const QString& subject)
{
    m_window.reset();
    QQmlComponent component(qmlEngine(this), QUrl(QStringLiteral("qrc:/qt/qml/Duskrow/Shell/Main.qml")));
    if (!component.isReady()) qFatal("the window is broken: %s", qPrintable(component.errorString()));
    m_window.reset(
        component.createWithInitialProperties({{QStringLiteral("app"), QVariant::fromValue(m_app.get())},
            {QStringLiteral("width"), width}, {QStringLiteral("height"), height}}));
    auto* window = qobject_cast<QQuickWindow*>(m_window.get());
    if (!window) qFatal("the window could not be made: %s", qPrintable(component.errorString()));
    QQmlEngine::setObjectOwnership(window, QQmlEngine::CppOwnership);
    if (!route.isEmpty())
        QMetaObject::invokeMethod(window, "open", Q_ARG(QString, route), Q_ARG(QString, subject));
    return window;
}

void World::componentComplete()
{
    speak();
    start();
    if (!m_begun) return;
    Programme programme;
    programme.id = m_app->session()->store().programme();
    programme.name = "Willow bend";
    programme.invented = true;
    Season season;
    const LocalDay day = *parseDay(m_today.toStdString());
    season.year = m_seasonYear > 0 ? m_seasonYear : yearOf(day);
    season.id = seasonId(programme.id, *season.year);
    season.weekStart = 1;
    season.countDay = 1;
    season.graceDays = 1;
    season.reportDay = 2;
    season.reportMinute = 720;
    ProtocolUse use;
    use.id = protocolUseId(programme.id, season.id, "bertha-armyworm");
    use.season = season.id;
    use.pest = "bertha-armyworm";
    Member me;
    me.id = m_app->session()->newId();
    me.name = m_member.toStdString();
    me.role = Role::Grower;
    District district;
    district.id = m_app->session()->newId();
    district.name = "Heron ridge";
    keep({creation(programme, {}), creation(season, {}), creation(use, {}), creation(me, {}),
        creation(district, {})});
    if (!m_app->session()->setMe(me.id)) qFatal("the member could not be kept");
    Q_EMIT m_app->stateChanged();
}

void World::start()
{
    app::AppOptions options{.storePath = m_folder.filePath(QStringLiteral("programme.duskrow")),
        .keyFolder = m_folder.filePath(QStringLiteral("keys")),
        .settingsFile = m_folder.filePath(QStringLiteral("settings.ini")),
        .positionLog = {},
        .today = *parseDay(m_today.toStdString()),
        .opened = m_opened};
    m_app = std::make_unique<app::App>(options);
}

void World::restart()
{
    m_window.reset();
    m_app.reset();
    start();
}

void World::keep(std::vector<Edit> edits)
{
    const Moment now = m_app->session()->clock().now();
    const auto& me = m_app->session()->me();
    const auto kept = m_app->session()->store().keepNow({.author = me ? me->id : Uuid{},
        .at = now.at,
        .offset = now.offset,
        .edits = std::move(edits),
        .draftDone = {}});
    if (!kept) qFatal("the world could not be made: %s", kept.error().detail.c_str());
    m_app->session()->refresh();
    Q_EMIT m_app->session()->changed();
}

QString World::addTrap(
    const QString& siteName, const QString& tag, const QString& setDay, double lat, double lon)
{
    return addTrapAt(m_app->session()->me()->id, siteName, tag, setDay, lat, lon);
}

QString World::addTrapOf(
    const QString& keeper, const QString& siteName, const QString& tag, const QString& setDay)
{
    Member other;
    other.id = m_app->session()->newId();
    other.name = keeper.toStdString();
    other.role = Role::Grower;
    keep({creation(other, {})});
    return addTrapAt(other.id, siteName, tag, setDay, 49.9, -97.2);
}

void World::leaveDraft(const QString& key, const QString& body)
{
    m_app->session()->saveDraft(key, body.toUtf8());
}

void World::addManyTraps(int count)
{
    std::vector<Edit> edits;
    for (int i = 1; i <= count; ++i) {
        Trap trap;
        const QString site = QStringLiteral("Site %1").arg(i, 4, 10, QLatin1Char('0'));
        auto made = trapEdits(trap, m_app->session()->me()->id, site, QStringLiteral("bertha 1"),
            QStringLiteral("2026-06-04"), 49.0 + 0.0005 * i, -97.0);
        edits.insert(edits.end(), made.begin(), made.end());
    }
    keep(std::move(edits));
}

void World::endTrap(const QString& trap, const QString& day)
{
    const auto found = store::trap(m_app->session()->reader(), *parseUuid(trap.toStdString()));
    if (!found || !*found) qFatal("there is no such trap");
    Trap ended = **found;
    ended.endDay = *parseDay(day.toStdString());
    ended.endReason = EndReason::SeasonOver;
    ended.lureOut = ended.stripOut = ended.washed = true;
    keep({correction(**found, ended, ended.site)});
}

QString World::addTrapAt(const Uuid& keeper, const QString& siteName, const QString& tag,
    const QString& setDay, double lat, double lon)
{
    Trap trap;
    keep(trapEdits(trap, keeper, siteName, tag, setDay, lat, lon));
    return QString::fromStdString(formatUuid(trap.id));
}

std::vector<Edit> World::trapEdits(Trap& trap, const Uuid& keeper, const QString& siteName,
    const QString& tag, const QString& setDay, double lat, double lon)
{
    Site site;
    site.id = m_app->session()->newId();
    site.season = m_app->session()->season()->id;
    site.keeper = keeper;
    site.name = siteName.toStdString();
    site.crop = "canola";
    trap.id = m_app->session()->newId();
    trap.site = site.id;
    trap.season = site.season;
    trap.tag = tag.toStdString();
    trap.pest = "bertha-armyworm";
    trap.protocolVersion = m_app->session()->protocol("bertha-armyworm")->version;
    trap.trapType = m_app->session()->protocol("bertha-armyworm")->trapTypes.front().id;
    trap.setDay = *parseDay(setDay.toStdString());
    trap.latE7 = std::lround(lat * 1e7);
    trap.lonE7 = std::lround(lon * 1e7);
    trap.accuracy = Millimetres{5000};
    trap.fixMethod = FixMethod::Satellite;
    trap.entrance = Millimetres{1000};
    trap.canopy = Millimetres{300};
    trap.lureIn = true;
    trap.stripIn = true;
    return {creation(site, site.id), creation(trap, site.id)};
}

QString World::addCount(const QString& trap, const QString& day, int moths)
{
    Visit visit;
    visit.id = m_app->session()->newId();
    visit.trap = *parseUuid(trap.toStdString());
    visit.day = *parseDay(day.toStdString());
    visit.atMs = toMs(Instant{visit.day->time_since_epoch() + std::chrono::hours{19}});
    visit.offsetMin = 0;
    visit.outcome = Outcome::Counted;
    visit.pest = Moths{moths};
    visit.emptied = true;
    visit.state = TrapState::Fine;
    keep({creation(visit, {})});
    return QString::fromStdString(formatUuid(visit.id));
}

void World::standAt(double lat, double lon, int fixes)
{
    QFile file(m_folder.filePath(QStringLiteral("log%1.nmea").arg(++m_logs)));
    if (!file.open(QIODevice::WriteOnly)) qFatal("the position log could not be written");
    const GeoPoint place{
        static_cast<std::int32_t>(std::lround(lat * 1e7)), static_cast<std::int32_t>(std::lround(lon * 1e7))};
    file.write(QByteArray::fromStdString(demo::nmeaLog(*parseDay(m_today.toStdString()), place, fixes)));
    file.close();
    m_app->settings()->setPositionLog(file.fileName());
}

void World::listenToUrls(const QString& scheme)
{
    m_schemes << scheme;
    QDesktopServices::setUrlHandler(scheme, this, "takeUrl");
}

void World::takeUrl(const QUrl& url)
{
    m_urls << QString::fromLatin1(url.toEncoded());
}

int World::changes() const
{
    const auto count = m_app->session()->reader().countOfChanges();
    return count ? static_cast<int>(*count) : -1;
}

QStringList World::draftKeys() const
{
    m_app->session()->store().flush();
    QStringList keys;
    const auto held = m_app->session()->reader().draftKeys();
    if (!held) qFatal("the drafts could not be read");
    for (const std::string& key : *held) keys << QString::fromStdString(key);
    return keys;
}

namespace {

template <typename R>
QStringList idsIn(store::Reader& reader)
{
    const auto records = reader.select<R>({});
    if (!records) qFatal("the records could not be read");
    QStringList ids;
    for (const R& record : *records) ids << QString::fromStdString(formatUuid(record.id));
    return ids;
}

} // namespace

QStringList World::trapIds() const
{
    return idsIn<Trap>(m_app->session()->reader());
}

QStringList World::siteIds() const
{
    return idsIn<Site>(m_app->session()->reader());
}

QVariant World::fieldOf(const QString& id, const QString& field) const
{
    const auto changes = m_app->session()->reader().changesOf(*parseUuid(id.toStdString()));
    if (!changes) qFatal("the changes could not be read");
    QVariant last;
    for (const Change& change : *changes) {
        const auto found = change.fields.find(field.toStdString());
        if (found == change.fields.end()) continue;
        const Value& value = found->second.value;
        if (const auto* flag = std::get_if<bool>(&value))
            last = *flag;
        else if (const auto* number = std::get_if<std::int64_t>(&value))
            last = static_cast<double>(*number);
        else if (const auto* text = std::get_if<std::string>(&value))
            last = QString::fromStdString(*text);
        else
            last = {};
    }
    return last;
}

int World::changesOf(const QString& id) const
{
    const auto changes = m_app->session()->reader().changesOf(*parseUuid(id.toStdString()));
    return changes ? static_cast<int>(changes->size()) : -1;
}

bool World::hasDraft(const QString& key) const
{
    m_app->session()->store().flush();
    return m_app->session()->draft(key).has_value();
}

QString World::putFile(const QString& name, const QString& text, bool isLatin1)
{
    const QString path = m_folder.filePath(name);
    QFile file(path);
    const QByteArray bytes = isLatin1 ? text.toLatin1() : text.toUtf8();
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size()) qFatal("no room for a file");
    return path;
}

QString World::fileText(const QString& name) const
{
    QFile file(m_folder.filePath(name));
    if (!file.open(QIODevice::ReadOnly)) qFatal("no file %s", qPrintable(name));
    return QString::fromUtf8(file.readAll());
}
