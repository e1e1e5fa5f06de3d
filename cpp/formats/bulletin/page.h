// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "formats/bulletin/document.h"

namespace duskrow::formats {

// The bulletin as one web page: HTML 5 that is well-formed XML as well, UTF-8. It loads nothing, runs nothing
// and says so in a policy; map and chart stand in it, each with a table that says the same; light or dark as
// the reader's device is, and always light on paper.
std::string bulletinPage(const BulletinDocument& document);

} // namespace duskrow::formats
