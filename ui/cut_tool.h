// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/tool.h"

namespace kerfwall {

/// Moves the cutting line the side view is seen at.
class CutTool : public Tool {
    Q_OBJECT

public:
    using Tool::Tool;

    QString name() const override { return tr("Move the cut"); }
    void press(const Hand& hand) override;
    void move(const Hand& hand) override;
    void release(const Hand& hand) override;
    bool nudge(Point shift) override;
    void cancel() override;
    bool isBusy() const override { return m_dragging; }
    EntryState entry() const override;
    void typed(int field, std::optional<double> value) override;
    void entered() override {}

private:
    void follow(const Hand& hand);

    bool m_dragging = false;
    double m_before = 0;
};

}  // namespace kerfwall
