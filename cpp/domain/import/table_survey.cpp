// SPDX-License-Identifier: MIT
#include "domain/import/table_survey.h"

#include "domain/base/plain_word.h"

namespace duskrow::domain {

void TableSurvey::take(const std::vector<std::string>& cells)
{
    using enum ImportField;
    for (std::size_t i = 0; i < cells.size() && i < m_map.size(); ++i) {
        const ImportField field = m_map[i].field;
        if (field == Day || field == FromDay || field == SetDay) m_days.take(cells[i]);
        const bool isNumber = field == Latitude || field == Longitude || field == Entrance || field == Canopy
            || field == Count || field == NotIt || field == BumbleBees || field == PeriodNights;
        if (isNumber) takeNumber(withoutBlanks(cells[i]));
    }
}

void TableSurvey::takeNumber(std::string_view cell)
{
    if (cell.size() > 40 || (!m_point.empty() && !m_comma.empty())) return;
    const std::size_t at = cell.find_first_of(".,");
    if (at == std::string_view::npos || at == 0 || cell.find_first_of(".,", at + 1) != std::string_view::npos)
        return;
    std::size_t behind = 0;
    while (at + 1 + behind < cell.size() && cell[at + 1 + behind] >= '0' && cell[at + 1 + behind] <= '9')
        ++behind;
    if (behind == 0 || behind == 3) return;
    std::string& place = cell[at] == '.' ? m_point : m_comma;
    if (place.empty()) place = cell;
}

DecimalFinding TableSurvey::decimalMark() const
{
    if (!m_point.empty() && !m_comma.empty()) return {std::nullopt, DecimalReason::Both, m_point, m_comma};
    if (!m_point.empty()) return {DecimalMark::Point, DecimalReason::Shown, m_point};
    if (!m_comma.empty()) return {DecimalMark::Comma, DecimalReason::Shown, m_comma};
    return {};
}

} // namespace duskrow::domain
