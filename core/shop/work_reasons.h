// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/shop/order_of_work.h"

namespace kerfwall {

/// A rule of the order of work: no step of `first` comes after one of `then` that waits for it.
struct WorkRule {
    Task first = Task::Mark;
    Task then = Task::Mark;
    const char* because = "";  ///< one short sentence
};

/// The rules between tasks, of the reasons for one task the one to be told first.
/// Source    common practice, no source.
[[nodiscard]] const std::vector<WorkRule>& workRules();

/// Whether a step grooves the panel for a fence (else it fixes one, or is about none).
[[nodiscard]] bool isGroove(const WorkStep& step);

/// Whether a stopped kerf of the line spares a border thinner than the project's care for `border-thin`: from where the
/// kerf has its whole depth along the line to the panel's edge. Through kerfs come before it, while the panel is whole.
[[nodiscard]] bool sparesThinBorder(const Project& project, const SolvedLine& line);

/// Kerf steps in their order, but those that spare a thin border after all the through ones.
void sortThinBordersLast(std::vector<WorkStep>& kerfs, const Project& project, const Solved& solved);

/// Says at each step that waits for another why it does.
void giveReasons(std::vector<WorkStep>& steps, const Project& project, const Solved& solved);

}  // namespace kerfwall
