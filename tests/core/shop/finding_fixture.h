// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/shop/finding.h"

namespace kerfwall::testing_bench {

/// A panel of MDF with the stock bench.
[[nodiscard]] Project panelOf(double width, double height, double thickness);

/// A line from edge to edge with one through kerf, 3.2 wide and 6 deep.
[[nodiscard]] SolvedLine lineWithKerf(const LineId& id, Point from, Point to, Side side, double width = 3.2,
                                      double depth = 6);

/// An answer with a bit of `bit` across, used by a bearing of the same size; no lines, no cutouts.
[[nodiscard]] Solved answerFor(const Project& project, double bit = 12.7);

/// A level rectangle, walls A (bottom), D (right), B (top), C (left), trimmed with a bit of 2 * `radius`.
/// What it cuts in the work is the opening drawn in by `offset`, its corners `radius`.
[[nodiscard]] SolvedCutout rectangle(const std::string& id, Box box, double radius, double offset = 0);

/// Puts the cutout into both project and answer.
void put(Project& project, Solved& solved, SolvedCutout cutout);

/// The findings of that code, in their order.
[[nodiscard]] std::vector<Finding> only(const std::vector<Finding>& all, const std::string& code);

/// True where the text carries a digit and ends as a sentence does.
[[nodiscard]] bool saysANumber(const std::string& text);

}  // namespace kerfwall::testing_bench
