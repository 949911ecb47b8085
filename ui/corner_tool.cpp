// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/corner_tool.h"

#include "core/geometry/laying.h"
#include "core/geometry/whole_step.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

Point placeOf(const Hand& hand) {
    const double step = hand.snap ? hand.step : kLooseStep;
    return {stepped(hand.at.x, step), stepped(hand.at.y, step)};
}

}  // namespace

void CornerTool::show(std::vector<Point> corners) {
    m_corners = std::move(corners);
    Q_EMIT updated();
}

void CornerTool::press(const Hand& hand) {
    const bool isFirst = m_corners.size() > 2 && distance(m_corners.front(), hand.at) <= hand.reach;
    if (isFirst) Q_EMIT closed();
    else Q_EMIT clicked(placeOf(hand));
}

void CornerTool::move(const Hand& hand) {
    const bool isFirst = m_corners.size() > 2 && distance(m_corners.front(), hand.at) <= hand.reach;
    m_under = isFirst ? m_corners.front() : placeOf(hand);
    Q_EMIT updated();
}

void CornerTool::leave() {
    m_under.reset();
    Q_EMIT updated();
}

EntryState CornerTool::entry() const {
    EntryState state;
    state.sentence = m_corners.size() < 3 ? tr("Click the corners of the opening in turn, at least three. Esc takes the last one back.")
                                          : tr("Click the next corner, or the first one again to end. Esc takes the last one back.");
    return state;
}

InHand CornerTool::inHand() const {
    InHand shown;
    shown.spots = m_corners;
    if (!m_corners.empty() && m_under) shown.lines.emplace_back(m_corners.back(), *m_under);
    if (m_under) {
        const Units units = m_session.project().units;
        shown.spots.push_back(*m_under);
        shown.noteAt = m_under;
        shown.note = tr("%1 from the left, %2 up").arg(lengthUnitFor(m_under->x, units), lengthUnitFor(m_under->y, units));
    }
    return shown;
}

}  // namespace kerfwall
