// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pick_tool.h"

#include "core/geometry/carrying.h"
#include "core/geometry/clamping.h"
#include "core/geometry/laying.h"
#include "core/geometry/nearest.h"
#include "core/geometry/picking.h"
#include "core/geometry/whole_step.h"
#include "ui/fence_entry.h"
#include "ui/hole_entry.h"
#include "ui/line_entry.h"
#include "ui/picked_text.h"
#include "ui/selection.h"
#include "ui/session.h"
#include "ui/trouble_text.h"

namespace kerfwall {

PickTool::PickTool(Session& session, Selection& selection, QObject* parent) : Tool(session, selection, parent) {
    connect(&m_session, &Session::changed, this, [this] {
        if (m_deed && !m_session.isInHand()) endDeed();  // undone or left from elsewhere
    });
}

void PickTool::hint(const QString& sentence) {
    m_hint = sentence;
    Q_EMIT updated();
}

void PickTool::begin(DeedKind kind) {
    m_session.commit();
    if (m_selection.isEmpty()) return;
    m_deed = makeDeed(kind, {m_session.project(), m_session.solved(), m_selection.picked(), m_session.highestLine()});
    m_session.begin(m_deed->name());
    tryDeed();
}

void PickTool::tryDeed() {
    const DeedGround& ground = m_deed->ground();
    m_made = m_deed->isMeant() ? m_deed->done() : Copies{ground.project, ground.picked};
    m_session.preview(m_made ? m_made->project : ground.project);
    Q_EMIT updated();
}

void PickTool::endDeed() {
    m_deed.reset();
    Q_EMIT finished();  // before its fields are gone: the focus would go on from them
    Q_EMIT updated();
}

void PickTool::press(const Hand& hand) {
    if (m_deed) {
        const Point onSteps{stepped(hand.at.x, hand.step), stepped(hand.at.y, hand.step)};
        m_deed->pointed(hand.snap && m_deed->about() ? onSteps : hand.at, hand.reach);
        return tryDeed();
    }
    m_pressed = true;
    m_moving = false;
    m_adds = hand.adds;
    m_grabbed = hand.at;
    m_band.reset();
    m_pickedBefore = m_selection.picked();
    pickAt(hand);
    Q_EMIT updated();
}

void PickTool::pickAt(const Hand& hand) {
    m_held = thingAt(m_session.project(), m_session.solved(), hand.at, hand.reach);
    const auto line = lineNear(m_session.solved(), hand.at, hand.reach);
    m_grip = line ? line->grip : Grip::Whole;
    if (m_adds) {
        if (!m_held.isEmpty()) m_selection.turnRound(m_held);
    } else if (m_held.isEmpty() || !holds(m_selection.picked(), m_held)) {
        m_selection.pick(m_held);
    }
}

void PickTool::hover(const Hand& hand) {
    const Picked under = thingAt(m_session.project(), m_session.solved(), hand.at, hand.reach);
    if (under == m_under) return;
    m_under = under;
    Q_EMIT updated();
}

void PickTool::stretchBand(const Hand& hand) {
    if (!m_band && distance(hand.at, m_grabbed) < hand.still()) return;
    m_band = hand.at;
    const Picked inside = thingsInBand(m_session.project(), m_session.solved(), m_grabbed, hand.at);
    m_selection.pick(m_adds ? with(m_pickedBefore, inside) : inside);
    Q_EMIT updated();
}

void PickTool::move(const Hand& hand) {
    if (m_deed) return;
    if (!m_pressed) return hover(hand);
    if (m_held.isEmpty()) return stretchBand(hand);
    if (!m_moving && (m_selection.isEmpty() || distance(hand.at, m_grabbed) < hand.still())) return;
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
    } else if (!m_selection.line().empty()) {
        m_session.preview(moveLine(before, m_session.solvedBefore(), m_selection.line(), m_grip, m_grabbed, hand.at, step));
    } else {
        const auto onSteps = [&](Point place) { return Point{stepped(place.x, step), stepped(place.y, step)}; };
        const Point shift = tidied(onSteps(hand.at) - onSteps(m_grabbed));
        if (const auto next = carried(before, m_session.solvedBefore(), m_selection.picked(), shiftBy(shift))) m_session.preview(*next);
    }
}

void PickTool::release(const Hand&) {
    if (m_deed) return;
    if (m_moving) m_session.commit();
    else if (m_pressed && !m_adds && !m_held.isEmpty()) m_selection.pick(m_held);
    m_pressed = m_moving = false;
    m_band.reset();
    Q_EMIT updated();
}

bool PickTool::nudge(Point shift) {
    if (m_selection.isEmpty()) return false;
    m_session.commit();
    m_session.change(moveName(), nudged(m_session.project(), m_session.solved(), m_selection.picked(), shift));
    return true;
}

void PickTool::leave() {
    if (m_under.isEmpty()) return;
    m_under = {};
    Q_EMIT updated();
}

void PickTool::cancel() {
    if (m_band) m_selection.pick(m_pickedBefore);
    else if (m_moving || m_session.isInHand()) m_session.abandon();
    else m_selection.clear();
    m_pressed = m_moving = false;
    m_band.reset();
    Q_EMIT updated();
}

