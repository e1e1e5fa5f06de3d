// SPDX-License-Identifier: MIT
#pragma once

#include <QTemporaryDir>

#include <atomic>
#include <unistd.h>

#include "sync/hub/store/hub_store.h"

// Where a test of the hub keeps its store.
namespace duskrow::tests {

using namespace duskrow::hub;

// A file, or a database of its own when DUSKROW_POSTGRES names a server.
class StorePlace {
public:
    StorePlace()
    {
        const QByteArray server = qgetenv("DUSKROW_POSTGRES");
        if (server.isEmpty()) {
            m_where = m_folder.filePath(QStringLiteral("hub.db")).toStdString();
            return;
        }
        static std::atomic<int> count{0};
        const std::string name = "t" + std::to_string(getpid()) + "_" + std::to_string(++count);
        m_where = server.toStdString();
        const std::string make = "psql -q '" + m_where + "' -c 'CREATE DATABASE " + name + "'";
        if (std::system(make.c_str()) != 0) qFatal("no database"); // NOLINT(cert-env33-c): a fixed command
        m_where.replace(m_where.find("/postgres?"), 10, "/" + name + "?");
    }
    [[nodiscard]] const std::string& where() const { return m_where; }
    [[nodiscard]] bool isPostgres() const { return m_where.starts_with("postgresql://"); }
    [[nodiscard]] std::string file(const char* name) const
    {
        return m_folder.filePath(QString::fromLatin1(name)).toStdString();
    }

private:
    QTemporaryDir m_folder;
    std::string m_where;
};

inline std::unique_ptr<HubStore> openStore(const std::string& where)
{
    auto engine = openEngine(where, Opening::Serve);
    if (!engine) qFatal("no store: %s", engine.error().detail.c_str());
    return std::make_unique<HubStore>(std::move(*engine));
}

} // namespace duskrow::tests
