// SPDX-License-Identifier: MIT
#pragma once

#include <QUrl>

#include <map>
#include <memory>
#include <set>

#include "app/desk/desk_book.h"
#include "app/desk/desk_list.h"
#include "app/row_list.h"
#include "app/view_model.h"
#include "store/questions.h"
#include "text/animal.h"

namespace duskrow::app {

// A coordinator's week: who has reported, what is to be looked at, what came in; and the trap that is chosen.
class DeskViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(bool isRead READ isRead NOTIFY shown FINAL)
    Q_PROPERTY(bool isChecking READ isChecking NOTIFY shown FINAL) // flags are being found
    Q_PROPERTY(QString week READ week NOTIFY shown FINAL) // its first day, for another page
    Q_PROPERTY(QString weekLine READ weekLine NOTIFY shown FINAL)
    Q_PROPERTY(QString totalLine READ totalLine NOTIFY shown FINAL)
    Q_PROPERTY(bool canGoOn READ canGoOn NOTIFY shown FINAL) // there is a later week
    Q_PROPERTY(QString view READ view WRITE setView NOTIFY shown FINAL) // traps, late, flags, new
    Q_PROPERTY(int late READ late NOTIFY shown FINAL)
    Q_PROPERTY(int flagged READ flagged NOTIFY shown FINAL)
    Q_PROPERTY(int cameIn READ cameIn NOTIFY shown FINAL)
    Q_PROPERTY(duskrow::app::DeskList* lines READ lines CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* districts READ districts CONSTANT FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)
    Q_PROPERTY(QString chosen READ chosen NOTIFY chosenChanged FINAL) // key of a line
    Q_PROPERTY(QString trap READ trap NOTIFY chosenChanged FINAL)
    Q_PROPERTY(QString title READ title NOTIFY chosenChanged FINAL)
    Q_PROPERTY(duskrow::app::RowList* facts READ facts CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* flags READ flags CONSTANT FINAL) // of the trap that is chosen
    Q_PROPERTY(duskrow::app::RowList* questions READ questions CONSTANT FINAL) // likewise, that are open
    Q_PROPERTY(duskrow::app::RowList* visits READ visits CONSTANT FINAL) // likewise, the latest first
    Q_PROPERTY(QString message READ message NOTIFY chosenChanged FINAL) // to who has it, when it is late
    Q_PROPERTY(QUrl mail READ mail NOTIFY chosenChanged FINAL)
    Q_PROPERTY(
        QString asked READ asked NOTIFY chosenChanged FINAL) // the visit that keys settle; empty for none
    // The visit that may be asked about: that one, else the trap's count of the week, else its latest.
    Q_PROPERTY(QString askable READ askable NOTIFY chosenChanged FINAL)
    Q_PROPERTY(QString askableDay READ askableDay NOTIFY chosenChanged FINAL)
    Q_PROPERTY(bool copied READ copied NOTIFY chosenChanged FINAL)

public:
    explicit DeskViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] bool isRead() const { return m_book != nullptr; }
    [[nodiscard]] bool isChecking() const { return m_isChecking; }
    [[nodiscard]] QString week() const;
    [[nodiscard]] QString weekLine() const;
    [[nodiscard]] QString totalLine() const;
    [[nodiscard]] bool canGoOn() const;
    [[nodiscard]] QString view() const { return m_view; }
    void setView(const QString& view);
    [[nodiscard]] int late() const { return static_cast<int>(m_desk.total.late); }
    [[nodiscard]] int flagged() const { return static_cast<int>(m_flags.size() + unflagged().size()); }
    [[nodiscard]] int cameIn() const { return m_cameIn; }
    [[nodiscard]] DeskList* lines() { return &m_lines; }
    [[nodiscard]] RowList* districts() { return &m_districts; }
    [[nodiscard]] bool busy() const { return m_busy; }
    [[nodiscard]] QString chosen() const { return m_chosen; }
    [[nodiscard]] QString trap() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] RowList* facts() { return &m_facts; }
    [[nodiscard]] RowList* flags() { return &m_trapFlags; }
    [[nodiscard]] RowList* questions() { return &m_trapQuestions; }
    [[nodiscard]] RowList* visits() { return &m_visits; }
    [[nodiscard]] QString message() const { return m_message; }
    [[nodiscard]] QUrl mail() const;
    [[nodiscard]] QString asked() const { return m_asked; }
    [[nodiscard]] QString askable() const;
    [[nodiscard]] QString askableDay() const;
    [[nodiscard]] bool copied() const { return m_isCopied; }

    Q_INVOKABLE void goWeeks(int by);
    Q_INVOKABLE void choose(const QString& key, const QString& trap);
    Q_INVOKABLE void copyMessage();
    // What came in up to now has been looked at.
    Q_INVOKABLE void looked();
    // What was flagged stands: of these visits, or of all that are marked.
    Q_INVOKABLE void stands(const QString& visit);
    Q_INVOKABLE void markedStand();
    // The count of a visit is left out of sums and pictures; an empty reason lets it in again.
    Q_INVOKABLE void leaveOut(const QString& visit, const QString& reason);
    // A question to whoever has the trap, or had it on that day; and that it is settled.
    Q_INVOKABLE QString readyWords(const QString& visit) const;
    Q_INVOKABLE QString whoIsAsked(const QString& visit) const;
    Q_INVOKABLE void askAbout(const QString& visit, const QString& words);
    Q_INVOKABLE void settle(const QString& question);

