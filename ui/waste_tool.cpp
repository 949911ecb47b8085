// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/waste_tool.h"

#include "core/geometry/face_seeds.h"
#include "ui/selection.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

bool isSameLayout(const Project& one, const Project& other) {
    return one.lines == other.lines && one.panel == other.panel && one.cutouts == other.cutouts;
}

}  // namespace

std::string WasteTool::joinTo(const Hand& hand) const { return hand.adds ? m_selection.cutout() : std::string{}; }

void WasteTool::press(const Hand& hand) {
    const auto marking = markWaste(m_session.project(), hand.at, joinTo(hand));
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
    move(hand);
    Q_EMIT updated();
}

/// The same region, the same question: only the pointer has moved on.
bool WasteTool::isAnswered(const Hand& hand) const {
    return m_click && isInFace(m_click->face, hand.at) && joinTo(hand) == m_joinTo && isSameLayout(m_of, m_session.project());
}

void WasteTool::move(const Hand& hand) {
    m_at = hand.at;
    if (!isAnswered(hand)) {
        m_of = m_session.project();
        m_joinTo = joinTo(hand);
        const auto click = wasteClickAt(m_of, hand.at, m_joinTo);
        m_click = click ? std::optional(*click) : std::nullopt;
        if (click) m_trouble.clear();
    }
    Q_EMIT updated();
}

void WasteTool::forget() {
    m_click.reset();
    m_trouble.clear();
    Q_EMIT updated();
}

void WasteTool::leave() { forget(); }

void WasteTool::cancel() {
    m_selection.clear();
    forget();
}

/// What the click will do, completed by the sizes that come of it.
QString WasteTool::promise() const {
    const Units units = m_session.project().units;
    const QString cutout = cutoutText(m_click->cutout);
    const QString then = extentFor(m_click->cutoutBounds, units) + (m_click->open ? tr(", open to the edge") : tr(", closed"));
    switch (m_click->what) {
        case Marked::Added: return tr("becomes %1, %2").arg(cutout, then);
        case Marked::Joined: return tr("joins %1, then %2").arg(cutout, then);
        case Marked::Taken: break;
    }
    return m_click->cutoutArea > 0 ? tr("%1 is then %2").arg(cutout, then) : tr("%1 goes").arg(cutout);
}

EntryState WasteTool::entry() const {
    EntryState state;
    if (!m_trouble.isEmpty()) state.sentence = m_trouble;
    else if (!m_click) state.sentence = tr("Click inside a region between the lines to mark it as waste.");
    else if (m_click->what == Marked::Taken) state.sentence = tr("This region is waste. Click to keep it: %1.").arg(promise());
    else state.sentence = tr("Click to mark this region as waste: it %1.").arg(promise());
    const bool couldJoin = m_click && m_click->what == Marked::Added && !m_selection.cutout().empty();
    if (couldJoin && m_trouble.isEmpty()) state.sentence += tr(" Shift: add it to %1.").arg(cutoutText(m_selection.cutout()));
    return state;
}

QString WasteTool::note() const {
    const Units units = m_session.project().units;
    QStringList lines{tr("%1, %2").arg(extentFor(m_click->bounds, units), areaFor(m_click->area, units)), promise()};
    const double bit = trimBitOf(m_session.project()).diameter;
    if (m_click->what != Marked::Taken && m_click->widest < bit) {
        lines << tr("too narrow for the %1 bit: %2 at its widest").arg(sizeFor(bit, units), sizeFor(m_click->widest, units));
    }
    return lines.join(QLatin1Char('\n'));
}

InHand WasteTool::inHand() const {
    InHand shown;
    if (!m_click) return shown;
    shown.faces.push_back(m_click->face);
    shown.noteAt = m_at;
    shown.note = note();
    return shown;
}

}  // namespace kerfwall
