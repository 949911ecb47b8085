// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "tests/oracle/plain_layout.h"

namespace kerfwall::oracle {

/// A cutout is trimmed with the layout's bit; then a guide rolls in what is void at its height and a cutter
/// cuts round its centre.
struct WorkQuestion {
    const PlainLayout* layout = nullptr;
    std::size_t cutout = 0;
    std::vector<PlainBand> kerfs;  ///< that are open at the guide's height; none: it rides clear of them
    double guide = 0;              ///< radius, mm
    double cutter = 0;             ///< radius, mm
};

struct WorkAnswer {
    double area = 0;  ///< mm² on the panel
    int parts = 0;    ///< of the guide's room, with a place over the drawn cutout
    int pieces = 0;   ///< of the opening in the work
};

/// Answers by exact unions: the bit's sweep first, joined with the kerfs, the bores and all that lies off the
/// panel; that void eroded by the guide and dilated by the cutter. The sweep is taken 1e-11 mm too large, so
/// that no film of wood stands where it meets a kerf along a wall; its corners are rounded to doubles between
/// the steps.
[[nodiscard]] WorkAnswer exactWork(const WorkQuestion& question);

}  // namespace kerfwall::oracle
