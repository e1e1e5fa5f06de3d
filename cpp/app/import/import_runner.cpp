// SPDX-License-Identifier: MIT
#include "app/import/import_runner.h"

#include <QPointer>

#include "app/exchange/people.h"

namespace duskrow::app {

using namespace duskrow::domain;

ImportRunner::~ImportRunner()
{
    stop();
}

Result<domain::Done> ImportRunner::checkAllowed() const
{
    const store::Store& store = m_session.store();
    const auto people = People::read(m_session.reader(), store.programme(), store.stream());
    if (!people) return people.error();
    return people->isCoordinator() ? Result<domain::Done>(domain::Done{})
                                   : Error{ErrorCode::CoordinatorsOnly, {}};
}

void ImportRunner::run(const Work& work, Done done)
{
    m_stopped = std::make_shared<std::atomic<bool>>(false);
    m_part = 0;
    Q_EMIT progressed();
    Session* home = &m_session;
    const auto progress = [home, stopped = m_stopped, self = QPointer<ImportRunner>(this)](
                              std::int64_t kept, std::int64_t all) {
        QMetaObject::invokeMethod(home, [self, kept, all] {
            if (!self) return;
            self->m_part = all > 0 ? static_cast<double>(kept) / static_cast<double>(all) : 0;
            Q_EMIT self->progressed();
        });
        return !*stopped;
    };
    // The session answers even when the page is gone: other screens are to see what came in.
    home->lookUpLong<store::ImportRun>(
        home, [work, progress](store::Reader&) { return work(progress); },
        [home, self = QPointer<ImportRunner>(this), done = std::move(done)](
            const Result<store::ImportRun>& run) {
            home->refresh();
            Q_EMIT home->changed();
            if (!self) return;
            self->m_stopped.reset();
            done(run);
        });
}

void ImportRunner::stop()
{
    if (m_stopped) *m_stopped = true;
}

} // namespace duskrow::app
