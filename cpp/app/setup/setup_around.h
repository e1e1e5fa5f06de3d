// SPDX-License-Identifier: MIT
#pragma once

#include <QtQml/qqmlregistration.h>

#include "app/setup/setup_part.h"
#include "domain/rules/placement.h"

namespace duskrow::app {

// What stands around the place: distances as the protocol asks for them. They are checked and said; none is
// needed to go on.
class SetupAround : public SetupPart {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("part of a set-up")
    // In whole metres; below zero while not given.
    Q_PROPERTY(int edge MEMBER m_edge NOTIFY edited FINAL)
    Q_PROPERTY(int farmyard MEMBER m_farmyard NOTIFY edited FINAL)
    Q_PROPERTY(int light MEMBER m_light NOTIFY edited FINAL)
    // What the protocol asks for; empty when it asks nothing.
    Q_PROPERTY(QString edgeAdvice READ edgeAdvice NOTIFY changed FINAL)
    Q_PROPERTY(QString farmyardAdvice READ farmyardAdvice NOTIFY changed FINAL)
    Q_PROPERTY(QString lightAdvice READ lightAdvice NOTIFY changed FINAL)
    Q_PROPERTY(QStringList trapLabels READ trapLabels NOTIFY changed FINAL) // the nearest trap of each kind
    Q_PROPERTY(QStringList trapDistances READ trapDistances NOTIFY changed FINAL)
    Q_PROPERTY(QString unmeasured READ unmeasured NOTIFY changed FINAL) // advice without a distance
    Q_PROPERTY(QString concern READ concern NOTIFY changed FINAL) // what is not as the protocol asks

public:
    using SetupPart::SetupPart;

    [[nodiscard]] QString edgeAdvice() const { return advice(domain::PlacementKind::FieldEdge); }
    [[nodiscard]] QString farmyardAdvice() const { return advice(domain::PlacementKind::Farmyard); }
    [[nodiscard]] QString lightAdvice() const { return advice(domain::PlacementKind::StrongLight); }
    [[nodiscard]] QStringList trapLabels() const;
    [[nodiscard]] QStringList trapDistances() const;
    [[nodiscard]] QString unmeasured() const;
    [[nodiscard]] QString concern() const;

    // The trap to be, as far as it is known: its place with the accuracy, its pest, and the trap it replaces.
    void look(const domain::Trap& trap);
    void fill(domain::Trap& trap) const;
    void takeFrom(const domain::Trap& earlier);

private:
    struct Neighbour {
        const domain::Trap* trap;
        domain::PlacementMeasure measure;
    };
    [[nodiscard]] const domain::Protocol* protocol() const;
    [[nodiscard]] QString advice(domain::PlacementKind kind) const;
    [[nodiscard]] std::vector<domain::PlacementMeasure> measures() const;

    int m_edge = -1;
    int m_farmyard = -1;
    int m_light = -1;
    std::string m_pest;
    std::vector<Neighbour> m_neighbours; // the nearest of the same pest and of another, where there are any
};

} // namespace duskrow::app
