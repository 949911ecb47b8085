// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <set>
#include <string>
#include <vector>

#include "core/says/project.h"

namespace kerfwall {

/// The lines that a place is laid from.
[[nodiscard]] std::vector<LineId> linesNamedBy(const Place& place);

/// The lines laid from that one, through others too; not itself.
[[nodiscard]] std::set<LineId> linesLaidFrom(const Project& project, const LineId& id);

/// The project with a line called otherwise, everywhere it is named.
/// Refuses   with one sentence: a name that is no line's id, an edge's name, another line's.
[[nodiscard]] std::expected<Project, std::string> renamedLine(const Project& project, const LineId& from, const LineId& to);

}  // namespace kerfwall
