// SPDX-License-Identifier: MIT
// A question over a page.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

GalleryPage {
    id: root

    title: "Slough corner · bertha trap 1"
    subtitle: "8 m away"

    NoticeBar {
        text: "Bands are for whole seasons."
        Layout.fillWidth: true
    }

    AskSheet {
        visible: true
        title: "Is 418 right?"
        text: "It is many times any other count of this trap. It may well be; a slip of the thumb is as likely."
        yesText: "Yes, 418"
        otherText: "Not sure, ask me later"
        safeText: "Look at it again"
    }
}
