// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/hostile_layouts.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/solve.h"
#include "tests/oracle/hostile_draft.h"

namespace kerfwall::oracle {
namespace {

void drawNearParallel(HostileDraft& draft) {
    Dice& dice = draft.dice();
    const Point c = draft.centre();
    const double turn = dice.chance(30) ? 0 : dice.between(0, 179);
    const Point along = headingOf(turn);
    const double bit = draft.project.bench->trimBit->diameter;
    for (int pairs = dice.between(1, 2); pairs > 0; --pairs) {
        const double gaps[] = {0, 0.1, 0.5, 3, bit, 14};
        const double half = dice.one(gaps) / 2;
        const Point off = half * leftOf(along);
        draft.layPoints(c + off, c + off + 300.0 * along + draft.nudge() * leftOf(along));
        draft.layPoints(c - off + draft.maybeNudge() * leftOf(along), c - off + 300.0 * along);
    }
    draft.ring(c, dice.between(3, 5), 10, 35);
    draft.mark(c + Point{0.013, 0.007}, dice.between(1, 4));
}

void drawNearCrossing(HostileDraft& draft) {
    Dice& dice = draft.dice();
    const Point c = draft.centre();
    draft.ring(c, dice.between(3, 6), 12, 35);
    for (int more = dice.between(1, 3); more > 0; --more) {
        const std::vector<Point> face = facePolygon(draft.project, c + Point{0.011, 0.003});
        if (face.empty()) break;
        const Point corner = face[static_cast<std::size_t>(dice.between(0, static_cast<int>(face.size()) - 1))];
        draft.lay(corner + Point{draft.nudge(), draft.nudge()}, dice.between(0, 359) / 2.0);
    }
    draft.mark(c + Point{0.013, 0.007}, dice.between(1, 4));
}

void drawConcurrent(HostileDraft& draft) {
    Dice& dice = draft.dice();
    const Point c = draft.centre();
    const Point p{c.x, dice.chance(50) ? draft.project.panel.height / 2 : c.y};
    for (int i = dice.between(3, 6); i > 0; --i) {
        const double angle = dice.between(1, 359) / 2.0;
        switch (dice.between(0, 3)) {
            case 0: draft.layPlace(ByAngle{Edge::Bottom, angle, p}); break;
            case 1: draft.layPoints(p, {p.x + dice.between(1, 90), p.y + dice.between(-90, 90)}); break;
            case 2: draft.lay(p, angle); break;
            default:
                draft.layPlace(ByAngle{Edge::Bottom, angle, p});
                draft.layPlace(ByMirror{draft.project.lines.back().id, Centre::Level});
        }
    }
    draft.ring(p, dice.between(3, 5), 12, 35);
    draft.mark(p + 3.0 * headingOf(dice.between(0, 359)), dice.between(1, 5));
    if (dice.chance(40)) draft.mark(p + 3.0 * headingOf(dice.between(0, 359)), dice.between(1, 2));
}

void drawSliver(HostileDraft& draft) {
    Dice& dice = draft.dice();
    const Point c = draft.centre();
    draft.ring(c, dice.between(3, 5), 12, 35);
    const double turn = dice.between(0, 359);
    for (int i = dice.between(1, 3); i > 0; --i) {
        const double thin = dice.chance(60) ? std::abs(draft.nudge()) : dice.tenths(0.1, 0.5);
        const Point at = c + dice.tenths(-6, 6) * leftOf(headingOf(turn));
        draft.lay(at, turn);
        draft.lay(at + thin * leftOf(headingOf(turn)), turn + (dice.chance(50) ? 0 : draft.nudge()));
        if (dice.chance(50)) draft.mark(at + (thin / 2) * leftOf(headingOf(turn)), dice.between(1, 4));
    }
    draft.mark(c + Point{0.013, 0.007}, dice.between(1, 5));
}

void drawWideKerf(HostileDraft& draft) {
    Dice& dice = draft.dice();
    draft.setKerfs(5, 10);
    if (dice.chance(70)) draft.setBit(dice.tenths(2, 11));
    const Point c = draft.centre();
    draft.ring(c, dice.between(3, 6), 0.5, 15);
    for (int i = dice.between(0, 3); i > 0; --i) draft.lay(draft.centre(), dice.between(0, 179));
    draft.mark(c + Point{0.013, 0.007}, dice.between(1, 3));
    if (dice.chance(50)) draft.mark(draft.centre(), 1);
}

void drawLargeBit(HostileDraft& draft) {
    Dice& dice = draft.dice();
    draft.setBit(dice.tenths(20, 60));
    const Point c = draft.centre();
    draft.ring(c, dice.between(3, 6), 2, 30);
    for (int i = dice.between(0, 3); i > 0; --i) draft.lay(draft.centre(), dice.between(0, 179));
    draft.mark(c + Point{0.013, 0.007}, dice.between(1, 4));
}

void drawExactNeck(HostileDraft& draft) {
    Dice& dice = draft.dice();
    const double bit = draft.project.bench->trimBit->diameter;
    const Point c = draft.centre();
    const double turn = dice.chance(50) ? 0 : dice.between(0, 359) / 2.0;
    const Point along = headingOf(turn);
    const double gap = bit + draft.maybeNudge();
    // A slot across a wider opening: the neck is where only the slot's face is marked.
    draft.lay(c + (gap / 2) * leftOf(along), turn);
    draft.lay(c - (gap / 2) * leftOf(along), turn + (dice.chance(80) ? 0 : draft.nudge()));
    for (const double far : {8.0, 30.0}) {
        draft.lay(c + (far + dice.tenths(0, 6)) * along, turn + 90 + (dice.chance(60) ? 0 : dice.between(-20, 20)));
        draft.lay(c - (far + dice.tenths(0, 6)) * along, turn + 90 + (dice.chance(60) ? 0 : dice.between(-20, 20)));
    }
    draft.lay(c + dice.tenths(14, 30) * leftOf(along), turn);
    draft.lay(c - dice.tenths(14, 30) * leftOf(along), turn);
    draft.mark(c, dice.between(1, 7));
}

void drawOverlap(HostileDraft& draft) {
    Dice& dice = draft.dice();
    const Point c = draft.centre();
    const double turn = dice.chance(60) ? 0 : dice.between(0, 359) / 2.0;
    const Point along = headingOf(turn);
    double off = -12;
    for (int i = dice.between(3, 6); i > 0; --i) {
        draft.lay(c + off * leftOf(along), turn);
        const double kerf = draft.kerf();
        const double steps[] = {kerf, kerf / 2, 2 * kerf, 12};
        off += dice.one(steps) + (dice.chance(50) ? 0 : draft.nudge());
    }
    for (int i = dice.between(2, 4); i > 0; --i) {
        draft.lay(c + dice.tenths(-30, 30) * along, turn + 90 + (dice.chance(60) ? 0 : dice.between(-30, 30)));
    }
    for (int i = dice.between(1, 3); i > 0; --i) {
        draft.mark(c + Point{dice.tenths(-15, 15), dice.tenths(-12, 12)} + Point{0.013, 0.007}, dice.between(1, 2));
    }
}

void drawAtTheEdge(HostileDraft& draft) {
    Dice& dice = draft.dice();
    const Panel& panel = draft.project.panel;
    for (int i = dice.between(2, 5); i > 0; --i) {
        const Edge edges[] = {Edge::Bottom, Edge::Right, Edge::Top, Edge::Left};
        const Edge edge = dice.one(edges);
        const double from[] = {draft.kerf(), 6, 20, std::abs(draft.nudge())};
        const double off = dice.chance(4) ? 0 : dice.one(from) + (dice.chance(50) ? 0 : std::abs(draft.nudge()));
        if (dice.chance(60)) {
            draft.layPlace(ByOffset{edge, off});
        } else {
            const Point corners[] = {{0, 0}, {panel.width, 0}, {panel.width, panel.height}, {0, panel.height}};
            const int corner = dice.between(0, 3);
            draft.lay(corners[corner] + Point{draft.maybeNudge(), draft.maybeNudge()}, 90 * corner + dice.between(1, 89));
        }
    }
    const Point places[] = {{8.013, 8.007}, {panel.width / 2, 3.1}, {panel.width - 8.013, panel.height / 2},
                            {panel.width / 2, panel.height / 2}};
    const Point at = dice.one(places);
    draft.ring(at, dice.between(2, 5), 8, 30);
    draft.mark(at + Point{0.013, 0.007}, dice.between(1, 4));
}

void drawNearCorners(HostileDraft& draft) {
    Dice& dice = draft.dice();
    const Point c = draft.centre();
    const double apart[] = {0, draft.nudge(), 0.5, 3, draft.project.panel.thickness};
    const double turn = dice.chance(50) ? 0 : dice.between(0, 89);
    const Point along = headingOf(turn);
    const Point across = leftOf(along);
    const Point corner = c + dice.one(apart) * along + dice.one(apart) * across;
    draft.lay(c, turn + (dice.chance(60) ? 0 : dice.between(-20, 20)));
    draft.lay(c, turn + 90 + (dice.chance(60) ? 0 : dice.between(-20, 20)));
    if (distance(corner, c) > 0) {
        draft.lay(corner, turn);
        draft.lay(corner, turn + 90);
    }
    draft.ring(c, 4, 30, 45);
    draft.mark(corner + 4.0 * (along + across), dice.between(1, 2));
    draft.mark(c - 4.0 * (along + across), dice.between(1, 2));
    if (dice.chance(30)) draft.mark(c + 9.0 * (along - across), 1);
}

void drawCrowd(HostileDraft& draft) {
    Dice& dice = draft.dice();
    const Point c = draft.centre();
    draft.ring(c, dice.between(4, 8), 15, 45);
    const Panel& panel = draft.project.panel;
    for (int i = dice.between(14, 22); i > 0; --i) {
        draft.lay({dice.tenths(20, panel.width - 20), dice.tenths(20, panel.height - 20)}, dice.between(0, 359) / 2.0);
    }
    draft.mark(c + Point{0.013, 0.007}, dice.between(1, 8));
    if (dice.chance(30)) draft.mark(draft.centre() + Point{0.013, 0.007}, dice.between(1, 3));
}

void drawManyCutouts(HostileDraft& draft) {
    Dice& dice = draft.dice();
    const int columns = dice.between(2, 3);
    const int rows = 2;
    const Panel& panel = draft.project.panel;
    const Point cell{std::floor(panel.width / columns), std::floor(panel.height / rows)};
    std::vector<Point> seeds;
    for (int i = 0; i < columns; ++i) {
        for (int j = 0; j < rows; ++j) seeds.push_back({cell.x * (i + 0.5), cell.y * (j + 0.5)});
    }
    for (int i = 0; i < columns; ++i) {
        draft.lay({cell.x * (i + 0.5) - dice.tenths(6, 20), panel.height / 2}, 90 + (dice.chance(70) ? 0 : draft.nudge()));
        draft.lay({cell.x * (i + 0.5) + dice.tenths(6, 20), panel.height / 2}, 90);
    }
    for (int j = 0; j < rows; ++j) {
        draft.lay({panel.width / 2, cell.y * (j + 0.5) - dice.tenths(6, 20)}, dice.chance(70) ? 0 : dice.between(0, 4) / 2.0);
        draft.lay({panel.width / 2, cell.y * (j + 0.5) + dice.tenths(6, 20)}, 0);
    }
    for (const Point& seed : seeds) draft.mark(seed + Point{0.013, 0.007}, 1);
}

void drawSmallPanel(HostileDraft& draft) {
    Dice& dice = draft.dice();
    draft.setPanel(dice.tenths(10, 40), dice.tenths(10, 40));
    draft.setKerfs(0.5, 10);
    draft.setBit(dice.tenths(2, 20));
    const Panel& panel = draft.project.panel;
    for (int i = dice.between(2, 6); i > 0; --i) {
        const Point p{dice.tenths(0, panel.width), dice.tenths(0, panel.height)};
        draft.lay(p, dice.chance(50) ? 90 * dice.between(0, 1) : dice.between(0, 359) / 2.0);
    }
    for (int i = dice.between(1, 2); i > 0; --i) {
        draft.mark({dice.tenths(0, panel.width) + 0.013, dice.tenths(0, panel.height) + 0.007}, dice.between(1, 4));
    }
}

void drawLargePanel(HostileDraft& draft) {
    Dice& dice = draft.dice();
    draft.setPanel(3000, 3000);
    const Point c{dice.tenths(900, 2100), dice.tenths(900, 2100)};
    draft.ring(c, dice.between(3, 6), 10, 900);
    for (int i = dice.between(1, 4); i > 0; --i) {
        const Point at = c + dice.tenths(0, 60) * headingOf(dice.between(0, 359));
        draft.lay(at, dice.between(-20, 20) / 10.0 + 90 * dice.between(0, 1));
    }
    draft.mark(c + Point{0.013, 0.007}, dice.between(1, 4));
}

void boreCorners(HostileDraft& draft) {
    Dice& dice = draft.dice();
    const double bit = draft.project.bench->trimBit->diameter / 2;
    const Solved solved = solve(draft.project);
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const Corner& corner : cutout.corners) {
            if (corner.angle >= 180 || !dice.chance(60)) continue;
            const double radii[] = {bit + std::abs(draft.nudge()), bit, dice.tenths(4, 12), dice.tenths(8, 30)};
            draft.project.cutouts[cutout.index].corners.push_back({corner.first, corner.second, dice.one(radii), ""});
        }
    }
}

