// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "app/calendar/pest_calendar_view_model.h"
#include "app/calendar_view_model.h"
#include "app/correction_view_model.h"
#include "app/desk/desk_view_model.h"
#include "app/desk/news_view_model.h"
#include "app/desk/publish_view_model.h"
#include "app/desk/region_map_item.h"
#include "app/desk/typing_view_model.h"
#include "app/desk/years_view_model.h"
#include "app/device_settings.h"
#include "app/exchange/carried_view_model.h"
#include "app/exchange/differences_view_model.h"
#include "app/exchange/exchange_view_model.h"
#include "app/exchange/invite_view_model.h"
#include "app/exchange/join_view_model.h"
#include "app/exchange/member_view_model.h"
#include "app/exchange/members_view_model.h"
#include "app/history_view_model.h"
#include "app/import/import_view_model.h"
#include "app/import/temperatures_view_model.h"
#include "app/life_view_model.h"
#include "app/print/sheet_view_model.h"
#include "app/programme_view_model.h"
#include "app/protocol_view_model.h"
#include "app/question/questions_view_model.h"
#include "app/round/round_view_model.h"
#include "app/season_view_model.h"
#include "app/session.h"
#include "app/setup/setup_view_model.h"
#include "app/start_view_model.h"
#include "app/today_view_model.h"
#include "app/traps_view_model.h"
#include "app/visit/samples_view_model.h"
#include "app/visit/visit_view_model.h"
#include "app/walk/decision_view_model.h"
#include "app/walk/frame_view_model.h"
#include "app/walk/larvae_view_model.h"
#include "app/walk/walk_start_view_model.h"
#include "app/winter/winter_view_model.h"
#include "app/year_view_model.h"

namespace duskrow::app {

// What a program was started with.
struct AppOptions {
    QString storePath;
    QString keyFolder;
    QString settingsFile; // empty for the user's own
    QString positionLog; // goes before the one in the settings
    std::optional<domain::LocalDay> today; // empty for the device's clock
    QString opened = {}; // a carried file, or an invitation as text, that the person opened
};

// The root object of the screens: opens the store and makes one view model for each screen.
class App : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by main")
    Q_PROPERTY(State state READ state NOTIFY stateChanged FINAL)
    Q_PROPERTY(QString trouble READ trouble NOTIFY stateChanged FINAL)
    Q_PROPERTY(bool canSetAside READ canSetAside NOTIFY stateChanged FINAL)
    Q_PROPERTY(QString passingTrouble READ passingTrouble NOTIFY passingTroubleChanged FINAL)
    Q_PROPERTY(bool invented READ invented NOTIFY stateChanged FINAL)
    Q_PROPERTY(QString storePath READ storePath NOTIFY stateChanged FINAL)
    Q_PROPERTY(bool isJoined READ isJoined NOTIFY stateChanged FINAL) // others made the programme
    Q_PROPERTY(QString joinedLine READ joinedLine NOTIFY stateChanged FINAL) // what joining met
    Q_PROPERTY(QString opened READ opened CONSTANT FINAL)
    Q_PROPERTY(int questions READ questions NOTIFY questionsChanged FINAL) // that wait for this coordinator
    Q_PROPERTY(bool isCoordinator READ isCoordinator NOTIFY questionsChanged FINAL) // or alone
    Q_PROPERTY(duskrow::app::DeviceSettings* settings READ settings CONSTANT FINAL)

public:
    enum class State {
        Closed, // the store could not be opened; `trouble` says why and what to do
        Starting, // no programme yet, or none for this device's owner
        Open,
    };
    Q_ENUM(State)

    explicit App(AppOptions options, QObject* parent = nullptr);
    ~App() override;

    // Opens the store. May be called again after the trouble was mended.
    Q_INVOKABLE void open();
    // Moves a damaged store out of the way and begins a fresh one.
    Q_INVOKABLE void setAsideAndOpen();
    Q_INVOKABLE void dismissTrouble();

    [[nodiscard]] State state() const;
    [[nodiscard]] QString trouble() const;
    [[nodiscard]] QString passingTrouble() const { return m_passingTrouble; }
    [[nodiscard]] bool canSetAside() const;
    [[nodiscard]] bool invented() const;
    [[nodiscard]] QString storePath() const;
    [[nodiscard]] bool isJoined() const { return m_isJoined; }
    [[nodiscard]] QString joinedLine() const { return m_joinedLine; }
    [[nodiscard]] QString opened() const { return m_options.opened; }
    [[nodiscard]] int questions() const { return m_questions; }
    [[nodiscard]] bool isCoordinator() const { return m_isCoordinator; }
    [[nodiscard]] Exchanger* exchanger() const { return m_exchanger.get(); }
    [[nodiscard]] DeviceSettings* settings() { return &m_settings; }
    [[nodiscard]] Session* session() const { return m_session.get(); }
    [[nodiscard]] place::PositionSource& position() { return m_position; }

