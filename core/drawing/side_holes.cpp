// SPDX-License-Identifier: GPL-3.0-or-later
// Clamp holes in a side view.
#include <algorithm>
#include <cmath>
#include <set>

#include "core/drawing/hole_section.h"
#include "core/drawing/side_parts.h"
#include "core/geometry/angle.h"
#include "core/shop/panel_edges.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kLine = 5;  // from one line of text to the next
constexpr double kTextHeight = 3.2;
constexpr double kCentreBeyond = 2;
constexpr double kMouthAway = 3;    // from a hole's mouth to the dimension line of its axis
constexpr double kBeside = 5;       // from a hole to the dimension line of its heights
constexpr double kHeightText = 13;  // room for a height's text beside its line
constexpr double kSignAway = 4.5;   // from the layout face to a sign's middle
constexpr double kSignApart = 6.5;  // signs nearer than this would cover one another
constexpr int kRoundPieces = 48;    // a hole seen end on, drawn taller than wide

/// The hole's number in the project, and how it shows.
struct Shown {
    std::size_t index = 0;
    const ClampHole& hole;
    HoleSection section;
    std::string id;
};

std::vector<Shown> shownHoles(const SideViewer& view) {
    std::vector<Shown> shown;
    for (std::size_t i = 0; i < view.project.clampHoles.size(); ++i) {
        const ClampHole& hole = view.project.clampHoles[i];
        shown.push_back({i, hole, holeSection(view.project, view.solved, hole, view.cut),
                         hole.id.empty() ? std::to_string(i + 1) : hole.id});
    }
    return shown;
}

OutlineLoop boxLoop(const SideViewer& view, double from, double to, double top, double bottom) {
    return polygonLoop(
        {view.place(from, bottom), view.place(to, bottom), view.place(to, top), view.place(from, top)});
}

/// In the view's plane: cut along its length, or hidden lines.
void addLyingHole(SideViewer& view, const Shown& shown) {
    const HoleSection& hole = shown.section;
    const double top = hole.axis - hole.half;
    const double floor = hole.axis + hole.half;
    auto& marks = view.drawing.marks;
    if (hole.cut) {
        marks.emplace_back(
            Area{Ink::ClampHole, {boxLoop(view, hole.mouth, hole.point, top, floor)}, shown.id});
    } else {
        const auto hidden = [&](Point from, Point to) {
            marks.emplace_back(Stroke{Ink::Hidden, from, to, shown.id});
        };
        hidden(view.place(hole.mouth, top), view.place(hole.point, top));
        hidden(view.place(hole.point, top), view.place(hole.point, floor));
        hidden(view.place(hole.point, floor), view.place(hole.mouth, floor));
    }
    const double beyond = hole.point > hole.mouth ? view.mm(kCentreBeyond) : -view.mm(kCentreBeyond);
    marks.emplace_back(Stroke{Ink::Centre, view.place(hole.mouth - beyond, hole.axis),
                              view.place(hole.point + beyond, hole.axis), shown.id});
}

/// Seen end on: cut where it reaches the cutting line, else hidden.
void addEndOnHole(SideViewer& view, const Shown& shown) {
    const HoleSection& hole = shown.section;
    std::vector<Point> round;
    for (int i = 0; i < kRoundPieces; ++i) {
        const double turn = kTurn * i / kRoundPieces;
        round.push_back(
            view.place(hole.mouth + hole.half * std::cos(turn), hole.axis - hole.half * std::sin(turn)));
    }
    view.drawing.marks.emplace_back(
        Area{hole.cut ? Ink::ClampHole : Ink::Hidden, {polygonLoop(round)}, shown.id});
}

const Finding* findingAbout(const SideViewer& view, std::size_t hole, const char* code) {
    const auto found = std::ranges::find_if(
        view.findings, [&](const Finding& finding) { return finding.hole == hole && finding.code == code; });
    return found == view.findings.end() ? nullptr : &*found;
}

Ink inkOf(Severity severity) {
    if (severity == Severity::Stop) return Ink::FindingStop;
    return severity == Severity::Care ? Ink::FindingCare : Ink::FindingNote;
}

