// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "core/says/project_text.h"

namespace kerfwall {

/// Keeps the order of keys, so that fields nobody knows are written back where they stood.
using Json = nlohmann::ordered_json;

inline constexpr std::size_t kMaxBytes = std::size_t{16} << 20;
inline constexpr std::size_t kMaxNesting = 64;

/// Reads any JSON text strictly.
/// Refuses   more than kMaxBytes, no UTF-8, bad syntax, nesting over kMaxNesting, a key given twice,
///           numbers a double cannot hold. The place is the innermost value that was being read.
[[nodiscard]] std::expected<Json, Refusal> readJson(std::string_view text);

/// The pointer of `key` below `pointer` (RFC 6901).
[[nodiscard]] std::string pointerTo(const std::string& pointer, std::string_view key);
[[nodiscard]] std::string pointerTo(const std::string& pointer, std::size_t index);

/// A value as it stands in a sentence: its JSON text, cut short where it is long.
[[nodiscard]] std::string shown(const Json& value);

}  // namespace kerfwall
