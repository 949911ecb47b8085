// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/geometry/border.h"
#include "core/geometry/curve.h"
#include "core/geometry/frame.h"
#include "core/geometry/kerf_layout.h"

namespace kerfwall {

/// What a stretch of the void's rim is.
struct VoidSide {
    enum class Kind {
        Wall,       ///< the cutout's own border on a line
        Mouth,      ///< a kerf's wall on its line, beyond the cutout's border
        FarSide,    ///< a kerf's inner wall
        KerfEnd,    ///< where a stopped kerf ends
        PanelEdge,  ///< seen from outside
        Bore,
        Frame,  ///< where what is looked at ends; not a thing in the shop
        World,  ///< the same, off the panel all round
    } kind = Kind::Wall;
    std::size_t line = 0;    ///< into Arranged::lines; kerf sides and walls
    std::size_t corner = 0;  ///< into Border::corners; bores
    Edge edge = Edge::Bottom;
    bool operator==(const VoidSide&) const = default;
};

/// True where two sides are one to a disc that rolls along them: the same, or a wall and the mouth that carries it on.
[[nodiscard]] inline bool isOneSide(const VoidSide& a, const VoidSide& b) {
    const auto isNear = [](const VoidSide& side) {
        return side.kind == VoidSide::Kind::Wall || side.kind == VoidSide::Kind::Mouth;
    };
    return a == b || (isNear(a) && isNear(b) && a.line == b.line);
}

/// The rim of the void one cutout's bearing rolls in, the void on the left. The tag of each curve is an
/// index into `sides`.
struct VoidRim {
    Rim rim;
    std::vector<VoidSide> sides;
    std::vector<Doubt> doubts;
};

/// The void before trimming, as the trimming bit's bearing meets it: the cutout's faces and bores, all kerfs (below
/// bored corners' kerfs: up to the bores' tangent points), and everything off the panel, inside `frame`.
[[nodiscard]] VoidRim voidRim(const Project& project, const Arranged& arranged, const ArrangedCutout& cutout,
                              const Border& border, const std::vector<LaidKerf>& kerfs, const Frame& frame);

}  // namespace kerfwall
