// SPDX-License-Identifier: MIT
// Leads from a trap's season to the calendar of moth and crop at its field.
import QtQuick
import Duskrow.Parts

ListCard {
    objectName: "pestCalendar"
    title: qsTr("Calendar of pest and crop")
    subtitle: qsTr("Flight, scouting, larvae and harvest: when, and how sure")
}
