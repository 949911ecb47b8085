// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>
#include <ostream>
#include <string>
#include <vector>

#include "tests/core/says/full_project.h"

namespace kerfwall {

/// A text that is no project, the place of its trouble and a part of what must be said about it: the
/// value, or what is allowed.
struct BrokenProject {
    std::string name;
    std::string text;
    std::string pointer;
    std::string says;
};

inline void PrintTo(const BrokenProject& broken, std::ostream* out) { *out << broken.name; }

/// The full project with the value at `where` replaced by the JSON `value`; "" takes the field away.
inline std::string fullProjectWith(const std::string& where, const std::string& value) {
    nlohmann::ordered_json project = nlohmann::ordered_json::parse(kFullProject);
    const nlohmann::ordered_json::json_pointer pointer(where);
    if (value.empty()) {
        project.at(pointer.parent_pointer()).erase(pointer.back());
    } else {
        project[pointer] = nlohmann::ordered_json::parse(value);
    }
    return project.dump();
}

/// Wrong kinds, ranges, references, rings and doubles, each in an otherwise sound full project.
inline std::vector<BrokenProject> brokenFields() {
    struct Change {
        const char* name;
        const char* where;
        const char* value;
        const char* says;
        const char* pointer = nullptr;  ///< where it differs from `where`
    };
    const std::vector<Change> changes{
        {"FormatMissing", "/format", "", "missing"},
        {"FormatOfAnotherProgram", "/format", R"("drawing")", R"("drawing")"},
        {"FormatNumber", "/format", "1", "kerfwall-project"},
        {"VersionMissing", "/version", "", "missing"},
        {"VersionOfALaterProgram", "/version", "2", "later"},
        {"VersionFraction", "/version", "1.5", "1.5"},
        {"VersionNought", "/version", "0", "is 0"},
        {"VersionText", "/version", R"("1")", "whole number 1"},
        {"TitleNumber", "/title", "7", "text"},
        {"NotesList", "/notes", "[]", "text"},
        {"UnitsUnknown", "/units", R"("cm")", R"("mm" or "in")"},
        {"UnitsNull", "/units", "null", "null"},
        {"PanelMissing", "/panel", "", "missing"},
        {"PanelList", "/panel", "[600, 400]", "a list of 2"},
        {"PanelWidthMissing", "/panel/width", "", "10 to 3000"},
        {"PanelWidthText", "/panel/width", R"("wide")", R"("wide")"},
        {"PanelWidthTooSmall", "/panel/width", "9.999", "10 to 3000"},
        {"PanelWidthTooLarge", "/panel/width", "3000.001", "3000.001"},
        {"PanelHeightNegative", "/panel/height", "-5", "-5"},
        {"PanelThicknessTooThin", "/panel/thickness", "2.9", "3 to 60"},
        {"PanelThicknessTooThick", "/panel/thickness", "61", "61"},
        {"PanelMaterialEmpty", "/panel/material", R"("")", R"("")"},
        {"PanelMaterialNoId", "/panel/material", R"("Grandma's door")", "lower-case"},
        {"PanelReferenceEdgeUnknown", "/panel/reference_edge", R"("front")", R"("bottom", "right")"},
        {"PanelSquareCornerFlag", "/panel/square_corner", "true", "true"},
        {"LinesObject", "/lines", "{}", "list"},
        {"LineNumber", "/lines/0", "3", "object"},
        {"LineIdMissing", "/lines/0/id", "", "missing"},
        {"LineIdEmpty", "/lines/0/id", R"("")", "1 to 24"},
        {"LineIdTooLong", "/lines/8/id", R"("abcdefghijklmnopqrstuvwxy")", "1 to 24"},
        {"LineIdWithASpace", "/lines/8/id", R"("I J")", "I J"},
        {"LineIdAccented", "/lines/8/id", R"("\u00e9")", "letters"},
        {"LineIdOfAnEdge", "/lines/8/id", R"("top")", "edge"},
        {"LineIdTwice", "/lines/8/id", R"("B")", "/lines/1"},
        {"LinePlaceMissing", "/lines/0/place", "", "missing"},
        {"LinePlaceText", "/lines/0/place", R"("bottom")", "object"},
        {"LineByMissing", "/lines/0/place/by", "", "missing"},
        {"LineByUnknown", "/lines/0/place/by", R"("curve")", R"("curve")"},
        {"LineFromMissing", "/lines/0/place/from", "", "missing"},
        {"LineFromNowhere", "/lines/0/place/from", R"("Z")", R"("Z")"},
        {"LineFromItself", "/lines/0/place/from", R"("A")", "itself;"},
        {"LineFromARing", "/lines/0/place/from", R"("B")", "through others"},
        {"LineDistanceMissing", "/lines/0/place/distance", "", "missing"},
        {"LineDistanceTooFar", "/lines/0/place/distance", "10000.5", "-10000 to 10000"},
        {"LineAngleTooLarge", "/lines/2/place/angle", "360.5", "-360 to 360"},
        {"LineAngleMissing", "/lines/2/place/angle", "", "missing"},
        {"LineThroughMissing", "/lines/2/place/through", "", "missing"},
        {"LineThroughNumber", "/lines/2/place/through", "5", "crossing"},
        {"LineThroughThreeNumbers", "/lines/2/place/through", "[1, 2, 3]", "[x, y]"},
        {"LineThroughTooFar", "/lines/2/place/through", "[1, -20000]", "-20000", "/lines/2/place/through/1"},
        {"LineThroughNothing", "/lines/2/place/through", "{}", "missing", "/lines/2/place/through/crossing"},
        {"LineThroughUnknownLine", "/lines/6/place/through/crossing", R"(["B", "Z"])", R"("Z")",
         "/lines/6/place/through/crossing/1"},
        {"LineThroughOneLine", "/lines/6/place/through/crossing", R"(["B", "B"])", "twice"},
        {"LineThroughItsOwnCrossing", "/lines/6/place/through/crossing", R"(["G", "B"])", "itself;",
         "/lines/6/place/through/crossing/0"},
        {"LineRingThroughACrossing", "/lines/1/place",
         R"({"by": "angle", "from": "A", "angle": 0, "through": {"crossing": ["C", "G"]}})", "through others",
         "/lines/1/place/through/crossing/1"},
        {"LineMirrorOfNowhere", "/lines/3/place/of", R"("Z")", R"("Z")"},
        {"LineMirrorOfAnEdge", "/lines/3/place/of", R"("left")", R"("left")"},
        {"LineMirrorOfItself", "/lines/3/place/of", R"("D")", "itself;"},
        {"LineMirrorAboutNowhere", "/lines/3/place/about", R"("upright")", R"("upright")"},
        {"LineMirrorAboutMissing", "/lines/3/place/about", "", "missing"},
        {"LineRingThroughAMirror", "/lines/5/place", R"({"by": "mirror", "of": "C", "about": "H"})",
         "through others", "/lines/5/place/about"},
        {"LineOfOnePoint", "/lines/5/place/q", "[0, 300]", "different"},
        {"LinePointMissing", "/lines/5/place/p", "", "missing"},
        {"LinePointText", "/lines/5/place/p", R"(["0", 300])", R"("0")", "/lines/5/place/p/0"},
        {"LineMarkMissing", "/lines/4/place/b", "", "missing"},
        {"LineMarkWithoutEdge", "/lines/4/place/a/edge", "", "missing"},
        {"LineMarkOnNoEdge", "/lines/4/place/a/edge", R"("A")", R"("A")"},
        {"LineOfOneMark", "/lines/4/place/b", R"({"edge": "bottom", "at": 450})", "different"},
        {"LineCutText", "/lines/4/cut", R"("no")", "true or false"},
        {"LineDrawnOnUnknown", "/lines/4/drawn_on", R"("front")", R"("layout")"},
        {"LineExtentUnknown", "/lines/0/extent", R"("half")", R"("stopped")"},
        {"LineSawNotOnTheBench", "/lines/0/saw", R"("chainsaw")", R"("chainsaw")"},
        {"CutoutsText", "/cutouts", R"("all")", "list"},
        {"CutoutIdMissing", "/cutouts/0/id", "", "missing"},
        {"CutoutSeedsMissing", "/cutouts/0/seeds", "", "missing"},
        {"CutoutWithoutSeed", "/cutouts/0/seeds", "[]", "at least one"},
        {"CutoutSeedNumber", "/cutouts/0/seeds/1", "3", "[x, y]"},
        {"CutoutSeedOutOfReach", "/cutouts/0/seeds/0", "[1e9, 3]", "1000000000", "/cutouts/0/seeds/0/0"},
        {"CornerBetweenUnknownLines", "/cutouts/0/corners/0/between", R"(["A", "Z"])", R"("Z")",
         "/cutouts/0/corners/0/between/1"},
        {"CornerBetweenALineAndItself", "/cutouts/0/corners/0/between", R"(["A", "A"])", "twice"},
        {"CornerBetweenThree", "/cutouts/0/corners/0/between", R"(["A", "B", "C"])", "two"},
        {"CornerTwice", "/cutouts/0/corners/1", R"({"between": ["C", "A"], "bore_radius": 5})", "second time",
         "/cutouts/0/corners/1/between"},
        {"BoreRadiusMissing", "/cutouts/0/corners/0/bore_radius", "", "missing"},
        {"BoreRadiusNought", "/cutouts/0/corners/0/bore_radius", "0", "is 0"},
        {"WantedOfTwoPoints", "/cutouts/0/wanted/outline", "[[0, 0], [1, 1]]", "at least 3"},
        {"WantedRadiusNegative", "/cutouts/0/wanted/corner_radius", "-1", "-1"},
        {"KerfDepthNought", "/kerf_depth", "0", "more than 0"},
        {"KerfDepthOfThePanel", "/kerf_depth", "18", "less than 18"},
        {"KerfDepthText", "/kerf_depth", R"("half")", "half"},
        {"BenchList", "/bench", "[]", "object"},
        {"SawIdMissing", "/bench/saws/0/id", "", "missing"},
        {"SawIdTwice", "/bench/saws/1/id", R"("rip")", "/bench/saws/0"},
        {"SawKindMissing", "/bench/saws/0/kind", "", "missing"},
        {"SawKindUnknown", "/bench/saws/0/kind", R"("bandsaw")", R"("bandsaw")"},
        {"SawKerfMissing", "/bench/saws/0/kerf", "", "missing"},
        {"SawKerfTooNarrow", "/bench/saws/0/kerf", "0.4", "0.5 to 10"},
        {"SawKerfTooWide", "/bench/saws/0/kerf", "10.1", "10.1"},
        {"SawBladeMissing", "/bench/saws/0/blade", "", "missing"},
        {"SawBladeTooSmall", "/bench/saws/0/blade", "79", "80 to 450"},
        {"SawBladeTooLarge", "/bench/saws/0/blade", "451", "451"},
        {"SawRepeatabilityNegative", "/bench/saws/0/repeatability", "-0.1", "-0.1"},
        {"SawFenceSideUnknown", "/bench/saws/0/fence_side", R"("near")", R"("left" or "right")"},
        {"SledFenceAtUnknown", "/bench/saws/1/fence_at", R"("left")", R"("near" or "far")"},
        {"GaugeStopNumber", "/bench/saws/2/stop", "1", "true or false"},
        {"GaugeAngleTooLarge", "/bench/saws/2/max_angle", "91", "0 to 90"},
        {"RailLengthText", "/bench/saws/3/rail_length", R"("long")", "number"},
        {"TrimBitDiameterMissing", "/bench/trim_bit/diameter", "", "missing"},
        {"TrimBitTooSmall", "/bench/trim_bit/diameter", "0.9", "1 to 100"},
        {"TrimBitBearingUnequal", "/bench/trim_bit/bearing", "11.9", "diameter, 12 mm"},
        {"TrimBitBearingNowhere", "/bench/trim_bit/bearing_at", R"("top")", R"("tip")"},
        {"TrimBitBearingLengthNought", "/bench/trim_bit/bearing_length", "0", "more than 0"},
        {"TrimWithUnknown", "/bench/trim_with", R"("lathe")", R"("hand" or "table")"},
        {"CornerDrillTooLarge", "/bench/corner_drill", "301", "1 to 300"},
        {"BoreTooSmall", "/bench/bores/1", "0.5", "1 to 300"},
        {"BoresNumber", "/bench/bores", "35", "list"},
        {"CircleBitTooLarge", "/bench/circle_bit", "101", "1 to 100"},
        {"RouterBaseNought", "/bench/base", "0", "more than 0"},
        {"ClampHoleMissing", "/bench/clamps/0/hole", "", "missing"},
        {"BitTooLarge", "/bench/bits/0", "200", "1 to 100"},
        {"BushTooSmall", "/bench/bushes/0", "0", "1 to 100"},
        {"UseByUnknown", "/use/by", R"("eye")", R"("bearing" or "bush")"},
        {"UseBushMissing", "/use/bush", "", "missing"},
        {"UseBushTooLarge", "/use/bush", "101", "1 to 100"},
        {"UseBitNegative", "/use/bit", "-6", "-6"},
        {"UseBushLengthNought", "/use/bush_length", "0", "more than 0"},
        {"UseRouterUnknown", "/use/router", R"("shaper")", R"("shaper")"},
        {"UseCutterWithoutDiameter", "/use/cutters/0/diameter", "", "missing"},
        {"UseAgainstBothFaces", "/use/against_work", R"("both")", R"("layout" or "back")"},
        {"UseInKerfsText", "/use/in_kerfs", R"("yes")", "true or false"},
        {"ClampHoleOnNoEdge", "/clamp_holes/0/edge", R"("A")", R"("A")"},
        {"ClampHoleWithoutPlace", "/clamp_holes/0/at", "", "missing"},
        {"ClampHoleTooWide", "/clamp_holes/0/diameter", "1000", "1 to 300"},
        {"ClampHoleOfNoDepth", "/clamp_holes/0/depth", "0", "more than 0"},
        {"ClampHoleTwice", "/clamp_holes/1",
         R"({"id": "K1", "edge": "top", "at": 9, "diameter": 8, "depth": 9})", "/clamp_holes/0",
         "/clamp_holes/1/id"},
        {"FenceAlongNowhere", "/fences/0/along", R"("Z")", R"("Z")"},
        {"FenceOfNoLength", "/fences/0/to", "10", "length"},
        {"FenceOfNoWidth", "/fences/0/width", "0", "more than 0"},
        {"FenceOnBothFaces", "/fences/0/face", R"("both")", R"("layout" or "back")"},
        {"FenceKindUnknown", "/fences/0/kind", R"("round")", R"("straight" or "stop")"},
        {"WorkpieceOfTwoPoints", "/workpiece/outline", "[[0, 0], [1, 1]]", "at least 3"},
        {"WorkpieceWithoutOutline", "/workpiece", R"({"thickness": 20})", "missing", "/workpiece/outline"},
        {"WorkpieceThicknessNought", "/workpiece/thickness", "0", "more than 0"},
        {"WorkPartWithoutOutline", "/workpiece/parts/0/outline", "", "missing"},
        {"WorkpieceGrainTooSteep", "/workpiece/grain", "361", "-360 to 360"},
        {"PaperUnknown", "/printing/paper", R"("a9")", "letter"},
        {"PaperNumber", "/printing/paper", "4", "4"},
        {"PrintingScaleTooSmall", "/printing/scale_x", "0.89", "0.9 to 1.1"},
        {"PrintingScaleTooLarge", "/printing/scale_y", "1.11", "1.11"},
        {"PrintingMarginNegative", "/printing/margin", "-1", "-1"},
        {"PlanPreferUnknown", "/plan/prefer", R"("fast")", R"("one-reference")"},
        {"PlanHeldByALine", "/plan/held/0", R"("A")", R"("clamps")"},
        {"LimitsList", "/limits", "[]", "object"},
        {"LimitsNumber", "/limits/web-thin", "5", "object"},
        {"LimitText", "/limits/web-thin/care", R"("much")", R"("much")"},
        {"RecordOfNothing", "/record/0/line", "", "\"line\", \"between\" or \"bore\"", "/record/0"},
        {"RecordOfTwoThings", "/record/0/bore", R"(["A", "C"])", "more than one", "/record/0"},
        {"RecordOfNoLine", "/record/0/line", R"("Z")", R"("Z")"},
        {"RecordFromNoEdge", "/record/0/from", R"("A")", R"("A")"},
        {"RecordWithoutMeasure", "/record/0/measured", "", "missing"},
        {"RecordAcrossNoLine", "/record/1/between/0", R"("Z")", R"("Z")"},
        {"RecordOfNoBore", "/record/2/bore/1", R"("Z")", R"("Z")"},
        {"RecordBoreTooLarge", "/record/2/diameter", "999", "1 to 300"},
    };
    std::vector<BrokenProject> broken;
    for (const Change& change : changes) {
        broken.push_back({change.name, fullProjectWith(change.where, change.value),
                          change.pointer == nullptr ? change.where : change.pointer, change.says});
    }
    return broken;
}

/// Texts that are no JSON, or not one a project can be.
inline std::vector<BrokenProject> brokenTexts() {
    const std::string start = R"({"format": "kerfwall-project", "version": 1, )";
    const std::string panel = R"("panel": {"width": 600, "height": 400, "thickness": 18})";
    const std::string full(kFullProject);
    return {
        {"Empty", "", "", "empty"},
        {"OnlySpaces", " \n\t ", "", "empty"},
        {"Truncated", full.substr(0, full.size() / 2), "/bench", "before the JSON is complete"},
        {"TruncatedByOneBrace", full.substr(0, full.rfind('}')), "", "before the JSON is complete"},
        {"TwoProjects", start + panel + "}{}", "", "byte"},
        {"Prose", "Dear reader, this is no project.", "", "byte 0"},
        {"Binary",
         std::string("\x7f"
                     "ELF\x02\x01\x01\0\0\0",
                     10),
         "", "byte 0"},
        {"NotUtf8", start + "\"title\": \"caf\xe9\", " + panel + "}", "", "UTF-8"},
        {"Utf16", std::string("\xff\xfe{\0}\0", 6), "", "UTF-8"},
        {"OverlongUtf8", start + "\"title\": \"\xc0\xaf\", " + panel + "}", "", "UTF-8"},
        {"SurrogateInUtf8", start + "\"title\": \"\xed\xa0\x80\", " + panel + "}", "", "UTF-8"},
        {"HalfASurrogatePair", start + R"("title": "\ud800", )" + panel + "}", "/title", "byte"},
        {"List", "[]", "", "object"},
        {"Number", "1", "", "object"},
        {"Null", "null", "", "null"},
        {"NaN", start + R"("panel": {"width": NaN, "height": 400, "thickness": 18}})", "/panel/width", "NaN"},
        {"Infinity", start + R"("panel": {"width": 600, "height": -Infinity, "thickness": 18}})",
         "/panel/height", "Infinity"},
        {"NumberNoDoubleHolds", start + R"("panel": {"width": 1e999, "height": 400, "thickness": 18}})",
         "/panel/width", "too large"},
        {"UnknownNumberNoDoubleHolds", start + panel + R"(, "x": [0, -1e400]})", "/x/1", "too large"},
        {"LeadingNought", start + R"("panel": {"width": 0600, "height": 400, "thickness": 18}})",
         "/panel/width", "byte"},
        {"SingleQuotes", "{'format': 'kerfwall-project'}", "", "byte 1"},
        {"Comment", start + "/* panel */ " + panel + "}", "/version", "byte"},
        {"CommaAtTheEnd", start + panel + ",}", "/panel", "byte"},
        {"KeyTwice", start + panel + ", " + panel + "}", "/panel", "twice"},
        {"KeyTwiceDeepInUnknownFields", start + panel + R"(, "x": [{"a": 1, "b": {"c~/d": 1, "c~/d": 2}}]})",
         "/x/0/b/c~0~1d", "twice"},
        {"KeyTwiceByEscape", start + panel + R"(, "title": "a", "\u0074itle": "b"})", "/title", "twice"},
        {"NestedTooDeep", start + panel + ", \"x\": " + std::string(64, '[') + std::string(64, ']') + "}",
         "/x", "64"},
        {"NestedAHundredThousandDeep", std::string(100000, '['), "/0", "64"},
        {"LongerThanAProjectMayBe", start + panel + "}" + std::string((std::size_t{16} << 20), ' '), "",
         "16777216"},
    };
}

}  // namespace kerfwall
