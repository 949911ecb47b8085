// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/side_view.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>

#include "core/drawing/drawn_size.h"
#include "core/drawing/plan_parts.h"
#include "core/geometry/angle.h"
#include "core/shop/panel_edges.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kUnder = 7;   // from the panel's back to the first dimension line under it
constexpr double kLine = 5;    // from one line of text to the next
constexpr double kBeside = 5;  // from a kerf to its depth's dimension line
constexpr double kTextHeight = 3.2;
constexpr double kCentreBeyond = 2;
constexpr double kDepthText = 14;    // room for a depth's dimension text
constexpr int kRoundPieces = 48;     // a hole seen end on, drawn taller than wide
constexpr double kSamePlace = 1e-6;  // mm

using Kind = SectionRun::Kind;

struct SideViewer {
    const Project& project;
    const Solved& solved;
    double height = 0;
    double exaggeration = 1;
    double scale = 1;
    std::vector<SectionRun> runs;
    Drawing drawing;

    [[nodiscard]] double down(double depth) const { return -depth * exaggeration; }
    [[nodiscard]] double thickness() const { return project.panel.thickness; }
    [[nodiscard]] std::string text(double mm) const { return drawnSize(mm, project.units); }
};

/// A stretch of panel between openings: flat below, the kerfs let into its top.
std::vector<Point> woodPolygon(const SideViewer& view, std::size_t first, std::size_t last) {
    std::vector<Point> points{{view.runs[first].from, view.down(view.thickness())},
                              {view.runs[last].to, view.down(view.thickness())}};
    for (std::size_t i = last + 1; i-- > first;) {
        const SectionRun& run = view.runs[i];
        for (const double x : {run.to, run.from}) {
            const Point place{x, view.down(run.depth)};
            if (points.back() != place) points.push_back(place);
        }
    }
    return points;
}

void addWood(SideViewer& view) {
    for (std::size_t first = 0; first < view.runs.size(); ++first) {
        if (view.runs[first].kind == Kind::Opening) continue;
        std::size_t last = first;
        while (last + 1 < view.runs.size() && view.runs[last + 1].kind != Kind::Opening) ++last;
        view.drawing.marks.emplace_back(
            Area{Ink::Wood, {polygonLoop(woodPolygon(view, first, last))}, "panel"});
        first = last;
    }
}

/// The panel before the waste was sawn out: every kerf on the cutting line shows.
std::vector<SectionRun> allKerfs(const SideViewer& view) {
    Solved closed = view.solved;
    closed.cutouts.clear();
    return sectionAt(view.project, closed, view.height);
}

/// The kerfs as bands: those in the wood, and those at an opening's walls, where they made the wall.
void addKerfBands(SideViewer& view) {
    for (const SectionRun& run : allKerfs(view)) {
        if (run.kind != Kind::Kerf) continue;
        const OutlineLoop loop = rectangleLoop({run.from, view.down(run.depth)}, {run.to, 0});
        view.drawing.marks.emplace_back(Area{Ink::KerfBand, {loop}, run.line});
    }
}

/// Where the kerf's depth is shown: beside a kerf of whole depth, where the wood has room for the texts.
struct DepthPlace {
    double x = 0;
    double offset = 0;
};

std::optional<DepthPlace> depthPlace(const SideViewer& view) {
    std::optional<DepthPlace> place;
    const double room = (kBeside + kDepthText) * view.scale;
    const auto isWood = [&](double from, double to) {
        return std::ranges::any_of(view.runs, [&](const SectionRun& run) {
            return run.kind == Kind::Wood && run.from <= from + kSamePlace && run.to >= to - kSamePlace;
        });
    };
    for (const SectionRun& run : allKerfs(view)) {
        if (run.kind != Kind::Kerf || run.depth < view.solved.kerfDepth) continue;
        // Upward dimensions lie to the right of their places with a negative offset.
        if (isWood(run.to, run.to + room)) {
            place = {run.to, -kBeside * view.scale};
        } else if (!place && isWood(run.from - room, run.from)) {
            place = {run.from, room};
        }
    }
    return place;
}

void addKerfDepth(SideViewer& view) {
    const std::optional<DepthPlace> at = depthPlace(view);
    if (!at) return;
    const double depth = view.solved.kerfDepth;
    const Point top{at->x, 0};
    const Point floor{at->x, view.down(depth)};
    const Point back{at->x, view.down(view.thickness())};
    view.drawing.marks.emplace_back(Dimension{floor, top, at->offset, "kerf " + view.text(depth), "kerf"});
    view.drawing.marks.emplace_back(
        Dimension{back, floor, at->offset, "web " + view.text(view.thickness() - depth), "web"});
}

