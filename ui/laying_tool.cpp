// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/laying_tool.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/edge_place.h"
#include "core/geometry/typed_line.h"
#include "ui/line_entry.h"
#include "ui/selection.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {

void LayingTool::press(const Hand& hand) {
    if (m_laying) return;  // the second click: its release lays the line
    if (m_session.isInHand()) m_session.commit();
    forget();
    m_laying = true;
    m_waiting = false;
    m_wish = LayingWish{};
    m_wish.start = m_wish.end = hand.at;
    m_id = m_session.freshLineId();
    m_session.begin(tr("Lay line %1").arg(QString::fromStdString(m_id)));
    m_laid = std::unexpected(NoLine::TooShort);
    move(hand);
}

void LayingTool::move(const Hand& hand) {
    if (!m_laying) return;
    m_wish.end = hand.at;
    m_wish.reach = hand.reach;
    m_wish.step = hand.step;
    m_wish.snap = hand.snap;
    follow();
}

void LayingTool::follow() {
    m_laid = layLine(m_session.before(), m_session.solvedBefore(), m_wish);
    Project next = m_session.before();
    if (m_laid) {
        LayoutLine line;
        line.id = m_id;
        line.place = m_laid->place;
        next.lines.push_back(line);
    }
    m_session.preview(next);
    Q_EMIT updated();
}

void LayingTool::release(const Hand& hand) {
    if (!m_laying) return;
    move(hand);
    const bool clicked = distance(m_wish.start, hand.at) < hand.reach / 2;
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
        m_last = m_id;
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

QString LayingTool::refusal(NoLine why) const {
    switch (why) {
        case NoLine::TooShort: return tr("A line runs from one edge of the panel to another: drag further.");
        case NoLine::OffThePanel: return tr("That line would lie off the panel: drag or type it back onto it.");
        case NoLine::OnALine: return tr("A line lies there already: pick another place.");
    }
    return {};
}

std::vector<Base> LayingTool::bases() const {
    const Panel& panel = m_session.project().panel;
    std::vector<Base> all{panel.referenceEdge, squareEdge(panel)};
    for (const Edge edge : kEdges) {
        if (std::ranges::find(all, Base{edge}) == all.end()) all.emplace_back(edge);
    }
    for (const SolvedLine& line : m_session.solved().lines) all.emplace_back(line.id);
    return all;
}

EntryState LayingTool::entry() const {
    if (m_laying) return layingEntry();
    if (!m_last.empty() && findLine(m_session.project(), m_last)) {
        EntryState state;
        state.fields = lineFields(m_session.project(), m_last);
        state.sentence = tr("Line %1 is laid. Press Enter to type where it lies, or drag the next line.").arg(QString::fromStdString(m_last));
        return state;
    }
    return typingEntry();
}

EntryState LayingTool::layingEntry() const {
    EntryState state;
    const QString id = QString::fromStdString(m_id);
    using Kind = EntryField::Kind;
    const QString from = m_laid ? tr("From %1").arg(baseText(m_laid->distanceFrom)) : tr("From the edge");
    const std::optional<double> distance = m_laid ? std::optional(m_laid->distance) : m_wish.distance;
    const std::optional<double> angle = m_laid ? std::optional(m_laid->angle) : m_wish.angle;
    state.fields = {{Kind::Length, from, distance, {}, 0}, {Kind::Angle, tr("angle"), angle, {}, 0}};
    if (m_laid) {
        state.sentence = m_waiting ? tr("Click to lay line %1 across the panel. Alt: no snapping. Esc: leave it.").arg(id)
                                   : tr("Let go to lay line %1 across the panel. Alt: no snapping. Esc: leave it.").arg(id);
    } else {
        state.sentence = m_waiting ? tr("Click where line %1 leaves the panel. Esc: leave it.").arg(id) : refusal(m_laid.error());
    }
    return state;
}

EntryState LayingTool::typingEntry() const {
    EntryState state;
    using Kind = EntryField::Kind;
    QStringList options;
    for (const Base& base : bases()) options << baseText(base);
    const int base = std::min(m_base, static_cast<int>(options.size()) - 1);
    state.fields = {{Kind::Choice, tr("From"), {}, options, base},
                    {Kind::Length, tr("distance"), m_typedDistance, {}, 0},
                    {Kind::Angle, tr("angle"), m_typedAngle, {}, 0}};
    state.sentence = !m_trouble.isEmpty()
                         ? m_trouble
                         : tr("Drag from one edge to another to lay line %1, click twice, or type and press Enter.")
                               .arg(QString::fromStdString(m_session.freshLineId()));
    return state;
}

void LayingTool::typed(int field, std::optional<double> value) {
    if (m_laying) {
        (field == 0 ? m_wish.distance : m_wish.angle) = value;
        return follow();
    }
    if (!m_last.empty()) return setLast(field, value);
    (field == 1 ? m_typedDistance : m_typedAngle) = value;
}

void LayingTool::setLast(int field, std::optional<double> value) {
    if (!value) return;
    if (!m_session.isInHand()) m_session.begin(tr("Set line %1").arg(QString::fromStdString(m_last)));
    const auto next = withLineField(m_session.before(), m_last, field, *value);
    if (next) m_session.preview(*next);
    Q_EMIT updated();
}

void LayingTool::chose(int field, int option) {
    if (field == 0) m_base = option;
}

void LayingTool::entered() {
    if (m_laying) return finish();
    if (m_session.isInHand()) {
        m_session.commit();
    } else if (m_last.empty()) {
        layTyped();
    }
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
    LayoutLine line;
    line.id = id;
    line.place = *laid;
    next.lines.push_back(line);
    m_session.change(tr("Lay line %1").arg(QString::fromStdString(id)), next);
    forget();
    m_selection.pickLine(id);
}

InHand LayingTool::inHand() const {
    InHand shown;
    if (!m_laying) return shown;
    if (!m_laid) {
        shown.spots.push_back(m_wish.start);
        return shown;
    }
    const Units units = m_session.project().units;
    shown.lines.emplace_back(m_laid->from.place, m_laid->to.place);
    shown.spots = {m_laid->from.place, m_laid->to.place};
    const auto at = [&](const LaidEnd& end) { return tr("%1 at the %2").arg(lengthFor(end.at, units), edgeText(end.edge)); };
    const QString angle = m_laid->angle == 0 ? tr("parallel to the %1").arg(edgeText(m_laid->angleFrom))
                                             : tr("%1 to the %2").arg(angleFor(m_laid->angle), edgeText(m_laid->angleFrom));
    shown.note = angle + QLatin1Char('\n') + at(m_laid->from) + QLatin1Char('\n') + at(m_laid->to);
    shown.noteAt = m_wish.end;
    return shown;
}

}  // namespace kerfwall
