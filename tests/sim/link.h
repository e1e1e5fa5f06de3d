// SPDX-License-Identifier: MIT
#pragma once

#include "sim/world.h"

namespace duskrow::sim {

struct LinkDown { };

// The way of one phone to the hub, which may be bad: requests and answers get lost, requests come twice,
// pages are cut. Notes every receipt, and looks whether a page shows what its reader may see.
class Link {
public:
    Link(World& world, bool isGood) : m_world(world), m_isGood(isGood) { }

    // Throws LinkDown when no answer arrives.
    hub::Response ask(hub::Request request);

private:
    [[nodiscard]] StreamId readerOf(const hub::Request& request) const;
    void breakOff(hub::Request request);
    void note(const hub::Request& request, const hub::Response& response);

    World& m_world;
    bool m_isGood;
};

// By FORMAT.md section 7: everything that a page shows may be read, and what may be read is shown.
void checkPage(World& world, const StreamId& reader, const std::string& page);

std::string headerOf(const hub::Response& response, const std::string& name);

// The items of a page; ends before one that is cut.
std::vector<std::string> itemsIn(const std::string& page);

} // namespace duskrow::sim
