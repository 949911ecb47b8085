// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/side_view.h"

#include <algorithm>
#include <optional>

#include "core/drawing/drawn_size.h"
#include "core/drawing/fence_section.h"
#include "core/drawing/side_parts.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kUnder = 7;         // from the panel's back to the first dimension line under it
constexpr double kBehind = 10;       // ... or beside it, where its text stands across the line
constexpr double kLine = 5;          // from one line of text to the next
constexpr double kBeside = 5;        // from a kerf to its depth's dimension line
constexpr double kDepthText = 14;    // room for a depth's dimension text beside its line
constexpr double kTextHigh = 4;      // ... or for its height
constexpr double kTextsAhead = 15;   // upright: the holes' texts begin that much before the layout face
constexpr double kUnderAxis = 11;    // ... and stand clear of the axis' dimension under the panel
constexpr double kSamePlace = 1e-6;  // mm

using Kind = SectionRun::Kind;

/// A stretch of panel between openings: flat at its back, the kerfs let into the layout face.
std::vector<Point> woodPolygon(const SideViewer& view, std::size_t first, std::size_t last) {
    std::vector<Point> points{view.place(view.runs[first].from, view.thickness()),
                              view.place(view.runs[last].to, view.thickness())};
    for (std::size_t i = last + 1; i-- > first;) {
        const SectionRun& run = view.runs[i];
        for (const double along : {run.to, run.from}) {
            const Point place = view.place(along, run.depth);
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
    return sectionAt(view.project, closed, view.cut);
}

/// The kerfs as bands: those in the wood, and those at an opening's walls, where they made the wall.
void addKerfBands(SideViewer& view, const std::vector<SectionRun>& kerfs) {
    for (const SectionRun& run : kerfs) {
        if (run.kind != Kind::Kerf) continue;
        const OutlineLoop loop = polygonLoop({view.place(run.from, run.depth), view.place(run.to, run.depth),
                                              view.place(run.to, 0), view.place(run.from, 0)});
        view.drawing.marks.emplace_back(Area{Ink::KerfBand, {loop}, run.line});
    }
}

/// Where the kerf's depth is shown: beside a kerf of whole depth, where the wood has room for the texts.
struct DepthPlace {
    double along = 0;
    double beside = 0;  ///< the dimension line this far onwards, or back where negative
};

std::optional<DepthPlace> depthPlace(const SideViewer& view, const std::vector<SectionRun>& kerfs) {
    std::optional<DepthPlace> place;
    const double room = view.mm(kBeside + (view.isLevel() ? kDepthText : kTextHigh));
    for (const SectionRun& run : kerfs) {
        if (run.kind != Kind::Kerf || run.depth < view.solved.kerfDepth) continue;
        if (view.isWood(run.to, run.to + room)) {
            place = {run.to, view.mm(kBeside)};
        } else if (!place && view.isWood(run.from - room, run.from)) {
            // Level, the texts stand between the line and the kerf.
            place = {run.from, view.isLevel() ? -room : -view.mm(kBeside)};
        }
    }
    return place;
}

/// Kerf and web. Upright their texts do not fit between the faces: each stands outside its own.
void addKerfDepth(SideViewer& view, const std::vector<SectionRun>& kerfs) {
    const std::optional<DepthPlace> at = depthPlace(view, kerfs);
    if (!at) return;
    const double depth = view.solved.kerfDepth;
    const Point face = view.place(at->along, 0);
    const Point floor = view.place(at->along, depth);
    const Point back = view.place(at->along, view.thickness());
    // Towards the face, what lies onwards along the cut is on the right.
    const double offset = -at->beside;
    const std::string web = "web " + view.text(view.thickness() - depth);
    view.drawing.marks.emplace_back(Dimension{floor, face, offset, "kerf " + view.text(depth), "kerf"});
    view.drawing.marks.emplace_back(view.isLevel() ? Dimension{back, floor, offset, web, "web"}
                                                   : Dimension{floor, back, -offset, web, "web"});
}

void addOpeningSizes(SideViewer& view) {
    const double away = view.mm(view.isLevel() ? kUnder : kBehind);
    for (const SectionRun& run : view.runs) {
        if (run.kind != Kind::Opening) continue;
        view.drawing.marks.emplace_back(Dimension{view.place(run.from, view.thickness()),
                                                  view.place(run.to, view.thickness()), -away,
                                                  view.text(run.to - run.from), "opening"});
    }
}

/// The fences that are cut, with their heights over the face they stand on.
void addFences(SideViewer& view) {
    for (const FenceSection& fence : fenceSections(view.project, view.solved, view.cut)) {
        const OutlineLoop loop =
            polygonLoop({view.place(fence.from, fence.bottom), view.place(fence.to, fence.bottom),
                         view.place(fence.to, fence.top), view.place(fence.from, fence.top)});
        view.drawing.marks.emplace_back(Area{Ink::FenceBody, {loop}, std::to_string(fence.index + 1)});
        if (!view.look.dimensions) continue;
        const bool above = view.project.fences[fence.index].face == Face::Layout;
        const double foot = above ? 0 : view.thickness();
        const double height = above ? -fence.top : fence.bottom - view.thickness();
        const Point from = view.place(fence.to, above ? foot : fence.bottom);
        const Point to = view.place(fence.to, above ? fence.top : foot);
        // Towards the face, what lies onwards along the cut is on the right.
        view.drawing.marks.emplace_back(
            Dimension{from, to, -view.mm(kBeside), "fence " + view.text(height), "fence"});
    }
}

/// Where the words begin: under a level view clear of its dimensions, under an upright one's end.
Point firstLine(const SideViewer& view) {
    if (!view.isLevel()) return {-view.mm(kTextsAhead), -view.mm(kUnderAxis)};
    const bool sizes = view.look.dimensions && std::ranges::any_of(view.runs, [](const auto& run) {
                           return run.kind == Kind::Opening;
                       });
    return {view.look.wordsFrom,
            view.place(0, view.thickness()).y - view.mm((sizes ? kUnder : 0) + kLine + 1)};
}

Box boundsOf(const SideViewer& view, Point words) {
    const double room = view.mm(4);
    const Point first = view.place(0, view.isLevel() ? view.thickness() : 0);
    const Point last = view.place(view.length(), view.isLevel() ? 0 : view.thickness());
    return {{first.x - room, std::min(first.y - room, words.y)}, {last.x + room, last.y + view.mm(3)}};
}

}  // namespace

Point SideViewer::place(double along, double depth) const {
    const double drawn = depth * look.exaggeration;
    return isLevel() ? Point{along, -drawn} : Point{drawn, along};
}

std::string SideViewer::text(double size) const { return drawnSize(size, project.units); }

bool SideViewer::isWood(double from, double to) const {
    return std::ranges::any_of(runs, [&](const SectionRun& run) {
        return run.kind == Kind::Wood && run.from <= from + kSamePlace && run.to >= to - kSamePlace;
    });
}

double reachOfWords(const Project& project) {
    constexpr double kLinesEach = 3;
    const auto holes = static_cast<double>(differentHoles(project));
    return holes == 0 ? 0 : kUnderAxis + holes * kLinesEach * kLine;
}

Drawing sideView(const Project& project, const Solved& solved, const std::vector<Finding>& findings,
                 const CuttingLine& cut, const SideViewLook& look) {
    SideViewer view{project, solved, findings, cut, look, sectionAt(project, solved, cut), {}};
    const std::vector<SectionRun> kerfs = allKerfs(view);
    const Point words = firstLine(view);
    view.drawing.bounds = boundsOf(view, words);
    if (look.kerfs) addKerfBands(view, kerfs);
    addWood(view);
    addFences(view);
    addClampHoles(view);
    if (look.dimensions) {
        addKerfDepth(view, kerfs);
        addOpeningSizes(view);
        addHoleTexts(view, words);
    }
    return view.drawing;
}

}  // namespace kerfwall
