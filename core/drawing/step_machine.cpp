// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/drawing/drawn_size.h"
#include "core/drawing/plan_parts.h"
#include "core/drawing/step_parts.h"
#include "core/geometry/angle.h"
#include "core/geometry/edge_place.h"
#include "core/shop/heading.h"
#include "core/shop/lie.h"
#include "core/shop/plunge_places.h"
#include "core/shop/step_text.h"
#include "core/shop/trimming.h"

namespace kerfwall {
namespace {

constexpr double kRailPast = 40;  // mm a rail is shown past the panel, of what it has

// mm on paper.
constexpr double kBar = 5;            // a fence's width
constexpr double kBarPast = 9;        // ... and how far it runs on past the panel
constexpr double kStopLong = 9;
constexpr double kStopWide = 6;
constexpr double kSizeAway = 10;      // from the edge on the fence to the dimension
constexpr double kTurnAway = 16;      // ... and to the words for a turn
constexpr double kSpacer = 2;
constexpr double kRipPast = 28;       // the rip fence runs on past the blade
constexpr double kBeside = 6;         // from the panel to the arrow of the push
constexpr double kArrowLong = 22;
constexpr double kArrowHead = 3.6;
constexpr double kWords = 3.2;

class MachineSketch {
  public:
    explicit MachineSketch(StepSheet& sheet)
        : m_sheet(sheet), m_bench(benchOf(sheet.project)), m_saw(findSaw(m_bench, sheet.step.saw)) {}

    void draw() {
        if (m_sheet.step.task == Task::Trim) return addBitsWay();
        if (m_sheet.step.task == Task::Bore && m_sheet.step.against) return addFence();
        const auto way = cutWayOf(m_sheet.project, m_sheet.solved, m_sheet.step);
        if (m_sheet.step.task != Task::Kerf || !way) return;
        if (m_saw && m_sheet.step.against) {
            if (m_saw->kind == SawKind::RipFence) addRipFence(*way);
            else addFence();
            addTurn(onFence(), *way);
        }
        addRail();
        addPlunge(*way);
        addBlade(*way);
        addPush(*way);
    }

  private:
    [[nodiscard]] double s() const { return m_sheet.scale; }
    [[nodiscard]] std::string size(double mm) const { return drawnSetting(mm, m_sheet.project.units); }
    void area(Ink ink, const std::vector<Point>& corners, const std::string& id) {
        m_sheet.drawing.marks.emplace_back(Area{ink, {polygonLoop(corners)}, id});
    }
    void bar(Point from, Point to, Point across, const std::string& id) {
        area(Ink::Machine, {from, to, to + across, from + across}, id);
    }
    void words(Point at, const std::string& text, double turn, const std::string& id) {
        m_sheet.drawing.marks.emplace_back(Label{Ink::Text, at, text, kWords, Anchor::Middle, turn, id});
    }
    /// The edge on the fence as the operator sees it, and the way from it off the panel.
    struct OnFence {
        Point start;
        Point end;
        Point along;
        Point off;
    };
    [[nodiscard]] OnFence onFence() const {
        const Run run = edgeRun(m_sheet.project.panel, *m_sheet.step.against);
        const Point start = m_sheet.lying.put(run.start);
        const Point along = m_sheet.lying.put(run.along);
        return {start, start + run.length * along, along, m_sheet.lying.put(-1.0 * leftOf(run.along))};
    }

    void addRipFence(const CutWay& way) {
        const OnFence edge = onFence();
        const bool ahead = dot(edge.along, way.forward) < 0;
        const Point front = (ahead ? edge.end : edge.start) - kRipPast * s() * way.forward;
        const Point back = (ahead ? edge.start : edge.end) + kBarPast * s() * way.forward;
        bar(front, back, kBar * s() * edge.off, "fence");
        if (!m_sheet.step.setting.fence) return;
        // Beside the blade, from the fence's face to the blade's nearer one.
        const Point face = front + (kRipPast - kBladeAway - kBladeLong / 2) * s() * way.forward;
        addSize(face, face - *m_sheet.step.setting.fence * edge.off, 0, setAt(*m_sheet.step.setting.fence), "fence");
    }

