// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

namespace duskrow::domain {

struct Threshold;
struct ThresholdRule;

enum class WorkingUnit {
    MoneyPerAcre,
    MoneyPerHectare,
    MoneyPerBushel,
    MoneyPerTonne,
    AcreInHectares, // hectares per acre
    BushelInTonnes, // tonnes per bushel
    YieldPerLarva, // bushels per acre for one larva per square metre
    MoneyPerLarva, // dollars per acre for one larva per square metre
    Density, // larvae per square metre
    CountInFrame, // larvae per frame
    FrameArea, // square metres
    Number,
};

// How a term joins what stands before it; the first of a step begins it.
enum class WorkingSign { Begin, Plus, Times, DividedBy, AtLeast };

struct WorkingTerm {
    WorkingSign sign;
    double value;
    WorkingUnit unit;
};

enum class WorkingWhat {
    SumCost, // product + application + wheel tracks
    CostPerAcre,
    PricePerBushel,
    LossPerLarva, // in money
    UsualSeason, // cost over loss
    DrySeason,
    Floor,
    PerFrame,
};

// One line of arithmetic, worked from left to right. Each begins from what earlier ones gave; steps that
// change nothing are left out.
struct WorkingStep {
    WorkingWhat what;
    std::vector<WorkingTerm> terms;
    double result;
    WorkingUnit unit; // of the result
};

// The steps from what was typed to larvae per frame.
std::vector<WorkingStep> workingOf(const Threshold& threshold, const ThresholdRule& rule);

} // namespace duskrow::domain
