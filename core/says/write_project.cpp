// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/json_text.h"
#include "core/says/project_text.h"
#include "core/says/words.h"
#include "core/says/write_parts.h"

namespace kerfwall {

namespace {

Json panelJson(const Panel& panel) {
    const Panel absent;
    ObjectWriter fields;
    fields.number("width", panel.width);
    fields.number("height", panel.height);
    fields.number("thickness", panel.thickness);
    fields.value("material", panel.material, absent.material);
    fields.word("reference_edge", kEdgeWords, panel.referenceEdge, absent.referenceEdge);
    fields.word("square_corner", kSquareCornerWords, panel.squareCorner, absent.squareCorner);
    return fields.object(panel.unknown);
}

Json clampHoleJson(const ClampHole& hole) {
    ObjectWriter fields;
    fields.value("id", hole.id, std::string{});
    fields.word("edge", kEdgeWords, hole.edge);
    fields.number("at", hole.at);
    fields.number("diameter", hole.diameter);
    fields.number("depth", hole.depth);
    fields.number("height", hole.height);
    return fields.object(hole.unknown);
}

Json fenceJson(const Fence& fence) {
    const Fence absent;
    ObjectWriter fields;
    fields.put("along", baseName(fence.along));
    fields.number("offset", fence.offset, absent.offset);
    fields.word("body", kSideWords, fence.body, absent.body);
    fields.number("from", fence.from);
    fields.number("to", fence.to);
    fields.number("width", fence.width);
    fields.number("height", fence.height);
    fields.number("groove", fence.groove, absent.groove);
    fields.word("kind", kFenceKindWords, fence.kind, absent.kind);
    fields.word("face", kFaceWords, fence.face, absent.face);
    return fields.object(fence.unknown);
}

Json workPartJson(const WorkPart& part) {
    ObjectWriter fields;
    fields.put("outline", pointsJson(part.outline));
    fields.number("grain", part.grain);
    return fields.object(part.unknown);
}

Json workpieceJson(const Workpiece& work) {
    ObjectWriter fields;
    if (!work.outline.empty()) {
        fields.put("outline", pointsJson(work.outline));
    }
    fields.number("thickness", work.thickness);
    fields.number("grain", work.grain);
    fields.list("parts", work.parts, workPartJson);
    return fields.object(work.unknown);
}

Json printingJson(const Printing& printing) {
    const Printing absent;
    ObjectWriter fields;
    fields.value("paper", printing.paper, absent.paper);
    fields.number("overlap", printing.overlap, absent.overlap);
    fields.number("margin", printing.margin, absent.margin);
    fields.number("scale_x", printing.scaleX, absent.scaleX);
    fields.number("scale_y", printing.scaleY, absent.scaleY);
    fields.word("face", kFaceWords, printing.face, absent.face);
    fields.value("hairline", printing.hairline, absent.hairline);
    fields.list("leave_out", printing.leaveOut, [](PatternLayer layer) { return Json(wordFor(kPatternLayerWords, layer)); });
    return fields.object(printing.unknown);
}

Json planJson(const PlanWish& wish) {
    ObjectWriter fields;
    fields.word("prefer", kPreferWords, wish.prefer, PlanWish{}.prefer);
    fields.list("held", wish.held, [](const Holder& holder) { return Json(wordFor(kHeldWords, holder)); });
    return fields.object(wish.unknown);
}

Json limitsJson(const std::map<std::string, Limits>& all) {
    Json object = Json::object();
    for (const auto& [code, limits] : all) {
        ObjectWriter fields;
        fields.number("care", limits.care);
        fields.number("stop", limits.stop);
        fields.number("force", limits.force);
        object[code] = fields.object(limits.unknown);
    }
    return object;
}

Json recordJson(const Record& record) {
    ObjectWriter fields;
    if (record.line) {
        fields.put("line", record.line->first);
        fields.word("from", kEdgeWords, record.line->second);
        fields.number("measured", record.measured);
    } else if (record.between) {
        fields.put("between", Json::array({record.between->first, record.between->second}));
        fields.number("measured", record.measured);
    } else if (record.bore) {
        fields.put("bore", Json::array({record.bore->first, record.bore->second}));
        fields.number("diameter", record.measured);
    }
    fields.number("depth", record.depth);
    return fields.object(record.unknown);
}

}  // namespace

std::string writeProject(const Project& project) {
    const Project absent;
    ObjectWriter fields;
    fields.put("format", "kerfwall-project");
    fields.put("version", 1);
    fields.value("title", project.title, absent.title);
    fields.value("notes", project.notes, absent.notes);
    fields.word("units", kUnitWords, project.units, absent.units);
    fields.put("panel", panelJson(project.panel));
    fields.list("lines", project.lines, lineJson);
    fields.list("cutouts", project.cutouts, cutoutJson);
    fields.number("kerf_depth", project.kerfDepth);
    if (project.bench) {
        fields.put("bench", benchJson(*project.bench));
    }
    fields.filled("use", useJson(project.use));
    fields.list("clamp_holes", project.clampHoles, clampHoleJson);
    fields.list("fences", project.fences, fenceJson);
    if (project.workpiece) {
        fields.put("workpiece", workpieceJson(*project.workpiece));
    }
    fields.filled("printing", printingJson(project.printing));
    fields.filled("plan", planJson(project.plan));
    fields.filled("limits", limitsJson(project.limits));
    fields.list("record", project.record, recordJson);
    return jsonText(fields.object(project.unknown));
}

}  // namespace kerfwall
