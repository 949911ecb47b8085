// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/svg_shapes.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <initializer_list>
#include <vector>

#include "core/says/svg_frame.h"

namespace kerfwall {
namespace {

constexpr std::array<std::string_view, 6> kShapes{"path", "polygon", "polyline", "rect", "circle", "ellipse"};
constexpr double kUnitsPerMm = 96 / 25.4;  // a length with a unit counts in px

class Lengths {
  public:
    Lengths(std::string_view element, const SvgAttribute& attribute) : m_element(element), m_attribute(attribute) {}

    double of(std::string_view name, double absent) {
        const auto text = m_attribute(name);
        if (!text || *text == "auto") return absent;
        const auto mm = readSvgLength(*text);
        if (!mm) refuse(name, mm.error());
        return mm.value_or(0) * kUnitsPerMm;
    }
    double above(std::string_view name, double absent = 0) {
        const double size = of(name, absent);
        if (size <= 0) refuse(name, "is not above zero; give it a size.");
        return size;
    }
    [[nodiscard]] bool has(std::string_view name) const { return m_attribute(name).has_value(); }
    [[nodiscard]] std::expected<std::string, std::string> result(std::string data) const {
        if (!m_trouble.empty()) return std::unexpected(m_trouble);
        return data;
    }

  private:
    void refuse(std::string_view name, const std::string& why) {
        if (m_trouble.empty()) m_trouble = "The " + std::string(m_element) + "'s " + std::string(name) + " " + why;
    }
    std::string_view m_element;
    const SvgAttribute& m_attribute;
    std::string m_trouble;
};

std::string data(std::initializer_list<std::pair<char, std::vector<double>>> commands) {
    std::string text;
    for (const auto& [command, numbers] : commands) {
        text += command;
        for (const double number : numbers) {
            std::array<char, 64> digits{};
            text += ' ';
            text.append(digits.data(), std::to_chars(digits.data(), digits.data() + digits.size(), number).ptr);
        }
    }
    return text;
}

std::expected<std::string, std::string> roundData(Lengths lengths, bool isCircle) {
    const double rx = lengths.above(isCircle ? "r" : "rx");
    const double ry = isCircle ? rx : lengths.above("ry");
    const double x = lengths.of("cx", 0);
    const double y = lengths.of("cy", 0);
    return lengths.result(data({{'M', {x - rx, y}}, {'A', {rx, ry, 0, 0, 1, x + rx, y}}, {'A', {rx, ry, 0, 0, 1, x - rx, y}}, {'Z', {}}}));
}

std::expected<std::string, std::string> rectData(Lengths lengths) {
    const double x = lengths.of("x", 0);
    const double y = lengths.of("y", 0);
    const double w = lengths.above("width");
    const double h = lengths.above("height");
    const double rx = std::min(lengths.of("rx", lengths.of("ry", 0)), w / 2);
    const double ry = std::min(lengths.of("ry", lengths.of("rx", 0)), h / 2);
    if (rx <= 0 || ry <= 0) return lengths.result(data({{'M', {x, y}}, {'h', {w}}, {'v', {h}}, {'h', {-w}}, {'Z', {}}}));
    return lengths.result(data({{'M', {x + rx, y}},
                                {'H', {x + w - rx}},
                                {'a', {rx, ry, 0, 0, 1, rx, ry}},
                                {'V', {y + h - ry}},
                                {'a', {rx, ry, 0, 0, 1, -rx, ry}},
                                {'H', {x + rx}},
                                {'a', {rx, ry, 0, 0, 1, -rx, -ry}},
                                {'V', {y + ry}},
                                {'a', {rx, ry, 0, 0, 1, rx, -ry}},
                                {'Z', {}}}));
}

}  // namespace

bool isSvgShape(std::string_view element) { return std::ranges::find(kShapes, element) != kShapes.end(); }

std::expected<std::string, std::string> svgShapeData(std::string_view element, const SvgAttribute& attribute) {
    const Lengths lengths(element, attribute);
    if (element == "circle" || element == "ellipse") return roundData(lengths, element == "circle");
    if (element == "rect") return rectData(lengths);
    const bool isPath = element == "path";
    const auto text = attribute(isPath ? "d" : "points");
    if (!text) return std::unexpected("The " + std::string(element) + " has no " + (isPath ? "data" : "points") + "; draw an outline in it.");
    if (isPath) return *text;
    return "M" + *text + (element == "polygon" ? "Z" : "");
}

}  // namespace kerfwall
