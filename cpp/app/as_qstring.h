// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <optional>
#include <string_view>

#include "domain/base/time.h"
#include "domain/base/uuid.h"

// What the domain writes in UTF-8, as Qt writes it.
namespace duskrow::app {

inline QString asQString(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

inline QString asQString(const domain::Uuid& id)
{
    return asQString(domain::formatUuid(id));
}

// Empty without a day.
inline QString asQString(const std::optional<domain::LocalDay>& day)
{
    return day ? asQString(domain::formatDay(*day)) : QString();
}

} // namespace duskrow::app
