// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/placed_wish.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <vector>

#include "core/geometry/clip.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/solve.h"
#include "core/shop/finding.h"
#include "core/shop/limits.h"
#include "core/shop/wall_lines.h"

namespace kerfwall {
namespace {

using Laid = std::expected<LaidWish, WishRefusal>;
using From = PlaceAlong::From;

// Over all in the work; of legs over both.
Blank sizeOf(const Wish& wish) {
    if (const auto* window = std::get_if<WantedWindow>(&wish)) return {window->width, window->height};
    if (const auto* legs = std::get_if<WantedLegs>(&wish)) return {legs->span, legs->height};
    const auto& corners = std::get<WantedPolygon>(wish).corners;
    if (corners.empty()) return {};
    const Box box = boundsOf(corners);
    return {box.high.x - box.low.x, box.high.y - box.low.y};
}

bool areLegs(const Wish& wish) { return std::holds_alternative<WantedLegs>(wish); }

// The middle from that edge's zero, between two edges.
double middleBetween(const PlaceAlong& place, double low, double high, double size) {
    switch (place.from) {
        case From::Suited:
        case From::Centred: return (low + high) / 2;
        case From::Middle: return low + place.distance;
        case From::LowSide: return low + place.distance + size / 2;
        case From::HighSide: return high - place.distance - size / 2;
    }
    return low;
}

// The wish with its middle there. `up` of legs: their feet.
Wish at(const Wish& wish, double across, double up) {
    Wish placed = wish;
    std::visit([across](auto& shape) { shape.across = across; }, placed);
    if (auto* window = std::get_if<WantedWindow>(&placed)) window->up = up;
    if (auto* legs = std::get_if<WantedLegs>(&placed)) legs->foot = up;
    if (auto* polygon = std::get_if<WantedPolygon>(&placed)) polygon->up = up;
    return placed;
}

Wish inBox(const Project& project, const Wish& wish, const WishPlace& place, const Box& box) {
    const Blank size = sizeOf(wish);
    const double across = middleBetween(place.across, box.low.x, box.high.x, size.width);
    if (!areLegs(wish)) return at(wish, across, middleBetween(place.up, box.low.y, box.high.y, size.height));
    if (place.onWork) return at(wish, across, box.low.y);
    return at(wish, across, place.up.from == From::LowSide ? place.up.distance : footAbove(project));
}

// How many findings there are of clamp holes, and of thin borders.
std::ptrdiff_t inTheWay(const Project& project) {
    const auto isOne = [](const Finding& finding) {
        return finding.severity != Severity::Note && (finding.hole || finding.code == "border-thin");
    };
    return std::ranges::count_if(findings(project, solve(project)), isOne);
}

bool isToBeMoved(const Laid& laid, const Project& project, std::ptrdiff_t before) {
    if (!laid) return laid.error().why == NoWish::RunsThrough || laid.error().why == NoWish::Unsure;
    return !project.clampHoles.empty() && inTheWay(laid->project) > before;
}

double stepOver(double room) { return std::max(1.0, std::ceil(room / kPlaceSteps / kPlaceStep)) * kPlaceStep; }

// How far the middle can go from the panel's middle with a good border, each way.
Point roomOf(const Project& project, const Wish& wish) {
    const Blank size = sizeOf(wish);
    const double border = limitsOf("border-thin", project).care.value_or(0) + wallOffset(project);
    return {project.panel.width / 2 - size.width / 2 - border, project.panel.height / 2 - size.height / 2 - border};
}

struct Search {
    const Project& project;
    const Wish& wish;  // placed where it is tried first
    const WishPlace& place;
    int highest;
};

Point middleOf(const Wish& wish) {
    if (const auto* window = std::get_if<WantedWindow>(&wish)) return {window->across.value_or(0), window->up.value_or(0)};
    if (const auto* legs = std::get_if<WantedLegs>(&wish)) return {legs->across.value_or(0), legs->foot.value_or(0)};
    const auto& polygon = std::get<WantedPolygon>(wish);
    return {polygon.across.value_or(0), polygon.up.value_or(0)};
}

// The places to try, nearest first.
std::vector<Point> placesNear(const Search& search) {
    const Point first = middleOf(search.wish);
    const Point room = roomOf(search.project, search.wish);
    const Panel& panel = search.project.panel;
    std::vector<Point> places;
    for (int i = 1; i <= kPlaceSteps; ++i) {
        for (const int way : {1, -1}) {
            const double x = first.x + way * i * stepOver(room.x);
            const double y = first.y + way * i * stepOver(room.y);
            if (search.place.across.from == From::Suited && std::abs(x - panel.width / 2) <= room.x) places.push_back({x, first.y});
            const bool isFree = search.place.up.from == From::Suited && !areLegs(search.wish);
            if (isFree && std::abs(y - panel.height / 2) <= room.y) places.push_back({first.x, y});
        }
    }
    std::ranges::stable_sort(places, {}, [&](Point place) { return distance(place, first); });
    return places;
}

Laid suited(const Search& search) {
    Laid first = layWish(search.project, search.wish, search.highest);
    const std::ptrdiff_t before = inTheWay(search.project);
    if (!isToBeMoved(first, search.project, before)) return first;
    for (const Point place : placesNear(search)) {
        Laid laid = layWish(search.project, at(search.wish, place.x, place.y), search.highest);
        if (laid && inTheWay(laid->project) <= before) return laid;
    }
    return first;
}

// A polygon lies as its corners say where it can.
std::optional<Laid> asGiven(const Search& search) {
    const bool isFree = search.place.across.from == From::Suited && search.place.up.from == From::Suited;
    if (!isFree || !std::holds_alternative<WantedPolygon>(search.wish)) return std::nullopt;
    Laid laid = layWish(search.project, search.wish, search.highest);
    if (isToBeMoved(laid, search.project, inTheWay(search.project))) return std::nullopt;
    const bool isOff = !laid && (laid.error().why == NoWish::TooNearEdge || laid.error().why == NoWish::PanelTooSmall);
    return isOff ? std::nullopt : std::optional(std::move(laid));
}

// The edges of work of `size` between which an opening from low to high lies in that place.
double workLow(const PlaceAlong& place, double low, double high, double size) {
    switch (place.from) {
        case From::Suited:
        case From::Centred: return (low + high - size) / 2;
        case From::Middle: return (low + high) / 2 - place.distance;
        case From::LowSide: return low - place.distance;
        case From::HighSide: return high + place.distance - size;
    }
    return low;
}

// The work, put round the opening laid on the panel.
Workpiece workRound(const LaidWish& laid, const Wish& wish, const WishPlace& place) {
    const Box opening = boundsOf(laid.project.cutouts.back().wanted->outline);
    const Point middle = 0.5 * (opening.low + opening.high);
    const double half = sizeOf(wish).width / 2;
    const double x = workLow(place.across, middle.x - half, middle.x + half, place.work->width);
    const double y = areLegs(wish) ? opening.high.y - sizeOf(wish).height
                                   : workLow(place.up, opening.low.y, opening.high.y, place.work->height);
    const Point far{x + place.work->width, y + place.work->height};
    Workpiece work = laid.project.workpiece.value_or(Workpiece{});
    work.outline = {{x, y}, {far.x, y}, far, {x, far.y}};
    return work;
}

// How far the work's nearest side lies from that edge of the panel.
double workFrom(const Panel& panel, Edge edge, const Box& work) {
    return distanceFromEdge(panel, edge, edge == Edge::Bottom || edge == Edge::Left ? work.low : work.high);
}

// Fences between the panel's edges and the work go to where it touches them now, if that is on the panel.
void putFencesTo(Project& project, const Box& work) {
    for (Fence& fence : project.fences) {
        const auto* edge = std::get_if<Edge>(&fence.along);
        if (!edge || fence.body != Side::Right || workFrom(project.panel, *edge, work) < 0) continue;
        fence.offset = onGrid(workFrom(project.panel, *edge, work));
    }
}

void putWorkRound(LaidWish& laid, const Wish& wish, const WishPlace& place) {
    laid.project.workpiece = workRound(laid, wish, place);
    putFencesTo(laid.project, *workBounds(laid.project));
}

}  // namespace

std::expected<LaidWish, WishRefusal> layPlaced(const Project& project, const Wish& wish, const WishPlace& place, int highest) {
    const auto work = workBounds(project);
    assert(!place.onWork || work || place.work);
    if (place.onWork && work) return layWish(project, inBox(project, wish, place, *work), highest);
    WishPlace onPanel = place;
    if (place.onWork) onPanel = WishPlace{};
    if (auto laid = asGiven({project, wish, onPanel, highest})) {
        if (place.onWork && *laid) putWorkRound(**laid, wish, place);
        return *laid;
    }
    const Box panel{{0, 0}, {project.panel.width, project.panel.height}};
    Laid laid = suited({project, inBox(project, wish, onPanel, panel), onPanel, highest});
    if (place.onWork && laid) putWorkRound(*laid, wish, place);
    return laid;
}

}  // namespace kerfwall
