// SPDX-License-Identifier: MIT
// The headers of the tests are read once, by this file; see CMakeLists.txt.
