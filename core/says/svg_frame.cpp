// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/svg_frame.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>
#include <vector>

#include "core/says/svg_path.h"
#include "core/says/svg_scanner.h"

namespace kerfwall {
namespace {

constexpr double kPx = 25.4 / 96;
constexpr double kSameShape = 1e-3;  // programs write sizes with few decimals
constexpr std::array<std::pair<std::string_view, double>, 8> kUnits{
    {{"", kPx}, {"px", kPx}, {"mm", 1}, {"cm", 10}, {"in", 25.4}, {"pt", 25.4 / 72}, {"pc", 25.4 / 6}, {"Q", 0.25}}};

std::expected<double, std::string> sizeOf(const std::string& name, const std::string& text) {
    const auto size = readSvgLength(text);
    if (!size) return std::unexpected("The picture's " + name + " " + size.error());
    if (*size <= 0) return std::unexpected("The picture's " + name + " is not above zero; give it in mm.");
    return *size;
}

std::expected<SvgTransform, std::string> oneTransform(SvgScanner& scanner) {
    const std::string name(scanner.word());
    if (!scanner.take('(')) return std::unexpected("A transform cannot be read; save the file with plain coordinates.");
    std::vector<double> given;
    while (const auto number = scanner.number()) given.push_back(*number);
    if (!scanner.take(')')) return std::unexpected("The transform \u201c" + name + "\u201d cannot be read; save the file with plain coordinates.");
    const std::size_t count = given.size();
    if (name == "translate" && (count == 1 || count == 2)) return SvgTransform{1, 0, 0, 1, given[0], count == 2 ? given[1] : 0};
    if (name == "scale" && (count == 1 || count == 2)) return SvgTransform{given[0], 0, 0, given.back(), 0, 0};
    if (name == "matrix" && count == 6) return SvgTransform{given[0], given[1], given[2], given[3], given[4], given[5]};
    if (name == "rotate" && (count == 1 || count == 3)) {
        const double angle = given[0] * std::numbers::pi / 180;
        const SvgTransform turn{std::cos(angle), std::sin(angle), -std::sin(angle), std::cos(angle), 0, 0};
        if (count == 1) return turn;
        return combined(combined({1, 0, 0, 1, given[1], given[2]}, turn), {1, 0, 0, 1, -given[1], -given[2]});
    }
    return std::unexpected("The transform \u201c" + name + "\u201d cannot be read here; apply it in the drawing program and save with plain coordinates.");
}

}  // namespace

std::expected<double, std::string> readSvgLength(std::string_view text) {
    SvgScanner scanner(text);
    const auto number = scanner.number();
    const std::string_view unit = scanner.word();
    const auto* known = std::ranges::find(kUnits, unit, [](const auto& each) { return each.first; });
    if (!number || known == kUnits.end() || !scanner.isAtEnd()) {
        return std::unexpected("is \u201c" + std::string(text) + "\u201d; a length in mm, cm, in, pt, pc or px would be right.");
    }
    return *number * known->second;
}

std::expected<SvgFrame, std::string> readSvgFrame(std::optional<std::string> width, std::optional<std::string> height,
                                                  std::optional<std::string> viewBox) {
    std::string trouble;
    const auto read = [&](const std::string& name, const std::optional<std::string>& text) -> std::optional<double> {
        if (!text || !trouble.empty()) return std::nullopt;
        const auto size = sizeOf(name, *text);
        if (!size) trouble = size.error();
        return size ? std::optional(*size) : std::nullopt;
    };
    const std::optional<double> wide = read("width", width);
    const std::optional<double> high = read("height", height);
    if (!trouble.empty()) return std::unexpected(trouble);
    if (!viewBox) return SvgFrame{kPx, {}, high.value_or(0)};
    const auto box = readSvgNumbers(*viewBox);
    if (!box || box->size() != 4 || (*box)[2] <= 0 || (*box)[3] <= 0) {
        return std::unexpected("The picture's viewBox is \u201c" + *viewBox + "\u201d; four numbers would be right, the last two above zero.");
    }
    const double byWidth = wide.value_or(0) / (*box)[2];
    const double byHeight = high.value_or(0) / (*box)[3];
    if (wide && high && std::abs(byWidth - byHeight) > kSameShape * byWidth) {
        return std::unexpected("The picture's width and height do not have the shape of its viewBox, so its scale is not clear; save it with both alike.");
    }
    const double scale = wide ? byWidth : high ? byHeight : kPx;
    return SvgFrame{scale, {(*box)[0], (*box)[1]}, (*box)[3] * scale};
}

Point inMillimetres(const SvgFrame& frame, Point place) {
    return {(place.x - frame.corner.x) * frame.mmPerUnit, frame.height - (place.y - frame.corner.y) * frame.mmPerUnit};
}

double SvgTransform::largestScale() const {
    // The larger singular value of a two by two matrix.
    return (std::hypot(a + d, b - c) + std::hypot(a - d, b + c)) / 2;
}

SvgTransform combined(const SvgTransform& outer, const SvgTransform& inner) {
    const Point moved = outer.of({inner.e, inner.f});
    return {outer.a * inner.a + outer.c * inner.b, outer.b * inner.a + outer.d * inner.b, outer.a * inner.c + outer.c * inner.d,
            outer.b * inner.c + outer.d * inner.d, moved.x, moved.y};
}

std::expected<SvgTransform, std::string> readSvgTransform(std::string_view text) {
    SvgScanner scanner(text);
    SvgTransform whole;
    while (!scanner.isAtEnd()) {
        const auto each = oneTransform(scanner);
        if (!each) return std::unexpected(each.error());
        whole = combined(whole, *each);
        scanner.take(',');
    }
    if (whole.a * whole.d - whole.b * whole.c == 0) return std::unexpected("The transform \u201c" + std::string(text) + "\u201d leaves no area; save the file with plain coordinates.");
    return whole;
}

}  // namespace kerfwall
