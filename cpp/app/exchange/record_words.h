// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "app/exchange/people.h"
#include "app/trap_words.h"

namespace duskrow::app {

// A text among the values of a record, and an id; empty and nil where there is none.
std::string textIn(const domain::Folded& folded, const char* field);
domain::Uuid idIn(const domain::Folded& folded, const char* field);

// Records and changes of whatever kind, in words, for lists that hold many kinds.
class RecordWords {
public:
    // reader, people  outlive this
    // animals         what is caught, by pest
    RecordWords(store::Reader& reader, const People& people, Animals animals, const domain::Moment& now)
        : m_reader(reader), m_people(people), m_animals(std::move(animals)), m_now(now)
    {
    }

    // "Visit of Tuesday 7 July · Slough corner · bertha 1"; the kind alone where nothing more is known.
    [[nodiscard]] QString titleOf(const std::vector<domain::Change>& changes) const;
    // What the trap catches that a record is about: moths where nothing else is known.
    [[nodiscard]] text::Animal animalOf(const std::vector<domain::Change>& changes) const;
    [[nodiscard]] QString valueOf(const std::string& kind, const std::string& field,
        const domain::Value& value, const text::Animal& animal) const;
    // "Catch: 47 moths", for every field worth reading.
    [[nodiscard]] QStringList linesOf(const domain::Change& change, const text::Animal& animal) const;
    // "Ida, 9 July, 07:30"
    [[nodiscard]] QString whoAndWhen(const domain::Change& change) const;

private:
    [[nodiscard]] QString placeOf(const domain::Uuid& trap, const domain::Uuid& site) const;

    store::Reader& m_reader;
    const People& m_people;
    Animals m_animals;
    domain::Moment m_now;
};

} // namespace duskrow::app
