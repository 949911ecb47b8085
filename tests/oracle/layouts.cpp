// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/layouts.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <optional>

#include "tests/oracle/dice.h"
#include "tests/oracle/plain_layout.h"
#include "tests/oracle/rough_faces.h"

namespace kerfwall::oracle {
namespace {

constexpr double kBits[] = {6, 6.35, 8, 9.5, 10, 12, 12.7, 16, 19};
constexpr double kKerfs[] = {1.8, 2.2, 2.4, 2.6, 3.0, 3.2};
constexpr double kBlades[] = {160, 165, 184, 190};

double toTenth(double mm) { return std::round(mm * 10) / 10; }

class Draft {
  public:
    Draft(std::uint64_t seed, Grid grid) : m_dice(seed), m_grid(grid) {
        Panel& panel = project.panel;
        panel.width = m_dice.tenths(260, 420);
        panel.height = m_dice.tenths(200, 320);
        panel.thickness = 18;
        project.kerfDepth = 6;
        Bench bench;
        const double first = m_dice.one(kKerfs);
        for (int i = 0; i < 3; ++i) {
            Saw saw;
            saw.id = "rail" + std::to_string(i);
            saw.kind = SawKind::GuideRail;
            saw.kerf = i == 0 ? first : m_dice.one(kKerfs);
            saw.blade = m_dice.one(kBlades);
            saw.repeatability = 0.25;
            bench.saws.push_back(saw);
        }
        bench.trimBit = TrimBit{};
        bench.trimBit->diameter = m_dice.one(kBits);
        project.bench = bench;
    }

    Dice& dice() { return m_dice; }
    Point centre() {
        return {m_dice.tenths(90, project.panel.width - 90), m_dice.tenths(80, project.panel.height - 80)};
    }

    // A line through `p` that runs at `degrees`; laid in one of the ways that give it.
    std::size_t lay(Point p, double degrees, bool cut = true) {
        LayoutLine line;
        line.id = "L" + std::to_string(project.lines.size() + 1);
        line.cut = cut;
        line.saw = project.bench->saws[static_cast<std::size_t>(m_dice.between(0, 2))].id;
        m_dice.chance(50);
        line.extent = Extent::Through;
        p = {onGrid(p.x), onGrid(p.y)};
        const double half = std::round(degrees * 2) / 2;
        if (half == 0 && m_dice.chance(50))
            line.place = ByOffset{Edge::Bottom, p.y};
        else if (half == 90 && m_dice.chance(50))
            line.place = ByOffset{Edge::Left, p.x};
        else if (m_dice.chance(50))
            line.place = ByAngle{Edge::Bottom, half, p};
        else {
            const double a = degrees * std::numbers::pi / 180;
            line.place = ByPoints{p, {onGrid(p.x + 100 * std::cos(a)), onGrid(p.y + 100 * std::sin(a))}};
        }
        project.lines.push_back(line);
        return project.lines.size() - 1;
    }

    // `count` lines round `c`, as far from it as `low` to `high`.
    std::vector<std::size_t> ring(Point c, int count, double low, double high) {
        std::vector<std::size_t> lines;
        const double start = m_dice.chance(40) ? 0 : m_dice.between(0, 359);
        for (int i = 0; i < count; ++i) {
            const double turn = start + 360.0 * i / count + (m_dice.chance(30) ? 0 : m_dice.between(-15, 15));
            const double a = turn * std::numbers::pi / 180;
            const double far = m_dice.tenths(low, high);
            double way = std::fmod(turn + (m_dice.chance(50) ? 90 : 270), 360);
            lines.push_back(lay({c.x + far * std::cos(a), c.y + far * std::sin(a)}, way));
        }
        return lines;
    }

    // A cutout of the face round `c`, grown over every line that is not among `own`.
    void markAll(Point c, const std::vector<std::size_t>& own) {
        Cutout cutout;
        cutout.id = "cut" + std::to_string(project.cutouts.size() + 1);
        cutout.seeds = seedsGrown(project, c, own, 60);
        project.cutouts.push_back(cutout);
    }

    // A cutout of `faces` neighbouring faces, the first round `c`.
    void markSome(Point c, int faces) {
        Cutout cutout;
        cutout.id = "cut" + std::to_string(project.cutouts.size() + 1);
        cutout.seeds = seedsGrown(project, c, {}, static_cast<std::size_t>(faces));
        project.cutouts.push_back(cutout);
    }

