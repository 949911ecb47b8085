// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/measured.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/geometry/edge_place.h"
#include "core/shop/heading.h"
#include "core/shop/measured_words.h"
#include "core/shop/step_way.h"

namespace kerfwall {

namespace {

constexpr double kSlack = 1e-9;  // mm; a whole number of layers stays one

using Pair = std::pair<LineId, LineId>;

bool isSamePair(const std::optional<Pair>& one, const std::optional<Pair>& other) {
    return one && other && (one == other || Pair{one->second, one->first} == *other);
}

/// Towards the kerf on that side, of length 1.
Point towards(const SolvedLine& line, Side side) {
    const Point left = unit(leftOf(line.to - line.from));
    return side == Side::Left ? left : -1.0 * left;
}

/// One wall of a line.
struct WallOf {
    LineId line;
    Side waste = Side::Left;
};

class Answering {
  public:
    Answering(const Project& project, const Solved& solved, const OrderOfWork& order, const Tape& tape)
        : m_project(project), m_solved(solved), m_order(order), m_tape(tape) {}

    MeasuredAnswer answer(std::size_t index) const {
        const Record& record = m_project.record[index];
        MeasuredAnswer found;
        found.record = index;
        found.isPassed = isPassed(m_project.record, index);
        if (record.line) {
            answerLine(found, record);
        } else if (record.between) {
            answerAcross(found, record);
        } else if (record.bore) {
            answerBore(found, record);
        }
        found.text = measuredText(m_project, found, m_tape);
        return found;
    }

  private:
    void answerLine(MeasuredAnswer& found, const Record& record) const {
        const auto by = shortBy(m_project, m_solved, record);
        if (!by) {
            return;
        }
        put(found, *by);
        if (found.stands == Stands::Short) {
            const SolvedLine* line = findLine(m_solved, record.line->first);
            found.moveOut = moveOut({line->id, *wasteSide(*line)}, found.off);
        }
        if (found.stands == Stands::Past) {
            found.costs = costsOf(record.line->first);
        }
    }

    void answerAcross(MeasuredAnswer& found, const Record& record) const {
        const auto facing = facingPair(*record.between);
        if (!facing) {
            return;
        }
        const auto& [cutout, size] = *facing;
        put(found, size->distance - record.measured);
        if (found.stands == Stands::Short) {
            found.moveOut = moveOut(movable(wallOf(*cutout, size->firstWall), wallOf(*cutout, size->secondWall)), found.off);
        }
        if (found.stands == Stands::Past) {
            found.costs = {costOf(*size, found.off)};
        }
    }

    void answerBore(MeasuredAnswer& found, const Record& record) const {
        for (const SolvedCutout& cutout : m_solved.cutouts) {
            for (const Corner& corner : cutout.corners) {
                if (corner.boreRadius && isSamePair(record.bore, Pair{corner.first, corner.second})) {
                    put(found, 2 * *corner.boreRadius - record.measured);
                    return;
                }
            }
        }
    }

    static void put(MeasuredAnswer& found, double shortBy) {
        found.off = std::abs(shortBy);
        found.stands = found.off <= kOnLine + kSlack ? Stands::OnLine : shortBy > 0 ? Stands::Short : Stands::Past;
    }

    /// How far the newest entry found that wall past its line.
    double pastBy(const LineId& line) const {
        double past = 0;
        for (const Record& record : m_project.record) {
            if (record.line && record.line->first == line) {
                past = std::max(0.0, -shortBy(m_project, m_solved, record).value_or(0));
            }
        }
        return past;
    }

    bool isOut(const LineId& line) const {
        for (std::size_t i = m_project.record.size(); i-- > 0;) {
            const Record& record = m_project.record[i];
            if (record.line && record.line->first == line) {
                const auto by = shortBy(m_project, m_solved, record);
                return by && *by <= kOnLine + kSlack;
            }
        }
        return false;
    }

    static WallOf wallOf(const SolvedCutout& cutout, std::size_t wall) {
        return {cutout.walls.at(wall).line, cutout.walls.at(wall).waste};
    }

    /// Of two walls the one that can still be moved: cut later, unless it is out already.
    WallOf movable(const WallOf& one, const WallOf& other) const {
        const auto number = [&](const WallOf& wall) {
            const WorkStep* step = stepCutting(m_order, wall.line, wall.waste);
            return step ? step->number : 0;
        };
        const bool isOneLater = number(one) > number(other);
        const WallOf& later = isOneLater ? one : other;
        const WallOf& earlier = isOneLater ? other : one;
        return isOut(later.line) && !isOut(earlier.line) ? earlier : later;
    }

