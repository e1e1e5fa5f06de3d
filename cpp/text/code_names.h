// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "domain/records/programme.h"
#include "domain/records/question.h"
#include "domain/records/roster.h"
#include "domain/records/trap.h"
#include "domain/records/visit.h"
#include "domain/records/walk.h"

namespace duskrow::text {

// The words for the choices that records hold, as they stand on a button or in a list: "could not count".
QString name(domain::Role role);
QString name(domain::Says says);
QString name(domain::Answered answered);
QString name(domain::FixMethod method);
QString name(domain::HeightRule rule);
QString name(domain::EndReason reason);
QString name(domain::ServiceWhat what);
QString name(domain::Outcome outcome);
QString name(domain::ReportedHow how);
QString name(domain::NoCountReason reason);
QString name(domain::TrapState state);
QString name(domain::CountMethod method);
QString name(domain::SampleState state);
QString name(domain::Decided decided);

} // namespace duskrow::text
