// SPDX-License-Identifier: MIT
#include <QFile>
#include <QFileInfo>

#include <map>
#include <nlohmann/json.hpp>

#include "domain/protocol/located_json.h"
#include "domain/protocol/protocol_reader.h"
#include "domain/rules/bands.h"
#include "domain/rules/trap_rule_results.h"
#include "text/protocol_figures.h"
#include "text/rule_text.h"
#include "tool/commands.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;
using Json = nlohmann::ordered_json;

namespace {

constexpr int notSound = 1;

struct ProtocolLine {
    std::string file;
    bool asJson = false;
};

std::vector<std::string> rulesOf(const Protocol& protocol, const TrapType& type)
{
    std::vector<std::string> ids;
    for (const CatchRule& rule : protocol.catchRules)
        if (std::find(rule.trapTypes.begin(), rule.trapTypes.end(), type.id) != rule.trapTypes.end())
            ids.push_back(rule.id);
    for (const TrapRule* rule : trapRulesFor(protocol, type.id)) ids.push_back(headOf(*rule).id);
    return ids;
}

std::vector<std::string> rulesOfCrops(const Protocol& protocol)
{
    std::vector<std::string> ids;
    for (const ThresholdRule& rule : protocol.thresholdRules) ids.push_back(rule.id);
    for (const FieldRule& rule : protocol.fieldRules) ids.push_back(headOf(rule).id);
    return ids;
}

Json figureJson(const text::FigureWords& figure)
{
    const auto plain = [](const QString& words) { return words.toStdString(); };
    return {{"section", plain(figure.section)}, {"name", plain(figure.name)},
        {"value", figure.value.isEmpty() ? Json() : Json(plain(figure.value))},
        {"source", plain(figure.source)},
        {"note", figure.note.isEmpty() ? Json() : Json(plain(figure.note))}};
}

Json protocolJson(const std::string& file, const Protocol& protocol)
{
    Json json{{"file", file}, {"is_sound", true}, {"id", protocol.id}, {"version", protocol.version},
        {"name", protocol.name.en}, {"latin", protocol.latin}};
    Json types = Json::array();
    for (const TrapType& type : protocol.trapTypes)
        types.push_back({{"id", type.id}, {"has_bands", bandsFor(protocol, type.id).has_value()},
            {"rules", rulesOf(protocol, type)}});
    Json unknown = Json::array();
    for (const UnknownRule& rule : protocol.unknownRules)
        unknown.push_back({{"id", rule.id}, {"shape", rule.shape}});
    Json figures = Json::array();
    for (const text::FigureWords& figure : text::figuresOf(protocol, "en"))
        figures.push_back(figureJson(figure));
    json["trap_types"] = std::move(types);
    json["crop_rules"] = rulesOfCrops(protocol);
    json["rules_not_understood"] = std::move(unknown);
    json["figures"] = std::move(figures);
    return json;
}

QString listed(const std::vector<std::string>& ids)
{
    QStringList words;
    for (const std::string& id : ids) words << QString::fromStdString(id);
    return words.isEmpty() ? said(QT_TRANSLATE_NOOP("Tool", "none")) : words.join(QStringLiteral(", "));
}

void printHead(const ProtocolLine& line, const Protocol& protocol)
{
    print(said(QT_TRANSLATE_NOOP("Tool", "%1 is sound: %2 (%3), protocol %4 %5."))
              .arg(QString::fromStdString(line.file), inLanguage(protocol.name),
                  QString::fromStdString(protocol.latin), QString::fromStdString(protocol.id),
                  QString::fromStdString(protocol.version)));
    for (const TrapType& type : protocol.trapTypes)
        print(said(QT_TRANSLATE_NOOP("Tool", "Trap type %1: rules %2; bands of a whole season: %3."))
                  .arg(QString::fromStdString(type.id), listed(rulesOf(protocol, type)),
                      bandsFor(protocol, type.id).has_value() ? said(QT_TRANSLATE_NOOP("Tool", "yes"))
                                                              : said(QT_TRANSLATE_NOOP("Tool", "none"))));
    print(said(QT_TRANSLATE_NOOP("Tool", "Rules for the crop: %1.")).arg(listed(rulesOfCrops(protocol))));
    for (const UnknownRule& rule : protocol.unknownRules)
        print(said(QT_TRANSLATE_NOOP("Tool",
                       "The rule %1 has the shape %2, which this version does not understand. It is kept and "
                       "not used."))
                  .arg(QString::fromStdString(rule.id), QString::fromStdString(rule.shape)));
}

void printFigures(const Protocol& protocol)
{
    QString section;
    for (const text::FigureWords& figure : text::figuresOf(protocol, QLocale().name().toStdString())) {
        if (figure.section != section) print(QString());
        if (figure.section != section) print(figure.section);
        section = figure.section;
        const QString value =
            figure.value.isEmpty() ? said(QT_TRANSLATE_NOOP("Tool", "not published")) : figure.value;
        QString told = QStringLiteral("  %1: %2").arg(figure.name, value);
        if (!figure.source.isEmpty()) told += QStringLiteral(" [%1]").arg(figure.source);
        print(told);
        if (!figure.note.isEmpty()) print(QStringLiteral("    ") + figure.note);
    }
}

// What is wrong, where. Only a file that was read can be found unsound.
Result<int> sayMistake(const ProtocolLine& line, const Error& error)
{
    const bool isFound = error.code == ErrorCode::ProtocolSyntax || error.code == ErrorCode::ProtocolRule;
    if (!isFound) return error;
    // The detail of what is no JSON at all is the words of a library.
    const std::string field = error.code == ErrorCode::ProtocolRule ? error.detail : std::string();
    if (line.asJson) {
        const Json json{{"file", line.file}, {"is_sound", false}, {"line", std::stoi(error.args.at(1))},
            {"field", field.empty() ? Json() : Json(field)}, {"what", error.args.at(2)}};
        print(QString::fromStdString(json.dump(2, ' ', false, Json::error_handler_t::replace)));
        return notSound;
    }
    print(said(QT_TRANSLATE_NOOP("Tool", "%1 is not sound.")).arg(QString::fromStdString(line.file)));
    print(said(QT_TRANSLATE_NOOP("Tool", "Line %1: %2."))
              .arg(QString::fromStdString(error.args.at(1)), QString::fromStdString(error.args.at(2))));
    if (!field.empty())
        print(said(QT_TRANSLATE_NOOP("Tool", "Field: %1")).arg(QString::fromStdString(field)));
    return notSound;
}

Result<int> checkProtocol(const ProtocolLine& line)
{
    QFile file(QString::fromStdString(line.file));
    if (!file.open(QIODevice::ReadOnly)) return Error{ErrorCode::FileUnreadable, {line.file}};
    // One byte more than any protocol has: the reader then says that it is too long.
    const QByteArray bytes = file.read(static_cast<qint64>(mostProtocolBytes) + 1);
    const auto protocol = readProtocol(bytes.toStdString(), QFileInfo(file).fileName().toStdString());
    if (!protocol) return sayMistake(line, protocol.error());
    if (line.asJson) {
        print(QString::fromStdString(protocolJson(line.file, *protocol).dump(2)));
        return 0;
    }
    printHead(line, *protocol);
    printFigures(*protocol);
    return 0;
}

} // namespace

Work declareProtocol(CLI::App& line)
{
    const auto typed = std::make_shared<ProtocolLine>();
    CLI::App* check = line.add_subcommand(
        "check", "What a protocol file says, each number with its source, or what is wrong with it");
    check->add_option("FILE", typed->file, "A protocol file as .json")->required()->type_name("");
    check->add_flag("--json", typed->asJson, "For other programs: JSON with every figure");
    check->footer("Exits with 0 when the file is sound, 1 when not, 2 when it cannot be read.");
    line.require_subcommand(1);
    return [typed] { return checkProtocol(*typed); };
}

} // namespace duskrow::tool
