// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/project_text.h"

#include <gtest/gtest.h>

#include <bit>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <random>

#include "tests/core/says/full_project.h"

namespace kerfwall {
namespace {

using nlohmann::json;

Project read(std::string_view text) {
    const auto project = readProject(text);
    EXPECT_TRUE(project.has_value()) << project.error().pointer << ": " << project.error().sentence;
    return project.value_or(Project{});
}

// The smallest project there is, with one more field.
Project readWith(const std::string& field) {
    return read(R"({"format": "kerfwall-project", "version": 1,
                    "panel": {"width": 600, "height": 400, "thickness": 18})" +
                (field.empty() ? std::string() : ", " + field) + "}");
}

// Expected from: the project file, version 1, column "default".
TEST(ProjectText, AbsentFieldsTakeTheirDefaults) {
    const Project project = readWith("");
    EXPECT_EQ(project.title, "");
    EXPECT_EQ(project.notes, "");
    EXPECT_EQ(project.units, Units::Millimetres);
    EXPECT_EQ(project.panel.material, "mdf");
    EXPECT_EQ(project.panel.referenceEdge, Edge::Bottom);
    EXPECT_EQ(project.panel.squareCorner, SquareCorner::Start);
    EXPECT_TRUE(project.lines.empty() && project.cutouts.empty() && project.clampHoles.empty());
    EXPECT_TRUE(project.fences.empty() && project.record.empty() && project.limits.empty());
    EXPECT_FALSE(project.kerfDepth || project.bench || project.workpiece);
    EXPECT_FALSE(project.use.byBush || project.use.bit || project.use.bearing || project.use.inKerfs);
    EXPECT_EQ(project.use.bushLength, 5);
    EXPECT_EQ(project.use.router, Router::Hand);
    EXPECT_EQ(project.printing, (Printing{"a4", 10, 10, 1, 1, Face::Layout, false, {}, ""}));
    EXPECT_EQ(project.plan.prefer, Prefer::OneReference);
}

// Expected from: the project file, version 1: a line is cut, drawn on the layout face, extent auto.
TEST(ProjectText, ALinesAbsentFieldsTakeTheirDefaults) {
    const Project project =
        readWith(R"("lines": [{"id": "A", "place": {"by": "offset", "from": "top", "distance": 5}}])");
    ASSERT_EQ(project.lines.size(), 1U);
    EXPECT_TRUE(project.lines[0].cut);
    EXPECT_EQ(project.lines[0].drawnOn, Face::Layout);
    EXPECT_EQ(project.lines[0].extent, Extent::Auto);
    EXPECT_FALSE(project.lines[0].saw.has_value());
    EXPECT_EQ(project.lines[0].place, Place(ByOffset{Edge::Top, 5}));
}

// Expected from: the project file, version 1: a given saw's missing fields are the stock one's of its
// kind, an absent list is empty, an absent tool is absent.
TEST(ProjectText, AGivenBenchIsTakenWholeAndItsSawsAreFilledUp) {
    const Project project =
        readWith(R"("bench": {"saws": [{"id": "s", "kind": "sliding-mitre", "kerf": 2.4, "blade": 216}]})");
    ASSERT_TRUE(project.bench.has_value());
    const Saw& saw = project.bench->saws.at(0);
    EXPECT_EQ(saw.maxCut, 300);
    EXPECT_EQ(saw.maxAngle, 60);
    EXPECT_EQ(saw.repeatability, 0.2);
    EXPECT_EQ(saw.kerf, 2.4);
    EXPECT_FALSE(project.bench->trimBit || project.bench->trimWith || project.bench->cornerDrill);
    EXPECT_FALSE(project.bench->circleBit || project.bench->base);
    EXPECT_TRUE(project.bench->bores.empty() && project.bench->clamps.empty());
}

// Expected from: the full project's own text.
TEST(ProjectText, EveryFieldIsRead) {
    const Project project = read(kFullProject);
    EXPECT_EQ(project.title, "Stall shelf, window “no. 2”");
    EXPECT_EQ(project.units, Units::Inches);
    EXPECT_EQ(project.panel.squareCorner, SquareCorner::All);
    EXPECT_EQ(project.lines[1].place, Place(ByOffset{LineId("A"), 120.30000000000001}));
    EXPECT_EQ(project.lines[2].place, Place(ByAngle{Edge::Bottom, 90, Point{200, 0}}));
    EXPECT_EQ(project.lines[3].place, Place(ByMirror{"C", Centre::Upright}));
    EXPECT_EQ(project.lines[4].place, Place(ByMarks{{Edge::Bottom, 450}, {Edge::Top, 150}}));
    EXPECT_EQ(project.lines[5].place, Place(ByPoints{{0, 300}, {600, 300.25}}));
    EXPECT_EQ(project.lines[6].place, Place(ByAngle{LineId("A"), -44.5, CrossingOf{"B", "C"}}));
    EXPECT_EQ(project.lines[7].place, Place(ByMirror{"G", LineId("F_6")}));
    EXPECT_EQ(project.cutouts[0].corners[0].radius, 20);
    EXPECT_EQ(project.bench->saws[1].fenceFar, true);
    EXPECT_EQ(project.bench->saws[2].stop, false);
    EXPECT_EQ(project.bench->clamps[0].reach, 80);
    EXPECT_EQ(project.use.bush, 17);
    EXPECT_EQ(project.use.cutters[0].name, "roughing");
    EXPECT_EQ(project.use.againstWork, Face::Back);
    EXPECT_EQ(project.clampHoles[0].height, 10);
    EXPECT_EQ(project.fences[0].kind, FenceKind::Stop);
    EXPECT_EQ(project.workpiece->parts[0].grain, 45);
    EXPECT_EQ(project.printing.scaleY, 0.999);
    EXPECT_EQ(project.plan.held.size(), 3U);
    EXPECT_EQ(project.limits.at("arm-flex").force, 60);
    EXPECT_EQ(project.record[2].measured, 39.9);
}

// The law of the file: what was read and written says the same, every field, known or not. Only a
// trimming bit's bearing is left out, since it is its diameter.
TEST(ProjectText, WrittenTextSaysWhatWasRead) {
    json before = json::parse(kFullProject);
    before["bench"]["trim_bit"].erase("bearing");
    EXPECT_EQ(json::parse(writeProject(read(kFullProject))), before);
}

TEST(ProjectText, ReadWriteReadGivesTheSameValueAndBytes) {
    const Project once = read(kFullProject);
    const std::string text = writeProject(once);
    const Project twice = read(text);
    EXPECT_EQ(once, twice);
    EXPECT_EQ(text, writeProject(twice));
}

TEST(ProjectText, DefaultsAreNotWritten) {
    const json written = json::parse(writeProject(readWith("")));
    EXPECT_EQ(written.size(), 3U) << written;
    EXPECT_EQ(written["panel"].size(), 3U) << written;
}

// Expected from: IEEE 754: equal bits, the sign of nought too. Seeds over the whole range that
// coordinates may have, from 1e-300 to 10000.
TEST(ProjectText, NumbersComeBackBitForBit) {
    std::mt19937_64 random(20);
    std::uniform_real_distribution<double> exponent(-300, 4);
    Project project =
        readWith(R"("lines": [{"id": "A", "place": {"by": "points", "p": [0, 0], "q": [1, 1]}}])");
    for (int i = 0; i < 2000; ++i) {
        const double value = i == 0 ? -0.0 : (i % 2 == 0 ? 1 : -1) * std::pow(10.0, exponent(random));
        project.lines[0].place = ByPoints{{value, 1}, {0, value}};
        project.printing.margin = std::abs(value);
        const Project back = read(writeProject(project));
        const auto& place = std::get<ByPoints>(back.lines.at(0).place);
        ASSERT_EQ(std::bit_cast<std::uint64_t>(place.p.x), std::bit_cast<std::uint64_t>(value)) << value;
        ASSERT_EQ(std::bit_cast<std::uint64_t>(place.q.y), std::bit_cast<std::uint64_t>(value)) << value;
        ASSERT_EQ(back.printing.margin, std::abs(value));
    }
}

// A default that differs only in the sign of nought is still what the maker said.
TEST(ProjectText, MinusNoughtIsNotTakenForADefault) {
    const Project project = readWith(
        R"("fences": [{"along": "left", "offset": -0.0, "from": 0, "to": 9, "width": 5, "height": 5}])");
    const Project back = read(writeProject(project));
    EXPECT_TRUE(std::signbit(back.fences.at(0).offset));
}

// RFC 8259: numbers have no kinds; 600, 600.0 and 6e2 are one number.
TEST(ProjectText, WholeNumbersMayBeWrittenAnyWay) {
    const Project project = read(R"({"format": "kerfwall-project", "version": 1.0,
                                     "panel": {"width": 6e2, "height": 400.0, "thickness": 18}})");
    EXPECT_EQ(project.panel.width, 600);
    EXPECT_EQ(project.panel.height, 400);
}

