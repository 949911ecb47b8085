// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bore_tool.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/laying.h"
#include "core/says/length_text.h"
#include "ui/corner_words.h"
#include "ui/selection.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kReachMore = 1.5;     // a corner is a small mark: it is caught from further than a line
constexpr double kStep = 0.5;        // mm of radius
constexpr double kInchStep = kMillimetresPerInch / 32;
constexpr double kHold = 0.75;       // mm of radius within which a bore at hand holds on

}  // namespace

std::optional<BoreTool::Named> BoreTool::cornerUnder(const Hand& hand) {
    const auto near = roundNear(m_session.solved(), hand.at, kReachMore * hand.reach, hand.reach);
    if (!near) return std::nullopt;
    m_byArc = near->byArc;
    const SolvedCutout& cutout = m_session.solved().cutouts[near->corner.cutout];
    const Corner& corner = cutout.corners[near->corner.corner];
    return Named{cutout.id, corner.first, corner.second};
}

BoreTool::Found BoreTool::find(const Solved& solved, const std::optional<Named>& named) {
    if (!named) return {};
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (cutout.id != named->cutout) continue;
        for (const Corner& corner : cutout.corners) {
            if (corner.first == named->first && corner.second == named->second) return {&cutout, &corner};
        }
    }
    return {};
}

std::vector<BoreTool::Named> BoreTool::corners() const {
    std::vector<Named> all;
    for (const SolvedCutout& cutout : m_session.solved().cutouts) {
        for (const Corner& corner : cutout.corners) {
            if (corner.radius > 0) all.push_back({cutout.id, corner.first, corner.second});
        }
    }
    return all;
}

double BoreTool::fineStep() const { return m_session.project().units == Units::Inches ? kInchStep : kStep; }

QString BoreTool::stepName() const {
    const Found found = find(m_session.solvedBefore(), m_chosen);
    const bool bored = found.corner && boreRadiusAt(m_session.before(), *found.cutout, *found.corner);
    const QString corner = QString::fromStdString(m_chosen->first) + QLatin1Char(' ') + QString::fromStdString(m_chosen->second);
    return bored ? tr("Set the bore at %1").arg(corner) : tr("Bore corner %1").arg(corner);
}

/// The chosen corner's arc before anything in hand, mm.
double BoreTool::radiusNow() const {
    const Found found = find(m_session.solvedBefore(), m_chosen);
    return found.corner ? found.corner->radius : 0;
}

void BoreTool::press(const Hand& hand) {
    m_session.commit();
    m_trouble.clear();
    m_dragging = false;
    m_at = hand.at;
    m_chosen = cornerUnder(hand);
    const Found found = find(m_session.solved(), m_chosen);
    if (found.corner && !(found.corner->radius > 0)) {
        m_trouble = tr("The corner of %1 and %2 points into the waste: it stays as it is sawn, there is nothing to bore.")
                        .arg(QString::fromStdString(m_chosen->first), QString::fromStdString(m_chosen->second));
        m_chosen.reset();
    }
    m_pressed = m_chosen.has_value();
    m_grabbed = hand.at;
    Q_EMIT updated();
}

void BoreTool::move(const Hand& hand) {
    m_at = hand.at;
    if (m_pressed && !m_dragging && distance(hand.at, m_grabbed) >= hand.still()) {
        m_dragging = true;
        m_session.begin(stepName());
    }
    if (m_dragging) drag(hand);
    else if (!m_pressed) m_under = cornerUnder(hand);
    Q_EMIT updated();
}

/// The arc follows the pointer, by what it was taken hold of: its own place, or the corner.
void BoreTool::drag(const Hand& hand) {
    const Found found = find(m_session.solvedBefore(), m_chosen);
    if (!found.corner) return;
    const double grabbed = m_byArc ? found.corner->radius - radiusThrough(*found.corner, m_grabbed) : 0;
    const double radius = radiusThrough(*found.corner, hand.at) + grabbed;
    m_held = hand.snap ? heldRadius(m_session.before(), radius, fineStep(), kHold)
                       : heldRadius(m_session.before(), radius, kLooseStep, 0);
    m_session.preview(withBore(m_session.before(), *found.cutout, *found.corner, m_held.radius));
}

