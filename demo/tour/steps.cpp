// SPDX-License-Identifier: MIT
#include "demo/tour/steps.h"

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
        return lines.value(0).section(QLatin1Char(' '), 0, 0).toInt() >= 12;
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

} // namespace duskrow::demo
