// SPDX-License-Identifier: MIT
#include "app/exchange/exchange_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QUrl>

#include <array>

#include "sync/exchange/refusal_code.h"
#include "text/amounts.h"
#include "text/error_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct ExchangeText {
    Q_DECLARE_TR_FUNCTIONS(ExchangeText)
};

int shown(std::int64_t count)
{
    return static_cast<int>(std::min<std::int64_t>(count, std::numeric_limits<int>::max()));
}

struct Reason {
    const char* code;
    const char* words;
};

constexpr std::array reasons{
    Reason{"not_enrolled",
        QT_TRANSLATE_NOOP("ExchangeText", "The device that wrote it is not one of the programme.")},
    Reason{"ended", QT_TRANSLATE_NOOP("ExchangeText", "It was written after this device was ended.")},
    Reason{"member_ended",
        QT_TRANSLATE_NOOP("ExchangeText", "It was written after its author's last day in the programme.")},
    Reason{"not_yours",
        QT_TRANSLATE_NOOP(
            "ExchangeText", "It is about a field that is neither its author's nor lent to them.")},
    Reason{"other_site",
        QT_TRANSLATE_NOOP("ExchangeText", "It names another field than its record belongs to.")},
    Reason{"coordinator_only", QT_TRANSLATE_NOOP("ExchangeText", "Only a coordinator may say this.")},
    Reason{
        "root_only", QT_TRANSLATE_NOOP("ExchangeText", "Only a main device of the programme may say this.")},
    Reason{"settling_not_yours",
        QT_TRANSLATE_NOOP(
            "ExchangeText", "It settles a difference between others; a coordinator does that.")},
    Reason{"proposal",
        QT_TRANSLATE_NOOP("ExchangeText", "The record stands; this waits until a coordinator takes it.")},
};

} // namespace

QString saidOf(const sync::ExchangeReport& report)
{
    QStringList said;
    if (report.changes > 0)
        said << (shown(report.changes) == 1
                ? ExchangeText::tr("One new entry came in.")
                : ExchangeText::tr("%n new entries came in.", nullptr, shown(report.changes)));
    if (report.photosReceived > 0)
        said << (shown(report.photosReceived) == 1
                ? ExchangeText::tr("One photograph came in.")
                : ExchangeText::tr("%n photographs came in.", nullptr, shown(report.photosReceived)));
    if (report.sent > 0) said << ExchangeText::tr("What was new here is handed over.");
    if (report.photosSent > 0)
        said << (shown(report.photosSent) == 1
                ? ExchangeText::tr("One photograph is handed over.")
                : ExchangeText::tr("%n photographs are handed over.", nullptr, shown(report.photosSent)));
    if (said.isEmpty() && !report.wasStopped) said << ExchangeText::tr("Nothing new on either side.");
    if (report.wasStopped) said << ExchangeText::tr("Stopped: what was done until then is done.");
    return said.join(QLatin1Char(' '));
}

QString troubleOf(const sync::ExchangeReport& report)
{
    QStringList said;
    if (report.waiting > 0)
        said << (shown(report.waiting) == 1
                ? ExchangeText::tr("One bundle waits for an earlier one of the same device.")
                : ExchangeText::tr("%n bundles wait for an earlier one of the same device.", nullptr,
                    shown(report.waiting)));
    if (report.unfinished > 0)
        said << (shown(report.unfinished) == 1
                ? ExchangeText::tr("One file is not finished copying; it is taken in next time.")
                : ExchangeText::tr("%n files are not finished copying; they are taken in next time.", nullptr,
                    shown(report.unfinished)));
    if (report.keptAside > 0)
        said << (shown(report.keptAside) == 1 ? ExchangeText::tr("One file was refused and is kept aside.")
                                              : ExchangeText::tr("%n files were refused and are kept aside.",
                                                  nullptr, shown(report.keptAside)));
    if (report.metFork)
        said << ExchangeText::tr(
            "A device was copied or restored: different entries stand under one number. All are kept.");
    for (const Error& error : report.troubles) said << text::sentence(error);
    return said.join(QLatin1Char(' '));
}

QString wayName(const QString& way)
{
    const QString kind = way.section(QLatin1Char(':'), 0, 0);
    const QString where = way.section(QLatin1Char(':'), 1);
    if (kind == QLatin1String("folder")) {
        const QString name = QFileInfo(QDir::cleanPath(where)).fileName();
        return ExchangeText::tr("The folder “%1”").arg(name.isEmpty() ? where : name);
    }
    const QString host = QUrl(where).host();
    return ExchangeText::tr("The hub at %1").arg(host.isEmpty() ? where : host);
}

QString momentWords(Instant at, const Moment& now)
{
    const auto wall = [&now](Instant moment) {
        return QDateTime::fromMSecsSinceEpoch(toMs(moment + now.offset), Qt::UTC);
    };
    const QDateTime then = wall(at);
    const QString time = text::timeOfDay(then.time().msecsSinceStartOfDay() / 60000);
    if (then.date() == wall(now.at).date()) return ExchangeText::tr("today, %1", "time of day").arg(time);
    const QString day = QLocale().toString(then.date(), ExchangeText::tr("d MMMM", "a day of this year"));
    return ExchangeText::tr("%1, %2", "day, time of day").arg(day, time);
}

QString travelWords(const store::HandedOver& counts)
{
    if (counts.here > 0) return ExchangeText::tr("on this phone");
    if (counts.handedOver > 0) return ExchangeText::tr("handed over");
    return counts.atHub > 0 ? ExchangeText::tr("at the hub") : QString();
}

QString asideWords(const std::string& reason)
{
    for (const Reason& known : reasons)
        if (reason == known.code) return ExchangeText::tr(known.words);
    return ExchangeText::tr("It does not count by the rules of the programme.");
}

QString refusalWords(const std::string& reason)
{
    const auto error = sync::refusalIn(reason);
    return error ? text::sentence(*error) : QString::fromStdString(reason);
}

} // namespace duskrow::app
