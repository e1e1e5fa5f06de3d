// SPDX-License-Identifier: MIT
// The latest bulletin in one line; nothing until one has come.
import QtQuick
import Duskrow.Parts

ListCard {
    id: root

    required property string news // its id
    required property string newsTitle
    required property string newsLine

    signal opened(string route, string subject)

    objectName: "news"
    visible: root.news.length > 0
    title: root.newsTitle
    subtitle: root.newsLine
    onClicked: root.opened("news", root.news)
}
