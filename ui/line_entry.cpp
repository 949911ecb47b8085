// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/line_entry.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "core/geometry/edge_place.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kFurthest = 10000;  // mm, as the project file says
constexpr double kWidestAngle = 360;

QString text(const char* source) { return QCoreApplication::translate("kerfwall::LineEntry", source); }

/// A number of a place that can be typed.
struct Number {
    EntryField::Kind kind;
    QString label;
    double* value;
};

/// The typed numbers of a place, in the order they are shown.
std::vector<Number> numbersOf(Place& place) {
    using Kind = EntryField::Kind;
    if (auto* offset = std::get_if<ByOffset>(&place)) {
        return {{Kind::Length, text("From %1").arg(baseText(offset->from)), &offset->distance}};
    }
    if (auto* angle = std::get_if<ByAngle>(&place)) {
        std::vector<Number> numbers{{Kind::Angle, text("Angle from %1").arg(baseText(angle->from)), &angle->angle}};
        if (auto* through = std::get_if<Point>(&angle->through)) {
            numbers.push_back({Kind::Length, text("through x"), &through->x});
            numbers.push_back({Kind::Length, text("y"), &through->y});
        }
        return numbers;
    }
    if (auto* marks = std::get_if<ByMarks>(&place)) {
        return {{Kind::Length, text("On %1").arg(edgeCountText(marks->a.edge)), &marks->a.at},
                {Kind::Length, text("on %1").arg(edgeCountText(marks->b.edge)), &marks->b.at}};
    }
    if (auto* points = std::get_if<ByPoints>(&place)) {
        return {{Kind::Length, text("From x"), &points->p.x},
                {Kind::Length, text("y"), &points->p.y},
                {Kind::Length, text("to x"), &points->q.x},
                {Kind::Length, text("y"), &points->q.y}};
    }
    return {};
}

}  // namespace

std::vector<EntryField> lineFields(const Project& project, const LineId& id) {
    const LayoutLine* line = findLine(project, id);
    if (!line) return {};
    Place place = line->place;
    std::vector<EntryField> fields;
    for (const Number& number : numbersOf(place)) {
        fields.push_back({number.kind, number.label, *number.value, {}, 0});
    }
    return fields;
}

std::optional<Project> withLineField(const Project& project, const LineId& id, int field, double value) {
    Project next = project;
    const auto line = std::ranges::find(next.lines, id, &LayoutLine::id);
    if (line == next.lines.end()) return std::nullopt;
    const std::vector<Number> numbers = numbersOf(line->place);
    if (field < 0 || static_cast<std::size_t>(field) >= numbers.size()) return std::nullopt;
    const Number& number = numbers[static_cast<std::size_t>(field)];
    const double most = number.kind == EntryField::Kind::Angle ? kWidestAngle : kFurthest;
    if (!(std::abs(value) <= most)) return std::nullopt;
    *number.value = value;
    const auto* points = std::get_if<ByPoints>(&line->place);
    if (points && points->p == points->q) return std::nullopt;
    if (const auto* marks = std::get_if<ByMarks>(&line->place)) {
        // A mark lies on its edge.
        for (const EdgeMark& mark : {marks->a, marks->b}) {
            if (mark.at < 0 || mark.at > edgeLength(next.panel, mark.edge)) return std::nullopt;
        }
    }
    return next;
}

}  // namespace kerfwall
