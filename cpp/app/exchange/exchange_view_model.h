// SPDX-License-Identifier: MIT
#pragma once

#include "app/exchange/exchanger.h"
#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// The exchange as a whole: how far the own entries got, what waits for whom, what was kept aside, and the
// ways. While this is open an exchange runs every half minute.
class ExchangeViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(duskrow::app::Exchanger* exchanger READ exchanger CONSTANT FINAL)
    // Own entries, by the farthest each got.
    Q_PROPERTY(int here READ here NOTIFY shown FINAL)
    Q_PROPERTY(int handedOver READ handedOver NOTIFY shown FINAL)
    Q_PROPERTY(int atHub READ atHub NOTIFY shown FINAL)
    Q_PROPERTY(QString next READ next NOTIFY shown FINAL) // what to do now, in a sentence
    Q_PROPERTY(duskrow::app::RowList* ways READ ways CONSTANT FINAL) // last time and outcome of each
    Q_PROPERTY(duskrow::app::RowList* waiting READ waiting CONSTANT FINAL)
    Q_PROPERTY(QString asideLine READ asideLine NOTIFY shown FINAL) // empty when nothing was kept aside
    Q_PROPERTY(bool hasHub READ hasHub NOTIFY shown FINAL)
    Q_PROPERTY(QStringList memberKeys READ memberKeys NOTIFY shown FINAL) // who a file may be written for
    Q_PROPERTY(QStringList memberNames READ memberNames NOTIFY shown FINAL)
    Q_PROPERTY(QString folder READ folder CONSTANT FINAL) // where files lie, before a person chose one
    Q_PROPERTY(QString written READ written NOTIFY writtenChanged FINAL)

public:
    explicit ExchangeViewModel(Session& session, Exchanger& exchanger, QObject* parent = nullptr);
    ~ExchangeViewModel() override;

    [[nodiscard]] Exchanger* exchanger() const { return m_exchanger; }
    [[nodiscard]] int here() const { return m_here; }
    [[nodiscard]] int handedOver() const { return m_handedOver; }
    [[nodiscard]] int atHub() const { return m_atHub; }
    [[nodiscard]] QString next() const;
    [[nodiscard]] RowList* ways() { return &m_ways; }
    [[nodiscard]] RowList* waiting() { return &m_waiting; }
    [[nodiscard]] QString asideLine() const;
    [[nodiscard]] bool hasHub() const { return !m_chosen.hub.isEmpty(); }
    [[nodiscard]] QStringList memberKeys() const { return m_memberKeys; }
    [[nodiscard]] QStringList memberNames() const { return m_memberNames; }
    [[nodiscard]] QString folder() const;
    [[nodiscard]] QString written() const { return m_written; }

    // The page is gone; its model may live on for a while.
    Q_INVOKABLE void leave();
    // A path or a file: address. True when it is one of the ways now.
    Q_INVOKABLE bool addFolder(const QString& folder);
    // founding  the code its keeper gave out, when the programme is not at this hub yet; else empty
    Q_INVOKABLE bool addHub(const QString& address, const QString& founding);
    Q_INVOKABLE void removeWay(const QString& way);
    // A carried file into a folder: everything, or what is new for a member.
    Q_INVOKABLE void writeFile(const QString& folder, const QString& member);
    // The path behind a file: address; what is a path already stays.
    Q_INVOKABLE QString pathOf(const QString& address) const;

Q_SIGNALS:
    void shown();
    void writtenChanged();

private:
    struct State;
    void refresh();
    void show(const State& state);
    void save(const Ways& ways);

    QPointer<Exchanger> m_exchanger;
    bool m_isWatching = true;
    Ways m_chosen;
    int m_here = 0;
    int m_handedOver = 0;
    int m_atHub = 0;
    int m_aside = 0;
    RowList m_ways;
    RowList m_waiting;
    QStringList m_memberKeys;
    QStringList m_memberNames;
    QString m_written;
};

} // namespace duskrow::app
