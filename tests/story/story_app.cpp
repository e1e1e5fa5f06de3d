// SPDX-License-Identifier: MIT
#include <memory>

#include "app/program.h"
#include "story/act_reader.h"

// The app itself, used through its standard input: see act_reader.h.
int main(int argc, char** argv)
{
    std::unique_ptr<duskrow::tests::ActReader> reader;
    return duskrow::app::runProgram(argc, argv,
        [&](QQuickWindow& window) { reader = std::make_unique<duskrow::tests::ActReader>(window); });
}
