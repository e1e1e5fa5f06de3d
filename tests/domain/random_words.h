// SPDX-License-Identifier: MIT
#pragma once

#include "domain/roster_scene.h"

namespace duskrow::tests {

// Random words on the roster by anybody: some theirs to say, some not; some answer earlier ones.
class RandomWords {
public:
    RandomWords(RosterScene& scene, std::mt19937& random) : m_scene(scene), m_random(random) { }

    void say()
    {
        speak();
        answer();
    }
    // A count, a withdrawal or a ruling at one of the sites.
    void work()
    {
        const std::string record = one({"v1", "v2", "v3", "v4", "v5", "v6"});
        const std::string at = one({"a", "a", "b", "c"});
        const domain::Uuid visit = RosterScene::id(record);
        switch (m_random() % 8) {
        case 0:
            m_scene.withdraws(device(), "visit", visit, at);
            break;
        case 1:
            rule(record, at);
            break;
        default:
            m_scene.says(device(), "visit", visit, at,
                {{"trap", {RosterScene::text(one({"t", "u"})), {}}},
                    {"day", {one({"2026-05-20", "2026-06-15"}), {}}},
                    {one({"pest", "bees"}), {static_cast<std::int64_t>(m_random() % 5), {}}}});
        }
        answer();
    }

private:
    std::string one(std::initializer_list<const char*> of) { return *(of.begin() + m_random() % of.size()); }
    std::string device()
    {
        return one({"founder", "root", "root2", "cora", "carl", "gus", "gus2", "hal", "new"});
    }
    std::string member() { return one({"Cora", "Carl", "Gus", "Hal", "Ida"}); }
    std::string site() { return one({"a", "b", "c"}); }

    void speak()
    {
        using domain::formatRef;
        using namespace std::string_literals;
        const std::string by = device();
        switch (m_random() % 12) {
        case 0:
            m_scene.member(by, member(), one({"grower", "agronomist", "coordinator"}));
            break;
        case 1:
            m_scene.device(by, device(), member());
            break;
        case 2:
            m_scene.ends(by, device(), static_cast<std::int64_t>(m_random() % 40));
            break;
        case 3:
            m_scene.invites(by, member(), one({"x", "y"}), one({"2026-06-01", "2026-07-01"}));
            break;
        case 4:
            m_scene.claims(by, one({"x", "y"}));
            break;
        case 5:
            m_scene.site(by, site());
            break;
        case 6:
            m_scene.assigns(by, member(), site());
            break;
        case 7:
            m_scene.lends(by, one({"t", "u"}), site(), member(), "2026-06-01", "2026-06-30");
            break;
        case 8: {
            const std::string at = site();
            m_scene.says(
                by, "site", RosterScene::id(at), at, {{"keeper", {RosterScene::text(member()), {}}}});
            break;
        }
        case 9:
            m_scene.root(by, device(), m_random() % 2 == 0);
            break;
        case 10:
            takeBack(by);
            break;
        default: {
            const auto& all = m_scene.changes();
            const std::string ref = formatRef(all[m_random() % all.size()].ref);
            m_scene.says(by, "admission", domain::admissionId(RosterScene::programme(), ref), "",
                {{"change", {ref, {}}}});
        }
        }
    }

    void takeBack(const std::string& by)
    {
        const auto& all = m_scene.changes();
        const domain::Change some = all[m_random() % all.size()];
        m_scene.withdraws(by, some.kind, some.record);
        m_scene.changes().back().site = some.site;
    }

    void rule(const std::string& record, const std::string& at)
    {
        std::vector<domain::ChangeRef> saw;
        for (const domain::Change& said : m_scene.changes())
            if (said.record == RosterScene::id(record) && m_random() % 3 != 0) saw.push_back(said.ref);
        // Now and then under an id that is not the ruling's.
        const domain::Uuid id = m_random() % 6 == 0
            ? RosterScene::id("forged")
            : domain::rulingId(RosterScene::programme(), RosterScene::id(record));
        m_scene.says(device(), "ruling", id, at,
            {{"record", {RosterScene::text(record), {}}}, {"says", {one({"stands", "open"}), {}}}});
        m_scene.changes().back().saw = saw;
    }

    void answer()
    {
        domain::Change& last = m_scene.changes().back();
        for (const domain::Change& earlier : m_scene.changes())
            if (earlier.record == last.record && earlier.ref != last.ref && m_random() % 2 == 0)
                for (auto& [field, set] : last.fields)
                    if (earlier.fields.contains(field)) set.base.push_back(earlier.ref);
    }

    RosterScene& m_scene;
    std::mt19937& m_random;
};

} // namespace duskrow::tests
