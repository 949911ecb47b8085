// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/cut_tool.h"

#include <cmath>

#include "core/geometry/whole_step.h"
#include "ui/session.h"

namespace kerfwall {

CuttingLine draggedTo(const Panel& panel, CutDirection direction, const Hand& hand) {
    CuttingLine cut = cutThrough(panel, direction, hand.at);
    if (hand.snap) cut.at = stepped(cut.at, hand.step);
    return cut;
}

std::vector<CuttingLine> CutTool::shown() const {
    std::vector<CuttingLine> cuts;
    for (const CutDirection direction : kCutDirections) {
        if (m_session.isCutShown(direction)) cuts.push_back(m_session.cut(direction));
    }
    return cuts;
}

void CutTool::press(const Hand& hand) {
    const std::vector<CuttingLine> cuts = shown();
    for (const CuttingLine& cut : cuts) {
        if (std::abs(beyondCut(cut, hand.at)) <= hand.reach) m_before.push_back(cut);
    }
    if (m_before.empty()) m_before = cuts;
    follow(hand);
}

void CutTool::follow(const Hand& hand) {
    for (const CuttingLine& cut : m_before) m_session.moveCut(draggedTo(m_session.project().panel, cut.direction, hand));
    Q_EMIT updated();
}

void CutTool::move(const Hand& hand) {
    if (isBusy()) follow(hand);
}

void CutTool::release(const Hand&) {
    m_before.clear();
    Q_EMIT updated();
}

bool CutTool::nudge(Point shift) {
    for (const CuttingLine& cut : shown()) {
        const Point to = onCut(cut, 0) + shift;
        m_session.moveCut(cutThrough(m_session.project().panel, cut.direction, to));
    }
    Q_EMIT updated();
    return true;
}

void CutTool::cancel() {
    for (const CuttingLine& cut : m_before) m_session.moveCut(cut);
    m_before.clear();
    Q_EMIT updated();
}

EntryState CutTool::entry() const {
    EntryState state;
    for (const CuttingLine& cut : shown()) {
        const bool level = cut.direction == CutDirection::Level;
        const QString label = level ? tr("Cut above the bottom edge") : tr("Cut from the left edge");
        state.fields.push_back({EntryField::Kind::Length, label, cut.at, {}, 0});
    }
    if (isBusy()) state.sentence = tr("Let go to see the panel cut here.");
    else if (shown().size() > 1) state.sentence = tr("Drag one cutting line, or click where both shall cross. The arrow keys nudge them.");
    else state.sentence = tr("Click or drag to move the cutting line; the side view follows. The arrow keys nudge it.");
    return state;
}

void CutTool::typed(int field, std::optional<double> value) {
    const std::vector<CuttingLine> cuts = shown();
    const auto index = static_cast<std::size_t>(field);
    if (value && index < cuts.size()) m_session.moveCut({cuts[index].direction, *value});
}

}  // namespace kerfwall
