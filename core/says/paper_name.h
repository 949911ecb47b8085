// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace kerfwall {

/// The names of papers a project may ask for, in words for a sentence: "a4, a3 ... and roll-610 ...".
[[nodiscard]] std::string paperNamesInWords();

/// The width of a roll by its name, mm: "roll-610" is 610 wide. None where the name is no roll's or its width lies outside
/// 150 to 2000.
[[nodiscard]] std::optional<double> rollWidth(std::string_view name);

/// True for every paper a project may ask for.
[[nodiscard]] bool isPaperName(std::string_view name);

}  // namespace kerfwall