    MoveOut moveOut(const WallOf& wall, double by) const {
        MoveOut out;
        out.line = wall.line;
        out.by = by;
        out.leaves = by;
        const SolvedLine* line = findLine(m_solved, wall.line);
        const WorkStep* step = stepCutting(m_order, wall.line, wall.waste);
        if (line == nullptr || step == nullptr) {
            return out;
        }
        out.isStop = step->setting.stop.has_value();
        const auto edge = out.isStop ? step->stopEdge : step->setting.fence ? step->against : std::nullopt;
        if (!edge) {
            return out;
        }
        // Along the fence of a turned gauge the wall moves farther than square to itself.
        const double along = by / std::cos(step->setting.angle.value_or(0) * std::numbers::pi / 180);
        const bool isBeyond = dot(towards(*line, wall.waste), leftOf(edgeHeading(*edge))) > 0;
        out.shift = isBeyond ? -along : along;
        out.setting = (out.isStop ? *step->setting.stop : *step->setting.fence) + *out.shift;
        out.addsLayers = isBeyond;
        out.layers = std::min(m_tape.layers, static_cast<int>(std::floor(along / m_tape.thickness + kSlack)));
        out.leaves = by * (1 - out.layers * m_tape.thickness / along);
        return out;
    }

    std::optional<std::pair<const SolvedCutout*, const FacingSize*>> facingPair(const Pair& walls) const {
        for (const SolvedCutout& cutout : m_solved.cutouts) {
            for (const FacingSize& size : cutout.sizes) {
                if (isSamePair(walls, Pair{size.first, size.second})) {
                    return std::pair{&cutout, &size};
                }
            }
        }
        return std::nullopt;
    }

    static SizeCost costOf(const FacingSize& size, double over) {
        return {size.first, size.second, size.distance, size.distance + over, lengthClassKept(size.distance, over)};
    }

    std::vector<SizeCost> costsOf(const LineId& id) const {
        std::vector<SizeCost> costs;
        for (const SolvedCutout& cutout : m_solved.cutouts) {
            for (const FacingSize& size : cutout.sizes) {
                if (size.first == id || size.second == id) {
                    costs.push_back(costOf(size, pastBy(size.first) + pastBy(size.second)));
                }
            }
        }
        return costs;
    }

    const Project& m_project;
    const Solved& m_solved;
    const OrderOfWork& m_order;
    const Tape& m_tape;
};

}  // namespace

bool measureTheSame(const Record& one, const Record& other) {
    const bool isOneLine = one.line && other.line && one.line->first == other.line->first;
    return isOneLine || isSamePair(one.between, other.between) || isSamePair(one.bore, other.bore);
}

bool isPassed(const std::vector<Record>& all, std::size_t record) {
    return std::any_of(all.begin() + static_cast<std::ptrdiff_t>(record) + 1, all.end(),
                       [&](const Record& later) { return measureTheSame(all[record], later); });
}

std::optional<Side> wasteSide(const SolvedLine& line) {
    if (line.kerfs.empty()) {
        return std::nullopt;
    }
    const Side side = line.kerfs.front().side;
    return std::ranges::all_of(line.kerfs, [&](const Kerf& kerf) { return kerf.side == side; }) ? std::optional(side)
                                                                                              : std::nullopt;
}

std::optional<double> shortBy(const Project& project, const Solved& solved, const Record& record) {
    const SolvedLine* line = record.line ? findLine(solved, record.line->first) : nullptr;
    const auto side = line ? wasteSide(*line) : std::nullopt;
    if (!side || headingFrom(record.line->second, line->from, line->to) != Heading::Along) {
        return std::nullopt;
    }
    const Edge edge = record.line->second;
    const double beyond = record.measured - distanceFromEdge(project.panel, edge, line->from);
    return dot(towards(*line, *side), leftOf(edgeHeading(edge))) > 0 ? beyond : -beyond;
}

std::vector<MeasuredAnswer> measuredAnswers(const Project& project, const Solved& solved, const OrderOfWork& order,
                                            const Tape& tape) {
    const Answering answering(project, solved, order, tape);
    std::vector<MeasuredAnswer> answers;
    for (std::size_t i = 0; i < project.record.size(); ++i) {
        answers.push_back(answering.answer(i));
    }
    return answers;
}

}  // namespace kerfwall
