// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QPointer>

#include "app/view_model.h"
#include "domain/rules/nearest_trap.h"

namespace duskrow::app {

// The traps around here, nearest first, for the question which of them is meant.
class WhichTrapViewModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by VisitViewModel")
    Q_PROPERTY(bool isKnown READ isKnown NOTIFY changed FINAL) // the traps were read
    Q_PROPERTY(bool hasPosition READ hasPosition NOTIFY changed FINAL)
    Q_PROPERTY(bool isAmbiguous READ isAmbiguous NOTIFY changed FINAL)
    Q_PROPERTY(QString accuracy READ accuracy NOTIFY changed FINAL) // "within 6 m"

public:
    enum Role { TrapId = Qt::UserRole, Title, Where, Pest, IsClose };

    WhichTrapViewModel(Session& session, QObject* parent);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] bool isKnown() const { return m_isKnown; }
    [[nodiscard]] bool hasPosition() const { return m_session.position().last().has_value(); }
    [[nodiscard]] bool isAmbiguous() const { return m_near.isAmbiguous(); }
    [[nodiscard]] QString accuracy() const;
    // Whether this trap cannot be told apart from another one at this place.
    [[nodiscard]] bool isInDoubt(const domain::Uuid& trap) const;

Q_SIGNALS:
    void changed();
    void failed(const domain::Error& error);

private:
    struct Known {
        domain::Uuid id;
        QString title;
        QString pest;
        std::optional<domain::TrapPlace> place;
    };
    struct Row {
        const Known* known = nullptr;
        QString where;
        bool isClose = false;
    };
    static domain::Result<std::vector<Known>> read(store::Reader& reader, const domain::Uuid& season);
    void locate();
    [[nodiscard]] std::vector<Row> rowsByDistance() const;

    Session& m_session;
    std::vector<Known> m_known;
    std::vector<Row> m_rows;
    domain::NearestTraps m_near;
    bool m_isKnown = false;
};

} // namespace duskrow::app
