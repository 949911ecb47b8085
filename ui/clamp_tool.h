// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/clamping.h"
#include "ui/tool.h"

namespace kerfwall {

/// Places clamp holes along the panel's edges, slides them and drills them deeper, and says what wood is left.
class ClampTool : public Tool {
    Q_OBJECT

public:
    using Tool::Tool;

    QString name() const override { return tr("Clamp hole"); }
    void press(const Hand& hand) override;
    void move(const Hand& hand) override;
    void release(const Hand& hand) override;
    bool nudge(Point shift) override;
    bool grow(int steps) override;
    std::optional<bool> tab(bool next) override;
    void leave() override;
    void cancel() override;
    bool isBusy() const override { return m_doing == Doing::Placing || m_doing == Doing::Carrying; }
    EntryState entry() const override;
    void typed(int field, std::optional<double> value) override;
    void chose(int field, int option) override;
    void entered() override;
    InHand inHand() const override;

private:
    /// Holding: pressed on a hole, not yet dragged.
    enum class Doing { Nothing, Placing, Holding, Carrying };
    bool hasHole() const;
    HoleWish wishAt(const Hand& hand) const;
    void place(const Hand& hand);
    void carry(const Hand& hand);
    void hover(const Hand& hand);
    void show(const Project& next, std::size_t hole);
    void end();
    QString sentence() const;
    QString draggingSentence() const;

    Doing m_doing = Doing::Nothing;
    HoleGrip m_grip = HoleGrip::Whole;
    Point m_grabbed;
    std::size_t m_hole = 0;      // that is in hand
    std::optional<Edge> m_edge;  // at which the hole in hand began
    std::size_t m_kind = 0;      // of the holes at hand: what a click places
    std::optional<Project> m_shown;   // with the hole that is in hand, or that a click would give
    std::optional<NearHole> m_under;  // the hole under the pointer
    std::optional<Point> m_at;        // the pointer
    QString m_trouble;
};

}  // namespace kerfwall
