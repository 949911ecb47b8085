// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pick_tool.h"

#include "core/geometry/clamping.h"
#include "core/geometry/laying.h"
#include "core/geometry/nearest.h"
#include "ui/hole_entry.h"
#include "ui/line_entry.h"
#include "ui/selection.h"
#include "ui/session.h"

namespace kerfwall {

void PickTool::press(const Hand& hand) {
    m_pressed = true;
    m_moving = false;
    m_grabbed = hand.at;
    pickAt(hand);
    Q_EMIT updated();
}

void PickTool::pickAt(const Hand& hand) {
    if (const auto line = lineNear(m_session.solved(), hand.at, hand.reach)) {
        m_grip = line->grip;
        return m_selection.pickLine(line->id);
    }
    if (const auto hole = holeNear(m_session.project(), hand.at, hand.reach)) return m_selection.pickHole(*hole);
    for (const SolvedCutout& cutout : m_session.solved().cutouts) {
        if (isInside(cutout.drawn, hand.at)) return m_selection.pickCutout(cutout.id);
    }
    m_selection.clear();
}

void PickTool::move(const Hand& hand) {
    if (!m_pressed) {
        const auto line = lineNear(m_session.solved(), hand.at, hand.reach);
        const LineId under = line ? line->id : LineId{};
        if (under == m_under) return;
        m_under = under;
        Q_EMIT updated();
        return;
    }
    const bool movable = !m_selection.line().empty() || m_selection.hole();
    if (!m_moving && (!movable || distance(hand.at, m_grabbed) < hand.reach / 2)) return;
    if (!m_moving) {
        m_moving = true;
        m_session.begin(moveName());
    }
    carry(hand);
    Q_EMIT updated();
}

void PickTool::carry(const Hand& hand) {
    const double step = hand.snap ? hand.step : kLooseStep;
    const Project& before = m_session.before();
    if (const auto hole = m_selection.hole()) {
        m_session.preview(withHoleAt(before, *hole, hand.at, step));
    } else {
        m_session.preview(moveLine(before, m_session.solvedBefore(), m_selection.line(), m_grip, m_grabbed, hand.at, step));
    }
}

void PickTool::release(const Hand&) {
    if (m_moving) m_session.commit();
    m_pressed = m_moving = false;
    Q_EMIT updated();
}

bool PickTool::nudge(Point shift) {
    const Project& project = m_session.project();
    if (!m_selection.line().empty()) {
        m_session.change(moveName(), moveLine(project, m_session.solved(), m_selection.line(), Grip::Whole, {}, shift, kLooseStep));
        return true;
    }
    if (const auto hole = m_selection.hole()) {
        m_session.change(moveName(), withHoleMoved(project, *hole, shift));
        return true;
    }
    return false;
}

void PickTool::cancel() {
    if (m_moving || m_session.isInHand()) m_session.abandon();
    else m_selection.clear();
    m_pressed = m_moving = false;
    Q_EMIT updated();
}

QString PickTool::moveName() const {
    if (m_selection.hole()) return tr("Move the clamp hole");
    return tr("Move line %1").arg(QString::fromStdString(m_selection.line()));
}

EntryState PickTool::entry() const {
    EntryState state;
    const QString line = QString::fromStdString(m_selection.line());
    if (!line.isEmpty()) {
        state.fields = lineFields(m_session.project(), m_selection.line());
        state.sentence = m_moving ? tr("Let go to leave line %1 here. Alt: no snapping. Esc: put it back.").arg(line)
                                  : tr("Drag line %1, nudge it with the arrow keys, or press Enter to type where it lies. Del takes it away.").arg(line);
    } else if (const auto hole = m_selection.hole()) {
        state.fields = holeFields(m_session.project(), *hole);
        state.sentence = m_moving ? tr("Let go to leave the clamp hole here. Esc: put it back.")
                                  : tr("Drag the clamp hole along the edge, or press Enter to type its numbers. Del takes it away.");
    } else if (!m_selection.cutout().empty()) {
        state.sentence = tr("Cutout %1 is picked. Del marks it waste no more.").arg(QString::fromStdString(m_selection.cutout()));
    } else if (!m_under.empty()) {
        state.sentence = tr("Click to pick line %1, or drag it.").arg(QString::fromStdString(m_under));
    } else {
        state.sentence = tr("Click a line, a clamp hole or a cutout to pick it. Tab goes from line to line.");
    }
    return state;
}

void PickTool::typed(int field, std::optional<double> value) {
    if (!value) return;
    const bool isHole = m_selection.hole().has_value();
    if (!m_session.isInHand()) {
        m_session.begin(isHole ? tr("Set the clamp hole") : tr("Set line %1").arg(QString::fromStdString(m_selection.line())));
    }
    const auto next = isHole ? withHoleField(m_session.before(), *m_selection.hole(), field, *value)
                             : withLineField(m_session.before(), m_selection.line(), field, *value);
    if (next) m_session.preview(*next);
}

void PickTool::entered() {
    m_session.commit();
    m_pressed = m_moving = false;
    Q_EMIT updated();
}

InHand PickTool::inHand() const {
    InHand shown;
    if (const SolvedLine* line = findLine(m_session.solved(), m_under)) shown.lines.emplace_back(line->from, line->to);
    return shown;
}

}  // namespace kerfwall
