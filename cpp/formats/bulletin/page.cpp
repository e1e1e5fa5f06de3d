// SPDX-License-Identifier: MIT
#include "formats/bulletin/page.h"

#include "formats/bulletin/page_style.h"
#include "formats/svg.h"

namespace duskrow::formats {

using namespace duskrow::domain;
using text::AreaWords;
using text::BulletinWords;

namespace {

constexpr double mapWidth = 460;
constexpr double chartWidth = 460;
constexpr std::size_t mostCellsShown = 12;

std::string element(const std::string& name, const std::string& text, const std::string& kind = {})
{
    return "<" + name + (kind.empty() ? "" : " class=\"" + kind + "\"") + ">" + escapedXml(text) + "</" + name
        + ">\n";
}

std::string paragraphs(const std::vector<std::string>& texts, const std::string& kind = {})
{
    std::string html;
    for (const std::string& one : texts) html += element("p", one, kind);
    return html;
}

std::string list(const std::vector<std::string>& texts)
{
    if (texts.empty()) return {};
    std::string html = "<ul>\n";
    for (const std::string& one : texts) html += element("li", one);
    return html + "</ul>\n";
}

std::string headRow(const std::vector<std::string>& columns)
{
    std::string html = "<thead><tr>";
    for (const std::string& column : columns) html += "<th scope=\"col\">" + escapedXml(column) + "</th>";
    return html + "</tr></thead>\n";
}

// On a narrow screen each line becomes a block of its own, so that every cell carries the name of its column.
std::string areaRow(const AreaWords& area, const std::vector<std::string>& columns)
{
    std::string html = "<tr><th scope=\"row\">" + escapedXml(area.name) + "</th>";
    if (area.cells.empty())
        html += "<td class=\"why\" colspan=\"" + std::to_string(columns.size() - 1) + "\">"
            + escapedXml(area.reason) + "</td>";
    for (std::size_t i = 0; i < area.cells.size(); ++i)
        html +=
            "<td data-label=\"" + escapedXml(columns[i + 1]) + "\">" + escapedXml(area.cells[i]) + "</td>";
    return html + "</tr>\n";
}

std::string areaTableHtml(
    const std::vector<AreaWords>& areas, const std::vector<std::string>& columns, const char* kind)
{
    std::string html = std::string("<table class=\"areas ") + kind + "\">\n" + headRow(columns) + "<tbody>\n";
    for (const AreaWords& area : areas) html += areaRow(area, columns);
    return html + "</tbody></table>\n";
}

// The four figures that everybody asks for first.
std::string figuresHtml(const BulletinWords& words)
{
    if (words.districts.empty() || words.districts.front().cells.empty()) return {};
    std::string html = "<ul class=\"figures\">\n";
    const auto& cells = words.districts.front().cells;
    for (const std::size_t i : {0U, 1U, 2U, 4U})
        html += "<li><b>" + escapedXml(cells[i]) + "</b><span>" + escapedXml(words.columns[i + 1])
            + "</span></li>\n";
    return html + "</ul>\n";
}

// The map shows the cells as well: a long list of them stays closed on the screen and off the paper until
// somebody opens it.
std::string cellsHtml(const BulletinWords& words)
{
    if (words.cells.empty()) return {};
    const std::string table = areaTableHtml(words.cells, words.cellColumns, "each");
    if (words.cells.size() <= mostCellsShown)
        return "<section>\n" + element("h2", words.cellsHeading) + table + "</section>\n";
    const std::string heading = words.cellsHeading + " (" + std::to_string(words.cells.size()) + ")";
    return "<section>\n<details>\n<summary>" + element("h2", heading) + "</summary>\n" + table
        + "</details>\n</section>\n";
}

std::string weeksHtml(const BulletinWords& words)
{
    std::string html =
        "<table class=\"plain\">\n" + headRow({words.weekColumn, words.medianColumn}) + "<tbody>\n";
    for (std::size_t i = 0; i < words.weeks.size(); ++i)
        html += "<tr><th scope=\"row\">" + escapedXml(words.weeks[i]) + "</th><td>"
            + escapedXml(words.weekMedians[i]) + "</td></tr>\n";
    return html + "</tbody></table>\n";
}

std::string filesHtml(const BulletinDocument& document)
{
    const std::string stem = fileStem(document.bulletin.iso);
    std::string html;
    for (const auto& [file, name] :
        {std::pair{".csv", "CSV"}, {".geojson", "GeoJSON"}, {"-dwca.zip", "Darwin Core"}})
        html += "<a href=\"" + stem + file + "\">" + name + "</a> · ";
    return "<p class=\"files\">" + escapedXml(document.words.filesHeading) + ": " + html
        + "<a href=\"feed.atom\">Atom</a></p>\n";
}

std::string headHtml(const BulletinDocument& document)
{
    const BulletinWords& words = document.words;
    const std::string style = pageStyle();
    return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\""
        + escapedXml(words.language)
        + "\">\n<head>\n<meta charset=\"utf-8\"/>\n<meta http-equiv=\"Content-Security-Policy\" content=\""
        + escapedXml(pagePolicy(style))
        + "\"/>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
          "<meta name=\"referrer\" content=\"no-referrer\"/>\n"
        + element("title", words.title) + "<meta name=\"description\" content=\"" + escapedXml(words.summary)
        + "\"/>\n<link rel=\"alternate\" type=\"application/atom+xml\" href=\"feed.atom\" title=\""
        + escapedXml(words.programme) + "\"/>\n<style>" + style + "</style>\n</head>\n";
}

std::string bodyHtml(const BulletinDocument& document)
{
    const BulletinWords& words = document.words;
    const auto drawn = [](const Picture& picture, const char* prefix) {
        SvgStyle style;
        style.inPage = prefix;
        return writeSvg(picture, style);
    };
    std::string html = "<header>\n" + element("p", words.programme) + element("h1", words.title)
        + element("p", words.dates + (words.issue.empty() ? "" : " · " + words.issue));
    if (!words.notice.empty()) html += element("p", words.notice, "notice");
    html += "</header>\n<main>\n" + figuresHtml(words) + "<div class=\"two\">\n<div>\n<section>\n"
        + paragraphs(words.paragraphs) + "</section>\n";
    if (!words.toDo.empty() || !words.cautions.empty())
        html += "<section class=\"todo\">\n" + element("h2", words.toDoHeading) + list(words.toDo)
            + paragraphs(words.cautions, "caution") + "</section>\n";
    html += "</div>\n<section class=\"map\">\n" + element("h2", words.mapHeading)
        + drawn(mapOf(document, mapWidth), "map") + "</section>\n</div>\n";
    html += "<section>\n" + element("h2", words.districtsHeading)
        + areaTableHtml(words.districts, words.columns, "all")
        + "</section>\n<div class=\"two\">\n<section>\n" + element("h2", words.chartHeading)
        + drawn(chartOf(document, chartWidth), "chart") + weeksHtml(words) + "</section>\n<div>\n";
    html += cellsHtml(words);
    html += "<section>\n" + element("h2", words.privacyHeading) + paragraphs(words.privacy)
        + "</section>\n</div>\n</div>\n</main>\n<footer>\n" + filesHtml(document) + "</footer>\n";
    return html;
}

} // namespace

std::string bulletinPage(const BulletinDocument& document)
{
    return headHtml(document) + "<body>\n" + bodyHtml(document) + "</body>\n</html>\n";
}

} // namespace duskrow::formats
