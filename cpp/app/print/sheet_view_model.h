// SPDX-License-Identifier: MIT
#pragma once

#include "app/print/walk_paper.h"
#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// The sheet of one walk: shown in words, written as a PDF, copied or handed on as text.
class SheetViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(bool isFound READ isFound NOTIFY refreshed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY refreshed FINAL)
    Q_PROPERTY(QString programmeLine READ programmeLine NOTIFY refreshed FINAL)
    Q_PROPERTY(QString verdict READ verdict NOTIFY refreshed FINAL)
    Q_PROPERTY(QString verdictKey READ verdictKey NOTIFY refreshed FINAL) // below, above, too_close
    Q_PROPERTY(QString mean READ mean NOTIFY refreshed FINAL)
    Q_PROPERTY(QString range READ range NOTIFY refreshed FINAL)
    Q_PROPERTY(QString next READ next NOTIFY refreshed FINAL)
    Q_PROPERTY(duskrow::app::RowList* facts READ facts CONSTANT FINAL) // title and detail
    Q_PROPERTY(duskrow::app::RowList* blocks READ blocks CONSTANT FINAL) // a heading and its lines
    Q_PROPERTY(QString text READ text NOTIFY refreshed FINAL) // the whole sheet, to share
    Q_PROPERTY(QString folder READ folder WRITE setFolder NOTIFY folderChanged FINAL)
    Q_PROPERTY(QString fileName READ fileName NOTIFY refreshed FINAL)
    Q_PROPERTY(QString written READ written NOTIFY writtenChanged FINAL) // where it is; empty until then
    Q_PROPERTY(bool isCopied READ isCopied NOTIFY writtenChanged FINAL)

public:
    // walk  its id
    SheetViewModel(Session& session, const QString& walk, QObject* parent = nullptr);

    [[nodiscard]] bool isFound() const { return m_paper.has_value(); }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString programmeLine() const;
    [[nodiscard]] QString verdict() const;
    [[nodiscard]] QString verdictKey() const;
    [[nodiscard]] QString mean() const;
    [[nodiscard]] QString range() const;
    [[nodiscard]] QString next() const;
    [[nodiscard]] RowList* facts() { return &m_facts; }
    [[nodiscard]] RowList* blocks() { return &m_blocks; }
    [[nodiscard]] QString text() const;
    [[nodiscard]] QString folder() const { return m_folder; }
    void setFolder(const QString& folder);
    [[nodiscard]] QString fileName() const;
    [[nodiscard]] QString written() const { return m_written; }
    [[nodiscard]] bool isCopied() const { return m_isCopied; }

    Q_INVOKABLE void write(); // the PDF, into the folder
    Q_INVOKABLE void copy(); // the text, to the clipboard
    // For the device's own messages: "mailto:?subject=...&body=...", "sms:?body=..."
    Q_INVOKABLE QString address(const QString& scheme) const;

Q_SIGNALS:
    void refreshed();
    void folderChanged();
    void writtenChanged();

private:
    void refresh();
    void show();

    domain::Uuid m_walk;
    std::optional<WalkPaper> m_paper;
    RowList m_facts;
    RowList m_blocks;
    QString m_folder;
    QString m_written;
    bool m_isCopied = false;
};

} // namespace duskrow::app
