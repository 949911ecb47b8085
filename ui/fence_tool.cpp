// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/fence_tool.h"

#include <algorithm>

#include "core/geometry/bases.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/laying.h"
#include "core/says/length_text.h"
#include "ui/fence_entry.h"
#include "ui/selection.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kEdgeReach = 3;  // times the usual reach: an edge is easy to mean
constexpr double kStep = 1;       // mm of length
constexpr double kInchStep = kMillimetresPerInch / 16;

double stepOf(const Hand& hand) { return hand.snap ? hand.step : kLooseStep; }

}  // namespace

bool FenceTool::hasFence() const {
    const auto fence = m_selection.fence();
    return fence && *fence < m_session.project().fences.size();
}

QString FenceTool::placeName() const { return tr("Fix a %1").arg(fenceText(m_kind)); }

FenceWish FenceTool::wishAt(const Base& along, const Hand& hand, std::optional<double> offset) const {
    return {along, nextFence(m_session.before(), m_session.solvedBefore(), m_kind), hand.at, offset, stepOf(hand)};
}

void FenceTool::press(const Hand& hand) {
    m_session.commit();
    m_trouble.clear();
    m_hand = hand;
    m_away = m_dragged = false;
    m_grabbed = hand.at;
    m_typedOffset.reset();
    if (const auto near = fenceNear(m_session.project(), m_session.solved(), hand.at, hand.reach)) {
        m_doing = Doing::Holding;
        m_held = *near;
        m_shown.reset();
        m_selection.pickFence(near->fence);
        Q_EMIT updated();
        return;
    }
    const auto base = fenceBaseNear(m_session.project(), m_session.solved(), hand.at, hand.reach, kEdgeReach * hand.reach);
    if (!base) {
        m_trouble = tr("A fence runs along an edge or a line: press on one, and drag its face to its place.");
        Q_EMIT updated();
        return;
    }
    m_base = *base;
    m_doing = Doing::Placing;
    m_session.begin(placeName());
    place();
}

/// The fence in hand as the pointer and what was typed have it.
void FenceTool::place() {
    const Project& before = m_session.before();
    const Solved& solved = m_session.solvedBefore();
    std::optional<double> offset = m_typedOffset;
    if (!offset && m_dragged) offset = offsetAt(before, solved, m_base, m_hand.at, stepOf(m_hand));
    m_shown = fenceFor(before, solved, wishAt(m_base, m_hand, offset));
    Project next = before;
    if (m_shown) next.fences.push_back(*m_shown);
    m_session.preview(next);
    m_trouble = m_shown ? QString() : tr("There its face would lie off the panel: drag it back onto it.");
    Q_EMIT updated();
}

void FenceTool::carry(const Hand& hand) {
    const Project next = withFenceCarried(m_session.before(), m_session.solvedBefore(), m_held, m_grabbed, hand.at, stepOf(hand));
    m_shown = next.fences[m_held.fence];
    m_session.preview(next);
}

void FenceTool::move(const Hand& hand) {
    m_hand = hand;
    m_away = false;
    m_dragged = m_dragged || distance(hand.at, m_grabbed) >= hand.still();
    if (m_doing == Doing::Placing) return place();
    if (m_doing == Doing::Holding && m_dragged) {
        m_doing = Doing::Carrying;
        m_session.begin(m_held.grip == FenceGrip::Face ? tr("Move the fence") : tr("Lengthen or shorten the fence"));
    }
    if (m_doing == Doing::Carrying) carry(hand);
    if (m_doing == Doing::Nothing) hover(hand);
    Q_EMIT updated();
}

/// What a click would do here: take hold of a fence, or fix one.
void FenceTool::hover(const Hand& hand) {
    const Project& project = m_session.project();
    const Solved& solved = m_session.solved();
    m_shown.reset();
    m_under = fenceNear(project, solved, hand.at, hand.reach);
    if (m_under) return;
    const auto base = fenceBaseNear(project, solved, hand.at, hand.reach, kEdgeReach * hand.reach);
    if (base) m_shown = fenceFor(project, solved, wishAt(*base, hand, {}));
}