    void addFence() {
        const OnFence edge = onFence();
        const double spacer = m_sheet.step.setting.spacer ? kSpacer * s() : 0;
        if (spacer > 0) bar(edge.start, edge.end, spacer * edge.off, "spacer");
        const Point past = kBarPast * s() * edge.along;
        if (m_sheet.step.setting.wedge) {
            addWedge(edge);
        } else {
            const Point out = spacer * edge.off;
            bar(edge.start - past + out, edge.end + past + out, kBar * s() * edge.off, "fence");
        }
        addStop(edge);
    }

    /// The fence stays square to the push; the panel stands off it at one end.
    void addWedge(const OnFence& edge) {
        const Point off{0, edge.off.y > 0 ? 1.0 : -1.0};
        const bool endTouches = dot(edge.end, off) > dot(edge.start, off);
        const Point touch = endTouches ? edge.end : edge.start;
        const Point away = endTouches ? edge.start : edge.end;
        const Point foot{away.x, touch.y};
        area(Ink::Machine, {touch, away, foot}, "wedge");
        const Point past{(foot.x > touch.x ? kBarPast : -kBarPast) * s(), 0};
        bar(touch - past, foot + past, kBar * s() * off, "fence");
        const double side = foot.x > touch.x ? 1 : -1;
        addSize(foot, away, (off.y < 0 ? -side : side) * 5 * s(), size(m_sheet.step.setting.wedge->rise), "wedge");
    }

    void addStop(const OnFence& edge) {
        const auto& step = m_sheet.step;
        if (!step.stopEdge) return;
        const bool atEnd = *step.stopEdge == nextOf(*step.against);
        const Point corner = atEnd ? edge.end : edge.start;
        const Point outwards = (atEnd ? 1.0 : -1.0) * edge.along;
        bar(corner, corner - kStopLong * s() * edge.off, kStopWide * s() * outwards, "stop");
        const Point named = corner + (kStopWide + 1.5) * s() * outwards - kStopLong / 2 * s() * edge.off;
        const Anchor anchor = outwards.x < 0 ? Anchor::Right : Anchor::Left;
        m_sheet.drawing.marks.emplace_back(
            Label{Ink::Text, named - Point{0, 0.36 * kWords * s()}, "stop", kWords, anchor, 0, "stop"});
        if (step.task != Task::Kerf || !step.setting.stop) return;  // holes are dimensioned by themselves
        const Point blade = corner - *step.setting.stop * outwards;
        const double away = kSizeAway * s();
        const bool offIsLeft = dot(leftOf(blade - corner), edge.off) > 0;
        addSize(corner, blade, offIsLeft ? away : -away, setAt(*step.setting.stop), "stop");
    }

    /// A setting's number; where the first cut has another, that one before it.
    [[nodiscard]] std::string setAt(double last) const {
        const auto& first = m_sheet.step.firstCut;
        const bool isOther = first && size(first->at) != size(last);
        return isOther ? size(first->at) + ", then " + size(last) : size(last);
    }
    void addSize(Point from, Point to, double offset, const std::string& text, const std::string& id) {
        m_sheet.drawing.marks.emplace_back(Dimension{from, to, offset, text, id, {}});
    }

    void addTurn(const OnFence& edge, const CutWay& way) {
        const auto& step = m_sheet.step;
        if (!step.turn || !m_saw) return;
        const double turn = step.setting.angle.value_or(std::abs(turnOfPanelAt(m_sheet.project, step)));
        const std::string text = "turned " + degreesText(turn) + " to the " + sideWord(*step.turn);
        const Point off{0, edge.off.y > 0 ? 1.0 : -1.0};
        const Point middle = 0.5 * (edge.start + edge.end);
        const double far = std::max(dot(edge.start, off), dot(edge.end, off));
        words({middle.x, off.y * (far + kTurnAway * s())}, text, 0, "turn");
        if (m_saw->kind != SawKind::SlidingMitre) return;
        // Square to the fence, for the eye to measure the arm's turn by.
        m_sheet.drawing.marks.emplace_back(
            Stroke{Ink::Centre, way.entry, way.entry + distance(way.entry, way.exit) / 2 * off, "square"});
    }

