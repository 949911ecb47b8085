// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <expected>
#include <memory>
#include <vector>

#include "core/geometry/copying.h"
#include "ui/entry_state.h"

namespace kerfwall {

/// What can be done by numbers to what is picked.
enum class DeedKind { Move, Turn, Mirror, Copy };

/// The things a deed is done to, as they were before it.
struct DeedGround {
    Project project;
    Solved solved;
    Picked picked;
    int highestLine = 0;
};

/// One of them in hand: its numbers, and what comes of them.
class Deed {
public:
    explicit Deed(DeedGround ground) : m_ground(std::move(ground)) {}
    Deed(const Deed&) = delete;
    Deed& operator=(const Deed&) = delete;
    virtual ~Deed() = default;

    [[nodiscard]] virtual QString name() const = 0;      ///< what undo calls it
    [[nodiscard]] virtual QString sentence() const = 0;  ///< what to type or to click
    [[nodiscard]] virtual std::vector<EntryField> fields() const = 0;
    virtual void typed(int field, double value) { static_cast<void>(field), static_cast<void>(value); }
    virtual void chose(int field, int option) { static_cast<void>(field), static_cast<void>(option); }
    /// A click on the plan.
    virtual void pointed(Point at, double reach) { static_cast<void>(at), static_cast<void>(reach); }
    /// False until there is something to do.
    [[nodiscard]] virtual bool isMeant() const = 0;
    [[nodiscard]] virtual std::expected<Copies, NoCarrying> done() const = 0;
    /// A place the numbers count from, to be shown.
    [[nodiscard]] virtual std::optional<Point> about() const { return std::nullopt; }

    const DeedGround& ground() const { return m_ground; }

protected:
    /// The things themselves carried along.
    [[nodiscard]] std::expected<Copies, NoCarrying> carry(const Motion& motion) const;
    [[nodiscard]] Copied things() const { return {m_ground.project, m_ground.solved, m_ground.picked}; }

private:
    DeedGround m_ground;
};

[[nodiscard]] std::unique_ptr<Deed> makeDeed(DeedKind kind, DeedGround ground);

/// Why it cannot be, in one sentence with what to do.
[[nodiscard]] QString whyNot(NoCarrying why);

}  // namespace kerfwall
