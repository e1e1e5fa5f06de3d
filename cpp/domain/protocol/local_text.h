// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace duskrow::domain {

// A text of a protocol in each of its languages.
struct LocalText {
    std::string en;
    std::string fr;

    // language  "fr", "fr_CA", "fr-CA" ...; any other language gets English
    [[nodiscard]] const std::string& in(std::string_view language) const
    {
        const bool french =
            language.starts_with("fr") && (language.size() == 2 || language[2] == '_' || language[2] == '-');
        return french ? fr : en;
    }
    [[nodiscard]] bool isEmpty() const { return en.empty() && fr.empty(); }
};

// A word for one and for several of a thing.
struct CountedWord {
    LocalText one; // "midge"
    LocalText many; // "midges"
};

} // namespace duskrow::domain