void drawStopped(HostileDraft& draft) {
    Dice& dice = draft.dice();
    const Point c = draft.centre();
    draft.ring(c, dice.between(3, 6), 12, 40);
    for (int i = dice.between(0, 3); i > 0; --i) draft.lay(draft.centre(), dice.between(0, 359) / 2.0);
    draft.mark(c + Point{0.013, 0.007}, dice.between(1, 4));
    for (LayoutLine& line : draft.project.lines) {
        if (dice.chance(70)) line.extent = Extent::Stopped;
    }
    if (dice.chance(70)) boreCorners(draft);
}

struct Kind {
    const char* name;
    void (*draw)(HostileDraft&);
};

constexpr Kind kKinds[kHostileKinds] = {
    {"near_parallel", drawNearParallel}, {"near_crossing", drawNearCrossing}, {"concurrent", drawConcurrent},
    {"sliver", drawSliver},              {"wide_kerf", drawWideKerf},         {"large_bit", drawLargeBit},
    {"exact_neck", drawExactNeck},       {"overlap", drawOverlap},            {"at_the_edge", drawAtTheEdge},
    {"near_corners", drawNearCorners},   {"crowd", drawCrowd},                {"many_cutouts", drawManyCutouts},
    {"small_panel", drawSmallPanel},     {"large_panel", drawLargePanel},     {"stopped", drawStopped}};

}  // namespace

std::string kindName(HostileKind kind) { return kKinds[static_cast<std::size_t>(kind)].name; }

Project hostileLayout(HostileKind kind, std::uint64_t seed) {
    for (std::uint64_t attempt = 0;; ++attempt) {
        HostileDraft draft(seed * 1000003 + static_cast<std::uint64_t>(kind) * 7919 + attempt * 15485863);
        kKinds[static_cast<std::size_t>(kind)].draw(draft);
        if (!draft.project.cutouts.empty()) return std::move(draft.project);
    }
}

}  // namespace kerfwall::oracle
