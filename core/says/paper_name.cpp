// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/paper_name.h"

#include <algorithm>
#include <charconv>

#include "core/says/words.h"

namespace kerfwall {
namespace {

constexpr std::string_view kRoll = "roll-";
constexpr double kNarrowestRoll = 150;  // mm
constexpr double kWidestRoll = 2000;    // mm

}  // namespace

std::string paperNamesInWords() {
    std::string words;
    for (const std::string_view name : kPaperNames) words += (words.empty() ? "" : ", ") + std::string(name);
    return words + ", or a roll by its width in mm from 150 to 2000 as in roll-610";
}

std::optional<double> rollWidth(std::string_view name) {
    if (!name.starts_with(kRoll)) return std::nullopt;
    const std::string_view digits = name.substr(kRoll.size());
    double width = 0;
    const auto [end, trouble] = std::from_chars(digits.data(), digits.data() + digits.size(), width, std::chars_format::fixed);
    if (trouble != std::errc() || end != digits.data() + digits.size()) return std::nullopt;
    if (!(width >= kNarrowestRoll && width <= kWidestRoll)) return std::nullopt;
    return width;
}

bool isPaperName(std::string_view name) {
    return std::ranges::find(kPaperNames, name) != kPaperNames.end() || rollWidth(name).has_value();
}

}  // namespace kerfwall
