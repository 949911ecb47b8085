// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/says/object_reader.h"
#include "core/says/project.h"
#include "core/says/tool_ranges.h"

namespace kerfwall {

// The words of the project file, version 1. The first of each list is what an absent field means,
// where it has a default.

inline constexpr Words<Edge, 4> kEdgeWords{
    {{"bottom", Edge::Bottom}, {"right", Edge::Right}, {"top", Edge::Top}, {"left", Edge::Left}}};
inline constexpr Words<Units, 2> kUnitWords{{{"mm", Units::Millimetres}, {"in", Units::Inches}}};
inline constexpr Words<SquareCorner, 5> kSquareCornerWords{{{"start", SquareCorner::Start},
                                                            {"end", SquareCorner::End},
                                                            {"both", SquareCorner::Both},
                                                            {"none", SquareCorner::None},
                                                            {"all", SquareCorner::All}}};
inline constexpr Words<Face, 3> kDrawnOnWords{
    {{"layout", Face::Layout}, {"back", Face::Back}, {"both", Face::Both}}};
inline constexpr Words<Face, 2> kFaceWords{{{"layout", Face::Layout}, {"back", Face::Back}}};
inline constexpr Words<Extent, 3> kExtentWords{
    {{"auto", Extent::Auto}, {"through", Extent::Through}, {"stopped", Extent::Stopped}}};
inline constexpr Words<Side, 2> kSideWords{{{"left", Side::Left}, {"right", Side::Right}}};
inline constexpr Words<SawKind, 5> kSawKindWords{{{"rip-fence", SawKind::RipFence},
                                                  {"crosscut-sled", SawKind::CrosscutSled},
                                                  {"mitre-gauge", SawKind::MitreGauge},
                                                  {"guide-rail", SawKind::GuideRail},
                                                  {"sliding-mitre", SawKind::SlidingMitre}}};
inline constexpr Words<bool, 2> kFenceAtWords{{{"near", false}, {"far", true}}};
inline constexpr Words<BearingAt, 3> kBearingAtWords{
    {{"tip", BearingAt::Tip}, {"shank", BearingAt::Shank}, {"both", BearingAt::Both}}};
inline constexpr Words<Router, 2> kRouterWords{{{"hand", Router::Hand}, {"table", Router::Table}}};
inline constexpr Words<bool, 2> kUseByWords{{{"bearing", false}, {"bush", true}}};
inline constexpr Words<FenceKind, 2> kFenceKindWords{
    {{"straight", FenceKind::Straight}, {"stop", FenceKind::Stop}}};
inline constexpr Words<Prefer, 3> kPreferWords{{{"one-reference", Prefer::OneReference},
                                                {"fewest-setups", Prefer::FewestSetups},
                                                {"seen-lines", Prefer::SeenLines}}};
using Holder = std::variant<Edge, HeldBy>;
inline constexpr Words<Holder, 6> kHeldWords{{{"bottom", Edge::Bottom},
                                              {"right", Edge::Right},
                                              {"top", Edge::Top},
                                              {"left", Edge::Left},
                                              {"clamps", HeldBy::Clamps},
                                              {"work", HeldBy::Work}}};
inline constexpr Words<PatternLayer, 13> kPatternLayerWords{{{"kerfs", PatternLayer::Kerfs},
                                                             {"run-out", PatternLayer::RunOut},
                                                             {"waste", PatternLayer::Waste},
                                                             {"template", PatternLayer::Template},
                                                             {"work", PatternLayer::Work},
                                                             {"centres", PatternLayer::Centres},
                                                             {"holes", PatternLayer::Holes},
                                                             {"tangents", PatternLayer::Tangents},
                                                             {"clamp-holes", PatternLayer::ClampHoles},
                                                             {"fences", PatternLayer::Fences},
                                                             {"reference", PatternLayer::Reference},
                                                             {"edge-marks", PatternLayer::EdgeMarks},
                                                             {"names", PatternLayer::Names}}};
inline constexpr std::array<std::string_view, 11> kPaperNames{"a4",      "a3",     "a2",     "a1",     "a0",   "letter",
                                                              "tabloid", "ansi-c", "ansi-d", "ansi-e", "panel"};

/// The word that stands for `meaning`.
/// Requires  one of `words` has it. (the first is given otherwise)
template <typename Meaning, std::size_t count>
[[nodiscard]] std::string wordFor(const Words<Meaning, count>& words, const Meaning& meaning) {
    for (const auto& [name, candidate] : words) {
        if (candidate == meaning) {
            return std::string(name);
        }
    }
    return std::string(words.front().first);
}

// Ranges that several objects share; those of tools stand in tool_ranges.h.
inline constexpr Range kDistance{"a distance", -10000, 10000};
inline constexpr Range kPositiveLength{"a length", 0, 10000, " mm", true};
inline constexpr Range kAngle{"an angle", -360, 360, "°"};

}  // namespace kerfwall
