// SPDX-License-Identifier: MIT
#include "domain/import/import_field.h"

#include <array>

namespace duskrow::domain {

namespace {

using Words = std::string_view;

// English and French words of the trade, and the terms of Darwin Core (TDWG) for the same things.
constexpr std::array yearWords{Words("year"), Words("season"), Words("annee"), Words("saison")};
constexpr std::array districtWords{Words("district"), Words("region"), Words("municipality"), Words("county"),
    Words("municipalite"), Words("comte"), Words("rm")};
constexpr std::array siteWords{Words("site"), Words("site name"), Words("location"), Words("locality"),
    Words("town"), Words("nearest town"), Words("lieu"), Words("localite"), Words("endroit"),
    Words("emplacement"), Words("nom du site")};
constexpr std::array fieldWords{Words("field"), Words("field name"), Words("champ"), Words("nom du champ")};
constexpr std::array cropWords{Words("crop"), Words("culture")};
constexpr std::array trapWords{Words("trap"), Words("trap id"), Words("trap no"), Words("trap number"),
    Words("trap name"), Words("tag"), Words("piege"), Words("no de piege"), Words("numero de piege")};
constexpr std::array latitudeWords{
    Words("latitude"), Words("lat"), Words("decimallatitude"), Words("decimal latitude")};
constexpr std::array longitudeWords{Words("longitude"), Words("lon"), Words("long"), Words("lng"),
    Words("decimallongitude"), Words("decimal longitude")};
constexpr std::array setDayWords{Words("set up"), Words("set day"), Words("set date"), Words("date set"),
    Words("set up date"), Words("deployed"), Words("installe"), Words("date d installation")};
constexpr std::array fromDayWords{Words("from"), Words("start"), Words("start date"), Words("period start"),
    Words("du"), Words("debut"), Words("date de debut")};
constexpr std::array dayWords{Words("date"), Words("day"), Words("count date"), Words("date counted"),
    Words("date checked"), Words("visit date"), Words("eventdate"), Words("to"), Words("end date"),
    Words("period end"), Words("jour"), Words("date de comptage"), Words("date du releve"), Words("au"),
    Words("date de fin")};
constexpr std::array nightsWords{
    Words("nights"), Words("trap nights"), Words("days in period"), Words("nuits"), Words("nuits piege")};
constexpr std::array countWords{Words("count"), Words("counts"), Words("catch"), Words("moths"),
    Words("moth count"), Words("number of moths"), Words("no of moths"), Words("individualcount"),
    Words("pest"), Words("compte"), Words("captures"), Words("capture"), Words("papillons"),
    Words("nombre de papillons")};
constexpr std::array notItWords{Words("not it"), Words("other moths"), Words("autres papillons")};
constexpr std::array beesWords{
    Words("bees"), Words("bumble bees"), Words("bumblebees"), Words("abeilles"), Words("bourdons")};
constexpr std::array entranceWords{
    Words("entrance"), Words("entrance height"), Words("trap height"), Words("hauteur du piege")};
constexpr std::array canopyWords{Words("canopy"), Words("canopy height"), Words("crop height"),
    Words("hauteur de la culture"), Words("hauteur du couvert")};
constexpr std::array emptiedWords{
    Words("emptied"), Words("trap emptied"), Words("cleared"), Words("vide"), Words("piege vide")};
constexpr std::array observerWords{Words("observer"), Words("counted by"), Words("recordedby"),
    Words("recorded by"), Words("cooperator"), Words("observateur"), Words("compte par"),
    Words("cooperateur")};
constexpr std::array remarkWords{Words("remark"), Words("remarks"), Words("comment"), Words("comments"),
    Words("notes"), Words("note"), Words("eventremarks"), Words("remarque"), Words("remarques"),
    Words("commentaire"), Words("commentaires")};

constexpr std::array fields = [] {
    using enum ImportField;
    return std::array{
        ImportFieldRow{Year, "year", yearWords},
        ImportFieldRow{District, "district", districtWords},
        ImportFieldRow{Site, "site", siteWords},
        ImportFieldRow{FieldName, "field", fieldWords},
        ImportFieldRow{Crop, "crop", cropWords},
        ImportFieldRow{Trap, "tag", trapWords},
        ImportFieldRow{Latitude, "latitude", latitudeWords},
        ImportFieldRow{Longitude, "longitude", longitudeWords},
        ImportFieldRow{SetDay, "set_day", setDayWords},
        ImportFieldRow{FromDay, "from_day", fromDayWords},
        ImportFieldRow{Day, "day", dayWords},
        ImportFieldRow{PeriodNights, "nights", nightsWords},
        ImportFieldRow{Count, "pest", countWords},
        ImportFieldRow{NotIt, "not_it", notItWords},
        ImportFieldRow{BumbleBees, "bees", beesWords},
        ImportFieldRow{Entrance, "entrance_mm", entranceWords},
        ImportFieldRow{Canopy, "canopy_mm", canopyWords},
        ImportFieldRow{Emptied, "emptied", emptiedWords},
        ImportFieldRow{Observer, "observer", observerWords},
        ImportFieldRow{Remark, "remark", remarkWords},
    };
}();

// More convenient to type than the name of the record's field.
constexpr std::array shortCodes = [] {
    using enum ImportField;
    return std::array{std::pair{Words("count"), Count}, std::pair{Words("trap"), Trap},
        std::pair{Words("entrance"), Entrance}, std::pair{Words("canopy"), Canopy},
        std::pair{Words("ignore"), Ignored}};
}();

struct Unit {
    std::string_view code;
    double millimetres;
};
// The inch is 25.4 mm and the foot 12 of it: exact by the international yard agreement of 1959.
constexpr std::array units{
    Unit{"mm", 1}, Unit{"cm", 10}, Unit{"m", 1000}, Unit{"in", 25.4}, Unit{"ft", 304.8}};

} // namespace

std::span<const ImportFieldRow> importFields()
{
    return fields;
}

const ImportFieldRow& rowOf(ImportField field)
{
    static constexpr ImportFieldRow ignored{ImportField::Ignored, "ignore", {}};
    for (const ImportFieldRow& row : fields)
        if (row.field == field) return row;
    return ignored;
}

std::optional<ImportField> importFieldNamed(std::string_view code)
{
    for (const auto& [name, field] : shortCodes)
        if (name == code) return field;
    for (const ImportFieldRow& row : fields)
        if (row.code == code) return row.field;
    return std::nullopt;
}

std::optional<HeightUnit> heightUnitNamed(std::string_view code)
{
    for (std::size_t i = 0; i < units.size(); ++i)
        if (units[i].code == code) return static_cast<HeightUnit>(i);
    return std::nullopt;
}

std::string_view codeOf(HeightUnit unit)
{
    return units[static_cast<std::size_t>(unit)].code;
}

double millimetresIn(HeightUnit unit)
{
    return units[static_cast<std::size_t>(unit)].millimetres;
}

} // namespace duskrow::domain
