// SPDX-License-Identifier: MIT
// What the steps of a visit share: which trap, how far along, and the way back.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

ScreenFrame {
    id: root

    required property VisitViewModel visit
    readonly property list<string> steps: ["count", "trap", "lure", "done"]

    title: root.visit.title
    subtitle: root.visit.subtitle

    headExtra: StepTrail {
        objectName: "trail"
        labels: [qsTr("Count"), qsTr("Trap"), qsTr("Lure"), qsTr("Done")]
        current: Math.max(0, root.steps.indexOf(root.visit.step))
        Layout.fillWidth: true
    }
}
