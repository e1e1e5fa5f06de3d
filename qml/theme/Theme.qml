// SPDX-License-Identifier: MIT
// Every colour, size and distance of the app, for day and for night.
pragma Singleton
import QtQuick

QtObject {
    // Set by the app from its settings, never by a part.
    property bool dark: false
    property real textScale: 1.0
    property bool reducedMotion: false

    // Ground and words. Each ink stands at 4.5:1 or more on each ground it may meet.
    readonly property color paper: dark ? "#14182A" : "#FBF7EC"
    readonly property color card: dark ? "#1F2542" : "#FFFFFF"
    readonly property color line: dark ? "#343B5E" : "#E4DCC8"
    readonly property color edge: dark ? "#7C82A6" : "#8A8470"
    readonly property color ink: dark ? "#F6F0DF" : "#1C2138"
    readonly property color inkSoft: dark ? "#B6B5C8" : "#575A6C"
    readonly property color inkError: dark ? "#F2A67C" : "#9A3A12"
    readonly property color focus: dark ? "#F6F0DF" : "#1C2138"
    readonly property color shade: "#99080B16"

    // The act (what is being done) and the next (what comes after it).
    readonly property color act: dark ? "#2E3763" : "#1C2138"
    readonly property color actPressed: dark ? "#3D4880" : "#343B5E"
    readonly property color actInk: "#FBF7EC"
    readonly property color actInkSoft: "#C9C6D2"
    readonly property color next: "#F4C430"
    readonly property color nextPressed: "#DDAE1A"
    readonly property color nextInk: "#1C2138"
    readonly property color cardPressed: dark ? "#2A3156" : "#F3ECDA"

    // Notices: the ground differs a little, the drawn sign and the words carry the meaning.
    readonly property color groundNote: dark ? "#262D50" : "#F1EAD8"
    readonly property color groundCaution: dark ? "#4A3B1E" : "#F7E3B5"

    // Bands, one to four; always with as many dots.
    readonly property list<color> bands: ["#EADFC4", "#E5B24A", "#C25A2A", "#6B1D44"]
    readonly property list<color> bandInks: ["#1C2138", "#1C2138", "#FFFFFF", "#FFFFFF"]

    // The picture of the stake, and whatever else is drawn from life.
    readonly property color skyHigh: dark ? "#10142A" : "#2B3160"
    readonly property color skyLow: dark ? "#3A3760" : "#8C84A8"
    readonly property color skyHaze: dark ? "#6B6072" : "#CDB9A4"
    readonly property color soil: dark ? "#4F3322" : "#7A5238"
    readonly property color soilDark: dark ? "#3B2619" : "#5F3E29"
    readonly property color stem: dark ? "#2C6B41" : "#2F7D48"
    readonly property color stemDark: dark ? "#1F5132" : "#1F5F36"
    readonly property color pod: dark ? "#6E8F4A" : "#86A957"
    readonly property color flower: dark ? "#DDB02C" : "#F4C430"
    readonly property color wood: dark ? "#5A4636" : "#4A3728"
    readonly property color trapGreen: dark ? "#27764A" : "#227045"
    readonly property color trapGreenDark: dark ? "#1B5535" : "#185033"
    readonly property color trapBucket: dark ? "#4E8C67" : "#5CA37B"
    readonly property color pill: "#E61C2138"
    readonly property color skyInk: "#FFFFFF"
    readonly property color lure: "#C25A2A"
    readonly property color strip: "#E5B24A"
    readonly property color steel: dark ? "#A9AEC4" : "#6F758C"
    readonly property color glove: dark ? "#8FA3D6" : "#5F7BC0"
    readonly property color skin: dark ? "#C99B7B" : "#D9AB89"

    // Type. Nothing that matters stands below 16.
    readonly property string family: has("Inter") ? "Inter" : Application.font.family
    readonly property int typeHuge: Math.round(88 * Math.min(textScale, 1.25))
    readonly property int typeNumber: Math.round(40 * textScale)
    readonly property int typeHeading: Math.round(28 * textScale)
    readonly property int typeHead: Math.round(20 * textScale)
    readonly property int typeTitle: Math.round(22 * textScale)
    readonly property int typeBody: Math.round(18 * textScale)
    readonly property int typeSmall: Math.round(16 * textScale)
    readonly property int typeLeast: 16
    readonly property real lineHeight: 1.15

    // Distances, in device-independent pixels.
    readonly property int touch: 48
    readonly property int touchWide: 56
    readonly property int gapTiny: 4
    readonly property int gapSmall: 8
    readonly property int gap: 12
    readonly property int gapWide: 20
    readonly property int margin: 20
    readonly property int padding: 16
    readonly property int radius: 20
    readonly property int radiusSmall: 12
    readonly property int hairline: 1
    readonly property int ring: 3
    readonly property int bar: 4
    readonly property int contentWidth: 520

    // Motion, in milliseconds; none where the person asked for none.
    readonly property int quick: reducedMotion ? 0 : 120

    function has(wanted: string): bool {
        const families = Qt.fontFamilies();
        for (let i = 0; i < families.length; ++i) {
            if (families[i] === wanted)
                return true;
        }
        return false;
    }
}
