// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clamp_tool.h"

#include <algorithm>

#include "core/geometry/edge_place.h"
#include "core/geometry/laying.h"
#include "core/geometry/picking.h"
#include "core/says/length_text.h"
#include "ui/hole_entry.h"
#include "ui/hole_words.h"
#include "ui/selection.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kEdgeReach = 3;  // times the usual reach: an edge is easy to mean
constexpr double kStep = 1;       // mm of depth
constexpr double kInchStep = kMillimetresPerInch / 16;

}  // namespace

bool ClampTool::hasHole() const {
    const auto hole = m_selection.hole();
    return hole && *hole < m_session.project().clampHoles.size();
}

HoleWish ClampTool::wishAt(const Hand& hand) const {
    const std::vector<HoleKind> kinds = holesAtHand(m_session.before());
    return {hand.at, kEdgeReach * hand.reach, hand.snap ? hand.step : kLooseStep, kinds[std::min(m_kind, kinds.size() - 1)], m_edge};
}

void ClampTool::press(const Hand& hand) {
    m_session.commit();
    m_trouble.clear();
    m_at = hand.at;
    m_grabbed = hand.at;
    if (const auto near = holeGripNear(m_session.project(), hand.at, hand.reach)) {
        m_doing = Doing::Holding;
        m_grip = near->grip;
        m_hole = near->hole;
        m_shown.reset();
        m_selection.pickHole(near->hole);
        Q_EMIT updated();
        return;
    }
    const Panel& panel = m_session.project().panel;
    const EdgeMark mark = nearestMark(panel, hand.at);
    if (distance(markPlace(panel, mark), hand.at) > kEdgeReach * hand.reach) {
        m_trouble = tr("A clamp hole is drilled from an edge: click near the edge it goes into.");
        Q_EMIT updated();
        return;
    }
    m_edge = mark.edge;
    m_doing = Doing::Placing;
    m_session.begin(tr("Place a clamp hole"));
    place(hand);
}

void ClampTool::show(const Project& next, std::size_t hole) {
    m_shown = next;
    m_hole = hole;
    m_session.preview(next);
    m_selection.pickHole(hole);
    Q_EMIT updated();
}

void ClampTool::place(const Hand& hand) {
    Project next = m_session.before();
    next.clampHoles.push_back(clampHoleFor(next, wishAt(hand)));
    show(next, next.clampHoles.size() - 1);
}

void ClampTool::carry(const Hand& hand) {
    const std::size_t hole = m_hole;
    const Project& before = m_session.before();
    if (hole >= before.clampHoles.size()) return;
    const double step = hand.snap ? hand.step : kLooseStep;
    if (m_grip == HoleGrip::Whole) return show(withHoleAt(before, hole, hand.at, step), hole);
    const Edge edge = before.clampHoles[hole].edge;
    show(withHoleDepth(before, hole, depthAt(before, edge, hand.at, step, hand.snap ? hand.step : 0)), hole);
}

void ClampTool::move(const Hand& hand) {
    m_at = hand.at;
    if (m_doing == Doing::Placing) return place(hand);
    if (m_doing == Doing::Holding && distance(hand.at, m_grabbed) >= hand.still()) {
        m_doing = Doing::Carrying;
        m_session.begin(m_grip == HoleGrip::Point ? tr("Drill the clamp hole deeper or shallower") : tr("Move the clamp hole"));
    }
    if (m_doing == Doing::Carrying) return carry(hand);
    if (m_doing == Doing::Nothing) hover(hand);
    Q_EMIT updated();
}

/// What a click would do here: take hold of a hole, or place one.
void ClampTool::hover(const Hand& hand) {
    const Project& project = m_session.project();
    m_shown.reset();
    m_under = holeGripNear(project, hand.at, hand.reach);
    if (m_under) return;
    m_edge.reset();
    const HoleWish wish = wishAt(hand);
    if (distance(markPlace(project.panel, nearestMark(project.panel, hand.at)), hand.at) > wish.reach) return;
    m_shown = project;
    m_shown->clampHoles.push_back(clampHoleFor(project, wish));
}

void ClampTool::release(const Hand&) {
    if (isBusy()) {
        m_session.commit();
        m_selection.pickHole(m_hole);  // a large project has it only now
    }
    end();
}

void ClampTool::end() {
    m_doing = Doing::Nothing;
    m_shown.reset();
    Q_EMIT updated();
}

bool ClampTool::nudge(Point shift) {
    if (!hasHole() || m_doing != Doing::Nothing) return false;
    m_session.commit();
    m_at.reset();
    m_shown.reset();
    m_session.change(tr("Move the clamp hole"), withHoleNudged(m_session.project(), *m_selection.hole(), shift));
    return true;
}

bool ClampTool::grow(int steps) {
    if (!hasHole() || m_doing != Doing::Nothing) return false;
    m_session.commit();
    const std::size_t hole = *m_selection.hole();
    const Project& project = m_session.project();
    const double step = project.units == Units::Inches ? kInchStep : kStep;
    m_session.change(tr("Drill the clamp hole deeper or shallower"),
                     withHoleDepth(project, hole, project.clampHoles[hole].depth + steps * step));
    return true;
}

