// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/laid_lines.h"

#include <cmath>
#include <map>

#include "core/geometry/angle.h"

namespace kerfwall {
namespace {

/// The double's own binary value, for what is irrational anyway.
Number binary(double value) { return Number(value); }

Number toNanometre(double value) {
    constexpr double kNanometresPerMillimetre = 1e6;
    return Number(std::round(value * kNanometresPerMillimetre)) / Number(kNanometresPerMillimetre);
}

/// Through `p` and a second point 1000 mm on along `direction`, rounded to 1 nm.
ExactLine towards(const ExactPoint& p, Point direction) {
    constexpr double kFarOn = 1000;
    const Point at = rounded(p);
    const ExactPoint q{toNanometre(at.x + kFarOn * direction.x), toNanometre(at.y + kFarOn * direction.y)};
    return {p, q.x - p.x, q.y - p.y};
}

class LineResolver {
  public:
    LineResolver(const Project& project, const ExactPanel& panel) : m_project(project), m_panel(panel) {
        for (std::size_t i = 0; i < project.lines.size(); ++i) m_index[project.lines[i].id] = i;
        m_lines.resize(project.lines.size());
        m_state.resize(project.lines.size(), State::Fresh);
    }

    /// None where a crossing it stands on does not exist, or lines stand on one another in a ring.
    const ExactLine* line(std::size_t index) {
        if (m_state[index] == State::Fresh) {
            m_state[index] = State::Busy;
            const auto found = std::visit([this](const auto& place) { return laid(place); }, m_project.lines[index].place);
            m_state[index] = found ? State::Known : State::Nowhere;
            if (found) m_lines[index] = *found;
        }
        return m_state[index] == State::Known ? &m_lines[index] : nullptr;
    }

  private:
    enum class State { Fresh, Busy, Known, Nowhere };

    const ExactLine* named(const LineId& id) {
        const auto found = m_index.find(id);
        return found == m_index.end() ? nullptr : line(found->second);
    }
    const ExactLine* base(const Base& from) {
        if (const auto* edge = std::get_if<Edge>(&from)) return &m_panel.edge(*edge);
        return named(std::get<LineId>(from));
    }
    std::optional<ExactLine> laid(const ByOffset& place) {
        const ExactLine* from = base(place.from);
        if (!from) return std::nullopt;
        const Number distance = exactly(place.distance);
        const bool upright = CGAL::is_zero(from->dx);
        if (upright || CGAL::is_zero(from->dy)) {
            const Number sign = CGAL::is_positive(upright ? from->dy : from->dx) ? 1 : -1;
            ExactPoint p = from->p;
            (upright ? p.x : p.y) += upright ? Number(-sign * distance) : Number(sign * distance);
            return ExactLine(p, from->dx, from->dy);
        }
        const Point away = place.distance * leftOf(from->direction());
        return ExactLine({from->p.x + binary(away.x), from->p.y + binary(away.y)}, from->dx, from->dy);
    }
    std::optional<ExactLine> laid(const ByAngle& place) {
        const ExactLine* from = base(place.from);
        if (!from) return std::nullopt;
        std::optional<ExactPoint> through;
        if (const auto* point = std::get_if<Point>(&place.through)) {
            through = exactly(*point);
        } else {
            const auto& crossing = std::get<CrossingOf>(place.through);
            const ExactLine* first = named(crossing.first);
            const ExactLine* second = named(crossing.second);
            if (!first || !second || turnBetween(*first, *second) == CGAL::ZERO) return std::nullopt;
            through = crossingOf(*first, *second);
        }
        const double eighths = place.angle / 45;
        if (eighths == std::round(eighths)) {
            Number dx = from->dx;
            Number dy = from->dy;
            const int turns = ((static_cast<int>(eighths) % 8) + 8) % 8;
            for (int i = 0; i < turns; ++i) std::tie(dx, dy) = std::pair<Number, Number>(dx - dy, dx + dy);
            return ExactLine(*through, dx, dy);
        }
        const double angle = radians(place.angle);
        const Point along = from->direction();
        return towards(*through, std::cos(angle) * along + std::sin(angle) * leftOf(along));
    }
    std::optional<ExactLine> laid(const ByPoints& place) {
        const ExactPoint p = exactly(place.p);
        const ExactPoint q = exactly(place.q);
        return ExactLine(p, q.x - p.x, q.y - p.y);
    }
    std::optional<ExactLine> laid(const ByMarks& place) {
        const ExactPoint p = m_panel.place(place.a);
        const ExactPoint q = m_panel.place(place.b);
        if (p.x == q.x && p.y == q.y) return std::nullopt;
        return ExactLine(p, q.x - p.x, q.y - p.y);
    }
    std::optional<ExactLine> laid(const ByMirror& place) {
        const ExactLine* of = named(place.of);
        if (!of) return std::nullopt;
        ExactLine axis;
        if (const auto* centre = std::get_if<Centre>(&place.about)) {
            axis = *centre == Centre::Upright ? ExactLine({m_panel.width / 2, 0}, 0, 1)
                                              : ExactLine({0, m_panel.height / 2}, 1, 0);
        } else {
            const ExactLine* about = named(std::get<LineId>(place.about));
            if (!about) return std::nullopt;
            axis = *about;
        }
        const Number square = axis.dx * axis.dx + axis.dy * axis.dy;
        const Number off = (axis.dx * of->p.y - axis.dy * of->p.x + axis.c) / square;
        const ExactPoint p{of->p.x + 2 * off * axis.dy, of->p.y - 2 * off * axis.dx};
        const Number along = 2 * (axis.dx * of->dx + axis.dy * of->dy) / square;
        const Number dx = along * axis.dx - of->dx;
        const Number dy = along * axis.dy - of->dy;
        const bool slanting = !CGAL::is_zero(axis.dx) && !CGAL::is_zero(axis.dy) &&
                              CGAL::abs(axis.dx) != CGAL::abs(axis.dy);
        if (slanting) return towards(p, unit({CGAL::to_double(dx), CGAL::to_double(dy)}));
        return ExactLine(p, dx, dy);
    }

    const Project& m_project;
    const ExactPanel& m_panel;
    std::map<LineId, std::size_t> m_index;
    std::vector<ExactLine> m_lines;
    std::vector<State> m_state;
};

}  // namespace

std::vector<std::optional<ExactLine>> laidLines(const Project& project, const ExactPanel& panel) {
    LineResolver resolver(project, panel);
    std::vector<std::optional<ExactLine>> lines;
    for (std::size_t i = 0; i < project.lines.size(); ++i) {
        const ExactLine* line = resolver.line(i);
        lines.push_back(line ? std::optional(*line) : std::nullopt);
    }
    return lines;
}

}  // namespace kerfwall
