// SPDX-License-Identifier: MIT
// A run of text in one of the few sizes the app has; it wraps and is never cut off. kind: "body", "strong",
// "soft" (secondary), "small" (16 px, full ink), "head", "title", "heading", "number" or "error".
import QtQuick
import Duskrow.Theme

Text {
    id: root

    property string kind: "body"

    function size(name: string): int {
        switch (name) {
        case "heading":
            return Theme.typeHeading;
        case "title":
            return Theme.typeTitle;
        case "head":
            return Theme.typeHead;
        case "number":
            return Theme.typeNumber;
        case "soft":
        case "small":
        case "error":
            return Theme.typeSmall;
        default:
            return Theme.typeBody;
        }
    }

    function weight(name: string): int {
        switch (name) {
        case "heading":
        case "number":
            return Font.Bold;
        case "title":
        case "head":
        case "strong":
            return Font.DemiBold;
        case "error":
            return Font.Medium;
        default:
            return Font.Normal;
        }
    }

    // Qt hands no plain text to a screen reader unless it is told to. Where something around them speaks for them,
    // words are ignored there.
    Accessible.role: Accessible.StaticText
    Accessible.name: root.text

    color: root.kind === "soft" ? Theme.inkSoft : root.kind === "error" ? Theme.inkError : Theme.ink
    font.family: Theme.family
    font.pixelSize: root.size(root.kind)
    font.weight: root.weight(root.kind)
    font.letterSpacing: root.size(root.kind) > Theme.typeBody ? -0.015 * root.size(root.kind) : 0
    lineHeight: Theme.lineHeight
    textFormat: Text.PlainText
    wrapMode: Text.Wrap
}
