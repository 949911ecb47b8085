// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/from_wanted.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

#include "core/geometry/edge_place.h"
#include "core/geometry/moving.h"
#include "core/geometry/solve.h"
#include "core/geometry/tolerance.h"
#include "core/geometry/use_of.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"

namespace kerfwall {
namespace {

using Refused = std::unexpected<WindowRefusal>;

Refused refused(NoWindow why, WishPart part, std::string sentence) {
    return Refused(WindowRefusal{why, part, std::move(sentence)});
}

double onGrid(double mm) { return std::round(mm * 1e9) / 1e9; }

std::string blankWords(const Project& project, const Blank& blank) {
    return atLeastWords(project, blank.width) + " by " + atLeastWords(project, blank.height);
}

// All lengths the laying needs, worked out once.
struct Draft {
    double offset = 0;      // a wall stands this far outside the edge it cuts
    double trimRadius = 0;  // of the trimming bit
    UseAnswer use;
    Point centre;
    Box walls;  // of the template's opening
    Box edges;  // of the window in the work
    std::optional<double> bore;
    double cornerLeft = 0;
    Blank opening;
    Blank goodBlank;
};

Box boxAbout(Point centre, double width, double height) {
    return {{onGrid(centre.x - width / 2), onGrid(centre.y - height / 2)},
            {onGrid(centre.x + width / 2), onGrid(centre.y + height / 2)}};
}

Draft draftOf(const Project& project, const WantedWindow& wish) {
    Draft draft;
    draft.use = useOf(project);
    draft.trimRadius = trimBitOf(project).diameter / 2;
    draft.offset = (draft.use.guide - draft.use.cutter) / 2;
    draft.centre = {wish.across.value_or(project.panel.width / 2), wish.up.value_or(project.panel.height / 2)};
    draft.opening = {wish.width + 2 * draft.offset, wish.height + 2 * draft.offset};
    draft.walls = boxAbout(draft.centre, draft.opening.width, draft.opening.height);
    draft.edges = boxAbout(draft.centre, wish.width, wish.height);
    const double border = limitsOf("border-thin", project).care.value_or(0);
    draft.goodBlank = {draft.opening.width + 2 * border, draft.opening.height + 2 * border};
    draft.cornerLeft = cornerLeft(project);
    if (wish.cornerRadius > draft.cornerLeft + kSameRadius) {
        draft.bore = wish.cornerRadius + draft.offset;
        draft.cornerLeft = wish.cornerRadius;
    }
    return draft;
}

std::optional<Refused> tooNarrow(const Project& project, const WantedWindow& wish, const Draft& draft) {
    const double least = std::max(draft.use.cutter, 2 * (draft.trimRadius - draft.offset));
    const double size = std::min(wish.width, wish.height);
    if (size > least + kDoubt) return std::nullopt;
    const bool byGuide = least <= draft.use.cutter + kDoubt;
    const std::string tool = !byGuide               ? "the trimming bit"
                             : project.use.byBush ? "the bush"
                                                  : "the bearing";
    return refused(NoWindow::TooNarrow, size == wish.width ? WishPart::Width : WishPart::Height,
                   "Here " + tool + " has no room to move between the walls; the window must be wider than " +
                       lengthWords(project, least) + ", or the bit thinner.");
}

std::optional<Refused> wrongCorner(const Project& project, const WantedWindow& wish, const Draft& draft) {
    if (wish.cornerRadius < draft.cornerLeft - kSameRadius) {
        const bool byCutter = draft.use.guide / 2 >= draft.trimRadius;
        const double bit = 2 * (byCutter ? wish.cornerRadius : wish.cornerRadius + draft.offset);
        const std::string other =
            bit <= 0 ? "square it by hand"
                     : std::string("take ") + (byCutter ? "a bit of " : "a trimming bit of ") +
                           atMostWords(project, bit) + " or less";
        return refused(NoWindow::CornerTooSharp, WishPart::Corner,
                       "These tools leave a corner radius of " + lengthWords(project, draft.cornerLeft) +
                           " in the work; ask for that or more, or " + other + ".");
    }
    const double most = std::min(wish.width, wish.height) / 2;
    if (wish.cornerRadius > most + kDoubt) {
        return refused(NoWindow::CornerTooRound, WishPart::Corner,
                       "Two corners share the shorter side, so their radius can be " + atMostWords(project, most) +
                           " at most.");
    }
    return std::nullopt;
}

// The places of the middle, along one direction, that leave a border of at least `border`.
std::optional<Refused> tooNear(const Project& project, double middle, double opening, double panel, double border,
                               WishPart part) {
    const double least = border + opening / 2;
    const double most = panel - least;
    if (middle >= least - kOnLimit && middle <= most + kOnLimit) return std::nullopt;
    return refused(NoWindow::TooNearEdge, part,
                   std::string("The middle can lie ") + atLeastWords(project, least) + " to " +
                       atMostWords(project, most) + " from the " + (part == WishPart::Across ? "left" : "bottom") +
                       " edge; else less than " + lengthWords(project, border) + " of panel is left at an edge.");
}

std::optional<Refused> offPanel(const Project& project, const Draft& draft) {
    const double border = limitsOf("border-thin", project).stop.value_or(0);
    const Panel& panel = project.panel;
    const bool tooWide = draft.opening.width + 2 * border > panel.width + kOnLimit;
    if (tooWide || draft.opening.height + 2 * border > panel.height + kOnLimit) {
        return refused(NoWindow::PanelTooSmall, tooWide ? WishPart::Width : WishPart::Height,
                       "The panel is too small for this window; the smallest good blank is " +
                           blankWords(project, draft.goodBlank) + ".");
    }
    if (auto no = tooNear(project, draft.centre.x, draft.opening.width, panel.width, border, WishPart::Across)) return no;
    return tooNear(project, draft.centre.y, draft.opening.height, panel.height, border, WishPart::Up);
}

struct WallToLay {
    bool level = false;
    double at = 0;         // x or y
    bool wasteAbove = false;  // to greater x or y
};

std::array<WallToLay, 4> wallsOf(const Box& box) {
    return {{{true, box.low.y, true}, {true, box.high.y, false}, {false, box.low.x, true}, {false, box.high.x, false}}};
}

bool liesAt(const SolvedLine& line, const WallToLay& wall) {
    const auto off = [&](Point place) { return std::abs((wall.level ? place.y : place.x) - wall.at); };
    return line.cut && off(line.from) < kDoubt && off(line.to) < kDoubt;
}

// The side of that wall's waste along a line that lies there.
Side wasteSide(const SolvedLine& line, const WallToLay& wall) {
    const Point left = leftOf(line.to - line.from);
    return ((wall.level ? left.y : left.x) > 0) == wall.wasteAbove ? Side::Left : Side::Right;
}

bool runsThrough(const SolvedLine& line, const Box& box) {
    const Point along = unit(line.to - line.from);
    double low = 0, high = 0;
    for (const Point corner : {box.low, Point{box.high.x, box.low.y}, box.high, Point{box.low.x, box.high.y}}) {
        const double off = cross(along, corner - line.from);
        low = std::min(low, off);
        high = std::max(high, off);
    }
    return line.cut && low < -kDoubt && high > kDoubt;
}

bool runsThrough(const WallToLay& wall, const std::vector<Point>& face) {
    const auto place = [&](Point corner) { return wall.level ? corner.y : corner.x; };
    const auto [low, high] = std::ranges::minmax(face, {}, place);
    return place(low) < wall.at - kDoubt && place(high) > wall.at + kDoubt;
}

std::optional<Refused> clash(const Solved& solved, const Draft& draft) {
    for (const SolvedLine& line : solved.lines) {
        if (runsThrough(line, draft.walls)) {
            return refused(NoWindow::RunsThrough, WishPart::Across,
                           "Line " + line.id + " would run through this window; place it clear of that line.");
        }
    }
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (isInside(cutout.drawn, draft.centre)) {
            return refused(NoWindow::RunsThrough, WishPart::Across,
                           "This window would lie in cutout " + cutout.id + "; place it beside that.");
        }
        for (const WallToLay& wall : wallsOf(draft.walls)) {
            for (const auto& face : cutout.faces) {
                if (!runsThrough(wall, face)) continue;
                return refused(NoWindow::RunsThrough, wall.level ? WishPart::Up : WishPart::Across,
                               "This window's lines would run through cutout " + cutout.id +
                                   "; place it clear of that, or level with it.");
            }
        }
    }
    for (const WallToLay& wall : wallsOf(draft.walls)) {
        for (const SolvedLine& line : solved.lines) {
            const auto isOther = [&](const Kerf& kerf) { return kerf.side != wasteSide(line, wall); };
            if (!liesAt(line, wall) || !std::ranges::any_of(line.kerfs, isOther)) continue;
            return refused(NoWindow::RunsThrough, wall.level ? WishPart::Up : WishPart::Across,
                           "Line " + line.id + " has its kerf on the other side; with one on both no wall is left. "
                           "Place the window a border further off.");
        }
    }
    return std::nullopt;
}

LineId layWall(Project& project, const Solved& solved, const WallToLay& wall, int highest) {
    const auto there = std::ranges::find_if(solved.lines, [&](const SolvedLine& line) { return liesAt(line, wall); });
    if (there != solved.lines.end()) return there->id;
    const Edge reference = project.panel.referenceEdge;
    const bool referenceIsLevel = reference == Edge::Bottom || reference == Edge::Top;
    const Edge from = referenceIsLevel == wall.level ? reference : squareEdge(project.panel);
    LayoutLine line;
    line.id = nextLineId(project, highest);
    line.place = ByOffset{from, onGrid(distanceFromEdge(project.panel, from, {wall.at, wall.at}))};
    project.lines.push_back(line);
    return line.id;
}

std::string freeCutoutId(const Project& project) {
    for (int number = 1;; ++number) {
        const std::string id = number == 1 ? "window" : "window" + std::to_string(number);
        if (std::ranges::none_of(project.cutouts, [&](const Cutout& cutout) { return cutout.id == id; })) return id;
    }
}

Cutout cutoutOf(const std::string& id, const WantedWindow& wish, const Draft& draft, const std::vector<LineId>& lines) {
    Cutout cutout;
    cutout.id = id;
    cutout.seeds = {{onGrid(draft.centre.x), onGrid(draft.centre.y)}};
    const Box& box = draft.edges;
    cutout.wanted = Wanted{{box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}}, wish.cornerRadius, {}};
    if (!draft.bore) return cutout;
    for (const auto& [first, second] : {std::pair(0, 2), std::pair(0, 3), std::pair(1, 3), std::pair(1, 2)}) {
        cutout.corners.push_back({lines[static_cast<std::size_t>(first)], lines[static_cast<std::size_t>(second)],
                                  onGrid(*draft.bore), {}});
    }
    return cutout;
}