const char* codeOf(HoleBreak::Into into) {
    switch (into) {
        case HoleBreak::Into::Opening:
            return "hole-through";
        case HoleBreak::Into::Kerf:
            return "hole-kerf";
        case HoleBreak::Into::Face:
            break;
    }
    return "hole-wall";
}

/// Where it comes through, outlined in its finding's severity.
void addBreaks(SideViewer& view, const Shown& shown) {
    for (const HoleBreak& at : shown.section.breaks) {
        const Finding* finding = findingAbout(view, shown.index, codeOf(at.into));
        const Ink ink = finding ? inkOf(finding->severity) : Ink::FindingStop;
        view.drawing.marks.emplace_back(
            Area{ink, {boxLoop(view, at.from, at.to, at.top, at.bottom)}, shown.id});
    }
}

/// The depth of the axis, outside the panel at a lying hole's mouth, beside one seen end on.
void addAxisHeight(SideViewer& view, const Shown& shown) {
    const HoleSection& hole = shown.section;
    const bool outFirst = hole.lying && hole.mouth < hole.point;  // the mouth is at the cut's beginning
    const double beside = hole.lying ? view.mm(kMouthAway) : hole.half + view.mm(kBeside);
    const double at = hole.mouth + (outFirst ? -beside : beside);
    if (!hole.lying && !view.isWood(at, at + view.mm(kHeightText))) return;
    const Point axis = view.place(hole.mouth, hole.axis);
    const Point face = view.place(hole.mouth, 0);
    // Left of axis -> face is towards the cut's beginning.
    const double offset = outFirst ? beside : -beside;
    const std::string text = "axis " + view.text(hole.axis);
    const bool textOutside = view.isLevel() && outFirst;  // else it would stand on the panel
    view.drawing.marks.emplace_back(
        Dimension{axis, face, offset, textOutside ? std::string() : text, "axis"});
    if (!textOutside) return;
    const Point beyond = view.place(at - view.mm(1.5), hole.axis / 2) - Point{0, view.mm(0.36 * kTextHeight)};
    view.drawing.marks.emplace_back(Label{Ink::Text, beyond, text, kTextHeight, Anchor::Right, 0, "axis"});
}

/// The wood above and below, past a lying hole's point where the wood there has room for both texts.
void addWoodHeights(SideViewer& view, const Shown& shown) {
    const HoleSection& hole = shown.section;
    if (!hole.lying || !view.isLevel()) return;  // upright the texts would not fit between the faces
    const bool onwards = hole.mouth < hole.point;
    const double room = view.mm(kBeside + kHeightText);
    const double from = onwards ? hole.point : hole.point - room;
    if (!view.isWood(from, from + room)) return;
    const double offset = onwards ? -view.mm(kBeside) : room;
    const double above = hole.axis - hole.half;
    const double below = hole.axis + hole.half;
    const auto add = [&](double low, double high) {
        if (!(low - high > 0)) return;
        view.drawing.marks.emplace_back(Dimension{view.place(hole.point, low), view.place(hole.point, high),
                                                  offset, view.text(low - high), "wood"});
    };
    add(above, 0);
    add(view.thickness(), below);
}

/// The signs of what is found about the holes, beside the layout face; such as would cover one another stand
/// side by side.
void addSigns(SideViewer& view, const std::vector<Shown>& holes) {
    std::vector<double> taken;
    for (std::size_t i = 0; i < view.findings.size(); ++i) {
        const Finding& finding = view.findings[i];
        if (!finding.hole || *finding.hole >= holes.size() || !finding.at) continue;
        double along = alongCut(view.cut, *finding.at);
        const auto covers = [&](double other) {
            return std::abs(other - along) < view.mm(kSignApart) - 1e-9;
        };
        while (std::ranges::any_of(taken, covers)) along += view.mm(kSignApart);
        taken.push_back(along);
        view.drawing.marks.emplace_back(Circle{
            inkOf(finding.severity), view.place(along, -view.deep(kSignAway)), 0, std::to_string(i + 1)});
    }
}

