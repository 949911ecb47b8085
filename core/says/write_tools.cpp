// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/write_parts.h"

namespace kerfwall {

namespace {

void writeOwnFields(const Saw& saw, const Saw& absent, ObjectWriter& fields) {
    switch (saw.kind) {
        case SawKind::RipFence:
            fields.number("max_fence", saw.maxFence, absent.maxFence);
            fields.word("fence_side", kSideWords, saw.fenceSide, absent.fenceSide);
            return;
        case SawKind::CrosscutSled:
            fields.number("base", saw.base, absent.base);
            fields.number("max_cut", saw.maxCut, absent.maxCut);
            fields.number("max_stop", saw.maxStop, absent.maxStop);
            fields.word("fence_at", kFenceAtWords, saw.fenceFar, absent.fenceFar);
            fields.number("squareness", saw.squareness, absent.squareness);
            return;
        case SawKind::MitreGauge:
            fields.number("max_angle", saw.maxAngle, absent.maxAngle);
            fields.number("squareness", saw.squareness, absent.squareness);
            fields.value("stop", saw.stop, absent.stop);
            return;
        case SawKind::GuideRail:
            fields.number("rail", saw.rail, absent.rail);
            fields.number("rail_length", saw.railLength, absent.railLength);
            fields.number("rail_width", saw.railWidth, absent.railWidth);
            fields.word("rail_side", kSideWords, saw.railSide, absent.railSide);
            return;
        case SawKind::SlidingMitre:
            fields.number("max_cut", saw.maxCut, absent.maxCut);
            fields.number("max_angle", saw.maxAngle, absent.maxAngle);
            return;
    }
}

Json sawJson(const Saw& saw) {
    const Saw absent = stockSaw(saw.kind);
    ObjectWriter fields;
    fields.put("id", saw.id);
    fields.word("kind", kSawKindWords, saw.kind);
    fields.number("kerf", saw.kerf);
    fields.number("blade", saw.blade);
    fields.number("repeatability", saw.repeatability, absent.repeatability);
    fields.number("kerf_plus_minus", saw.kerfPlusMinus, absent.kerfPlusMinus);
    fields.number("depth_plus_minus", saw.depthPlusMinus, absent.depthPlusMinus);
    writeOwnFields(saw, absent, fields);
    return fields.object(saw.unknown);
}

Json trimBitJson(const TrimBit& bit) {
    const TrimBit absent;
    ObjectWriter fields;
    fields.number("diameter", bit.diameter);
    fields.number("bearing_length", bit.bearingLength, absent.bearingLength);
    fields.number("cutting_length", bit.cuttingLength, absent.cuttingLength);
    fields.word("bearing_at", kBearingAtWords, bit.bearingAt, absent.bearingAt);
    return fields.object(bit.unknown);
}

Json clampJson(const Clamp& clamp) {
    const Clamp absent;
    ObjectWriter fields;
    fields.number("hole", clamp.hole);
    fields.number("insert", clamp.insert, absent.insert);
    fields.number("reach", clamp.reach, absent.reach);
    fields.number("jaw", clamp.jaw, absent.jaw);
    return fields.object(clamp.unknown);
}

Json cutterJson(const TurnCutter& cutter) {
    ObjectWriter fields;
    fields.number("diameter", cutter.diameter);
    fields.value("name", cutter.name, std::string{});
    fields.number("depth", cutter.depth);
    return fields.object(cutter.unknown);
}

}  // namespace

Json benchJson(const Bench& bench) {
    ObjectWriter fields;
    fields.list("saws", bench.saws, sawJson);
    if (bench.trimBit) {
        fields.put("trim_bit", trimBitJson(*bench.trimBit));
    }
    fields.word("trim_with", kRouterWords, bench.trimWith);
    fields.number("corner_drill", bench.cornerDrill);
    fields.list("bores", bench.bores, plainNumber);
    fields.number("circle_bit", bench.circleBit);
    fields.number("base", bench.base);
    fields.list("clamps", bench.clamps, clampJson);
    fields.list("bits", bench.bits, plainNumber);
    fields.list("bushes", bench.bushes, plainNumber);
    return fields.object(bench.unknown);
}

Json useJson(const Use& use) {
    const Use absent;
    ObjectWriter fields;
    fields.word("by", kUseByWords, use.byBush, absent.byBush);
    fields.number("bit", use.bit);
    fields.number("bearing", use.bearing);
    fields.number("bush", use.bush);
    fields.number("bush_length", use.bushLength, absent.bushLength);
    fields.word("router", kRouterWords, use.router, absent.router);
    fields.word("bearing_at", kBearingAtWords, use.bearingAt);
    fields.number("cutting_length", use.cuttingLength);
    fields.number("depth", use.depth);
    fields.list("cutters", use.cutters, cutterJson);
    fields.word("against_work", kFaceWords, use.againstWork);
    if (use.inKerfs) {
        fields.put("in_kerfs", *use.inKerfs);
    }
    return fields.object(use.unknown);
}

}  // namespace kerfwall
