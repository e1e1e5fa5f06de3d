// SPDX-License-Identifier: MIT
#pragma once

#include "app/exchange/exchanger.h"
#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// A carried file, looked at before anything of it is taken in.
class CarriedViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(duskrow::app::Exchanger* exchanger READ exchanger CONSTANT FINAL)
    Q_PROPERTY(QString fileName READ fileName CONSTANT FINAL)
    Q_PROPERTY(bool isRead READ isRead NOTIFY shown FINAL)
    Q_PROPERTY(int newEntries READ newEntries NOTIFY shown FINAL)
    Q_PROPERTY(QString programme READ programme NOTIFY shown FINAL) // whether it is this one
    Q_PROPERTY(bool isOurs READ isOurs NOTIFY shown FINAL)
    Q_PROPERTY(QString caution READ caution NOTIFY shown FINAL) // cut short, refused parts
    Q_PROPERTY(duskrow::app::RowList* from READ from CONSTANT FINAL) // new entries by device
    Q_PROPERTY(QString taken READ taken NOTIFY shown FINAL) // what came in; empty before

public:
    CarriedViewModel(Session& session, Exchanger& exchanger, const QString& path, QObject* parent = nullptr);

    [[nodiscard]] Exchanger* exchanger() const { return m_exchanger; }
    [[nodiscard]] QString fileName() const;
    [[nodiscard]] bool isRead() const { return m_isRead; }
    [[nodiscard]] int newEntries() const { return m_newEntries; }
    [[nodiscard]] QString programme() const { return m_programme; }
    [[nodiscard]] bool isOurs() const { return m_isOurs; }
    [[nodiscard]] QString caution() const { return m_caution; }
    [[nodiscard]] RowList* from() { return &m_from; }
    [[nodiscard]] QString taken() const { return m_taken; }

    Q_INVOKABLE void takeIn();

Q_SIGNALS:
    void shown();

private:
    struct Looked;
    void look();
    void show(const Looked& looked);

    QPointer<Exchanger> m_exchanger;
    QString m_path;
    bool m_isRead = false;
    bool m_isOurs = false;
    int m_newEntries = 0;
    QString m_programme;
    QString m_caution;
    QString m_taken;
    RowList m_from;
};

} // namespace duskrow::app