    void stopMost() {
        for (LayoutLine& line : project.lines)
            if (m_dice.chance(80)) line.extent = Extent::Stopped;
    }

    Project project;

  private:
    [[nodiscard]] double onGrid(double mm) const {
        return m_grid == Grid::Tenths ? toTenth(mm) : std::round(mm * 64 / 25.4) * 25.4 / 64;
    }

    Dice m_dice;
    Grid m_grid;
};

void beside(Draft& draft, Point c, double far) {
    Dice& dice = draft.dice();
    for (int i = dice.between(0, 4); i > 0; --i) {
        const double turn = dice.between(0, 359);
        const double a = turn * std::numbers::pi / 180;
        draft.lay({c.x + far * std::cos(a), c.y + far * std::sin(a)}, std::fmod(turn + 90, 360));
    }
    if (dice.chance(50)) draft.lay(c, dice.between(0, 359), false);
}

void drawConvex(Draft& draft) {
    const Point c = draft.centre();
    draft.ring(c, draft.dice().between(4, 8), 14, 45);
    beside(draft, c, 62);
    draft.markSome(c, 1);
}

void drawJoined(Draft& draft) {
    const Point c = draft.centre();
    draft.ring(c, draft.dice().between(4, 6), 10, 30);
    for (int i = draft.dice().between(0, 4); i > 0; --i)
        draft.lay(draft.centre(), draft.dice().between(0, 179));
    draft.markSome(c, draft.dice().between(2, 5));
}

void drawOpen(Draft& draft) {
    Dice& dice = draft.dice();
    Point c = draft.centre();
    if (dice.chance(50))
        c.y = dice.chance(50) ? 6 : draft.project.panel.height - 6;
    else
        c.x = dice.chance(50) ? 6 : draft.project.panel.width - 6;
    draft.ring(c, dice.between(4, 7), 15, 45);
    for (int i = dice.between(0, 3); i > 0; --i) draft.lay(draft.centre(), dice.between(0, 179));
    draft.markSome(c, dice.between(1, 3));
}

void drawTapered(Draft& draft) {
    Dice& dice = draft.dice();
    const Point c = draft.centre();
    const double way = dice.between(0, 359);
    const double a = way * std::numbers::pi / 180;
    const double taper = dice.between(4, 40) / 2.0;
    const double half = dice.tenths(6, 20);
    draft.lay({c.x - half * std::sin(a), c.y + half * std::cos(a)}, way);
    draft.lay({c.x + half * std::sin(a), c.y - half * std::cos(a)}, std::fmod(way + taper, 360));
    const double far = dice.tenths(30, 90);
    draft.lay({c.x - far * std::cos(a), c.y - far * std::sin(a)},
              std::fmod(way + dice.between(60, 120), 360));
    draft.lay({c.x + far * std::cos(a), c.y + far * std::sin(a)},
              std::fmod(way + dice.between(60, 120), 360));
    beside(draft, c, 100);
    draft.markSome(c, dice.between(1, 2));
}

// Bores some corners of the one face where both walls have room for their arcs.
void boreSome(Draft& draft) {
    const auto plain = plainLayout(draft.project);
    if (!plain) return;
    Dice& dice = draft.dice();
    const double bit = plain->bitRadius;
    std::map<std::size_t, double> left;  // wall length not yet taken by arcs
    for (const PlainWall& wall : plain->cutouts[0].walls) left[wall.line] = wall.s1 - wall.s0;
    for (const PlainCorner& corner : plain->cutouts[0].corners) {
        const double radius = dice.chance(75) ? dice.tenths(8, 30) : bit;
        const double setBack = std::max(radius, bit) / std::tan(corner.angle / 2);
        if (left[corner.first] < setBack + 1 || left[corner.second] < setBack + 1) continue;
        left[corner.first] -= setBack;
        left[corner.second] -= setBack;
        if (radius == bit) continue;
        const auto& lines = draft.project.lines;
        draft.project.cutouts[0].corners.push_back(
            {lines[corner.first].id, lines[corner.second].id, radius, ""});
    }
}

void drawBored(Draft& draft) {
    const Point c = draft.centre();
    draft.ring(c, draft.dice().between(4, 5), 25, 50);
    draft.markSome(c, 1);
    boreSome(draft);
}

void drawStopped(Draft& draft) {
    if (draft.dice().chance(50))
        drawConvex(draft);
    else
        drawJoined(draft);
    draft.stopMost();
}

void drawSeveral(Draft& draft) {
    Dice& dice = draft.dice();
    std::vector<std::pair<Point, std::vector<std::size_t>>> cutouts;
    const int count = dice.between(2, 4);
    for (int i = 0; i < count; ++i) {
        const double x = draft.project.panel.width * (i % 2 == 0 ? 0.27 : 0.73) + dice.tenths(-8, 8);
        const double y = draft.project.panel.height * (i < 2 ? 0.27 : 0.73) + dice.tenths(-8, 8);
        const Point c{toTenth(x), toTenth(y)};
        cutouts.emplace_back(c, draft.ring(c, dice.between(3, 5), 14, 30));
    }
    for (const auto& [c, own] : cutouts) draft.markAll(c, own);
}

void drawCrossed(Draft& draft) {
    Dice& dice = draft.dice();
    const Panel& panel = draft.project.panel;
    const Point a{toTenth(panel.width * 0.3), toTenth(panel.height * 0.5)};
    const Point b{toTenth(panel.width * 0.78), toTenth(panel.height * 0.5)};
    const auto first = draft.ring(a, dice.between(4, 6), 20, 45);
    // A flat second cutout: its long kerfs run through the first one's walls.
    const double tilt = dice.between(-30, 30) / 2.0;
    std::vector<std::size_t> second;
    second.push_back(draft.lay({b.x, b.y + dice.tenths(8, 25)}, tilt < 0 ? tilt + 360 : tilt));
    second.push_back(draft.lay({b.x, b.y - dice.tenths(8, 25)}, 180 + dice.between(-20, 20) / 2.0));
    second.push_back(draft.lay({b.x - dice.tenths(12, 25), b.y}, dice.between(75, 105)));
    second.push_back(draft.lay({b.x + dice.tenths(12, 25), b.y}, dice.between(75, 105)));
    draft.markAll(a, first);
    draft.markAll(b, second);
}

void draw(Draft& draft, LayoutKind kind) {
    switch (kind) {
        case LayoutKind::Convex:
            return drawConvex(draft);
        case LayoutKind::Joined:
            return drawJoined(draft);
        case LayoutKind::Open:
            return drawOpen(draft);
        case LayoutKind::Tapered:
            return drawTapered(draft);
        case LayoutKind::Bored:
            return drawBored(draft);
        case LayoutKind::Stopped:
            return drawStopped(draft);
        case LayoutKind::Several:
            return drawSeveral(draft);
        case LayoutKind::Crossed:
            return drawCrossed(draft);
    }
}

// As the kind promises, and nothing the project file calls trouble.
bool isFit(const Project& project, LayoutKind kind) {
    for (const Cutout& cutout : project.cutouts)
        if (cutout.seeds.empty()) return false;
    const auto plain = plainLayout(project);
    if (!plain) return false;
    bool bored = false;
    bool open = false;
    for (const PlainCutout& cutout : plain->cutouts) {
        bored = bored || !cutout.rounds.empty();
        open = open || cutout.open;
        if (cutout.drawnArea < 200 || cutout.drawnArea > 20000) return false;
    }
    if (kind == LayoutKind::Bored && !bored) return false;
    if (kind == LayoutKind::Joined && plain->cutouts[0].faces.size() < 2) return false;
    return open == (kind == LayoutKind::Open);
}

}  // namespace

std::string kindName(LayoutKind kind) {
    static constexpr const char* kNames[] = {"convex", "joined",  "open",    "tapered",
                                             "bored",  "stopped", "several", "crossed"};
    return kNames[static_cast<std::size_t>(kind)];
}

SeededLayout seededLayout(LayoutKind kind, std::uint64_t seed, Grid grid) {
    for (std::uint64_t attempt = 0;; ++attempt) {
        Draft draft(seed * 1000003 + static_cast<std::uint64_t>(kind) * 7919 + attempt * 15485863, grid);
        draw(draft, kind);
        if (isFit(draft.project, kind)) return {kind, seed, draft.project};
    }
}

}  // namespace kerfwall::oracle
