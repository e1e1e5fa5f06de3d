// SPDX-License-Identifier: MIT
#include "app/app.h"

#include <QFileInfo>
#include <QQmlEngine>

#include <algorithm>
#include <set>

#include "app/exchange/people.h"
#include "text/code_names.h"
#include "text/error_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

App::App(AppOptions options, QObject* parent)
    : QObject(parent), m_options(std::move(options)), m_settings(m_options.settingsFile)
{
    connect(&m_settings, &DeviceSettings::changed, this, &App::listenToPosition);
    listenToPosition();
    open();
}

App::~App() = default;

void App::listenToPosition()
{
    const QString log = m_options.positionLog.isEmpty() ? m_settings.positionLog() : m_options.positionLog;
    if (log.isEmpty()) {
        if (!m_position.isAvailable()) m_position.useDevice();
        return;
    }
    if (log == m_positionLog) return;
    m_positionLog = log;
    if (const auto listening = m_position.useLog(log); !listening) {
        m_passingTrouble = text::sentence(listening.error());
        Q_EMIT passingTroubleChanged();
    }
}

// A programme that was joined lies in a file of its own; the settings say which one stands open.
QString App::storePath() const
{
    const QString joined = m_settings.storeInsteadOf(m_options.storePath);
    return joined.isEmpty() ? m_options.storePath : joined;
}

void App::open()
{
    const Clock clock = m_options.today ? Clock(*m_options.today) : Clock();
    const bool isJoined = storePath() != m_options.storePath;
    auto session = Session::open(storePath(),
        {.keyFolder = m_options.keyFolder.toStdString(), .mayCreate = !isJoined}, clock, m_position);
    m_trouble.reset();
    if (!session)
        m_trouble = session.error();
    else
        adopt(std::move(*session));
    Q_EMIT stateChanged();
}

void App::adopt(std::unique_ptr<Session> session)
{
    m_exchanger.reset();
    if (m_session) m_formerSessions.push_back(std::move(m_session));
    m_session = std::move(session);
    const auto roster = store::rosterOf(m_session->reader(), m_session->store().programme());
    m_isJoined =
        roster && !roster->founders().empty() && !roster->founders().contains(m_session->store().stream());
    connect(m_session.get(), &Session::changed, this, &App::stateChanged);
    connect(m_session.get(), &Session::changed, this, &App::countQuestions);
    connect(m_session.get(), &Session::troubled, this, [this](const Error& error) {
        m_passingTrouble = text::sentence(error);
        Q_EMIT passingTroubleChanged();
    });
    m_exchanger = std::make_unique<Exchanger>(*m_session);
    countQuestions();
}

// Who one is here now, and what came of what was brought along.
QString App::joinedWords(const Session& session, const QString& said)
{
    if (!session.programme() || !session.me()) return said;
    const QString role = session.me()->role ? text::name(*session.me()->role) : QString();
    const QString welcome = tr("You take part in “%1” now, as %2: %3.", "programme, name, role")
                                .arg(QString::fromStdString(session.programme()->name),
                                    QString::fromStdString(session.me()->name), role);
    return said.isEmpty() ? welcome : welcome + QLatin1Char(' ') + said;
}

void App::adoptJoined(std::unique_ptr<store::Store> store, const QString& said)
{
    const QString path = QString::fromStdString(store->path());
    auto reader = store->reader();
    if (!reader) {
        m_passingTrouble = text::sentence(reader.error());
        return Q_EMIT passingTroubleChanged();
    }
    const Clock clock = m_session->clock();
    auto session = std::make_unique<Session>(std::move(store), std::move(*reader), clock, m_position);
    m_settings.setStoreInsteadOf(m_options.storePath, path);
    // The exchanger is still answering for the work that joined.
    QMetaObject::invokeMethod(
        this,
        [this, said, shared = std::make_shared<std::unique_ptr<Session>>(std::move(session))] {
            Q_EMIT switched();
            adopt(std::move(*shared));
            m_joinedLine = joinedWords(*m_session, said);
            Q_EMIT stateChanged();
        },
        Qt::QueuedConnection);
}

// Looked up apart: a season's worth of differences must not hold up the screens.
void App::countQuestions()
{
    struct Waiting {
        bool isCoordinator = false;
        int questions = 0;
    };
    m_session->lookUp<Waiting>(
        this,
        [programme = m_session->store().programme(), own = m_session->store().stream()](
            store::Reader& reader) -> Result<Waiting> {
            const auto people = People::read(reader, programme, own);
            if (!people) return people.error();
            if (people->roster().isAlone() || !people->isCoordinator())
                return Waiting{people->isCoordinator(), 0};
            const auto differences = store::openDifferences(reader);
            if (!differences) return differences.error();
            const auto aside = store::asideChanges(reader);
            if (!aside) return aside.error();
            const auto stale = store::staleRulings(reader);
            if (!stale) return stale.error();
            // A proposal makes the word on its record stale; it is one question, not two.
            std::set<Uuid> proposed;
            for (const store::AsideChange& one : *aside)
                if (one.reason == "proposal") proposed.insert(one.record);
            const auto words = std::count_if(stale->begin(), stale->end(),
                [&](const store::OpenDifference& one) { return !proposed.contains(one.record); });
            return Waiting{
                true, static_cast<int>(differences->size() + aside->size()) + static_cast<int>(words)};
        },
        [this](const Result<Waiting>& found) {
            const Waiting waiting = found ? *found : Waiting{};
            if (!found) Q_EMIT m_session->troubled(found.error());
            if (waiting.questions == m_questions && waiting.isCoordinator == m_isCoordinator) return;
            m_questions = waiting.questions;
            m_isCoordinator = waiting.isCoordinator;
            Q_EMIT questionsChanged();
        });
}

