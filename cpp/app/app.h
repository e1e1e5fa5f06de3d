// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "app/calendar_view_model.h"
#include "app/correction_view_model.h"
#include "app/device_settings.h"
#include "app/history_view_model.h"
#include "app/life_view_model.h"
#include "app/print/sheet_view_model.h"
#include "app/programme_view_model.h"
#include "app/protocol_view_model.h"
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
#include "app/year_view_model.h"

namespace duskrow::app {

// What a program was started with.
struct AppOptions {
    QString storePath;
    QString keyFolder;
    QString settingsFile; // empty for the user's own
    QString positionLog; // goes before the one in the settings
    std::optional<domain::LocalDay> today; // empty for the device's clock
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
    Q_PROPERTY(QString storePath READ storePath CONSTANT FINAL)
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
    [[nodiscard]] QString storePath() const { return m_options.storePath; }
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
    Q_INVOKABLE duskrow::app::TrapsViewModel* traps();
    Q_INVOKABLE duskrow::app::YearViewModel* year();
    Q_INVOKABLE duskrow::app::CalendarViewModel* calendar();
    Q_INVOKABLE duskrow::app::ProgrammeViewModel* programme();
    Q_INVOKABLE duskrow::app::ProtocolViewModel* protocol(const QString& pest);

Q_SIGNALS:
    void stateChanged();
    void passingTroubleChanged();

private:
    void listenToPosition();
    template <typename Model, typename... Args>
    Model* make(Args&&... args);

    AppOptions m_options;
    DeviceSettings m_settings;
    place::PositionSource m_position;
    std::unique_ptr<Session> m_session;
    std::optional<domain::Error> m_trouble;
    QString m_positionLog;
    QString m_passingTrouble;
};

} // namespace duskrow::app
