// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace kerfwall {

/// Every tolerance of the engine, mm. Decisions of in and out and left and right on drawn lines are
/// exact and use none of these.

/// A line bounds a cutout only along at least this much; less counts as a point. (project file, version 1)
inline constexpr double kShortestWall = 0.001;

/// Parallel sides of kerfs this close are one and the same: ten times the rounding error of a
/// coordinate on the largest panel.
inline constexpr double kSameSide = 1e-11;

/// A border of a decision this close is not guessed: 1 nm. (design of the engine)
inline constexpr double kDoubt = 1e-6;

/// Lines that turn from one another by less, in radians, leave a tip of wood whose end rounding moves by 1e-6 mm
/// and more: where they face one another within kDoubt it is not guessed.
inline constexpr double kNearlyParallel = 1e-8;

/// How much nearer than its radius a disc's centre must come to a wall to count as stopped by it:
/// above rounding error, below the smallest step that must be told apart (1e-9).
inline constexpr double kBite = 1e-10;

/// Ends of pieces this close are joined. Where two pieces meet almost tangentially the place of their
/// meeting is known along them only to sqrt(2 r kBite); nearest ends are joined first.
inline constexpr double kJoin = 1e-4;

/// Loops smaller than this are rounding dust, mm².
inline constexpr double kDust = 1e-9;

/// A disc in a round this little wider than itself does not roll: it fits in one place.
inline constexpr double kDoubtfulRadius = 1e-9;

/// Corner radii this close are one and the same to a maker: nobody tells them apart. Common practice, no source.
inline constexpr double kSameRadius = 0.05;

/// What the checks of the engine's own answer allow (proof.h):

/// How exactly a disc keeps its radius from the walls, a round's ends lie on it and the ends of a straight piece on
/// its line: kBite square to each contact, and stretches of ten times that left out beside it. In 30,000 layouts with
/// steps of 1e-10 to 1e-6 no sound answer came past it; some came past kBite.
inline constexpr double kClearance = 1e-9;

/// An area, mm²: rounding of metres squared (1e-9 a piece) over some hundred pieces.
inline constexpr double kSameArea = 1e-6;

}  // namespace kerfwall
