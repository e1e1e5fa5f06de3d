// SPDX-License-Identifier: MIT
#pragma once

#include <QVariant>

#include "domain/records/value.h"

// A value of the log as a test writes it, and back.
duskrow::domain::Value toValue(const QVariant& value);
QVariant toVariant(const duskrow::domain::Value& value);
