// SPDX-License-Identifier: MIT
#include "text/code_names.h"

#include <QCoreApplication>

namespace duskrow::text {

using namespace duskrow::domain;

// Each switch is without a default, so that the compiler names the choice that has no words yet.

QString name(Role role)
{
    switch (role) {
    case Role::Grower:
        return QCoreApplication::translate("Role", "grower");
    case Role::Agronomist:
        return QCoreApplication::translate("Role", "agronomist");
    case Role::Coordinator:
        return QCoreApplication::translate("Role", "coordinator");
    }
    return {};
}

QString name(Says says)
{
    switch (says) {
    case Says::Stands:
        return QCoreApplication::translate("Says", "it stands");
    case Says::Open:
        return QCoreApplication::translate("Says", "it is open");
    }
    return {};
}

QString name(FixMethod method)
{
    switch (method) {
    case FixMethod::Satellite:
        return QCoreApplication::translate("FixMethod", "by satellite");
    case FixMethod::Typed:
        return QCoreApplication::translate("FixMethod", "typed in");
    }
    return {};
}

QString name(HeightRule rule)
{
    switch (rule) {
    case HeightRule::Fixed:
        return QCoreApplication::translate("HeightRule", "fixed height");
    case HeightRule::FollowCanopy:
        return QCoreApplication::translate("HeightRule", "follow the canopy");
    }
    return {};
}

QString name(EndReason reason)
{
    switch (reason) {
    case EndReason::SeasonOver:
        return QCoreApplication::translate("EndReason", "season over");
    case EndReason::Lost:
        return QCoreApplication::translate("EndReason", "lost");
    case EndReason::Moved:
        return QCoreApplication::translate("EndReason", "moved");
    case EndReason::Replaced:
        return QCoreApplication::translate("EndReason", "replaced by a new trap");
    }
    return {};
}

QString name(ServiceWhat what)
{
    switch (what) {
    case ServiceWhat::Lure:
        return QCoreApplication::translate("ServiceWhat", "lure changed");
    case ServiceWhat::Strip:
        return QCoreApplication::translate("ServiceWhat", "killing strip changed");
    case ServiceWhat::Raise:
        return QCoreApplication::translate("ServiceWhat", "trap raised");
    case ServiceWhat::Move:
        return QCoreApplication::translate("ServiceWhat", "trap moved");
    }
    return {};
}

QString name(Outcome outcome)
{
    switch (outcome) {
    case Outcome::Counted:
        return QCoreApplication::translate("Outcome", "counted");
    case Outcome::CouldNotCount:
        return QCoreApplication::translate("Outcome", "could not count");
    }
    return {};
}

QString name(ReportedHow how)
{
    switch (how) {
    case ReportedHow::Phone:
        return QCoreApplication::translate("ReportedHow", "by phone");
    case ReportedHow::TextMessage:
        return QCoreApplication::translate("ReportedHow", "by text message");
    case ReportedHow::InPerson:
        return QCoreApplication::translate("ReportedHow", "in person");
    case ReportedHow::Paper:
        return QCoreApplication::translate("ReportedHow", "on paper");
    }
    return {};
}

QString name(NoCountReason reason)
{
    switch (reason) {
    case NoCountReason::Fallen:
        return QCoreApplication::translate("NoCountReason", "trap had fallen");
    case NoCountReason::Missing:
        return QCoreApplication::translate("NoCountReason", "trap was missing");
    case NoCountReason::Flooded:
        return QCoreApplication::translate("NoCountReason", "bucket was flooded");
    case NoCountReason::Spoiled:
        return QCoreApplication::translate("NoCountReason", "catch was spoiled");
    case NoCountReason::Access:
        return QCoreApplication::translate("NoCountReason", "could not get to the trap");
    case NoCountReason::Other:
        return QCoreApplication::translate("NoCountReason", "another reason");
    }
    return {};
}

QString name(TrapState state)
{
    switch (state) {
    case TrapState::Fine:
        return QCoreApplication::translate("TrapState", "fine");
    case TrapState::Fallen:
        return QCoreApplication::translate("TrapState", "fallen");
    case TrapState::Flooded:
        return QCoreApplication::translate("TrapState", "flooded");
    case TrapState::Damaged:
        return QCoreApplication::translate("TrapState", "damaged");
    case TrapState::Missing:
        return QCoreApplication::translate("TrapState", "missing");
    case TrapState::LureGone:
        return QCoreApplication::translate("TrapState", "lure gone");
    }
    return {};
}

QString name(CountMethod method)
{
    switch (method) {
    case CountMethod::Each:
        return QCoreApplication::translate("CountMethod", "counted one by one");
    case CountMethod::Volume:
        return QCoreApplication::translate("CountMethod", "from a part by volume");
    case CountMethod::Weight:
        return QCoreApplication::translate("CountMethod", "from a part by weight");
    }
    return {};
}

QString name(Answered answered)
{
    switch (answered) {
    case Answered::Right:
        return QCoreApplication::translate("Answered", "it is right");
    case Answered::Corrected:
        return QCoreApplication::translate("Answered", "it was corrected");
    }
    return {};
}

QString name(SampleState state)
{
    switch (state) {
    case SampleState::Kept:
        return QCoreApplication::translate("SampleState", "kept");
    case SampleState::Sent:
        return QCoreApplication::translate("SampleState", "sent");
    case SampleState::Received:
        return QCoreApplication::translate("SampleState", "received");
    case SampleState::Named:
        return QCoreApplication::translate("SampleState", "named");
    }
    return {};
}

QString name(Decided decided)
{
    switch (decided) {
    case Decided::Control:
        return QCoreApplication::translate("Decided", "control the larvae");
    case Decided::NoControl:
        return QCoreApplication::translate("Decided", "leave the field alone");
    case Decided::LookAgain:
        return QCoreApplication::translate("Decided", "look again");
    }
    return {};
}

} // namespace duskrow::text
