// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/fencing.h"
#include "ui/tool.h"

namespace kerfwall {

/// Fixes fences and stops along edges and lines, and moves their faces and ends.
class FenceTool : public Tool {
    Q_OBJECT

public:
    using Tool::Tool;

    QString name() const override { return tr("Fix a fence"); }
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
    /// Holding: pressed on a fence, not yet dragged.
    enum class Doing { Nothing, Placing, Holding, Carrying };
    bool hasFence() const;
    FenceWish wishAt(const Base& along, const Hand& hand, std::optional<double> offset) const;
    std::vector<Base> bases() const;
    void place();
    void carry(const Hand& hand);
    void hover(const Hand& hand);
    void placeTyped();
    void setFence(const Project& next);
    void end();
    QString placeName() const;
    QString sentence() const;
    EntryState placingEntry() const;
    EntryState typingEntry() const;

    Doing m_doing = Doing::Nothing;
    NearFence m_held;
    Base m_base = Edge::Bottom;  // along which the fence in hand is placed
    Hand m_hand;                 // where the pointer is
    Point m_grabbed;
    bool m_dragged = false;
    FenceKind m_kind = FenceKind::Straight;  // of the next one
    int m_from = 0;                          // of the bases: along which one is typed
    std::optional<double> m_typedOffset;
    std::optional<Fence> m_shown;  // in hand, or what a click would fix
    std::optional<NearFence> m_under;
    bool m_away = true;  // the pointer is not over the plan
    QString m_trouble;
};

}  // namespace kerfwall
