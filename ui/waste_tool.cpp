// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/waste_tool.h"

#include "core/geometry/marking.h"
#include "core/geometry/solve.h"
#include "ui/selection.h"
#include "ui/session.h"

namespace kerfwall {

void WasteTool::press(const Hand& hand) {
    const std::string joinTo = hand.adds ? m_selection.cutout() : std::string{};
    const auto marking = markWaste(m_session.project(), hand.at, joinTo);
    m_trouble.clear();
    if (!marking) {
        m_trouble = marking.error() == NoMarking::OnALine ? tr("That place lies on a line: click beside it.")
                                                          : tr("That place lies off the panel: click on it.");
    } else {
        const bool taken = marking->what == Marked::Taken;
        m_session.change(taken ? tr("Unmark waste") : tr("Mark waste"), marking->project);
        if (taken) m_selection.clear();
        else m_selection.pickCutout(marking->cutout);
    }
    m_face.clear();
    move(hand);
    Q_EMIT updated();
}

void WasteTool::move(const Hand& hand) {
    const std::vector<Point> face = facePolygon(m_session.project(), hand.at);
    bool marked = false;
    for (const SolvedCutout& cutout : m_session.solved().cutouts) marked = marked || isInside(cutout.drawn, hand.at);
    if (face == m_face && marked == m_marked) return;
    m_face = face;
    m_marked = marked;
    Q_EMIT updated();
}

void WasteTool::cancel() {
    m_face.clear();
    m_trouble.clear();
    m_selection.clear();
    Q_EMIT updated();
}

EntryState WasteTool::entry() const {
    EntryState state;
    if (!m_trouble.isEmpty()) state.sentence = m_trouble;
    else if (m_face.empty()) state.sentence = tr("Click inside a region between the lines to mark it as waste.");
    else if (m_marked) state.sentence = tr("This region is waste. Click to keep it.");
    else state.sentence = tr("Click to mark this region as waste. Shift: add it to the picked cutout.");
    return state;
}

InHand WasteTool::inHand() const {
    InHand shown;
    if (!m_face.empty()) shown.faces.push_back(m_face);
    return shown;
}

}  // namespace kerfwall