// What solving the laid window doubts; none: it is as it should be.
std::optional<Refused> doubtOf(const Project& laid, const std::string& id, std::size_t troublesBefore) {
    const Solved solved = solve(laid);
    if (solved.troubles.size() > troublesBefore) {
        return refused(NoWindow::Unsure, WishPart::Across, "It cannot be laid here: " + solved.troubles.back().sentence);
    }
    const auto cutout = std::ranges::find(solved.cutouts, id, &SolvedCutout::id);
    if (cutout != solved.cutouts.end() && cutout->doubts.empty() && cutout->parts == 1 && !cutout->work.loops.empty()) {
        return std::nullopt;
    }
    const bool isTold = cutout != solved.cutouts.end() && !cutout->doubts.empty();
    return refused(NoWindow::Unsure, WishPart::Width,
                   isTold ? cutout->doubts.front().what : "What this window would become cannot be told.");
}

}  // namespace

double cornerLeft(const Project& project) {
    const UseAnswer use = useOf(project);
    return use.cutter / 2 + std::max(0.0, (trimBitOf(project).diameter - use.guide) / 2);
}

std::expected<LaidWindow, WindowRefusal> layWindow(const Project& project, const WantedWindow& wish, int highest) {
    assert(std::isfinite(wish.width) && std::isfinite(wish.height) && std::isfinite(wish.cornerRadius));
    assert(std::isfinite(wish.across.value_or(0)) && std::isfinite(wish.up.value_or(0)));
    const Draft draft = draftOf(project, wish);
    if (const auto no = tooNarrow(project, wish, draft)) return *no;
    if (const auto no = wrongCorner(project, wish, draft)) return *no;
    if (const auto no = offPanel(project, draft)) return *no;
    const Solved solved = solve(project);
    if (const auto no = clash(solved, draft)) return *no;

    LaidWindow laid{project, freeCutoutId(project), {}, draft.opening, draft.goodBlank, draft.bore, draft.cornerLeft};
    for (const WallToLay& wall : wallsOf(draft.walls)) {
        laid.lines.push_back(layWall(laid.project, solved, wall, highest));
    }
    laid.project.cutouts.push_back(cutoutOf(laid.cutout, wish, draft, laid.lines));
    if (const auto no = doubtOf(laid.project, laid.cutout, solved.troubles.size())) return *no;
    return laid;
}

}  // namespace kerfwall
