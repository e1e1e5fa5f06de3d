// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QHash>
#include <QStringList>

#include <optional>

namespace duskrow::app {

// What a person settled for the round of one day, as it lies in the store among the drafts.
struct RoundDraft {
    std::optional<QStringList> order; // by hand: the keys of stops; nothing for the suggestion
    bool infestedLast = true;
    bool isSurveyGrid = false;
    QHash<QString, bool> marks; // field's id to whether it is infested, against what its walk says
    std::optional<int> backBy; // minute of the day
    QString phone; // of the person who waits

    [[nodiscard]] QByteArray written() const;
    // Takes up what was written. False, and nothing is changed, when it cannot be read.
    bool read(const QByteArray& body);
};

// Keys in an order: those of `order` that are still there, then what came since, in its own order.
QStringList inOrder(const QStringList& keys, const QStringList& order);

// One key moved by so many places, as far as there are any.
QStringList moved(QStringList keys, const QString& key, int by);

} // namespace duskrow::app