void FenceTool::release(const Hand&) {
    if (m_doing == Doing::Placing && !m_shown) {
        const QString trouble = m_trouble;
        m_session.abandon();
        end();
        m_trouble = trouble;
        Q_EMIT updated();
        return;
    }
    const bool placed = m_doing == Doing::Placing;
    if (isBusy()) m_session.commit();
    if (placed) m_selection.pickFence(m_session.project().fences.size() - 1);
    end();
}

void FenceTool::end() {
    m_doing = Doing::Nothing;
    m_shown.reset();
    m_under.reset();
    m_typedOffset.reset();
    Q_EMIT updated();
}

bool FenceTool::nudge(Point shift) {
    if (!hasFence() || m_doing != Doing::Nothing) return false;
    m_session.commit();
    m_away = true;
    m_session.change(tr("Move the fence"), withFenceNudged(m_session.project(), m_session.solved(), *m_selection.fence(), shift));
    end();
    return true;
}

/// By its far end, a millimetre or a sixteenth.
bool FenceTool::grow(int steps) {
    if (!hasFence() || m_doing != Doing::Nothing) return false;
    m_session.commit();
    m_away = true;
    const double step = m_session.project().units == Units::Inches ? kInchStep : kStep;
    m_session.change(tr("Lengthen or shorten the fence"), withFenceLonger(m_session.project(), *m_selection.fence(), steps * step));
    end();
    return true;
}

std::optional<bool> FenceTool::tab(bool next) {
    const std::size_t count = m_session.project().fences.size();
    if (count == 0 || isBusy()) return std::nullopt;
    m_session.commit();
    m_away = true;
    // Before the first the count wraps round, past the last it ends: neither is a fence.
    const std::size_t wanted = hasFence() ? (next ? *m_selection.fence() + 1 : *m_selection.fence() - 1) : (next ? 0 : count - 1);
    if (wanted < count) m_selection.pickFence(wanted);
    else m_selection.clear();
    end();
    return wanted < count;
}

void FenceTool::leave() {
    if (m_doing != Doing::Nothing) return;
    m_away = true;
    m_under.reset();
    m_shown.reset();
    Q_EMIT updated();
}

void FenceTool::cancel() {
    const bool carried = m_doing == Doing::Carrying;
    m_session.abandon();
    m_trouble.clear();
    if (!carried) m_selection.clear();
    end();
}

std::vector<Base> FenceTool::bases() const { return allBases(m_session.project().panel, m_session.solved()); }

QString FenceTool::sentence() const {
    if (!m_trouble.isEmpty()) return m_trouble;
    const Units units = m_session.project().units;
    if (m_doing == Doing::Placing) {
        return tr("Let go to fix the %1 with its face %2 from %3. Type for another distance. Alt: no steps. Esc: leave it.")
            .arg(fenceText(m_kind), sizeFor(m_shown->offset, units), alongText(m_base));
    }
    if (m_doing == Doing::Carrying) {
        return tr("Let go to leave the %1 with its face %2 from %3, from %4 to %5. Alt: no steps. Esc: put it back.")
            .arg(fenceText(m_shown->kind), sizeFor(m_shown->offset, units), alongText(m_shown->along), sizeFor(m_shown->from, units),
                 sizeFor(m_shown->to, units));
    }
    if (m_under) {
        return m_under->grip == FenceGrip::Face ? tr("Drag the face to another distance, or an end along.")
                                                : tr("Drag this end to make it longer or shorter.");
    }
    if (m_shown) {
        return tr("Click to fix a %1 along %2, %3 wide, its face %4 from it; or drag the face to its place.")
            .arg(fenceText(m_kind), alongText(m_shown->along), sizeFor(m_shown->width, units), sizeFor(m_shown->offset, units));
    }
    if (hasFence()) {
        return tr("Arrow keys move it, + and − lengthen and shorten it. Enter: type its place; its size stands on the job card. "
                  "Del takes it away. Tab: the next one.");
    }
    return tr("Press on an edge or a line and drag the face to its place, or type its distance and press Enter.");
}

EntryState FenceTool::placingEntry() const {
    EntryState state;
    const std::optional<double> offset = m_shown ? std::optional(m_shown->offset) : m_typedOffset;
    state.fields = {{EntryField::Kind::Length, tr("Face from %1").arg(baseText(m_base)), offset, {}, 0}};
    return state;
}

