// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bore_tool.h"

#include "core/geometry/boring.h"
#include "core/geometry/nearest.h"
#include "ui/selection.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kInward = 180;   // degrees: from here on a corner points into the waste
constexpr double kReachMore = 2;  // a corner is a small mark: it is caught from twice the usual reach

}  // namespace

std::optional<BoreTool::Named> BoreTool::cornerUnder(const Hand& hand) const {
    const auto near = cornerNear(m_session.solved(), hand.at, kReachMore * hand.reach);
    if (!near) return std::nullopt;
    const SolvedCutout& cutout = m_session.solved().cutouts[near->cutout];
    const Corner& corner = cutout.corners[near->corner];
    return Named{cutout.id, corner.first, corner.second};
}

BoreTool::Found BoreTool::find(const std::optional<Named>& named) const {
    if (!named) return {};
    for (const SolvedCutout& cutout : m_session.solved().cutouts) {
        if (cutout.id != named->cutout) continue;
        for (const Corner& corner : cutout.corners) {
            if (corner.first == named->first && corner.second == named->second) return {&cutout, &corner};
        }
    }
    return {};
}

void BoreTool::press(const Hand& hand) {
    m_session.commit();
    m_trouble.clear();
    m_chosen = cornerUnder(hand);
    const Found found = find(m_chosen);
    if (!found.corner) {
        m_chosen.reset();
    } else if (found.corner->angle >= kInward) {
        m_trouble = tr("The corner of %1 and %2 points into the waste: it stays as it is sawn, there is nothing to bore.")
                        .arg(QString::fromStdString(m_chosen->first), QString::fromStdString(m_chosen->second));
        m_chosen.reset();
    } else if (!boreRadiusAt(m_session.project(), *found.cutout, *found.corner)) {
        m_session.change(tr("Bore corner %1 %2").arg(QString::fromStdString(m_chosen->first), QString::fromStdString(m_chosen->second)),
                         withBore(m_session.project(), *found.cutout, *found.corner, usualBoreRadius(m_session.project())));
    }
    Q_EMIT updated();
}

void BoreTool::move(const Hand& hand) {
    const auto under = cornerUnder(hand);
    if (under == m_under) return;
    m_under = under;
    Q_EMIT updated();
}

void BoreTool::cancel() {
    if (m_session.isInHand()) m_session.abandon();
    m_chosen.reset();
    m_trouble.clear();
    Q_EMIT updated();
}

EntryState BoreTool::entry() const {
    EntryState state;
    const Found chosen = find(m_chosen);
    if (chosen.corner) {
        const auto radius = boreRadiusAt(m_session.project(), *chosen.cutout, *chosen.corner);
        state.fields = {{EntryField::Kind::Length, tr("Radius at %1 %2").arg(QString::fromStdString(m_chosen->first),
                                                                             QString::fromStdString(m_chosen->second)),
                         radius, {}, 0}};
        state.sentence = tr("Type the radius of the bore; 0 leaves the corner to the trimming bit.");
    } else if (!m_trouble.isEmpty()) {
        state.sentence = m_trouble;
    } else if (m_under) {
        state.sentence = tr("Click to bore the corner of %1 and %2.").arg(QString::fromStdString(m_under->first),
                                                                          QString::fromStdString(m_under->second));
    } else if (m_session.solved().cutouts.empty()) {
        state.sentence = tr("Mark a region as waste first; then its corners can be bored.");
    } else {
        state.sentence = tr("Click a corner of a cutout to give it a larger round than the trimming bit leaves.");
    }
    return state;
}

void BoreTool::typed(int, std::optional<double> value) {
    const double radius = value.value_or(0);
    if (radius < 0 || radius > kLargestBore || !m_chosen) return;
    if (!m_session.isInHand()) {
        m_session.begin(tr("Set the bore at %1 %2").arg(QString::fromStdString(m_chosen->first), QString::fromStdString(m_chosen->second)));
    }
    const Found found = find(m_chosen);
    if (!found.corner) return;
    m_session.preview(withBore(m_session.project(), *found.cutout, *found.corner,
                               radius > 0 ? std::optional(radius) : std::nullopt));
}

void BoreTool::entered() {
    m_session.commit();
    m_chosen.reset();
    Q_EMIT updated();
}

InHand BoreTool::inHand() const {
    InHand shown;
    const Found under = find(m_under), chosen = find(m_chosen);
    if (chosen.corner) shown.spots.push_back(chosen.corner->point);
    else if (under.corner) shown.spots.push_back(under.corner->point);
    return shown;
}

}  // namespace kerfwall
