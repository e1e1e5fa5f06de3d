// SPDX-License-Identifier: MIT
#include <QCoreApplication>
#include <QLocale>

#include "domain/rules/bands.h"
#include "text/amounts.h"
#include "text/season_text.h"
#include "tool/arguments.h"
#include "tool/commands.h"
#include "tool/output.h"

namespace duskrow::tool {

using namespace duskrow::domain;

namespace {

constexpr std::int64_t largestCatch = 999'999; // as in the record of a visit

struct BandLine {
    std::string pest;
    std::string caught;
    std::string trapType;
    std::string protocols;
};

QString sourceOf(const Protocol& protocol, const Band& band)
{
    const std::string* citation = protocol.citation(band.source);
    if (citation) return QString::fromStdString(*citation);
    return QCoreApplication::translate("Tool", "common practice, no source");
}

Result<int> sayBand(const BandLine& line)
{
    const auto protocol = protocolOf(line.pest, line.protocols);
    if (!protocol) return protocol.error();
    const auto caught = wholeNumber(line.caught, "catch", 0, largestCatch);
    if (!caught) return caught.error();
    const std::string trapType = line.trapType.empty() ? protocol->trapTypes.front().id : line.trapType;
    const auto bands = bandsFor(*protocol, trapType);
    if (!bands) return bands.error();
    const Band& band = bandOf(*bands, Moths{*caught});
    const std::string language = QLocale().name().toStdString();
    const text::Animal animal = text::animalOf(&*protocol, language);
    const auto words = [&](const LocalText& text) { return QString::fromStdString(text.in(language)); };

    print(QCoreApplication::translate("Tool", "%1 in a whole season of one trap: %2 (band %3 of %4, %5).")
              .arg(animal.amount(Moths{*caught}), words(band.name), QString::number(band.level),
                  QString::number(bands->size()), text::bandSpan(band, {}, animal)));
    print(words(band.meaning.text));
    for (const Statement& caution : protocol->cautionsAt(CautionPlace::Counting)) print(words(caution.text));
    print(QCoreApplication::translate("Tool", "By the protocol %1 %2 for the trap type %3. Source: %4")
              .arg(QString::fromStdString(protocol->id), QString::fromStdString(protocol->version),
                  QString::fromStdString(trapType), sourceOf(*protocol, band)));
    return 0;
}

} // namespace

Work declareBand(CLI::App& line)
{
    const auto typed = std::make_shared<BandLine>();
    line.add_option("PROTOCOL", typed->pest, "The pest, such as bertha-armyworm")->required();
    line.add_option("CATCH", typed->caught, "Moths that one trap caught in a whole season")->required();
    line.add_option("--trap-type", typed->trapType, "The trap type (the protocol's usual one if left out)")
        ->type_name("ID");
    addProtocols(line, typed->protocols);
    return [typed] { return sayBand(*typed); };
}

} // namespace duskrow::tool