EntryState FenceTool::typingEntry() const {
    EntryState state;
    QStringList options;
    for (const Base& base : bases()) options << baseText(base);
    const int from = std::clamp(m_from, 0, static_cast<int>(options.size()) - 1);
    state.fields = {{EntryField::Kind::Choice, tr("Along"), {}, options, from},
                    {EntryField::Kind::Length, tr("face from it"), m_typedOffset, {}, 0},
                    fenceKindField(m_kind)};
    return state;
}

EntryState FenceTool::entry() const {
    EntryState state;
    if (m_doing == Doing::Placing) {
        state = placingEntry();
    } else if (hasFence()) {
        Project shown = m_session.project();
        if (m_doing == Doing::Carrying && m_shown && m_held.fence < shown.fences.size()) shown.fences[m_held.fence] = *m_shown;
        state.fields = fenceFields(shown, *m_selection.fence());
    } else {
        state = typingEntry();
    }
    state.sentence = sentence();
    return state;
}

void FenceTool::typed(int field, std::optional<double> value) {
    if (m_doing == Doing::Placing) {
        m_typedOffset = value;
        return place();
    }
    if (!hasFence()) {
        if (field == 1) m_typedOffset = value;
        return;
    }
    if (!value) return;
    const auto next = withFenceField(m_session.before(), *m_selection.fence(), field, *value);
    m_trouble = next ? QString() : fenceFieldRange(field);
    if (next && !m_session.isInHand()) m_session.begin(tr("Set the fence"));
    if (m_session.isInHand()) m_session.preview(next ? *next : Project(m_session.before()));
    Q_EMIT updated();
}

void FenceTool::chose(int field, int option) {
    if (hasFence()) {
        m_session.commit();
        m_session.change(tr("Set the fence"), withFenceKind(m_session.project(), *m_selection.fence(), option));
    } else if (field == 0) {
        m_from = option;
    } else {
        m_kind = fenceKindOf(option);
    }
    m_shown.reset();
    Q_EMIT updated();
}

void FenceTool::entered() {
    if (m_doing == Doing::Placing) return release(m_hand);
    m_trouble.clear();
    if (m_session.isInHand()) m_session.commit();
    else if (!hasFence() && m_typedOffset) return placeTyped();
    end();
}

/// Along the edge or line that was chosen; a stop stands at its middle.
void FenceTool::placeTyped() {
    const std::vector<Base> all = bases();
    const Base& base = all[static_cast<std::size_t>(std::clamp(m_from, 0, static_cast<int>(all.size()) - 1))];
    const auto straight = straightOf(m_session.project().panel, m_session.solved(), base);
    Hand hand;
    if (straight) hand.at = straight->start + straight->length / 2 * straight->along;
    const auto fence = fenceFor(m_session.project(), m_session.solved(), wishAt(base, hand, m_typedOffset));
    if (!fence) {
        m_trouble = tr("There its face would lie off the panel: type another distance.");
        Q_EMIT updated();
        return;
    }
    Project next = m_session.project();
    next.fences.push_back(*fence);
    m_session.change(placeName(), next);
    m_selection.pickFence(next.fences.size() - 1);
    end();
}

InHand FenceTool::inHand() const {
    InHand shown;
    const Project& project = m_session.project();
    const Project& before = m_session.before();
    const Solved& solved = m_session.solvedBefore();
    if (m_shown) {
        (isBusy() ? shown.runs : shown.wished).push_back(polygonLoop(fenceBody(before, solved, *m_shown)));
        shown.note = fenceNote(before, solved, *m_shown);
        shown.noteAt = m_hand.at;
        return shown;
    }
    const std::optional<std::size_t> fence = m_under ? std::optional(m_under->fence) : m_selection.fence();
    if (!fence || *fence >= project.fences.size()) return shown;
    const std::vector<Point> body = fenceBody(project, m_session.solved(), project.fences[*fence]);
    if (body.empty()) return shown;
    shown.runs.push_back(polygonLoop(body));
    shown.spots = {0.5 * (body[0] + body[3]), 0.5 * (body[1] + body[2])};  // the ends to drag
    // Away from the pointer the note stands at the fence itself while the keys work on it.
    if (m_under || m_away) {
        shown.note = fenceNote(project, m_session.solved(), project.fences[*fence]);
        shown.noteAt = m_under ? m_hand.at : 0.5 * (body[0] + body[1]);
    }
    return shown;
}

}  // namespace kerfwall
