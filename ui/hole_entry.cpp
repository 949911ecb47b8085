// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hole_entry.h"

#include <QCoreApplication>

#include "core/geometry/edge_place.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

QString text(const char* source) { return QCoreApplication::translate("kerfwall::HoleEntry", source); }

}  // namespace

std::vector<EntryField> holeFields(const Project& project, std::size_t hole) {
    if (hole >= project.clampHoles.size()) return {};
    const ClampHole& of = project.clampHoles[hole];
    using Kind = EntryField::Kind;
    return {{Kind::Length, text("On %1").arg(edgeCountText(of.edge)), of.at, {}, 0},
            {Kind::Length, text("diameter"), of.diameter, {}, 0},
            {Kind::Length, text("depth"), of.depth, {}, 0},
            {Kind::Length, text("below the face"), of.height.value_or(project.panel.thickness / 2), {}, 0}};
}

std::optional<Project> withHoleField(const Project& project, std::size_t hole, int field, double value) {
    if (hole >= project.clampHoles.size()) return std::nullopt;
    Project next = project;
    ClampHole& of = next.clampHoles[hole];
    const double run = edgeLength(project.panel, of.edge);
    const double across = edgeLength(project.panel, of.edge == Edge::Bottom || of.edge == Edge::Top ? Edge::Left : Edge::Bottom);
    const auto within = [&](double low, double high) { return value > low && value < high; };
    switch (field) {
        case 0:
            if (value < 0 || value > run) return std::nullopt;
            of.at = value;
            return next;
        case 1:
            if (value < 1 || value >= project.panel.thickness) return std::nullopt;
            of.diameter = value;
            return next;
        case 2:
            if (!within(0, across)) return std::nullopt;
            of.depth = value;
            return next;
        case 3:
            if (!within(0, project.panel.thickness)) return std::nullopt;
            of.height = value;
            return next;
        default: return std::nullopt;
    }
}

QString holeFieldRange(const Project& project, std::size_t hole, int field) {
    if (hole >= project.clampHoles.size()) return {};
    const Edge edge = project.clampHoles[hole].edge;
    const auto length = [&](double mm) { return lengthUnitFor(mm, project.units); };
    const bool level = edge == Edge::Left || edge == Edge::Right;
    switch (field) {
        case 0: return text("A place on the %1 lies between 0 and %2.").arg(edgeText(edge), length(edgeLength(project.panel, edge)));
        case 1: return text("A hole is %1 wide or more, and narrower than the panel's %2.").arg(length(1), length(project.panel.thickness));
        case 2: return text("A clamp hole is blind: over 0 and under %1 deep.").arg(length(level ? project.panel.width : project.panel.height));
        default: return text("The axis lies inside the panel's thickness: over 0 and under %1.").arg(length(project.panel.thickness));
    }
}

}  // namespace kerfwall
