// SPDX-License-Identifier: MIT
#pragma once

#include <QUrl>

#include "app/view_model.h"
#include "app/visit/visit_entry.h"

namespace duskrow::app {

// The last look before a visit is kept: what it says in words, what is asked about it, its day and remark.
class VisitDoneViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by VisitViewModel")
    Q_PROPERTY(QString headline READ headline NOTIFY changed FINAL) // "47 moths over 7 nights"
    Q_PROPERTY(QString meaning READ meaning NOTIFY changed FINAL) // "6.7 a night. 259 so far ..."
    Q_PROPERTY(QStringList labels READ labels NOTIFY changed FINAL)
    Q_PROPERTY(QStringList values READ values NOTIFY changed FINAL)
    Q_PROPERTY(QStringList questions READ questions NOTIFY changed FINAL) // those without an answer
    Q_PROPERTY(QString day READ day WRITE setDay NOTIFY changed FINAL)
    Q_PROPERTY(QString today READ today CONSTANT FINAL)
    Q_PROPERTY(QString remark READ remark WRITE setRemark NOTIFY changed FINAL)
    Q_PROPERTY(bool hasSample READ hasSample NOTIFY changed FINAL)
    Q_PROPERTY(QString sampleNumber READ sampleNumber WRITE setSampleNumber NOTIFY changed FINAL)
    Q_PROPERTY(QString sampleError READ sampleError NOTIFY changed FINAL)
    Q_PROPERTY(bool hasPhoto READ hasPhoto NOTIFY changed FINAL)
    Q_PROPERTY(QUrl photo READ photo NOTIFY changed FINAL)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed FINAL)

public:
    explicit VisitDoneViewModel(VisitEntry& entry);

    [[nodiscard]] QString headline() const;
    [[nodiscard]] QString meaning() const;
    [[nodiscard]] QStringList labels() const;
    [[nodiscard]] QStringList values() const;
    [[nodiscard]] QStringList questions() const;
    [[nodiscard]] QString day() const;
    void setDay(const QString& day);
    [[nodiscard]] QString today() const;
    [[nodiscard]] QString remark() const { return QString::fromStdString(m_entry.visit().remark); }
    void setRemark(const QString& remark);
    [[nodiscard]] bool hasSample() const;
    [[nodiscard]] QString sampleNumber() const;
    void setSampleNumber(const QString& number);
    [[nodiscard]] QString sampleError() const;
    [[nodiscard]] bool hasPhoto() const { return !m_entry.visit().photo.empty(); }
    [[nodiscard]] QUrl photo() const;
    [[nodiscard]] bool canUndo() const { return m_entry.draft().canUndo(); }

    // "It is right", to the question that stands at this place in `questions`.
    Q_INVOKABLE void answer(int question);
    // Keeps a picture file beside the store, by the hash of its content, and notes it in the visit.
    Q_INVOKABLE void addPhoto(const QUrl& file);
    Q_INVOKABLE void removePhoto();
    Q_INVOKABLE void undo() { m_entry.undo(); }

Q_SIGNALS:
    void changed();

private:
    struct Row {
        QString label;
        QString value;
    };
    [[nodiscard]] std::vector<Row> rows() const;
    void addCountRows(std::vector<Row>& rows) const;
    void addTrapRows(std::vector<Row>& rows) const;
    void addLureRows(std::vector<Row>& rows) const;
    [[nodiscard]] std::vector<domain::AskedQuestion> open() const;

    VisitEntry& m_entry;
};

} // namespace duskrow::app
