// SPDX-License-Identifier: MIT
#pragma once

#include <atomic>
#include <memory>

#include "app/desk/years_words.h"
#include "app/paint/picture_handle.h"
#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// A coordinator's tables: districts by week, this year against the last ones at the same date, and how the
// bands shared out in every year. Of the pest and trap type with the most traps.
class YearsViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString view READ view WRITE setView NOTIFY shown FINAL) // weeks, years, bands
    Q_PROPERTY(QString by READ by WRITE setBy NOTIFY shown FINAL) // district, keeper
    Q_PROPERTY(QString kindLine READ kindLine NOTIFY shown FINAL)
    Q_PROPERTY(QString heading READ heading NOTIFY shown FINAL) // over the rows
    Q_PROPERTY(QString doing READ doing NOTIFY shown FINAL) // what is being read, or that nothing is there
    Q_PROPERTY(bool isRead READ isRead NOTIFY shown FINAL) // all years
    Q_PROPERTY(bool canGoBack READ canGoBack NOTIFY shown FINAL)
    Q_PROPERTY(bool canGoOn READ canGoOn NOTIFY shown FINAL)
    Q_PROPERTY(bool hasRows READ hasRows NOTIFY shown FINAL)
    Q_PROPERTY(bool copied READ copied NOTIFY shown FINAL)
    Q_PROPERTY(duskrow::app::RowList* rows READ rows CONSTANT FINAL) // `flags` are label, tab, figure
    Q_PROPERTY(int revision READ revision NOTIFY shown FINAL)

public:
    explicit YearsViewModel(Session& session, QObject* parent = nullptr);
    ~YearsViewModel() override;

    [[nodiscard]] QString view() const { return m_view; }
    void setView(const QString& view);
    [[nodiscard]] QString by() const { return m_by; }
    void setBy(const QString& by);
    [[nodiscard]] QString kindLine() const;
    [[nodiscard]] QString heading() const;
    [[nodiscard]] QString doing() const;
    [[nodiscard]] bool isRead() const { return m_years != nullptr; }
    [[nodiscard]] bool canGoBack() const { return m_week > 0; }
    [[nodiscard]] bool canGoOn() const;
    [[nodiscard]] bool hasRows() const { return m_rows.count() > 0; }
    [[nodiscard]] bool copied() const { return m_isCopied; }
    [[nodiscard]] RowList* rows() { return &m_rows; }
    [[nodiscard]] int revision() const { return m_revision; }

    Q_INVOKABLE void goWeeks(int by);
    // The whole table of the view, as CSV for a spreadsheet.
    Q_INVOKABLE void copy();
    // The bands of all years; `revision` is there so that a binding asks again.
    Q_INVOKABLE duskrow::app::PictureHandle bands(double width, double textScale, int revision) const;
    Q_INVOKABLE double bandsHeight(double width, double textScale, int revision) const;

Q_SIGNALS:
    void shown();

private:
    void refresh();
    void readSeason();
    void readYears();
    void arrange();

    YearNames m_names;
    store::TrapKind m_kind;
    std::shared_ptr<const domain::Protocol> m_protocol; // null until the season was looked into
    std::shared_ptr<const store::RegionOfSeason> m_season;
    std::shared_ptr<const std::vector<domain::RegionYear>> m_years;
    std::shared_ptr<std::atomic<bool>> m_stopped; // tells the reading of the years that nobody waits for it
    RowList m_rows;
    QString m_view = QStringLiteral("weeks");
    QString m_by = QStringLiteral("district");
    int m_week = -1;
    int m_yearRead = 0; // that is being read
    int m_revision = 0;
    bool m_isReading = false;
    bool m_mustReadAgain = false;
    bool m_isCopied = false;
};

} // namespace duskrow::app