    // One for each screen; the screen owns it.
    Q_INVOKABLE duskrow::app::StartViewModel* start();
    Q_INVOKABLE duskrow::app::SeasonViewModel* season(const QString& trap);
    Q_INVOKABLE duskrow::app::LifeViewModel* life(const QString& subject);
    Q_INVOKABLE duskrow::app::HistoryViewModel* history(const QString& subject);
    Q_INVOKABLE duskrow::app::CorrectionViewModel* correction(const QString& subject);
    Q_INVOKABLE duskrow::app::SetupViewModel* setup(const QString& subject);
    Q_INVOKABLE duskrow::app::VisitViewModel* visit(const QString& subject);
    Q_INVOKABLE duskrow::app::SamplesViewModel* samples(const QString& trap);
    Q_INVOKABLE duskrow::app::RoundViewModel* round();
    Q_INVOKABLE duskrow::app::LarvaeViewModel* larvae();
    Q_INVOKABLE duskrow::app::WalkStartViewModel* walkStart(const QString& subject);
    Q_INVOKABLE duskrow::app::FrameViewModel* frames(const QString& walk);
    Q_INVOKABLE duskrow::app::DecisionViewModel* decision(const QString& walk);
    Q_INVOKABLE duskrow::app::SheetViewModel* sheet(const QString& walk);
    Q_INVOKABLE duskrow::app::TodayViewModel* today();
    Q_INVOKABLE duskrow::app::QuestionsViewModel* asked();
    Q_INVOKABLE duskrow::app::TrapsViewModel* traps();
    Q_INVOKABLE duskrow::app::YearViewModel* year();
    Q_INVOKABLE duskrow::app::CalendarViewModel* calendar();
    Q_INVOKABLE duskrow::app::PestCalendarViewModel* pestCalendar(const QString& trap);
    Q_INVOKABLE duskrow::app::ProgrammeViewModel* programme();
    Q_INVOKABLE duskrow::app::ProtocolViewModel* protocol(const QString& pest);
    Q_INVOKABLE duskrow::app::ExchangeViewModel* exchange();
    Q_INVOKABLE duskrow::app::CarriedViewModel* carried(const QString& path);
    Q_INVOKABLE duskrow::app::MembersViewModel* members();
    Q_INVOKABLE duskrow::app::MemberViewModel* member(const QString& member);
    Q_INVOKABLE duskrow::app::InviteViewModel* invite(const QString& member);
    Q_INVOKABLE duskrow::app::DifferencesViewModel* differences();
    Q_INVOKABLE duskrow::app::DeskViewModel* desk();
    Q_INVOKABLE duskrow::app::TypingViewModel* typing(const QString& week);
    Q_INVOKABLE duskrow::app::PublishViewModel* publish();
    Q_INVOKABLE duskrow::app::NewsViewModel* news(const QString& bulletin);
    Q_INVOKABLE duskrow::app::MapViewModel* map();
    Q_INVOKABLE duskrow::app::YearsViewModel* years();
    Q_INVOKABLE duskrow::app::WinterViewModel* winter();
    Q_INVOKABLE duskrow::app::TemperaturesViewModel* temperatures();
    Q_INVOKABLE duskrow::app::ImportViewModel* importing();
    Q_INVOKABLE duskrow::app::JoinViewModel* join(const QString& subject);

Q_SIGNALS:
    void stateChanged();
    void passingTroubleChanged();
    void questionsChanged();
    void switched(); // to another programme: whatever is open belongs to the former one

private:
    void listenToPosition();
    void adopt(std::unique_ptr<Session> session);
    void adoptJoined(std::unique_ptr<store::Store> store, const QString& said);
    static QString joinedWords(const Session& session, const QString& said);
    void countQuestions();
    template <typename Model, typename... Args>
    Model* make(Args&&... args);

    AppOptions m_options;
    DeviceSettings m_settings;
    place::PositionSource m_position;
    // Pages that are about to close may still look at the session before.
    std::vector<std::unique_ptr<Session>> m_formerSessions;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<Exchanger> m_exchanger;
    std::optional<domain::Error> m_trouble;
    QString m_positionLog;
    QString m_passingTrouble;
    QString m_joinedLine;
    bool m_isJoined = false;
    bool m_isCoordinator = false;
    int m_questions = 0;
};

} // namespace duskrow::app
