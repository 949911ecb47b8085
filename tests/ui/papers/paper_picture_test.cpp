// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_picture.h"

#include <gtest/gtest.h>

#include "core/geometry/solve.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall {
namespace {

// Expected from: pencil. 1300 pixels on 260 mm are 5 on a mm, 5000 on a metre. Something stands in the title's band, in the
// plan and in the side view under it.
TEST(PaperPicture, HasTheResolutionItSaysAndBothViews) {
    Project project = test::windowProject();
    project.title = "Window";
    const QImage image = pictureOf(project, solve(project), {}, 1300);
    EXPECT_EQ(image.width(), 1300);
    EXPECT_EQ(image.dotsPerMeterX(), 5000);
    EXPECT_EQ(image.dotsPerMeterY(), 5000);
    const auto differs = [&](double from, double to) {
        const QRgb ground = image.pixel(1, 1);
        for (int y = static_cast<int>(from * image.height()); y < to * image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x) {
                if (image.pixel(x, y) != ground) return true;
            }
        }
        return false;
    };
    EXPECT_TRUE(differs(0, 0.08));
    EXPECT_TRUE(differs(0.3, 0.6));
    EXPECT_TRUE(differs(0.82, 0.97));
}

}  // namespace
}  // namespace kerfwall
