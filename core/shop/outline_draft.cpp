// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/outline_draft.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <iterator>

#include "core/geometry/clip.h"
#include "core/geometry/angle.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/tolerance.h"
#include "core/geometry/use_of.h"
#include "core/geometry/wanted_sides.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"
#include "core/shop/wall_lines.h"

namespace kerfwall {
namespace {

using Refused = std::unexpected<WishRefusal>;

Refused refused(NoWish why, WishPart part, std::string sentence) {
    return Refused(WishRefusal{why, part, std::move(sentence), std::nullopt});
}

// Where the walls cross the panel's bottom edge.
std::vector<Point> mouthPlaces(const std::vector<Point>& walls) {
    std::vector<Point> crossings;
    for (std::size_t i = 0; i < walls.size(); ++i) {
        const Point p = walls[i];
        const Point q = walls[(i + 1) % walls.size()];
        if ((p.y < 0) != (q.y < 0)) crossings.push_back({p.x + p.y / (p.y - q.y) * (q.x - p.x), 0});
    }
    return crossings;
}

// Of an opening that runs out over the bottom edge, as far as it lies on the panel.
std::vector<Point> abovePanelsEdge(const std::vector<Point>& walls) {
    std::vector<Point> places = mouthPlaces(walls);
    std::ranges::copy_if(walls, std::back_inserter(places), [](Point corner) { return corner.y >= 0; });
    return places;
}

std::optional<Refused> cornerTooSharp(const OutlineDraft& draft) {
    if (draft.wish.cornerRadius >= draft.cornerLeft - kSameRadius) return std::nullopt;
    const bool byCutter = draft.use.guide / 2 >= draft.trimRadius;
    const double radius = draft.wish.cornerRadius;
    const double bit = 2 * (byCutter ? radius : radius + draft.offset);
    const std::string other = bit <= 0 ? "square it by hand"
                                       : std::string("take ") + (byCutter ? "a bit of " : "a trimming bit of ") +
                                             atMostWords(draft.project, bit) + " or less";
    return refused(NoWish::CornerTooSharp, WishPart::Corner,
                   "These tools leave a corner radius of " + lengthWords(draft.project, draft.cornerLeft) +
                       " in the work; ask for that or more, or " + other + ".");
}

std::string sideBegins(const OutlineDraft& draft, std::size_t side) {
    std::string words = draft.wish.sideName(side);
    words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
    return words;
}

// What moving the walls out takes of a side between two inward corners.
std::optional<Refused> sideTooShort(const OutlineDraft& draft) {
    const auto side = turnedSide(draft.wish.corners, draft.walls);
    if (!side) return std::nullopt;
    const std::size_t next = (*side + 1) % draft.walls.size();
    const Point along = unit(draft.wish.corners[next] - draft.wish.corners[*side]);
    const double is = distance(draft.wish.corners[*side], draft.wish.corners[next]);
    const double left = dot(along, draft.walls[next] - draft.walls[*side]);
    return refused(NoWish::TooNarrow, draft.wish.narrowPart,
                   sideBegins(draft, *side) + " is " + lengthWords(draft.project, is) +
                       " long; with these tools it must be more than " + lengthWords(draft.project, is - left) +
                       ", for its wall in the template is shorter by that.");
}

std::optional<Refused> cornersTooRound(const OutlineDraft& draft) {
    const auto& corners = draft.wish.corners;
    const double left = std::max(cornerLeft(draft.project), draft.trimRadius - draft.offset);
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const std::size_t next = (i + 1) % corners.size();
        const double share = shareOfArc(draft, i) + shareOfArc(draft, next);
        const double is = distance(corners[i], corners[next]);
        if (share == 0) continue;
        if (is <= share * left + kDoubt && !(draft.bore && is >= share * left - kDoubt)) {
            return refused(NoWish::TooNarrow, draft.wish.narrowPart,
                           sideBegins(draft, i) + " is " + lengthWords(draft.project, is) +
                               " long; it must be more than " + lengthWords(draft.project, share * left) +
                               ", for the corners these tools leave take up as much. A thinner bit takes up less.");
        }
        if (draft.bore && draft.wish.cornerRadius * share > is + kDoubt) {
            return refused(NoWish::CornerTooRound, WishPart::Corner,
                           sideBegins(draft, i) + " is " + lengthWords(draft.project, is) +
                               " long; its corners' radius can be " + atMostWords(draft.project, is / share) + " at most.");
        }
    }
    return std::nullopt;
}

// How wide the template opens on the panel's bottom edge.
double mouthOf(const OutlineDraft& draft) {
    const auto [left, right] = std::ranges::minmax(mouthPlaces(draft.walls), {}, &Point::x);
    return right.x - left.x;
}

std::optional<Refused> neckTooNarrow(const OutlineDraft& draft) {
    const double needed = std::max(2 * draft.trimRadius, draft.use.guide);
    const std::string tool = needed > draft.use.guide       ? "the trimming bit"
                             : draft.project.use.byBush ? "the bush"
                                                        : "the bearing";
    const auto tooNarrow = [&](const std::string& where, double width) {
        return refused(NoWish::TooNarrow, draft.wish.narrowPart,
                       where + " the template opens by " + lengthWords(draft.project, width) + "; " + tool +
                           " needs more than " + lengthWords(draft.project, needed) + " to pass.");
    };
    if (draft.wish.isOpenBelow && mouthOf(draft) <= needed + kDoubt) return tooNarrow("On the panel's edge", mouthOf(draft));
    const auto neck = narrowestNeck(draft.walls);
    if (!neck || neck->width > needed + kDoubt) return std::nullopt;
    return tooNarrow("Between " + draft.wish.sideName(neck->first) + " and " + draft.wish.sideName(neck->second), neck->width);
}

// The places of the middle, along one direction, that leave a border of at least `border`.
std::optional<Refused> tooNear(const Project& project, double middle, double opening, double panel, double border,
                               WishPart part) {
    const double least = border + opening / 2;
    const double most = panel - least;
    if (middle >= least - kOnLimit && middle <= most + kOnLimit) return std::nullopt;
    return refused(NoWish::TooNearEdge, part,
                   std::string("The middle can lie ") + atLeastWords(project, least) + " to " +
                       atMostWords(project, most) + " from the " + (part == WishPart::Across ? "left" : "bottom") +
                       " edge; else less than " + lengthWords(project, border) + " of panel is left at an edge.");
}

std::optional<Refused> offPanel(const OutlineDraft& draft) {
    const Project& project = draft.project;
    const double border = limitsOf("border-thin", project).stop.value_or(0);
    const Panel& panel = project.panel;
    const bool tooWide = draft.opening.width + 2 * border > panel.width + kOnLimit;
    const double high = draft.opening.height + (draft.wish.isOpenBelow ? 1 : 2) * border;
    if (tooWide || high > panel.height + kOnLimit) {
        auto no = refused(NoWish::PanelTooSmall, tooWide ? WishPart::Width : WishPart::Height,
                       "The panel is too small for this " + draft.wish.name + "; the smallest good blank is " +
                           atLeastWords(project, draft.goodBlank.width) + " by " +
                           atLeastWords(project, draft.goodBlank.height) + ".");
        no.error().goodBlank = draft.goodBlank;
        return no;
    }
    const Point middle = 0.5 * (draft.bounds.low + draft.bounds.high);
    if (auto no = tooNear(project, middle.x, draft.opening.width, panel.width, border, WishPart::Across)) return no;
    if (draft.wish.isOpenBelow) return std::nullopt;
    return tooNear(project, middle.y, draft.opening.height, panel.height, border, WishPart::Up);
}

}  // namespace

