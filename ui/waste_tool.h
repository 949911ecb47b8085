// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/waste_click.h"
#include "ui/tool.h"

namespace kerfwall {

/// Marks regions as waste, and marks them waste no more. Says before the click what it will do.
class WasteTool : public Tool {
    Q_OBJECT

public:
    using Tool::Tool;

    QString name() const override { return tr("Mark waste"); }
    void press(const Hand& hand) override;
    void move(const Hand& hand) override;
    void release(const Hand&) override {}
    void leave() override;
    void cancel() override;
    bool isBusy() const override { return false; }
    EntryState entry() const override;
    void typed(int, std::optional<double>) override {}
    void entered() override {}
    InHand inHand() const override;

private:
    void forget();
    std::string joinTo(const Hand& hand) const;
    bool isAnswered(const Hand& hand) const;
    QString promise() const;
    QString note() const;

    std::optional<WasteClick> m_click;  // of the region under the pointer
    Project m_of;                       // what it was worked out for ...
    std::string m_joinTo;               // ... and with which cutout to join
    Point m_at;
    QString m_trouble;
};

}  // namespace kerfwall
