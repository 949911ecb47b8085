// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

enum class Severity { Stop, Care, Note };

/// Something to mind before any cut, with place, value, limit and a remedy that carries a number.
struct Finding {
    std::string code;  ///< from the report's table: "corner-groove" ...
    Severity severity = Severity::Note;
    std::optional<Point> at;
    std::vector<LineId> lines;
    std::string cutout;           ///< "" where it is about none
    std::optional<double> value;
    std::optional<double> limit;  ///< the one that was crossed
    std::string unit;             ///< "mm", "" where there is no value
    std::string text;             ///< whole sentences; lengths in the project's units
    std::optional<std::size_t> hole;   ///< index into the project's clamp holes
    std::optional<std::size_t> fence;  ///< index into the project's fences
    bool operator==(const Finding&) const = default;
};

/// What to mind, stops first, then cares, then notes; within a severity in the order of the code table.
[[nodiscard]] std::vector<Finding> findings(const Project& project, const Solved& solved);

}  // namespace kerfwall
