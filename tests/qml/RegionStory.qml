// SPDX-License-Identifier: MIT
// What the tests of map and tables share: a district to look at, and the page over it.
import QtQuick
import Duskrow.Testing

DeskStory {
    id: story

    visible: true
    width: 400
    height: 400

    RegionRecords {
        id: records
    }

    function region(properties) {
        const at = made(properties);
        at.traps = records.fill(at.world);
        return at;
    }

    function shown(at, route, width, height) {
        at.main = at.world.openWindow(width ?? 1280, height ?? 800, route, "");
        waitForRendering(at.main.contentItem);
        return pageOn(at);
    }
}
