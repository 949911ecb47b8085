// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/solved.h"

namespace kerfwall {

/// How the finished template is used, with all that the maker left out worked out.
/// A bush or a shank's bearing enters from the router's side, opposite the work; with the back on the work a
/// tip's bearing rides next to the work. With the layout face on the work it is set clear of the kerfs, at
/// the back; with the back on the work it rides in them only where its whole length lies within their depth.
[[nodiscard]] UseAnswer useOf(const Project& project);

}  // namespace kerfwall
