// SPDX-License-Identifier: MIT
#include "app/app.h"

#include <QQmlEngine>

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

void App::open()
{
    const Clock clock = m_options.today ? Clock(*m_options.today) : Clock();
    auto session = Session::open(m_options.storePath,
        {.keyFolder = m_options.keyFolder.toStdString(), .mayCreate = true}, clock, m_position);
    m_trouble.reset();
    if (!session)
        m_trouble = session.error();
    else {
        m_session = std::move(*session);
        connect(m_session.get(), &Session::changed, this, &App::stateChanged);
        connect(m_session.get(), &Session::troubled, this, [this](const Error& error) {
            m_passingTrouble = text::sentence(error);
            Q_EMIT passingTroubleChanged();
        });
    }
    Q_EMIT stateChanged();
}

void App::setAsideAndOpen()
{
    if (const auto aside = store::setAside(m_options.storePath.toStdString()); !aside) {
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

YearViewModel* App::year()
{
    return make<YearViewModel>();
}

CalendarViewModel* App::calendar()
{
    return make<CalendarViewModel>();
}

ProgrammeViewModel* App::programme()
{
    return make<ProgrammeViewModel>();
}

ProtocolViewModel* App::protocol(const QString& pest)
{
    return make<ProtocolViewModel>(pest);
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

} // namespace duskrow::app
