// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>

#include "core/says/project.h"

namespace kerfwall::oracle {

enum class NeckKind { Neck, Mouth, Ring };

[[nodiscard]] std::string kindName(NeckKind kind);

/// A layout in which the bit, or a guide smaller than it, may pass or not; drawn from `seed`, the same on
/// every machine. Decimals on a 0.1 mm grid, lines level and upright or leaning by up to 2 in 200, kerfs of
/// 0.8 to 3.2, a bit of 8 to 16 mm. Neck   two rooms and a gap of half a bit to a little more than one in the
/// wall between them, 0.4 to 6 thick Mouth  a room and such a gap in what is left before the panel's right
/// edge, 0.5 to 5 Ring   eight faces round one that stays standing, paths of 0.7 to 2 bits
[[nodiscard]] Project neckLayout(NeckKind kind, std::uint64_t seed);

}  // namespace kerfwall::oracle
