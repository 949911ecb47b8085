// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/judged.h"

#include <cmath>
#include <exception>
#include <sstream>

#include "core/geometry/solve.h"
#include "tests/oracle/exact_opening.h"
#include "tests/oracle/exact_work.h"
#include "tests/oracle/plain_layout.h"

namespace kerfwall::oracle {
namespace {

constexpr double kAreaBound = 1e-4;  // mm²

// Names two numbers that should be one; "" where they are. A number that is none is never right.
std::string difference(const std::string& what, double got, double exact, double bound) {
    if (std::abs(got - exact) <= bound) return "";
    std::ostringstream text;
    text.precision(12);
    text << what << " is " << got << ", exactly " << exact;
    return text.str();
}

// What a guide that rides clear of the kerfs cuts in the work.
double exactWorkArea(const UseAnswer& use, std::size_t cutout, const PlainLayout& plain) {
    const double guide = use.guide / 2;
    const double cutter = use.cutter / 2;
    // Where the bit stood aside a larger guide does too.
    if (guide >= plain.bitRadius) return exactOpening({&plain, cutout, guide, cutter}).area;
    return exactWork({&plain, cutout, {}, guide, cutter}).area;
}

// What is wrong with one cutout that the engine answered without a doubt.
std::string faultOf(const Solved& solved, const SolvedCutout& cutout, const PlainLayout& plain) {
    const double bit = plain.bitRadius;
    const OpeningAnswer exact = exactOpening({&plain, cutout.index, bit, bit});
    std::string fault = difference("opening area", cutout.opening.area, exact.area, kAreaBound);
    if (fault.empty()) fault = difference("number of parts", cutout.parts, exact.parts, 0);
    if (!fault.empty() || solved.use.rides == Rides::Kerfs) return fault;
    return difference("area in the work", cutout.work.area, exactWorkArea(solved.use, cutout.index, plain), kAreaBound);
}

Judgement judgeUndoubted(const Solved& solved, const Project& project) {
    const auto plain = plainLayout(project);
    if (!plain) return {Verdict::Wrong, "the exact route finds trouble of drawing, the engine none"};
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (!cutout.doubts.empty()) continue;
        const std::string fault = faultOf(solved, cutout, *plain);
        if (!fault.empty()) return {Verdict::Wrong, "cutout " + cutout.id + ": " + fault};
    }
    return {};
}

}  // namespace

Judgement judge(const Project& project) {
    const Solved solved = solve(project);
    if (!solved.troubles.empty()) return {Verdict::Doubted, solved.troubles.front().sentence};
    std::string doubt;
    std::size_t doubted = 0;
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (cutout.doubts.empty()) continue;
        ++doubted;
        doubt = cutout.doubts.front().what;
    }
    if (doubted == solved.cutouts.size()) return {Verdict::Doubted, doubt};
    try {
        Judgement judged = judgeUndoubted(solved, project);
        if (judged.verdict == Verdict::Agrees && doubted > 0) return {Verdict::Doubted, doubt};
        return judged;
    } catch (const std::exception& gaveUp) {
        return {Verdict::Unanswered, gaveUp.what()};
    }
}

}  // namespace kerfwall::oracle
