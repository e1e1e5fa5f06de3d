// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "domain/protocol/protocol.h"

namespace duskrow::app {

// The pest and its look-alikes as moths, with the marks to look for, from the protocol.
class MothGuide : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by VisitViewModel")

public:
    enum Role { Kind = Qt::UserRole, Name, Latin, IsPest, Picture, Marks, Remark };

    // protocol  may be null: then the guide is empty
    MothGuide(const domain::Protocol* protocol, QObject* parent);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    struct Moth {
        QString kind;
        QString name;
        QString latin;
        bool isPest = false;
        QStringList marks; // those the picture points at first
        QString remark;
    };
    std::vector<Moth> m_moths;
};

} // namespace duskrow::app
