// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QString>

#include <string>

#include "domain/base/units.h"
#include "domain/protocol/protocol.h"

namespace duskrow::text {

// What a trap catches, in the reader's words: moths, unless a protocol names something else ("midge",
// "midges").
class Animal {
public:
    Animal() = default;
    // language  of the texts in the protocol: "en", "fr"
    Animal(const domain::CountedWord& word, const std::string& language);

    [[nodiscard]] bool isMoth() const { return m_many.isEmpty(); }
    [[nodiscard]] QString one() const; // "moth"
    [[nodiscard]] QString many() const; // "moths"
    [[nodiscard]] QString after(std::int64_t count) const; // the word alone that goes with a number
    [[nodiscard]] QString amount(domain::Moths count, const QLocale& locale = {}) const; // "47 moths"

private:
    QString m_one;
    QString m_many;
    bool m_noneIsOne = false; // French says "0 papillon"
};

// protocol  null: moths
Animal animalOf(const domain::Protocol* protocol, const std::string& language);

} // namespace duskrow::text
