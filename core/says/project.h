// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/says/bench.h"
#include "core/says/cutout.h"
#include "core/says/fixture.h"
#include "core/says/layout_line.h"
#include "core/says/panel.h"
#include "core/says/pattern_layer.h"
#include "core/says/use.h"

namespace kerfwall {

enum class Units { Millimetres, Inches };

/// How the pattern is printed. Lengths in mm.
struct Printing {
    std::string paper = "a4";
    double overlap = 10;
    double margin = 10;
    double scaleX = 1;  ///< correction measured off the scale bars, 0.9 to 1.1
    double scaleY = 1;
    Face face = Face::Layout;            ///< that the pattern is glued on; Back: mirrored. Not Both
    bool hairline = false;               ///< narrow lines 0.13 mm wide, to saw to
    std::vector<PatternLayer> leaveOut;  ///< of the pattern
    std::string unknown;
    bool operator==(const Printing&) const = default;
};

enum class Prefer { OneReference, FewestSetups, SeenLines };
enum class HeldBy { Clamps, Work };

struct PlanWish {
    Prefer prefer = Prefer::OneReference;
    std::vector<std::variant<Edge, HeldBy>> held;  ///< what holds the template in use
    std::string unknown;
    bool operator==(const PlanWish&) const = default;
};

/// Limits that replace the program's, for one finding code.
struct Limits {
    std::optional<double> care;
    std::optional<double> stop;
    std::optional<double> force;  ///< arm-flex: the side push, N
    std::string unknown;
    bool operator==(const Limits&) const = default;
};

/// Something measured while making. Exactly one of line/between/bore is set. Lengths in mm.
struct Record {
    std::optional<std::pair<LineId, Edge>> line;       ///< a wall's distance from an edge
    std::optional<std::pair<LineId, LineId>> between;  ///< across the opening
    std::optional<std::pair<LineId, LineId>> bore;     ///< at the corner of these lines
    double measured = 0;                               ///< the distance, or the bore's diameter
    std::optional<double> depth;
    std::string unknown;
    bool operator==(const Record&) const = default;
};

/// What the maker said, and nothing computed. The one thing that is saved, edited and undone.
struct Project {
    std::string title;
    std::string notes;
    Units units = Units::Millimetres;
    Panel panel;
    std::vector<LayoutLine> lines;
    std::vector<Cutout> cutouts;
    std::optional<double> kerfDepth;  ///< mm; absent: see kerfDepthOf
    std::optional<Bench> bench;       ///< absent: the stock bench
    Use use;
    std::vector<ClampHole> clampHoles;
    std::vector<Fence> fences;
    std::optional<Workpiece> workpiece;
    Printing printing;
    PlanWish plan;
    std::map<std::string, Limits> limits;  ///< by finding code
    std::vector<Record> record;
    std::string unknown;  ///< as Panel::unknown
    bool operator==(const Project&) const = default;
};

/// The project's bench, or the stock bench.
[[nodiscard]] const Bench& benchOf(const Project& project);

/// The trimming bit of the bench, or the stock one where the bench has none.
[[nodiscard]] TrimBit trimBitOf(const Project& project);

/// Depth of the kerfs, mm: as given, else min(thickness / 2, max(5, bearing length + 1)).
[[nodiscard]] double kerfDepthOf(const Project& project);

/// The line of that id, or nullptr.
[[nodiscard]] const LayoutLine* findLine(const Project& project, const LineId& id);

}  // namespace kerfwall
