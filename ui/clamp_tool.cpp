// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clamp_tool.h"

#include "core/geometry/clamping.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/laying.h"
#include "ui/hole_entry.h"
#include "ui/selection.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kEdgeReach = 4;     // times the usual reach: an edge is easy to mean

}  // namespace

void ClampTool::press(const Hand& hand) {
    m_session.commit();
    m_trouble.clear();
    const Panel& panel = m_session.project().panel;
    const Point foot = markPlace(panel, nearestMark(panel, hand.at));
    if (distance(foot, hand.at) > kEdgeReach * hand.reach) {
        m_trouble = tr("A clamp hole is drilled from an edge: click near the edge it goes into.");
        Q_EMIT updated();
        return;
    }
    m_placing = true;
    m_session.begin(tr("Place a clamp hole"));
    place(hand);
}

void ClampTool::place(const Hand& hand) {
    Project next = m_session.before();
    next.clampHoles.push_back(clampHoleAt(next, hand.at, hand.snap ? hand.step : kLooseStep));
    m_session.preview(next);
    m_selection.pickHole(next.clampHoles.size() - 1);
    Q_EMIT updated();
}

void ClampTool::move(const Hand& hand) {
    const Panel& panel = m_session.project().panel;
    const Point foot = markPlace(panel, nearestMark(panel, hand.at));
    m_under = distance(foot, hand.at) <= kEdgeReach * hand.reach ? std::optional(foot) : std::nullopt;
    if (m_placing) return place(hand);
    Q_EMIT updated();
}

void ClampTool::release(const Hand&) {
    if (m_placing) m_session.commit();
    m_placing = false;
    Q_EMIT updated();
}

bool ClampTool::nudge(Point shift) {
    const auto hole = m_selection.hole();
    if (!hole || *hole >= m_session.project().clampHoles.size()) return false;
    m_session.change(tr("Move the clamp hole"), withHoleMoved(m_session.project(), *hole, shift));
    return true;
}

void ClampTool::cancel() {
    if (m_session.isInHand()) m_session.abandon();
    m_placing = false;
    m_trouble.clear();
    m_selection.clear();
    Q_EMIT updated();
}

EntryState ClampTool::entry() const {
    EntryState state;
    if (const auto hole = m_selection.hole()) state.fields = holeFields(m_session.project(), *hole);
    if (m_placing) state.sentence = tr("Let go to place the clamp hole. Esc: leave it.");
    else if (!m_trouble.isEmpty()) state.sentence = m_trouble;
    else if (m_under) state.sentence = tr("Click to place a clamp hole at this edge, or drag along it.");
    else if (!state.fields.empty()) state.sentence = tr("Press Enter to type the hole's numbers, or click an edge for the next one.");
    else state.sentence = tr("Click an edge of the panel to place a clamp hole, or drag along it.");
    return state;
}

void ClampTool::typed(int field, std::optional<double> value) {
    const auto hole = m_selection.hole();
    if (!hole || !value) return;
    if (!m_session.isInHand()) m_session.begin(tr("Set the clamp hole"));
    if (const auto next = withHoleField(m_session.project(), *hole, field, *value)) m_session.preview(*next);
}

void ClampTool::entered() {
    m_session.commit();
    m_placing = false;
    Q_EMIT updated();
}

InHand ClampTool::inHand() const {
    InHand shown;
    if (m_under) shown.spots.push_back(*m_under);
    return shown;
}

}  // namespace kerfwall
