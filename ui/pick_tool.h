// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/moving.h"
#include "core/geometry/picked.h"
#include "ui/tool.h"

namespace kerfwall {

/// Picks lines, clamp holes, fences and cutouts, one or several, moves what it picked, and takes new numbers for it.
class PickTool : public Tool {
    Q_OBJECT

public:
    using Tool::Tool;

    QString name() const override { return tr("Pick"); }
    void press(const Hand& hand) override;
    void move(const Hand& hand) override;
    void release(const Hand& hand) override;
    bool nudge(Point shift) override;
    void cancel() override;
    bool isBusy() const override { return m_pressed && (m_moving || m_band); }
    EntryState entry() const override;
    void typed(int field, std::optional<double> value) override;
    void entered() override;
    InHand inHand() const override;

private:
    void pickAt(const Hand& hand);
    void hover(const Hand& hand);
    void stretchBand(const Hand& hand);
    bool isMovable() const;
    void carry(const Hand& hand);
    QString moveName() const;
    QString sentence() const;

    bool m_pressed = false;
    bool m_moving = false;
    Point m_grabbed;
    Grip m_grip = Grip::Whole;
    bool m_adds = false;         // Shift was held when it was pressed
    Picked m_under;              // what lies under the pointer
    Picked m_held;               // what the press took hold of; nothing: a band begins there
    Picked m_pickedBefore;       // before the band
    std::optional<Point> m_band;  // where the band has come to
};

}  // namespace kerfwall