/// Clamp holes of one drill at one height: they differ in depth alone.
struct Alike {
    const ClampHole* hole = nullptr;
    double least = 0;
    double most = 0;
    bool several = false;
};

std::vector<Alike> alikeHoles(const Project& project) {
    std::vector<Alike> groups;
    for (const ClampHole& hole : project.clampHoles) {
        const auto same = std::ranges::find_if(groups, [&](const Alike& group) {
            return group.hole->diameter == hole.diameter &&
                   heightOf(project.panel, *group.hole) == heightOf(project.panel, hole);
        });
        if (same == groups.end()) {
            groups.push_back({&hole, hole.depth, hole.depth, false});
            continue;
        }
        *same = {same->hole, std::min(same->least, hole.depth), std::max(same->most, hole.depth), true};
    }
    return groups;
}

std::string boreWords(const SideViewer& view, const Alike& group) {
    return (group.several ? "clamp holes \u2300 " : "clamp hole \u2300 ") + view.text(group.hole->diameter);
}

std::string depthWords(const SideViewer& view, const Alike& group) {
    const std::string most = group.most > group.least ? " to " + view.text(group.most) : "";
    return view.text(group.least) + most + " deep";
}

std::string woodWords(const SideViewer& view, const ClampHole& hole) {
    const double axis = heightOf(view.project.panel, hole);
    const double above = axis - hole.diameter / 2;
    const double below = view.thickness() - axis - hole.diameter / 2;
    const auto wood = [&](double left) {
        return left > 0 ? view.text(left) + " of wood" : std::string("no wood");
    };
    if (std::abs(above - below) < 1e-9) return wood(above) + " above and below";
    return wood(above) + " above, " + (below > 0 ? view.text(below) : "none") + " below";
}

/// True where a line of words that begins at the panel's left side ends not far past its right one.
bool isRoomFor(const SideViewer& view, const std::string& line) {
    constexpr double kLetter = 0.52 * kTextHeight;  // about a letter's width
    constexpr double kPastPanel = 12;               // mm on paper
    return view.mm(kLetter * static_cast<double>(line.size())) <= view.length() + view.mm(kPastPanel);
}

}  // namespace

void addClampHoles(SideViewer& view) {
    const std::vector<Shown> holes = shownHoles(view);
    for (const Shown& shown : holes)
        shown.section.lying ? addLyingHole(view, shown) : addEndOnHole(view, shown);
    if (view.look.dimensions) {
        std::set<std::pair<double, double>> told;  // holes at the same place in the view say the same
        for (const Shown& shown : holes) {
            if (!told.emplace(shown.section.mouth, shown.section.axis).second) continue;
            addAxisHeight(view, shown);
            addWoodHeights(view, shown);
        }
    }
    if (!view.look.findings) return;
    for (const Shown& shown : holes) addBreaks(view, shown);
    addSigns(view, holes);
}

std::size_t differentHoles(const Project& project) { return alikeHoles(project).size(); }

void addHoleTexts(SideViewer& view, Point firstLine) {
    Point at = firstLine;
    const auto write = [&](const std::string& text) {
        view.drawing.marks.emplace_back(Label{Ink::Text, at, text, kTextHeight, Anchor::Left, 0, "hole"});
        at.y -= view.mm(kLine);
    };
    for (const Alike& group : alikeHoles(view.project)) {
        const std::vector<std::string> words{boreWords(view, group), depthWords(view, group),
                                             woodWords(view, *group.hole)};
        const std::string oneLine = words[0] + ", " + words[1] + ", " + words[2];
        if (view.isLevel() && isRoomFor(view, oneLine)) {
            write(oneLine);
        } else if (view.isLevel()) {
            write(words[0] + ", " + words[1]);
            write(words[2]);
        } else {
            for (const std::string& line : words) write(line);
        }
    }
    view.drawing.bounds.low.y = std::min(view.drawing.bounds.low.y, at.y);
}

}  // namespace kerfwall
