// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/moving.h"
#include "ui/tool.h"

namespace kerfwall {

/// Picks lines, clamp holes and cutouts, moves what it picked, and takes new numbers for it.
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
    bool isBusy() const override { return m_pressed && m_moving; }
    EntryState entry() const override;
    void typed(int field, std::optional<double> value) override;
    void entered() override;
    InHand inHand() const override;

private:
    void pickAt(const Hand& hand);
    void carry(const Hand& hand);
    QString moveName() const;

    bool m_pressed = false;
    bool m_moving = false;
    Point m_grabbed;
    Grip m_grip = Grip::Whole;
    LineId m_under;  // the line under the pointer, "" for none
};

}  // namespace kerfwall