QString PickTool::moveName() const { return tr("Move %1").arg(pickedText(m_selection.picked())); }

EntryState PickTool::entry() const {
    EntryState state;
    state.sentence = sentence();
    if (m_band) return state;
    if (m_deed) {
        state.fields = m_deed->fields();
        return state;
    }
    if (!m_selection.line().empty()) state.fields = lineFields(m_session.project(), m_selection.line());
    else if (const auto hole = m_selection.hole()) state.fields = holeFields(m_session.project(), *hole);
    else if (const auto fence = m_selection.fence()) state.fields = fenceFields(m_session.project(), *fence);
    return state;
}

QString PickTool::sentence() const {
    const Picked& picked = m_selection.picked();
    if (m_deed) return m_made ? m_deed->sentence() : whyNot(m_made.error());
    if (!m_hint.isEmpty()) return m_hint;
    if (m_band) {
        return tr("The band takes lines it crosses, and clamp holes, fences and cutouts inside it. Shift adds them to what is picked. Esc: as before.");
    }
    if (m_moving) return tr("Let go to leave %1 here. Alt: no snapping. Esc: put it back.").arg(pickedText(picked));
    if (picked.isEmpty() && !m_under.isEmpty()) return tr("Click to pick %1, or drag it.").arg(pickedText(m_under));
    if (picked.isEmpty()) {
        return tr("Click a line, a clamp hole, a fence or a cutout to pick it; drag a band over several. Tab goes from one to the next.");
    }
    const QString trouble = troubleText(m_session.solved(), m_selection.line());
    if (!trouble.isEmpty()) return tr("%1 Drag it, press Enter to type where it lies, or Del takes it away.").arg(trouble);
    if (picked.count() > 1) {
        return tr("Picked: %1. Drag them or nudge them with the arrow keys. Shift and a click adds or leaves out one. Del takes them away.")
            .arg(pickedText(picked));
    }
    if (!picked.cutouts.empty()) return tr("Picked: %1. Drag it with its walls, or nudge it with the arrow keys. Del marks it waste no more.").arg(pickedText(picked));
    if (!m_selection.line().empty() || m_selection.hole() || m_selection.fence()) {
        return tr("Picked: %1. Drag it, nudge it with the arrow keys, or press Enter to type where it lies. Del takes it away.").arg(pickedText(picked));
    }
    return tr("Picked: %1. Drag it or nudge it with the arrow keys. Del takes it away.").arg(pickedText(picked));
}

void PickTool::typed(int field, std::optional<double> value) {
    if (!value) return;
    if (m_deed) {
        m_deed->typed(field, *value);
        return tryDeed();
    }
    const Project before = m_session.before();
    const auto next = withField(before, field, *value);
    m_hint = next ? QString() : rangeOf(field);
    if (next && !m_session.isInHand()) m_session.begin(setName());
    // A value that can't be leaves nothing of the digits typed on the way to it.
    if (m_session.isInHand()) m_session.preview(next.value_or(before));
    Q_EMIT updated();
}

QString PickTool::setName() const {
    if (m_selection.hole()) return tr("Set the clamp hole");
    if (m_selection.fence()) return tr("Set the fence");
    return tr("Set line %1").arg(QString::fromStdString(m_selection.line()));
}

std::optional<Project> PickTool::withField(const Project& project, int field, double value) const {
    if (const auto hole = m_selection.hole()) return withHoleField(project, *hole, field, value);
    if (const auto fence = m_selection.fence()) return withFenceField(project, *fence, field, value);
    return withLineField(project, m_selection.line(), field, value);
}

/// What that field takes; "" where its own sentence says it already.
QString PickTool::rangeOf(int field) const {
    if (const auto hole = m_selection.hole()) return holeFieldRange(m_session.project(), *hole, field);
    return m_selection.fence() ? fenceFieldRange(field) : QString();
}

void PickTool::chose(int field, int option) {
    if (!m_deed) {
        const auto fence = m_selection.fence();
        if (fence) m_session.change(setName(), withFenceKind(m_session.project(), *fence, option));
        return;
    }
    m_deed->chose(field, option);
    tryDeed();
}

void PickTool::entered() {
    if (m_deed && !m_made) return;
    if (!m_deed) m_hint.clear();
    const std::optional<Picked> made = m_deed ? std::optional(m_made->picked) : std::nullopt;
    m_session.commit();
    if (made) m_selection.pick(*made);
    m_pressed = m_moving = false;
    Q_EMIT updated();
}

InHand PickTool::inHand() const {
    InHand shown;
    if (m_deed) {
        if (const auto about = m_deed->about()) shown.spots.push_back(*about);
        return shown;
    }
    if (m_band) {
        shown.faces.push_back({m_grabbed, {m_band->x, m_grabbed.y}, *m_band, {m_grabbed.x, m_band->y}});
        return shown;
    }
    if (!m_under.cutouts.empty()) return shown;
    for (const std::vector<Point>& outline : outlinesOf(m_session.project(), m_session.solved(), m_under)) {
        for (std::size_t i = 1; i < outline.size(); ++i) shown.lines.emplace_back(outline[i - 1], outline[i]);
        if (outline.size() > 2) shown.lines.emplace_back(outline.back(), outline.front());
    }
    return shown;
}

}  // namespace kerfwall
