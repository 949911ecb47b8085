// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/kerf_text.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

std::string textOf(const hand::Job& job, const LineId& line) {
    return hand::stepFor(plan(job.project, job.solved), line).text;
}

bool says(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }

/// The window's job with its line C leaning by `angle` degrees to the right, on the saw `kind`.
hand::Job leaning(double angle, SawKind kind, bool fenceFar = false) {
    hand::Job job = hand::windowJob();
    Saw& saw = job.project.bench->saws[1];
    saw.kind = kind;
    saw.fenceFar = fenceFar;
    const double over = 250 * std::tan(angle * std::numbers::pi / 180);
    job.solved.lines[2] = hand::lineOf(job.project, "C", {110, 0}, {110 + over, 250}, Side::Right, 1);
    return job;
}

// Expected from: a sheet of paper turned over: leaning to the right as drawn, the panel is turned clockwise.
// Beyond a near fence its left end comes off, which face down is the panel's right end; before a far fence
// the right end comes towards the operator, and that too is the panel's right end.
TEST(KerfText, SaysWhichEndStandsOffOnTheWedge) {
    for (const bool fenceFar : {false, true}) {
        const std::string text = textOf(leaning(3, SawKind::CrosscutSled, fenceFar), "C");
        EXPECT_TRUE(says(text, "rises 20.96 mm over 400.0 mm, so that the panel's right end stands off"))
            << text;
        EXPECT_TRUE(says(text, "turned clockwise seen from above")) << text;
        EXPECT_TRUE(says(textOf(leaning(-3, SawKind::CrosscutSled, fenceFar), "C"),
                         "the panel's left end stands off"));
    }
}

// Expected from: turning a gauge clockwise brings its right end towards the one who pushes it.
TEST(KerfText, SaysWhichEndOfTheGaugeComesTowardsYou) {
    EXPECT_TRUE(says(textOf(leaning(3, SawKind::MitreGauge), "C"),
                     "3° from square, clockwise seen from above, its right "
                     "end towards you"));
    EXPECT_TRUE(says(textOf(leaning(-3, SawKind::MitreGauge), "C"), "its left end towards you"));
    EXPECT_TRUE(says(textOf(leaning(0, SawKind::MitreGauge), "C"), "the gauge square"));
}

// Expected from: face up, turned half round, the line still leans clockwise; an arm turned clockwise about
// the fence has its near end, the handle, to the left.
TEST(KerfText, SaysWhereTheMitreSawsHandleGoes) {
    EXPECT_TRUE(says(textOf(leaning(3, SawKind::SlidingMitre), "C"),
                     "turn its arm 3° from square, clockwise seen from above, its handle to the left"));
}

// Expected from: pencil. The bottom edge is at the fence, the saw starts from the top: 250 - 230 and so on.
TEST(KerfText, TellsAStoppedMitreCutFromTheEdgeNearYou) {
    hand::Job job = leaning(0, SawKind::SlidingMitre);
    Kerf& kerf = job.solved.lines[2].kerfs[0];
    kerf.stopped = true;
    kerf.surfaceFrom = 60;
    kerf.fullFrom = 90;
    kerf.fullTo = 200;
    kerf.surfaceTo = 230;
    const std::string text = textOf(job, "C");
    EXPECT_TRUE(says(
        text,
        "starts on the top edge: plunge so that the blade meets the face at 20.0 mm and is at full depth "
        "at 50.0 mm; stop with the blade at full depth at 160.0 mm, its run out ending at 190.0 mm."))
        << text;
}

// Expected from: a kerf that is open at one end is entered there, or sawn on out of it.
TEST(KerfText, EntersOrLeavesAtAnOpenEnd) {
    hand::Job job = hand::windowJob();
    Kerf& kerf = job.solved.lines[3].kerfs[0];
    kerf.saw = 3;
    kerf.stopped = true;
    kerf.fullFrom = kerf.surfaceFrom = 0;
    kerf.fullTo = 100;
    kerf.surfaceTo = 130.4;
    // D has its waste on the left and runs up: pushed from the top down, 250 - 130.4 = 119.6, 250 - 100 =
    // 150.
    EXPECT_TRUE(says(textOf(job, "D"),
                     "plunge so that the blade meets the face at 119.6 mm and is at full depth at "
                     "150.0 mm; saw on out of the panel."));
    kerf.side = Side::Right;
    EXPECT_TRUE(says(textOf(job, "D"),
                     "starts on the bottom edge: enter at the edge at full depth; stop with the blade at "
                     "full depth at 100.0 mm, its run out ending at 130.4 mm."));
}

// Expected from: pencil. A line 2 from the edge with its kerf of 3.2 between: 2 - 3.2 = -1.2, inside the
// fence.
TEST(KerfText, WarnsWhereTheBladeRunsIntoTheFence) {
    hand::Job job = hand::windowJob();
    job.solved.lines[0] = hand::level(job.project, "A", 2, Side::Right);
    EXPECT_TRUE(says(textOf(job, "A"), "the blade runs into the fence, so fix a wooden face to it first"));
}

}  // namespace
}  // namespace kerfwall
