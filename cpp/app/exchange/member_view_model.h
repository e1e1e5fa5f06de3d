// SPDX-License-Identifier: MIT
#pragma once

#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// One member: devices, fields and loans; and what a coordinator may say of them.
class MemberViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString name READ name NOTIFY shown FINAL)
    Q_PROPERTY(QString role READ role NOTIFY shown FINAL) // as it is kept
    Q_PROPERTY(QString roleWords READ roleWords NOTIFY shown FINAL)
    Q_PROPERTY(QString lastDay READ lastDay NOTIFY shown FINAL) // in words; empty while he stays
    Q_PROPERTY(QString today READ today CONSTANT FINAL)
    Q_PROPERTY(bool mayChange READ mayChange NOTIFY shown FINAL) // the roles and devices of this member
    Q_PROPERTY(bool mayMakeRoots READ mayMakeRoots NOTIFY shown FINAL)
    Q_PROPERTY(duskrow::app::RowList* devices READ devices CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* sites READ sites CONSTANT FINAL)
    // Fields of others at which this member may work too; flagged where he does. Empty for coordinators, who
    // may work at all.
    Q_PROPERTY(duskrow::app::RowList* otherSites READ otherSites CONSTANT FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)

public:
    MemberViewModel(Session& session, const QString& member, QObject* parent = nullptr);

    [[nodiscard]] QString name() const { return m_name; }
    [[nodiscard]] QString role() const { return m_role; }
    [[nodiscard]] QString roleWords() const { return m_roleWords; }
    [[nodiscard]] QString lastDay() const { return m_lastDay; }
    [[nodiscard]] QString today() const;
    [[nodiscard]] bool mayChange() const { return m_mayChange; }
    [[nodiscard]] bool mayMakeRoots() const { return m_mayMakeRoots; }
    [[nodiscard]] RowList* devices() { return &m_devices; }
    [[nodiscard]] RowList* sites() { return &m_sites; }
    [[nodiscard]] RowList* otherSites() { return &m_otherSites; }
    [[nodiscard]] bool busy() const { return m_busy; }

    // Nothing that this device writes counts any more, but for what is here now.
    Q_INVOKABLE void endDevice(const QString& stream);
    Q_INVOKABLE void makeRoot(const QString& stream);
    Q_INVOKABLE void leave(const QString& lastDay);
    Q_INVOKABLE void setRole(const QString& role);
    Q_INVOKABLE void setWorksAt(const QString& site, bool works);

Q_SIGNALS:
    void shown();
    void busyChanged();

private:
    struct State;
    void refresh();
    void show(const State& state);
    void keep(std::vector<domain::Edit> edits);

    domain::Uuid m_member;
    QString m_name;
    QString m_role;
    QString m_roleWords;
    QString m_lastDay;
    bool m_mayChange = false;
    bool m_mayMakeRoots = false;
    bool m_busy = false;
    std::map<domain::StreamId, std::int64_t> m_used; // up to which number all of a stream is here
    RowList m_devices;
    RowList m_sites;
    RowList m_otherSites;
    std::set<domain::Uuid> m_assignments; // that were ever made, withdrawn or not
};

} // namespace duskrow::app
