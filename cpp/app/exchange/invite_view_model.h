// SPDX-License-Identifier: MIT
#pragma once

#include "app/exchange/exchanger.h"
#include "app/paint/picture_handle.h"
#include "app/view_model.h"
#include "sync/roster/joining.h"

namespace duskrow::app {

// Invites a person, or another device of one: a code for one use, in large type, as a picture and as text.
class InviteViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(bool isKnown READ isKnown CONSTANT FINAL) // a member already: another device
    Q_PROPERTY(bool mayInviteCoordinators READ mayInviteCoordinators CONSTANT FINAL)
    Q_PROPERTY(QString name MEMBER m_name NOTIFY edited FINAL)
    Q_PROPERTY(QString role MEMBER m_role NOTIFY edited FINAL)
    Q_PROPERTY(QString until MEMBER m_until NOTIFY edited FINAL)
    Q_PROPERTY(QString today READ today CONSTANT FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)
    Q_PROPERTY(QString code READ code NOTIFY invited FINAL) // "XXXXX-XXXXX"; empty before
    Q_PROPERTY(QString codeSpelt READ codeSpelt NOTIFY invited FINAL) // sign by sign, for a screen reader
    Q_PROPERTY(QString link READ link NOTIFY invited FINAL)
    Q_PROPERTY(QString message READ message NOTIFY invited FINAL) // to be sent on
    Q_PROPERTY(duskrow::app::PictureHandle picture READ picture NOTIFY invited FINAL)
    Q_PROPERTY(int pictureUnits READ pictureUnits NOTIFY invited FINAL) // modules on a side, ground included
    Q_PROPERTY(QString where READ where NOTIFY invited FINAL) // what the other needs besides the code
    Q_PROPERTY(bool isCopied READ isCopied NOTIFY copied FINAL)
    Q_PROPERTY(bool isKnownOutside READ isKnownOutside NOTIFY reached FINAL) // others can find the code
    Q_PROPERTY(QString reach READ reach NOTIFY reached FINAL) // how far the invitation got, in a sentence

public:
    InviteViewModel(Session& session, Exchanger& exchanger, const QString& member, QObject* parent = nullptr);

    [[nodiscard]] bool isKnown() const { return !m_member.isNil(); }
    [[nodiscard]] bool mayInviteCoordinators() const { return m_mayInviteCoordinators; }
    [[nodiscard]] QString today() const;
    [[nodiscard]] bool busy() const { return m_busy; }
    [[nodiscard]] QString code() const { return m_code; }
    [[nodiscard]] QString codeSpelt() const;
    [[nodiscard]] QString link() const { return m_link; }
    [[nodiscard]] QString message() const;
    [[nodiscard]] const PictureHandle& picture() const { return m_picture; }
    [[nodiscard]] int pictureUnits() const { return m_pictureUnits; }
    [[nodiscard]] QString where() const { return m_where; }
    [[nodiscard]] bool isCopied() const { return m_isCopied; }
    [[nodiscard]] bool isKnownOutside() const { return m_isKnownOutside; }
    [[nodiscard]] QString reach() const { return m_reach; }

    Q_INVOKABLE void invite();
    Q_INVOKABLE void copy();
    // Where a touch on "E-mail" or "Message" leads. scheme  "mailto" or "sms"
    Q_INVOKABLE QString address(const QString& scheme) const;

Q_SIGNALS:
    void edited();
    void busyChanged();
    void invited();
    void copied();
    void reached();

private:
    void keep(const sync::Invited& made);
    void show(const std::string& code);
    void look();

    QPointer<Exchanger> m_exchanger;
    domain::Uuid m_member;
    domain::Uuid m_invitation; // that was made here
    QString m_name;
    QString m_role = QStringLiteral("grower");
    QString m_until;
    QString m_code;
    QString m_link;
    QString m_where;
    PictureHandle m_picture;
    int m_pictureUnits = 0;
    bool m_mayInviteCoordinators = false;
    bool m_busy = false;
    bool m_isCopied = false;
    bool m_isKnownOutside = false;
    QString m_reach;
};

} // namespace duskrow::app
