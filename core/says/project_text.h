// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <string>
#include <string_view>

#include "core/says/project.h"

namespace kerfwall {

/// Why a text is no project: the place as a JSON pointer (RFC 6901), what stands there and what is
/// allowed, in one sentence without a line break. Before parsing succeeds, the place is a byte offset.
struct Refusal {
    std::string pointer;   ///< "/panel/width"; "" is the whole text
    std::string sentence;  ///< "is -5; a panel's width is 10 to 3000 mm."
    bool operator==(const Refusal&) const = default;
};

/// Reads a project from UTF-8 JSON (RFC 8259).
/// Refuses   trouble of form: kinds, ranges, references, cycles, duplicates, nesting over 64, more than
///           16 * 2^20 bytes, doubled keys, NaN and infinity. Never trouble of drawing (see solve.h).
/// Source    the project file, version 1.
[[nodiscard]] std::expected<Project, Refusal> readProject(std::string_view text);

/// Writes a project as UTF-8 JSON that `readProject` reads back as an equal value. Fields at their
/// default are left out, unknown fields are kept. Same project, same bytes.
[[nodiscard]] std::string writeProject(const Project& project);

}  // namespace kerfwall
