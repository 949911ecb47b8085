// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/cut_tool.h"

#include <cmath>

#include "ui/session.h"

namespace kerfwall {

void CutTool::press(const Hand& hand) {
    m_dragging = true;
    m_before = m_session.cutHeight();
    follow(hand);
}

void CutTool::follow(const Hand& hand) {
    m_session.moveCut(hand.snap ? std::round(hand.at.y / hand.step) * hand.step : hand.at.y);
    Q_EMIT updated();
}

void CutTool::move(const Hand& hand) {
    if (m_dragging) follow(hand);
}

void CutTool::release(const Hand&) {
    m_dragging = false;
    Q_EMIT updated();
}

bool CutTool::nudge(Point shift) {
    m_session.moveCut(m_session.cutHeight() + shift.y);
    Q_EMIT updated();
    return true;
}

void CutTool::cancel() {
    if (m_dragging) m_session.moveCut(m_before);
    m_dragging = false;
    Q_EMIT updated();
}

EntryState CutTool::entry() const {
    EntryState state;
    state.fields = {{EntryField::Kind::Length, tr("Cut above the bottom edge"), m_session.cutHeight(), {}, 0}};
    state.sentence = m_dragging ? tr("Let go to see the panel cut here.")
                                : tr("Click or drag to move the cutting line; the side view follows. Up and down nudge it.");
    return state;
}

void CutTool::typed(int, std::optional<double> value) {
    if (value) m_session.moveCut(*value);
}

}  // namespace kerfwall
