// SPDX-License-Identifier: MIT
#pragma once

#include "app/exchange/exchanger.h"
#include "app/exchange/join_run.h"
#include "app/view_model.h"

namespace duskrow::app {

// Joins a programme by a code: typed, pasted as a link, or with a carried file. A season that one kept alone
// may come along.
class JoinViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(duskrow::app::Exchanger* exchanger READ exchanger CONSTANT FINAL)
    Q_PROPERTY(QString typed READ typed WRITE setTyped NOTIFY edited FINAL) // a code or the whole text
    Q_PROPERTY(QString typedError READ typedError NOTIFY edited FINAL)
    Q_PROPERTY(QString from READ from WRITE setFrom NOTIFY edited FINAL) // hub, folder or file
    Q_PROPERTY(QString hub MEMBER m_hub NOTIFY edited FINAL)
    Q_PROPERTY(QString folder MEMBER m_folder NOTIFY edited FINAL)
    Q_PROPERTY(QString file MEMBER m_file NOTIFY edited FINAL)
    Q_PROPERTY(QString label MEMBER m_label NOTIFY edited FINAL) // what this device is called
    Q_PROPERTY(QString alongLine READ alongLine CONSTANT FINAL) // what would come along; empty for nothing
    Q_PROPERTY(bool bringsAlong MEMBER m_bringsAlong NOTIFY edited FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)

public:
    // Where stores and keys lie, and what to do with the store of the programme joined.
    struct Place {
        QString storeFolder;
        QString keyFolder;
        std::function<void(std::unique_ptr<store::Store>, const QString& said)> adopt;
    };

    // subject  empty, an invitation as text, or the path of a carried file
    JoinViewModel(Session& session, Exchanger& exchanger, Place place, const QString& subject,
        QObject* parent = nullptr);

    [[nodiscard]] Exchanger* exchanger() const { return m_exchanger; }
    [[nodiscard]] QString typed() const { return m_typed; }
    void setTyped(const QString& typed);
    [[nodiscard]] QString typedError() const { return m_typedError; }
    [[nodiscard]] QString from() const { return m_from; }
    void setFrom(const QString& from);
    [[nodiscard]] QString alongLine() const { return m_alongLine; }
    [[nodiscard]] bool busy() const { return m_busy; }

    Q_INVOKABLE void join();
    Q_INVOKABLE QString pathOf(const QString& address) const; // behind a file: address

Q_SIGNALS:
    void edited();
    void busyChanged();

private:
    void countAlong();
    [[nodiscard]] domain::Result<QString> way() const;
    void finish(const domain::Result<sync::ExchangeReport>& outcome, Joined* joined);

    QPointer<Exchanger> m_exchanger;
    Place m_place;
    sync::InvitationText m_invitation;
    QString m_typed;
    QString m_typedError;
    QString m_from = QStringLiteral("hub");
    QString m_hub;
    QString m_folder;
    QString m_file;
    QString m_label;
    QString m_alongLine;
    bool m_bringsAlong = false;
    bool m_busy = false;
};

} // namespace duskrow::app
