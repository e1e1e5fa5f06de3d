// SPDX-License-Identifier: MIT
#pragma once

#include "app/view_model.h"
#include "app/visit/sample_list.h"

namespace duskrow::app {

// The samples of a trap or of the whole season on their way: kept, sent, received, named.
class SamplesViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(duskrow::app::SampleList* list READ list CONSTANT FINAL)
    Q_PROPERTY(bool isKnown READ isKnown NOTIFY changed FINAL)
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)
    Q_PROPERTY(int open READ open NOTIFY changed FINAL) // not yet named
    Q_PROPERTY(bool busy READ busy NOTIFY changed FINAL)
    // The one in hand:
    Q_PROPERTY(QString chosen READ chosen WRITE choose NOTIFY changed FINAL)
    Q_PROPERTY(QString number READ number NOTIFY changed FINAL)
    Q_PROPERTY(QString trapTitle READ trapTitle NOTIFY changed FINAL)
    Q_PROPERTY(QString visitId READ visitId NOTIFY changed FINAL)
    Q_PROPERTY(int moths READ moths NOTIFY changed FINAL)
    Q_PROPERTY(QString state READ state NOTIFY changed FINAL) // a code
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)
    Q_PROPERTY(QStringList trailLabels READ trailLabels NOTIFY changed FINAL)
    Q_PROPERTY(QStringList trailValues READ trailValues NOTIFY changed FINAL)
    Q_PROPERTY(QString lastSentTo READ lastSentTo NOTIFY changed FINAL)
    Q_PROPERTY(QString pestName READ pestName NOTIFY changed FINAL)

public:
    // trap  a trap's id, or empty for all of the season
    SamplesViewModel(Session& session, const QString& trap);

    [[nodiscard]] SampleList* list() { return &m_list; }
    [[nodiscard]] bool isKnown() const { return m_isKnown; }
    [[nodiscard]] int count() const { return m_list.rowCount(); }
    [[nodiscard]] int open() const { return m_open; }
    [[nodiscard]] bool busy() const { return m_isBusy; }
    [[nodiscard]] QString chosen() const { return m_chosen; }
    void choose(const QString& sample);
    [[nodiscard]] QString number() const;
    [[nodiscard]] QString trapTitle() const;
    [[nodiscard]] QString visitId() const;
    [[nodiscard]] int moths() const;
    [[nodiscard]] QString state() const;
    [[nodiscard]] QString summary() const;
    [[nodiscard]] QStringList trailLabels() const;
    [[nodiscard]] QStringList trailValues() const;
    [[nodiscard]] QString lastSentTo() const { return m_lastSentTo; }
    [[nodiscard]] QString pestName() const;

    // Each is one step of the one in hand, dated today. Going on again changes a step that was mistaken.
    Q_INVOKABLE void send(const QString& to);
    Q_INVOKABLE void receive();
    // pest  how many of its moths were the pest; more than there are is refused
    Q_INVOKABLE void nameAs(const QString& kind, const QString& by, int pest);
    // Takes the last step back, when it was tapped by mistake.
    Q_INVOKABLE void stepBack();

Q_SIGNALS:
    void changed();
    void stepKept();

private:
    static domain::Result<std::vector<SampleRow>> read(
        store::Reader& reader, const domain::Uuid& season, const std::optional<domain::Uuid>& trap);
    void refresh();
    void take(std::vector<SampleRow> rows);
    void keep(const std::function<void(domain::Sample&)>& act);
    [[nodiscard]] const domain::Sample* sample() const;

    std::optional<domain::Uuid> m_trap;
    SampleList m_list;
    QString m_chosen;
    QString m_lastSentTo;
    int m_open = 0;
    bool m_isKnown = false;
    bool m_isBusy = false;
};

} // namespace duskrow::app
