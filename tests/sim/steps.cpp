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
void stepStranger(World& world);
void stepCompare(World& world);

const std::vector<Step>& steps()
{
    static const std::vector<Step> all{
        {"edit", 340, stepEdit},
        {"settle", 30, stepSettle},
        {"rule", 20, stepRule},
        {"admit", 12, stepAdmit},
        {"assign", 14, stepAssign},
        {"lend", 10, stepLend},
        {"end a device", 3, stepEnd},
        {"let in", 25, stepEnrol},
        {"folder", 100, stepFolder},
        {"hub", 70, stepHub},
        {"send", 35, stepSend},
        {"deliver", 50, stepDeliver},
        {"carry", 15, stepCarry},
        {"damage in the folder", 12, stepDamage},
        {"mend in the folder", 8, stepMendFolder},
        {"conflict copy", 10, stepConflictCopy},
        {"crash", 40, stepCrash},
        {"trouble with the disk", 15, stepDiskTrouble},
        {"open again", 15, stepReopen},
        {"backup", 12, stepBackup},
        {"restore", 5, stepRestore},
        {"clone", 2, stepClone},
        {"clock", 15, stepClock},
        {"hub's accident", 15, stepHubAccident},
        {"stranger", 20, stepStranger},
        {"compare", 8, stepCompare},
    };
    return all;
}

} // namespace duskrow::sim
