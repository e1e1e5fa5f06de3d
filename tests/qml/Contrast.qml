// SPDX-License-Identifier: MIT
// Says which words of a page cannot be told from their ground: 4.5 to 1 is asked of all but what cannot be pressed.
import QtQuick
import Duskrow.Theme

QtObject {
    id: contrast

    readonly property real least: 4.5

    function complaints(page: Item): var {
        const found = [];
        contrast.visit(page, 1, found);
        return found;
    }

    function visit(item: var, opacity: real, found: var) {
        if (!item.visible || item.width === undefined || item.enabled === false)
            return;
        const seen = opacity * item.opacity;
        if ("paintedWidth" in item && "text" in item && item.text.length > 0 && "color" in item)
            contrast.judge(item, seen, found);
        for (let i = 0; i < item.children.length; ++i)
            contrast.visit(item.children[i], seen, found);
    }

    function judge(text: var, opacity: real, found: var) {
        const ground = contrast.groundOf(text);
        const ink = contrast.over(text.color, ground, opacity);
        const ratio = contrast.ratio(ink, ground);
        if (ratio < contrast.least - 0.01)
            found.push("“" + text.text + "” stands at " + ratio.toFixed(2) + " to 1: " + ink + " on " + ground);
    }

    // What is painted last beneath the middle of the words: a rectangle, or a filled drawing.
    function groundOf(text: var): color {
        for (let item = text; item.parent; item = item.parent) {
            const beside = item.parent.children;
            let at = 0;
            while (at < beside.length && beside[at] !== item)
                ++at;
            for (let i = at - 1; i >= 0; --i) {
                if (contrast.isGround(beside[i]) && contrast.holds(beside[i], text))
                    return contrast.colourOf(beside[i]);
            }
            const behind = item.parent.background;
            if (behind && behind !== item && contrast.isGround(behind))
                return behind.color;
            if ("colour" in item.parent && "ground" in item.parent)
                return item.parent.colour; // a drawn sign names its own ground
            if (contrast.isGround(item.parent))
                return contrast.colourOf(item.parent);
        }
        return Theme.paper;
    }

    function isGround(item: var): bool {
        const isPainted = "radius" in item && "border" in item || "path" in item && "fill" in item;
        return isPainted && item.visible && item.width > 0 && contrast.colourOf(item).a > 0.85;
    }

    function colourOf(item: var): color {
        return "path" in item ? item.fill : item.color;
    }

    function holds(ground: var, text: var): bool {
        const middle = text.mapToItem(ground, text.width / 2, text.height / 2);
        return middle.x >= 0 && middle.y >= 0 && middle.x <= ground.width && middle.y <= ground.height;
    }

    function over(ink: color, ground: color, opacity: real): color {
        const a = ink.a * opacity;
        return Qt.rgba(ink.r * a + ground.r * (1 - a), ink.g * a + ground.g * (1 - a), ink.b * a + ground.b * (1 - a), 1);
    }

    // Source  WCAG 2.1, relative luminance and contrast ratio
    function ratio(one: color, other: color): real {
        const a = contrast.luminance(one);
        const b = contrast.luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    function luminance(of: color): real {
        const linear = part => part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
        return 0.2126 * linear(of.r) + 0.7152 * linear(of.g) + 0.0722 * linear(of.b);
    }
}
