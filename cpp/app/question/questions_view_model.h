// SPDX-License-Identifier: MIT
#pragma once

#include "app/view_model.h"
#include "store/questions.h"

namespace duskrow::app {

// What coordinators ask of whoever holds this device, one question after the other.
class QuestionsViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(int count READ count NOTIFY shown FINAL) // that wait for an answer
    Q_PROPERTY(QString question READ question NOTIFY shown FINAL) // id of the first of them
    Q_PROPERTY(QString asker READ asker NOTIFY shown FINAL) // "Asked by Wren, 14 Jul"
    Q_PROPERTY(QString words READ words NOTIFY shown FINAL)
    Q_PROPERTY(QString about READ about NOTIFY shown FINAL) // "Slough corner · bertha 1, 6 Jul: 47 moths"
    Q_PROPERTY(QString subject READ subject NOTIFY shown FINAL) // of the page that corrects the record
    Q_PROPERTY(QString saidLine READ saidLine NOTIFY shown FINAL) // after an answer was kept
    Q_PROPERTY(bool busy READ busy NOTIFY shown FINAL)

public:
    explicit QuestionsViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] int count() const { return static_cast<int>(m_found.size()); }
    [[nodiscard]] QString question() const;
    [[nodiscard]] QString asker() const { return m_found.empty() ? QString() : m_found.front().asker; }
    [[nodiscard]] QString words() const;
    [[nodiscard]] QString about() const { return m_found.empty() ? QString() : m_found.front().about; }
    [[nodiscard]] QString subject() const;
    [[nodiscard]] QString saidLine() const { return m_saidLine; }
    [[nodiscard]] bool busy() const { return m_busy; }

    Q_INVOKABLE void itIsRight();
    Q_INVOKABLE void answer(const QString& words);

    // A question, and the words around it.
    struct Told {
        store::AskedQuestion asked;
        QString asker;
        QString about;
    };

Q_SIGNALS:
    void shown();

private:
    void refresh();
    void keep(std::optional<domain::Answered> answered, const QString& words);

    std::vector<Told> m_found;
    QString m_saidLine;
    bool m_busy = false;
    bool m_isLooking = false;
    bool m_mustLookAgain = false;
};

} // namespace duskrow::app
