// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/shop/order_of_work.h"

namespace kerfwall {

/// The usual cautions at a kerf cut with that kind of saw, one sentence each; `plunges`: its blade is let down into
/// the panel. They never replace the
/// machine's manual, local rules and training, and the last one says so.
/// Source    common practice, no source; riving knife and guard: circular saw bench practice.
[[nodiscard]] std::vector<std::string> sawCautions(const Project& project, SawKind kind, bool plunges = false);

/// The cautions wherever the router runs: trimming, and a bore routed on a circle jig.
[[nodiscard]] std::vector<std::string> routerCautions();

/// The number of an earlier step, at the same machine, that has said the same cautions in full; none where this one is to say
/// them.
[[nodiscard]] std::optional<int> stepWithSameCautions(const OrderOfWork& order, const WorkStep& step);

/// The cautions at a step without a saw setting. Empty where there is nothing to be hurt by.
[[nodiscard]] std::vector<std::string> taskCautions(Task task);

}  // namespace kerfwall
