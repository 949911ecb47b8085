// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/measured_text.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/geometry/edge_name.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

QString text(const char* source) { return QCoreApplication::translate("kerfwall::MeasuredText", source); }

QString edgeNamed(const std::string& name) {
    const auto edge = std::ranges::find_if(kEdges, [&](Edge e) { return edgeName(e) == name; });
    return edge == kEdges.end() ? QString() : edgeText(*edge);
}

}  // namespace

QString measurableText(const Measurable& thing) {
    const QString first = QString::fromStdString(thing.first), second = QString::fromStdString(thing.second);
    switch (thing.on) {
        case MeasuredOn::Anywhere: return text("this place");
        case MeasuredOn::PanelCorner: return text("the panel's corner");
        case MeasuredOn::Crossing: return second.isEmpty() ? text("the end of line %1").arg(first) : text("the crossing of %1 and %2").arg(first, second);
        case MeasuredOn::Corner: return text("the corner of fence %1").arg(first);
        case MeasuredOn::HoleEnd: return text("the end of clamp hole %1").arg(first);
        case MeasuredOn::Line: return text("line %1").arg(first);
        case MeasuredOn::Edge: return text("the %1").arg(edgeNamed(thing.first));
        case MeasuredOn::Hole: return text("the side of clamp hole %1").arg(first);
        case MeasuredOn::Fence: return text("fence %1").arg(first);
        case MeasuredOn::Opening: return thing.kind == Measurable::Kind::Arc ? text("an arc of the opening") : text("the opening");
        case MeasuredOn::Work: return thing.kind == Measurable::Kind::Arc ? text("an arc in the work") : text("the opening in the work");
    }
    return {};
}

QString aloneText(const Project& project, const Measurable& thing) {
    const Units units = project.units;
    switch (thing.kind) {
        case Measurable::Kind::Arc: return text("radius %1").arg(lengthUnitFor(thing.radius, units));
        case Measurable::Kind::Straight:
            return text("%1 long, %2 from the reference edge")
                .arg(lengthUnitFor(distance(thing.from, thing.to), units), angleFor(angleFromReference(project.panel, thing)));
        case Measurable::Kind::Spot:
            return text("%1 from the left, %2 up").arg(lengthUnitFor(thing.at.x, units), lengthUnitFor(thing.at.y, units));
    }
    return {};
}

QString measurementText(const Project& project, const Measurement& measured) {
    const Units units = project.units;
    if (measured.angle) return text("%1 between them").arg(angleFor(*measured.angle));
    const QString whole = lengthUnitFor(measured.distance, units);
    if (measured.isParallel) return text("%1, parallel").arg(whole);
    return text("%1 (%2 across, %3 up)").arg(whole, lengthUnitFor(measured.across, units), lengthUnitFor(measured.up, units));
}

}  // namespace kerfwall