void BoreTool::release(const Hand& hand) {
    if (!m_pressed) return;
    if (m_dragging) {
        drag(hand);
        m_session.commit();
    } else if (const Found found = find(m_session.solved(), m_chosen);
               found.corner && !boreRadiusAt(m_session.project(), *found.cutout, *found.corner)) {
        set({usualBoreRadius(m_session.project()), false});
    }
    m_pressed = m_dragging = false;
    m_under = m_chosen;
    Q_EMIT updated();
}

/// One step for the chosen corner.
void BoreTool::set(const HeldRadius& held) {
    const Found found = find(m_session.solved(), m_chosen);
    if (!found.corner) return;
    m_session.change(stepName(), withBore(m_session.project(), *found.cutout, *found.corner, held.radius));
    Q_EMIT updated();
}

bool BoreTool::nudge(Point shift) {
    if (!m_chosen || m_pressed) return false;
    m_session.commit();
    const double by = shift.x + shift.y;
    set(heldRadius(m_session.project(), radiusNow() + by, std::abs(by), 0));
    return true;
}

bool BoreTool::grow(int steps) {
    if (!m_chosen || m_pressed) return false;
    m_session.commit();
    set(heldRadius(m_session.project(), radiusNow() + steps * fineStep(), fineStep(), 0));
    return true;
}

std::optional<bool> BoreTool::tab(bool next) {
    const std::vector<Named> all = corners();
    if (all.empty() || m_pressed) return std::nullopt;
    m_session.commit();
    m_at.reset();
    m_trouble.clear();
    m_under.reset();
    const auto here = m_chosen ? std::ranges::find(all, *m_chosen) : all.end();
    const auto count = static_cast<std::ptrdiff_t>(all.size());
    const std::ptrdiff_t index = here == all.end() ? (next ? -1 : count) : here - all.begin();
    const std::ptrdiff_t wanted = next ? index + 1 : index - 1;
    const bool found = wanted >= 0 && wanted < count;
    m_chosen = found ? std::optional(all[static_cast<std::size_t>(wanted)]) : std::nullopt;
    Q_EMIT updated();
    return found;
}

void BoreTool::leave() {
    if (m_pressed) return;
    m_under.reset();
    m_at.reset();
    Q_EMIT updated();
}

void BoreTool::cancel() {
    m_session.abandon();
    m_chosen.reset();
    m_pressed = m_dragging = false;
    m_trouble.clear();
    Q_EMIT updated();
}

QString BoreTool::draggingSentence() const {
    const Project& project = m_session.project();
    const QString wish = m_held.radius ? tr("Let go to bore the corner to radius %1, %2.")
                                             .arg(sizeFor(*m_held.radius, project.units), boreText(project, *m_held.radius))
                                       : tr("Let go to leave the corner to the trimming bit.");
    return wish + tr(" Alt: no steps. Esc: put it back.");
}

