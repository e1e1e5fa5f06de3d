// SPDX-License-Identifier: MIT
#pragma once

#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// What a protocol says: its cautions, every figure with its source or that nobody has published it.
class ProtocolViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString name READ name CONSTANT FINAL)
    Q_PROPERTY(QString versionLine READ versionLine CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* cautions READ cautions CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* figures READ figures CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* sources READ sources CONSTANT FINAL)

public:
    ProtocolViewModel(Session& session, const QString& pest, QObject* parent = nullptr);

    [[nodiscard]] QString name() const { return m_name; }
    [[nodiscard]] QString versionLine() const { return m_versionLine; }
    [[nodiscard]] RowList* cautions() { return &m_cautions; }
    [[nodiscard]] RowList* figures() { return &m_figures; }
    [[nodiscard]] RowList* sources() { return &m_sources; }

private:
    QString m_name;
    QString m_versionLine;
    RowList m_cautions;
    RowList m_figures;
    RowList m_sources;
};

} // namespace duskrow::app
