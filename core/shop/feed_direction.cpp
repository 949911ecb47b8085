// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/feed_direction.h"

namespace kerfwall {

namespace {

Turn mirrored(Turn turn) { return turn == Turn::Left ? Turn::Right : Turn::Left; }

}  // namespace

Turn feedFromAbove(Shape shape, Router router) {
    const Turn byHand = shape == Shape::Opening ? Turn::Right : Turn::Left;
    return router == Router::Hand ? byHand : mirrored(byHand);
}

Turn feedFromLayoutFace(Shape shape, Router router, bool faceUp) {
    const Turn above = feedFromAbove(shape, router);
    return faceUp ? above : mirrored(above);
}

std::pair<Point, Point> feedAlong(const Wall& wall, Router router, bool faceUp) {
    // Walls run anticlockwise round an opening.
    const bool withWall = feedFromLayoutFace(Shape::Opening, router, faceUp) == Turn::Left;
    return withWall ? std::pair(wall.from, wall.to) : std::pair(wall.to, wall.from);
}

}  // namespace kerfwall
