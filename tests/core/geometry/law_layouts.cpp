// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/geometry/law_layouts.h"

#include <cmath>
#include <numbers>
#include <optional>
#include <random>
#include <set>
#include <string>

#include "core/geometry/solve.h"

namespace kerfwall::laws {
namespace {

class Dice {
  public:
    explicit Dice(std::uint64_t seed) : m_engine(seed) {}
    int between(int low, int high) {
        return low + static_cast<int>(m_engine() % static_cast<std::uint64_t>(high - low + 1));
    }

  private:
    std::mt19937_64 m_engine;
};

Project emptyProject(double bit, double firstKerf, double secondKerf) {
    Project project;
    project.panel.width = 600;
    project.panel.height = 500;
    project.panel.thickness = 18;
    project.kerfDepth = 6;
    Bench bench;
    for (const double kerf : {firstKerf, secondKerf}) {
        Saw saw;
        saw.id = "rail" + std::to_string(bench.saws.size());
        saw.kind = SawKind::GuideRail;
        saw.kerf = kerf;
        saw.blade = 160;
        bench.saws.push_back(saw);
    }
    bench.trimBit = TrimBit{};
    bench.trimBit->diameter = bit;
    project.bench = bench;
    return project;
}

void lay(Project& project, Point p, Point q, int saw) {
    LayoutLine line;
    line.id = "L" + std::to_string(project.lines.size() + 1);
    line.place = ByPoints{p, q};
    line.saw = "rail" + std::to_string(saw);
    line.extent = Extent::Through;
    project.lines.push_back(line);
}

double tenth(double mm) { return std::round(mm * 10) / 10; }

// The polygon's centroid, on a 0.001 grid.
Point middleOf(const std::vector<Point>& polygon) {
    double area = 0;
    Point sum;
    for (std::size_t i = 1; i + 1 < polygon.size(); ++i) {
        const double part = cross(polygon[i] - polygon[0], polygon[i + 1] - polygon[0]);
        area += part;
        sum = sum + (part / 3) * (polygon[0] + polygon[i] + polygon[i + 1]);
    }
    return {std::round(sum.x / area * 1000) / 1000, std::round(sum.y / area * 1000) / 1000};
}

// Marks the face at `start` and up to `more` of its neighbours over long sides.
bool mark(Project& project, Point start, int more) {
    Cutout cutout;
    cutout.id = "cut1";
    Point at = start;
    std::set<std::string> marked;
    for (int i = 0; i <= more; ++i) {
        const std::vector<Point> face = facePolygon(project, at);
        if (face.empty()) return false;
        const Point seed = middleOf(face);
        const auto id = faceAt(project, seed);
        if (!id || id != faceAt(project, at)) return false;
        for (const Point& corner : face)
            if (corner.x < 40 || corner.y < 40 || corner.x > 560 || corner.y > 460) return i > 0;
        marked.insert(*id);
        cutout.seeds.push_back(seed);
        project.cutouts = {cutout};
        std::optional<Point> next;
        for (std::size_t k = 0; k < face.size() && !next; ++k) {
            const Point a = face[k];
            const Point b = face[(k + 1) % face.size()];
            if (distance(a, b) < 8) continue;
            const Point over = 0.5 * (a + b) - 0.5 * leftOf(unit(b - a));
            const auto other = faceAt(project, over);
            if (other && !marked.count(*other)) next = over;
        }
        if (!next) break;
        at = *next;
    }
    return true;
}

std::optional<Project> drawnProject(Dice& dice) {
    static constexpr double kBits[] = {8, 9.5, 12.7, 16};
    Project project = emptyProject(kBits[dice.between(0, 3)], 3.2, 2.2);
    const Point c{300, 250};
    const int sides = dice.between(4, 7);
    for (int i = 0; i < sides; ++i) {
        const double a = (360.0 * i / sides + dice.between(-14, 14)) * std::numbers::pi / 180;
        const double far = dice.between(150, 450) / 10.0;
        const Point p{tenth(c.x + far * std::cos(a)), tenth(c.y + far * std::sin(a))};
        const Point q{tenth(p.x - 90 * std::sin(a)), tenth(p.y + 90 * std::cos(a))};
        if (dice.between(0, 1) == 0)
            lay(project, p, q, dice.between(0, 1));
        else
            lay(project, q, p, dice.between(0, 1));
    }
    for (int i = dice.between(0, 4); i > 0; --i) {
        const Point p{dice.between(2200, 3800) / 10.0, dice.between(1700, 3300) / 10.0};
        const double a = dice.between(0, 359) * std::numbers::pi / 180;
        lay(project, p, {tenth(p.x + 90 * std::cos(a)), tenth(p.y + 90 * std::sin(a))}, dice.between(0, 1));
    }
    if (!mark(project, {c.x + 0.013, c.y + 0.007}, dice.between(0, 2))) return std::nullopt;
    return project;
}

std::optional<Project> griddedProject(Dice& dice) {
    Project project = emptyProject(10, 3, 4);
    static constexpr Point kWays[] = {{60, 0}, {0, 60}, {60, 60}, {-60, 60}};
    std::set<std::pair<int, int>> taken;
    const int count = dice.between(6, 11);
    while (static_cast<int>(project.lines.size()) < count) {
        const int way = dice.between(0, 3);
        const Point p{250.0 + 5 * dice.between(0, 20), 200.0 + 5 * dice.between(0, 20)};
        const Point d = kWays[way];
        if (!taken.insert({way, static_cast<int>(cross(d, p))}).second) continue;
        lay(project, p, p + d, dice.between(0, 1));
    }
    const Point start{255.0 + 5 * dice.between(0, 18) + 1.3, 205.0 + 5 * dice.between(0, 18) + 0.4};
    if (!mark(project, start, dice.between(0, 3))) return std::nullopt;
    return project;
}

Project firstFit(std::uint64_t seed, const std::function<std::optional<Project>(Dice&)>& draw) {
    for (std::uint64_t attempt = 0;; ++attempt) {
        Dice dice(seed * 1000003 + attempt * 7919);
        std::optional<Project> project = draw(dice);
        if (!project) continue;
        const Solved solved = solve(*project);
        if (!solved.troubles.empty() || solved.cutouts.size() != 1) continue;
        if (solved.cutouts[0].open || solved.cutouts[0].drawnArea < 150) continue;
        return *project;
    }
}

}  // namespace

Project seededProject(std::uint64_t seed) { return firstFit(seed, drawnProject); }

Project gridProject(std::uint64_t seed) { return firstFit(seed, griddedProject); }

Project moved(const Project& project, const std::function<Point(Point)>& where) {
    const auto clean = [&](Point p) {
        const Point at = where(p);
        return Point{std::round(at.x * 1e10) / 1e10, std::round(at.y * 1e10) / 1e10};
    };
    Project result = project;
    for (LayoutLine& line : result.lines) {
        ByPoints& place = std::get<ByPoints>(line.place);
        place = {clean(place.p), clean(place.q)};
    }
    for (Cutout& cutout : result.cutouts)
        for (Point& seed : cutout.seeds) seed = clean(seed);
    return result;
}

}  // namespace kerfwall::laws