EntryState BoreTool::entry() const {
    EntryState state;
    const Units units = m_session.project().units;
    const Found chosen = find(m_session.solved(), m_chosen), under = find(m_session.solved(), m_under);
    const QString usual = sizeFor(usualBoreRadius(m_session.project()), units);
    if (chosen.corner) {
        const auto radius = m_dragging ? m_held.radius : boreRadiusAt(m_session.project(), *chosen.cutout, *chosen.corner);
        state.fields = {{EntryField::Kind::Length, tr("Radius at %1").arg(cornerText(*chosen.corner)), radius, {}, 0}};
        state.sentence = m_dragging              ? draggingSentence()
                         : !m_trouble.isEmpty() ? m_trouble
                                                : tr("Drag the arc, press + or −, or press Enter to type the radius; 0 leaves the corner to the trimming bit. "
                                                     "Tab: the next corner.");
    } else if (!m_trouble.isEmpty()) {
        state.sentence = m_trouble;
    } else if (under.corner && under.corner->radius > 0) {
        const bool bored = boreRadiusAt(m_session.project(), *under.cutout, *under.corner).has_value();
        state.sentence = bored ? tr("Drag the arc of corner %1 to another radius, or click to type it.").arg(cornerText(*under.corner))
                               : tr("Click to bore the corner of %1 and %2 to radius %3, or drag away from it for another.")
                                     .arg(QString::fromStdString(m_under->first), QString::fromStdString(m_under->second), usual);
    } else if (m_session.solved().cutouts.empty()) {
        state.sentence = tr("Mark a region as waste first; then its corners can be bored.");
    } else {
        state.sentence = tr("Click a corner of a cutout to bore it to radius %1, or drag away from it. Tab goes from corner to corner.")
                             .arg(usual);
    }
    return state;
}

void BoreTool::typed(int, std::optional<double> value) {
    const Found found = find(m_session.solvedBefore(), m_chosen);
    if (!found.corner || m_dragging) return;
    const double radius = value.value_or(0);
    const double bits = m_session.solvedBefore().bitRadius;
    const bool allowed = radius == 0 || (radius > bits && radius <= kLargestBore);
    const Units units = m_session.project().units;
    m_trouble = allowed ? QString() : tr("The trimming bit leaves %1 by itself: a bore has more, up to %2; 0 leaves the corner to the bit.")
                                          .arg(lengthUnitFor(bits, units), lengthUnitFor(kLargestBore, units));
    if (allowed && !m_session.isInHand()) m_session.begin(stepName());
    // A value that can't be leaves nothing of the digits typed on the way to it.
    const Project before = m_session.before();
    m_session.preview(allowed ? withBore(before, *found.cutout, *found.corner, radius > 0 ? std::optional(radius) : std::nullopt)
                              : before);
    Q_EMIT updated();
}

void BoreTool::entered() {
    m_session.commit();
    m_trouble.clear();
    m_chosen.reset();
    Q_EMIT updated();
}

/// The corner as it is, and what a click or the drag makes of it.
QString BoreTool::note(const Corner& corner) const {
    const Project& project = m_session.project();
    QStringList lines{cornerNote(project, corner)};
    const double usual = usualBoreRadius(project);
    const Found found = find(m_session.solvedBefore(), m_chosen);
    if (m_dragging && found.corner && m_held.radius && *m_held.radius > roomForBore(*found.cutout, *found.corner)) {
        lines << tr("its walls have room for %1 at most").arg(sizeFor(roomForBore(*found.cutout, *found.corner), project.units));
    }
    if (m_dragging && !m_held.radius) lines << tr("left to the trimming bit");
    if (!m_dragging && !corner.boreRadius && corner.radius > 0) {
        lines << tr("click: radius %1, %2").arg(sizeFor(usual, project.units), boreText(project, usual));
    }
    return lines.join(QLatin1Char('\n'));
}

InHand BoreTool::inHand() const {
    InHand shown;
    const Found chosen = find(m_session.solved(), m_chosen);
    const Found found = chosen.corner ? chosen : find(m_session.solved(), m_under);
    if (!found.corner) return shown;
    const Corner& corner = *found.corner;
    shown.spots.push_back(corner.point);
    shown.note = note(corner);
    shown.noteAt = m_at.value_or(corner.point);
    if (!(corner.radius > 0)) return shown;
    shown.runs.push_back({cornerArc(corner, m_dragging && m_held.radius ? *m_held.radius : corner.radius)});
    const bool clickBores = !m_dragging && !corner.boreRadius;
    if (clickBores) shown.wished.push_back({cornerArc(corner, usualBoreRadius(m_session.project()))});
    return shown;
}

}  // namespace kerfwall
