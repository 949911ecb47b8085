// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace kerfwall {

enum class SawKind { RipFence, CrosscutSled, MitreGauge, GuideRail, SlidingMitre };
enum class Side { Left, Right };

/// A saw as it stands in the shop. Lengths in mm, `squareness` ± mm per m. Fields that belong to
/// other kinds are kept at their defaults and not written.
struct Saw {
    std::string id;
    SawKind kind = SawKind::RipFence;
    double kerf = 3.2;   ///< width of the groove it leaves, 0.5 to 10
    double blade = 254;  ///< diameter, 80 to 450
    double repeatability = 0.15;
    double kerfPlusMinus = 0;
    double depthPlusMinus = 0;
    double maxFence = 600;         ///< rip fence
    Side fenceSide = Side::Right;  ///< rip fence: of the blade
    double base = 12;              ///< sled: its thickness
    double maxCut = 600;           ///< sled, sliding mitre saw
    double maxStop = 600;          ///< sled
    bool fenceFar = false;         ///< sled: fence beyond the blade from the one who pushes
    double squareness = 0.1;       ///< sled, gauge
    double maxAngle = 60;          ///< gauge, sliding mitre saw; degrees
    bool stop = true;              ///< gauge: carries a stop
    double rail = 0;               ///< guide rail: to add to the depth scale
    double railLength = 1400;
    double railWidth = 180;
    Side railSide = Side::Left;  ///< of the cut
    std::string unknown;
    bool operator==(const Saw&) const = default;
};

enum class BearingAt { Tip, Shank, Both };
enum class Router { Hand, Table };

/// A bit whose bearing has its cutter's diameter.
struct TrimBit {
    double diameter = 12.7;
    double bearingLength = 5;
    double cuttingLength = 25;
    BearingAt bearingAt = BearingAt::Tip;
    std::string unknown;
    bool operator==(const TrimBit&) const = default;
};

struct Clamp {
    double hole = 0;
    double insert = 0;
    double reach = 0;
    double jaw = 0;
    std::string unknown;
    bool operator==(const Clamp&) const = default;
};

/// The tools a template is made with. An absent tool is absent; what needs it becomes a finding.
struct Bench {
    std::vector<Saw> saws;
    std::optional<TrimBit> trimBit;
    std::optional<Router> trimWith;
    std::optional<double> cornerDrill;  ///< diameter, mm
    std::vector<double> bores;          ///< diameters of large drills and hole saws, mm
    std::optional<double> circleBit;    ///< diameter, mm
    std::optional<double> base;         ///< diameter of the hand-held router's base, mm
    std::vector<Clamp> clamps;
    std::vector<double> bits;    ///< what else is at hand, diameters, mm
    std::vector<double> bushes;  ///< outside diameters, mm
    std::string unknown;
    bool operator==(const Bench&) const = default;
};

/// The bench of a project that names none.
[[nodiscard]] Bench stockBench();

/// The stock bench's saw of that kind: what a given saw's missing fields take.
[[nodiscard]] Saw stockSaw(SawKind kind);

/// The saw of that id, or nullptr.
[[nodiscard]] const Saw* findSaw(const Bench& bench, const std::string& id);

}  // namespace kerfwall
