// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>

#include "app/session.h"

namespace duskrow::app {

// The pests whose protocols the program carries, with their names in the language of the device.
struct PestChoice {
    QStringList keys = {};
    QStringList labels = {};
};

PestChoice pestsToChoose(Session& session);

} // namespace duskrow::app
