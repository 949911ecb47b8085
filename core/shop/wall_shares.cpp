// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/wall_shares.h"

#include <cmath>

#include "core/geometry/edge_place.h"
#include "core/shop/heading.h"
#include "core/shop/step_text.h"

namespace kerfwall {

namespace {

constexpr double kPerMetre = 1000;  // squareness is said in mm over a metre

/// One wall, the way its kerf is cut, and what that puts together.
class WallCut {
  public:
    WallCut(const Project& project, const SolvedLine& line, Side side, const Way& way)
        : m_panel(project.panel), m_line(line), m_side(side), m_way(way),
          m_saw(way.saw ? benchOf(project).saws.at(*way.saw) : stockSaw(SawKind::GuideRail)),
          m_left(leftOf(unit(line.to - line.from))), m_run(distance(line.from, line.to)) {}

    std::vector<WallShare> shares() && {
        if (m_way.setting.fence && m_way.against) {
            addSet(*m_way.against);
        } else if (m_way.setting.stop && m_way.against && m_way.stopEdge) {
            addSet(*m_way.stopEdge);
            addTurnAbout(meetsFence(*m_way.against));
        } else if (m_way.saw && m_way.against && m_saw.kind != SawKind::GuideRail) {
            addMarkedAtFence();
        } else {
            addMarkedAtEnds();
        }
        return std::move(m_shares);
    }

  private:
    void add(const std::string& source, double plusMinus, double atStart, double perMm = 0) {
        m_shares.push_back({source, plusMinus, atStart, perMm});
    }

    /// Set by a distance from that edge.
    void addSet(Edge edge) {
        const Point away = leftOf(edgeHeading(edge));
        const double follows = dot(away, m_left);
        add("setting " + setupKey(m_way, m_line.id), m_saw.repeatability, follows);
        const bool isFar = (follows > 0) != (m_side == Side::Left);
        if (isFar) {
            add("kerf " + m_saw.id, m_saw.kerfPlusMinus, follows > 0 ? 1 : -1);
        }
        const double size = m_panel.squareCorner == SquareCorner::All ? kSizeMeasured : kSizeSaid;
        if (edge == Edge::Right) {
            add("panel width", size, dot({1, 0}, m_left));
        } else if (edge == Edge::Top) {
            add("panel height", size, dot({0, 1}, m_left));
        }
    }

    /// The rail lies on two marks, one at each end of the line.
    void addMarkedAtEnds() {
        add(markName("first"), m_saw.repeatability, 1, -1 / m_run);
        add(markName("last"), m_saw.repeatability, 0, 1 / m_run);
    }

    /// Fence or arm gives the angle, the mark at the leading end the place.
    void addMarkedAtFence() {
        const Edge leads = m_way.leads.value_or(*m_way.against);
        const auto off = [&](Point end) { return distanceFromEdge(m_panel, leads, end); };
        const double leading = off(m_line.from) <= off(m_line.to) ? 0 : m_run;
        add(markName("leading"), m_saw.repeatability, 1);
        addTurnAbout(leading);
        if (const auto& wedge = m_way.setting.wedge) {
            add(markName("wedge"), m_saw.repeatability / wedge->length, -leading, 1);
        }
    }

    std::string markName(const char* which) const {
        return "mark " + m_line.id + " " + sideWord(m_side) + " " + which;
    }

    /// The line turns about its place `s`.
    void addTurnAbout(double s) { add(turnName(), squareness() / kPerMetre, -s, 1); }

    /// A mitre saw's squareness is not said: it is taken for a gauge's.
    double squareness() const {
        return m_saw.kind == SawKind::SlidingMitre ? stockSaw(SawKind::MitreGauge).squareness : m_saw.squareness;
    }

    std::string turnName() const {
        const double angle = m_way.setting.angle.value_or(0);
        if (angle == 0 || !m_way.turn) {
            return "square " + m_saw.id;
        }
        return "turned " + m_saw.id + " " + sideWord(*m_way.turn) + " " + degreesText(angle);
    }

    /// Where the line meets the edge on the fence, mm along it.
    double meetsFence(Edge against) const {
        const double from = distanceFromEdge(m_panel, against, m_line.from);
        const double to = distanceFromEdge(m_panel, against, m_line.to);
        return std::abs(from - to) < kAtTheEdge ? 0 : m_run * from / (from - to);
    }

    const Panel& m_panel;
    const SolvedLine& m_line;
    Side m_side;
    const Way& m_way;
    Saw m_saw;
    Point m_left;
    double m_run;
    std::vector<WallShare> m_shares;
};

}  // namespace

std::vector<WallShare> wallShares(const Project& project, const SolvedLine& line, Side side, const Way& way) {
    return WallCut(project, line, side, way).shares();
}

}  // namespace kerfwall
