// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/says/project.h"
#include "ui/entry_state.h"

namespace kerfwall {

/// The numbers a line was laid by, as fields to type into. Empty where the line is not there.
[[nodiscard]] std::vector<EntryField> lineFields(const Project& project, const LineId& id);

/// The project with that field of the line set. None where the value is out of the project file's range or
/// the field is not there.
[[nodiscard]] std::optional<Project> withLineField(const Project& project, const LineId& id, int field, double value);

}  // namespace kerfwall
