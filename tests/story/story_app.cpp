// SPDX-License-Identifier: MIT
#include "app/program.h"
#include "story/act_reader.h"

// The app itself, used through its standard input: see act_reader.h.
int main(int argc, char** argv)
{
    return duskrow::app::runProgram(
        argc, argv, [](QQuickWindow& window) { new duskrow::tests::ActReader(window); });
}
