// SPDX-License-Identifier: MIT
#include "sync/hub/store/engine.h"

namespace duskrow::hub {

namespace {

const std::string nothing;

}

std::int64_t Row::number(std::size_t column) const
{
    const auto* number = column < m_cells.size() ? std::get_if<std::int64_t>(&m_cells[column]) : nullptr;
    return number == nullptr ? 0 : *number;
}

const std::string& Row::text(std::size_t column) const
{
    const auto* text = column < m_cells.size() ? std::get_if<std::string>(&m_cells[column]) : nullptr;
    return text == nullptr ? nothing : *text;
}

const std::string& Row::bytes(std::size_t column) const
{
    const auto* blob = column < m_cells.size() ? std::get_if<Blob>(&m_cells[column]) : nullptr;
    return blob == nullptr ? nothing : blob->bytes;
}

domain::Result<std::unique_ptr<Engine>> openEngine(const std::string& where, Opening opening)
{
    if (where.starts_with("postgresql://") || where.starts_with("postgres://")) return openPostgres(where);
    return openSqlite(where, opening);
}

} // namespace duskrow::hub
