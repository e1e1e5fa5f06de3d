// SPDX-License-Identifier: MIT
#include "formats/bulletin/overlay.h"

#include <algorithm>
#include <cmath>

#include "domain/log/bounded_json.h"

namespace duskrow::formats {

using domain::Error;
using domain::ErrorCode;
using domain::Result;
using AnyJson = nlohmann::json;

namespace {

constexpr std::size_t mostBytes = 16U << 20U;
constexpr std::size_t mostDepth = 24;
constexpr std::size_t mostPositions = 400'000;
constexpr std::size_t fewestOfRing = 4;

std::string lowered(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(), [](unsigned char letter) {
        return letter < 0x80 ? static_cast<char>(std::tolower(letter)) : static_cast<char>(letter);
    });
    return text;
}

class Reader {
public:
    [[nodiscard]] const std::string& wrong() const { return m_wrong; }
    [[nodiscard]] Overlay take() { return std::move(m_overlay); }

    void object(const AnyJson& json)
    {
        const std::string type = textOf(json, "type");
        if (type == "FeatureCollection")
            each(json, "features", [this](const AnyJson& one) { feature(one); });
        else if (type == "Feature")
            feature(json);
        else
            geometry(json, {});
    }

private:
    void fail(const char* what)
    {
        if (m_wrong.empty()) m_wrong = what;
    }

    static std::string textOf(const AnyJson& json, const char* name)
    {
        if (!json.is_object()) return {};
        const auto found = json.find(name);
        return found != json.end() && found->is_string() ? found->get<std::string>() : std::string();
    }

    template <typename Take>
    void each(const AnyJson& json, const char* member, Take take)
    {
        const auto found = json.is_object() ? json.find(member) : json.end();
        if (!json.is_object() || found == json.end() || !found->is_array()) return fail(member);
        for (const AnyJson& one : *found) {
            if (!m_wrong.empty()) return;
            take(one);
        }
    }

    void feature(const AnyJson& json)
    {
        if (textOf(json, "type") != "Feature") return fail("feature");
        std::string name;
        if (const auto properties = json.find("properties");
            properties != json.end() && properties->is_object())
            for (const auto& [key, value] : properties->items())
                if (const std::string plain = lowered(key);
                    value.is_string() && (plain == "name" || (plain == "district" && name.empty())))
                    name = value.get<std::string>();
        const auto shape = json.find("geometry");
        if (shape == json.end()) return fail("geometry");
        if (!shape->is_null()) geometry(*shape, name);
    }

    void geometry(const AnyJson& json, const std::string& name)
    {
        const std::string type = textOf(json, "type");
        if (type == "Point" || type == "MultiPoint") return;
        if (type == "GeometryCollection")
            return each(json, "geometries", [&](const AnyJson& one) { geometry(one, name); });
        if (type == "Polygon") {
            m_overlay.areas.push_back({name, {polygon(json, "coordinates")}});
        } else if (type == "MultiPolygon") {
            OverlayArea area{name, {}};
            each(json, "coordinates", [&](const AnyJson& one) { area.polygons.push_back(polygonOf(one)); });
            m_overlay.areas.push_back(std::move(area));
        } else if (type == "LineString") {
            if (const auto found = json.find("coordinates"); found != json.end())
                m_overlay.lines.push_back(positions(*found));
        } else if (type == "MultiLineString") {
            each(json, "coordinates", [&](const AnyJson& one) { m_overlay.lines.push_back(positions(one)); });
        } else {
            fail("type");
        }
    }

    Polygon polygon(const AnyJson& json, const char* member)
    {
        const auto found = json.find(member);
        if (found == json.end()) fail(member);
        return found == json.end() ? Polygon{} : polygonOf(*found);
    }

    Polygon polygonOf(const AnyJson& json)
    {
        Polygon rings;
        if (!json.is_array() || json.empty()) {
            fail("coordinates");
            return rings;
        }
        for (const AnyJson& one : json) {
            auto points = positions(one);
            if (m_wrong.empty() && (points.size() < fewestOfRing || !(points.front() == points.back())))
                fail("ring");
            rings.push_back(std::move(points));
        }
        return rings;
    }

    std::vector<LonLat> positions(const AnyJson& json)
    {
        std::vector<LonLat> points;
        if (!json.is_array()) {
            fail("coordinates");
            return points;
        }
        m_positions += json.size();
        if (m_positions > mostPositions) {
            fail("too many positions");
            return points;
        }
        for (const AnyJson& one : json) {
            const bool isPair = one.is_array() && one.size() >= 2 && one[0].is_number() && one[1].is_number();
            const LonLat point = isPair ? LonLat{one[0].get<double>(), one[1].get<double>()} : LonLat{};
            if (!isPair || !(std::abs(point.longitude) <= 180) || !(std::abs(point.latitude) <= 90)) {
                fail("position");
                return {};
            }
            points.push_back(point);
        }
        return points;
    }

    Overlay m_overlay;
    std::size_t m_positions = 0;
    std::string m_wrong;
};

} // namespace

const OverlayArea* areaNamed(const Overlay& overlay, std::string_view name)
{
    const std::string wanted = lowered(std::string(name));
    for (const OverlayArea& area : overlay.areas)
        if (!area.name.empty() && lowered(area.name) == wanted) return &area;
    return nullptr;
}

Result<Overlay> readOverlay(std::string_view text)
{
    if (text.size() > mostBytes) return Error{ErrorCode::FileUnreadable, {"GeoJSON"}, "larger than 16 MiB"};
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    const auto json = domain::parseBounded(text, mostDepth, domain::Numbers::Any);
    if (!json) return Error{ErrorCode::FileUnreadable, {"GeoJSON"}, "no JSON"};
    Reader reader;
    reader.object(*json);
    if (!reader.wrong().empty()) return Error{ErrorCode::FileUnreadable, {"GeoJSON"}, reader.wrong()};
    return reader.take();
}

} // namespace duskrow::formats
