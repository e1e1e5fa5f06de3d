// SPDX-License-Identifier: MIT
#pragma once

#include "app/round/round_back_by.h"
#include "app/round/round_draft.h"
#include "app/round/round_file.h"
#include "app/round/round_list_model.h"
#include "app/round/round_stops.h"
#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// The day's round: the stops in an order to go, what to think of before, and who is told of it.
class RoundViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(bool isKnown READ isKnown NOTIFY arranged FINAL) // false while the first look goes on
    Q_PROPERTY(QString heading READ heading NOTIFY arranged FINAL)
    Q_PROPERTY(QString date READ date NOTIFY arranged FINAL)
    Q_PROPERTY(duskrow::app::RoundListModel* stops READ stops CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* done READ done CONSTANT FINAL) // today
    Q_PROPERTY(QString orderLine READ orderLine NOTIFY arranged FINAL) // why they stand as they do
    Q_PROPERTY(QString lengthLine READ lengthLine NOTIFY arranged FINAL)
    Q_PROPERTY(QString coolBoxLine READ coolBoxLine NOTIFY arranged FINAL)
    Q_PROPERTY(QStringList reminders READ reminders NOTIFY arranged FINAL)
    Q_PROPERTY(bool isHandOrder READ isHandOrder NOTIFY arranged FINAL)
    Q_PROPERTY(bool infestedLast READ infestedLast WRITE setInfestedLast NOTIFY arranged FINAL)
    Q_PROPERTY(QString infestedLine READ infestedLine NOTIFY arranged FINAL)
    Q_PROPERTY(QString metric READ metric WRITE setMetric NOTIFY arranged FINAL) // straight, grid
    Q_PROPERTY(duskrow::app::RoundBackBy* backBy READ backBy CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RoundFile* file READ file CONSTANT FINAL)

public:
    explicit RoundViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] bool isKnown() const { return m_isKnown; }
    [[nodiscard]] QString heading() const;
    [[nodiscard]] QString date() const;
    [[nodiscard]] RoundListModel* stops() { return &m_rows; }
    [[nodiscard]] RowList* done() { return &m_done; }
    [[nodiscard]] QString orderLine() const;
    [[nodiscard]] QString lengthLine() const;
    [[nodiscard]] QString coolBoxLine() const;
    [[nodiscard]] QStringList reminders() const;
    [[nodiscard]] bool isHandOrder() const { return m_draft.order.has_value(); }
    [[nodiscard]] bool infestedLast() const { return m_draft.infestedLast; }
    void setInfestedLast(bool last);
    [[nodiscard]] QString infestedLine() const;
    [[nodiscard]] QString metric() const;
    void setMetric(const QString& metric);
    [[nodiscard]] RoundBackBy* backBy() { return &m_backBy; }
    [[nodiscard]] RoundFile* file() { return &m_file; }

    Q_INVOKABLE void refresh(); // looks again, e.g. when the screen comes back
    Q_INVOKABLE void move(const QString& key, int by); // from now on the order is the person's
    Q_INVOKABLE void suggestAgain();
    Q_INVOKABLE void setInfested(const QString& key, bool isInfested); // of the field the stop is in

Q_SIGNALS:
    void arranged();

private:
    void look();
    void take(const domain::Result<RoundFound>& found);
    void arrange();
    void listenToPosition();
    void takeUpDraft();
    void saveDraft();
    [[nodiscard]] QString draftKey() const;
    [[nodiscard]] domain::RoundMetric roundMetric() const;
    [[nodiscard]] RoundAsk askFor(const TodayAsk& day) const;
    [[nodiscard]] std::optional<domain::GeoPoint> here() const;
    [[nodiscard]] bool isInfested(const RoundPlace& stop) const;
    [[nodiscard]] std::vector<RoundRow> rowsOf(const std::vector<RoundPlace>& stops) const;
    [[nodiscard]] text::BackBy roundForMessage() const;

    domain::LocalDay m_day = {}; // of the draft
    RoundDraft m_draft;
    RoundFound m_found; // as suggested
    std::vector<RoundPlace> m_stops; // in the order that holds
    std::optional<domain::GeoPoint> m_arrangedAt;
    std::optional<domain::Metres> m_length;
    RoundListModel m_rows;
    RowList m_done;
    RoundBackBy m_backBy;
    RoundFile m_file;
    bool m_isKnown = false;
    bool m_isLooking = false;
    bool m_mustLookAgain = false;
};

} // namespace duskrow::app
