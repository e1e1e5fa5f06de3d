// SPDX-License-Identifier: MIT
#include "domain/protocol/section_readers.h"

namespace duskrow::domain {

void readFlight(Reading& reading, const LocatedJson& file, Protocol& protocol)
{
    using std::chrono::days;
    if (!file.find("phenology")) return;
    const LocatedJson& node = reading.object(file, "phenology");
    Phenology phenology;
    phenology.setUpAtPupalDevelopment =
        reading.figureIfAny<Percent>(node, "set_up_at_pupal_development_percent");
    phenology.adultsAfter = reading.rangeIfAny<days>(node, "adults_after_days");
    phenology.eggsHatchAfter = reading.rangeIfAny<days>(node, "eggs_hatch_after_days");
    phenology.damagingLarvaeAfter = reading.rangeIfAny<days>(node, "damaging_larvae_after_days");
    protocol.phenology = std::move(phenology);
}

} // namespace duskrow::domain
