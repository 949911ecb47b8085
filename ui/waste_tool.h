// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/tool.h"

namespace kerfwall {

/// Marks regions as waste, and marks them waste no more.
class WasteTool : public Tool {
    Q_OBJECT

public:
    using Tool::Tool;

    QString name() const override { return tr("Mark waste"); }
    void press(const Hand& hand) override;
    void move(const Hand& hand) override;
    void release(const Hand&) override {}
    void cancel() override;
    bool isBusy() const override { return false; }
    EntryState entry() const override;
    void typed(int, std::optional<double>) override {}
    void entered() override {}
    InHand inHand() const override;

private:
    std::vector<Point> m_face;  // under the pointer
    bool m_marked = false;      // that face is waste now
    QString m_trouble;
};

}  // namespace kerfwall
