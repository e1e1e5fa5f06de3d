// SPDX-License-Identifier: MIT
#include "sim/world.h"

namespace duskrow::sim {

void stepEdit(World& world);
void stepSettle(World& world);
void stepRule(World& world);
void stepAdmit(World& world);
void stepAssign(World& world);
void stepLend(World& world);
void stepEnd(World& world);
void stepEnrol(World& world);
void stepFolder(World& world);
void stepHub(World& world);
void stepSend(World& world);
void stepDeliver(World& world);
void stepCarry(World& world);
void stepDamage(World& world);
void stepMendFolder(World& world);
void stepConflictCopy(World& world);
void stepCrash(World& world);
void stepDiskTrouble(World& world);
void stepReopen(World& world);
void stepBackup(World& world);
void stepRestore(World& world);
void stepClone(World& world);
void stepClock(World& world);
void stepHubAccident(World& world);
void stepRestoreBoth(World& world);
void stepStranger(World& world);
void stepClaim(World& world);
void stepTerm(World& world);
void stepCompare(World& world);

const std::vector<Step>& steps()
{
    static const std::vector<Step> all{
        {"edit", 620, stepEdit},
        {"settle", 30, stepSettle},
        {"rule", 16, stepRule},
        {"admit", 7, stepAdmit},
        {"assign", 7, stepAssign},
        {"lend", 8, stepLend},
        {"end a device", 3, stepEnd},
        {"let in", 18, stepEnrol},
        {"folder", 70, stepFolder},
        {"hub", 45, stepHub},
        {"send", 22, stepSend},
        {"deliver", 30, stepDeliver},
        {"carry", 10, stepCarry},
        {"damage in the folder", 12, stepDamage},
        {"mend in the folder", 8, stepMendFolder},
        {"conflict copy", 10, stepConflictCopy},
        {"crash", 26, stepCrash},
        {"trouble with the disk", 15, stepDiskTrouble},
        {"open again", 15, stepReopen},
        {"backup", 14, stepBackup},
        {"restore", 12, stepRestore},
        {"restore hub and phone", 5, stepRestoreBoth},
        {"clone", 4, stepClone},
        {"clock", 15, stepClock},
        {"hub's accident", 20, stepHubAccident},
        {"stranger", 20, stepStranger},
        {"claim", 6, stepClaim},
        {"term", 7, stepTerm},
        {"compare", 4, stepCompare},
    };
    return all;
}

} // namespace duskrow::sim
