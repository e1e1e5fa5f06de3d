// SPDX-License-Identifier: MIT
// Set-up: where one is among its steps, and the question of each page.
import QtQuick
import Duskrow.Parts

StepTrail {
    id: root

    required property string page

    function stepOf(page: string): int {
        switch (page) {
        case "place":
        case "around":
            return 1;
        case "trap":
            return 2;
        case "handling":
        case "lure":
            return 3;
        case "strip":
            return 4;
        case "stake":
            return 5;
        case "last":
            return 6;
        default:
            return 0;
        }
    }

    function question(page: string): string {
        switch (page) {
        case "yes":
            return qsTr("Who said yes to a trap here?");
        case "place":
            return qsTr("Where does it stand?");
        case "around":
            return qsTr("What is around it?");
        case "trap":
            return qsTr("A clean trap with its own tag");
        case "handling":
            return qsTr("Before you open the lure");
        case "lure":
            return qsTr("First the lure");
        case "strip":
            return qsTr("Then the killing strip");
        case "stake":
            return qsTr("Is the entrance above the canopy?");
        case "last":
            return qsTr("A last look");
        case "kept":
            return qsTr("What comes next");
        default:
            return qsTr("Which field is it for?");
        }
    }

    labels: [qsTr("Field"), qsTr("Place"), qsTr("Trap"), qsTr("Lure"), qsTr("Strip"), qsTr("Stake"), qsTr("Keep")]
    current: root.stepOf(root.page)
}
