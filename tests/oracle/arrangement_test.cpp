// SPDX-License-Identifier: GPL-3.0-or-later
// The faces against CGAL's arrangement of all chords of a layout on an exact kernel.
#include <CGAL/Arr_segment_traits_2.h>
#include <CGAL/Arr_walk_along_line_point_location.h>
#include <CGAL/Arrangement_2.h>
#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <gtest/gtest.h>

#include <set>

#include "core/geometry/arranged.h"
#include "tests/oracle/layout_blocks.h"

namespace kerfwall::oracle {
namespace {

using Kernel = CGAL::Exact_predicates_exact_constructions_kernel;
using Traits = CGAL::Arr_segment_traits_2<Kernel>;
using Arrangement = CGAL::Arrangement_2<Traits>;

/// All cut lines' chords, drawn out past the panel so that rounding of their ends leaves no gap, and the edges.
Arrangement arrangementOf(const Project& project, const Arranged& arranged) {
    const double width = project.panel.width;
    const double height = project.panel.height;
    std::vector<Traits::X_monotone_curve_2> chords;
    const auto add = [&](Point a, Point b) { chords.emplace_back(Kernel::Point_2(a.x, a.y), Kernel::Point_2(b.x, b.y)); };
    add({0, 0}, {width, 0});
    add({width, 0}, {width, height});
    add({width, height}, {0, height});
    add({0, height}, {0, 0});
    for (const ArrangedLine& line : arranged.lines) {
        if (line.cut) add(line.from - line.direction, line.to + line.direction);
    }
    Arrangement arrangement;
    CGAL::insert(arrangement, chords.begin(), chords.end());
    return arrangement;
}

double areaOf(const Arrangement::Face_const_handle& face) {
    Kernel::FT twice = 0;
    const auto first = face->outer_ccb();
    auto side = first;
    do {
        const auto& a = side->source()->point();
        const auto& b = side->target()->point();
        twice += a.x() * b.y() - a.y() * b.x();
    } while (++side != first);
    return CGAL::to_double(twice) / 2;
}

void expectSameFaces(const SeededLayout& layout) {
    const Arranged arranged = arrange(layout.project);
    const Arrangement arrangement = arrangementOf(layout.project, arranged);
    const CGAL::Arr_walk_along_line_point_location<Arrangement> location(arrangement);
    for (const ArrangedCutout& cutout : arranged.cutouts) {
        SCOPED_TRACE(kindName(layout.kind) + " " + std::to_string(layout.seed));
        std::set<Arrangement::Face_const_handle> faces;
        for (const Point seed : layout.project.cutouts[cutout.index].seeds) {
            const auto found = location.locate(Kernel::Point_2(seed.x, seed.y));
            const auto* face = boost::get<Arrangement::Face_const_handle>(&found);
            ASSERT_TRUE(face);
            faces.insert(*face);
        }
        double area = 0;
        for (const auto& face : faces) area += areaOf(face);
        EXPECT_EQ(faces.size(), cutout.faces.size());
        EXPECT_NEAR(area, cutout.area, 1e-8 * (1 + area));
    }
}

// Expected from: CGAL's arrangement. The faces its point location finds round a cutout's seeds add up to the
// cutout's area, and there are as many of them.
TEST(Arrangement, HasTheSameFacesRoundTheSeeds) {
    for (const LayoutBlock& block : layoutBlocks()) {
        if (block.first != 1) continue;
        for (const SeededLayout& layout : block.layouts()) expectSameFaces(layout);
    }
}

}  // namespace
}  // namespace kerfwall::oracle
