// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/hostile_draft.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "core/geometry/solve.h"

namespace kerfwall::oracle {
namespace {

constexpr double kBits[] = {4, 6, 6.35, 8, 9.5, 10, 12, 12.7, 16, 19};
constexpr double kBlades[] = {160, 165, 184, 190};

/// A decimal with nine places, so that it is short in the file.
double toPicometre(double mm) { return std::round(mm * 1e9) / 1e9; }
Point toPicometre(Point p) { return {toPicometre(p.x), toPicometre(p.y)}; }

}  // namespace

Point headingOf(double degrees) {
    const double a = degrees * std::numbers::pi / 180;
    return {std::cos(a), std::sin(a)};
}

HostileDraft::HostileDraft(std::uint64_t seed) : m_dice(seed) {
    project.panel.thickness = 18;
    project.kerfDepth = 6;
    setPanel(m_dice.tenths(240, 420), m_dice.tenths(200, 320));
    Bench bench;
    for (int i = 0; i < 2; ++i) {
        Saw saw;
        saw.id = "rail" + std::to_string(i);
        saw.kind = SawKind::GuideRail;
        saw.kerf = m_dice.tenths(1.6, 3.6);
        saw.blade = m_dice.one(kBlades);
        bench.saws.push_back(saw);
    }
    bench.trimBit = TrimBit{};
    bench.trimBit->diameter = m_dice.one(kBits);
    project.bench = bench;
}

double HostileDraft::nudge() {
    double size = m_dice.between(1, 9) * 1e-9;
    for (int i = m_dice.between(0, 6); i > 0; --i) size *= 10;
    return m_dice.chance(50) ? size : -size;
}

double HostileDraft::maybeNudge() { return m_dice.chance(40) ? 0 : nudge(); }

double HostileDraft::kerf() {
    return project.bench->saws[static_cast<std::size_t>(m_dice.between(0, 1))].kerf;
}

Point HostileDraft::centre() {
    return {m_dice.tenths(0.35 * project.panel.width, 0.65 * project.panel.width),
            m_dice.tenths(0.35 * project.panel.height, 0.65 * project.panel.height)};
}

void HostileDraft::setKerfs(double low, double high) {
    for (Saw& saw : project.bench->saws) saw.kerf = m_dice.tenths(low, high);
}

void HostileDraft::setBit(double diameter) { project.bench->trimBit->diameter = diameter; }

void HostileDraft::setPanel(double width, double height) {
    project.panel.width = width;
    project.panel.height = height;
}

void HostileDraft::layPlace(const Place& place) {
    LayoutLine line;
    line.id = "L" + std::to_string(project.lines.size() + 1);
    line.saw = project.bench->saws[static_cast<std::size_t>(m_dice.between(0, 1))].id;
    m_dice.chance(60);
    line.extent = Extent::Through;
    line.place = place;
    project.lines.push_back(line);
}

void HostileDraft::layPoints(Point p, Point q) {
    p = toPicometre(p);
    q = toPicometre(q);
    if (m_dice.chance(50)) std::swap(p, q);
    layPlace(ByPoints{p, q});
}

void HostileDraft::lay(Point through, double degrees) {
    layPoints(through, through + 100.0 * headingOf(degrees));
}

void HostileDraft::ring(Point c, int count, double low, double high) {
    const int start = m_dice.chance(40) ? 0 : m_dice.between(0, 359);
    for (int i = 0; i < count; ++i) {
        const double turn = start + 360.0 * i / count + (m_dice.chance(40) ? 0 : m_dice.between(-12, 12));
        lay(c + m_dice.tenths(low, high) * headingOf(turn), turn + 90);
    }
}

void HostileDraft::window(Point low, Point high) {
    layPlace(ByOffset{Edge::Left, toPicometre(low.x)});
    layPlace(ByOffset{Edge::Left, toPicometre(high.x)});
    layPlace(ByOffset{Edge::Bottom, toPicometre(low.y)});
    layPlace(ByOffset{Edge::Bottom, toPicometre(high.y)});
}

void HostileDraft::mark(Point at, int faces) {
    Cutout cutout;
    cutout.id = "cut" + std::to_string(project.cutouts.size() + 1);
    std::vector<Point> waiting{toPicometre(at)};
    while (!waiting.empty() && static_cast<int>(cutout.seeds.size()) < faces) {
        const std::size_t next = static_cast<std::size_t>(m_dice.between(0, static_cast<int>(waiting.size()) - 1));
        const Point seed = waiting[next];
        waiting.erase(waiting.begin() + static_cast<std::ptrdiff_t>(next));
        const auto id = faceAt(project, seed);
        if (!id || !m_marked.insert(*id).second) continue;
        cutout.seeds.push_back(seed);
        const std::vector<Point> face = facePolygon(project, seed);
        for (std::size_t i = 0; i < face.size(); ++i) {
            const Point a = face[i];
            const Point b = face[(i + 1) % face.size()];
            if (distance(a, b) < 1e-6) continue;
            // A short step over the side, so that a neighbour of a micrometre is met too.
            const double step = m_dice.chance(50) ? 0.02 : 1e-6;
            waiting.push_back(toPicometre(0.5 * (a + b) - step * leftOf(unit(b - a))));
        }
    }
    if (!cutout.seeds.empty()) project.cutouts.push_back(cutout);
}

}  // namespace kerfwall::oracle