    void addRail() {
        const std::vector<Point> rail = laid(railOf(m_sheet.project, m_sheet.solved, m_sheet.step), m_sheet.lying);
        if (rail.empty()) return;
        area(Ink::Rail, rail, "rail");
        const Point middle = 0.25 * (rail[0] + rail[1] + rail[2] + rail[3]);
        words(middle, "rail", 0, "rail");
    }

    /// Where the blade is let in and brought out, across the kerf.
    void addPlunge(const CutWay& way) {
        const auto plunge = plungeFromStart(m_sheet.project.panel, m_sheet.solved, m_sheet.step);
        if (!plunge) return;
        constexpr double kTick = 5;
        constexpr double kApart = 4.5;  // marks nearer than this have no room for their numbers; the setting has them
        const bool fullNumbers = plunge->fullTo - plunge->fullFrom >= kApart * s();
        const bool faceNumbers = plunge->surfaceTo - plunge->surfaceFrom >= 2 * kApart * s();
        for (const double at : {plunge->surfaceFrom, plunge->fullFrom, plunge->fullTo, plunge->surfaceTo}) {
            const Point place = way.entry + at * way.forward;
            const bool isFull = at == plunge->fullFrom || at == plunge->fullTo;
            // Marks of full depth on the waste's side, those where the blade leaves the face on the other.
            const Point side = (isFull ? kTick : -kTick) * s() * way.waste;
            m_sheet.drawing.marks.emplace_back(
                Stroke{isFull ? Ink::HereEdge : Ink::EdgeTick, place - 0.4 * side, place + side, "plunge"});
            if (!(isFull ? fullNumbers : faceNumbers)) continue;
            const Point drop{0, -0.36 * kWords * s()};
            words(place + 1.7 * side + drop, size(at), 0, "plunge");
        }
    }

    void addBlade(const CutWay& way) {
        const Point across = way.width * way.waste;
        const Point near = way.entry - kBladeAway * s() * way.forward;
        const Point far = near - kBladeLong * s() * way.forward;
        area(Ink::Blade, {near, far, far + across, near + across}, "blade");
        const Point drop{0, -0.36 * kWords * s()};
        const Point at = far + 0.5 * across - 3 * s() * way.forward + drop;
        // Off a fence beside it.
        const double off = m_sheet.step.against && std::abs(way.forward.x) < 0.5 ? onFence().off.x : 0;
        const Anchor anchor = off > 0.5 ? Anchor::Right : off < -0.5 ? Anchor::Left : Anchor::Middle;
        m_sheet.drawing.marks.emplace_back(Label{Ink::Text, at, "blade", kWords, anchor, 0, "blade"});
    }

    /// The panel is pushed at a table; the saw itself on a rail or an arm.
    void addPush(const CutWay& way) {
        const bool isTable = m_saw && m_saw->kind != SawKind::GuideRail && m_saw->kind != SawKind::SlidingMitre;
        if (!isTable) {
            const Point start = way.entry + (way.width + 3 * s()) * way.waste - (kBladeAway + kBladeLong) * s() * way.forward;
            return addArrow(m_sheet, start, way.forward, kBladeLong, "cut");
        }
        const Box box = boundsLaid(m_sheet.project.panel, m_sheet.lying);
        const bool onLeft = isStopOnRight();
        const double x = onLeft ? box.low.x - kBeside * s() : box.high.x + kBeside * s();
        const double y = (box.low.y + box.high.y) / 2;
        const double along = std::min(kArrowLong, 0.8 * (box.high.y - box.low.y) / s());
        addArrow(m_sheet, {x, y - along / 2 * s()}, {0, 1}, along, "push");
        words({x + (onLeft ? -2.4 : 4.8) * s(), y}, "push", 90, "push");
    }
    /// The arrow stands where neither stop nor rip fence does.
    [[nodiscard]] bool isStopOnRight() const {
        if (m_saw->kind == SawKind::RipFence) return m_saw->fenceSide == Side::Right;
        return m_sheet.step.stopSide == Side::Right;
    }

    /// Whether a piece of the opening lies on the wall along which the text tells the feed; where it tells none, on any.
    [[nodiscard]] bool isOnFeedWall(const OutlinePiece& piece, const Wall* wall) const {
        if (piece.isArc || !findLine(m_sheet.solved, piece.on)) return false;
        if (!wall) return true;
        const Point middle = 0.5 * (piece.from + piece.to);
        return piece.on == wall->line && dot(middle - wall->from, middle - wall->to) < 0;
    }

