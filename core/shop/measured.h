// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/shop/iso_2768.h"
#include "core/shop/order_of_work.h"

namespace kerfwall {

/// Layers of tape between panel and fence or stop, by which a kerf is brought to its line: they move it towards the
/// fence. Common packing tape, as many layers as still lie flat. Trade.
struct Tape {
    double thickness = 0.15;  ///< mm, one layer
    int layers = 4;           ///< the most laid on one another
    bool operator==(const Tape&) const = default;
};

/// Nearer to its line than this a wall is on it, mm: finer is not measured at a kerf's edge. Trade.
inline constexpr double kOnLine = 0.05;

/// Where a wall was found: short of its line it stands in the waste, past it in the wood that should have stayed.
enum class Stands { OnLine, Short, Past };

/// How a wall that is short is brought out to its line by another cut.
struct MoveOut {
    LineId line;
    double by = 0;                   ///< mm, square to the wall
    bool isStop = false;             ///< the stop is moved, else the fence
    std::optional<double> shift;     ///< of fence or stop, mm: more than 0 away from the blade; none where it is cut to marks
    std::optional<double> setting;   ///< what fence or stop then reads where it read the plan's setting
    bool addsLayers = false;         ///< the waste lies beyond the line: layers are added; else those that lie in are peeled off
    int layers = 0;                  ///< as many as bring the wall no farther than its line
    double leaves = 0;               ///< mm then still missing
    bool operator==(const MoveOut&) const = default;
};

/// A size between walls that comes out otherwise than drawn.
struct SizeCost {
    LineId first;
    LineId second;
    double drawn = 0;  ///< mm
    double comes = 0;
    std::optional<ToleranceClass> keeps;  ///< the finest class it still keeps
    bool operator==(const SizeCost&) const = default;
};

/// What the plan answers to one entry of the record.
struct MeasuredAnswer {
    std::size_t record = 0;  ///< index into the project's record
    bool isPassed = false;   ///< measured again since: only its text says so
    std::optional<Stands> stands;  ///< none: what was measured says nothing about a wall or bore of this drawing
    double off = 0;  ///< mm short or past; of a bore: its diameter's
    std::optional<MoveOut> moveOut;
    std::vector<SizeCost> costs;  ///< past its line: the sizes it makes larger
    std::string text;             ///< whole sentences, lengths in the project's units
    bool operator==(const MeasuredAnswer&) const = default;
};

/// An answer to each entry of the record, in its order. Across an opening that is too small it is the wall cut later that
/// moves, unless that one was found on its line or past it.
/// Source    shims move a kerf only towards the fence: with the waste beyond the line layers are added, with the waste
///           between line and fence those that lie in are peeled off.
[[nodiscard]] std::vector<MeasuredAnswer> measuredAnswers(const Project& project, const Solved& solved,
                                                          const OrderOfWork& order, const Tape& tape = {});

/// The side on which all kerfs of the line lie; none where it has none, or has them on both.
[[nodiscard]] std::optional<Side> wasteSide(const SolvedLine& line);

/// How far a wall was found short of its line, mm; less than 0: past it. None for an entry that is not a line's distance
/// from an edge parallel to it, and for a line with walls on both its sides: which was measured is not said.
[[nodiscard]] std::optional<double> shortBy(const Project& project, const Solved& solved, const Record& record);

/// Whether two entries measure the same: the later one counts.
[[nodiscard]] bool measureTheSame(const Record& one, const Record& other);

/// Whether a later entry measures the same.
[[nodiscard]] bool isPassed(const std::vector<Record>& all, std::size_t record);

}  // namespace kerfwall
