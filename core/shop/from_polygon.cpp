// SPDX-License-Identifier: GPL-3.0-or-later
// A polygon by its corners; declared in from_wanted.h.
#include <algorithm>
#include <cassert>
#include <cmath>

#include "core/geometry/clip.h"
#include "core/geometry/tolerance.h"
#include "core/geometry/wanted_sides.h"
#include "core/shop/finding_words.h"
#include "core/shop/from_wanted.h"

namespace kerfwall {
namespace {

// A corner and its number as the maker counts, from 1.
struct Numbered {
    Point place;
    std::size_t number = 0;
};

std::unexpected<WishRefusal> noShape(std::string sentence) {
    return std::unexpected(WishRefusal{NoWish::NoShape, WishPart::Corners, std::move(sentence), std::nullopt});
}

std::vector<Point> placesOf(const std::vector<Numbered>& corners) {
    std::vector<Point> places;
    for (const Numbered& corner : corners) places.push_back(corner.place);
    return places;
}

// True where the corner lies on the straight way from its neighbours to one another, or on one of them.
bool isNoCorner(Point before, Point here, Point after) {
    if (distance(before, here) < kDoubt || distance(here, after) < kDoubt) return true;
    const Point in = unit(here - before);
    const Point out = unit(after - here);
    return std::abs(cross(in, out)) < kNearlyParallel && dot(in, out) > 0;
}

std::vector<Numbered> realCorners(const std::vector<Point>& given) {
    std::vector<Numbered> corners;
    for (std::size_t i = 0; i < given.size(); ++i) corners.push_back({given[i], i + 1});
    for (std::size_t i = 0; corners.size() > 2 && i < corners.size();) {
        const std::size_t n = corners.size();
        const bool goes = isNoCorner(corners[(i + n - 1) % n].place, corners[i].place, corners[(i + 1) % n].place);
        if (!goes) ++i;
        else corners.erase(corners.begin() + static_cast<std::ptrdiff_t>(i));
    }
    return corners;
}

std::string sideWords(const std::vector<Numbered>& corners, std::size_t side) {
    std::size_t from = corners[side].number;
    std::size_t to = corners[(side + 1) % corners.size()].number;
    if (from > to && !(side + 1 == corners.size())) std::swap(from, to);
    return "the side from corner " + std::to_string(from) + " to " + std::to_string(to);
}

}  // namespace

std::expected<LaidWish, WishRefusal> layPolygon(const Project& project, const WantedPolygon& wish, int highest) {
    assert(std::ranges::all_of(wish.corners, [](Point p) { return std::isfinite(p.x) && std::isfinite(p.y); }));
    std::vector<Numbered> corners = realCorners(wish.corners);
    if (corners.size() < 3) {
        return noShape("An opening has at least 3 corners that are not in line; here are " + std::to_string(wish.corners.size()) + ".");
    }
    if (const auto crossed = crossingSides(placesOf(corners))) {
        return noShape("Here " + sideWords(corners, crossed->first) + " meets " + sideWords(corners, crossed->second) +
                       "; give the corners in the order they follow one another round the opening.");
    }
    if (polygonArea(placesOf(corners)) < 0) std::ranges::reverse(corners);
    WantedOutline outline;
    outline.corners = placesOf(corners);
    outline.cornerRadius = wish.cornerRadius;
    outline.sideName = [corners](std::size_t side) { return sideWords(corners, side); };
    const Box box = boundsOf(outline.corners);
    const Point middle{(box.low.x + box.high.x) / 2, (box.low.y + box.high.y) / 2};
    const Point shift{wish.across ? *wish.across - middle.x : 0, wish.up ? *wish.up - middle.y : 0};
    for (Point& corner : outline.corners) corner = corner + shift;
    return layOutline(project, outline, highest);
}

}  // namespace kerfwall
