// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/says/read_parts.h"
#include "core/says/paper_name.h"
#include "core/says/words.h"

namespace kerfwall {

namespace {

constexpr Range kPanelSize{"a panel's width or height", 10, 3000};
constexpr Range kThickness{"a panel's thickness", 3, 60};
constexpr Range kWorkThickness{"the work's thickness", 0, 10000, " mm", true};
constexpr Range kBelowFace{"a place below the layout face", 0, 60, " mm", true};
constexpr Range kGroove{"a groove's depth", 0, 60};
constexpr Range kPrinterScale{"a printer's scale", 0.9, 1.1, ""};
constexpr Range kLimit{"a limit", -10000, 10000, ""};
constexpr Range kForce{"a side push", 0, 10000, " N", true};
constexpr std::string_view kMaterialIds = "an id of lower-case letters, digits and hyphens";

WorkPart readWorkPart(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "a part of the work", reading);
    WorkPart part;
    if (const Json* outline = fields.require("outline", "a list of at least 3 points")) {
        part.outline = readOutline(*outline, fields.pointerOf("outline"), reading);
    }
    fields.number("grain", kAngle, part.grain);
    part.unknown = fields.unknown();
    return part;
}

std::pair<LineId, LineId> readLinePair(ObjectReader& fields, std::string_view key) {
    const Json* value = fields.find(key);
    return value == nullptr ? std::pair<LineId, LineId>{}
                            : readPair(*value, fields.pointerOf(key), fields.reading());
}

}  // namespace

Panel readPanel(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "the panel", reading);
    Panel panel;
    panel.width = fields.number("width", kPanelSize);
    panel.height = fields.number("height", kPanelSize);
    panel.thickness = fields.number("thickness", kThickness);
    if (fields.has("material")) {
        panel.material = fields.text("material", kMaterialIds);
        if (!isMaterialId(panel.material)) {
            reading.refuse(
                fields.pointerOf("material"),
                "is " + shown(Json(panel.material)) + "; a material is " + std::string(kMaterialIds) + ".");
        }
    }
    fields.word("reference_edge", kEdgeWords, panel.referenceEdge);
    fields.word("square_corner", kSquareCornerWords, panel.squareCorner);
    panel.unknown = fields.unknown();
    return panel;
}

ClampHole readClampHole(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "a clamp hole", reading);
    ClampHole hole;
    fields.text("id", hole.id);
    hole.edge = readEdge(fields, "edge");
    hole.at = fields.number("at", kDistance);
    hole.diameter = fields.number("diameter", kDrillDiameter);
    hole.depth = fields.number("depth", kPositiveLength);
    fields.number("height", kBelowFace, hole.height);
    hole.unknown = fields.unknown();
    return hole;
}

Fence readFence(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "a fence", reading);
    Fence fence;
    fence.along = baseOf(fields.text("along", "an edge's name or a line's id"));
    fields.number("offset", kDistance, fence.offset);
    fields.word("body", kSideWords, fence.body);
    fence.from = fields.number("from", kDistance);
    fence.to = fields.number("to", kDistance);
    if (fence.from == fence.to) {
        reading.refuse(fields.pointerOf("to"), "is the same as from; a fence needs a length.");
    }
    fence.width = fields.number("width", kPositiveLength);
    fence.height = fields.number("height", kPositiveLength);
    fields.number("groove", kGroove, fence.groove);
    fields.word("kind", kFenceKindWords, fence.kind);
    fields.word("face", kFaceWords, fence.face);
    fence.unknown = fields.unknown();
    return fence;
}

Workpiece readWorkpiece(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "the workpiece", reading);
    Workpiece work;
    for (const auto& [part, place] : fields.list("parts", "parts of the work", kMaxBytes)) {
        work.parts.push_back(readWorkPart(*part, place, reading));
    }
    if (const Json* outline = fields.find("outline")) {
        work.outline = readOutline(*outline, fields.pointerOf("outline"), reading);
    } else if (work.parts.empty()) {
        reading.refuse(fields.pointerOf("outline"),
                       "is missing; allowed is a list of at least 3 points, or parts that each have one.");
    }
    fields.number("thickness", kWorkThickness, work.thickness);
    fields.number("grain", kAngle, work.grain);
    work.unknown = fields.unknown();
    return work;
}

Printing readPrinting(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "the printing", reading);
    Printing printing;
    fields.text("paper", printing.paper);
    if (!isPaperName(printing.paper)) {
        reading.refuse(fields.pointerOf("paper"),
                       "is " + shown(Json(printing.paper)) + "; allowed is one of " + paperNamesInWords() + ".");
    }
    fields.number("overlap", kLength, printing.overlap);
    fields.number("margin", kLength, printing.margin);
    fields.number("scale_x", kPrinterScale, printing.scaleX);
    fields.number("scale_y", kPrinterScale, printing.scaleY);
    fields.word("face", kFaceWords, printing.face);
    fields.flag("hairline", printing.hairline);
    for (const auto& [layer, place] : fields.list("leave_out", "what the pattern leaves out", kMaxBytes)) {
        printing.leaveOut.push_back(ObjectReader::wordOf(*layer, place, kPatternLayerWords, reading));
    }
    printing.unknown = fields.unknown();
    return printing;
}

PlanWish readPlanWish(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "the plan", reading);
    PlanWish wish;
    fields.word("prefer", kPreferWords, wish.prefer);
    for (const auto& [holder, place] : fields.list("held", "what holds the template", kMaxBytes)) {
        wish.held.push_back(ObjectReader::wordOf(*holder, place, kHeldWords, reading));
    }
    wish.unknown = fields.unknown();
    return wish;
}

Limits readLimits(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "a finding's limits", reading);
    Limits limits;
    fields.number("care", kLimit, limits.care);
    fields.number("stop", kLimit, limits.stop);
    fields.number("force", kForce, limits.force);
    limits.unknown = fields.unknown();
    return limits;
}

Record readRecord(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "a record", reading);
    Record record;
    const int kinds = int{fields.has("line")} + int{fields.has("between")} + int{fields.has("bore")};
    if (kinds != 1) {
        reading.refuse(pointer, std::string(kinds == 0 ? "says nothing" : "says more than one thing") +
                                    "; a record has one of \"line\", \"between\" or \"bore\".");
        return record;
    }
    if (fields.has("line")) {
        const LineId line = fields.text("line", "a line's id");
        record.line = {line, readEdge(fields, "from")};
        record.measured = fields.number("measured", kDistance);
    } else if (fields.has("between")) {
        record.between = readLinePair(fields, "between");
        record.measured = fields.number("measured", kDistance);
    } else {
        record.bore = readLinePair(fields, "bore");
        record.measured = fields.number("diameter", kDrillDiameter);
    }
    fields.number("depth", kBelowFace, record.depth);
    record.unknown = fields.unknown();
    return record;
}

}  // namespace kerfwall
