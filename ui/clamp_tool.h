// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/tool.h"

namespace kerfwall {

/// Places clamp holes along the panel's edges.
class ClampTool : public Tool {
    Q_OBJECT

public:
    using Tool::Tool;

    QString name() const override { return tr("Clamp hole"); }
    void press(const Hand& hand) override;
    void move(const Hand& hand) override;
    void release(const Hand& hand) override;
    bool nudge(Point shift) override;
    void cancel() override;
    bool isBusy() const override { return m_placing; }
    EntryState entry() const override;
    void typed(int field, std::optional<double> value) override;
    void entered() override;
    InHand inHand() const override;

private:
    void place(const Hand& hand);

    bool m_placing = false;
    std::optional<Point> m_under;  // where a click would put it
    QString m_trouble;
};

}  // namespace kerfwall
