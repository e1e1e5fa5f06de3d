// SPDX-License-Identifier: MIT
#include "app/programme_view_model.h"

#include <algorithm>

#include "app/pest_choice.h"
#include "store/queries.h"
#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

QString complaint(const QString& text)
{
    return text.trimmed().isEmpty() ? text::sentence(Error{ErrorCode::Empty, {"name"}}) : QString();
}

template <typename R>
void addCorrection(std::vector<Edit>& all, const R& before, const R& after)
{
    Edit edit = correction(before, after, {});
    if (!edit.fields.empty()) all.push_back(std::move(edit));
}

} // namespace

ProgrammeViewModel::ProgrammeViewModel(Session& session, QObject* parent) : ViewModel(session, parent)
{
    if (const auto& programme = session.programme()) m_name = QString::fromStdString(programme->name);
    if (const auto& me = session.me()) {
        m_myName = QString::fromStdString(me->name);
        const std::string_view role =
            me->role ? roleNames[static_cast<std::size_t>(*me->role)] : std::string_view();
        m_role = QString::fromUtf8(role.data(), static_cast<qsizetype>(role.size()));
    }
    if (const auto& season = session.season()) {
        m_weekStart = season->weekStart.value_or(1);
        m_countDay = season->countDay.value_or(1);
        m_graceDays = season->graceDays.value_or(0);
        m_reportDay = season->reportDay.value_or(0);
        m_reportMinute = season->reportMinute.value_or(0);
        const auto uses = store::protocolsInUse(session.reader(), season->id);
        if (!uses) {
            tell(uses.error());
            return;
        }
        for (const ProtocolUse& use : *uses) m_pests << QString::fromStdString(use.pest);
        m_keptPests = m_pests.size();
    }
    auto districts = store::districts(session.reader());
    if (!districts) {
        tell(districts.error());
        return;
    }
    m_keptDistricts = std::move(*districts);
    for (const District& district : m_keptDistricts) m_districts << QString::fromStdString(district.name);
}

QString ProgrammeViewModel::nameError() const
{
    return complaint(m_name);
}

QString ProgrammeViewModel::myNameError() const
{
    return complaint(m_myName);
}

void ProgrammeViewModel::setDistrict(int at, const QString& name)
{
    if (at < 0 || at >= m_districts.size()) return;
    m_districts[at] = name; // no signal: the box that was typed into must stay
}

void ProgrammeViewModel::addDistrict()
{
    m_districts << QString();
    Q_EMIT districtsChanged();
}

QString ProgrammeViewModel::timeOfDay(int minute) const
{
    return text::timeOfDay(minute);
}

QStringList ProgrammeViewModel::pestKeys() const
{
    return pestsToChoose(session()).keys;
}

QStringList ProgrammeViewModel::pestLabels() const
{
    return pestsToChoose(session()).labels;
}

void ProgrammeViewModel::togglePest(const QString& pest)
{
    const qsizetype at = m_pests.indexOf(pest);
    if (at < 0)
        m_pests << pest;
    else if (at >= m_keptPests)
        m_pests.removeAt(at);
    Q_EMIT pestsChanged();
}

void ProgrammeViewModel::addPestEdits(std::vector<Edit>& all) const
{
    const auto& season = session().season();
    if (!season) return;
    for (const QString& pest : m_pests.mid(m_keptPests)) {
        ProtocolUse use;
        use.id = protocolUseId(session().store().programme(), season->id, pest.toStdString());
        use.season = season->id;
        use.pest = pest.toStdString();
        all.push_back(creation(use, {}));
    }
}

void ProgrammeViewModel::addDistrictEdits(std::vector<Edit>& all) const
{
    for (qsizetype at = 0; at < m_districts.size(); ++at) {
        const std::string name = m_districts[at].trimmed().toStdString();
        if (at >= static_cast<qsizetype>(m_keptDistricts.size())) {
            if (name.empty()) continue;
            District district;
            district.id = session().newId();
            district.name = name;
            all.push_back(creation(district, {}));
            continue;
        }
        const District& before = m_keptDistricts[static_cast<std::size_t>(at)];
        if (name.empty()) {
            all.push_back(withdrawal(before, {}, "no longer a district"));
            continue;
        }
        District after = before;
        after.name = name;
        addCorrection(all, before, after);
    }
}

std::vector<Edit> ProgrammeViewModel::edits() const
{
    std::vector<Edit> all;
    if (const auto& before = session().programme()) {
        Programme after = *before;
        after.name = m_name.trimmed().toStdString();
        addCorrection(all, *before, after);
    }
    if (const auto& before = session().me()) {
        Member after = *before;
        after.name = m_myName.trimmed().toStdString();
        const auto role = std::find(roleNames.begin(), roleNames.end(), m_role.toStdString());
        if (role != roleNames.end()) after.role = static_cast<Role>(role - roleNames.begin());
        addCorrection(all, *before, after);
    }
    if (const auto& before = session().season()) {
        Season after = *before;
        after.weekStart = m_weekStart;
        after.countDay = m_countDay;
        after.graceDays = m_graceDays;
        after.reportDay = m_reportDay > 0 ? std::optional(m_reportDay) : std::nullopt;
        after.reportMinute = m_reportDay > 0 ? std::optional(m_reportMinute) : std::nullopt;
        addCorrection(all, *before, after);
    }
    addDistrictEdits(all);
    addPestEdits(all);
    return all;
}

void ProgrammeViewModel::keep()
{
    if (m_busy || !nameError().isEmpty() || !myNameError().isEmpty()) return;
    const auto all = edits();
    if (all.empty()) return Q_EMIT kept();
    m_busy = true;
    Q_EMIT busyChanged();
    session().keep(all, std::nullopt, this, [this](const Result<store::Kept>& result) {
        m_busy = false;
        Q_EMIT busyChanged();
        if (!result) return tell(result.error());
        clearTrouble();
        Q_EMIT kept();
    });
}

} // namespace duskrow::app
