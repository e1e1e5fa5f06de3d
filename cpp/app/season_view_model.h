// SPDX-License-Identifier: MIT
#pragma once

#include "app/paint/picture_handle.h"
#include "app/row_list.h"
#include "app/view_model.h"
#include "domain/rules/season_outlook.h"
#include "store/trap_records.h"

namespace duskrow::app {

// One trap's season: total, flight, chart, visits and weeks, and what may be said of it.
class SeasonViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString title READ title NOTIFY refreshed FINAL)
    Q_PROPERTY(QString subtitle READ subtitle NOTIFY refreshed FINAL)
    Q_PROPERTY(QString total READ total NOTIFY refreshed FINAL)
    Q_PROPERTY(QStringList meaning READ meaning NOTIFY refreshed FINAL) // of the total
    Q_PROPERTY(QString likely READ likely NOTIFY refreshed FINAL)
    Q_PROPERTY(QString scouting READ scouting NOTIFY refreshed FINAL)
    Q_PROPERTY(bool isPart READ isPart NOTIFY refreshed FINAL)
    Q_PROPERTY(QString standing READ standing NOTIFY refreshed FINAL)
    Q_PROPERTY(QStringList remarks READ remarks NOTIFY refreshed FINAL)
    Q_PROPERTY(int bandLevel READ bandLevel NOTIFY refreshed FINAL) // 0 where there is no band
    Q_PROPERTY(QString bandName READ bandName NOTIFY refreshed FINAL)
    Q_PROPERTY(QString bandSpan READ bandSpan NOTIFY refreshed FINAL)
    Q_PROPERTY(QString bandMeaning READ bandMeaning NOTIFY refreshed FINAL)
    Q_PROPERTY(QStringList rules READ rules NOTIFY refreshed FINAL) // what the other rules say so far
    Q_PROPERTY(QStringList fieldRules READ fieldRules NOTIFY refreshed FINAL) // for what is found in the crop
    Q_PROPERTY(QString caution READ caution NOTIFY refreshed FINAL)
    Q_PROPERTY(QString protocolLine READ protocolLine NOTIFY refreshed FINAL)
    Q_PROPERTY(QStringList pairLabels READ pairLabels NOTIFY refreshed FINAL)
    Q_PROPERTY(QStringList pairTotals READ pairTotals NOTIFY refreshed FINAL)
    Q_PROPERTY(QString next READ next NOTIFY refreshed FINAL) // "count", "takeDown" or nothing
    Q_PROPERTY(duskrow::app::RowList* visits READ visits CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* weeks READ weeks CONSTANT FINAL)
    Q_PROPERTY(int revision READ revision NOTIFY refreshed FINAL) // counts up with each change

public:
    SeasonViewModel(Session& session, const QString& trap, QObject* parent = nullptr);

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString subtitle() const;
    [[nodiscard]] QString total() const;
    [[nodiscard]] QStringList meaning() const;
    [[nodiscard]] QString likely() const;
    [[nodiscard]] QString scouting() const;
    [[nodiscard]] bool isPart() const { return m_season.standing == domain::SeasonStanding::PartOfFlight; }
    [[nodiscard]] QString standing() const;
    [[nodiscard]] QStringList remarks() const;
    [[nodiscard]] int bandLevel() const { return m_band ? m_band->level : 0; }
    [[nodiscard]] QString bandName() const;
    [[nodiscard]] QString bandSpan() const;
    [[nodiscard]] QString bandMeaning() const;
    [[nodiscard]] QStringList rules() const;
    [[nodiscard]] QStringList fieldRules() const;
    [[nodiscard]] QString caution() const;
    [[nodiscard]] QString protocolLine() const;
    [[nodiscard]] QStringList pairLabels() const { return m_pairLabels; }
    [[nodiscard]] QStringList pairTotals() const { return m_pairTotals; }
    [[nodiscard]] QString next() const;
    [[nodiscard]] RowList* visits() { return &m_visits; }
    [[nodiscard]] RowList* weeks() { return &m_weeks; }
    [[nodiscard]] int revision() const { return m_revision; }

    // The chart for an item of this size. `revision` is there so that a binding asks again.
    Q_INVOKABLE duskrow::app::PictureHandle chart(
        double width, double height, double textScale, int revision) const;

Q_SIGNALS:
    void refreshed();

private:
    void refresh();
    void evaluate();
    void showVisits();
    void showWeeks();
    void showPair();
    void learnFromPast();
    [[nodiscard]] std::optional<store::TrapRecords> recordsOf(const domain::Uuid& trap);

    domain::Uuid m_trap;
    store::TrapRecords m_records;
    const domain::Protocol* m_protocol = nullptr;
    domain::SeasonRules m_rules;
    domain::TrapSeason m_season;
    const domain::Band* m_band = nullptr;
    std::vector<domain::PastTrapSeason> m_past;
    std::optional<domain::SeasonOutlook> m_outlook;
    QStringList m_pairLabels;
    QStringList m_pairTotals;
    RowList m_visits;
    RowList m_weeks;
    int m_year = 0;
    int m_revision = 0;
    bool m_isFound = false;
    bool m_hasLearned = false;
};

} // namespace duskrow::app
