// SPDX-License-Identifier: GPL-3.0-or-later
// What the hand does with it; what it shows in the entry line stands in laying_entry.cpp.
#include "ui/laying_tool.h"

#include <algorithm>

#include "core/geometry/bases.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/typed_line.h"
#include "ui/hold_words.h"
#include "ui/line_entry.h"
#include "ui/selection.h"
#include "ui/session.h"

namespace kerfwall {
namespace {

constexpr double kHoldReach = 2.0 / 3;  // of the reach for a click: a line in hand lets go of a mark sooner

}  // namespace


void LayingTool::press(const Hand& hand) {
    if (m_laying) return;  // the second click: its release lays the line
    if (m_session.isInHand()) m_session.commit();
    forget();
    m_laying = true;
    m_waiting = false;
    m_wish = LayingWish{};
    m_wish.start = m_wish.end = hand.at;
    if (m_selection.line() != m_justLaid) m_wish.axis = m_selection.line();
    m_id = m_session.freshLineId();
    m_session.begin(tr("Lay line %1").arg(QString::fromStdString(m_id)));
    m_laid = std::unexpected(NoLine::TooShort);
    move(hand);
}

void LayingTool::move(const Hand& hand) {
    if (!m_laying) return;
    m_wish.end = hand.at;
    m_wish.reach = kHoldReach * hand.reach;
    m_wish.step = hand.step;
    m_wish.snap = hand.snap;
    follow();
}

LayoutLine LayingTool::madeLine(const LineId& id, const Place& place) const {
    LayoutLine line;
    line.id = id;
    line.place = place;
    line.cut = m_as == CutLine;
    if (m_as == MarkOnBack) line.drawnOn = Face::Back;
    if (m_as == MarkOnBoth) line.drawnOn = Face::Both;
    return line;
}

void LayingTool::follow() {
    m_wish.margin = m_margin;
    m_laid = layLine(m_session.before(), m_session.solvedBefore(), m_wish);
    Project next = m_session.before();
    if (m_laid) next.lines.push_back(madeLine(m_id, m_laid->place));
    m_session.preview(next);
    Q_EMIT updated();
}

void LayingTool::release(const Hand& hand) {
    if (!m_laying) return;
    move(hand);
    const bool clicked = distance(m_wish.start, hand.at) < hand.still();
    if (clicked && !m_waiting) {
        m_waiting = true;
        Q_EMIT updated();
        return;
    }
    finish();
}

void LayingTool::finish() {
    m_laying = m_waiting = false;
    if (m_laid) {
        m_session.commit();
        m_last = m_justLaid = m_id;
        m_selection.pickLine(m_id);
    } else {
        m_session.abandon();
        m_trouble = refusal(m_laid.error());
    }
    Q_EMIT updated();
}

void LayingTool::forget() {
    m_last.clear();
    m_trouble.clear();
    m_typedDistance.reset();
    m_typedAngle.reset();
}

void LayingTool::cancel() {
    if (m_session.isInHand()) m_session.abandon();
    m_laying = m_waiting = false;
    forget();
    m_selection.clear();
    Q_EMIT updated();
}

std::vector<Base> LayingTool::bases() const { return allBases(m_session.project().panel, m_session.solved()); }

void LayingTool::setLast(int field, std::optional<double> value) {
    if (!value) return;
    if (!m_session.isInHand()) m_session.begin(tr("Set line %1").arg(QString::fromStdString(m_last)));
    const auto next = withLineField(m_session.before(), m_last, field, *value);
    if (next) m_session.preview(*next);
    Q_EMIT updated();
}

void LayingTool::entered() {
    if (m_laying) {
        finish();
        m_last.clear();  // what was to be typed is typed
    } else if (isLastThere()) {
        m_session.commit();
        forget();
    } else {
        layTyped();
    }
    Q_EMIT updated();
}

void LayingTool::settled() {
    if (m_session.isInHand()) m_session.commit();
    Q_EMIT updated();
}

void LayingTool::layTyped() {
    if (!m_typedDistance) return;
    const std::vector<Base> all = bases();
    const Base& base = all[static_cast<std::size_t>(std::clamp(m_base, 0, static_cast<int>(all.size()) - 1))];
    const auto laid = typedLine(m_session.project(), m_session.solved(), base, *m_typedDistance, m_typedAngle.value_or(0));
    if (!laid) {
        m_trouble = refusal(laid.error());
        return;
    }
    const LineId id = m_session.freshLineId();
    Project next = m_session.project();
    next.lines.push_back(madeLine(id, *laid));
    m_session.change(tr("Lay line %1").arg(QString::fromStdString(id)), next);
    forget();
    m_justLaid = id;
    m_selection.pickLine(id);
}

InHand LayingTool::inHand() const {
    InHand shown;
    if (!m_laying) return shown;
    if (!m_laid) {
        shown.spots.push_back(m_wish.start);
        if (m_laid.error() == NoLine::TooShort) return shown;
        shown.lines.emplace_back(m_wish.start, m_wish.end);
        shown.note = refusal(m_laid.error());
        shown.noteAt = m_wish.end;
        return shown;
    }
    shown.lines.emplace_back(m_laid->from.place, m_laid->to.place);
    shown.spots = {m_laid->from.place, m_laid->to.place};
    for (const Hold& hold : m_laid->holds) {
        shown.holds.push_back(hold.at);
        for (const auto& run : holdRuns(m_session.before().panel, m_session.solvedBefore(), hold)) shown.references.push_back(run);
    }
    shown.note = laidText(*m_laid, m_margin, m_session.project().units);
    shown.noteAt = m_wish.end;
    return shown;
}

}  // namespace kerfwall
