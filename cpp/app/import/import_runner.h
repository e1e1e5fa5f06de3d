// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>

#include <atomic>
#include <functional>

#include "app/session.h"
#include "store/import_ledger.h"

namespace duskrow::app {

// What keeps the records of a table, or takes them back, where it holds up no screen. It goes on when the
// page is gone, until it is stopped.
class ImportRunner : public QObject {
    Q_OBJECT

public:
    using Work = std::function<domain::Result<store::ImportRun>(const store::Progress&)>;
    using Done = std::function<void(const domain::Result<store::ImportRun>&)>;

    explicit ImportRunner(Session& session, QObject* parent = nullptr) : QObject(parent), m_session(session)
    {
    }
    ~ImportRunner() override; // stops what runs: the same import again adds the rest

    [[nodiscard]] bool isRunning() const { return m_stopped != nullptr; }
    [[nodiscard]] double part() const { return m_part; } // 0 to 1

    // Nobody but a coordinator writes for others, once there are others.
    [[nodiscard]] domain::Result<domain::Done> checkAllowed() const;
    // done  called unless this is gone by then
    void run(const Work& work, Done done);
    void stop();

Q_SIGNALS:
    void progressed();

private:
    Session& m_session;
    std::shared_ptr<std::atomic<bool>> m_stopped; // null while nothing runs
    double m_part = 0;
};

} // namespace duskrow::app
