// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/close_up.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>
#include <vector>

#include "core/drawing/plan_drawing.h"
#include "core/shop/finding_words.h"
#include "core/shop/word_list.h"

namespace kerfwall {
namespace {

constexpr double kLeastAcross = 20;   // mm of the panel
constexpr double kMostAcross = 200;
constexpr double kTimes = 3;          // bits side by side
constexpr double kInFromBorder = 4;   // mm on the screen from the picture's border to a line's name
constexpr double kAsideOfLine = 1.2;  // ... and from the line
constexpr double kNameHeight = 3.5;   // mm on the screen

double acrossFor(const Solved& solved, const Finding& finding) {
    const double measured = std::max(finding.value.value_or(0), finding.limit.value_or(0));
    return std::clamp(kTimes * std::max(2 * solved.bitRadius, measured), kLeastAcross, kMostAcross);
}

/// The part of a run inside a box; none where it passes by.
/// Source    each of the box's four sides cuts off what lies beyond it.
std::optional<std::pair<Point, Point>> clipped(Point from, Point to, const Box& box) {
    double begin = 0;
    double end = 1;
    const Point run = to - from;
    const std::array<std::pair<double, double>, 4> sides{{{-run.x, from.x - box.low.x},
                                                          {run.x, box.high.x - from.x},
                                                          {-run.y, from.y - box.low.y},
                                                          {run.y, box.high.y - from.y}}};
    for (const auto& [outward, room] : sides) {
        if (outward == 0 && room < 0) return std::nullopt;
        if (outward < 0) begin = std::max(begin, room / outward);
        if (outward > 0) end = std::min(end, room / outward);
    }
    if (begin >= end) return std::nullopt;
    return std::pair(from + begin * run, from + end * run);
}

/// The line's name beside it, near where it leaves the picture.
Label nameOf(const SolvedLine& line, const std::pair<Point, Point>& seen, double perScreenMm) {
    const Point way = unit(line.to - line.from);
    const double length = distance(seen.first, seen.second);
    const double back = std::min(length / 2, kInFromBorder * perScreenMm);
    Label label;
    label.text = line.id;
    label.id = line.id;
    label.height = kNameHeight;
    label.at = seen.second - back * way + kAsideOfLine * perScreenMm * leftOf(way);
    label.anchor = std::abs(way.y) > std::abs(way.x) ? (leftOf(way).x < 0 ? Anchor::Right : Anchor::Left)
                                                     : Anchor::Middle;
    // Under a line that runs to the left the name's foot would lie on it.
    if (leftOf(way).y < 0 && label.anchor == Anchor::Middle) label.at.y -= kNameHeight * perScreenMm;
    return label;
}

std::string lineWords(const Project& project, const SolvedLine& line) {
    std::string words = "line " + line.id;
    if (line.kerfs.empty()) return words;
    return words + " with a kerf of " + lengthWords(project, line.kerfs.front().width);
}

std::string wordsFor(const Project& project, const CloseUp& shown, const std::vector<std::string>& seen) {
    const std::string words = "The plan " + lengthWords(project, shown.across) + " across, round " +
                              placeWords(project, shown.middle);
    return words + (seen.empty() ? "." : ": " + listText(seen) + ".");
}

}  // namespace

std::optional<CloseUp> closeUp(const Project& project, const Solved& solved, const Finding& finding, PictureSize size) {
    if (!finding.at) return std::nullopt;
    CloseUp shown;
    shown.middle = *finding.at;
    shown.across = acrossFor(solved, finding);
    const double perScreenMm = shown.across / size.width;
    PlanLayers layers;
    layers.dimensions = layers.edgeMarks = layers.findings = false;
    layers.markScale = perScreenMm;
    shown.drawing = planDrawing(project, solved, {}, layers);
    // The plan names its lines at the panel's edge, out of sight.
    std::erase_if(shown.drawing.marks, [](const Mark& mark) { return std::holds_alternative<Label>(mark); });
    const Point half{shown.across / 2, shown.across / 2 * size.height / size.width};
    const Box box{shown.middle - half, shown.middle + half};
    std::vector<std::string> seen;
    for (const SolvedLine& line : solved.lines) {
        const auto part = clipped(line.from, line.to, box);
        if (!part) continue;
        shown.drawing.marks.emplace_back(nameOf(line, *part, perScreenMm));
        seen.push_back(lineWords(project, line));
    }
    shown.words = wordsFor(project, shown, seen);
    return shown;
}

}  // namespace kerfwall
