// SPDX-License-Identifier: MIT
#pragma once

#include <map>

#include "app/import/import_runner.h"
#include "app/import/temperatures_work.h"
#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// Daily temperatures of a weather station on their way in: chosen, looked at, set right, kept. Taking back is
// done where all imports are (ImportViewModel).
class TemperaturesViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString file READ file NOTIFY shown FINAL) // path; empty while none is chosen
    Q_PROPERTY(QStringList stations READ stations NOTIFY shown FINAL) // that are known
    Q_PROPERTY(QString station READ station NOTIFY shown FINAL)
    Q_PROPERTY(QString latitude READ latitude NOTIFY shown FINAL) // as typed
    Q_PROPERTY(QString longitude READ longitude NOTIFY shown FINAL)
    Q_PROPERTY(QString dayEnds READ dayEnds NOTIFY shown FINAL) // as typed, "09:00"
    Q_PROPERTY(QString unit READ unit NOTIFY shown FINAL) // "c", "f", or empty: not known
    Q_PROPERTY(QString order READ order NOTIFY shown FINAL) // "day", "month", or empty
    Q_PROPERTY(bool needsOrder READ needsOrder NOTIFY shown FINAL)
    Q_PROPERTY(QStringList header READ header NOTIFY shown FINAL) // what the columns are called
    Q_PROPERTY(QStringList columns READ columns NOTIFY shown FINAL) // numbers of day, lowest, highest; or ""
    Q_PROPERTY(bool isReading READ isReading NOTIFY shown FINAL)
    Q_PROPERTY(bool isSeen READ isSeen NOTIFY shown FINAL)
    Q_PROPERTY(bool isRunning READ isRunning NOTIFY shown FINAL)
    Q_PROPERTY(double part READ part NOTIFY progressed FINAL) // 0 to 1 of what runs
    Q_PROPERTY(QString missing READ missing NOTIFY shown FINAL) // why it cannot be brought in as it stands
    Q_PROPERTY(bool canBring READ canBring NOTIFY shown FINAL)
    Q_PROPERTY(QString bringLine READ bringLine NOTIFY shown FINAL)
    Q_PROPERTY(QString doneLine READ doneLine NOTIFY shown FINAL)
    Q_PROPERTY(duskrow::app::RowList* facts READ facts CONSTANT FINAL) // what was found: title and besides
    Q_PROPERTY(duskrow::app::RowList* refused READ refused CONSTANT FINAL)
    Q_PROPERTY(QString moreRefused READ moreRefused NOTIFY shown FINAL)

public:
    explicit TemperaturesViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] QString file() const { return QString::fromStdString(m_ask.path); }
    [[nodiscard]] QStringList stations() const { return m_stations; }
    [[nodiscard]] QString station() const { return QString::fromStdString(m_ask.station.name); }
    [[nodiscard]] QString latitude() const { return m_latitude; }
    [[nodiscard]] QString longitude() const { return m_longitude; }
    [[nodiscard]] QString dayEnds() const { return m_dayEnds; }
    [[nodiscard]] QString unit() const;
    [[nodiscard]] QString order() const;
    [[nodiscard]] bool needsOrder() const;
    [[nodiscard]] QStringList header() const;
    [[nodiscard]] QStringList columns() const;
    [[nodiscard]] bool isReading() const { return m_isReading; }
    [[nodiscard]] bool isSeen() const { return m_seen != nullptr; }
    [[nodiscard]] bool isRunning() const { return m_runner.isRunning(); }
    [[nodiscard]] double part() const { return m_runner.part(); }
    [[nodiscard]] QString missing() const;
    [[nodiscard]] bool canBring() const;
    [[nodiscard]] QString bringLine() const;
    [[nodiscard]] QString doneLine() const { return m_doneLine; }
    [[nodiscard]] RowList* facts() { return &m_facts; }
    [[nodiscard]] RowList* refused() { return &m_refused; }
    [[nodiscard]] QString moreRefused() const { return m_moreRefused; }

    // A path, or the address of a file as a dialog gives it. What was chosen of another file is forgotten.
    Q_INVOKABLE void open(const QString& path);
    Q_INVOKABLE void forget();
    // what  station, latitude, longitude, dayEnds, unit, order
    Q_INVOKABLE void choose(const QString& what, const QString& words);
    // what    date, minimum, maximum
    // column  its number, from 1
    Q_INVOKABLE void chooseColumn(const QString& what, const QString& column);
    Q_INVOKABLE void bring();
    Q_INVOKABLE void stop();

Q_SIGNALS:
    void shown();
    void progressed();

private:
    void readStations();
    void read();
    void show();
    // What was typed of the station, or what is wrong with it.
    [[nodiscard]] domain::Result<domain::StationTold> told() const;

    TemperaturesAsk m_ask;
    std::map<std::string, std::string> m_chosenColumns; // number by what it holds
    std::optional<domain::Error> m_typedWrong;
    std::shared_ptr<const TemperaturesSeen> m_seen;
    ImportRunner m_runner;
    RowList m_facts;
    RowList m_refused;
    QStringList m_stations;
    QString m_latitude;
    QString m_longitude;
    QString m_dayEnds;
    QString m_moreRefused;
    QString m_doneLine;
    bool m_isReading = false;
    bool m_mustReadAgain = false;
};

} // namespace duskrow::app
