// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>

#include "core/says/project.h"

namespace kerfwall::oracle {

enum class LayoutKind { Convex, Joined, Open, Tapered, Bored, Stopped, Several, Crossed };

[[nodiscard]] std::string kindName(LayoutKind kind);

struct SeededLayout {
    LayoutKind kind = LayoutKind::Convex;
    std::uint64_t seed = 0;
    Project project;
};

/// What a maker reads places off: a rule in tenths of a millimetre, or in 64ths of an inch.
enum class Grid { Tenths, Inches };

/// A layout drawn from `seed`: the same on every machine. Places on a grid, half degrees, three
/// guide rails of different kerfs so that every line's kerf is known, a bit of 6 to 19 mm.
/// Convex    one face of 3 to 8 lines, lines beside it that bound nothing, marks across it
/// Joined    2 to 5 neighbouring faces, inward corners
/// Open      faces at a panel edge
/// Tapered   a long wedge whose walls meet at 2 to 20 degrees
/// Bored     one face, some corners bored with 8 to 30 mm
/// Stopped   as Convex or Joined, most kerfs stopped
/// Several   2 to 4 cutouts, the kerfs of each running through the others' walls
/// Crossed   one cutout crossed by lines that a second one owns at shallow angles
[[nodiscard]] SeededLayout seededLayout(LayoutKind kind, std::uint64_t seed, Grid grid = Grid::Tenths);

}  // namespace kerfwall::oracle
