// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/geometry/outline.h"
#include "core/says/project.h"

namespace kerfwall {

/// A kerf: a band of `width` on one side of its line, `depth` deep. Places are mm along the line
/// from where it enters the panel. Through: both spans are [0, length of the line on the panel].
struct Kerf {
    Side side = Side::Left;
    std::optional<std::size_t> saw;  ///< index into the bench's saws; none where no saw can cut it
    double width = 0;
    double depth = 0;
    bool stopped = false;
    double fullFrom = 0;  ///< where it has its whole depth ...
    double fullTo = 0;
    double surfaceFrom = 0;  ///< ... and where the blade's round leaves the layout face, clipped to the panel
    double surfaceTo = 0;
    std::size_t way = 0;  ///< index into its ways at that saw, see waysAt
    bool operator==(const Kerf&) const = default;
};

/// Where a line meets an edge, and towards which end of that edge its kerf lies.
struct LineMark {
    EdgeMark mark;
    bool wasteToStart = false;  ///< meaningful where the line has a kerf; both sides: `bothSides`
    bool wasteToEnd = false;
    bool operator==(const LineMark&) const = default;
};

/// A layout line clipped to the panel.
struct SolvedLine {
    LineId id;
    std::size_t index = 0;  ///< into the project's lines
    Point from;             ///< where it enters the panel, in its direction
    Point to;
    bool cut = true;
    std::vector<LineMark> marks;  ///< at `from`, then at `to`; a panel corner gives one mark on each edge
    std::vector<Kerf> kerfs;      ///< through: at most one a side; stopped: one for each run of walls
    bool operator==(const SolvedLine&) const = default;
};

/// How far a wall gives under a side push, at its weakest place; see core/strength/flex.h.
struct WallGive {
    double gives = 0;  ///< mm along the push: the mean of the pushed stretch
    Point at;          ///< its middle
    bool operator==(const WallGive&) const = default;
};

/// A stretch of the cutout's border on a line.
struct Wall {
    LineId line;
    Point from;  ///< in the loop's order: the cutout lies on the left of from -> to
    Point to;
    Side waste = Side::Left;  ///< side of the waste seen along the *line's* direction
    std::optional<std::size_t> startCorner;  ///< index into corners; none at the panel's edge
    std::optional<std::size_t> endCorner;
    std::optional<WallGive> give{};  ///< once worked out (withFlex): solve leaves it empty
    bool operator==(const Wall&) const = default;
};

/// How the trimmed corner looks; see design of the engine in DEVELOPERS.md.
enum class Regime { Sound, Pivot, TwoDips, DeepDip, FallsIn, Bored };

struct ReliefHole {
    Point centre;
    double diameter = 0;
    bool operator==(const ReliefHole&) const = default;
};

/// A place where two walls meet. Angles in degrees, lengths in mm.
struct Corner {
    LineId first;  ///< of the wall that arrives, in the loop's order
    LineId second;
    Point point;
    double angle = 0;  ///< inside the cutout, 0 to 360
    double step = 0;   ///< how far the opening bites past the drawn cutout near this corner
    // The following say nothing over 180 degrees (an inward corner).
    double radius = 0;  ///< of the drawn corner's own arc: the bit's, or the bore's
    Point firstTangent;
    Point secondTangent;
    double shortBy = 0;  ///< from the drawn point to that arc
    Regime regime = Regime::Sound;
    std::optional<double> boreRadius;  ///< as asked for; at most the bit's radius: it is left to the bit
    std::optional<ReliefHole> drill;   ///< none where it is of no use
    bool operator==(const Corner&) const = default;
};

/// Two walls that face each other.
struct FacingSize {
    LineId first;
    LineId second;
    double distance = 0;                              ///< mm; splayed walls: the mean of both ends
    std::optional<std::pair<double, double>> atEnds;  ///< splayed walls only
    std::size_t firstWall = 0;                        ///< indices into walls
    std::size_t secondWall = 0;
    bool operator==(const FacingSize&) const = default;
};

/// A place where the opening bites past the drawn cutout.
struct Hollow {
    Point at;           ///< where it is deepest
    double depth = 0;   ///< mm past the drawn cutout
    LineId wall;        ///< the line or edge of the border nearest to it: the wall it bites into
    std::vector<LineId> lips;  ///< lines whose kerf mouths or kerf walls the bearing rests on there
    std::optional<std::size_t> corner;  ///< where it rests on a lip of that corner's own two kerfs
    bool operator==(const Hollow&) const = default;
};

/// A stretch of a wall with no wood to ride on: kerfs lie on both sides of its line.
struct LostWall {
    LineId line;
    Point from;
    Point to;
    bool operator==(const LostWall&) const = default;
};

/// A place where the engine will not guess.
struct Doubt {
    Point at;
    std::string what;  ///< one sentence for the maker
    bool operator==(const Doubt&) const = default;
};

struct SolvedCutout {
    std::string id;
    std::size_t index = 0;  ///< into the project's cutouts
    bool open = false;      ///< it has a stretch of border on a panel edge
    double drawnArea = 0;   ///< mm², corners sharp
    Outline drawn;          ///< the joined faces, straight pieces only
    std::vector<std::vector<Point>> faces;  ///< each convex, anticlockwise
    Outline opening;        ///< the template's opening, below the kerfs, on the panel
    Outline work;           ///< what the finished template cuts in the work, on the panel
    double widest = 0;      ///< diameter of the largest disc inside the drawn cutout
    Point widestAt;
    std::vector<Wall> walls;
    std::vector<Corner> corners;
    std::vector<FacingSize> sizes;
    std::vector<Hollow> hollows;
    std::vector<LostWall> lost;
    int parts = 0;            ///< pieces of the bit's room over the drawn cutout; 0: it does not fit
    bool mouthClosed = false;  ///< an open cutout whose mouth the bit cannot leave by
    std::vector<Doubt> doubts;
    bool operator==(const SolvedCutout&) const = default;
};

/// Trouble of drawing: left out of the answer, a finding in the window, exit 2 on the command line.
struct DrawingTrouble {
    std::string pointer;   ///< JSON pointer of the line or cutout
    std::string sentence;  ///< "lines A and B lie on one another; move or delete one of them."
    Point at;
    std::vector<LineId> lines;
    std::string cutout;
    bool operator==(const DrawingTrouble&) const = default;
};

/// A line that lies on another or off the panel: left out of the answer, shown where it would run.
struct StrayLine {
    LineId id;
    std::size_t index = 0;  ///< into the project's lines
    Point from;             ///< in its direction; off the panel: a stretch beside it
    Point to;
    bool operator==(const StrayLine&) const = default;
};

enum class Rides { Clear, Kerfs, Both };

/// How the finished template is used, with everything left out worked out. Lengths in mm.
struct UseAnswer {
    double guide = 0;   ///< diameter of the bush or bearing
    double cutter = 0;  ///< diameter of the cutter
    double guideLength = 0;
    Face againstWork = Face::Layout;
    Rides rides = Rides::Clear;
    double bandFrom = 0;  ///< below the layout face, the band in which bush or bearing rides
    double bandTo = 0;
    std::string why;
    bool operator==(const UseAnswer&) const = default;
};

/// All that geometry answers about a project.
struct Solved {
    std::vector<SolvedLine> lines;  ///< in the project's order, without those in trouble
    std::vector<SolvedCutout> cutouts;
    std::vector<DrawingTrouble> troubles;
    std::vector<StrayLine> strays;  ///< of the lines in trouble those that have a place
    UseAnswer use;
    int leastSetups = 0;    ///< no choice of ways for these kerfs needs fewer set-ups; see chooseCuts
    double kerfDepth = 0;   ///< mm
    double bitRadius = 0;   ///< of the trimming bit, mm
    bool operator==(const Solved&) const = default;
};

/// The line of that id in the answer, or nullptr (in trouble, or not there).
[[nodiscard]] const SolvedLine* findLine(const Solved& solved, const LineId& id);

/// Where a line runs or, left out of the answer, would run; none where it has no place.
[[nodiscard]] std::optional<std::pair<Point, Point>> runOf(const Solved& solved, const LineId& id);

/// The trouble a line is left out for, or nullptr.
[[nodiscard]] const DrawingTrouble* troubleOf(const Solved& solved, const LineId& id);

}  // namespace kerfwall
