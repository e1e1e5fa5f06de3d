// SPDX-License-Identifier: MIT
#pragma once

#include <QQuickWindow>

#include <functional>

namespace duskrow::app {

// The whole program from its command line to its end; gives its exit code.
//
// whenShown  called with the window once it stands, for programs that use the app as a person would
int runProgram(int argc, char** argv, const std::function<void(QQuickWindow&)>& whenShown = {});

} // namespace duskrow::app
