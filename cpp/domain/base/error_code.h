// SPDX-License-Identifier: MIT
#pragma once

namespace duskrow::domain {

// One code per sentence a person can get. text/error_sentences.cpp holds the sentence and the way out.
enum class ErrorCode {
    // What was typed
    NotANumber, // {what was typed}
    NotWhole, // {what was typed}
    OutOfRange, // {field, lowest, highest}
    TooLong, // {field, most characters}
    Empty, // {field}
    NotADay, // {what was typed}
    NotAPlace, // {what was typed}
    NotATime, // {what was typed} of day
    UnknownCode, // {field, value}
    PartTooLarge, // {} the counted part is larger than the whole
    TooFewParts, // {} a spread needs two counted parts or more
    CurrenciesDiffer, // {unit of the cost, unit of the price}
    LimitsCrossed, // {} the upper limit of warmth is not above the lower one
    CostTwice, // {} both as one sum and in parts
    // Protocol files
    ProtocolSyntax, // {file, line, what}
    ProtocolRule, // {file, line, what}
    ProtocolMissing, // {pest}
    ProtocolNoBands, // {pest, trap type}
    ProtocolNoThreshold, // {pest, crop}
    // The store
    StoreMissing, // {path}
    StoreNotOurs, // {path} the file is not a store
    StoreDamaged, // {path}
    StoreNewer, // {path}
    StoreOlder, // {path} to be brought up to date before anybody can look into it
    StoreBusy, // {path} another program writes to it
    StoreReadOnly, // {path}
    StoreExists, // {path}
    StoreUnreachable, // {where} a database over the network
    NetworkUnusable, // {address} that cannot be listened at
    DiskFull, // {path}
    DiskFailed, // {path}
    KeyUnreadable, // {path}
    // The log
    ChangeMalformed, // {what}
    RecordMissing, // {kind}
    // The exchange
    SegmentUnfinished, // {} not all there yet
    SegmentMalformed, // {what}
    SegmentTooLarge, // {what}
    SegmentForged, // {} the signature or the stream does not belong to the key
    SegmentNewer, // {ability} signed as it should be, and needs what this version cannot do
    OtherProgramme, // {where from}
    FolderMissing, // {path}
    FolderTooFull, // {path}
    CarriedNotOurs, // {path}
    CarriedCut, // {path} it stops before its end
    HubUnreachable, // {address}
    HubNotOurs, // {address} what answers there is no hub
    HubNotTrusted, // {address} its certificate does not prove who it is
    HubRefused, // {address, what it says}
    HubKeptAside, // {address, reason}
    NotEnrolled, // {address}
    InvitationUnknown, // {}
    InvitationPast, // {last day}
    InvitationUsed, // {}
    InvitationDoubtful, // {} several programmes or founders answer to the code
    AlreadyJoined, // {path of the key} this device is in that programme
    MemberUnsaid, // {path of the store} who holds the device is not known
    CoordinatorsOnly, // {}
    RootsOnly, // {}
    CodeUnreadable, // {what was typed} as an invitation
    NotEnoughMemory, // {}
    // Files
    FileUnreadable, // {path}
    FileUnwritable, // {path}
    TableUnreadable, // {line}
    ColumnMissing, // {column}
    PictureUnreadable, // {path}
    TableEmpty, // {path}
    TableNoColumn, // {path, column}
    TableRow, // {path, row, what stands there}
    TableTooLong, // {most rows}
    FileTooLarge, // {path, most MiB}
    // Rows of counts that are imported
    DayOrderUnsaid, // {what stands there} day or month first
    YearOfTwoDigits, // {what stands there}
    DayOutsideYear, // {day, year}
    YearUnsaid, // {} neither a column nor a choice where days do not say it
    DecimalMarkUnsaid, // {what stands there} point or comma
    UnitUnsaid, // {column}
    TextUnreadable, // {field} signs that are no text
    ColumnTwice, // {field} two columns for one thing
    CountKept, // {line, moths} an earlier line has another count for the same trap and day
    CountDiffers, // {moths} the store holds another count of the same trap and day
    RecordWithdrawn, // {kind, reason}
    NightsDiffer, // {nights in the file, nights by the days}
    PlaceDiffers, // {line} an earlier line puts the trap elsewhere
    NothingToUndo, // {name of the file}
    // Temperatures that are imported
    MinimumAboveMaximum, // {minimum, maximum}
    TemperatureKept, // {line} an earlier line has other temperatures for the same day
    TemperatureDiffers, // {minimum, maximum} the store holds others of the same station and day
    ScaleUnsaid, // {} Celsius or Fahrenheit
    // Positions
    PositionUnavailable, // {}
    PositionLogUnreadable, // {path}
    BulletinElsewhere, // {week} published from another desk
    NotPublished, // {week} its counts are not all due
    // The command line
    NameMissing, // {what kind, name} nothing of that name
    NameAmbiguous, // {what kind, name}
    FormatUnknown, // {name, known names}
};

} // namespace duskrow::domain
