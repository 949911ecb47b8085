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

}  // namespace kerfwall
