// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <optional>
#include <string>
#include <vector>

#include "core/says/project.h"

namespace kerfwall {

/// A rectangular window as it is wanted in the work. Lengths in mm, panel frame.
struct WantedWindow {
    double width = 0;
    double height = 0;
    double cornerRadius = 0;       ///< 0: sharp
    std::optional<double> across;  ///< its middle from the panel's left edge; absent: in the middle of the panel
    std::optional<double> up;      ///< its middle from the panel's bottom edge; absent: in the middle
    bool operator==(const WantedWindow&) const = default;
};

/// What of a wish cannot be had.
enum class NoWindow {
    TooNarrow,       ///< bush or bearing, or the trimming bit, has no room to move between the walls
    CornerTooSharp,  ///< these tools leave a larger radius
    CornerTooRound,  ///< two of its corners would not fit on the shorter side
    PanelTooSmall,   ///< no place on the panel leaves it a sound border
    TooNearEdge,     ///< this place does not
    RunsThrough,     ///< a line there runs through it, it runs through another cutout, or they share one wall's kerf
    Unsure,          ///< laid, and solved with a doubt
};

/// The part of the wish to change.
enum class WishPart { Width, Height, Corner, Across, Up };

struct WindowRefusal {
    NoWindow why = NoWindow::TooNarrow;
    WishPart part = WishPart::Width;
    std::string sentence;  ///< for the maker, with a figure of what can be had
};

/// Width and height, mm.
struct Blank {
    double width = 0;
    double height = 0;
    bool operator==(const Blank&) const = default;
};

/// The radius the tools in use leave in the work's corners where the template's are not bored, mm.
[[nodiscard]] double cornerLeft(const Project& project);

/// A window laid on the panel.
struct LaidWindow {
    Project project;
    std::string cutout;
    std::vector<LineId> lines;         ///< bottom, top, left, right wall
    Blank opening;                     ///< in the template, between its walls
    Blank goodBlank;                   ///< the smallest that leaves it a good border all round
    std::optional<double> boreRadius;  ///< of the template's corners; none: the trimming bit leaves them right
    double cornerLeft = 0;             ///< radius the corners get in the work
};

/// The project with that window laid on its panel: four lines by their distance from the reference edge and the edge
/// square to it, a cutout with the wish in `wanted`, and bores where the corners want them. A line that lies where a
/// wall is to stand is used again: windows in a row share their lines. Distances fall on whole 1e-9 mm.
/// A window may lie beside others where no line of the one runs through the other; kerfs that pass close by, thin
/// borders and clamp holes in its way are findings, not refusals. Limits of `border-thin` are the project's.
/// `highest`: the highest number of a line id given before (moving.h, nextLineId).
/// Requires  all numbers finite. (asserted)
/// Refuses   see NoWindow; the first that holds, in that order.
/// Source    the opening in the work: every wall stands (guide - cutter) / 2 outside the edge it cuts. A corner of
///           radius R in the template, R at least the guide's, leaves R - (guide - cutter) / 2; a smaller one leaves
///           the cutter's radius. The trimming bit leaves its own, a bore R = radius wanted + (guide - cutter) / 2.
///           Radii within kSameRadius count as the same, and no bore is set.
[[nodiscard]] std::expected<LaidWindow, WindowRefusal> layWindow(const Project& project, const WantedWindow& wish,
                                                                 int highest = 0);

/// A bush and a bit, or a bearing and a bit.
struct Steering {
    bool byBush = false;
    double guide = 0;   ///< mm, outside
    double cutter = 0;  ///< mm
    bool operator==(const Steering&) const = default;
};

/// The project, its finished template steering that.
[[nodiscard]] Project steeredBy(const Project& project, const Steering& steering);

/// What else on the bench cuts that window, where the tools in use cannot, or only with bores. Without bores if there
/// is such a pair, then the thickest bit, then the smallest bush. Looked at: each bush on the bench with each bit on it
/// that clears its bore by kBushRoom, and the trimming bit with its own bearing.
/// None      where nothing there is better, or where the panel has another cutout: the template steers one pair.
[[nodiscard]] std::optional<Steering> otherSteering(const Project& project, const WantedWindow& wish);

inline constexpr double kBushRoom = 3;  ///< mm a bush must be larger than its bit; finding bush-fit

}  // namespace kerfwall
