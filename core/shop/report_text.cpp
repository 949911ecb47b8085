// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/report_text.h"

#include "core/says/json_text.h"
#include "core/says/words.h"
#include "core/shop/exactness.h"
#include "core/shop/measured.h"
#include "core/shop/measured_words.h"

namespace kerfwall {

namespace {

constexpr int kReportVersion = 1;
constexpr double kStraight = 180;  // degrees

constexpr Words<Regime, 6> kRegimeWords{{{"sound", Regime::Sound},
                                         {"pivot", Regime::Pivot},
                                         {"two-dips", Regime::TwoDips},
                                         {"deep-dip", Regime::DeepDip},
                                         {"falls-in", Regime::FallsIn},
                                         {"bored", Regime::Bored}}};
constexpr Words<Turn, 2> kTurnWords{{{"left", Turn::Left}, {"right", Turn::Right}}};
constexpr Words<Rides, 3> kRidesWords{
    {{"clear", Rides::Clear}, {"kerfs", Rides::Kerfs}, {"both", Rides::Both}}};
constexpr Words<Stands, 3> kStandsWords{{{"on-line", Stands::OnLine}, {"short", Stands::Short}, {"past", Stands::Past}}};
constexpr Words<Severity, 3> kSeverityWords{
    {{"stop", Severity::Stop}, {"care", Severity::Care}, {"note", Severity::Note}}};
constexpr Words<Task, 10> kTaskWords{{{"mark", Task::Mark},
                                      {"bore", Task::Bore},
                                      {"kerf", Task::Kerf},
                                      {"drill", Task::Drill},
                                      {"rough", Task::Rough},
                                      {"trim", Task::Trim},
                                      {"hole", Task::Hole},
                                      {"fence", Task::Fence},
                                      {"hand", Task::Hand},
                                      {"label", Task::Label}}};

Json pairOf(double first, double second) { return Json::array({first, second}); }
Json placeOf(const Point& point) { return pairOf(point.x, point.y); }

template <typename Items, typename ToJson>
Json listOf(const Items& items, ToJson toJson) {
    Json list = Json::array();
    for (const auto& item : items) {
        list.push_back(toJson(item));
    }
    return list;
}

template <typename Value>
void putIf(Json& object, const char* key, const std::optional<Value>& value) {
    if (value) {
        object[key] = *value;
    }
}

template <typename Meaning, std::size_t count>
void putWordIf(Json& object, const char* key, const Words<Meaning, count>& words,
               const std::optional<Meaning>& meaning) {
    if (meaning) {
        object[key] = wordFor(words, *meaning);
    }
}

Json markOf(const EdgeMark& mark) { return Json{{"edge", wordFor(kEdgeWords, mark.edge)}, {"at", mark.at}}; }

// A line with a kerf on both its sides is marked once for each.
void addLineMark(const LineMark& mark, Json& list) {
    if (!mark.wasteToStart && !mark.wasteToEnd) {
        list.push_back(markOf(mark.mark));
    }
    for (const auto& [isWaste, end] :
         {std::pair{mark.wasteToStart, "start"}, std::pair{mark.wasteToEnd, "end"}}) {
        if (isWaste) {
            Json marked = markOf(mark.mark);
            marked["waste"] = end;
            list.push_back(std::move(marked));
        }
    }
}

Json kerfOf(const Kerf& kerf, const Bench& bench) {
    Json object{{"side", wordFor(kSideWords, kerf.side)}};
    if (kerf.saw && *kerf.saw < bench.saws.size()) {
        object["saw"] = bench.saws[*kerf.saw].id;
    }
    object["width"] = kerf.width;
    object["depth"] = kerf.depth;
    object["extent"] = kerf.stopped ? "stopped" : "through";
    object["full_depth"] = pairOf(kerf.fullFrom, kerf.fullTo);
    object["surface"] = pairOf(kerf.surfaceFrom, kerf.surfaceTo);
    return object;
}

Json lineOf(const SolvedLine& line, const Bench& bench) {
    Json marks = Json::array();
    for (const LineMark& mark : line.marks) {
        addLineMark(mark, marks);
    }
    return Json{{"id", line.id},
                {"from", placeOf(line.from)},
                {"to", placeOf(line.to)},
                {"edge_marks", std::move(marks)},
                {"kerfs", listOf(line.kerfs, [&](const Kerf& kerf) { return kerfOf(kerf, bench); })}};
}

Json pieceOf(const OutlinePiece& piece) {
    Json object{
        {"kind", piece.isArc ? "arc" : "line"}, {"from", placeOf(piece.from)}, {"to", placeOf(piece.to)}};
    if (piece.isArc) {
        object["centre"] = placeOf(piece.centre);
        object["radius"] = piece.radius;
        object["turn"] = wordFor(kTurnWords, piece.turn);
    } else if (!piece.on.empty()) {
        object["on"] = piece.on;
    }
    return object;
}

Json outlineOf(const Outline& outline) {
    const Box& box = outline.bounds;
    return Json{
        {"area", outline.area},
        {"perimeter", outline.perimeter},
        {"bounds", Json::array({box.low.x, box.low.y, box.high.x, box.high.y})},
        {"loops", listOf(outline.loops, [](const OutlineLoop& loop) { return listOf(loop, pieceOf); })}};
}

Json sizeOf(const FacingSize& size, const std::optional<Exactness>& exact) {
    Json object{{"between", Json::array({size.first, size.second})}, {"distance", size.distance}};
    if (size.atEnds) {
        object["at_ends"] = pairOf(size.atEnds->first, size.atEnds->second);
    }
    if (exact) {
        object["worst"] = exact->plusMinus.worst;
        object["likely"] = exact->plusMinus.likely;
        if (exact->keeps) {
            object["keeps"] = classWord(*exact->keeps);
        }
    }
    return object;
}

Json wallOf(const Wall& wall) {
    Json object{{"line", wall.line},
                {"from", placeOf(wall.from)},
                {"to", placeOf(wall.to)},
                {"waste", wordFor(kSideWords, wall.waste)}};
    if (wall.give) {
        object["gives"] = wall.give->gives;
        object["gives_at"] = placeOf(wall.give->at);
    }
    return object;
}

// An inward corner has no arc of its own, so nothing is said about one.
Json cornerOf(const Corner& corner, const std::optional<Exactness>& exact) {
    const bool isInward = corner.angle > kStraight;
    Json object{{"between", Json::array({corner.first, corner.second})},
                {"point", placeOf(corner.point)},
                {"angle", corner.angle}};
    if (exact) {
        object["angle_worst"] = exact->plusMinus.worst;
        object["angle_likely"] = exact->plusMinus.likely;
    }
    if (!isInward) {
        object["radius"] = corner.radius;
        object["tangents"] = Json::array({placeOf(corner.firstTangent), placeOf(corner.secondTangent)});
    }
    object["short_by"] = corner.shortBy;
    if (!isInward) {
        object["regime"] = wordFor(kRegimeWords, corner.regime);
    }
    object["step"] = corner.step;
    if (!isInward && corner.drill) {
        object["drill"] =
            Json{{"centre", placeOf(corner.drill->centre)}, {"diameter", corner.drill->diameter}};
    }
    return object;
}

/// Lists that lie beside one another.
template <typename Item, typename ToJson>
Json listBeside(const std::vector<Item>& items, const std::vector<std::optional<Exactness>>& exact, ToJson toJson) {
    Json list = Json::array();
    for (std::size_t i = 0; i < items.size(); ++i) {
        list.push_back(toJson(items[i], exact.at(i)));
    }
    return list;
}

Json cutoutOf(const SolvedCutout& cutout, const CutoutExactness& exact) {
    return Json{{"id", cutout.id},
                {"kind", cutout.open ? "open" : "closed"},
                {"drawn_area", cutout.drawnArea},
                {"template", outlineOf(cutout.opening)},
                {"work", outlineOf(cutout.work)},
                {"widest", cutout.widest},
                {"sizes", listBeside(cutout.sizes, exact.sizes, sizeOf)},
                {"walls", listOf(cutout.walls, wallOf)},
                {"corners", listBeside(cutout.corners, exact.angles, cornerOf)}};
}

Json cutoutsOf(const Project& project, const Solved& solved, const OrderOfWork& order) {
    const std::vector<CutoutExactness> exact = exactness(project, solved, order);
    Json list = Json::array();
    for (std::size_t i = 0; i < solved.cutouts.size(); ++i) {
        list.push_back(cutoutOf(solved.cutouts[i], exact[i]));
    }
    return list;
}

Json useOf(const UseAnswer& use) {
    return Json{{"against_work", wordFor(kDrawnOnWords, use.againstWork)},
                {"why", use.why},
                {"rides", wordFor(kRidesWords, use.rides)},
                {"band", pairOf(use.bandFrom, use.bandTo)}};
}

Json findingOf(const Finding& finding) {
    Json object{{"code", finding.code}, {"severity", wordFor(kSeverityWords, finding.severity)}};
    if (finding.at) {
        object["at"] = placeOf(*finding.at);
    }
    object["lines"] = finding.lines;
    if (!finding.cutout.empty()) {
        object["cutout"] = finding.cutout;
    }
    putIf(object, "value", finding.value);
    putIf(object, "limit", finding.limit);
    if (!finding.unit.empty()) {
        object["unit"] = finding.unit;
    }
    object["text"] = finding.text;
    putIf(object, "hole", finding.hole);
    putIf(object, "fence", finding.fence);
    return object;
}

Json settingOf(const Setting& setting) {
    Json object = Json::object();
    putIf(object, "fence", setting.fence);
    putIf(object, "stop", setting.stop);
    putIf(object, "angle", setting.angle);
    if (setting.wedge) {
        object["wedge"] = Json{{"rise", setting.wedge->rise}, {"length", setting.wedge->length}};
    }
    putIf(object, "blade_height", setting.bladeHeight);
    putIf(object, "depth", setting.depth);
    if (setting.plunge) {
        object["plunge"] = Json{{"full_depth", pairOf(setting.plunge->fullFrom, setting.plunge->fullTo)},
                                {"surface", pairOf(setting.plunge->surfaceFrom, setting.plunge->surfaceTo)}};
    }
    putIf(object, "spacer", setting.spacer);
    putIf(object, "bearing", setting.bearing);
    putIf(object, "bite", setting.bite);
    putIf(object, "passes", setting.passes);
    if (setting.feedClockwise) {
        object["feed"] = *setting.feedClockwise ? "clockwise" : "anticlockwise";
    }
    return object;
}

Json stepOf(const WorkStep& step) {
    Json object{{"number", step.number}, {"task", wordFor(kTaskWords, step.task)}};
    if (!step.saw.empty()) {
        object["saw"] = step.saw;
    }
    object["lines"] = step.lines;
    if (step.task == Task::Kerf) {
        object["sides"] = listOf(step.sides, [](Side side) { return Json(wordFor(kSideWords, side)); });
    }
    object["setting"] = settingOf(step.setting);
    object["face"] = step.faceUp ? "up" : "down";
    putWordIf(object, "against", kEdgeWords, step.against);
    putWordIf(object, "stop_edge", kEdgeWords, step.stopEdge);
    putWordIf(object, "stop_side", kSideWords, step.stopSide);
    putWordIf(object, "leads", kEdgeWords, step.leads);
    putWordIf(object, "turn", kSideWords, step.turn);
    object["see"] = listOf(step.see, markOf);
    if (!step.because.empty()) {
        object["because"] = step.because;
    }
    object["cautions"] = step.cautions;
    object["text"] = step.text;
    return object;
}

// What the plan answers to an entry of the record: fence or stop by `shift` to `setting`, or layers of tape.
Json answerOf(const Project& project, const MeasuredAnswer& answer) {
    Json object{{"measured", recordWords(project, project.record.at(answer.record))}};
    putWordIf(object, "stands", kStandsWords, answer.stands);
    object["off"] = answer.off;
    if (answer.moveOut) {
        object["line"] = answer.moveOut->line;
        putIf(object, "shift", answer.moveOut->shift);
        putIf(object, answer.moveOut->isStop ? "stop" : "fence", answer.moveOut->setting);
        if (answer.moveOut->shift) {
            object["layers"] = answer.moveOut->addsLayers ? answer.moveOut->layers : -answer.moveOut->layers;
        }
    }
    object["text"] = answer.text;
    return object;
}

}  // namespace

std::string reportText(const Project& project, const Solved& solved, const std::vector<Finding>& findings,
                       const OrderOfWork& order) {
    const Bench& bench = benchOf(project);
    const auto lineOnBench = [&](const SolvedLine& line) { return lineOf(line, bench); };
    Json report{{"format", "kerfwall-report"},
                         {"version", kReportVersion},
                         {"title", project.title},
                         {"lines", listOf(solved.lines, lineOnBench)},
                         {"cutouts", cutoutsOf(project, solved, order)},
                         {"use", useOf(solved.use)},
                         {"findings", listOf(findings, findingOf)},
                         {"plan",
                          {{"setups", order.setups},
                           {"lower_bound", order.lowerBound},
                           {"steps", listOf(order.steps, stepOf)}}}};
    if (!project.record.empty()) {
        report["record"] = listOf(measuredAnswers(project, solved, order),
                                  [&](const MeasuredAnswer& answer) { return answerOf(project, answer); });
    }
    return jsonText(report);
}

}  // namespace kerfwall
