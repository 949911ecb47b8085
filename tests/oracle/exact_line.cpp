// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/exact_line.h"

#include <charconv>
#include <cmath>
#include <numbers>
#include <string>

namespace kerfwall::oracle {
namespace {

ExactPoint leftTurned(const ExactPoint& d) { return {-d.y, d.x}; }

struct Resolver {
    const Project& project;
    std::array<ExactLine, 4> edges;
    std::vector<std::optional<ExactLine>> done;
    int depth = 0;

    std::optional<ExactLine> base(const Base& from) {
        if (const Edge* edge = std::get_if<Edge>(&from)) return edges[static_cast<std::size_t>(*edge)];
        return line(std::get<LineId>(from));
    }

    std::optional<ExactLine> line(const LineId& id) {
        for (std::size_t i = 0; i < project.lines.size(); ++i)
            if (project.lines[i].id == id) return line(i);
        return std::nullopt;
    }

    std::optional<ExactLine> line(std::size_t i) {
        if (done[i]) return done[i];
        if (++depth > 600) return std::nullopt;
        done[i] = std::visit([&](const auto& place) { return laid(place); }, project.lines[i].place);
        --depth;
        return done[i];
    }

    std::optional<ExactLine> laid(const ByOffset& place) {
        const auto from = base(place.from);
        if (!from || (from->d.x != 0 && from->d.y != 0)) return std::nullopt;
        const Exact size = abs(from->d.x + from->d.y);
        const ExactPoint left = leftTurned(from->d);
        const Exact t = exactNumber(place.distance) / size;
        return ExactLine{{from->p.x + t * left.x, from->p.y + t * left.y}, from->d};
    }

    std::optional<ExactLine> laid(const ByAngle& place) {
        const Edge* edge = std::get_if<Edge>(&place.from);
        const Point* through = std::get_if<Point>(&place.through);
        if (!edge || !through) return std::nullopt;
        const ExactPoint p = exactPoint(*through);
        ExactPoint d = edges[static_cast<std::size_t>(*edge)].d;
        if (std::fmod(place.angle, 45.0) == 0) {
            for (int k = static_cast<int>(place.angle / 45.0 + 8 * 10) % 8; k > 0; --k)
                d = {d.x - d.y, d.x + d.y};  // an eighth of a turn, longer by √2
            return ExactLine{p, d};
        }
        const Point way = rounded(d);
        const double turned = std::atan2(way.y, way.x) + place.angle * std::numbers::pi / 180;
        const auto nanometres = [](double mm) { return Exact(std::llround(mm * 1e6)) / 1000000; };
        const ExactPoint second{nanometres(through->x + 1000 * std::cos(turned)),
                                nanometres(through->y + 1000 * std::sin(turned))};
        return ExactLine{p, second - p};
    }

    std::optional<ExactLine> laid(const ByPoints& place) {
        const ExactPoint p = exactPoint(place.p);
        return ExactLine{p, exactPoint(place.q) - p};
    }

    ExactPoint markAt(const EdgeMark& mark) {
        const ExactLine& edge = edges[static_cast<std::size_t>(mark.edge)];
        const Exact t = exactNumber(mark.at) / abs(edge.d.x + edge.d.y);
        return {edge.p.x + t * edge.d.x, edge.p.y + t * edge.d.y};
    }

    std::optional<ExactLine> laid(const ByMarks& place) {
        const ExactPoint a = markAt(place.a);
        return ExactLine{a, markAt(place.b) - a};
    }

    std::optional<ExactLine> laid(const ByMirror& place) {
        const Centre* centre = std::get_if<Centre>(&place.about);
        const auto of = line(place.of);
        if (!centre || !of) return std::nullopt;
        ExactLine image = *of;
        if (*centre == Centre::Upright) {
            image.p.x = exactNumber(project.panel.width) - image.p.x;
            image.d.x = -image.d.x;
        } else {
            image.p.y = exactNumber(project.panel.height) - image.p.y;
            image.d.y = -image.d.y;
        }
        return image;
    }
};

}  // namespace

Exact exactNumber(double value) {
    char text[64];
    const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::scientific).ptr;
    const std::string number(text, end);
    const std::size_t e = number.find('e');
    int power = std::stoi(number.substr(e + 1));
    std::string digits;
    bool behind = false;
    for (const char c : number.substr(0, e)) {
        if (c == '.')
            behind = true;
        else {
            digits += c;
            if (behind) --power;
        }
    }
    Exact exact{boost::multiprecision::mpz_int(digits)};
    for (; power > 0; --power) exact *= 10;
    for (; power < 0; ++power) exact /= 10;
    return exact;
}

ExactPoint exactPoint(Point p) { return {exactNumber(p.x), exactNumber(p.y)}; }

std::array<ExactLine, 4> panelEdges(const Panel& panel) {
    const Exact w = exactNumber(panel.width);
    const Exact h = exactNumber(panel.height);
    return {ExactLine{{0, 0}, {w, 0}}, ExactLine{{w, 0}, {0, h}}, ExactLine{{w, h}, {-w, 0}},
            ExactLine{{0, h}, {0, -h}}};
}

std::optional<std::vector<ExactLine>> exactLines(const Project& project) {
    Resolver resolver{project, panelEdges(project.panel), {}, 0};
    resolver.done.resize(project.lines.size());
    std::vector<ExactLine> lines;
    for (std::size_t i = 0; i < project.lines.size(); ++i) {
        const auto line = resolver.line(i);
        if (!line || (line->d.x == 0 && line->d.y == 0)) return std::nullopt;
        lines.push_back(*line);
    }
    return lines;
}

std::optional<std::pair<ExactPoint, ExactPoint>> onPanel(const ExactLine& line,
                                                         const std::array<ExactLine, 4>& edges) {
    std::optional<Exact> low;
    std::optional<Exact> high;
    for (const ExactLine& edge : edges) {
        // At p + t d the offset from the edge is a + t b; inside where it is positive.
        const Exact a = offsetOf(edge, line.p);
        const Exact b = crossOf(edge.d, line.d);
        if (b == 0) {
            if (a <= 0) return std::nullopt;
            continue;
        }
        const Exact t = -a / b;
        if (b > 0 && (!low || t > *low)) low = t;
        if (b < 0 && (!high || t < *high)) high = t;
    }
    if (!low || !high || *low >= *high) return std::nullopt;
    const auto at = [&](const Exact& t) {
        return ExactPoint{line.p.x + t * line.d.x, line.p.y + t * line.d.y};
    };
    return std::pair{at(*low), at(*high)};
}

}  // namespace kerfwall::oracle
