// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/says/project.h"

namespace kerfwall {

// What is wanted in the work. Lengths in mm, angles in degrees.

/// Width and height, mm.
struct Blank {
    double width = 0;
    double height = 0;
    bool operator==(const Blank&) const = default;
};

/// A rectangular window, in the panel frame.
struct WantedWindow {
    double width = 0;
    double height = 0;
    double cornerRadius = 0;       ///< 0: sharp
    std::optional<double> across;  ///< its middle from the panel's left edge; absent: in the middle of the panel
    std::optional<double> up;      ///< its middle from the panel's bottom edge; absent: in the middle
    bool operator==(const WantedWindow&) const = default;
};

/// The opening between a frame's two legs, under its rail. It runs out over the panel's bottom edge, past the feet.
///
///        ______________________
///       |  legTop     rail     |  outer sides lean in by `outerLean` on the way up
///       |    |____________|    |  ---
///       |   /              \   |   | height      inner radius: `cornerRadius`
///       |__/                \__|  ---  feet
///       |legFoot               |
///       |<------- span ------->|
struct WantedLegs {
    double span = 0;       ///< over both legs, outside to outside at the feet
    double height = 0;     ///< from the feet up to the rail
    double legTop = 0;     ///< a leg's width at the rail, level
    double legFoot = 0;    ///< and at the foot
    double outerLean = 0;  ///< of the legs' outer sides, degrees from upright; positive: the feet stand out
    double cornerRadius = 0;
    std::optional<double> across;  ///< its middle from the panel's left edge; absent: in the middle of the panel
    std::optional<double> foot;    ///< the feet above the panel's bottom edge; absent: see footAbove
    bool operator==(const WantedLegs&) const = default;
};

/// Any opening by its corners, in order round it, either way round.
struct WantedPolygon {
    std::vector<Point> corners;
    double cornerRadius = 0;
    std::optional<double> across;  ///< the middle of its width from the panel's left edge; absent: as its corners say
    std::optional<double> up;      ///< the middle of its height from the panel's bottom edge; absent: as its corners say
    bool operator==(const WantedPolygon&) const = default;
};

/// What of a wish cannot be had.
enum class NoWish {
    NoShape,         ///< its sizes make no opening: too few corners, sides that cross, legs that meet
    TooNarrow,       ///< bush or bearing, or the trimming bit, has no room to move between the walls
    CornerTooSharp,  ///< these tools leave a larger radius
    CornerTooRound,  ///< two of its corners would not fit on the side between them
    PanelTooSmall,   ///< no place on the panel leaves it a sound border
    TooNearEdge,     ///< this place does not
    RunsThrough,     ///< a line there runs through it, it runs through another cutout, or they share one wall's kerf
    Unsure,          ///< laid, and solved with a doubt
};

/// The part of the wish to change.
enum class WishPart { Width, Height, Corner, Across, Up, LegTop, LegFoot, Corners };

struct WishRefusal {
    NoWish why = NoWish::TooNarrow;
    WishPart part = WishPart::Width;
    std::string sentence;            ///< for the maker, with a figure of what can be had
    std::optional<Blank> goodBlank;  ///< where the panel is too small: the smallest that would do well
};

/// A wish laid on the panel.
struct LaidWish {
    Project project;
    std::string cutout;
    std::vector<Point> walls;   ///< corners of the template's opening; those of an open side lie off the panel
    std::vector<LineId> lines;  ///< of its walls, level ones first from below, then upright ones from the left, then others
    Blank opening;              ///< over all in the template, between its walls
    Blank goodBlank;            ///< the smallest that leaves it a good border all round
    std::optional<double> boreRadius;  ///< of the template's corners; none: the trimming bit leaves them right
    double cornerLeft = 0;             ///< radius the corners get in the work
};

}  // namespace kerfwall
