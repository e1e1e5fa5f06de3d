// SPDX-License-Identifier: MIT
#pragma once

#include "app/row_list.h"
#include "app/view_model.h"
#include "app/walk/decision_form.h"
#include "app/walk/threshold_grid.h"
#include "app/walk/walk_book.h"

namespace duskrow::app {

// One field's larvae held against money and time: the verdict, why, and what would change it.
class DecisionViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString walk READ walk CONSTANT FINAL)
    Q_PROPERTY(QString today READ today CONSTANT FINAL)
    Q_PROPERTY(bool isFound READ isFound NOTIFY changed FINAL)
    Q_PROPERTY(duskrow::app::DecisionForm* form READ form CONSTANT FINAL)
    Q_PROPERTY(QString mean READ mean NOTIFY changed FINAL)
    Q_PROPERTY(QString rangeLine READ rangeLine NOTIFY changed FINAL)
    Q_PROPERTY(QString verdict READ verdict NOTIFY changed FINAL) // in words; empty before money was said
    Q_PROPERTY(QString verdictKey READ verdictKey NOTIFY changed FINAL) // below, above, too_close
    Q_PROPERTY(QString nextStep READ nextStep NOTIFY changed FINAL)
    Q_PROPERTY(QStringList reasons READ reasons NOTIFY changed FINAL)
    Q_PROPERTY(QStringList changes READ changes NOTIFY changed FINAL) // what would change the verdict
    Q_PROPERTY(QString moneyError READ moneyError NOTIFY changed FINAL) // of what was typed
    Q_PROPERTY(QString thresholdLine READ thresholdLine NOTIFY changed FINAL)
    Q_PROPERTY(QString lossLine READ lossLine NOTIFY changed FINAL)
    Q_PROPERTY(QStringList notes READ notes NOTIFY changed FINAL) // why the threshold stands on thin ground
    Q_PROPERTY(QStringList evidence READ evidence CONSTANT FINAL) // where its number comes from
    Q_PROPERTY(QString dryLine READ dryLine CONSTANT FINAL) // why a dry season lowers it
    Q_PROPERTY(
        QString dryNote READ dryNote NOTIFY changed FINAL) // the walk was noted as dry, and it is not used
    Q_PROPERTY(QString timing READ timing NOTIFY changed FINAL) // "Too early"
    Q_PROPERTY(QStringList timingReasons READ timingReasons NOTIFY changed FINAL)
    Q_PROPERTY(QStringList sources READ sources CONSTANT FINAL)
    Q_PROPERTY(QStringList cautions READ cautions CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* working READ working CONSTANT FINAL) // line by line, to check by hand
    Q_PROPERTY(duskrow::app::ThresholdGrid* grid READ grid CONSTANT FINAL)
    Q_PROPERTY(QStringList estimateLines READ estimateLines NOTIFY changed FINAL)
    Q_PROPERTY(
        QStringList planning READ planning NOTIFY changed FINAL) // frames for a precision; the textbook
    Q_PROPERTY(QStringList errorRates READ errorRates NOTIFY changed FINAL)
    Q_PROPERTY(bool isKept READ isKept NOTIFY changed FINAL) // as it stands now
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)

public:
    // walk  its id
    DecisionViewModel(Session& session, const QString& walk, QObject* parent = nullptr);

    [[nodiscard]] QString title() const { return m_book.title(); }
    [[nodiscard]] QString walk() const;
    [[nodiscard]] QString today() const;
    [[nodiscard]] bool isFound() const { return m_book.isFound(); }
    [[nodiscard]] DecisionForm* form() { return &m_form; }
    [[nodiscard]] QString mean() const;
    [[nodiscard]] QString rangeLine() const;
    [[nodiscard]] QString verdict() const;
    [[nodiscard]] QString verdictKey() const;
    [[nodiscard]] QString nextStep() const;
    [[nodiscard]] QStringList reasons() const;
    [[nodiscard]] QStringList changes() const;
    [[nodiscard]] QString moneyError() const { return m_moneyError; }
    [[nodiscard]] QString thresholdLine() const;
    [[nodiscard]] QString lossLine() const;
    [[nodiscard]] QStringList notes() const;
    [[nodiscard]] QStringList evidence() const;
    [[nodiscard]] QString dryLine() const;
    [[nodiscard]] QString dryNote() const;
    [[nodiscard]] QString timing() const;
    [[nodiscard]] QStringList timingReasons() const;
    [[nodiscard]] QStringList sources() const;
    [[nodiscard]] QStringList cautions() const;
    [[nodiscard]] RowList* working() { return &m_working; }
    [[nodiscard]] ThresholdGrid* grid() { return &m_grid; }
    [[nodiscard]] QStringList estimateLines() const;
    [[nodiscard]] QStringList planning() const;
    [[nodiscard]] QStringList errorRates() const;
    [[nodiscard]] bool isKept() const { return m_isKept; }
    [[nodiscard]] bool busy() const { return m_busy; }

    Q_INVOKABLE void keep(); // then kept()

Q_SIGNALS:
    void changed();
    void busyChanged();
    void kept();

private:
    void hear();
    void evaluate();
    void showWorking();
    [[nodiscard]] domain::Decision decisionNow() const;
    [[nodiscard]] QString draftKey() const;

    WalkBook m_book;
    DecisionForm m_form;
    std::optional<domain::WalkResult> m_result;
    QString m_moneyError;
    RowList m_working;
    ThresholdGrid m_grid;
    bool m_isKept = false;
    bool m_busy = false;
};

} // namespace duskrow::app
