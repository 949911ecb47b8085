// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/says/project.h"

namespace kerfwall::oracle {

enum class Verdict {
    Agrees,      ///< every cutout answered without a doubt, and as the exact route has it
    Doubted,     ///< the engine declined: a trouble, or a doubt at every cutout that it does not share with the route
    Unanswered,  ///< the exact route gave up
    Wrong,       ///< a number the engine gave without a doubt is not the exact route's
};

struct Judgement {
    Verdict verdict = Verdict::Agrees;
    std::string why;  ///< the first number that is wrong, or why nobody answered; "" where they agree
};

/// Sets the engine against the exact union of capsules: never wrong in silence. Compared are each undoubted
/// cutout's opening, its parts, and what is cut in the work where the guide rides clear of the kerfs.
/// Requires  what `plainLayout` requires.
[[nodiscard]] Judgement judge(const Project& project);

}  // namespace kerfwall::oracle
