// SPDX-License-Identifier: MIT
#include "text/error_sentences.h"

#include <QCoreApplication>

namespace duskrow::text {

using domain::Error;
using domain::ErrorCode;

namespace {

constexpr std::array fieldFirst{Shows::Field, Shows::Value, Shows::Value};
constexpr std::array fieldAndBounds{Shows::Field, Shows::Bound, Shows::Bound};
constexpr std::array kindFirst{Shows::Kind, Shows::Value, Shows::Value};

} // namespace

// No default, so that the compiler names the code that has no sentence yet.
Sentence sentenceOf(const Error& error) // NOLINT(readability-function-size): a table in the form of a switch
{
    switch (error.code) {
    case ErrorCode::NotANumber:
        return {QT_TRANSLATE_NOOP("ErrorText", "“%1” is not a number. Type it in digits.")};
    case ErrorCode::NotWhole:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "“%1” is not a whole number. Leave out the part after the point.")};
    case ErrorCode::OutOfRange:
        return {QT_TRANSLATE_NOOP("ErrorText", "%1 must be from %2 to %3. Look at the number again."),
            fieldAndBounds};
    case ErrorCode::TooLong:
        return {QT_TRANSLATE_NOOP("ErrorText", "%1 is too long. Shorten it to %2 characters or fewer."),
            fieldFirst};
    case ErrorCode::Empty:
        return {QT_TRANSLATE_NOOP("ErrorText", "%1 is empty. Fill it in."), fieldFirst};
    case ErrorCode::NotADay:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "“%1” is not a day of the calendar. Write it as year-month-day, such as 2026-07-14.")};
    case ErrorCode::NotAPlace:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "“%1” is not a place. Type latitude and longitude in degrees, such as 52.1579, -106.6702.")};
    case ErrorCode::NotATime:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "“%1” is not a time of day. Type hours and minutes, such as 18:00.")};
    case ErrorCode::UnknownCode:
        if (error.args.size() > 2) // where nothing on a screen shows them
            return {QT_TRANSLATE_NOOP("ErrorText", "%1 cannot be “%2”. Choose one of: %3."), fieldFirst};
        return {QT_TRANSLATE_NOOP("ErrorText", "%1 cannot be “%2”. Choose one of the values offered."),
            fieldFirst};
    case ErrorCode::PartTooLarge:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "The counted part is larger than the whole catch. Check both amounts.")};
    case ErrorCode::TooFewParts:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "One counted part shows no spread. Count a second part of the catch.")};
    case ErrorCode::CurrenciesDiffer:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "The cost is in %1 but the price is in %2. Give both in the same dollars.")};
    case ErrorCode::LimitsCrossed:
        return {QT_TRANSLATE_NOOP("ErrorText", "The upper limit must be above the lower one. Look at both.")};
    case ErrorCode::CostTwice:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "The cost is given both as one sum and in parts. Leave one of them out.")};
    case ErrorCode::ProtocolSyntax:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The protocol file %1 cannot be read: line %2, %3. Correct that line, or put the file "
            "back as it came.")};
    case ErrorCode::ProtocolRule:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The protocol file %1 is not sound: line %2, %3. Correct that line, or put the file "
            "back as it came.")};
    case ErrorCode::ProtocolMissing:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "There is no protocol for “%1”. Check the name, or add its protocol file.")};
    case ErrorCode::ProtocolNoBands:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The protocol for %1 has no bands for the trap type “%2”. The catch can be shown, but "
            "not as a band.")};
    case ErrorCode::ProtocolNoThreshold:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The protocol for %1 has no threshold for the crop “%2”. Count larvae all the same, and ask an "
            "adviser.")};
    case ErrorCode::StoreMissing:
        return {QT_TRANSLATE_NOOP("ErrorText", "There is no store at %1. Check the name of the file.")};
    case ErrorCode::StoreNotOurs:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "“%1” is not a Duskrow store. It was left as it is. Choose another file.")};
    case ErrorCode::StoreDamaged:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The store %1 is damaged. It was left as it is. Keep the file, and go on from a copy or "
            "an exchange with others.")};
    case ErrorCode::StoreNewer:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The store %1 was written by a newer version of Duskrow. It was left as it is. Update "
            "Duskrow, then open it again.")};
    case ErrorCode::StoreOlder:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The store %1 was written by an older version of Duskrow. Open it once in Duskrow, then try "
            "again.")};
    case ErrorCode::StoreBusy:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "Another program has the store %1 open. Close it there, then try again.")};
    case ErrorCode::StoreReadOnly:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The store %1 cannot be written to. Check that you may write in its folder, or move it "
            "to one where you may.")};
    case ErrorCode::StoreExists:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "There is already a file at %1. It was left as it is. Choose another name.")};
    case ErrorCode::StoreUnreachable:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The database at %1 does not answer. See that it runs and that its address is right.")};
    case ErrorCode::CodeUnreadable:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "“%1” is no invitation. It has ten letters and digits, such as 7K3QM-2XV9A.")};
    case ErrorCode::NotEnoughMemory:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "There is too little memory. Close other programs and try again.")};
    case ErrorCode::NetworkUnusable:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "Nobody can be served at %1. Another program may use it, or it is no address of this computer.")};
    case ErrorCode::DiskFull:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "There is no room left where %1 lies, so nothing was kept just now. Make room, then try "
            "again.")};
    case ErrorCode::DiskFailed:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The disk did not read or write %1 as it should, so nothing was kept just now. Try "
            "again, and copy the file elsewhere if it goes on.")};
    case ErrorCode::KeyUnreadable:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The key of this installation at %1 cannot be read or made. Check that you may read and "
            "write there.")};
    case ErrorCode::ChangeMalformed:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "An entry in the log cannot be read (%1). It was left as it is; update Duskrow if "
            "others use a newer version.")};
    case ErrorCode::SegmentUnfinished:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "This file is not finished copying. Wait a little and exchange again.")};
    case ErrorCode::SegmentMalformed:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "What came in is damaged or is no part of an exchange (%1). It was kept aside; ask for it "
            "again.")};
    case ErrorCode::SegmentTooLarge:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "What came in is larger than an exchange allows (%1). It was kept aside; tell the coordinator.")};
    case ErrorCode::SegmentForged:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "What came in is not signed by the device it names. It was kept aside; tell the coordinator.")};
    case ErrorCode::SegmentNewer:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "What came in was written by a newer version of Duskrow (%1). It was kept and is passed on; "
            "update Duskrow to use it.")};
    case ErrorCode::OtherProgramme:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "“%1” belongs to another programme. It was kept aside; open that programme to take it in.")};
    case ErrorCode::FolderMissing:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The folder “%1” is not there. Plug the stick in or wait until the folder is connected, then "
            "exchange again. "
            "Everything is kept on this device.")};
    case ErrorCode::FolderTooFull:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "There are more files in “%1” than an exchange looks through. Move foreign files out of it.")};
    case ErrorCode::CarriedNotOurs:
        return {QT_TRANSLATE_NOOP("ErrorText", "“%1” is not a file that Duskrow wrote. Choose another one.")};
    case ErrorCode::CarriedCut:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "“%1” stops before its end. All that was whole was taken in; ask for the file again for the "
            "rest.")};
    case ErrorCode::HubUnreachable:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The hub at %1 does not answer. Everything is kept on this device and goes on its way with the "
            "next exchange.")};
    case ErrorCode::HubNotOurs:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "What answers at %1 is not a hub: perhaps a log-in page of the network here. Open a browser "
            "once, or try "
            "another network.")};
    case ErrorCode::HubNotTrusted:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "What answers at %1 cannot prove that it is this hub, so nothing was sent. Try another network, "
            "or ask "
            "whoever runs the hub about its certificate.")};
    case ErrorCode::HubRefused:
        return {QT_TRANSLATE_NOOP("ErrorText", "The hub at %1 says: %2. Everything is kept on this device.")};
    case ErrorCode::HubKeptAside:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The hub at %1 kept entries aside (%2). They are safe there and here; the coordinator can let "
            "them in.")};
    case ErrorCode::NotEnrolled:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "This device is not enrolled at %1, or was ended there. Ask the coordinator for an invitation.")};
    case ErrorCode::InvitationUnknown:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "Nobody knows this code here. Look at the ten characters again, or ask the coordinator for a new "
            "one.")};
    case ErrorCode::InvitationPast:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "This invitation was good until %1. Ask the coordinator for a new one.")};
    case ErrorCode::InvitationUsed:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "A device has come in with this code already. Ask the coordinator for a new one.")};
    case ErrorCode::InvitationDoubtful:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "More than one programme or founder answers to this code. Ask the coordinator for the whole "
            "invitation, as a link or picture.")};
    case ErrorCode::AlreadyJoined:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "This device is in that programme already, with the key %1. Open its store; if that is gone for "
            "good, move the key away and join again.")};
    case ErrorCode::MemberUnsaid:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "Nobody has said who holds the store %1. Open it in Duskrow once and choose your name.")};
    case ErrorCode::CoordinatorsOnly:
        return {
            QT_TRANSLATE_NOOP("ErrorText", "Only a coordinator of the programme may do this. Ask yours to.")};
    case ErrorCode::RootsOnly:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "Only the device that founded the programme, or one made its equal, may do this. Do it there.")};
    case ErrorCode::RecordMissing:
        return {QT_TRANSLATE_NOOP("ErrorText", "This %1 is not in the store. Go back and choose it again."),
            kindFirst};
    case ErrorCode::FileUnreadable:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "The file %1 cannot be read. Check its name and that you may read it.")};
    case ErrorCode::FileUnwritable:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "“%1” cannot be written. Check that its folder exists, has room, and lets you write.")};
    case ErrorCode::BulletinElsewhere:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The bulletin of week %1 was published from another desk, and what that desk kept of it is not "
            "here. "
            "Go on there, or bring its folder of bulletins over.")};
    case ErrorCode::NotPublished:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The counts of week %1 are not all due yet, so there is no bulletin of it. Wait until its days "
            "of grace "
            "are over.")};
    case ErrorCode::TableUnreadable:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "Line %1 of the table cannot be read. Close its quotes, or give it all its columns.")};
    case ErrorCode::ColumnMissing:
        if (error.args.size() > 1) // what stands there
            return {QT_TRANSLATE_NOOP("ErrorText",
                "The first line of the table is no line of names: “%2” stands there. Put a line with the "
                "names of "
                "the columns above it.")};
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "The table has no column “%1”. Name the columns on its first line.")};
    case ErrorCode::PictureUnreadable:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "The picture %1 cannot be used. Choose a picture file of at most 32 MB.")};
    case ErrorCode::TableEmpty:
        return {QT_TRANSLATE_NOOP("ErrorText", "The file %1 holds no count. Write one in each row.")};
    case ErrorCode::TableNoColumn:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "The file %1 has no column “%2”. Name its columns in the first row.")};
    case ErrorCode::TableRow:
        if (error.args.size() > 3 && error.args[3] == "place")
            return {QT_TRANSLATE_NOOP("ErrorText",
                "In row %2 of %1, “%3” is not a place. Write latitude and longitude in degrees, such as "
                "52.1579, -106.6702.")};
        if (error.args.size() > 3 && error.args[3] == "stop")
            return {QT_TRANSLATE_NOOP(
                "ErrorText", "In row %2 of %1, “%3” is not the number of a stop. Number the stops from 1.")};
        if (error.args.size() > 3 && error.args[3] == "infested")
            return {QT_TRANSLATE_NOOP("ErrorText",
                "In row %2 of %1, “%3” does not say whether the field is infested. Write yes or no.")};
        return {QT_TRANSLATE_NOOP("ErrorText",
            "In row %2 of %1, “%3” is not a count. Write one whole number in each row, such as 7.")};
    case ErrorCode::TableTooLong:
        return {
            QT_TRANSLATE_NOOP("ErrorText", "The table has more than %1 rows. Part it into several files.")};
    case ErrorCode::FileTooLarge:
        return {
            QT_TRANSLATE_NOOP("ErrorText", "The file %1 is larger than %2 MiB. Part it into several files.")};
    case ErrorCode::DayOrderUnsaid:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "“%1” may begin with the day or the month. Say which comes first.")};
    case ErrorCode::YearOfTwoDigits:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "The year of “%1” has two digits. Say the year of the table, or write four.")};
    case ErrorCode::DayOutsideYear:
        return {
            QT_TRANSLATE_NOOP("ErrorText", "%1 does not lie in the year %2. Check the day, or the year.")};
    case ErrorCode::YearUnsaid:
        return {QT_TRANSLATE_NOOP("ErrorText", "Nothing says the year of this row. Say it for the table.")};
    case ErrorCode::DecimalMarkUnsaid:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "The mark in “%1” may be a decimal mark or not. Say which mark the table uses.")};
    case ErrorCode::UnitUnsaid:
        return {
            QT_TRANSLATE_NOOP("ErrorText", "Nothing says the unit of %1. Say it, such as cm."), fieldFirst};
    case ErrorCode::TextUnreadable:
        return {QT_TRANSLATE_NOOP("ErrorText",
                    "%1 holds signs that are no text. Choose another encoding, or correct it in the file."),
            fieldFirst};
    case ErrorCode::ColumnTwice:
        return {QT_TRANSLATE_NOOP("ErrorText", "Two columns may be %1. Say which one it is."), fieldFirst};
    case ErrorCode::CountKept:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "Line %1 has %2 for the same trap and day. Leave the right one in the file.")};
    case ErrorCode::CountDiffers:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The store has a visit to this trap on this day that says otherwise (%1). Correct it there if "
            "the file is right.")};
    case ErrorCode::RecordWithdrawn:
        return {QT_TRANSLATE_NOOP("ErrorText",
                    "This %1 was taken back in the store (%2). Let it stand again there if the file is "
                    "right."),
            kindFirst};
    case ErrorCode::NightsDiffer:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The file says %1 nights, but by its days there are %2. The days are kept; look at them.")};
    case ErrorCode::PlaceDiffers:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "Line %1 puts this trap in another place. The first place is kept; look at both.")};
    case ErrorCode::NothingToUndo:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "Nothing of an import called “%1” stands here. Look at the list of imports on this device.")};
    case ErrorCode::MinimumAboveMaximum:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The minimum, %1, is above the maximum, %2. Perhaps the two columns are changed round.")};
    case ErrorCode::TemperatureKept:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "Line %1 has other temperatures for the same day. Those were taken; take one of the lines out.")};
    case ErrorCode::TemperatureDiffers:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "The store holds %1 to %2 °C for this day, and that was left so. Correct it there if the file is "
            "right.")};
    case ErrorCode::ScaleUnsaid:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "It does not show whether these are degrees Celsius or Fahrenheit. Say which.")};
    case ErrorCode::PositionUnavailable:
        return {QT_TRANSLATE_NOOP("ErrorText",
            "There is no position right now. Wait under the open sky, or type the coordinates.")};
    case ErrorCode::PositionLogUnreadable:
        return {QT_TRANSLATE_NOOP(
            "ErrorText", "The position log %1 cannot be read. Choose a file of NMEA sentences.")};
    case ErrorCode::NameMissing:
        return {QT_TRANSLATE_NOOP("ErrorText", "There is no %1 called “%2”. Check the spelling."), kindFirst};
    case ErrorCode::NameAmbiguous:
        return {QT_TRANSLATE_NOOP("ErrorText", "More than one %1 is called “%2”. Name it more fully."),
            kindFirst};
    case ErrorCode::FormatUnknown:
        return {
            QT_TRANSLATE_NOOP("ErrorText", "“%1” is not a format that can be written. Choose one of: %2.")};
    }
    return {""};
}

} // namespace duskrow::text
