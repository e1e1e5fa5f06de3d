// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "domain/protocol/protocol.h"
#include "text/animal.h"

namespace duskrow::app {

// The pest and its look-alikes as moths, with the marks to look for, from the protocol.
class MothGuide : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by VisitViewModel")
    Q_PROPERTY(QString one READ one CONSTANT FINAL) // what is counted: "moth"
    Q_PROPERTY(QString many READ many CONSTANT FINAL)
    Q_PROPERTY(bool hasMarks READ hasMarks CONSTANT FINAL) // otherwise there is nothing to look for

public:
    enum Role { Kind = Qt::UserRole, Name, Latin, IsPest, Picture, Marks, Remark };

    // protocol  may be null: then the guide is empty
    MothGuide(const domain::Protocol* protocol, QObject* parent);

    [[nodiscard]] QString one() const { return m_animal.one(); }
    [[nodiscard]] QString many() const { return m_animal.many(); }
    [[nodiscard]] bool hasMarks() const;

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
    text::Animal m_animal;
    std::vector<Moth> m_moths;
};

} // namespace duskrow::app
