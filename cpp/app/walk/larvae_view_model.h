// SPDX-License-Identifier: MIT
#pragma once

#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// The scouting walks of the season, newest first.
class LarvaeViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(duskrow::app::RowList* open READ open CONSTANT FINAL) // not finished yet
    Q_PROPERTY(duskrow::app::RowList* done READ done CONSTANT FINAL)
    Q_PROPERTY(bool hasSeason READ hasSeason NOTIFY refreshed FINAL)
    Q_PROPERTY(bool canScout READ canScout NOTIFY refreshed FINAL) // a protocol in use says how
    Q_PROPERTY(bool isKnown READ isKnown NOTIFY refreshed FINAL) // the walks were looked up
    Q_PROPERTY(QString caution READ caution CONSTANT FINAL)

public:
    explicit LarvaeViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] RowList* open() { return &m_open; }
    [[nodiscard]] RowList* done() { return &m_done; }
    [[nodiscard]] bool hasSeason() const { return session().season().has_value(); }
    [[nodiscard]] bool canScout() const { return m_canScout; }
    [[nodiscard]] bool isKnown() const { return m_isKnown; }
    [[nodiscard]] QString caution() const;

Q_SIGNALS:
    void refreshed();

private:
    void refresh();

    RowList m_open;
    RowList m_done;
    bool m_canScout = false;
    bool m_isKnown = false;
};

} // namespace duskrow::app
