// SPDX-License-Identifier: MIT
// Walks over a page and says what a person could not read, reach or hear. An empty list is a good page.
import QtQuick
import Duskrow.Testing

QtObject {
    id: walk

    readonly property int touch: 48
    property var texts: []

    function complaints(page) {
        const found = [];
        walk.texts = [];
        walk.visit(page, page, found);
        walk.judgeOverlaps(found);
        Camera.take(page);
        return found;
    }

    // What a busy machine is still laying out is no complaint: what stays is. `wait` is the test's own.
    function lasting(page, wait) {
        let found = walk.complaints(page);
        for (let i = 0; i < 30 && found.length > 0; ++i) {
            wait(100);
            found = walk.complaints(page);
        }
        return found;
    }

    function visit(item, page, found) {
        if (!item.visible || item.width === undefined || walk.isOutOfSight(item))
            return;
        if ("checkable" in item && "down" in item)
            walk.judgeTarget(item, item.Accessible.name, found);
        else if ("cursorPosition" in item)
            walk.judgeTarget(item, item.Accessible.name, found);
        if ("truncated" in item && "paintedWidth" in item && item.text.length > 0)
            walk.judgeText(item, page, found);
        for (let i = 0; i < item.children.length; ++i)
            walk.visit(item.children[i], page, found);
    }

    // A list keeps its current row while it is scrolled away, and gives it a place again only when it comes into sight.
    function isOutOfSight(item) {
        const view = item.parent ? item.parent.parent : null;
        if (!view || !("currentIndex" in view) || !("contentY" in view) || item !== view.currentItem)
            return false;
        return item.y >= view.contentY + view.height || item.y + item.height <= view.contentY;
    }

    function judgeTarget(item, name, found) {
        const called = item.objectName || item.text || String(item);
        if (item.width < walk.touch - 0.5 || item.height < walk.touch - 0.5)
            found.push(called + " is only " + item.width + " by " + item.height);
        if (!name || name.length < 2)
            found.push(called + " has no name to be read aloud");
    }

    function judgeText(item, page, found) {
        const words = "“" + item.text + "”";
        if (item.truncated)
            found.push(words + " is cut short");
        if (item.paintedWidth > item.width + 1.5)
            found.push(words + " is " + item.paintedWidth + " wide in " + item.width);
        if (item.font.pixelSize < 16)
            found.push(words + " is only " + item.font.pixelSize + " px");
        const at = item.mapToItem(page, 0, 0);
        walk.remember(item, at, words);
        if (at.x < -0.5 || at.x + item.width * item.scale > page.width + 0.5)
            found.push(words + " leaves the page at the side");
        for (let above = item.parent; above && above !== page; above = above.parent) {
            if (!("radius" in above && "border" in above) || above.height === 0)
                continue;
            const y = item.mapToItem(above, 0, 0).y;
            if (y < -1.5 || y + item.paintedHeight > above.height + 1.5)
                found.push(words + " leaves its card: " + (y + item.paintedHeight) + " in " + above.height);
        }
    }

    // Only what is painted counts, and only words on the same sheet: a page scrolls beneath what is pinned.
    function remember(item, at, words) {
        let sheet = item.parent;
        while (sheet.parent && !("contentY" in sheet.parent))
            sheet = sheet.parent;
        const spare = (item.width - item.paintedWidth) * item.scale;
        const shift = item.effectiveHorizontalAlignment === Text.AlignRight ? spare
            : item.effectiveHorizontalAlignment === Text.AlignHCenter ? spare / 2 : 0;
        walk.texts.push({ words, sheet, x: at.x + shift, y: at.y, width: item.paintedWidth, height: Math.min(item.height, item.paintedHeight) });
    }

    function judgeOverlaps(found) {
        for (let i = 0; i < walk.texts.length; ++i) {
            for (let k = i + 1; k < walk.texts.length; ++k) {
                const a = walk.texts[i];
                const b = walk.texts[k];
                const wide = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
                const high = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
                if (a.sheet === b.sheet && wide > 2 && high > 4)
                    found.push(a.words + " runs into " + b.words);
            }
        }
    }
}
