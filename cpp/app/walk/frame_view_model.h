// SPDX-License-Identifier: MIT
#pragma once

#include "app/device_settings.h"
#include "app/paint/picture_handle.h"
#include "app/row_list.h"
#include "app/view_model.h"
#include "app/walk/size_tiles.h"
#include "app/walk/walk_book.h"
#include "app/walk/walk_entry.h"

namespace duskrow::app {

// A frame being searched: tallies by size, where it lies, and what the walk comes to with it.
class FrameViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString title READ title NOTIFY refreshed FINAL) // "North quarter · frame 6"
    Q_PROPERTY(QString frameLine READ frameLine NOTIFY refreshed FINAL)
    Q_PROPERTY(QString walk READ walk CONSTANT FINAL) // its id
    Q_PROPERTY(QList<double> edges READ edges CONSTANT FINAL) // between size classes, in mm
    Q_PROPERTY(bool isFound READ isFound NOTIFY refreshed FINAL)
    Q_PROPERTY(duskrow::app::SizeTiles* tiles READ tiles CONSTANT FINAL)
    Q_PROPERTY(int larvae READ larvae NOTIFY entryChanged FINAL) // in this frame
    Q_PROPERTY(int sick READ sick NOTIFY entryChanged FINAL)
    Q_PROPERTY(bool podsKnown READ podsKnown NOTIFY entryChanged FINAL)
    Q_PROPERTY(int podsSeen READ podsSeen NOTIFY entryChanged FINAL)
    Q_PROPERTY(int podsDamaged READ podsDamaged NOTIFY entryChanged FINAL)
    Q_PROPERTY(QString remark READ remark WRITE setRemark NOTIFY entryChanged FINAL)
    Q_PROPERTY(bool sameStop READ sameStop WRITE setSameStop NOTIFY entryChanged FINAL)
    Q_PROPERTY(bool canSameStop READ canSameStop NOTIFY refreshed FINAL) // there is a stop before
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY entryChanged FINAL)
    Q_PROPERTY(QString placeLine READ placeLine NOTIFY placeChanged FINAL) // "52 m from the nearest stop"
    Q_PROPERTY(bool isTooNear READ isTooNear NOTIFY placeChanged FINAL)
    Q_PROPERTY(QString mean READ mean NOTIFY entryChanged FINAL) // "26 per m²" with this frame; empty without
    Q_PROPERTY(QString rangeLine READ rangeLine NOTIFY entryChanged FINAL)
    Q_PROPERTY(QString callLine READ callLine NOTIFY entryChanged FINAL)
    Q_PROPERTY(QString caution READ caution CONSTANT FINAL)
    Q_PROPERTY(bool hasThreshold READ hasThreshold NOTIFY entryChanged FINAL)
    Q_PROPERTY(bool isDecided READ isDecided NOTIFY entryChanged
            FINAL) // by the frames kept; not while one is being searched
    Q_PROPERTY(QString keepText READ keepText NOTIFY entryChanged FINAL)
    Q_PROPERTY(duskrow::app::RowList* kept READ kept CONSTANT FINAL) // the frames so far, newest first
    Q_PROPERTY(int framesKept READ framesKept NOTIFY refreshed FINAL)
    Q_PROPERTY(bool needsHow READ needsHow NOTIFY howChanged FINAL) // where to look was not read yet
    Q_PROPERTY(QString now READ now CONSTANT FINAL) // where larvae are at this time of the day
    Q_PROPERTY(QStringList how READ how CONSTANT FINAL)
    Q_PROPERTY(int revision READ revision NOTIFY entryChanged FINAL) // counts up with each change
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)

public:
    // walk  its id
    FrameViewModel(
        Session& session, DeviceSettings& settings, const QString& walk, QObject* parent = nullptr);

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString frameLine() const;
    [[nodiscard]] QString walk() const;
    [[nodiscard]] QList<double> edges() const;
    [[nodiscard]] bool isFound() const { return m_book.isFound(); }
    [[nodiscard]] SizeTiles* tiles() { return &m_tiles; }
    [[nodiscard]] int larvae() const { return static_cast<int>(m_entry.now().larvae()); }
    [[nodiscard]] int sick() const { return static_cast<int>(m_entry.now().sick); }
    [[nodiscard]] bool podsKnown() const { return m_entry.now().podsSeen.has_value(); }
    [[nodiscard]] int podsSeen() const { return static_cast<int>(m_entry.now().podsSeen.value_or(0)); }
    [[nodiscard]] int podsDamaged() const { return static_cast<int>(m_entry.now().podsDamaged.value_or(0)); }
    [[nodiscard]] QString remark() const { return m_entry.now().remark; }
    void setRemark(const QString& remark);
    [[nodiscard]] bool sameStop() const { return m_entry.now().isSameStop; }
    void setSameStop(bool isSame);
    [[nodiscard]] bool canSameStop() const { return !m_book.frames().empty(); }
    [[nodiscard]] bool canUndo() const { return m_entry.canUndo(); }
    [[nodiscard]] QString placeLine() const;
    [[nodiscard]] bool isTooNear() const;
    [[nodiscard]] QString mean() const;
    [[nodiscard]] QString rangeLine() const;
    [[nodiscard]] QString callLine() const;
    [[nodiscard]] QString caution() const;
    [[nodiscard]] bool hasThreshold() const { return m_book.threshold().has_value(); }
    [[nodiscard]] bool isDecided() const;
    [[nodiscard]] QString keepText() const;
    [[nodiscard]] RowList* kept() { return &m_kept; }
    [[nodiscard]] QString now() const;
    [[nodiscard]] int framesKept() const { return static_cast<int>(m_book.frames().size()); }
    [[nodiscard]] bool needsHow() const;
    [[nodiscard]] QStringList how() const;
    [[nodiscard]] int revision() const { return m_revision; }
    [[nodiscard]] bool busy() const { return m_busy; }

    Q_INVOKABLE void add(int size, int by); // larvae of a size class
    Q_INVOKABLE void addSick(int by);
    Q_INVOKABLE void setPods(int seen, int damaged);
    Q_INVOKABLE void clearPods();
    Q_INVOKABLE void undo();
    Q_INVOKABLE void keepFrame(); // then a fresh one
    Q_INVOKABLE void finish(); // keeps a frame that was begun as well; then finished()
    Q_INVOKABLE void readHow();

    // The decision lines for an item of this size. `revision` is there so that a binding asks again.
    Q_INVOKABLE duskrow::app::PictureHandle lines(
        double width, double height, double textScale, int revision) const;

Q_SIGNALS:
    void refreshed();
    void entryChanged();
    void placeChanged();
    void howChanged();
    void busyChanged();
    void frameKept();
    void finished(const QString& walk);

private:
    void refresh();
    void change(const FrameEntry& after);
    void evaluate();
    void showKept();
    void saveDraft();
    void keep(std::vector<domain::Edit> edits, const std::function<void()>& then);
    [[nodiscard]] QString draftKey() const;
    [[nodiscard]] int stop() const;
    [[nodiscard]] domain::Frame frameNow() const;

    DeviceSettings& m_settings;
    WalkBook m_book;
    WalkEntry m_entry;
    SizeTiles m_tiles;
    RowList m_kept;
    std::optional<domain::WalkResult> m_result; // with the frame being searched, once it holds anything
    int m_revision = 0;
    bool m_busy = false;
};

} // namespace duskrow::app
