// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/rows.h"

#include <gtest/gtest.h>

#include <vector>

namespace kerfwall {
namespace {

// Expected from: the same question asked of every box.
TEST(Rows, TellEveryBoxThatMeetsOnce) {
    std::vector<Box> boxes;
    for (int i = 0; i < 60; ++i) {
        const Point low{static_cast<double>(i * 37 % 101), static_cast<double>(i * 53 % 97)};
        boxes.push_back({low, low + Point{static_cast<double>(i % 9), static_cast<double>(i * i % 40)}});
    }
    const Rows rows(boxes);
    for (const Box& asked : boxes) {
        std::vector<int> told(boxes.size(), 0);
        rows.meeting(asked, [&](std::size_t i) { ++told[i]; });
        for (std::size_t i = 0; i < boxes.size(); ++i) {
            const bool meets = boxes[i].low.x <= asked.high.x && boxes[i].high.x >= asked.low.x &&
                               boxes[i].low.y <= asked.high.y && boxes[i].high.y >= asked.low.y;
            EXPECT_EQ(told[i], meets ? 1 : 0);
        }
    }
    int told = 0;
    Rows({}).meeting({{0, 0}, {1, 1}}, [&](std::size_t) { ++told; });
    EXPECT_EQ(told, 0);
}

}  // namespace
}  // namespace kerfwall
