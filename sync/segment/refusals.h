// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "domain/base/result.h"

namespace duskrow::sync {

inline domain::Error malformed(std::string what)
{
    return {domain::ErrorCode::SegmentMalformed, {std::move(what)}};
}

inline domain::Error tooLarge(const char* what)
{
    return {domain::ErrorCode::SegmentTooLarge, {what}};
}

} // namespace duskrow::sync
