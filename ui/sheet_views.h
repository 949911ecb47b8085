// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/drawing/cutting_line.h"

namespace kerfwall {

class PlanView;
class Selection;
class Session;
class SideViewPanel;
class StepView;

/// The plan with its side views in true projection: under it the one from the bottom edge, to its right the one
/// from the right edge. Which of them stand there is the maker's wish, as far as the window has room.
class SheetViews : public QWidget {
    Q_OBJECT

public:
    enum class Sides { FromBottom, FromRight, Both };

    SheetViews(Session& session, Selection& selection, QWidget* parent = nullptr);

    PlanView* plan() const { return m_plan; }
    SideViewPanel* side(CutDirection direction) const {
        return direction == CutDirection::Level ? m_level : m_upright;
    }

    /// What is wished for, kept from one start of the program to the next.
    Sides wish() const { return m_wish; }
    void wishFor(Sides sides);
    /// The next of them that the window has room for.
    void showNext();
    bool hasRoomForBoth() const;

    /// A step of the order of work, shown in place of the plan and its side views.
    StepView* steps() const { return m_steps; }

    /// Lays a widget over the views' top, as wide as they are: nothing moves under it. It becomes a child.
    void layOver(QWidget* cover);

Q_SIGNALS:
    void wishChanged();

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void arrange();
    void placeCover();

    Session& m_session;
    PlanView* m_plan;
    SideViewPanel* m_level;
    SideViewPanel* m_upright;
    StepView* m_steps;
    QWidget* m_cover = nullptr;
    Sides m_wish = Sides::Both;
};

}  // namespace kerfwall
