// SPDX-License-Identifier: MIT
#pragma once

#include "app/row_list.h"
#include "app/today_list_model.h"
#include "app/today_stops.h"
#include "app/view_model.h"

namespace duskrow::app {

// The day: the stop to go to first, the others that are due, and what comes later.
class TodayViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(bool isKnown READ isKnown NOTIFY foundChanged FINAL) // false while the first look goes on
    Q_PROPERTY(bool hasSeason READ hasSeason NOTIFY foundChanged FINAL)
    Q_PROPERTY(bool hasTraps READ hasTraps NOTIFY foundChanged FINAL)
    Q_PROPERTY(
        QString trapShape READ trapShape NOTIFY foundChanged FINAL) // of the usual trap of the programme
    Q_PROPERTY(int year READ year NOTIFY foundChanged FINAL)
    Q_PROPERTY(QString heading READ heading NOTIFY foundChanged FINAL)
    Q_PROPERTY(QString date READ date NOTIFY foundChanged FINAL)
    Q_PROPERTY(bool hasRound READ hasRound NOTIFY foundChanged FINAL) // stops enough to ask in which order
    Q_PROPERTY(bool hasAct READ hasAct NOTIFY foundChanged FINAL)
    Q_PROPERTY(QString actTrap READ actTrap NOTIFY foundChanged FINAL)
    Q_PROPERTY(QString actTitle READ actTitle NOTIFY foundChanged FINAL)
    Q_PROPERTY(QString actReason READ actReason NOTIFY foundChanged FINAL)
    Q_PROPERTY(QString actAlso READ actAlso NOTIFY foundChanged FINAL) // what else is due there
    Q_PROPERTY(QString actAlsoWhy READ actAlsoWhy NOTIFY foundChanged FINAL)
    Q_PROPERTY(QString actText READ actText NOTIFY foundChanged FINAL)
    Q_PROPERTY(QString actRoute READ actRoute NOTIFY foundChanged FINAL)
    Q_PROPERTY(duskrow::app::TodayListModel* due READ due CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::TodayListModel* thisWeek READ thisWeek CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::TodayListModel* afterwards READ afterwards CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* drafts READ drafts CONSTANT FINAL)
    Q_PROPERTY(QString moreLine READ moreLine NOTIFY foundChanged FINAL) // of stops not listed here
    Q_PROPERTY(QString reportTitle READ reportTitle NOTIFY foundChanged FINAL)
    Q_PROPERTY(QString reportLine READ reportLine NOTIFY foundChanged FINAL)
    // The latest bulletin that came; its id is empty for none.
    Q_PROPERTY(QString news READ news NOTIFY foundChanged FINAL)
    Q_PROPERTY(QString newsTitle READ newsTitle NOTIFY foundChanged FINAL)
    Q_PROPERTY(QString newsLine READ newsLine NOTIFY foundChanged FINAL)
    Q_PROPERTY(QString keptLine READ keptLine NOTIFY foundChanged FINAL)
    // How far the own entries got; empty while nobody else takes part.
    Q_PROPERTY(QString travelLine READ travelLine NOTIFY foundChanged FINAL)

public:
    explicit TodayViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] bool isKnown() const { return m_isKnown; }
    [[nodiscard]] bool hasSeason() const { return session().season().has_value(); }
    [[nodiscard]] bool hasTraps() const { return m_found.traps > 0; }
    [[nodiscard]] QString trapShape() const;
    [[nodiscard]] int year() const;
    [[nodiscard]] QString heading() const;
    [[nodiscard]] QString date() const;
    [[nodiscard]] bool hasRound() const { return m_dueStops >= 3; }
    [[nodiscard]] bool hasAct() const { return m_act.has_value(); }
    [[nodiscard]] QString actTrap() const { return m_act ? m_act->trap : QString(); }
    [[nodiscard]] QString actTitle() const { return m_act ? m_act->title : QString(); }
    [[nodiscard]] QString actReason() const;
    [[nodiscard]] QString actAlso() const { return m_act ? m_act->alsoLine : QString(); }
    [[nodiscard]] QString actAlsoWhy() const { return m_act ? m_act->alsoReasons : QString(); }
    [[nodiscard]] QString actText() const { return m_act ? m_act->actText : QString(); }
    [[nodiscard]] QString actRoute() const { return m_act ? m_act->actRoute : QString(); }
    [[nodiscard]] TodayListModel* due() { return &m_due; }
    [[nodiscard]] TodayListModel* thisWeek() { return &m_thisWeek; }
    [[nodiscard]] TodayListModel* afterwards() { return &m_afterwards; }
    [[nodiscard]] RowList* drafts() { return &m_drafts; }
    [[nodiscard]] QString moreLine() const;
    [[nodiscard]] QString reportTitle() const;
    [[nodiscard]] QString reportLine() const;
    [[nodiscard]] QString news() const { return m_found.news ? m_found.news->id : QString(); }
    [[nodiscard]] QString newsTitle() const { return m_found.news ? m_found.news->title : QString(); }
    [[nodiscard]] QString newsLine() const { return m_found.news ? m_found.news->line : QString(); }
    [[nodiscard]] QString keptLine() const;
    [[nodiscard]] QString travelLine() const;

    // Looks again, e.g. when the screen comes back.
    Q_INVOKABLE void refresh();
    // Begins this year's season as the last one was.
    Q_INVOKABLE void beginSeason();

Q_SIGNALS:
    void foundChanged();

private:
    void look();
    void take(const domain::Result<TodayFound>& found);
    void arrange();
    void listenToPosition();
    [[nodiscard]] std::optional<domain::GeoPoint> here() const;
    [[nodiscard]] domain::SeasonWeek week() const;
    [[nodiscard]] std::optional<domain::ReportDue> report() const;

    TodayFound m_found;
    std::optional<TodayRow> m_act;
    std::optional<domain::GeoPoint> m_rankedAt;
    TodayListModel m_due;
    TodayListModel m_thisWeek;
    TodayListModel m_afterwards;
    RowList m_drafts;
    std::size_t m_dueStops = 0;
    std::size_t m_hidden = 0;
    bool m_isKnown = false;
    bool m_isLooking = false;
    bool m_mustLookAgain = false;
};

} // namespace duskrow::app
