// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/neck_layouts.h"

#include <cmath>
#include <random>
#include <vector>

namespace kerfwall::oracle {
namespace {

constexpr double kWidth = 320;
constexpr double kHeight = 220;

class NeckDraft {
  public:
    explicit NeckDraft(std::uint64_t seed) : m_engine(seed) {
        project.panel.width = kWidth;
        project.panel.height = kHeight;
        project.panel.thickness = 18;
        project.kerfDepth = 6;
        Bench bench;
        for (int i = 0; i < 2; ++i) {
            Saw saw;
            saw.id = "rail" + std::to_string(i);
            saw.kind = SawKind::GuideRail;
            saw.kerf = tenths(0.8, 3.2);
            saw.blade = 160;
            bench.saws.push_back(saw);
        }
        bench.trimBit = TrimBit{};
        bit = tenths(8, 16);
        bench.trimBit->diameter = bit;
        project.bench = bench;
        project.cutouts.emplace_back();
        project.cutouts[0].id = "cut1";
    }

    double tenths(double low, double high) {
        const int from = static_cast<int>(std::lround(low * 10));
        const int to = static_cast<int>(std::lround(high * 10));
        return (from + static_cast<int>(m_engine() % static_cast<std::uint64_t>(to - from + 1))) / 10.0;
    }
    double lean() { return tenths(0, 1) < 0.05 ? 0 : tenths(-2, 2); }

    /// An upright line (level where `level`) at `at`, leaning by `by` over 200.
    void lay(bool level, double at, double by) {
        LayoutLine line;
        line.id = "L" + std::to_string(project.lines.size() + 1);
        line.saw = tenths(0, 1) < 0.5 ? "rail0" : "rail1";
        line.extent = Extent::Through;
        const double low = rounded(at - by / 2);
        const double high = rounded(at + by / 2);
        if (level)
            line.place = ByPoints{{10, low}, {210, high}};
        else
            line.place = ByPoints{{low, 10}, {high, 210}};
        project.lines.push_back(line);
    }
    void laySides(bool level, const std::vector<double>& places) {
        for (const double at : places) lay(level, rounded(at), lean());
    }
    void mark(const std::vector<double>& xs, const std::vector<double>& ys) {
        for (const double x : xs) {
            for (const double y : ys) project.cutouts[0].seeds.push_back({x, y});
        }
    }

    Project project;
    double bit = 0;

  private:
    static double rounded(double mm) { return std::round(mm * 10) / 10; }
    std::mt19937_64 m_engine;
};

void drawNeck(NeckDraft& draft, bool mouth) {
    const double gap = draft.tenths(0.5 * draft.bit, 1.1 * draft.bit);
    const double wall = draft.tenths(mouth ? 0.5 : 0.4, mouth ? 5 : 6);
    draft.laySides(true, {50, 100 - gap / 2, 100 + gap / 2, 150});
    const double left = mouth ? kWidth - wall : 150 - wall / 2;
    const double by = mouth ? 0 : draft.lean();
    draft.lay(false, 60, draft.lean());
    draft.lay(false, left, by);
    draft.mark({100}, {70, 100, 130});
    if (!mouth) {
        draft.lay(false, left + wall, by);
        draft.lay(false, 240, draft.lean());
        draft.mark({200}, {70, 100, 130});
    }
    draft.mark({left + wall / 2}, {100});
}

void drawRing(NeckDraft& draft) {
    std::vector<std::vector<double>> middles;
    for (const bool level : {false, true}) {
        std::vector<double> at{40};
        for (const bool path : {true, false, true}) {
            at.push_back(at.back() +
                         (path ? draft.tenths(0.7 * draft.bit, 2 * draft.bit) : draft.tenths(10, 50)));
        }
        draft.laySides(level, at);
        middles.push_back({(at[0] + at[1]) / 2, (at[1] + at[2]) / 2, (at[2] + at[3]) / 2});
    }
    for (std::size_t i = 0; i < 3; ++i) {
        for (std::size_t j = 0; j < 3; ++j) {
            if (i != 1 || j != 1) draft.mark({middles[0][i]}, {middles[1][j]});
        }
    }
}

}  // namespace

std::string kindName(NeckKind kind) {
    return kind == NeckKind::Neck ? "neck" : kind == NeckKind::Mouth ? "mouth" : "ring";
}

Project neckLayout(NeckKind kind, std::uint64_t seed) {
    NeckDraft draft(seed * 1000003 + static_cast<std::uint64_t>(kind) * 7919);
    kind == NeckKind::Ring ? drawRing(draft) : drawNeck(draft, kind == NeckKind::Mouth);
    return draft.project;
}

}  // namespace kerfwall::oracle