void App::setAsideAndOpen()
{
    if (const auto aside = store::setAside(storePath().toStdString()); !aside) {
        m_trouble = aside.error();
        Q_EMIT stateChanged();
        return;
    }
    open();
}

void App::dismissTrouble()
{
    m_passingTrouble.clear();
    Q_EMIT passingTroubleChanged();
}

App::State App::state() const
{
    if (!m_session) return State::Closed;
    return m_session->programme() && m_session->me() ? State::Open : State::Starting;
}

QString App::trouble() const
{
    return m_trouble ? text::sentence(*m_trouble) : QString();
}

bool App::canSetAside() const
{
    return m_trouble && m_trouble->code == ErrorCode::StoreDamaged;
}

bool App::invented() const
{
    return m_session && m_session->programme() && m_session->programme()->invented.value_or(false);
}

template <typename Model, typename... Args>
Model* App::make(Args&&... args)
{
    auto* model = new Model(*m_session, std::forward<Args>(args)...);
    QQmlEngine::setObjectOwnership(model, QQmlEngine::JavaScriptOwnership);
    return model;
}

StartViewModel* App::start()
{
    return make<StartViewModel>();
}

SeasonViewModel* App::season(const QString& trap)
{
    return make<SeasonViewModel>(trap);
}

LifeViewModel* App::life(const QString& subject)
{
    return make<LifeViewModel>(m_settings, subject);
}

HistoryViewModel* App::history(const QString& subject)
{
    return make<HistoryViewModel>(subject);
}

CorrectionViewModel* App::correction(const QString& subject)
{
    return make<CorrectionViewModel>(subject);
}

SetupViewModel* App::setup(const QString& subject)
{
    return make<SetupViewModel>(m_settings, subject);
}

VisitViewModel* App::visit(const QString& subject)
{
    return make<VisitViewModel>(m_settings, subject);
}

SamplesViewModel* App::samples(const QString& trap)
{
    return make<SamplesViewModel>(trap);
}

DeskViewModel* App::desk()
{
    return make<DeskViewModel>();
}

PublishViewModel* App::publish()
{
    return make<PublishViewModel>();
}

NewsViewModel* App::news(const QString& bulletin)
{
    return make<NewsViewModel>(bulletin);
}

TypingViewModel* App::typing(const QString& week)
{
    return make<TypingViewModel>(week);
}

MapViewModel* App::map()
{
    return make<MapViewModel>();
}

YearsViewModel* App::years()
{
    return make<YearsViewModel>();
}

TemperaturesViewModel* App::temperatures()
{
    return make<TemperaturesViewModel>();
}

WinterViewModel* App::winter()
{
    return make<WinterViewModel>();
}

YearViewModel* App::year()
{
    return make<YearViewModel>();
}

CalendarViewModel* App::calendar()
{
    return make<CalendarViewModel>();
}

PestCalendarViewModel* App::pestCalendar(const QString& trap)
{
    return make<PestCalendarViewModel>(trap);
}

ProgrammeViewModel* App::programme()
{
    return make<ProgrammeViewModel>();
}

ProtocolViewModel* App::protocol(const QString& pest)
{
    return make<ProtocolViewModel>(pest);
}

QuestionsViewModel* App::asked()
{
    return make<QuestionsViewModel>();
}

TrapsViewModel* App::traps()
{
    return make<TrapsViewModel>();
}

RoundViewModel* App::round()
{
    return make<RoundViewModel>();
}

LarvaeViewModel* App::larvae()
{
    return make<LarvaeViewModel>();
}

WalkStartViewModel* App::walkStart(const QString& subject)
{
    return make<WalkStartViewModel>(subject);
}

FrameViewModel* App::frames(const QString& walk)
{
    return make<FrameViewModel>(m_settings, walk);
}

DecisionViewModel* App::decision(const QString& walk)
{
    return make<DecisionViewModel>(walk);
}

SheetViewModel* App::sheet(const QString& walk)
{
    return make<SheetViewModel>(walk);
}

TodayViewModel* App::today()
{
    return make<TodayViewModel>();
}

ExchangeViewModel* App::exchange()
{
    return make<ExchangeViewModel>(*m_exchanger);
}

CarriedViewModel* App::carried(const QString& path)
{
    return make<CarriedViewModel>(*m_exchanger, path);
}

MembersViewModel* App::members()
{
    return make<MembersViewModel>();
}

MemberViewModel* App::member(const QString& member)
{
    return make<MemberViewModel>(member);
}

InviteViewModel* App::invite(const QString& member)
{
    return make<InviteViewModel>(*m_exchanger, member);
}

DifferencesViewModel* App::differences()
{
    return make<DifferencesViewModel>();
}

ImportViewModel* App::importing()
{
    return make<ImportViewModel>();
}

JoinViewModel* App::join(const QString& subject)
{
    return make<JoinViewModel>(*m_exchanger,
        JoinViewModel::Place{QFileInfo(m_options.storePath).absolutePath(), m_options.keyFolder,
            [this](std::unique_ptr<store::Store> store, const QString& said) {
                adoptJoined(std::move(store), said);
            }},
        subject);
}

} // namespace duskrow::app
