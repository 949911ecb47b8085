// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/json_text.h"
#include "core/says/read_parts.h"
#include "core/says/words.h"

namespace kerfwall {

namespace {

void readOwnFields(ObjectReader& fields, Saw& saw) {
    switch (saw.kind) {
        case SawKind::RipFence:
            fields.number("max_fence", kLength, saw.maxFence);
            fields.word("fence_side", kSideWords, saw.fenceSide);
            return;
        case SawKind::CrosscutSled:
            fields.number("base", kLength, saw.base);
            fields.number("max_cut", kLength, saw.maxCut);
            fields.number("max_stop", kLength, saw.maxStop);
            fields.word("fence_at", kFenceAtWords, saw.fenceFar);
            fields.number("squareness", kSquareness, saw.squareness);
            return;
        case SawKind::MitreGauge:
            fields.number("max_angle", kSawAngle, saw.maxAngle);
            fields.number("squareness", kSquareness, saw.squareness);
            fields.flag("stop", saw.stop);
            return;
        case SawKind::GuideRail:
            fields.number("rail", kLength, saw.rail);
            fields.number("rail_length", kLength, saw.railLength);
            fields.number("rail_width", kLength, saw.railWidth);
            fields.word("rail_side", kSideWords, saw.railSide);
            return;
        case SawKind::SlidingMitre:
            fields.number("max_cut", kLength, saw.maxCut);
            fields.number("max_angle", kSawAngle, saw.maxAngle);
            return;
    }
}

Saw readSaw(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "a saw", reading);
    const std::string id = fields.text("id", "a text that names the saw");
    Saw saw = stockSaw(fields.word("kind", kSawKindWords));
    saw.id = id;
    saw.kerf = fields.number("kerf", kKerf);
    saw.blade = fields.number("blade", kBlade);
    fields.number("repeatability", kPlusMinus, saw.repeatability);
    fields.number("kerf_plus_minus", kPlusMinus, saw.kerfPlusMinus);
    fields.number("depth_plus_minus", kPlusMinus, saw.depthPlusMinus);
    readOwnFields(fields, saw);
    saw.unknown = fields.unknown();
    return saw;
}

TrimBit readTrimBit(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "a trimming bit", reading);
    TrimBit bit;
    bit.diameter = fields.number("diameter", kBitDiameter);
    double bearing = bit.diameter;
    fields.number("bearing", kBearingDiameter, bearing);
    if (bearing != bit.diameter) {
        reading.refuse(fields.pointerOf("bearing"),
                       "is " + shown(plainNumber(bearing)) +
                           "; a trimming bit's bearing has its cutter's diameter, " +
                           shown(plainNumber(bit.diameter)) + " mm.");
    }
    fields.number("bearing_length", kBearingLength, bit.bearingLength);
    fields.number("cutting_length", kCuttingLength, bit.cuttingLength);
    fields.word("bearing_at", kBearingAtWords, bit.bearingAt);
    bit.unknown = fields.unknown();
    return bit;
}

Clamp readClamp(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "a clamp", reading);
    Clamp clamp;
    clamp.hole = fields.number("hole", kDrillDiameter);
    fields.number("insert", kLength, clamp.insert);
    fields.number("reach", kLength, clamp.reach);
    fields.number("jaw", kLength, clamp.jaw);
    clamp.unknown = fields.unknown();
    return clamp;
}

TurnCutter readCutter(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "a cutter", reading);
    TurnCutter cutter;
    cutter.diameter = fields.number("diameter", kBitDiameter);
    fields.text("name", cutter.name);
    fields.number("depth", kCutDepth, cutter.depth);
    cutter.unknown = fields.unknown();
    return cutter;
}

}  // namespace

Bench readBench(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "a bench", reading);
    Bench bench;
    for (const auto& [saw, place] : fields.list("saws", "saws", kMaxBytes)) {
        bench.saws.push_back(readSaw(*saw, place, reading));
    }
    if (const Json* bit = fields.find("trim_bit")) {
        bench.trimBit = readTrimBit(*bit, fields.pointerOf("trim_bit"), reading);
    }
    fields.word("trim_with", kRouterWords, bench.trimWith);
    fields.number("corner_drill", kDrillDiameter, bench.cornerDrill);
    bench.bores = fields.numbers("bores", "bores", kDrillDiameter);
    fields.number("circle_bit", kBitDiameter, bench.circleBit);
    fields.number("base", kRouterBase, bench.base);
    for (const auto& [clamp, place] : fields.list("clamps", "clamps", kMaxBytes)) {
        bench.clamps.push_back(readClamp(*clamp, place, reading));
    }
    bench.bits = fields.numbers("bits", "bits", kBitDiameter);
    bench.bushes = fields.numbers("bushes", "bushes", kBushDiameter);
    bench.unknown = fields.unknown();
    return bench;
}

Use readUse(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "the template's use", reading);
    Use use;
    fields.word("by", kUseByWords, use.byBush);
    fields.number("bit", kBitDiameter, use.bit);
    fields.number("bearing", kBearingDiameter, use.bearing);
    fields.number("bush", kBushDiameter, use.bush);
    if (use.byBush && !use.bush) {
        reading.refuse(fields.pointerOf("bush"), "is missing; " + kBushDiameter.sentence() + ".");
    }
    fields.number("bush_length", kBushLength, use.bushLength);
    fields.word("router", kRouterWords, use.router);
    fields.word("bearing_at", kBearingAtWords, use.bearingAt);
    fields.number("cutting_length", kCuttingLength, use.cuttingLength);
    fields.number("depth", kCutDepth, use.depth);
    for (const auto& [cutter, place] : fields.list("cutters", "cutters", kMaxBytes)) {
        use.cutters.push_back(readCutter(*cutter, place, reading));
    }
    fields.word("against_work", kFaceWords, use.againstWork);
    fields.flag("in_kerfs", use.inKerfs);
    use.unknown = fields.unknown();
    return use;
}

}  // namespace kerfwall
