// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/bench.h"

#include <algorithm>

namespace kerfwall {

namespace {

Saw stockRip() {
    Saw saw;
    saw.id = "rip";
    saw.kind = SawKind::RipFence;
    saw.repeatability = 0.15;
    saw.maxFence = 600;
    return saw;
}

Saw stockSled() {
    Saw saw;
    saw.id = "sled";
    saw.kind = SawKind::CrosscutSled;
    saw.repeatability = 0.1;
    saw.base = 12;
    saw.maxCut = 600;
    saw.maxStop = 600;
    saw.squareness = 0.1;
    return saw;
}

Saw stockGauge() {
    Saw saw;
    saw.id = "gauge";
    saw.kind = SawKind::MitreGauge;
    saw.repeatability = 0.2;
    saw.maxAngle = 60;
    saw.squareness = 0.2;
    saw.stop = true;
    return saw;
}

Saw stockRail() {
    Saw saw;
    saw.id = "rail";
    saw.kind = SawKind::GuideRail;
    saw.kerf = 2.2;
    saw.blade = 160;
    saw.repeatability = 0.25;
    saw.rail = 0;
    saw.railLength = 1400;
    saw.railWidth = 180;
    saw.railSide = Side::Left;
    return saw;
}

// Not on the stock bench: only what a given one leaves out is taken from here.
Saw stockSlidingMitre() {
    Saw saw;
    saw.id = "mitre";
    saw.kind = SawKind::SlidingMitre;
    saw.repeatability = 0.2;
    saw.maxCut = 300;
    saw.maxAngle = 60;
    return saw;
}

}  // namespace

Saw stockSaw(SawKind kind) {
    switch (kind) {
        case SawKind::RipFence:
            return stockRip();
        case SawKind::CrosscutSled:
            return stockSled();
        case SawKind::MitreGauge:
            return stockGauge();
        case SawKind::GuideRail:
            return stockRail();
        case SawKind::SlidingMitre:
            break;
    }
    return stockSlidingMitre();
}

Bench stockBench() {
    Bench bench;
    bench.saws = {stockRip(), stockSled(), stockGauge(), stockRail()};
    bench.trimBit = TrimBit{};
    bench.trimWith = Router::Table;
    bench.cornerDrill = 8;
    bench.bores = {20, 25, 30, 35, 40, 50};
    bench.circleBit = 8;
    bench.base = 150;
    return bench;
}

const Saw* findSaw(const Bench& bench, const std::string& id) {
    const auto found = std::ranges::find(bench.saws, id, &Saw::id);
    return found == bench.saws.end() ? nullptr : &*found;
}

}  // namespace kerfwall
