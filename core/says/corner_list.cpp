// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/corner_list.h"

#include <expected>
#include <optional>
#include <utility>

#include "core/says/length_text.h"

namespace kerfwall {
namespace {

constexpr std::string_view kSpaces = " \t\r";

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(kSpaces);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(kSpaces) - first + 1);
}

std::string_view withoutBrackets(std::string_view text) {
    const bool isBracketed = text.size() > 1 && text.front() == '(' && text.back() == ')';
    return isBracketed ? trimmed(text.substr(1, text.size() - 2)) : text;
}

std::optional<std::size_t> onlyOne(std::string_view text, std::string_view sign) {
    const std::size_t at = text.find(sign);
    if (at == std::string_view::npos || text.find(sign, at + 1) != std::string_view::npos) return std::nullopt;
    return at;
}

// Of an odd number of commas, the middle one.
std::optional<std::size_t> middleComma(std::string_view text) {
    std::vector<std::size_t> commas;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == ',') commas.push_back(i);
    }
    return commas.size() % 2 == 1 && commas.size() < 4 ? std::optional(commas[commas.size() / 2]) : std::nullopt;
}

// Where the sign between x and y stands.
std::optional<std::size_t> signBetween(std::string_view text) {
    for (const std::string_view sign : {";", "\t", ", "}) {
        if (const auto at = onlyOne(text, sign)) return at;
        if (text.find(sign) != std::string_view::npos) return std::nullopt;
    }
    return middleComma(text);
}

std::expected<Point, std::string> readCorner(std::string_view text, Units units) {
    const auto at = signBetween(text);
    if (!at) return std::unexpected("write x, then one comma and a space or one semicolon, then y.");
    const auto x = readLength(trimmed(text.substr(0, *at)), units);
    if (!x) return std::unexpected("x can't be read. " + x.error());
    const auto y = readLength(trimmed(text.substr(*at + 1)), units);
    if (!y) return std::unexpected("y can't be read. " + y.error());
    return Point{*x, *y};
}

}  // namespace

CornerList readCorners(std::string_view text, Units units) {
    CornerList list;
    for (int line = 1; !text.empty(); ++line) {
        const std::size_t end = text.find('\n');
        const std::string_view corner = withoutBrackets(trimmed(text.substr(0, end)));
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
        if (corner.empty()) continue;
        const std::string begins = "Line " + std::to_string(line) + ": ";
        if (list.corners.size() == kMostCorners) {
            list.bad.push_back({line, begins + "an opening has at most " + std::to_string(kMostCorners) + " corners; leave the rest away."});
            break;
        }
        const auto read = readCorner(corner, units);
        if (read) list.corners.push_back(*read);
        else list.bad.push_back({line, begins + read.error()});
    }
    return list;
}

std::string cornersText(const std::vector<Point>& corners, Units units, char decimalSign) {
    std::string text;
    for (const Point corner : corners) {
        const auto words = [&](double mm) { return lengthText(mm, units, decimalsAtSaw(mm), decimalSign); };
        text += (text.empty() ? "" : "\n") + words(corner.x) + (decimalSign == ',' ? "; " : ", ") + words(corner.y);
    }
    return text;
}

}  // namespace kerfwall
