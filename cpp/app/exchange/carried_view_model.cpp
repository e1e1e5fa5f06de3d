// SPDX-License-Identifier: MIT
#include "app/exchange/carried_view_model.h"

#include <QFileInfo>

#include "app/exchange/exchange_words.h"
#include "app/exchange/people.h"
#include "sync/carry/carry_route.h"
#include "text/amounts.h"

namespace duskrow::app {

using namespace duskrow::domain;

struct CarriedViewModel::Looked {
    sync::CarriedPreview preview;
    People people;
};

CarriedViewModel::CarriedViewModel(
    Session& session, Exchanger& exchanger, const QString& path, QObject* parent)
    : ViewModel(session, parent), m_exchanger(&exchanger), m_path(path)
{
    look();
}

QString CarriedViewModel::fileName() const
{
    return QFileInfo(m_path).fileName();
}

void CarriedViewModel::look()
{
    if (!m_exchanger) return;
    const auto looked = std::make_shared<std::optional<Looked>>();
    m_exchanger->run(
        tr("Looking into the file"),
        [path = m_path.toStdString(), looked](
            store::Store& store, const Moment&, const sync::Journey&) -> Result<sync::ExchangeReport> {
            auto preview = sync::previewCarried(store, path);
            if (!preview) return preview.error();
            const auto reader = store.reader();
            if (!reader) return reader.error();
            auto people = People::read(**reader, store.programme(), store.stream());
            if (!people) return people.error();
            *looked = Looked{std::move(*preview), std::move(*people)};
            return sync::ExchangeReport{};
        },
        this,
        [this, looked](const Result<sync::ExchangeReport>& outcome) {
            if (!outcome) return tell(outcome.error());
            clearTrouble();
            if (*looked) show(**looked);
        });
}

void CarriedViewModel::show(const Looked& looked)
{
    const sync::CarriedPreview& preview = looked.preview;
    m_isRead = true;
    m_isOurs = preview.programme == session().store().programme();
    m_newEntries = static_cast<int>(preview.newChanges);
    const auto& programme = session().programme();
    m_programme = m_isOurs && programme ? QString::fromStdString(programme->name) : QString();
    QStringList cautions;
    if (!m_isOurs && !preview.programme.isNil())
        cautions << tr(
            "This file is of another programme than the one on this device. It is not taken in. To "
            "join that programme, choose the file under “Join by a code”.");
    if (preview.ending != sync::Ending::Whole)
        cautions << tr("The file stops before its end. What is whole can be taken in; ask for it again for "
                       "the rest.");
    if (preview.refused > 0)
        cautions << (static_cast<int>(preview.refused) == 1
                ? tr("One part of it would be refused and kept aside.")
                : tr("%n parts of it would be refused and kept aside.", nullptr,
                    static_cast<int>(preview.refused)));
    m_caution = cautions.join(QLatin1Char(' '));
    std::vector<Row> rows;
    for (const auto& [stream, count] : preview.newFrom)
        rows.push_back(
            {.title = looked.people.deviceName(stream), .besides = text::number(count, QLocale())});
    m_from.show(std::move(rows));
    Q_EMIT shown();
}

void CarriedViewModel::takeIn()
{
    if (!m_exchanger) return;
    m_exchanger->run(
        tr("Taking the file in"),
        [path = m_path.toStdString()](store::Store& store, const Moment& now, const sync::Journey& journey) {
            return sync::readCarried(store, path, now.at, journey);
        },
        this,
        [this](const Result<sync::ExchangeReport>& outcome) {
            if (!outcome) return tell(outcome.error());
            clearTrouble();
            m_newEntries = 0;
            m_taken = saidOf(*outcome);
            m_caution = troubleOf(*outcome);
            m_from.show({});
            Q_EMIT shown();
        });
}

} // namespace duskrow::app
