// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/setup_questions.h"

#include "tests/oracle/dice.h"

namespace kerfwall::oracle {

SetupQuestion setupQuestion(int kerfs, std::uint64_t seed) {
    constexpr double kSize = 600;
    constexpr double kGrid = 0.8;
    Dice dice(seed);
    SetupQuestion question;
    Project& project = question.project;
    project.panel.width = project.panel.height = kSize;
    project.panel.thickness = 18;
    project.panel.squareCorner = SquareCorner::All;
    project.plan.prefer = Prefer::FewestSetups;
    project.bench = stockBench();
    for (int i = 0; i < kerfs; ++i) {
        LayoutLine& line = project.lines.emplace_back();
        line.id = "L" + std::to_string(i);
        const double at = 20 + kGrid * dice.between(0, kerfs);
        const double place = dice.chance(50) ? at : kSize - at;
        const bool level = i % 2 == 0;
        CutAsked cut{static_cast<std::size_t>(i), {}, {}, {}};
        cut.from = level ? Point{0, place} : Point{place, 0};
        cut.to = level ? Point{kSize, place} : Point{place, kSize};
        const Side side = dice.chance(50) ? Side::Left : Side::Right;
        for (std::size_t saw = 0; saw < project.bench->saws.size(); ++saw) {
            Kerf kerf;
            kerf.side = side;
            kerf.saw = saw;
            kerf.width = project.bench->saws[saw].kerf;
            kerf.depth = 6;
            kerf.fullTo = kerf.surfaceTo = kSize;
            cut.atSaw.emplace_back(kerf);
        }
        question.cuts.push_back(std::move(cut));
    }
    return question;
}

}  // namespace kerfwall::oracle
