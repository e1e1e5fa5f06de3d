// SPDX-License-Identifier: MIT
#include "app/start_view_model.h"

#include <algorithm>

#include "app/pest_choice.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// Presets: common practice, no source.
constexpr int graceDays = 1;
constexpr int reportDay = 2; // Tuesday
constexpr int reportMinute = 12 * 60;

QString complaint(const QString& text, const char* field)
{
    return text.trimmed().isEmpty() ? text::sentence(Error{ErrorCode::Empty, {field}}) : QString();
}

Role roleOf(const QString& word)
{
    const auto found = std::find(roleNames.begin(), roleNames.end(), word.toStdString());
    return found == roleNames.end() ? Role::Grower : static_cast<Role>(found - roleNames.begin());
}

} // namespace

QStringList StartViewModel::pestKeys() const
{
    return pestsToChoose(session()).keys;
}

QStringList StartViewModel::pestLabels() const
{
    return pestsToChoose(session()).labels;
}

int StartViewModel::year() const
{
    return yearOf(session().clock().today());
}

QString StartViewModel::nameError() const
{
    return m_wasChecked ? complaint(m_name, "name") : QString();
}

QString StartViewModel::myNameError() const
{
    return m_wasChecked ? complaint(m_myName, "name") : QString();
}

void StartViewModel::setBusy(bool busy)
{
    m_busy = busy;
    Q_EMIT busyChanged();
}

std::vector<Edit> StartViewModel::edits(const Uuid& me) const
{
    Programme programme;
    programme.id = session().store().programme();
    programme.name = m_name.trimmed().toStdString();

    Season season;
    season.id = seasonId(programme.id, year());
    season.year = year();
    season.weekStart = m_weekStart;
    season.countDay = m_countDay;
    season.graceDays = graceDays;
    season.reportDay = reportDay;
    season.reportMinute = reportMinute;

    ProtocolUse use;
    use.id = protocolUseId(programme.id, season.id, m_pest.toStdString());
    use.season = season.id;
    use.pest = m_pest.toStdString();

    Member member;
    member.id = me;
    member.name = m_myName.trimmed().toStdString();
    member.role = roleOf(m_role);

    std::vector<Edit> all{
        creation(programme, {}), creation(season, {}), creation(use, {}), creation(member, {})};
    const QStringList names = m_districts.split(QLatin1Char(','), Qt::SkipEmptyParts);
    for (const QString& name : names) {
        if (name.trimmed().isEmpty()) continue;
        District district;
        district.id = session().newId();
        district.name = name.trimmed().toStdString();
        all.push_back(creation(district, {}));
    }
    return all;
}

void StartViewModel::begin()
{
    m_wasChecked = true;
    Q_EMIT checked();
    if (m_busy || !nameError().isEmpty() || !myNameError().isEmpty()) return;
    setBusy(true);
    // The first changes already stand under the name of the member they make.
    const Uuid me = session().newId();
    if (const auto saved = session().setMe(me); !saved) {
        setBusy(false);
        return tell(saved.error());
    }
    session().keep(edits(me), std::nullopt, this, [this](const Result<store::Kept>& kept) {
        setBusy(false);
        if (!kept) return tell(kept.error());
        clearTrouble();
        Q_EMIT begun();
    });
}

} // namespace duskrow::app
