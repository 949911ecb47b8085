// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/spelt_line.h"

#include <numbers>
#include <string>

namespace kerfwall::oracle {
namespace {

constexpr double kSteps = 256;  // of a panel's size in a byte
constexpr double kReach = 100;  // mm from a line's first place to its second
constexpr std::array kParts{1.0, 2.0, 10.0, 1000.0};

std::array<Point, 4> edgeStarts(const Panel& panel) {
    return {Point{0, 0}, {panel.width, 0}, {panel.width, panel.height}, {0, panel.height}};
}
constexpr std::array kEdgeWays{Point{1, 0}, Point{0, 1}, Point{-1, 0}, Point{0, -1}};

}  // namespace

void SpeltLines::add(ByteReader& bytes) {
    const auto [way, flags] = bytes.take<2>();
    Laid made = laid(way, bytes.take<4>());
    constexpr std::array kExtents{Extent::Through, Extent::Stopped, Extent::Through, Extent::Through};
    LayoutLine line;
    line.id = "L" + std::to_string(m_project.lines.size() + 1);
    line.saw = oneOf(std::array{"rail", "other"}, flags);
    line.extent = oneOf(kExtents, flags / 2);
    line.cut = flags / 8 % 8 != 7;
    line.place = std::move(made.place);
    m_project.lines.push_back(std::move(line));
    m_drawn.push_back(made.drawn);
}

SpeltLines::Laid SpeltLines::laid(std::size_t way, const Numbers& n) const {
    const Panel& panel = m_project.panel;
    const double parts = oneOf(kParts, way / 16);
    const std::size_t other = m_drawn.empty() ? 0 : n[0] % m_drawn.size();
    switch (way % 16 < 10 || !m_drawn.empty() ? way % 16 : way % 8) {
        case 0:
        case 1:
            return fromEdge(Edge::Bottom, toPart(static_cast<double>(n[0]) * panel.height / kSteps, parts));
        case 2:
        case 3:
            return fromEdge(Edge::Left, toPart(static_cast<double>(n[0]) * panel.width / kSteps, parts));
        case 4:
            return turned(Edge::Bottom, static_cast<double>(n[2] % 2 * 256 + n[3]) / 2, placeAt(n[0], n[1], parts));
        case 5:  // all of them through one point
            return turned(oneOf(kEdges, n[0]), static_cast<double>(n[1]), {panel.width / 2, panel.height / 2});
        case 6:
            return betweenPlaces(n, parts);
        case 7:
            return inTriple(n);
        case 8:
            return marked(n);
        case 9:
            return fromEdge(oneOf(kEdges, n[0]), tellingDistance(n[1], n[2]));
        case 10:
        case 11:
        case 12:
            return beside(other, tellingDistance(n[1], n[2]));
        case 13:
        case 14:
            return aslant(other, nudgeOf(n[1]) + (n[2] < 128 ? 0 : std::numbers::pi), n[2] % 2 == 1);
        default:
            return mirrored(other, n[1] % 2 == 0);
    }
}

SpeltLines::Laid SpeltLines::fromEdge(Edge edge, double distance) const {
    const auto e = static_cast<std::size_t>(edge);
    const Point p = toPart(edgeStarts(m_project.panel)[e] + distance * leftOf(kEdgeWays[e]), kFinest);
    return {ByOffset{edge, distance}, {p, p + kReach * kEdgeWays[e], true}};
}

SpeltLines::Laid SpeltLines::turned(Edge edge, double degrees, Point through) const {
    const double a = (degrees + 90.0 * static_cast<int>(edge)) * std::numbers::pi / 180;
    return {ByAngle{edge, degrees, through}, {through, through + kReach * Point{std::cos(a), std::sin(a)}}};
}

SpeltLines::Laid SpeltLines::betweenPlaces(const Numbers& n, double parts) const {
    const Point p = placeAt(n[0], n[1], parts);
    const Point q = placeAt(n[2], n[3], parts);
    if (p == q) return fromEdge(Edge::Bottom, p.y);
    return {ByPoints{p, q}, {p, q}};
}

// Along the long side of a right triangle in whole numbers: what lies square to it is a short decimal too.
SpeltLines::Laid SpeltLines::inTriple(const Numbers& n) const {
    constexpr std::array kTriples{Point{3, 4}, Point{-7, 24}, Point{-4, 3}, Point{24, 7}};
    const Point p = placeAt(n[0], n[1], 10);
    const Point q = p + (n[3] % 2 == 0 ? 4.0 : -4.0) * oneOf(kTriples, n[2]);
    return {ByPoints{p, q}, {p, q}};
}

SpeltLines::Laid SpeltLines::marked(const Numbers& n) const {
    const Panel& panel = m_project.panel;
    const auto mark = [&](std::size_t byte, std::size_t nudge) {
        const Edge edge = oneOf(kEdges, byte);
        const bool isLevel = edge == Edge::Bottom || edge == Edge::Top;
        const double steps = static_cast<double>(byte / 4) / 64;
        return EdgeMark{edge, toPart(steps * (isLevel ? panel.width : panel.height), 10) + nudgeOf(nudge)};
    };
    const ByMarks marks{mark(n[0], n[1]), mark(n[2], n[3])};
    const auto at = [&](const EdgeMark& said) {
        const auto e = static_cast<std::size_t>(said.edge);
        return edgeStarts(panel)[e] + said.at * kEdgeWays[e];
    };
    if (at(marks.a) == at(marks.b)) return fromEdge(marks.a.edge, marks.a.at);
    return {marks, {at(marks.a), at(marks.b)}};
}

SpeltLines::Laid SpeltLines::beside(std::size_t other, double distance) const {
    const Drawn& from = m_drawn[other];
    const Point off = distance * leftOf(unit(from.q - from.p));
    Drawn drawn{toPart(from.p + off, kFinest), toPart(from.q + off, kFinest), from.isLevelOrUpright};
    if (from.isLevelOrUpright) return {ByOffset{m_project.lines[other].id, distance}, drawn};
    return {ByPoints{drawn.p, drawn.q}, drawn};
}

SpeltLines::Laid SpeltLines::aslant(std::size_t other, double angle, bool aboutEnd) const {
    const Point pivot = aboutEnd ? m_drawn[other].q : m_drawn[other].p;
    const Point way = m_drawn[other].q - m_drawn[other].p;
    const Point q = pivot + std::cos(angle) * way + std::sin(angle) * leftOf(way);
    return {ByPoints{pivot, q}, {pivot, q}};
}

SpeltLines::Laid SpeltLines::mirrored(std::size_t other, bool upright) const {
    const Panel& panel = m_project.panel;
    const auto over = [&](Point p) {
        return upright ? Point{panel.width - p.x, p.y} : Point{p.x, panel.height - p.y};
    };
    const Drawn& of = m_drawn[other];
    return {ByMirror{m_project.lines[other].id, upright ? Centre::Upright : Centre::Level},
            {over(of.p), over(of.q), of.isLevelOrUpright}};
}

// A distance at which something is decided, or hard by it.
double SpeltLines::tellingDistance(std::size_t which, std::size_t nudge) const {
    const double bit = m_project.bench->trimBit->diameter;
    const double kerf = m_project.bench->saws[which / 64 % 2].kerf;
    const std::array distances{0.0,        kerf,       2 * kerf,       bit,
                               bit + kerf, bit - kerf, bit + 2 * kerf, static_cast<double>(which / 8)};
    const double mm = toPart(oneOf(distances, which) + nudgeOf(nudge), kFinest);
    return which >= 128 ? -mm : mm;
}

Point SpeltLines::placeAt(std::size_t x, std::size_t y, double parts) const {
    const Panel& panel = m_project.panel;
    return toPart(Point{static_cast<double>(x) * panel.width / kSteps, static_cast<double>(y) * panel.height / kSteps}, parts);
}

}  // namespace kerfwall::oracle
