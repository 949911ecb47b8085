// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/says/object_reader.h"
#include "core/says/project.h"

namespace kerfwall {

// The objects of a project file, each read by itself. What only several of them together can get wrong
// is `checkReferences` and `checkSizes`.

[[nodiscard]] Panel readPanel(const Json& value, const std::string& pointer, Reading& reading);
[[nodiscard]] LayoutLine readLine(const Json& value, const std::string& pointer, Reading& reading);
[[nodiscard]] Cutout readCutout(const Json& value, const std::string& pointer, Reading& reading);
[[nodiscard]] Bench readBench(const Json& value, const std::string& pointer, Reading& reading);
[[nodiscard]] Use readUse(const Json& value, const std::string& pointer, Reading& reading);
[[nodiscard]] ClampHole readClampHole(const Json& value, const std::string& pointer, Reading& reading);
[[nodiscard]] Fence readFence(const Json& value, const std::string& pointer, Reading& reading);
[[nodiscard]] Workpiece readWorkpiece(const Json& value, const std::string& pointer, Reading& reading);
[[nodiscard]] Printing readPrinting(const Json& value, const std::string& pointer, Reading& reading);
[[nodiscard]] PlanWish readPlanWish(const Json& value, const std::string& pointer, Reading& reading);
[[nodiscard]] Limits readLimits(const Json& value, const std::string& pointer, Reading& reading);
[[nodiscard]] Record readRecord(const Json& value, const std::string& pointer, Reading& reading);

/// An edge's name or a line's id, told apart by the name.
[[nodiscard]] Base baseOf(const std::string& name);
[[nodiscard]] Edge readEdge(ObjectReader& fields, std::string_view key);
[[nodiscard]] bool isEdgeName(const std::string& name);

/// Ids given once, references to something that is there, no line laid out from itself.
void checkReferences(const Project& project, Reading& reading);
/// Sizes that depend on one another: kerf depth and thickness, blades and kerf depth.
void checkSizes(const Project& project, Reading& reading);

}  // namespace kerfwall
