// SPDX-License-Identifier: MIT
#include "app/exchange/hub_address.h"

namespace duskrow::app {

namespace {

constexpr int hubPort = 8460; // where a hub listens unless its keeper says otherwise

} // namespace

// What is on this device itself needs no encryption, and has no certificate.
QUrl hubAddress(const QString& typed)
{
    const QString text = typed.trimmed();
    if (text.isEmpty()) return {};
    if (text.contains(QLatin1String("://"))) return QUrl(text);
    const bool isHere = text.startsWith(QLatin1String("127.")) || text.startsWith(QLatin1String("localhost"));
    QUrl url((isHere ? QStringLiteral("http://") : QStringLiteral("https://")) + text);
    if (url.isValid() && url.port() < 0) url.setPort(hubPort);
    return url;
}

} // namespace duskrow::app
