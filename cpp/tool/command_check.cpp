// SPDX-License-Identifier: MIT
#include <QCoreApplication>

#include "store/check.h"
#include "text/amounts.h"
#include "tool/arguments.h"
#include "tool/commands.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

Result<int> check(const std::string& path)
{
    const auto report = store::checkStore(path);
    if (!report) return report.error();
    const QString name = QString::fromStdString(path);
    if (report->isSound()) {
        print(
            said(QT_TRANSLATE_NOOP("Tool",
                     "%1 is sound: %2 changes, all readable and without a gap, and the tables are what they "
                     "come to."))
                .arg(name, text::number(report->changes)));
        return 0;
    }
    print(said(QT_TRANSLATE_NOOP("Tool", "%1 is not sound. Keep a copy of it as it is.")).arg(name));
    if (report->integrity != "ok")
        print(said(QT_TRANSLATE_NOOP("Tool", "The file itself is damaged: %1"))
                  .arg(QString::fromStdString(report->integrity).simplified()));
    if (report->unreadable > 0)
        print(said(QT_TRANSLATE_NOOP("Tool", "Changes in the log that cannot be read: %1 of %2."))
                  .arg(text::number(report->unreadable), text::number(report->changes)));
    if (report->gaps > 0)
        print(said(QT_TRANSLATE_NOOP("Tool", "Changes missing from the log: %1."))
                  .arg(text::number(report->gaps)));
    if (!report->tablesEqual)
        print(said(QT_TRANSLATE_NOOP("Tool",
            "The tables differ from what the log comes to. Nothing in the log is lost; the tables have to be "
            "folded again.")));
    return 1;
}

} // namespace

Work declareCheck(CLI::App& line)
{
    const auto store = std::make_shared<std::string>();
    addStore(line, *store);
    line.footer(
        "Changes nothing. Exits with 0 when the store is sound, 1 when not, 2 when it cannot be checked.");
    return [store] { return check(*store); };
}

} // namespace duskrow::tool