Q_SIGNALS:
    void shown();
    void busyChanged();
    void chosenChanged();

private:
    void refresh();
    void check();
    void arrange(); // the lines of the week and the view
    void showChosen();
    void keep(std::vector<domain::Edit> edits, const std::set<domain::Uuid>& settled);
    [[nodiscard]] DeskLine lineOf(const domain::TrapWeek& of) const;
    [[nodiscard]] DeskLine lineOf(const domain::Flag& flag) const;
    [[nodiscard]] text::Animal animalAt(const domain::Uuid& trap) const;
    [[nodiscard]] std::vector<DeskLine> linesOfView() const;
    [[nodiscard]] DeskLine lineOf(const store::AskedQuestion& asked) const;
    [[nodiscard]] std::vector<const store::AskedQuestion*> unflagged() const; // of visits without a flag
    [[nodiscard]] QString askedState(const domain::Uuid& visit) const;
    [[nodiscard]] const domain::VisitOfDesk* visitOfDesk(const domain::Uuid& visit) const;
    [[nodiscard]] const domain::VisitOfDesk* askableVisit() const;
    [[nodiscard]] std::vector<domain::Edit> settlingOf(const std::set<domain::Uuid>& visits) const;
    void showQuestions();
    [[nodiscard]] std::size_t flagsOf(const domain::Uuid& trap) const;
    void writeMessage();
    bool saveMark();

    std::shared_ptr<const DeskBook> m_book;
    domain::WeekDesk m_desk;
    std::vector<domain::Flag> m_flags; // of the season, the latest first
    std::vector<store::AskedQuestion> m_questions; // that no coordinator settled
    std::map<domain::Uuid, std::string> m_leftOut; // visits, and why
    DeskList m_lines;
    RowList m_districts;
    RowList m_facts;
    RowList m_trapFlags;
    RowList m_trapQuestions;
    RowList m_visits;
    QString m_view = QStringLiteral("traps");
    QString m_chosen;
    domain::Uuid m_trap;
    QString m_message;
    QString m_asked;
    int m_cameIn = 0;
    bool m_hasWeek = false; // one was gone to
    bool m_isReading = false;
    bool m_mustReadAgain = false;
    bool m_isChecking = false;
    bool m_mustCheckAgain = false;
    bool m_busy = false;
    bool m_isCopied = false;
};

} // namespace duskrow::app
