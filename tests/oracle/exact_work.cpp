// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/exact_work.h"

#include "tests/oracle/exact_sets.h"

namespace kerfwall::oracle {
namespace {

constexpr double kOverlap = 1e-11;  // mm: more than the films that rounded unit normals leave; where arcs touch, 1e-9
                                    // moves the work by its square root and the area by 1e-3 mm²
constexpr double kInside = 1e-8;   // mm inside the panel's edge at which the work is cut off: more than that

// Where a disc's centre can be off the wood.
ExactSet roomBeside(const PlainLayout& layout, const ExactSet& wood, double radius, double margin) {
    ExactSet room = exactBox({-margin, -margin}, {layout.width + margin, layout.height + margin});
    room.difference(exactGrown(wood, radius));
    return room;
}

}  // namespace

WorkAnswer exactWork(const WorkQuestion& question) {
    const PlainLayout& layout = *question.layout;
    const PlainCutout& cutout = layout.cutouts[question.cutout];
    const ExactSet drawn = exactFaces(cutout);
    const double bit = layout.bitRadius;
    const double margin = 4 * (bit + question.guide + question.cutter) + 10;

    const ExactSet bitRoom =
        exactPartsOver(roomBeside(layout, exactWood(layout, cutout), bit, margin), drawn);
    ExactSet wood = exactBox({0, 0}, {layout.width, layout.height});
    wood.difference(exactGrown(bitRoom, bit + kOverlap));
    wood.difference(exactBands(question.kerfs));
    wood.difference(exactDiscs(cutout.rounds));

    WorkAnswer answer;
    const ExactSet room =
        exactPartsOver(roomBeside(layout, wood, question.guide, margin), drawn, &answer.parts);
    if (answer.parts == 0) return answer;
    ExactSet work = exactGrown(room, question.cutter);
    work.intersection(exactBox({kInside, kInside}, {layout.width - kInside, layout.height - kInside}));
    answer.area = exactArea(exactPartsOver(work, drawn, &answer.pieces));
    return answer;
}

}  // namespace kerfwall::oracle
