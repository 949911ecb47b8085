// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/says/bench.h"

namespace kerfwall {

/// The bench the maker kept, which new templates begin with; none where none was kept or it cannot be read any more.
[[nodiscard]] std::optional<Bench> myBench();

/// Keeps that bench in the program's settings, as a project file writes it.
void keepAsMyBench(const Bench& bench);

}  // namespace kerfwall
