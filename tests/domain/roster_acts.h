// SPDX-License-Identifier: MIT
#pragma once

#include "domain/roster_scene.h"

// A district with its people, and every kind of change that they try.
namespace duskrow::tests {

using namespace duskrow::domain;
using namespace std::string_literals;

inline const std::map<char, Standing> standings{{'+', Standing::Counts}, {'?', Standing::NotEnrolled},
    {'E', Standing::Ended}, {'M', Standing::MemberEnded}, {'N', Standing::NotYours},
    {'O', Standing::OtherSite}, {'C', Standing::CoordinatorOnly}, {'R', Standing::RootOnly},
    {'S', Standing::SettlingNotYours}};

// A district in June. Gus has two phones and a third that he lost, Hal lends Gus one of two traps, Ada looks
// after Gus's field, Pat left at the end of May, Kim came by invitation.
inline RosterScene district()
{
    RosterScene scene;
    scene.root("founder", "root");
    scene.member("founder", "Cora", "coordinator");
    scene.device("root", "cora", "Cora");
    scene.member("founder", "Carl", "coordinator");
    scene.device("founder", "carl", "Carl");
    for (const char* name : {"Gus", "Hal", "Kim"}) scene.member("cora", name, "grower");
    scene.member("cora", "Ada", "agronomist");
    scene.says("cora", "member", RosterScene::id("Pat"), "",
        {{"name", {"Pat"s, {}}}, {"role", {"grower"s, {}}}, {"until_day", {"2026-05-31"s, {}}}});
    scene.device("cora", "gus", "Gus");
    scene.device("cora", "gus2", "Gus");
    scene.device("cora", "lost", "Gus");
    scene.ends("cora", "lost", 0);
    scene.device("cora", "hal", "Hal");
    scene.device("cora", "ada", "Ada");
    scene.device("cora", "pat", "Pat");
    scene.invites("cora", "Kim", "spring");
    scene.claims("kim", "spring");
    scene.site("gus", "gus field");
    scene.site("hal", "hal field");
    scene.site("pat", "pat field");
    scene.site("kim", "kim field");
    scene.assigns("cora", "Ada", "gus field");
    scene.lends("hal", "hal trap", "hal field", "Gus", "2026-06-10", "2026-06-20");
    return scene;
}

inline RosterScene::Fields visit(const std::string& trap, const std::string& day)
{
    return {{"trap", {RosterScene::text(trap), {}}}, {"day", {day, {}}}, {"pest", {std::int64_t{3}, {}}}};
}

struct Act {
    std::string kind;
    std::string site;
    RosterScene::Fields fields;
    Uuid record = RosterScene::id("a new record");
};

// Kinds of change that people try.
inline std::map<std::string, Act> acts()
{
    const auto hex = [](const char* device) { return formatHex(RosterScene::stream(device)); };
    const std::vector cited{ChangeRef{RosterScene::stream("hal"), 50}};
    return {
        {"visit at Gus's", {"visit", "gus field", visit("gus trap", "2026-06-15")}},
        {"visit at Hal's, lent trap, in its days", {"visit", "hal field", visit("hal trap", "2026-06-10")}},
        {"visit at Hal's, lent trap, last day", {"visit", "hal field", visit("hal trap", "2026-06-20")}},
        {"visit at Hal's, lent trap, day before", {"visit", "hal field", visit("hal trap", "2026-06-09")}},
        {"visit at Hal's, lent trap, day after", {"visit", "hal field", visit("hal trap", "2026-06-21")}},
        {"visit at Hal's, other trap", {"visit", "hal field", visit("other trap", "2026-06-15")}},
        {"service of the lent trap", {"service", "hal field", visit("hal trap", "2026-06-15")}},
        {"sample of the lent trap", {"sample", "hal field", visit("hal trap", "2026-06-15")}},
        {"walk at Hal's", {"walk", "hal field", {{"site", {RosterScene::text("hal field"), {}}}}}},
        {"trap at Hal's", {"trap", "hal field", {{"tag", {"7"s, {}}}}}},
        {"loan at Hal's", {"loan", "hal field", {{"trap", {RosterScene::text("x"), {}}}}}},
        {"loan at Gus's", {"loan", "gus field", {{"trap", {RosterScene::text("x"), {}}}}}},
        {"visit without site", {"visit", "", visit("gus trap", "2026-06-15")}},
        {"unknown kind at Gus's", {"balloon", "gus field", {{"zz", {"1"s, {}}}}}},
        {"unknown kind without site", {"balloon", "", {{"zz", {"1"s, {}}}}}},
        {"Gus's site", {"site", "gus field", {{"name", {"north"s, {}}}}, RosterScene::id("gus field")}},
        {"Hal's site", {"site", "hal field", {{"gate", {"open"s, {}}}}, RosterScene::id("hal field")}},
        {"Hal's site, as if Gus's",
            {"site", "gus field", {{"gate", {"open"s, {}}}}, RosterScene::id("hal field")}},
        {"programme", {"programme", "", {{"name", {"mine"s, {}}}}, RosterScene::programme()}},
        {"season", {"season", "", {{"year", {std::int64_t{2026}, {}}}}}},
        {"district", {"district", "", {{"name", {"West"s, {}}}}}},
        {"protocol_use", {"protocol_use", "", {{"pest", {"b"s, {}}}}}},
        {"station", {"station", "", {{"name", {"Airport"s, {}}}}}},
        {"temperature", {"temperature", "", {{"minimum_mc", {std::int64_t{7000}, {}}}}}},
        {"temperature at Gus's", {"temperature", "gus field", {{"minimum_mc", {std::int64_t{7000}, {}}}}}},
        {"new member", {"member", "", {{"name", {"Zed"s, {}}}, {"role", {"grower"s, {}}}}}},
        {"new coordinator", {"member", "", {{"role", {"coordinator"s, {}}}}}},
        {"Gus a coordinator", {"member", "", {{"role", {"coordinator"s, {}}}}, RosterScene::id("Gus")}},
        {"Gus leaves", {"member", "", {{"until_day", {"2026-06-01"s, {}}}}, RosterScene::id("Gus")}},
        {"Carl leaves", {"member", "", {{"until_day", {"2026-06-01"s, {}}}}, RosterScene::id("Carl")}},
        {"Carl a grower", {"member", "", {{"role", {"grower"s, {}}}}, RosterScene::id("Carl")}},
        {"Carl's name", {"member", "", {{"name", {"Carlo"s, {}}}}, RosterScene::id("Carl")}},
        {"Hal's phone ends",
            {"device", "", {{"ended_after", {std::int64_t{0}, {}}}}, RosterScene::deviceOf("hal")}},
        {"Carl's phone ends",
            {"device", "", {{"ended_after", {std::int64_t{0}, {}}}}, RosterScene::deviceOf("carl")}},
        {"Carl's phone is Gus's",
            {"device", "", {{"member", {RosterScene::text("Gus"), {}}}}, RosterScene::deviceOf("carl")}},
        {"a root's phone ends",
            {"device", "", {{"ended_after", {std::int64_t{99}, {}}}}, RosterScene::deviceOf("root")}},
        {"the founder's phone ends",
            {"device", "", {{"ended_after", {std::int64_t{99}, {}}}}, RosterScene::deviceOf("founder")}},
        {"Hal's phone a root", {"device", "", {{"root", {true, {}}}}, RosterScene::deviceOf("hal")}},
        {"Gus's phone a root",
            {"device", "", {{"stream", {hex("gus"), {}}}, {"root", {true, {}}}},
                RosterScene::deviceOf("gus")}},
        {"Gus's phone's label",
            {"device", "", {{"label", {"the red one"s, {}}}}, RosterScene::deviceOf("gus")}},
        {"Gus's stream in Hal's device",
            {"device", "", {{"stream", {hex("gus"), {}}}}, RosterScene::deviceOf("hal")}},
        {"invitation", {"invitation", "", {{"member", {RosterScene::text("Gus"), {}}}}}},
        {"assignment", {"assignment", "hal field", {{"site", {RosterScene::text("hal field"), {}}}}}},
        {"ruling at Gus's", {"ruling", "gus field", {{"says", {"stands"s, {}}}}}},
        {"bulletin", {"bulletin", "", {{"text", {"All is well."s, {}}}}}},
        {"bulletin at Gus's", {"bulletin", "gus field", {{"text", {"All is well."s, {}}}}}},
        {"question at Gus's", {"question", "gus field", {{"words", {"47?"s, {}}}}}},
        {"question settled at Gus's", {"question", "gus field", {{"settled", {true, {}}}}}},
        {"answer at Gus's", {"answer", "gus field", visit("gus trap", "2026-06-15")}},
        {"answer of the lent trap, in its days", {"answer", "hal field", visit("hal trap", "2026-06-15")}},
        {"answer of the lent trap, day after", {"answer", "hal field", visit("hal trap", "2026-06-21")}},
        {"answer at Hal's, other trap", {"answer", "hal field", visit("other trap", "2026-06-15")}},
        {"admission at Gus's", {"admission", "gus field", {{"change", {formatRef(cited.front()), {}}}}}},
    };
}

} // namespace duskrow::tests