TEST(ProjectText, AFieldOfAnotherKindOfSawIsKept) {
    const Project project = readWith(
        R"("bench": {"saws": [{"id": "r", "kind": "rip-fence", "kerf": 3, "blade": 250, "rail_length": 9}]})");
    EXPECT_EQ(project.bench->saws[0].railLength, stockSaw(SawKind::RipFence).railLength);
    EXPECT_EQ(json::parse(writeProject(project))["bench"]["saws"][0]["rail_length"], 9);
}

// Expected from: the limits of the project file, version 1: each end of a range belongs to it.
TEST(ProjectText, TheEndsOfARangeAreAllowed) {
    for (const double width : {10.0, 3000.0}) {
        for (const double thickness : {3.0, 60.0}) {
            const json project = {{"format", "kerfwall-project"},
                                  {"version", 1},
                                  {"panel", {{"width", width}, {"height", 400}, {"thickness", thickness}}},
                                  {"printing", {{"scale_x", 0.9}, {"scale_y", 1.1}}}};
            EXPECT_TRUE(readProject(project.dump()).has_value()) << project;
        }
    }
    EXPECT_EQ(readWith(R"("bench": {"trim_bit": {"diameter": 100}})").bench->trimBit->diameter, 100);
    EXPECT_EQ(readWith(R"("bench": {"bores": [1, 300]})").bench->bores.size(), 2U);
}

