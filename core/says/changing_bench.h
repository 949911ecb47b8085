// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <expected>
#include <string>

#include "core/says/project.h"

namespace kerfwall {

/// The bench to be changed: from now on the project's own, even where it was the stock one.
[[nodiscard]] Bench& ownBench(Project& project);

/// The trimming bit to be changed, on the project's own bench; the stock one where there was none.
[[nodiscard]] TrimBit& ownTrimBit(Project& project);

/// The project with one more saw of that kind at the end, with the stock sizes: "rail", "rail-2" ...
[[nodiscard]] Project withSaw(const Project& project, SawKind kind);

/// The project without that saw; lines that named it leave the choice to the plan.
/// Requires  the saw is there.
[[nodiscard]] Project withoutSaw(const Project& project, std::size_t saw);

/// The project with that saw called `id`, in the lines that name it too.
/// Requires  the saw is there.
/// Refuses   no name, and the name of another saw, in one sentence.
[[nodiscard]] std::expected<Project, std::string> withSawCalled(const Project& project, std::size_t saw,
                                                                const std::string& id);

/// The project with that bench in place of its own; lines that name a saw which is not on it leave the choice to the plan.
/// Refuses   a blade not more than twice as wide as the project's kerfs are deep, in one sentence.
[[nodiscard]] std::expected<Project, std::string> withBench(const Project& project, const Bench& bench);

}  // namespace kerfwall
