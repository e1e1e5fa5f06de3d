// SPDX-License-Identifier: MIT
#include "formats/darwin_archive.h"

#include "formats/svg.h"

namespace duskrow::formats {

using namespace duskrow::domain;

namespace {

constexpr const char* terms = "http://rs.tdwg.org/dwc/terms/";

std::string tableXml(
    const char* element, const char* rowType, const char* file, const char* idElement, const Table& table)
{
    std::string xml = std::string("  <") + element
        + " encoding=\"UTF-8\" fieldsTerminatedBy=\",\" "
          "linesTerminatedBy=\"\\r\\n\" fieldsEnclosedBy=\"&quot;\" ignoreHeaderLines=\"1\" rowType=\""
        + terms + rowType + "\">\n    <files><location>" + file + "</location></files>\n    <" + idElement
        + " index=\"0\"/>\n";
    for (std::size_t i = 1; i < table.header.size(); ++i)
        xml += "    <field index=\"" + std::to_string(i) + "\" term=\"" + terms + table.header[i] + "\"/>\n";
    return xml + "  </" + element + ">\n";
}

} // namespace

Result<std::vector<ExportedFile>> darwinFiles(const Table& events, const Table& occurrences, std::string eml)
{
    auto core = writeCsv(events);
    if (!core) return core.error();
    auto extension = writeCsv(occurrences);
    if (!extension) return extension.error();
    const std::string meta = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                             "<archive xmlns=\"http://rs.tdwg.org/dwc/text/\" metadata=\"eml.xml\">\n"
        + tableXml("core", "Event", "event.csv", "id", events)
        + tableXml("extension", "Occurrence", "occurrence.csv", "coreid", occurrences) + "</archive>\n";
    return std::vector<ExportedFile>{{"event.csv", std::move(*core)},
        {"occurrence.csv", std::move(*extension)}, {"meta.xml", meta}, {"eml.xml", std::move(eml)}};
}

std::string emlElement(const char* name, const std::string& text)
{
    return std::string("<") + name + ">" + escapedXml(text) + "</" + name + ">";
}

} // namespace duskrow::formats
