// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/svg_path.h"

#include <cmath>
#include <optional>

#include "core/says/svg_curves.h"
#include "core/says/svg_scanner.h"

namespace kerfwall {
namespace {

constexpr std::string_view kCommands = "MmLlHhVvZzCcSsQqTtAa";

class PathReader {
  public:
    PathReader(std::string_view data, double tolerance) : m_scanner(data), m_tolerance(tolerance) {}

    std::expected<std::vector<Point>, std::string> read() {
        while (m_trouble.empty() && !m_scanner.isAtEnd()) readCommand();
        if (!m_trouble.empty()) return std::unexpected(m_trouble);
        return outline();
    }

  private:
    void refuse(const std::string& sentence) {
        if (m_trouble.empty()) m_trouble = sentence;
    }
    [[nodiscard]] std::string here() const { return "At sign " + std::to_string(m_scanner.place()) + " of its data the path "; }

    void readCommand() {
        const std::size_t place = m_scanner.place();
        const auto letter = m_scanner.letter();
        if (letter && kCommands.contains(*letter)) {
            m_command = *letter;
            m_place = place;
            if (m_corners.empty() && m_command != 'M' && m_command != 'm') return refuse("The path does not begin with a place; let its data begin with M and two numbers.");
        } else if (letter || m_command == 0) {
            return refuse("At sign " + std::to_string(place) + " of its data the path has no command that SVG knows; save it again from the drawing program.");
        } else if (m_command == 'Z' || m_command == 'z') {
            return refuse(here() + "goes on without a command after it was closed; save it again from the drawing program.");
        }
        runCommand();
        if (m_corners.size() > kMostSvgCorners) refuse("The path has more than " + std::to_string(kMostSvgCorners) + " corners once its curves are made straight; draw it simpler.");
    }

    void runCommand() {
        const char before = m_last;
        m_relative = m_command >= 'a';
        m_last = m_relative ? static_cast<char>(m_command - 'a' + 'A') : m_command;
        const Point base = m_relative ? m_at : Point{};
        if (m_isClosed && m_last != 'Z') return refuse("The path holds several outlines, the second from sign " + std::to_string(m_place) + " of its data on; keep one of them.");
        switch (m_last) {
            case 'M': return move(base);
            case 'L': return lineTo(place(base));
            case 'H': return lineTo({number() + base.x, m_at.y});
            case 'V': return lineTo({m_at.x, number() + base.y});
            case 'Z': return close();
            case 'C': return cubic(place(base), base);
            case 'S': return cubic(before == 'C' || before == 'S' ? mirrored() : m_at, base);
            case 'Q': return quadratic(place(base), base);
            case 'T': return quadratic(before == 'Q' || before == 'T' ? mirrored() : m_at, base);
            default: return arc(base);
        }
    }

    double number() {
        const auto value = m_scanner.number();
        if (!value) refuse(here() + "needs a number of at most " + std::to_string(static_cast<long>(kLargestSvgNumber)) + "; save it again from the drawing program.");
        return value.value_or(0);
    }
    bool flag() {
        const auto value = m_scanner.flag();
        if (!value) refuse(here() + "needs 0 or 1 for its arc; save it again from the drawing program.");
        return value.value_or(false);
    }
    Point place(Point base) {
        const double x = number();
        const double y = number();
        return {base.x + x, base.y + y};
    }
    [[nodiscard]] Point mirrored() const { return {2 * m_at.x - m_control.x, 2 * m_at.y - m_control.y}; }

    void move(Point base) {
        const Point to = place(base);
        if (m_corners.size() > 1) return refuse("The path holds several outlines, the second from sign " + std::to_string(m_place) + " of its data on; keep one of them.");
        m_corners = {to};
        m_at = to;
        m_command = m_relative ? 'l' : 'L';  // more places are sides
    }
    void add(const std::vector<Point>& corners) {
        if (!m_trouble.empty()) return;
        m_corners.insert(m_corners.end(), corners.begin(), corners.end());
        m_at = m_corners.back();
    }
    void lineTo(Point to) { add({to}); }
    void close() {
        m_isClosed = true;
        m_at = m_corners.front();
    }
    void cubic(Point first, Point base) {
        const Point second = place(base);
        const Point to = place(base);
        m_control = second;
        add(cubicCorners(m_at, first, second, to, m_tolerance));
    }
    void quadratic(Point middle, Point base) {
        const Point to = place(base);
        m_control = middle;
        add(quadraticCorners(m_at, middle, to, m_tolerance));
    }
    void arc(Point base) {
        SvgArc arc{m_at, number(), number(), number(), flag(), flag(), {}};
        arc.to = place(base);
        add(arcCorners(arc, m_tolerance));
    }

    [[nodiscard]] std::expected<std::vector<Point>, std::string> outline() const {
        if (m_corners.empty()) return std::unexpected("The path has no data; draw an outline in it.");
        std::vector<Point> corners;
        const auto isSame = [&](Point a, Point b) { return std::hypot(a.x - b.x, a.y - b.y) <= 1e-6 * m_tolerance; };
        for (const Point& corner : m_corners) {
            if (corners.empty() || !isSame(corners.back(), corner)) corners.push_back(corner);
        }
        const bool meets = corners.size() > 1 && isSame(corners.front(), corners.back());
        if (!m_isClosed && !meets) return std::unexpected("The path is open: it ends elsewhere than it begins; close it in the drawing program.");
        if (meets) corners.pop_back();
        if (corners.size() < 3) return std::unexpected("The path has fewer than three corners and encloses nothing; draw an outline in it.");
        return corners;
    }

    SvgScanner m_scanner;
    double m_tolerance;
    std::vector<Point> m_corners;
    Point m_at;
    Point m_control;  // of the curve before
    char m_command = 0;
    char m_last = 0;
    std::size_t m_place = 1;
    bool m_relative = false;
    bool m_isClosed = false;
    std::string m_trouble;
};

}  // namespace

std::expected<std::vector<Point>, std::string> readSvgPath(std::string_view data, double tolerance) {
    return PathReader(data, tolerance).read();
}

std::expected<std::vector<double>, std::string> readSvgNumbers(std::string_view text) {
    SvgScanner scanner(text);
    std::vector<double> numbers;
    while (!scanner.isAtEnd()) {
        const auto number = scanner.number();
        if (!number) return std::unexpected("At sign " + std::to_string(scanner.place()) + " of its list a number is missing; save it again from the drawing program.");
        numbers.push_back(*number);
    }
    return numbers;
}

}  // namespace kerfwall
