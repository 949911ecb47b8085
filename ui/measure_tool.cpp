// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/measure_tool.h"

#include "core/geometry/laying.h"
#include "core/geometry/whole_step.h"
#include "ui/measured_text.h"
#include "ui/session.h"

namespace kerfwall {

/// What lies under the hand; the bare place, on whole steps, where nothing does.
Measurable MeasureTool::thingAt(const Hand& hand) const {
    if (const auto near = measurableNear(m_session.project(), m_session.solved(), hand.at, hand.reach)) return *near;
    const double step = hand.snap ? hand.step : kLooseStep;
    Measurable place;
    place.at = {stepped(hand.at.x, step), stepped(hand.at.y, step)};
    return place;
}

void MeasureTool::press(const Hand& hand) {
    const Measurable thing = thingAt(hand);
    if (!m_first || m_second) {
        m_first = thing;
        m_second.reset();
    } else {
        m_second = thing;
    }
    m_under.reset();
    Q_EMIT updated();
}

void MeasureTool::move(const Hand& hand) {
    m_under = thingAt(hand);
    Q_EMIT updated();
}

void MeasureTool::leave() {
    m_under.reset();
    Q_EMIT updated();
}

void MeasureTool::cancel() {
    m_first.reset();
    m_second.reset();
    m_under.reset();
    Q_EMIT updated();
}

QString MeasureTool::result() const {
    const Project& project = m_session.project();
    const auto& to = m_second ? m_second : m_under;
    if (!m_first) return m_under ? aloneText(project, *m_under) : QString();
    if (!to) return aloneText(project, *m_first);
    QString told = measurementText(project, measure(*m_first, *to));
    for (const Measurable* thing : {&*m_first, &*to}) {
        if (thing->kind == Measurable::Kind::Arc) told += tr(", %1").arg(aloneText(project, *thing));
    }
    return told;
}

EntryState MeasureTool::entry() const {
    EntryState state;
    if (m_first && m_second) {
        state.sentence = tr("From %1 to %2: %3. Click to measure anew, Esc leaves it.").arg(measurableText(*m_first), measurableText(*m_second), result());
    } else if (m_first && m_under) {
        state.sentence = tr("From %1 to %2: %3. Click to keep it in view.").arg(measurableText(*m_first), measurableText(*m_under), result());
    } else if (m_first) {
        state.sentence = tr("From %1, %2, to: click a second thing.").arg(measurableText(*m_first), result());
    } else if (m_under && m_under->on != MeasuredOn::Anywhere) {
        state.sentence = tr("%1: %2. Click to measure from it.").arg(measurableText(*m_under), result());
        state.sentence.front() = state.sentence.front().toUpper();
    } else {
        state.sentence = tr("Click two things: places, crossings, lines, edges, arcs, holes or openings. Arrow keys and Space do it too.");
    }
    return state;
}

InHand MeasureTool::inHand() const {
    InHand shown;
    const auto add = [&](const Measurable& thing) {
        if (thing.kind == Measurable::Kind::Straight) shown.lines.emplace_back(thing.from, thing.to);
        else shown.spots.push_back(thing.kind == Measurable::Kind::Arc ? thing.centre : thing.at);
        if (thing.kind == Measurable::Kind::Arc) shown.lines.emplace_back(thing.centre, thing.at);
    };
    const auto& to = m_second ? m_second : m_under;
    if (m_first) add(*m_first);
    if (to && (m_first || to->on != MeasuredOn::Anywhere)) add(*to);
    if (m_first && to) {
        const Measurement measured = measure(*m_first, *to);
        shown.lines.emplace_back(measured.from, measured.to);
    }
    if (to && (m_first || to->on != MeasuredOn::Anywhere)) {
        shown.noteAt = to->at;
        shown.note = result();
    }
    return shown;
}

}  // namespace kerfwall
