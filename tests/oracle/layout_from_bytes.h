// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>

#include "core/says/project.h"

namespace kerfwall::oracle {

/// A layout spelt in bytes, for searching with a fuzzer: panels of 10 to 3000 mm, 3 to 12 lines on a grid of
/// decimals, by whole and half degrees, or nudged by 1e-9 to 1e-2 mm or radians from places that decide
/// something (another line, a kerf's far side, a bit away, an edge, a common point); 1 to 3 cutouts of up to
/// 4 faces, some corners bored, bush or bearing smaller and larger than the bit. Bytes that are missing count
/// as 0: eight for panel and tools, six for each line, six for each cutout.
/// Gives     a project that the project file accepts and `plainLayout` can read.
/// Refuses   (none) where no cutout's seed lies in a face.
[[nodiscard]] std::optional<Project> layoutFromBytes(std::span<const std::uint8_t> bytes);

}  // namespace kerfwall::oracle
