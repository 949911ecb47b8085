// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/tool.h"

namespace kerfwall {

/// Clicks the corners of a wanted opening on the plan. The form keeps them; nothing of the project changes.
class CornerTool : public Tool {
    Q_OBJECT

public:
    using Tool::Tool;

    /// The corners clicked so far.
    void show(std::vector<Point> corners);

    QString name() const override { return tr("Click corners"); }
    void press(const Hand& hand) override;
    void move(const Hand& hand) override;
    void release(const Hand&) override {}
    void leave() override;
    void cancel() override { Q_EMIT backAsked(); }
    bool isBusy() const override { return false; }
    EntryState entry() const override;
    void typed(int, std::optional<double>) override {}
    void entered() override { Q_EMIT closed(); }
    InHand inHand() const override;

Q_SIGNALS:
    void clicked(kerfwall::Point corner);
    void closed();     ///< the first corner was clicked again: that is all
    void backAsked();  ///< Esc: the last corner away, or clicking left

private:
    std::vector<Point> m_corners;
    std::optional<Point> m_under;
};

}  // namespace kerfwall