    /// Beside a straight wall: the bit, and which way it goes round.
    void addBitsWay() {
        const auto cutout = std::ranges::find(m_sheet.solved.cutouts, m_sheet.step.cutout, &SolvedCutout::id);
        if (cutout == m_sheet.solved.cutouts.end() || !m_sheet.step.setting.feedClockwise) return;
        const OutlinePiece* longest = nullptr;
        for (const OutlineLoop& loop : cutout->opening.loops) {
            for (const OutlinePiece& piece : loop) {
                const bool isLonger = !longest || distance(piece.from, piece.to) > distance(longest->from, longest->to);
                if (isLonger && isOnFeedWall(piece, feedWall(*cutout))) longest = &piece;
            }
        }
        if (!longest) return;
        const Point in = m_sheet.lying.put(leftOf(unit(longest->to - longest->from)));
        // Clockwise round an opening keeps its middle on the right.
        const Point way = *m_sheet.step.setting.feedClockwise ? leftOf(in) : -1.0 * leftOf(in);
        const double radius = m_sheet.solved.bitRadius;
        const Point wall = m_sheet.lying.put(0.5 * (longest->from + longest->to));
        const double along = std::min(kArrowLong * s(), 0.35 * distance(longest->from, longest->to));
        const Point bit = wall + radius * in - along / 2 * way;
        m_sheet.drawing.marks.emplace_back(Circle{Ink::ReliefHole, bit, radius, "bit"});
        addArrow(m_sheet, bit + radius * way, way, along / s(), "feed");
    }

    StepSheet& m_sheet;
    const Bench& m_bench;
    const Saw* m_saw;
};

}  // namespace

std::optional<CutWay> cutWayOf(const Project& project, const Solved& solved, const WorkStep& step) {
    if (step.lines.empty() || step.sides.empty()) return std::nullopt;
    const SolvedLine* line = findLine(solved, step.lines.front());
    if (!line) return std::nullopt;
    const Lying lying = lyingAt(project, step);
    const auto kerf = std::ranges::find(line->kerfs, step.sides.front(), &Kerf::side);
    const Point waste = (step.sides.front() == Side::Left ? 1.0 : -1.0) * leftOf(unit(line->to - line->from));
    CutWay way{lying.put(line->from), lying.put(line->to), {}, lying.put(waste),
               kerf == line->kerfs.end() ? 0 : kerf->width};
    const auto offEdge = [&](Point place) { return std::abs(distanceFromEdge(project.panel, *step.leads, place)); };
    if (step.leads && offEdge(line->to) < offEdge(line->from)) std::swap(way.entry, way.exit);
    way.forward = unit(way.exit - way.entry);
    return way;
}

std::vector<Point> railOf(const Project& project, const Solved& solved, const WorkStep& step) {
    const Saw* saw = findSaw(benchOf(project), step.saw);
    if (!saw || saw->kind != SawKind::GuideRail || step.lines.empty() || step.sides.empty()) return {};
    const SolvedLine* line = findLine(solved, step.lines.front());
    if (!line) return {};
    const Point along = unit(line->to - line->from);
    const Point kept = (step.sides.front() == Side::Left ? -1.0 : 1.0) * leftOf(along);
    const double past = std::clamp((saw->railLength - distance(line->from, line->to)) / 2, 0.0, kRailPast);
    const Point from = line->from - past * along;
    const Point to = line->to + past * along;
    return {from, to, to + saw->railWidth * kept, from + saw->railWidth * kept};
}

void addArrow(StepSheet& sheet, Point from, Point way, double length, const std::string& id) {
    const Point tip = from + length * sheet.scale * way;
    const Point foot = tip - kArrowHead * sheet.scale * way;
    const Point half = 0.4 * kArrowHead * sheet.scale * leftOf(way);
    sheet.drawing.marks.emplace_back(Stroke{Ink::Arrow, from, foot, id});
    sheet.drawing.marks.emplace_back(Area{Ink::Arrow, {polygonLoop({tip, foot + half, foot - half})}, id});
}

void addMachine(StepSheet& sheet) { MachineSketch(sheet).draw(); }

}  // namespace kerfwall