std::optional<bool> ClampTool::tab(bool next) {
    const std::size_t count = m_session.project().clampHoles.size();
    if (count == 0 || isBusy()) return std::nullopt;
    m_session.commit();
    m_at.reset();
    m_shown.reset();
    m_under.reset();
    const std::size_t past = count;  // 0 - 1 wraps beyond it as well
    const std::size_t wanted = hasHole() ? (next ? *m_selection.hole() + 1 : *m_selection.hole() - 1) : (next ? 0 : count - 1);
    if (wanted < past) m_selection.pickHole(wanted);
    else m_selection.clear();
    Q_EMIT updated();
    return wanted < past;
}

void ClampTool::leave() {
    if (m_doing != Doing::Nothing) return;
    m_under.reset();
    m_shown.reset();
    m_at.reset();
    Q_EMIT updated();
}

void ClampTool::cancel() {
    const bool carried = m_doing == Doing::Carrying;
    m_session.abandon();
    m_trouble.clear();
    if (!carried) m_selection.clear();
    end();
}

QString ClampTool::draggingSentence() const {
    const Units units = m_session.project().units;
    const ClampHole& hole = m_shown->clampHoles[m_hole];
    const QString at = sizeFor(hole.at, units), deep = sizeFor(hole.depth, units), edge = edgeCountText(hole.edge);
    if (m_doing == Doing::Placing) {
        return tr("Let go to place the clamp hole %1 on the %2, %3 deep. Alt: no steps. Esc: leave it.").arg(at, edge, deep);
    }
    return m_grip == HoleGrip::Point
               ? tr("Let go to drill the clamp hole %1 deep. Alt: no steps. Esc: put it back.").arg(deep)
               : tr("Let go to leave the clamp hole %1 on the %2. Alt: no steps. Esc: put it back.").arg(at, edge);
}

QString ClampTool::sentence() const {
    if (isBusy() && m_shown) return draggingSentence();
    if (!m_trouble.isEmpty()) return m_trouble;
    if (m_under) {
        return m_under->grip == HoleGrip::Point ? tr("Drag the hole's point to drill it deeper or shallower.")
                                                : tr("Drag the clamp hole along the edge, or its point for the depth.");
    }
    if (m_shown) {
        const ClampHole& hole = m_shown->clampHoles.back();
        const Units units = m_session.project().units;
        return tr("Click to place a clamp hole of %1, %2 deep, %3 on the %4, or drag along the edge or into the panel.")
            .arg(sizeFor(hole.diameter, units), sizeFor(hole.depth, units), sizeFor(hole.at, units), edgeCountText(hole.edge));
    }
    if (hasHole()) {
        return tr("Arrow keys slide the hole and drill it deeper. Enter: type its numbers. Del takes it away. Tab: the next hole.");
    }
    return tr("Click an edge of the panel to place a clamp hole, or drag along it.");
}

EntryState ClampTool::entry() const {
    EntryState state;
    state.sentence = sentence();
    const bool inHand = isBusy() && m_shown;
    if (const auto hole = inHand ? std::optional(m_hole) : m_selection.hole()) {
        state.fields = holeFields(inHand ? *m_shown : m_session.project(), *hole);
        return state;
    }
    const std::vector<HoleKind> kinds = holesAtHand(m_session.project());
    if (kinds.size() < 2) return state;
    QStringList options;
    for (const HoleKind& kind : kinds) options << holeKindText(kind, m_session.project().units);
    state.fields = {{EntryField::Kind::Choice, tr("Hole for"), {}, options, static_cast<int>(std::min(m_kind, kinds.size() - 1))}};
    return state;
}

void ClampTool::chose(int, int option) {
    m_kind = static_cast<std::size_t>(option);
    m_shown.reset();
    Q_EMIT updated();
}

void ClampTool::typed(int field, std::optional<double> value) {
    if (!hasHole() || !value) return;
    const auto next = withHoleField(m_session.before(), *m_selection.hole(), field, *value);
    m_trouble = next ? QString() : holeFieldRange(m_session.project(), *m_selection.hole(), field);
    if (next && !m_session.isInHand()) m_session.begin(tr("Set the clamp hole"));
    // A value that can't be leaves nothing of the digits typed on the way to it.
    if (m_session.isInHand()) m_session.preview(next ? *next : Project(m_session.before()));
    Q_EMIT updated();
}

void ClampTool::entered() {
    if (isBusy()) return release({});
    m_session.commit();
    m_trouble.clear();
    end();
}

InHand ClampTool::inHand() const {
    InHand shown;
    const Project& project = m_session.project();
    std::optional<std::size_t> hole = m_under ? std::optional(m_under->hole) : m_selection.hole();
    if (m_shown) {
        hole = isBusy() ? m_hole : m_shown->clampHoles.size() - 1;
        shown.note = holeNote(*m_shown, m_session.solvedBefore(), *hole);
        (isBusy() ? shown.runs : shown.wished).push_back(polygonLoop(holeCorners(project.panel, m_shown->clampHoles[*hole])));
        shown.noteAt = m_at;
        return shown;
    }
    if (!hole || *hole >= project.clampHoles.size()) return shown;
    const ClampHole& of = project.clampHoles[*hole];
    shown.runs.push_back(polygonLoop(holeCorners(project.panel, of)));
    // Away from the pointer the note stands at the hole itself while the keys work on it.
    if (m_under || !m_at) {
        shown.note = holeNote(project, m_session.solved(), *hole);
        shown.noteAt = m_at.value_or(markPlace(project.panel, {of.edge, of.at}));
    }
    return shown;
}

}  // namespace kerfwall
