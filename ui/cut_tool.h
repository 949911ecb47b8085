// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/drawing/cutting_line.h"
#include "ui/tool.h"

namespace kerfwall {

/// The cut of that direction under the hand, on its steps where it snaps.
[[nodiscard]] CuttingLine draggedTo(const Panel& panel, CutDirection direction, const Hand& hand);

/// Moves the cutting lines the side views are seen at. Caught on one line, that one moves; anywhere else all
/// that are shown go through the place.
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
    bool isBusy() const override { return !m_before.empty(); }
    EntryState entry() const override;
    void typed(int field, std::optional<double> value) override;
    void entered() override {}

private:
    std::vector<CuttingLine> shown() const;
    void follow(const Hand& hand);

    std::vector<CuttingLine> m_before;  // the lines that are dragged, where they were
};

}  // namespace kerfwall
