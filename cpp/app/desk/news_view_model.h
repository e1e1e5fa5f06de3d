// SPDX-License-Identifier: MIT
#pragma once

#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// A published week as it came back to this device, with the reader's own district on top.
class NewsViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(bool isFound READ isFound NOTIFY refreshed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY refreshed FINAL)
    Q_PROPERTY(QString besides READ besides NOTIFY refreshed FINAL) // when it was published, which issue
    Q_PROPERTY(QString text READ text NOTIFY refreshed FINAL) // paragraphs, parted by empty lines
    Q_PROPERTY(duskrow::app::RowList* own READ own CONSTANT FINAL) // name, line, bands
    Q_PROPERTY(duskrow::app::RowList* others READ others CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* weeks READ weeks CONSTANT FINAL) // the other bulletins of the season

public:
    // bulletin  its id; empty for the latest
    NewsViewModel(Session& session, const QString& bulletin, QObject* parent = nullptr);

    [[nodiscard]] bool isFound() const { return m_isFound; }
    [[nodiscard]] QString title() const { return m_title; }
    [[nodiscard]] QString besides() const { return m_besides; }
    [[nodiscard]] QString text() const { return m_text; }
    [[nodiscard]] RowList* own() { return &m_own; }
    [[nodiscard]] RowList* others() { return &m_others; }
    [[nodiscard]] RowList* weeks() { return &m_weeks; }

Q_SIGNALS:
    void refreshed();

private:
    void refresh();

    domain::Uuid m_wanted;
    bool m_isFound = false;
    QString m_title;
    QString m_besides;
    QString m_text;
    RowList m_own;
    RowList m_others;
    RowList m_weeks;
};

} // namespace duskrow::app
