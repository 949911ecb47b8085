// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/mirrored.h"

namespace kerfwall {
namespace {

struct Mirror {
    double width = 0;

    [[nodiscard]] Point put(Point place) const { return {width - place.x, place.y}; }

    [[nodiscard]] Mark operator()(Area mark) const {
        for (OutlineLoop& loop : mark.loops) {
            for (OutlinePiece& piece : loop) {
                piece.from = put(piece.from);
                piece.to = put(piece.to);
                if (!piece.isArc) continue;
                piece.centre = put(piece.centre);
                piece.turn = piece.turn == Turn::Left ? Turn::Right : Turn::Left;
            }
        }
        return mark;
    }
    [[nodiscard]] Mark operator()(Stroke mark) const {
        mark.from = put(mark.from);
        mark.to = put(mark.to);
        return mark;
    }
    [[nodiscard]] Mark operator()(Circle mark) const {
        mark.centre = put(mark.centre);
        return mark;
    }
    [[nodiscard]] Mark operator()(Dimension mark) const {
        mark.from = put(mark.from);
        mark.to = put(mark.to);
        mark.offset = -mark.offset;
        return mark;
    }
    [[nodiscard]] Mark operator()(Label mark) const {
        mark.at = put(mark.at);
        if (mark.turn == 90) {  // still read from the right: its foot stays on the same side
            mark.at.x += mark.height * kCapHeight;
        } else {
            mark.turn = -mark.turn;
        }
        if (mark.anchor != Anchor::Middle && mark.turn != 90) {
            mark.anchor = mark.anchor == Anchor::Left ? Anchor::Right : Anchor::Left;
        }
        return mark;
    }

    static constexpr double kCapHeight = 0.75;  // of a text's height
};

}  // namespace

Drawing mirrored(const Drawing& drawing, double width) {
    const Mirror mirror{width};
    Drawing turned;
    turned.bounds = {{width - drawing.bounds.high.x, drawing.bounds.low.y}, {width - drawing.bounds.low.x, drawing.bounds.high.y}};
    for (const Mark& mark : drawing.marks) turned.marks.push_back(std::visit(mirror, mark));
    return turned;
}

}  // namespace kerfwall
