// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "tests/oracle/layouts.h"

namespace kerfwall::oracle {

inline constexpr std::uint64_t kLayoutsEach = 30;  ///< of each of the eight kinds
inline constexpr std::uint64_t kBlock = 10;        ///< layouts in one registered test

/// Ten layouts of one kind: one registered test.
struct LayoutBlock {
    LayoutKind kind = LayoutKind::Convex;
    std::uint64_t first = 1;

    [[nodiscard]] std::vector<SeededLayout> layouts() const {
        std::vector<SeededLayout> all;
        for (std::uint64_t seed = first; seed < first + kBlock; ++seed)
            all.push_back(seededLayout(kind, seed));
        return all;
    }
};

[[nodiscard]] inline std::vector<LayoutBlock> layoutBlocks() {
    std::vector<LayoutBlock> blocks;
    for (int kind = 0; kind < 8; ++kind)
        for (std::uint64_t first = 1; first <= kLayoutsEach; first += kBlock)
            blocks.push_back({static_cast<LayoutKind>(kind), first});
    return blocks;
}

[[nodiscard]] inline std::string blockName(const testing::TestParamInfo<LayoutBlock>& info) {
    return kindName(info.param.kind) + "_" + std::to_string(info.param.first);
}

inline void PrintTo(const LayoutBlock& block, std::ostream* out) {
    *out << kindName(block.kind) << " from seed " << block.first;
}

}  // namespace kerfwall::oracle
