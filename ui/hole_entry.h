// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/says/project.h"
#include "ui/entry_state.h"

namespace kerfwall {

/// A clamp hole's numbers as fields to type into. Empty where the hole is not there.
[[nodiscard]] std::vector<EntryField> holeFields(const Project& project, std::size_t hole);

/// The project with that field of the hole set. None where the value is out of range.
[[nodiscard]] std::optional<Project> withHoleField(const Project& project, std::size_t hole, int field, double value);

/// One sentence about what that field takes.
[[nodiscard]] QString holeFieldRange(const Project& project, std::size_t hole, int field);

}  // namespace kerfwall
