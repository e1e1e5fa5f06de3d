// SPDX-License-Identifier: MIT
#include "text/field_names.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <array>

#include "text/amounts.h"

namespace duskrow::text {

namespace {

struct Name {
    std::string_view code;
    const char* words;
};

constexpr std::array names{
    Name{"withdrawn", QT_TRANSLATE_NOOP("FieldName", "the reason for taking it back")},
    Name{"name", QT_TRANSLATE_NOOP("FieldName", "the name")},
    Name{"region", QT_TRANSLATE_NOOP("FieldName", "the region")},
    Name{"invented", QT_TRANSLATE_NOOP("FieldName", "whether it is invented")},
    Name{"year", QT_TRANSLATE_NOOP("FieldName", "the year")},
    Name{"week_start", QT_TRANSLATE_NOOP("FieldName", "the first day of the week")},
    Name{"count_day", QT_TRANSLATE_NOOP("FieldName", "the count day")},
    Name{"grace_days", QT_TRANSLATE_NOOP("FieldName", "the days of grace")},
    Name{"report_day", QT_TRANSLATE_NOOP("FieldName", "the day to report by")},
    Name{"report_minute", QT_TRANSLATE_NOOP("FieldName", "the time to report by")},
    Name{"week", QT_TRANSLATE_NOOP("FieldName", "the week")},
    Name{"issue", QT_TRANSLATE_NOOP("FieldName", "the issue")},
    Name{"published_ms", QT_TRANSLATE_NOOP("FieldName", "when it was published")},
    Name{"language", QT_TRANSLATE_NOOP("FieldName", "the language")},
    Name{"title", QT_TRANSLATE_NOOP("FieldName", "the title")},
    Name{"text", QT_TRANSLATE_NOOP("FieldName", "the text")},
    Name{"areas", QT_TRANSLATE_NOOP("FieldName", "the figures of the districts")},
    Name{"season", QT_TRANSLATE_NOOP("FieldName", "the season")},
    Name{"goes_on", QT_TRANSLATE_NOOP("FieldName", "whether the member goes on")},
    Name{"version", QT_TRANSLATE_NOOP("FieldName", "the version")},
    Name{"role", QT_TRANSLATE_NOOP("FieldName", "the role")},
    Name{"member", QT_TRANSLATE_NOOP("FieldName", "the member")},
    Name{"code", QT_TRANSLATE_NOOP("FieldName", "the code")},
    Name{"folder", QT_TRANSLATE_NOOP("FieldName", "the folder")},
    Name{"file", QT_TRANSLATE_NOOP("FieldName", "the file")},
    Name{"hub", QT_TRANSLATE_NOOP("FieldName", "the address of the hub")},
    Name{"stream", QT_TRANSLATE_NOOP("FieldName", "the number of the device")},
    Name{"key", QT_TRANSLATE_NOOP("FieldName", "the public key")},
    Name{"label", QT_TRANSLATE_NOOP("FieldName", "the name of the device")},
    Name{"root", QT_TRANSLATE_NOOP("FieldName", "whether it may name coordinators")},
    Name{"ended_after", QT_TRANSLATE_NOOP("FieldName", "the last change of it that counts")},
    Name{"invitation", QT_TRANSLATE_NOOP("FieldName", "the invitation")},
    Name{"proof", QT_TRANSLATE_NOOP("FieldName", "the proof of the invitation")},
    Name{"follows_key", QT_TRANSLATE_NOOP("FieldName", "the key it goes on from")},
    Name{"record", QT_TRANSLATE_NOOP("FieldName", "the record")},
    Name{"question", QT_TRANSLATE_NOOP("FieldName", "the question")},
    Name{"words", QT_TRANSLATE_NOOP("FieldName", "the words")},
    Name{"settled", QT_TRANSLATE_NOOP("FieldName", "whether it is settled")},
    Name{"answered", QT_TRANSLATE_NOOP("FieldName", "what was answered")},
    Name{"left_out", QT_TRANSLATE_NOOP("FieldName", "why it is left out of the picture")},
    Name{"says", QT_TRANSLATE_NOOP("FieldName", "whether the record stands")},
    Name{"change", QT_TRANSLATE_NOOP("FieldName", "the change")},
    Name{"district", QT_TRANSLATE_NOOP("FieldName", "the district")},
    Name{"keeper", QT_TRANSLATE_NOOP("FieldName", "whose field it is")},
    Name{"field", QT_TRANSLATE_NOOP("FieldName", "the field")},
    Name{"crop", QT_TRANSLATE_NOOP("FieldName", "the crop")},
    Name{"landowner", QT_TRANSLATE_NOOP("FieldName", "the landowner")},
    Name{"agreed_day", QT_TRANSLATE_NOOP("FieldName", "the day the landowner said yes")},
    Name{"gate", QT_TRANSLATE_NOOP("FieldName", "the way in")},
    Name{"seeded_day", QT_TRANSLATE_NOOP("FieldName", "the day of seeding")},
    Name{"site", QT_TRANSLATE_NOOP("FieldName", "the site")},
    Name{"tag", QT_TRANSLATE_NOOP("FieldName", "the tag")},
    Name{"pest", QT_TRANSLATE_NOOP("FieldName", "the count of the pest")},
    Name{"protocol_version", QT_TRANSLATE_NOOP("FieldName", "the version of the protocol")},
    Name{"trap_type", QT_TRANSLATE_NOOP("FieldName", "the trap type")},
    Name{"set_day", QT_TRANSLATE_NOOP("FieldName", "the day of set-up")},
    Name{"set_at_ms", QT_TRANSLATE_NOOP("FieldName", "the time of set-up")},
    Name{"offset_min", QT_TRANSLATE_NOOP("FieldName", "the time zone")},
    Name{"lat_e7", QT_TRANSLATE_NOOP("FieldName", "the latitude")},
    Name{"lon_e7", QT_TRANSLATE_NOOP("FieldName", "the longitude")},
    Name{"latitude", QT_TRANSLATE_NOOP("FieldName", "the latitude")},
    Name{"longitude", QT_TRANSLATE_NOOP("FieldName", "the longitude")},
    Name{"accuracy_mm", QT_TRANSLATE_NOOP("FieldName", "the accuracy of the position")},
    Name{"fix_method", QT_TRANSLATE_NOOP("FieldName", "how the position was found")},
    Name{"fix_at_ms", QT_TRANSLATE_NOOP("FieldName", "the time of the position")},
    Name{"fix_count", QT_TRANSLATE_NOOP("FieldName", "the number of fixes")},
    Name{"cleaned", QT_TRANSLATE_NOOP("FieldName", "whether the trap is clean")},
    Name{"handling_read", QT_TRANSLATE_NOOP("FieldName", "whether the lure reminder was read")},
    Name{"lure_in", QT_TRANSLATE_NOOP("FieldName", "whether the lure is in")},
    Name{"lure_lot", QT_TRANSLATE_NOOP("FieldName", "the lot of the lure")},
    Name{"lure_expiry", QT_TRANSLATE_NOOP("FieldName", "the expiry day of the lure")},
    Name{"strip_in", QT_TRANSLATE_NOOP("FieldName", "whether the killing strip is in")},
    Name{"entrance_mm", QT_TRANSLATE_NOOP("FieldName", "the height of the entrance")},
    Name{"canopy_mm", QT_TRANSLATE_NOOP("FieldName", "the height of the canopy")},
    Name{"height_rule", QT_TRANSLATE_NOOP("FieldName", "the height rule")},
    Name{"edge_distance_mm", QT_TRANSLATE_NOOP("FieldName", "the distance to the field edge")},
    Name{"farmyard_distance_mm", QT_TRANSLATE_NOOP("FieldName", "the distance to the farmyard")},
    Name{"light_distance_mm", QT_TRANSLATE_NOOP("FieldName", "the distance to a strong light")},
    Name{"photo", QT_TRANSLATE_NOOP("FieldName", "the photograph")},
    Name{"end_day", QT_TRANSLATE_NOOP("FieldName", "the day the trap was taken down")},
    Name{"end_reason", QT_TRANSLATE_NOOP("FieldName", "why the trap ended")},
    Name{"paired_with", QT_TRANSLATE_NOOP("FieldName", "the trap beside it")},
    Name{"replaces", QT_TRANSLATE_NOOP("FieldName", "the trap it replaces")},
    Name{"lure_out", QT_TRANSLATE_NOOP("FieldName", "whether the lure was taken out")},
    Name{"strip_out", QT_TRANSLATE_NOOP("FieldName", "whether the killing strip was taken out")},
    Name{"washed", QT_TRANSLATE_NOOP("FieldName", "whether the trap was washed")},
    Name{"spare_lures_frozen", QT_TRANSLATE_NOOP("FieldName", "whether the spare lures are frozen")},
    Name{"visit", QT_TRANSLATE_NOOP("FieldName", "the visit")},
    Name{"trap", QT_TRANSLATE_NOOP("FieldName", "the trap")},
    Name{"remark", QT_TRANSLATE_NOOP("FieldName", "the remark")},
    Name{"day", QT_TRANSLATE_NOOP("FieldName", "the day")},
    Name{"at_ms", QT_TRANSLATE_NOOP("FieldName", "the time")},
    Name{"what", QT_TRANSLATE_NOOP("FieldName", "what was done")},
    Name{"borrower", QT_TRANSLATE_NOOP("FieldName", "who borrows the trap")},
    Name{"from_day", QT_TRANSLATE_NOOP("FieldName", "the first day")},
    Name{"until_day", QT_TRANSLATE_NOOP("FieldName", "the last day")},
    Name{"reported_how", QT_TRANSLATE_NOOP("FieldName", "how it was reported")},
    Name{"observer", QT_TRANSLATE_NOOP("FieldName", "who counted")},
    Name{"outcome", QT_TRANSLATE_NOOP("FieldName", "whether it was counted")},
    Name{"reason", QT_TRANSLATE_NOOP("FieldName", "why it could not be counted")},
    Name{"not_it", QT_TRANSLATE_NOOP("FieldName", "the count of other kinds")},
    Name{"unsure", QT_TRANSLATE_NOOP("FieldName", "the count nobody is sure of")},
    Name{"bees", QT_TRANSLATE_NOOP("FieldName", "the number of bees")},
    Name{"count_method", QT_TRANSLATE_NOOP("FieldName", "how it was counted")},
    Name{"part_counts", QT_TRANSLATE_NOOP("FieldName", "the counts of the parts")},
    Name{"part_amounts", QT_TRANSLATE_NOOP("FieldName", "the amounts of the parts")},
    Name{"whole_amount", QT_TRANSLATE_NOOP("FieldName", "the amount of the whole catch")},
    Name{"pest_low", QT_TRANSLATE_NOOP("FieldName", "the low end of the count")},
    Name{"pest_high", QT_TRANSLATE_NOOP("FieldName", "the high end of the count")},
    Name{"emptied", QT_TRANSLATE_NOOP("FieldName", "whether the trap was emptied")},
    Name{"state", QT_TRANSLATE_NOOP("FieldName", "the state")},
    Name{"at_least", QT_TRANSLATE_NOOP("FieldName", "whether the count is “at least”")},
    Name{"sprayed", QT_TRANSLATE_NOOP("FieldName", "whether the field was sprayed")},
    Name{"sprayed_what", QT_TRANSLATE_NOOP("FieldName", "what was sprayed")},
    Name{"sprayed_day", QT_TRANSLATE_NOOP("FieldName", "the day of spraying")},
    Name{"reentry_hours", QT_TRANSLATE_NOOP("FieldName", "the re-entry time")},
    Name{"lure_there", QT_TRANSLATE_NOOP("FieldName", "whether the lure is there")},
    Name{"strip_there", QT_TRANSLATE_NOOP("FieldName", "whether the killing strip is there")},
    Name{"moths_alive", QT_TRANSLATE_NOOP("FieldName", "whether moths were alive")},
    Name{"flowering_over", QT_TRANSLATE_NOOP("FieldName", "whether flowering is over")},
    Name{"number", QT_TRANSLATE_NOOP("FieldName", "the number of the sample")},
    Name{"moths", QT_TRANSLATE_NOOP("FieldName", "the number in the sample")},
    Name{"kept_day", QT_TRANSLATE_NOOP("FieldName", "the day it was kept")},
    Name{"sent_day", QT_TRANSLATE_NOOP("FieldName", "the day it was sent")},
    Name{"received_day", QT_TRANSLATE_NOOP("FieldName", "the day it was received")},
    Name{"named_day", QT_TRANSLATE_NOOP("FieldName", "the day it was named")},
    Name{"sent_to", QT_TRANSLATE_NOOP("FieldName", "where it was sent")},
    Name{"named_by", QT_TRANSLATE_NOOP("FieldName", "who named it")},
    Name{"named_as", QT_TRANSLATE_NOOP("FieldName", "what it was named")},
    Name{"stage_bbch", QT_TRANSLATE_NOOP("FieldName", "the crop stage (BBCH)")},
    Name{"frame_cm2", QT_TRANSLATE_NOOP("FieldName", "the area of the frame")},
    Name{"dry_season", QT_TRANSLATE_NOOP("FieldName", "whether the season is dry")},
    Name{"finished", QT_TRANSLATE_NOOP("FieldName", "whether the walk is finished")},
    Name{"walk", QT_TRANSLATE_NOOP("FieldName", "the scouting walk")},
    Name{"stop", QT_TRANSLATE_NOOP("FieldName", "the stop in the field")},
    Name{"larvae", QT_TRANSLATE_NOOP("FieldName", "the number of larvae")},
    Name{"by_size", QT_TRANSLATE_NOOP("FieldName", "the larvae by size")},
    Name{"sick", QT_TRANSLATE_NOOP("FieldName", "the number of sick larvae")},
    Name{"pods_seen", QT_TRANSLATE_NOOP("FieldName", "the pods looked at")},
    Name{"pods_damaged", QT_TRANSLATE_NOOP("FieldName", "the pods damaged")},
    Name{"cost", QT_TRANSLATE_NOOP("FieldName", "the cost of control")},
    Name{"cost_product", QT_TRANSLATE_NOOP("FieldName", "the cost of the product")},
    Name{"cost_application", QT_TRANSLATE_NOOP("FieldName", "the cost of the application")},
    Name{"cost_tracks", QT_TRANSLATE_NOOP("FieldName", "the cost of the wheel tracks")},
    Name{"cost_unit", QT_TRANSLATE_NOOP("FieldName", "the unit of the cost")},
    Name{"price", QT_TRANSLATE_NOOP("FieldName", "the price of the harvest")},
    Name{"price_unit", QT_TRANSLATE_NOOP("FieldName", "the unit of the price")},
    Name{"dry_divisor", QT_TRANSLATE_NOOP("FieldName", "the divisor for a dry season")},
    Name{"label_days", QT_TRANSLATE_NOOP("FieldName", "the days of the label before harvest")},
    Name{"cutting_day", QT_TRANSLATE_NOOP("FieldName", "the day of cutting")},
    Name{"verdict", QT_TRANSLATE_NOOP("FieldName", "the verdict that was shown")},
    Name{"decided", QT_TRANSLATE_NOOP("FieldName", "what was decided")},
    Name{"look_again_day", QT_TRANSLATE_NOOP("FieldName", "the day to look again")},
    Name{"frames", QT_TRANSLATE_NOOP("FieldName", "the number of frames")},
    Name{"stops", QT_TRANSLATE_NOOP("FieldName", "the number of stops")},
    Name{"threshold_per_m2", QT_TRANSLATE_NOOP("FieldName", "the threshold")},
    Name{"frame_m2", QT_TRANSLATE_NOOP("FieldName", "the area of the frame")},
    Name{"density_per_m2", QT_TRANSLATE_NOOP("FieldName", "the density")},
    Name{"dispersion", QT_TRANSLATE_NOOP("FieldName", "the dispersion")},
    Name{"ratio", QT_TRANSLATE_NOOP("FieldName", "the ratio")},
    Name{"error", QT_TRANSLATE_NOOP("FieldName", "the share of wrong calls")},
    Name{"mean", QT_TRANSLATE_NOOP("FieldName", "the mean")},
    Name{"precision", QT_TRANSLATE_NOOP("FieldName", "the precision")},
    Name{"catch", QT_TRANSLATE_NOOP("FieldName", "the catch")},
    Name{"traps", QT_TRANSLATE_NOOP("FieldName", "the number of traps")},
    Name{"seasons", QT_TRANSLATE_NOOP("FieldName", "the number of seasons")},
    Name{"cost_per_ac", QT_TRANSLATE_NOOP("FieldName", "the cost on an acre")},
    Name{"cost_per_ha", QT_TRANSLATE_NOOP("FieldName", "the cost on a hectare")},
    Name{"cost_wheel_tracks", QT_TRANSLATE_NOOP("FieldName", "the cost of the wheel tracks")},
    Name{"price_per_bu", QT_TRANSLATE_NOOP("FieldName", "the price of a bushel")},
    Name{"price_per_t", QT_TRANSLATE_NOOP("FieldName", "the price of a tonne")},
    Name{"dry_season_divisor", QT_TRANSLATE_NOOP("FieldName", "the dry-season divisor")},
    Name{"pods_damaged_percent", QT_TRANSLATE_NOOP("FieldName", "the share of damaged pods")},
    Name{"label_interval_days", QT_TRANSLATE_NOOP("FieldName", "the days before harvest on the label")},
    Name{"infested", QT_TRANSLATE_NOOP("FieldName", "“infested”")},
    Name{"nights", QT_TRANSLATE_NOOP("FieldName", "the number of nights")},
    Name{"column", QT_TRANSLATE_NOOP("FieldName", "the column")},
    Name{"unit", QT_TRANSLATE_NOOP("FieldName", "the unit")},
    Name{"pest_in_use", QT_TRANSLATE_NOOP("FieldName", "the pest")},
    Name{"encoding", QT_TRANSLATE_NOOP("FieldName", "the encoding")},
    Name{"delimiter", QT_TRANSLATE_NOOP("FieldName", "the delimiter")},
    Name{"date_order", QT_TRANSLATE_NOOP("FieldName", "the order of day and month")},
    Name{"decimal", QT_TRANSLATE_NOOP("FieldName", "the decimal mark")},
    Name{"metric", QT_TRANSLATE_NOOP("FieldName", "the way of measuring")},
    Name{"day_ends_minute", QT_TRANSLATE_NOOP("FieldName", "when its day ends")},
    Name{"station", QT_TRANSLATE_NOOP("FieldName", "the weather station")},
    Name{"minimum_mc", QT_TRANSLATE_NOOP("FieldName", "the lowest temperature")},
    Name{"maximum_mc", QT_TRANSLATE_NOOP("FieldName", "the highest temperature")},
    Name{"minimum", QT_TRANSLATE_NOOP("FieldName", "the lowest temperature")},
    Name{"maximum", QT_TRANSLATE_NOOP("FieldName", "the highest temperature")},
    Name{"lower_limit", QT_TRANSLATE_NOOP("FieldName", "the lower limit")},
    Name{"upper_limit", QT_TRANSLATE_NOOP("FieldName", "the upper limit")},
    Name{"cut_off", QT_TRANSLATE_NOOP("FieldName", "the cut-off")},
    Name{"method", QT_TRANSLATE_NOOP("FieldName", "the method")},
    Name{"seed", QT_TRANSLATE_NOOP("FieldName", "the seed")},
};

// Each code once: of two rows the second would never be found.
constexpr bool areUnique()
{
    for (std::size_t i = 0; i < names.size(); ++i)
        for (std::size_t k = i + 1; k < names.size(); ++k)
            if (names[i].code == names[k].code) return false;
    return true;
}
static_assert(areUnique());

constexpr std::array kinds{
    Name{"programme", QT_TRANSLATE_NOOP("KindName", "programme")},
    Name{"season", QT_TRANSLATE_NOOP("KindName", "season")},
    Name{"district", QT_TRANSLATE_NOOP("KindName", "district")},
    Name{"protocol_use", QT_TRANSLATE_NOOP("KindName", "pest in use")},
    Name{"protocol", QT_TRANSLATE_NOOP("KindName", "protocol")},
    Name{"member", QT_TRANSLATE_NOOP("KindName", "member")},
    Name{"device", QT_TRANSLATE_NOOP("KindName", "device")},
    Name{"invitation", QT_TRANSLATE_NOOP("KindName", "invitation")},
    Name{"assignment", QT_TRANSLATE_NOOP("KindName", "assignment")},
    Name{"ruling", QT_TRANSLATE_NOOP("KindName", "ruling")},
    Name{"question", QT_TRANSLATE_NOOP("KindName", "question")},
    Name{"answer", QT_TRANSLATE_NOOP("KindName", "answer")},
    Name{"admission", QT_TRANSLATE_NOOP("KindName", "admission")},
    Name{"site", QT_TRANSLATE_NOOP("KindName", "site")},
    Name{"trap", QT_TRANSLATE_NOOP("KindName", "trap")},
    Name{"service", QT_TRANSLATE_NOOP("KindName", "service")},
    Name{"loan", QT_TRANSLATE_NOOP("KindName", "loan")},
    Name{"visit", QT_TRANSLATE_NOOP("KindName", "visit")},
    Name{"sample", QT_TRANSLATE_NOOP("KindName", "sample")},
    Name{"walk", QT_TRANSLATE_NOOP("KindName", "scouting walk")},
    Name{"frame", QT_TRANSLATE_NOOP("KindName", "frame")},
    Name{"decision", QT_TRANSLATE_NOOP("KindName", "decision")},
    Name{"station", QT_TRANSLATE_NOOP("KindName", "weather station")},
    Name{"temperature", QT_TRANSLATE_NOOP("KindName", "temperature")},
    Name{"bulletin", QT_TRANSLATE_NOOP("KindName", "bulletin")},
    Name{"next_year", QT_TRANSLATE_NOOP("KindName", "word on next year")},
    Name{"import", QT_TRANSLATE_NOOP("KindName", "import")},
    Name{"column", QT_TRANSLATE_NOOP("KindName", "column")},
};

template <std::size_t N>
QString nameFrom(const std::array<Name, N>& table, const char* context, std::string_view code)
{
    const auto* found =
        std::find_if(table.begin(), table.end(), [&](const Name& name) { return name.code == code; });
    if (found == table.end()) return QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size()));
    return QCoreApplication::translate(context, found->words);
}

} // namespace

QString fieldName(std::string_view field)
{
    return nameFrom(names, "FieldName", field);
}

QString fieldName(std::string_view kind, std::string_view field)
{
    if (field == "pest" && (kind == "trap" || kind == "protocol_use"))
        return QCoreApplication::translate("FieldName", "the pest");
    if (field == "pest" && kind == "sample")
        return QCoreApplication::translate("FieldName", "how many of them are the pest");
    return fieldName(field);
}

QString kindName(std::string_view kind)
{
    return nameFrom(kinds, "KindName", kind);
}

QString boundName(std::string_view field, std::string_view bound)
{
    QString text = QString::fromUtf8(bound.data(), static_cast<qsizetype>(bound.size()));
    bool isNumber = false;
    const qlonglong number = text.toLongLong(&isNumber);
    if (!isNumber) return text;
    if (field.ends_with("distance_mm") || field == "accuracy_mm")
        return distance(toMetres(domain::Millimetres{number}));
    if (field.ends_with("_mm")) return height(domain::Millimetres{number});
    if (field.ends_with("_e7")) return QLocale().toString(static_cast<double>(number) * 1e-7, 'f', 0);
    if (field == "year") return text;
    return QLocale().toString(number);
}

} // namespace duskrow::text
