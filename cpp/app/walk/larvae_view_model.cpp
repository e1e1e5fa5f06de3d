// SPDX-License-Identifier: MIT
#include "app/walk/larvae_view_model.h"

#include <algorithm>
#include <map>

#include "domain/rules/walk_result.h"
#include "store/queries.h"
#include "text/amounts.h"
#include "text/frame_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

struct FoundWalk {
    Walk walk;
    QString site;
    std::vector<Frame> frames;
    QString verdict; // as it was shown when it was kept
};

QString verdictWords(const std::string& verdict)
{
    if (verdict == "below") return LarvaeViewModel::tr("below the threshold");
    if (verdict == "above") return LarvaeViewModel::tr("above the threshold");
    if (verdict == "too_close") return LarvaeViewModel::tr("too close to call");
    return {};
}

Result<std::vector<FoundWalk>> findWalks(store::Reader& reader, const Uuid& season)
{
    const auto walks = store::walksOf(reader, season);
    if (!walks) return walks.error();
    const auto frames = store::framesOfSeason(reader, season);
    if (!frames) return frames.error();
    const auto decisions = store::decisionsOfSeason(reader, season);
    if (!decisions) return decisions.error();
    const auto sites = store::sitesOf(reader, season);
    if (!sites) return sites.error();
    std::map<Uuid, QString> names;
    for (const Site& site : *sites) names[site.id] = QString::fromStdString(site.name);
    std::map<Uuid, std::vector<Frame>> byWalk;
    for (const Frame& frame : *frames) byWalk[frame.walk].push_back(frame);
    std::map<Uuid, QString> verdicts; // of the latest decision, which comes last
    for (const Decision& decision : *decisions) verdicts[decision.walk] = verdictWords(decision.verdict);
    std::vector<FoundWalk> found;
    for (const Walk& walk : *walks)
        found.push_back({walk, names[walk.site], byWalk[walk.id], verdicts[walk.id]});
    return found;
}

Row rowOf(const FoundWalk& found)
{
    const bool isFinished = found.walk.finished.value_or(false);
    Row row{.key = QString::fromStdString(formatUuid(found.walk.id)), .title = found.site};
    const std::vector<FrameStop> stops = frameStops(found.frames);
    const auto tally = tallyOf(stops);
    const auto count = static_cast<std::int64_t>(found.frames.size());
    QStringList parts{text::frames(Frames{count})};
    if (found.walk.day) parts << text::shortDay(*found.walk.day);
    if (!found.verdict.isEmpty()) parts << found.verdict;
    row.detail = parts.join(QStringLiteral(" · "));
    if (tally && tally->frames.value() > 0 && found.walk.frameCm2) {
        const double area =
            static_cast<double>(*found.walk.frameCm2) / 10'000.0 * static_cast<double>(tally->frames.value());
        row.besides = LarvaeViewModel::tr("%1 per m²")
                          .arg(QLocale().toString(static_cast<double>(tally->larvae.value()) / area, 'f', 0));
    }
    row.route = isFinished ? QStringLiteral("decide") : QStringLiteral("frames");
    row.subject = row.key;
    return row;
}

} // namespace

LarvaeViewModel::LarvaeViewModel(Session& session, QObject* parent) : ViewModel(session, parent)
{
    connect(&session, &Session::changed, this, &LarvaeViewModel::refresh);
    refresh();
}

void LarvaeViewModel::refresh()
{
    if (!session().season()) return Q_EMIT refreshed();
    const Uuid season = session().season()->id;
    const auto uses = store::protocolsInUse(session().reader(), season);
    if (!uses) return tell(uses.error());
    m_canScout = std::ranges::any_of(*uses, [this](const ProtocolUse& use) {
        const Protocol* protocol = session().protocol(use.pest);
        return protocol && protocol->scouting;
    });
    session().lookUp<std::vector<FoundWalk>>(
        this, [season](store::Reader& reader) { return findWalks(reader, season); },
        [this](const Result<std::vector<FoundWalk>>& found) {
            if (!found) return tell(found.error());
            clearTrouble();
            std::vector<Row> open;
            std::vector<Row> done;
            for (const FoundWalk& walk : *found)
                (walk.walk.finished.value_or(false) ? done : open).push_back(rowOf(walk));
            m_open.show(std::move(open));
            m_done.show(std::move(done));
            m_isKnown = true;
            Q_EMIT refreshed();
        });
}

QString LarvaeViewModel::caution() const
{
    return tr(
        "Neighbouring fields differ: each field is scouted by itself. A trap catch never decides a spray.");
}

} // namespace duskrow::app
