// SPDX-License-Identifier: MIT
#pragma once

#include <map>

#include "app/import/import_runner.h"
#include "app/import/import_work.h"
#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// A table of counts on its way in: chosen, looked at, corrected, kept; and those that came in before.
class ImportViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString file READ file NOTIFY shown FINAL) // path; empty while none is chosen
    Q_PROPERTY(bool isReading READ isReading NOTIFY shown FINAL)
    Q_PROPERTY(bool isSeen READ isSeen NOTIFY shown FINAL)
    Q_PROPERTY(bool isRunning READ isRunning NOTIFY shown FINAL)
    Q_PROPERTY(double part READ part NOTIFY progressed FINAL) // 0 to 1 of what runs
    Q_PROPERTY(QString missing READ missing NOTIFY shown FINAL) // why it can not be brought in as it stands
    Q_PROPERTY(bool canBring READ canBring NOTIFY shown FINAL)
    Q_PROPERTY(QString bringLine READ bringLine NOTIFY shown FINAL)
    Q_PROPERTY(QString doneLine READ doneLine NOTIFY shown FINAL)
    Q_PROPERTY(QString year READ year NOTIFY shown FINAL) // that all days lie in, as chosen
    Q_PROPERTY(QString pest READ pest NOTIFY shown FINAL)
    Q_PROPERTY(QStringList pests READ pests NOTIFY shown FINAL)
    Q_PROPERTY(QString emptied READ emptied NOTIFY shown FINAL) // yes, no, unsaid
    Q_PROPERTY(QString emptiedLine READ emptiedLine NOTIFY shown FINAL)
    Q_PROPERTY(QStringList columnCodes READ columnCodes CONSTANT FINAL)
    Q_PROPERTY(QStringList columnNames READ columnNames CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* form READ form CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* columns READ columns CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* makes READ makes CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* refused READ refused CONSTANT FINAL)
    Q_PROPERTY(QString moreRefused READ moreRefused NOTIFY shown FINAL)
    Q_PROPERTY(duskrow::app::RowList* notes READ notes CONSTANT FINAL)
    Q_PROPERTY(QString moreNotes READ moreNotes NOTIFY shown FINAL)
    Q_PROPERTY(duskrow::app::RowList* earlier READ earlier CONSTANT FINAL) // imports of this device
    Q_PROPERTY(QString undoLine READ undoLine NOTIFY shown FINAL) // what taking back would do

public:
    explicit ImportViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] QString file() const { return QString::fromStdString(m_ask.path); }
    [[nodiscard]] bool isReading() const { return m_isReading; }
    [[nodiscard]] bool isSeen() const { return m_seen != nullptr; }
    [[nodiscard]] bool isRunning() const { return m_runner.isRunning(); }
    [[nodiscard]] double part() const { return m_runner.part(); }
    [[nodiscard]] QString missing() const;
    [[nodiscard]] bool canBring() const;
    [[nodiscard]] QString bringLine() const;
    [[nodiscard]] QString doneLine() const { return m_doneLine; }
    [[nodiscard]] QString year() const;
    [[nodiscard]] QString pest() const { return QString::fromStdString(m_ask.pest); }
    [[nodiscard]] QStringList pests() const;
    [[nodiscard]] QString emptied() const;
    [[nodiscard]] QString emptiedLine() const;
    [[nodiscard]] QStringList columnCodes() const;
    [[nodiscard]] QStringList columnNames() const;
    [[nodiscard]] RowList* form() { return &m_form; }
    [[nodiscard]] RowList* columns() { return &m_columns; }
    [[nodiscard]] RowList* makes() { return &m_makes; }
    [[nodiscard]] RowList* refused() { return &m_refused; }
    [[nodiscard]] QString moreRefused() const { return m_moreRefused; }
    [[nodiscard]] RowList* notes() { return &m_notes; }
    [[nodiscard]] QString moreNotes() const { return m_moreNotes; }
    [[nodiscard]] RowList* earlier() { return &m_earlier; }
    [[nodiscard]] QString undoLine() const { return m_undoLine; }

    // A path, or the address of a file as a dialog gives it. What was chosen of another file is forgotten.
    Q_INVOKABLE void open(const QString& path);
    Q_INVOKABLE void forget();
    // what  encoding, delimiter, order, decimal, year, pest, emptied; code  empty to look for it again
    Q_INVOKABLE void choose(const QString& what, const QString& code);
    // column  from 1; code  of columnCodes. Another column that was chosen to be the same is not any more.
    Q_INVOKABLE void chooseColumn(const QString& column, const QString& code);
    Q_INVOKABLE void bring();
    Q_INVOKABLE void stop();
    // Works out what taking an import back does; then takeBack().
    Q_INVOKABLE void askBack(const QString& import);
    Q_INVOKABLE void takeBack();

Q_SIGNALS:
    void shown();
    void progressed();

private:
    void read();
    void show(std::shared_ptr<const ImportSeen> seen);
    void readEarlier();
    [[nodiscard]] std::optional<store::ImportBy> by();
    void run(const ImportRunner::Work& work, std::function<void(const store::ImportRun&)> done);

    ImportAsk m_ask;
    std::map<std::string, std::string> m_chosenColumns; // by number
    std::shared_ptr<const ImportSeen> m_seen;
    ImportRunner m_runner;
    std::vector<store::ImportNoted> m_imports;
    store::ImportNoted m_undone;
    std::shared_ptr<const store::ImportUndo> m_undo;
    RowList m_form;
    RowList m_columns;
    RowList m_makes;
    RowList m_refused;
    RowList m_notes;
    RowList m_earlier;
    QString m_moreRefused;
    QString m_moreNotes;
    QString m_doneLine;
    QString m_undoLine;
    bool m_isReading = false;
    bool m_mustReadAgain = false;
};

} // namespace duskrow::app
