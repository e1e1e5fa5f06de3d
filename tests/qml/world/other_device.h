// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QTemporaryDir>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include <memory>

#include "app/clock.h"
#include "store/store.h"

// The device of somebody else: a store and keys of its own, no screens. It does by the library what its owner
// would do by the app.
class OtherDevice : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by World")
    Q_PROPERTY(QString member READ member CONSTANT FINAL) // its owner's id
    Q_PROPERTY(QString programme READ programme CONSTANT FINAL)

public:
    explicit OtherDevice(duskrow::app::Clock clock) : m_clock(clock) { }

    // Makes a programme with a season and a coordinator.
    void found(const QString& programme, const QString& coordinator, int year);
    // Enters with an invitation that lies in a folder.
    void join(const QString& link, const QString& folder, const QString& label);

    [[nodiscard]] QString member() const;
    [[nodiscard]] QString programme() const;
    [[nodiscard]] QString stream() const;

    Q_INVOKABLE QString invite(
        const QString& name, const QString& role, const QString& until, const QString& hub);
    Q_INVOKABLE void exchange(const QString& folder);
    Q_INVOKABLE void writeFile(const QString& path);
    // A count that emptied the trap; gives the visit's id.
    Q_INVOKABLE QString addCount(const QString& trap, const QString& site, const QString& day, int moths);
    // Sets fields of a record, whoever made it.
    Q_INVOKABLE void change(
        const QString& kind, const QString& id, const QString& site, const QVariantMap& fields);
    // A field as it is folded here.
    Q_INVOKABLE QVariant fieldOf(const QString& kind, const QString& id, const QString& field) const;
    // The record in which a question is answered.
    Q_INVOKABLE QString answerTo(const QString& question) const;
    Q_INVOKABLE QStringList membersHere() const;
    Q_INVOKABLE int visitsHere() const;

private:
    void keep(std::vector<duskrow::domain::Edit> edits);
    [[nodiscard]] std::string keyFolder() const;

    QTemporaryDir m_folder;
    duskrow::app::Clock m_clock;
    duskrow::domain::Uuid m_me;
    std::unique_ptr<duskrow::store::Store> m_store;
};