json projectWithLines(int count) {
    json lines = json::array();
    for (int i = 0; i < count; ++i) {
        lines.push_back({{"id", "L" + std::to_string(i)},
                         {"place", {{"by", "offset"}, {"from", "bottom"}, {"distance", 0.5 * i}}}});
    }
    return {{"format", "kerfwall-project"},
            {"version", 1},
            {"panel", {{"width", 600}, {"height", 400}, {"thickness", 18}}},
            {"lines", lines}};
}

// Expected from: the project file, version 1: at most 500 lines.
TEST(ProjectText, FiveHundredLinesAreReadAndNoMore) {
    EXPECT_TRUE(readProject(projectWithLines(500).dump()).has_value());
    const auto refused = readProject(projectWithLines(501).dump());
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().pointer, "/lines");
}

std::string nested(int levels) {
    return R"({"format": "kerfwall-project", "version": 1,
               "panel": {"width": 600, "height": 400, "thickness": 18}, "x": )" +
           std::string(static_cast<std::size_t>(levels), '[') +
           std::string(static_cast<std::size_t>(levels), ']') + "}";
}

// Expected from: the project file, version 1: 64 levels, the project itself the first.
TEST(ProjectText, SixtyFourLevelsAreReadAndKept) {
    const auto project = readProject(nested(63));
    ASSERT_TRUE(project.has_value());
    EXPECT_EQ(readProject(writeProject(*project)), *project);
    EXPECT_FALSE(readProject(nested(64)).has_value());
}

// Expected from: the project file, version 1: at most 16 * 2^20 bytes.
TEST(ProjectText, SixteenMebibytesAreReadAndNoByteMore) {
    std::string text = nested(1);
    text.append((std::size_t{16} << 20) - text.size(), ' ');
    EXPECT_TRUE(readProject(text).has_value());
    text += ' ';
    EXPECT_FALSE(readProject(text).has_value());
}

// A long chain of references is no ring, in whatever order the lines stand.
TEST(ProjectText, ALongChainOfLinesIsNoRing) {
    json project = projectWithLines(500);
    for (int i = 0; i < 499; ++i) {
        project["lines"][static_cast<std::size_t>(i)]["place"]["from"] = "L" + std::to_string(i + 1);
    }
    EXPECT_TRUE(readProject(project.dump()).has_value());
}

}  // namespace
}  // namespace kerfwall
