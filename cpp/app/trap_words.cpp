// SPDX-License-Identifier: MIT
#include "app/trap_words.h"

#include <QCoreApplication>

namespace duskrow::app {

using namespace duskrow::domain;

QString tagWords(const Trap& trap)
{
    if (trap.tag.empty()) return QCoreApplication::translate("Trap", "trap without a tag");
    return QString::fromStdString(trap.tag);
}

QString trapTitle(const Site& site, const Trap& trap)
{
    if (site.name.empty()) return tagWords(trap);
    return QStringLiteral("%1 · %2").arg(QString::fromStdString(site.name), tagWords(trap));
}

} // namespace duskrow::app
