// SPDX-License-Identifier: MIT
#include "domain/rules/typed_money.h"

#include <array>
#include <charconv>
#include <utility>

#include "domain/base/plain_word.h"

namespace duskrow::domain {

namespace {

constexpr std::size_t longestNumber = 20;

constexpr std::array<std::pair<std::string_view, CostUnit>, 4> costUnits{{
    {"CAD/ac", {Currency::Canadian, LandUnit::Acre}},
    {"CAD/ha", {Currency::Canadian, LandUnit::Hectare}},
    {"USD/ac", {Currency::UnitedStates, LandUnit::Acre}},
    {"USD/ha", {Currency::UnitedStates, LandUnit::Hectare}},
}};

constexpr std::array<std::pair<std::string_view, PriceUnit>, 4> priceUnits{{
    {"CAD/bu", {Currency::Canadian, HarvestUnit::Bushel}},
    {"CAD/t", {Currency::Canadian, HarvestUnit::Tonne}},
    {"USD/bu", {Currency::UnitedStates, HarvestUnit::Bushel}},
    {"USD/t", {Currency::UnitedStates, HarvestUnit::Tonne}},
}};

// Bounds of sense, not of the trade: beyond them something was typed wrongly.
struct Bounds {
    double lowest;
    double highest;
};

constexpr Bounds costBounds(LandUnit unit)
{
    return unit == LandUnit::Acre ? Bounds{0.1, 1000.0} : Bounds{0.25, 2500.0};
}

constexpr Bounds priceBounds(HarvestUnit unit)
{
    return unit == HarvestUnit::Bushel ? Bounds{1.0, 200.0} : Bounds{40.0, 10'000.0};
}

constexpr char lower(char c)
{
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool isAlike(std::string_view a, std::string_view b)
{
    if (a.size() != b.size()) return false;
    for (std::size_t i = 0; i < a.size(); ++i)
        if (lower(a[i]) != lower(b[i])) return false;
    return true;
}

template <typename Unit, std::size_t N>
Result<Unit> parseUnit(
    std::string_view typed, const char* field, const std::array<std::pair<std::string_view, Unit>, N>& known)
{
    for (const auto& [code, unit] : known)
        if (isAlike(code, withoutBlanks(typed))) return unit;
    std::string choices;
    for (const auto& [code, unit] : known) choices += (choices.empty() ? "" : ", ") + std::string(code);
    return Error{ErrorCode::UnknownCode, {field, std::string(typed), choices}};
}

template <typename Unit, std::size_t N>
std::string codeIn(Unit unit, const std::array<std::pair<std::string_view, Unit>, N>& known)
{
    for (const auto& [code, one] : known)
        if (one == unit) return std::string(code);
    return {};
}

std::string plain(double number)
{
    std::array<char, 32> digits{};
    const auto written = std::to_chars(digits.data(), digits.data() + digits.size(), number);
    return {digits.data(), written.ptr};
}

// The digits with a point for their mark, or nothing when it is no number or could be two.
std::string plainDigits(std::string_view text)
{
    std::string digits;
    std::size_t mark = std::string::npos;
    for (const char c : text) {
        const bool isMark = c == '.' || c == ',';
        if (!isMark && (c < '0' || c > '9')) return {};
        if (isMark && mark != std::string::npos) return {};
        if (isMark) mark = digits.size();
        digits += isMark ? '.' : c;
    }
    if (digits.empty() || mark == 0 || (mark != std::string::npos && mark + 1 == digits.size())) return {};
    const bool couldBeThousands = text.find(',') != std::string_view::npos && digits.size() - mark == 4;
    return couldBeThousands ? std::string() : digits;
}

} // namespace

Result<CostUnit> parseCostUnit(std::string_view typed)
{
    return parseUnit(typed, "cost_unit", costUnits);
}

Result<PriceUnit> parsePriceUnit(std::string_view typed)
{
    return parseUnit(typed, "price_unit", priceUnits);
}

std::string codeOf(CostUnit unit)
{
    return codeIn(unit, costUnits);
}

std::string codeOf(PriceUnit unit)
{
    return codeIn(unit, priceUnits);
}

std::string codeOf(Currency currency)
{
    return currency == Currency::Canadian ? "CAD" : "USD";
}

Result<double> parseDecimal(std::string_view typed, std::string_view field, double lowest, double highest)
{
    std::string_view text = withoutBlanks(typed);
    if (text.empty()) return Error{ErrorCode::Empty, {std::string(field)}};
    if (text.size() > longestNumber)
        return Error{ErrorCode::TooLong, {std::string(field), std::to_string(longestNumber)}};
    const bool isNegative = text.starts_with('-');
    if (isNegative) text.remove_prefix(1);
    const std::string digits = plainDigits(text);
    if (digits.empty()) return Error{ErrorCode::NotANumber, {std::string(typed)}};
    double number = 0.0;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    if (read.ec != std::errc{}) return Error{ErrorCode::NotANumber, {std::string(typed)}};
    if (isNegative) number = -number;
    if (number < lowest || number > highest)
        return Error{ErrorCode::OutOfRange, {std::string(field), plain(lowest), plain(highest)}};
    return number;
}

DollarsPerAcre ControlCost::perAcre() const
{
    return DollarsPerAcre{unit.per == LandUnit::Acre ? amount : amount * hectaresPerAcre};
}

Result<ControlCost> parseControlCost(const TypedCost& typed, std::string_view unitTyped)
{
    const auto unit = parseCostUnit(unitTyped);
    if (!unit) return unit.error();
    const Bounds bounds = costBounds(unit->per);
    const bool isAcre = unit->per == LandUnit::Acre;
    ControlCost cost{0.0, {}, *unit};
    for (const auto& [text, field] :
        {std::pair(&typed.product, "cost_product"), std::pair(&typed.application, "cost_application"),
            std::pair(&typed.wheelTracks, "cost_wheel_tracks")}) {
        if (withoutBlanks(*text).empty()) continue;
        if (!withoutBlanks(typed.sum).empty()) return Error{ErrorCode::CostTwice};
        const auto part = parseDecimal(*text, field, 0.0, bounds.highest);
        if (!part) return part.error();
        cost.parts.push_back(*part);
    }
    if (cost.parts.empty()) {
        const auto sum =
            parseDecimal(typed.sum, isAcre ? "cost_per_ac" : "cost_per_ha", bounds.lowest, bounds.highest);
        if (!sum)
            return sum.error().code == ErrorCode::Empty ? Error{ErrorCode::Empty, {"cost"}} : sum.error();
        cost.parts.push_back(*sum);
    }
    for (const double part : cost.parts) cost.amount += part;
    if (cost.amount < bounds.lowest || cost.amount > bounds.highest)
        return Error{ErrorCode::OutOfRange,
            {isAcre ? "cost_per_ac" : "cost_per_ha", plain(bounds.lowest), plain(bounds.highest)}};
    return cost;
}

DollarsPerBushel HarvestPrice::perBushel(Kilograms bushel) const
{
    return DollarsPerBushel{unit.per == HarvestUnit::Bushel ? amount : amount * bushel.value() / 1000.0};
}

Result<HarvestPrice> parseHarvestPrice(std::string_view typed, std::string_view unitTyped)
{
    const auto unit = parsePriceUnit(unitTyped);
    if (!unit) return unit.error();
    if (withoutBlanks(typed).empty()) return Error{ErrorCode::Empty, {"price"}};
    const Bounds bounds = priceBounds(unit->per);
    const auto amount = parseDecimal(typed, unit->per == HarvestUnit::Bushel ? "price_per_bu" : "price_per_t",
        bounds.lowest, bounds.highest);
    if (!amount) return amount.error();
    return HarvestPrice{*amount, *unit};
}

bool isSensible(const ControlCost& cost)
{
    const Bounds bounds = costBounds(cost.unit.per);
    return cost.amount >= bounds.lowest && cost.amount <= bounds.highest;
}

bool isSensible(const HarvestPrice& price)
{
    const Bounds bounds = priceBounds(price.unit.per);
    return price.amount >= bounds.lowest && price.amount <= bounds.highest;
}

double inUnit(DollarsPerAcre cost, LandUnit unit)
{
    return unit == LandUnit::Acre ? cost.value() : cost.value() / hectaresPerAcre;
}

double inUnit(DollarsPerBushel price, HarvestUnit unit, Kilograms bushel)
{
    return unit == HarvestUnit::Bushel ? price.value() : price.value() * 1000.0 / bushel.value();
}

DollarsPerHectare toDollarsPerHectare(DollarsPerAcre cost)
{
    return DollarsPerHectare{cost.value() / hectaresPerAcre};
}

} // namespace duskrow::domain
