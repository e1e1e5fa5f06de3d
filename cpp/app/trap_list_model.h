// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "app/season_records.h"
#include "domain/protocol/protocol.h"
#include "domain/rules/geodesy.h"
#include "text/animal.h"

namespace duskrow::app {

// One trap of a season with its catch so far.
struct TrapFound {
    domain::Uuid trap;
    std::string pest = {};
    QString title;
    QString searched; // everything it can be found by
    domain::Moths soFar = {};
    bool isAtLeast = false;
    std::optional<domain::LocalDay> setDay = {};
    std::optional<domain::LocalDay> lastCount = {};
    std::optional<domain::Nights> nights = {}; // since it was last emptied
    std::optional<domain::GeoPoint> place = {};
    std::optional<domain::LocalDay> endDay = {};
    bool isEnded = false;
    QString lentTo = {};
    std::optional<domain::Course> way = {};
    text::Animal animal = {}; // that is counted; moths until the protocol is asked
};

// Reads every trap of a season that a viewer is shown. Errors as those of store/queries.h.
domain::Result<std::vector<TrapFound>> findTraps(
    store::Reader& reader, const domain::Uuid& season, const Viewer& viewer, domain::LocalDay today);

// The traps of a season, sorted and searched; ended ones last. However many there are, words are made only
// for the rows that are looked at.
class TrapListModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by TrapsViewModel")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)

public:
    enum class Order { Name, Distance, Catch };
    Q_ENUM(Order)

    using QAbstractListModel::QAbstractListModel;

    void take(std::vector<TrapFound> traps);
    void arrange(Order order, const QString& search);
    // Distances from a new place; the order stays, so that nothing moves under a finger.
    void standAt(const std::optional<domain::GeoPoint>& here);

    [[nodiscard]] int count() const { return static_cast<int>(m_shown.size()); }
    [[nodiscard]] int all() const { return static_cast<int>(m_traps.size()); }

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

Q_SIGNALS:
    void countChanged();

private:
    void measure();

    std::vector<TrapFound> m_traps;
    std::vector<std::size_t> m_shown;
    std::optional<domain::GeoPoint> m_here;
    Order m_order = Order::Name;
    QString m_search;
};

} // namespace duskrow::app