OutlineDraft draftOf(const Project& project, const WantedOutline& wish) {
    OutlineDraft draft{.project = project, .wish = wish, .use = useOf(project), .walls = {}, .bounds = {}, .bore = {}, .opening = {}, .goodBlank = {}};
    draft.offset = wallOffset(project);
    draft.trimRadius = trimBitOf(project).diameter / 2;
    for (const Point corner : movedOut(wish.corners, draft.offset)) draft.walls.push_back(onGrid(corner));
    draft.bounds = boundsOf(wish.isOpenBelow ? abovePanelsEdge(draft.walls) : draft.walls);
    draft.cornerLeft = cornerLeft(project);
    if (wish.cornerRadius > draft.cornerLeft + kSameRadius) {
        draft.bore = wish.cornerRadius + draft.offset;
        draft.cornerLeft = wish.cornerRadius;
    }
    const double border = limitsOf("border-thin", project).care.value_or(0);
    draft.opening = {onGrid(draft.bounds.high.x - draft.bounds.low.x), onGrid(draft.bounds.high.y - draft.bounds.low.y)};
    draft.goodBlank = {draft.opening.width + 2 * border, draft.opening.height + (wish.isOpenBelow ? 1 : 2) * border};
    return draft;
}

double shareOfArc(const OutlineDraft& draft, std::size_t corner) {
    const double angle = angleAt(draft.wish.corners, corner);
    if (angle >= 180 || !liesOnPanel(draft.project.panel, draft.walls[corner])) return 0;
    return 1 / std::tan(radians(angle / 2));
}

std::optional<WishRefusal> cannotBeCut(const OutlineDraft& draft) {
    for (const auto check : {sideTooShort, cornerTooSharp, cornersTooRound, neckTooNarrow, offPanel}) {
        if (auto no = check(draft)) return no->error();
    }
    return std::nullopt;
}

}  // namespace kerfwall
