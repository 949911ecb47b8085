// SPDX-License-Identifier: GPL-3.0-or-later
// What the tasks in tests/by_hand left behind, compared with the samples: KERFWALL_BY_HAND=<their folder>.
#include <gtest/gtest.h>

#include <QFile>
#include <algorithm>
#include <cmath>
#include <ostream>

#include "core/geometry/solve.h"
#include "core/geometry/use_of.h"
#include "core/says/project_text.h"
#include "tests/ui/papers/read_paper.h"

namespace kerfwall {
namespace {

constexpr double kSame = 1e-6;       // mm and mm²
constexpr double kOnPaper = 0.005;   // mm: 5 µm

struct Task {
    const char* result;
    const char* sample;
};

void PrintTo(const Task& task, std::ostream* out) { *out << task.result; }

class ByHand : public testing::TestWithParam<Task> {
protected:
    void SetUp() override {
        m_folder = qEnvironmentVariable("KERFWALL_BY_HAND");
        if (m_folder.isEmpty()) GTEST_SKIP() << "no folder named";
    }
    QString path(const char* suffix) const {
        return m_folder + QLatin1Char('/') + QString::fromLatin1(GetParam().result) + QString::fromLatin1(suffix);
    }
    Project result() const {
        QFile file(path(".kerfwall"));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << file.fileName().toStdString();
        const QByteArray text = file.readAll();
        const auto read = readProject(std::string_view(text.constData(), static_cast<std::size_t>(text.size())));
        EXPECT_TRUE(read.has_value());
        return read.value_or(Project{});
    }
    static Project sample() { return sampleProject(QString::fromLatin1(GetParam().sample)); }

    QString m_folder;
};

bool isSamePlace(Point one, Point other) { return distance(one, other) < kSame; }

/// Outlines run one way round, so their pieces do too.
bool isSamePiece(const OutlinePiece& one, const OutlinePiece& other) {
    if (one.isArc != other.isArc || !isSamePlace(one.from, other.from) || !isSamePlace(one.to, other.to)) return false;
    return !one.isArc || (isSamePlace(one.centre, other.centre) && std::abs(one.radius - other.radius) < kSame && one.turn == other.turn);
}

void expectSame(const Outline& found, const Outline& expected, const char* what) {
    EXPECT_NEAR(found.area, expected.area, kSame) << what;
    EXPECT_NEAR(found.perimeter, expected.perimeter, kSame) << what;
    EXPECT_NEAR(distance(found.bounds.low, expected.bounds.low), 0, kSame) << what;
    EXPECT_NEAR(distance(found.bounds.high, expected.bounds.high), 0, kSame) << what;
    ASSERT_EQ(found.loops.size(), expected.loops.size()) << what;
    for (const OutlineLoop& loop : expected.loops) {
        for (const OutlinePiece& piece : loop) {
            const auto isSame = [&](const OutlineLoop& one) { return std::ranges::any_of(one, [&](const OutlinePiece& each) { return isSamePiece(each, piece); }); };
            EXPECT_TRUE(std::ranges::any_of(found.loops, isSame)) << what << ": no piece from " << piece.from.x << ", " << piece.from.y;
        }
    }
}

/// Lines go by other names, and either way: their runs and kerfs are compared.
bool isSameLine(const SolvedLine& one, const SolvedLine& other) {
    const bool sameWay = isSamePlace(one.from, other.from) && isSamePlace(one.to, other.to);
    const bool otherWay = isSamePlace(one.from, other.to) && isSamePlace(one.to, other.from);
    return (sameWay || otherWay) && one.cut == other.cut && std::ranges::equal(one.kerfs, other.kerfs, [](const Kerf& a, const Kerf& b) {
               return a.saw == b.saw && a.stopped == b.stopped && std::abs(a.width - b.width) < kSame && std::abs(a.depth - b.depth) < kSame &&
                      std::abs((a.fullTo - a.fullFrom) - (b.fullTo - b.fullFrom)) < kSame;
           });
}

// Expected from: the sample, which was written by pencil.
TEST_P(ByHand, TheTemplateIsTheSamples) {
    const Solved found = solve(result());
    const Solved expected = solve(sample());
    ASSERT_EQ(found.cutouts.size(), expected.cutouts.size());
    ASSERT_EQ(found.lines.size(), expected.lines.size());
    for (const SolvedLine& line : expected.lines) {
        EXPECT_TRUE(std::ranges::any_of(found.lines, [&](const SolvedLine& each) { return isSameLine(each, line); })) << line.id;
    }
    for (std::size_t i = 0; i < found.cutouts.size(); ++i) {
        EXPECT_NEAR(found.cutouts[i].drawnArea, expected.cutouts[i].drawnArea, kSame);
        expectSame(found.cutouts[i].opening, expected.cutouts[i].opening, "template");
        expectSame(found.cutouts[i].work, expected.cutouts[i].work, "work");
    }
    EXPECT_EQ(result().use.byBush, sample().use.byBush);
    EXPECT_EQ(useOf(result()).guide, useOf(sample()).guide);
    EXPECT_EQ(useOf(result()).cutter, useOf(sample()).cutter);
    const Panel &panel = result().panel, &wanted = sample().panel;
    EXPECT_EQ(panel.width, wanted.width);
    EXPECT_EQ(panel.height, wanted.height);
    EXPECT_EQ(panel.thickness, wanted.thickness);
}

// Expected from: the sample's lines, full size. A tile clips: no stroke is longer than its line, and each direction's
// longest stroke lies on the paper as the line does on the panel.
TEST_P(ByHand, ThePrintedPatternIsFullSize) {
    const std::vector<PageStroke> strokes = strokesOf(path(".pdf"));
    ASSERT_FALSE(strokes.empty());
    const Solved expected = solve(sample());
    for (const SolvedLine& line : expected.lines) {
        // y runs down on the page.
        const Point along = unit({line.to.x - line.from.x, line.from.y - line.to.y});
        const double whole = distance(line.from, line.to);
        double longest = 0;
        for (const PageStroke& stroke : strokes) {
            const Point run = stroke.to - stroke.from;
            if (std::abs(cross(along, run)) > kOnPaper) continue;
            const double length = std::abs(dot(along, run));
            if (length <= whole + kOnPaper) longest = std::max(longest, length);
        }
        EXPECT_GT(longest, 40) << line.id;
    }
}

INSTANTIATE_TEST_SUITE_P(Tasks, ByHand,
                         testing::Values(Task{"hand_hold", "crate_end.kerfwall"}, Task{"hand_hold_by_keys", "crate_end.kerfwall"},
                                         Task{"leg_frame", "bench_leg.kerfwall"}, Task{"pennant", "stall_pennant.kerfwall"}),
                         [](const auto& each) { return std::string(each.param.result); });

}  // namespace
}  // namespace kerfwall
