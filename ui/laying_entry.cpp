// SPDX-License-Identifier: GPL-3.0-or-later
// What the laying tool shows in the entry line, and what is typed there; the hand's part stands in laying_tool.cpp.
#include <algorithm>

#include "core/geometry/sawn_corner.h"
#include "ui/laying_tool.h"
#include "ui/line_entry.h"
#include "ui/session.h"
#include "ui/trouble_text.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

// The entry line's fields while a line is in hand, and while one is typed.
constexpr int kDistance = 0, kAngle = 1, kAs = 2, kMargin = 3;
constexpr int kTypedFrom = 0, kTypedDistance = 1, kTypedAngle = 2, kTypedAs = 3;
constexpr double kWidestMargin = 50;  // mm; wider than any bit's radius

}  // namespace

QString LayingTool::refusal(NoLine why) const {
    switch (why) {
        case NoLine::TooShort: return tr("A line runs from one edge of the panel to another: drag further.");
        case NoLine::OffThePanel: return tr("That line would lie off the panel: drag or type it back onto it.");
        case NoLine::OnALine: return tr("A line lies there already: pick another place.");
    }
    return {};
}

bool LayingTool::isLastThere() const { return !m_last.empty() && findLine(m_session.project(), m_last); }

EntryState LayingTool::entry() const {
    if (m_laying) return layingEntry();
    return isLastThere() ? lastEntry() : typingEntry();
}

EntryField LayingTool::asField() const {
    return {EntryField::Kind::Choice, tr("as"), {},
            {tr("a line to cut"), tr("a mark only"), tr("a mark on the back"), tr("a mark on both faces")}, m_as};
}

EntryState LayingTool::layingEntry() const {
    EntryState state;
    state.staysAmongFields = true;
    const QString id = QString::fromStdString(m_id);
    using Kind = EntryField::Kind;
    const QString from = m_laid ? tr("From %1").arg(baseText(m_laid->distanceFrom)) : tr("From the edge");
    const std::optional<double> distance = m_laid ? std::optional(m_laid->distance) : m_wish.distance;
    const std::optional<double> angle = m_laid ? std::optional(m_laid->angle) : m_wish.angle;
    state.fields = {{Kind::Length, from, distance, {}, 0}, {Kind::Angle, tr("angle"), angle, {}, 0}, asField()};
    if (!sawnCorners(m_session.before()).empty()) state.fields.push_back({Kind::Length, tr("sawn corner clear by"), m_margin, {}, 0});
    if (m_laid) {
        state.sentence = m_waiting ? tr("Click to lay line %1. Type its numbers, Tab for the next. Alt: no snapping. Esc: leave it.").arg(id)
                                   : tr("Let go to lay line %1. Type its numbers, Tab for the next. Alt: no snapping. Esc: leave it.").arg(id);
    } else {
        state.sentence = m_waiting ? tr("Click where line %1 leaves the panel. Esc: leave it.").arg(id) : refusal(m_laid.error());
    }
    return state;
}

EntryState LayingTool::lastEntry() const {
    EntryState state;
    state.fields = lineFields(m_session.project(), m_last);
    const QString id = QString::fromStdString(m_last);
    const QString trouble = troubleText(m_session.solved(), m_last);
    if (!trouble.isEmpty()) {
        state.sentence = trouble;
        return state;
    }
    state.sentence = state.fields.empty() ? tr("Line %1 is laid. Drag the next line.").arg(id)
                                          : tr("Line %1 is laid. Press Enter to type its numbers, or drag the next line.").arg(id);
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
                    {Kind::Angle, tr("angle"), m_typedAngle, {}, 0},
                    asField()};
    state.sentence = !m_trouble.isEmpty()
                         ? m_trouble
                         : tr("Drag from one edge to another to lay line %1, click twice, or type and press Enter.")
                               .arg(QString::fromStdString(m_session.freshLineId()));
    return state;
}

void LayingTool::typed(int field, std::optional<double> value) {
    if (m_laying) {
        if (field == kDistance) m_wish.distance = value;
        if (field == kAngle) m_wish.angle = value;
        if (field == kMargin) m_margin = std::clamp(value.value_or(kUsualMargin), 0.0, kWidestMargin);
        return follow();
    }
    if (isLastThere()) return setLast(field, value);
    if (field == kTypedDistance) m_typedDistance = value;
    if (field == kTypedAngle) m_typedAngle = value;
}

void LayingTool::chose(int field, int option) {
    if (!m_laying && !isLastThere() && field == kTypedFrom) m_base = option;
    if (field == (m_laying ? kAs : kTypedAs)) m_as = static_cast<As>(option);
    if (m_laying) follow();
}

}  // namespace kerfwall
