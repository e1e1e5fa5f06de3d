// SPDX-License-Identifier: MIT
#pragma once

#include <QJsonObject>
#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <optional>
#include <vector>

#include "app/clock.h"
#include "domain/records/trap.h"
#include "domain/rules/fix_average.h"
#include "place/position_source.h"

namespace duskrow::app {

// A place as it goes into a record.
struct KeptPlace {
    domain::GeoPoint point;
    domain::FixMethod method = domain::FixMethod::Satellite;
    std::optional<domain::Metres> accuracy; // nothing for a typed place
    std::optional<domain::Instant> at;
    std::optional<int> count; // of the fixes it was averaged from
};

// Finds the place where a person stands: fixes averaged until they settle or the person is content, or
// coordinates typed in. Serves setting up a trap and moving one.
class PlaceViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the screens that need a place")
    Q_PROPERTY(bool typing READ typing WRITE setTyping NOTIFY changed FINAL) // always, without a receiver
    Q_PROPERTY(QString latitude MEMBER m_latitude NOTIFY edited FINAL)
    Q_PROPERTY(QString longitude MEMBER m_longitude NOTIFY edited FINAL)
    Q_PROPERTY(bool receiving READ receiving NOTIFY changed FINAL) // there is a receiver or a log
    Q_PROPERTY(int fixes READ fixes NOTIFY changed FINAL)
    Q_PROPERTY(QString accuracy READ accuracy NOTIFY changed FINAL) // "6", in metres; empty without a fix
    Q_PROPERTY(QString fixWords READ fixWords NOTIFY changed FINAL) // "12 fixes averaged"
    Q_PROPERTY(bool settled READ settled NOTIFY changed FINAL)
    Q_PROPERTY(bool isFound READ isFound NOTIFY changed FINAL) // a place was taken
    Q_PROPERTY(QString coordinates READ coordinates NOTIFY changed FINAL) // of the place taken
    Q_PROPERTY(QString origin READ origin NOTIFY changed FINAL) // how it was found
    Q_PROPERTY(QString typedError READ typedError NOTIFY changed FINAL)

public:
    PlaceViewModel(place::PositionSource& source, const Clock& clock, QObject* parent = nullptr);

    [[nodiscard]] bool typing() const { return m_typing || !receiving(); }
    void setTyping(bool typing);
    [[nodiscard]] bool receiving() const { return m_source.isAvailable(); }
    [[nodiscard]] int fixes() const;
    [[nodiscard]] QString accuracy() const;
    [[nodiscard]] QString fixWords() const;
    [[nodiscard]] bool settled() const;
    [[nodiscard]] bool isFound() const { return m_found.has_value(); }
    [[nodiscard]] QString coordinates() const;
    [[nodiscard]] QString origin() const;
    [[nodiscard]] QString typedError() const { return m_typedError; }
    [[nodiscard]] bool canTake() const { return !typing() && m_average.has_value(); }
    [[nodiscard]] bool hasTyped() const;
    [[nodiscard]] const std::optional<KeptPlace>& found() const { return m_found; }

    // Collects fixes from now on; the person stands at the place. Forgets earlier ones.
    Q_INVOKABLE void measure();
    Q_INVOKABLE void rest();
    // Takes the average as it stands, or what was typed. False when there is none, or it is no place:
    // `typedError` then says why.
    Q_INVOKABLE bool take();
    // Forgets the place taken and measures afresh.
    Q_INVOKABLE void again();

    void setFound(const KeptPlace& place);
    [[nodiscard]] QJsonObject entries() const;
    void takeEntries(const QJsonObject& entries);

Q_SIGNALS:
    void edited();
    void changed();

private:
    void hear();
    bool takeTyped();

    place::PositionSource& m_source;
    const Clock& m_clock;
    bool m_measuring = false;
    bool m_typing = false;
    QString m_latitude;
    QString m_longitude;
    QString m_typedError;
    std::vector<domain::Fix> m_fixes;
    std::optional<domain::FixAverage> m_average;
    std::optional<KeptPlace> m_found;
};

} // namespace duskrow::app
