// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "core/geometry/solved.h"
#include "core/shop/finding.h"
#include "core/shop/order_of_work.h"

namespace kerfwall {

/// A project with all that is worked out from it: one state of the sheet, never changed once made.
struct Answers {
    Project project;
    Solved solved;
    std::vector<Finding> findings;
    OrderOfWork order;
    bool hasFlex = false;  ///< how far walls give is worked out too
};
using AnswersPtr = std::shared_ptr<const Answers>;

/// What the sheet says to that project. Free of any thread: calls on several at once do not meet.
[[nodiscard]] AnswersPtr answersTo(Project project);

/// The same for a project changed from `before`, its seeds carried over (marking.h, carryCutouts).
[[nodiscard]] AnswersPtr answersTo(const Answers& before, const Project& next);

/// The same with how far walls give, which takes too long to follow a hand.
[[nodiscard]] AnswersPtr answersWithFlex(const Answers& answers);

}  // namespace kerfwall
