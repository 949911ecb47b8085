// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <optional>
#include <utility>
#include <vector>

#include "core/geometry/outline.h"
#include "ui/entry_state.h"

namespace kerfwall {

class Session;
class Selection;

/// Where the pointer is and what it is worth: everything a tool needs to know of the screen.
struct Hand {
    Point at;          ///< panel frame, mm
    double reach = 5;  ///< mm within which a place can be caught
    double step = 1;   ///< mm, or the smallest mark of an inch rule in mm
    bool snap = true;
    bool adds = false;  ///< Shift: to what is picked

    /// mm: a press that stays within is a click, not a drag.
    double still() const { return reach / 3; }
};

/// What a tool has in hand, to be drawn over the plan.
struct InHand {
    std::vector<std::pair<Point, Point>> lines;
    std::vector<std::vector<Point>> faces;
    std::vector<Point> spots;
    std::vector<Point> holds;                         ///< what it holds on to
    std::vector<std::pair<Point, Point>> references;  ///< lines and edges that are meant by it
    std::vector<OutlineLoop> runs;    ///< outlines and arcs, closed or not
    std::vector<OutlineLoop> wished;  ///< what a click would give: dashed
    std::optional<Point> noteAt;
    QString note;  ///< some lines beside `noteAt`
};

/// A hand tool: turns the pointer, keys and typed values into changes of the session's project.
class Tool : public QObject {
    Q_OBJECT

public:
    Tool(Session& session, Selection& selection, QObject* parent)
        : QObject(parent), m_session(session), m_selection(selection) {}

    virtual QString name() const = 0;
    virtual void press(const Hand& hand) = 0;
    /// The pointer moves, pressed or not.
    virtual void move(const Hand& hand) = 0;
    virtual void release(const Hand& hand) = 0;
    /// Arrow keys: by `shift` mm. False where the tool has nothing to move.
    virtual bool nudge(Point shift) { return static_cast<void>(shift), false; }
    /// True where arrow keys are its own to nudge with, even while digits belong to the entry line.
    virtual bool takesArrows() const { return !isBusy(); }
    /// Plus and minus: what is picked larger or smaller by so many steps. False where it has no size.
    virtual bool grow(int steps) { return static_cast<void>(steps), false; }
    /// Tab: to the next of the things it works on, or the one before. False: there is none further.
    /// None: it has none of its own, and Tab goes from line to line.
    virtual std::optional<bool> tab(bool next) { return static_cast<void>(next), std::nullopt; }
    /// The pointer has left the plan.
    virtual void leave() {}
    /// Leaves what is in hand.
    virtual void cancel() = 0;
    /// True while a drag or the second click is to come: digits then belong to the entry line.
    virtual bool isBusy() const = 0;
    /// True while digits typed over the plan are numbers for the entry line, not tools.
    virtual bool takesNumbers() const { return isBusy(); }

    virtual EntryState entry() const = 0;
    /// A field of the entry line was typed into; none: it was emptied.
    virtual void typed(int field, std::optional<double> value) = 0;
    virtual void chose(int field, int option) { static_cast<void>(field), static_cast<void>(option); }
    /// Return in the entry line: what is shown holds.
    virtual void entered() = 0;
    /// The focus left a field that was typed into, as Tab does: what is shown holds, and more may be typed.
    virtual void settled() { entered(); }

    virtual InHand inHand() const { return {}; }

Q_SIGNALS:
    void updated();

protected:
    Session& m_session;
    Selection& m_selection;
};

}  // namespace kerfwall
