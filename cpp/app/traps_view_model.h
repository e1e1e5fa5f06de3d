// SPDX-License-Identifier: MIT
#pragma once

#include "app/trap_list_model.h"
#include "app/view_model.h"

namespace duskrow::app {

// The traps of this year's season, or of the last one while this year's is not begun.
class TrapsViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(duskrow::app::TrapListModel* traps READ traps CONSTANT FINAL)
    Q_PROPERTY(bool isKnown READ isKnown NOTIFY foundChanged FINAL)
    Q_PROPERTY(int all READ all NOTIFY foundChanged FINAL)
    Q_PROPERTY(int year READ year NOTIFY foundChanged FINAL)
    Q_PROPERTY(bool isThisYear READ isThisYear NOTIFY foundChanged FINAL)
    Q_PROPERTY(bool hasPlace READ hasPlace NOTIFY placeChanged FINAL)
    Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY arranged FINAL)
    Q_PROPERTY(QString order READ order WRITE setOrder NOTIFY arranged FINAL) // "name", "distance", "catch"

public:
    explicit TrapsViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] TrapListModel* traps() { return &m_traps; }
    [[nodiscard]] bool isKnown() const { return m_isKnown; }
    [[nodiscard]] int all() const { return m_traps.all(); }
    [[nodiscard]] int year() const { return m_year; }
    [[nodiscard]] bool isThisYear() const { return session().season().has_value(); }
    [[nodiscard]] bool hasPlace() const { return m_hasPlace; }
    [[nodiscard]] QString search() const { return m_search; }
    void setSearch(const QString& search);
    [[nodiscard]] QString order() const;
    void setOrder(const QString& order);

    Q_INVOKABLE void refresh();

Q_SIGNALS:
    void foundChanged();
    void placeChanged();
    void arranged();

private:
    void listenToPosition();
    void take(std::vector<TrapFound> found);
    std::optional<domain::Season> seasonToShow();

    TrapListModel m_traps;
    QString m_search;
    TrapListModel::Order m_order = TrapListModel::Order::Name;
    int m_year = 0;
    bool m_isKnown = false;
    bool m_hasPlace = false;
    bool m_isLooking = false;
    bool m_mustLookAgain = false;
};

} // namespace duskrow::app
