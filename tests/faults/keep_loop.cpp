// SPDX-License-Identifier: MIT
#include <csignal>
#include <unistd.h>

#include "store/store_scene.h"

using namespace duskrow;

namespace {

// One line for the parent, at once. A parent that is gone ends this process.
void say(const std::string& line)
{
    if (write(STDOUT_FILENO, line.data(), line.size()) != static_cast<ssize_t>(line.size())) _exit(3);
}

} // namespace

// keep_loop STORE KEYS FIRST: keeps visits FIRST, FIRST+1 ... until it is killed. "draft N" and "kept N" are
// said only after the store's answer.
int main(int argc, char** argv)
{
    if (argc != 4) return 2;
    auto opened = store::Store::open(argv[1], {.keyFolder = argv[2], .mayCreate = true});
    if (!opened) return 4;
    store::Store& store = **opened;
    for (auto number = static_cast<std::uint32_t>(std::stoul(argv[3]));; ++number) {
        bool isSaved = false;
        store.saveDraft("visit/7", "half of " + std::to_string(number),
            [&](const domain::Result<domain::Done>& saved) { isSaved = saved.has_value(); });
        store.flush();
        if (!isSaved) return 5;
        say("draft " + std::to_string(number) + "\n");
        store::Batch batch = tests::batchOf(tests::visitOf(number, number));
        batch.draftDone = "visit/7";
        if (!store.keepNow(batch).has_value()) return 6;
        say("kept " + std::to_string(number) + "\n");
    }
}
