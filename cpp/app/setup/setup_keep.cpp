// SPDX-License-Identifier: MIT
// The part of a set-up that makes the records.
#include <QUrl>

#include <cmath>

#include "app/setup/setup_view_model.h"
#include "store/photos.h"

namespace duskrow::app {

using namespace duskrow::domain;

Trap SetupViewModel::soFar() const
{
    Trap trap;
    if (const Site* chosen = m_site.chosen()) trap.site = chosen->id;
    if (session().season()) trap.season = session().season()->id;
    trap.replaces = m_replaces;
    trap.setDay = day();
    if (const auto& found = m_place.found()) {
        trap.latE7 = found->point.latE7;
        trap.lonE7 = found->point.lonE7;
        if (found->accuracy)
            trap.accuracy =
                Millimetres{std::max<std::int64_t>(1, std::llround(found->accuracy->value() * 1000))};
        trap.fixMethod = found->method;
        if (found->at) trap.fixAtMs = toMs(*found->at);
        trap.fixCount = found->count;
    }
    m_around.fill(trap);
    m_trap.fill(trap);
    m_stake.fill(trap);
    trap.photo = m_photo.toStdString();
    trap.remark = clean(m_remark);
    return trap;
}

void SetupViewModel::keep()
{
    const Moment now = session().clock().now();
    Trap trap = soFar();
    trap.id = session().newId();
    const Uuid newSite = session().newId();
    if (trap.site.isNil()) trap.site = newSite;
    // Entered on a later day, the moment of the work is not known.
    if (day() == now.day) {
        trap.setAtMs = toMs(now.at);
        trap.offsetMin = static_cast<int>(now.offset.count());
    }
    std::vector<Edit> edits;
    if (auto site = m_site.edit(newSite)) edits.push_back(std::move(*site));
    edits.push_back(creation(trap, trap.site));

    m_busy = true;
    Q_EMIT changed();
    session().keep(std::move(edits), m_draftKey, this,
        [this, id = trap.id, site = trap.site](const Result<store::Kept>& kept) {
            m_busy = false;
            Q_EMIT changed();
            if (!kept) return tell(kept.error());
            clearTrouble();
            m_keptTrap = id;
            m_keptSite = site;
            setPage(Page::Kept);
        });
}

void SetupViewModel::choosePhoto(const QUrl& file)
{
    const std::string path = (file.isLocalFile() ? file.toLocalFile() : file.toString()).toStdString();
    session().lookUp<std::string>(
        this,
        [store = session().store().path(), path](store::Reader&) { return store::keepPhoto(store, path); },
        [this](const Result<std::string>& kept) {
            if (!kept) return tell(kept.error());
            clearTrouble();
            setProperty("photo", QString::fromStdString(*kept));
        });
}

void SetupViewModel::dropPhoto()
{
    setProperty("photo", QString());
}

QString SetupViewModel::photoSource() const
{
    if (m_photo.isEmpty()) return {};
    const auto path = store::photoPath(session().store().path(), m_photo.toStdString());
    return QUrl::fromLocalFile(QString::fromStdString(path)).toString();
}

} // namespace duskrow::app