void addOpeningSizes(SideViewer& view) {
    const double under = view.down(view.thickness());
    for (const SectionRun& run : view.runs) {
        if (run.kind != Kind::Opening) continue;
        view.drawing.marks.emplace_back(Dimension{{run.from, under},
                                                  {run.to, under},
                                                  -kUnder * view.scale,
                                                  view.text(run.to - run.from),
                                                  "opening"});
    }
}

/// A hole from the left or right edge lies in the view's plane: hidden lines.
void addLyingHole(SideViewer& view, const ClampHole& hole, const std::string& id) {
    const bool left = hole.edge == Edge::Left;
    const double mouth = left ? 0 : view.project.panel.width;
    const double point = left ? hole.depth : view.project.panel.width - hole.depth;
    const double top = view.down(heightOf(view.project.panel, hole) - hole.diameter / 2);
    const double floor = view.down(heightOf(view.project.panel, hole) + hole.diameter / 2);
    auto& marks = view.drawing.marks;
    marks.emplace_back(Stroke{Ink::Hidden, {mouth, top}, {point, top}, id});
    marks.emplace_back(Stroke{Ink::Hidden, {point, top}, {point, floor}, id});
    marks.emplace_back(Stroke{Ink::Hidden, {point, floor}, {mouth, floor}, id});
    const double beyond = (left ? kCentreBeyond : -kCentreBeyond) * view.scale;
    const double axis = view.down(heightOf(view.project.panel, hole));
    marks.emplace_back(Stroke{Ink::Centre, {mouth - beyond, axis}, {point + beyond, axis}, id});
}

/// A hole from the bottom or top edge is seen end on: cut where it reaches the cutting line, else hidden.
void addEndOnHole(SideViewer& view, const ClampHole& hole, const std::string& id) {
    const bool bottom = hole.edge == Edge::Bottom;
    const double x = bottom ? hole.at : view.project.panel.width - hole.at;
    const double reach = bottom ? hole.depth : view.project.panel.height - hole.depth;
    const bool cut = bottom ? view.height <= reach : view.height >= reach;
    const double axis = heightOf(view.project.panel, hole);
    std::vector<Point> round;
    for (int i = 0; i < kRoundPieces; ++i) {
        const double turn = kTurn * i / kRoundPieces;
        round.push_back({x + hole.diameter / 2 * std::cos(turn),
                         view.down(axis) + hole.diameter / 2 * view.exaggeration * std::sin(turn)});
    }
    view.drawing.marks.emplace_back(Area{cut ? Ink::ClampHole : Ink::Hidden, {polygonLoop(round)}, id});
}

void addHoleTexts(SideViewer& view, double firstLine) {
    std::set<std::string> shown;
    double y = firstLine;
    for (const ClampHole& hole : view.project.clampHoles) {
        const double above = heightOf(view.project.panel, hole) - hole.diameter / 2;
        const double below = view.thickness() - heightOf(view.project.panel, hole) - hole.diameter / 2;
        std::string text =
            "clamp hole \u2300 " + view.text(hole.diameter) + ", " + view.text(hole.depth) + " deep, ";
        text += std::abs(above - below) < 1e-9
                    ? view.text(above) + " of wood above and below"
                    : view.text(above) + " of wood above, " + view.text(below) + " below";
        if (!shown.insert(text).second) continue;
        view.drawing.marks.emplace_back(Label{Ink::Text, {0, y}, text, kTextHeight, Anchor::Left, 0, "hole"});
        y -= kLine * view.scale;
    }
    view.drawing.bounds.low.y = std::min(view.drawing.bounds.low.y, y);
}

void addClampHoles(SideViewer& view) {
    for (std::size_t i = 0; i < view.project.clampHoles.size(); ++i) {
        const ClampHole& hole = view.project.clampHoles[i];
        const std::string id = hole.id.empty() ? std::to_string(i + 1) : hole.id;
        const bool lying = hole.edge == Edge::Left || hole.edge == Edge::Right;
        if (lying) {
            addLyingHole(view, hole, id);
        } else {
            addEndOnHole(view, hole, id);
        }
    }
}

}  // namespace

Drawing sideView(const Project& project, const Solved& solved, double height, double exaggeration,
                 double markScale) {
    SideViewer view{project, solved, height, exaggeration, markScale, sectionAt(project, solved, height), {}};
    const double under = view.down(project.panel.thickness);
    const bool opened =
        std::ranges::any_of(view.runs, [](const auto& run) { return run.kind == Kind::Opening; });
    const double textLine = under - ((opened ? kUnder : 0) + kLine + 1) * markScale;
    view.drawing.bounds = {{-4 * markScale, textLine}, {project.panel.width + 4 * markScale, 3 * markScale}};
    addKerfBands(view);
    addWood(view);
    addClampHoles(view);
    addKerfDepth(view);
    addOpeningSizes(view);
    addHoleTexts(view, textLine);
    return view.drawing;
}

}  // namespace kerfwall
