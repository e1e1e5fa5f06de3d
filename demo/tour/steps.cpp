// SPDX-License-Identifier: MIT
#include "demo/tour/steps.h"

#include <QRegularExpression>

#include <cstdio>

namespace duskrow::demo {

namespace {

QString named(const char* name)
{
    return QString::fromLatin1(name);
}

// Types into a field that may hold something already.
void fill(Stage& stage, const char* field, const char* text)
{
    stage.tapIn(named(field), named("box"));
    stage.selectAll();
    stage.type(named(text));
}

void nextPage(Stage& stage, const char* page)
{
    stage.tap(named("next"));
    stage.waitUntil(QStringLiteral("the page \"%1\"").arg(named(page)),
        [&] { return stage.propertyOf(named("trail"), "page").toString() == named(page); });
    stage.shoot(QStringLiteral("setup-%1").arg(named(page)));
}

} // namespace

void setUpATrap(Stage& stage)
{
    stage.waitFor(named("actCard"));
    stage.shoot(named("today"));
    stage.tap(named("tab_traps"));
    stage.waitFor(named("trapRow"));
    stage.shoot(named("traps"));
    stage.tap(named("setUp"));
    stage.waitFor(named("siteName"));
    fill(stage, "siteName", "Alder hollow");
    stage.shoot(named("setup-field"));
    nextPage(stage, "yes");
    fill(stage, "landowner", "the keeper herself");
    nextPage(stage, "place");
    stage.waitUntil(named("an averaged place"), [&] {
        const QStringList lines = stage.propertyOf(named("accuracy"), "lines").toStringList();
        // "12 fixes averaged", in whatever language: the first number.
        static const QRegularExpression number(QStringLiteral("[0-9]+"));
        return number.match(lines.value(0)).captured().toInt() >= 12;
    });
    stage.shoot(named("setup-place-found"));
    nextPage(stage, "around");
    nextPage(stage, "trap");
    stage.tap(named("cleaned"));
    nextPage(stage, "handling");
    nextPage(stage, "lure");
    nextPage(stage, "strip");
    nextPage(stage, "stake");
    fill(stage, "canopy", "95");
    fill(stage, "entrance", "120");
    stage.shoot(named("setup-stake-clear"));
    nextPage(stage, "last");
    stage.tap(named("next"));
    stage.waitFor(named("kept"));
    stage.shoot(named("setup-kept"));
}

void makeAVisit(Stage& stage)
{
    stage.goTo(named("today"));
    stage.waitFor(named("actCard"));
    stage.tapIn(named("actCard"), named("act"));
    stage.waitFor(named("pad"));
    std::printf("Visited: %s\n", qPrintable(stage.propertyOf(named("pageHead"), "title").toString()));
    for (int moth = 0; moth < 7; ++moth) stage.tap(named("pad"));
    stage.tap(named("tally_10"));
    stage.tap(named("tally_10"));
    stage.key(Qt::Key_Space);
    stage.waitUntil(named("a count of 28: seven touches, twice ten, one key"),
        [&] { return stage.propertyOf(named("number"), "value").toString() == named("28"); });
    stage.shoot(named("visit-count"));
    stage.tap(named("next"));
    stage.waitFor(named("stake"));
    stage.shoot(named("visit-trap"));
    stage.tap(named("next"));
    stage.waitFor(named("emptied"));
    stage.shoot(named("visit-lure"));
    stage.tap(named("next"));
    stage.waitFor(named("keep"));
    stage.shoot(named("visit-done"));
    stage.tap(named("keep"));
    stage.waitFor(named("kept"));
    stage.shoot(named("visit-kept"));
}

void lookAtTheSeason(Stage& stage)
{
    stage.tap(named("season"));
    stage.waitFor(named("chart"));
    stage.shoot(named("season-night"));
}

namespace {

void countFrame(Stage& stage, int small, int medium, int large)
{
    const int counts[] = {small, medium, large};
    for (int size = 0; size < 3; ++size)
        for (int larva = 0; larva < counts[size]; ++larva)
            stage.tapIn(QStringLiteral("size%1").arg(size), named("plus"));
}

} // namespace

void scoutAField(Stage& stage)
{
    stage.goTo(named("larvae"));
    stage.waitFor(named("walk"));
    stage.shoot(named("larvae"));
    stage.tap(named("walk"));
    stage.waitFor(named("begin"));
    const QString field = stage.propertyOf(named("site"), "keys").toStringList().value(0);
    stage.tapIn(named("site"), QStringLiteral("chip_") + field);
    stage.tapIn(named("stage"), named("stage_75"));
    stage.shoot(named("walk-start"));
    stage.tap(named("begin"));
    stage.waitFor(named("read"));
    stage.shoot(named("walk-how"));
    stage.tap(named("read"));
    stage.waitFor(named("size0"));
    const int frames[][3] = {{1, 2, 1}, {2, 5, 2}, {0, 2, 0}, {3, 8, 4}, {0, 0, 0}, {1, 3, 2}};
    int kept = 0;
    for (const auto& [small, medium, large] : frames) {
        countFrame(stage, small, medium, large);
        stage.tap(named("keep"));
        ++kept;
        stage.waitUntil(QStringLiteral("frame %1 kept").arg(kept), [&] {
            return stage.propertyOf(named("pageHead"), "title")
                .toString()
                .endsWith(QString::number(kept + 1));
        });
    }
    stage.shoot(named("walk-frame"));
    std::printf("Scouted: %s, %s\n", qPrintable(stage.propertyOf(named("mean"), "text").toString()),
        qPrintable(stage.propertyOf(named("call"), "text").toString()));
    stage.tap(named("finish"));
    stage.waitFor(named("verdict"));
    stage.tapIn(named("shown"), named("chip_money"));
    stage.waitFor(named("cost"));
    fill(stage, "cost", "12");
    fill(stage, "price", "10");
    stage.shoot(named("decide-money"));
    stage.tapIn(named("shown"), named("chip_answer"));
    stage.shoot(named("decide-why"));
    stage.tapIn(named("shown"), named("chip_working"));
    stage.shoot(named("decide-working"));
    stage.tap(named("keep"));
    stage.waitUntil(named("the decision kept"),
        [&] { return stage.propertyOf(named("verdict"), "verdict").toString().length() > 0; });
}

} // namespace duskrow::demo
