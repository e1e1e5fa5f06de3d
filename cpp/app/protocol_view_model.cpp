// SPDX-License-Identifier: MIT
#include "app/protocol_view_model.h"

#include "text/protocol_figures.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

std::vector<Row> cautionRows(const Protocol& protocol)
{
    std::vector<Row> rows;
    for (const Caution& caution : protocol.cautions)
        rows.push_back({.title = QString::fromStdString(caution.statement.text.in(Session::language())),
            .detail = text::sourceWords(protocol, caution.statement.source)});
    return rows;
}

std::vector<Row> sourceRows(const Protocol& protocol)
{
    std::vector<Row> rows;
    for (const CitedSource& source : protocol.sources)
        rows.push_back({.title = QString::fromStdString(source.citation)});
    return rows;
}

// The first figure of a section carries its name as the key.
std::vector<Row> figureRows(const Protocol& protocol)
{
    std::vector<Row> rows;
    QString section;
    for (const text::FigureWords& figure : text::figuresOf(protocol, Session::language())) {
        Row row{.title = figure.name, .besides = figure.value, .detail = figure.source};
        if (figure.section != section) row.key = section = figure.section;
        if (!figure.note.isEmpty()) row.flags << figure.note;
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace

ProtocolViewModel::ProtocolViewModel(Session& session, const QString& pest, QObject* parent)
    : ViewModel(session, parent), m_name(pest)
{
    const Protocol* protocol = session.protocol(pest.toStdString());
    if (!protocol) return;
    m_name = QString::fromStdString(protocol->name.in(Session::language()));
    m_versionLine =
        tr("%1 · protocol %2")
            .arg(QString::fromStdString(protocol->latin), QString::fromStdString(protocol->version));
    m_cautions.show(cautionRows(*protocol));
    m_figures.show(figureRows(*protocol));
    m_sources.show(sourceRows(*protocol));
}

} // namespace duskrow::app
