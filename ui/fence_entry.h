// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/geometry/fencing.h"
#include "ui/entry_state.h"

namespace kerfwall {

/// "fence" or "stop", in the middle of a sentence.
[[nodiscard]] QString fenceText(FenceKind kind);

/// "the bottom edge", "line A": what a fence runs along, in the middle of a sentence.
[[nodiscard]] QString alongText(const Base& base);

/// A fence's place as fields to type into: offset, both ends, and what it is. Empty where the fence is not there.
[[nodiscard]] std::vector<EntryField> fenceFields(const Project& project, std::size_t fence);

/// The project with that field of the fence set. None where the value is out of range or the field has no number.
[[nodiscard]] std::optional<Project> withFenceField(const Project& project, std::size_t fence, int field, double value);

/// One sentence about what that field takes.
[[nodiscard]] QString fenceFieldRange(int field);

/// The choice between a straight fence and a stop.
[[nodiscard]] EntryField fenceKindField(FenceKind kind);
[[nodiscard]] FenceKind fenceKindOf(int option);
/// The project with that fence as the kind chosen, where it is there.
[[nodiscard]] Project withFenceKind(Project project, std::size_t fence, int option);

/// What stands beside the pointer at a fence: its place, its size, and how far its face is from the cut in the work.
[[nodiscard]] QString fenceNote(const Project& project, const Solved& solved, const Fence& fence);

}  // namespace kerfwall
