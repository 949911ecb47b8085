// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

// The enumerators are scoped; g++ 12 still takes them for shadows of the drawing's Mark and Label.
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wshadow"
enum class Task { Mark, Bore, Kerf, Drill, Rough, Trim, Hole, Fence, Hand, Label };
#pragma GCC diagnostic pop

/// A gauge, mitre saw or sled wedge: the panel stands off the fence by `rise` over `length`.
struct Wedge {
    double rise = 0;
    double length = 0;
    bool operator==(const Wedge&) const = default;
};

/// Plunge marks of a stopped cut, mm along the line: the blade may be at full depth between
/// `fullFrom` and `fullTo`; it leaves the face at `surfaceFrom` and `surfaceTo`.
struct PlungeMarks {
    double fullFrom = 0;
    double fullTo = 0;
    double surfaceFrom = 0;
    double surfaceTo = 0;
    bool operator==(const PlungeMarks&) const = default;
};

/// What the maker sets at the machine. Keys and rules: the report, version 1, "Settings in a step". mm.
struct Setting {
    std::optional<double> fence;
    std::optional<double> stop;
    std::optional<double> angle;  ///< degrees from square (rail: from the reference edge)
    std::optional<Wedge> wedge;
    std::optional<double> bladeHeight;
    std::optional<double> depth;
    std::optional<PlungeMarks> plunge;
    std::optional<double> spacer;
    std::optional<double> bearing;      ///< trimming: bearing's lower end above the table, or below the base
    std::optional<double> bite;         ///< wood left to trim
    std::optional<int> passes;          ///< in which it is taken, by width
    std::optional<bool> feedClockwise;  ///< round the opening as the panel lies
    bool operator==(const Setting&) const = default;
};

/// How a kerf comes up to a bore it must touch: its last cut is the step's setting, its first one
/// has fence or stop here, with so many layers of tape between it and the panel. mm.
struct FirstCut {
    double at = 0;         ///< fence or stop, from its face to the blade's nearer face
    int layers = 0;        ///< in place at the first cut; then one is added, or peeled, a cut
    int mostLayers = 0;    ///< how many there are in all
    double thickness = 0;  ///< of one layer
    bool operator==(const FirstCut&) const = default;
};

/// One step of the order of work.
struct WorkStep {
    int number = 0;  ///< from 1
    Task task = Task::Mark;
    std::string saw;  ///< id; "" where it is none
    std::vector<LineId> lines;
    std::vector<Side> sides;  ///< kerf steps: beside `lines`
    std::string cutout;       ///< rough cut, trimming, hand work: the id of the one it is about
    std::vector<ReliefHole> bores;         ///< bored or drilled through in this step
    std::vector<std::size_t> clampHoles;   ///< drilled in this step: indices into the project's
    std::optional<std::size_t> fence;      ///< fixed (grooved for: setting.depth) in this step: index into the project's
    Setting setting;
    std::optional<FirstCut> firstCut;  ///< kerf steps: where a kerf must touch a bore
    bool faceUp = true;            ///< the layout face's
    std::optional<Edge> against;   ///< edge on the fence
    std::optional<Edge> stopEdge;  ///< edge at the stop
    std::optional<Side> stopSide;  ///< on which side of the blade the stop stands, as the operator sees it
    std::optional<Edge> leads;     ///< the end that goes first into the cut
    std::optional<Side> turn;      ///< how gauge, mitre saw or rail is turned, as the operator sees it
    std::vector<EdgeMark> see;     ///< the marks in view
    std::vector<std::string> cautions;  ///< short sentences that apply at this step
    std::string because;                ///< why it waits for another step, one short sentence; "" where it waits for none
    std::string text;                   ///< the step in whole sentences, lengths in the project's units
    bool operator==(const WorkStep&) const = default;
};

struct OrderOfWork {
    int setups = 0;      ///< different pairs of saw and setting among the kerf steps
    int lowerBound = 0;  ///< no plan can have fewer
    std::vector<WorkStep> steps;
    bool operator==(const OrderOfWork&) const = default;
};

/// The order of work for a solved project. Same input, same plan.
[[nodiscard]] OrderOfWork plan(const Project& project, const Solved& solved);

}  // namespace kerfwall
