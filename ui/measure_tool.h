// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/measuring.h"
#include "ui/tool.h"

namespace kerfwall {

/// Measures between any two things. Nothing of the project changes.
class MeasureTool : public Tool {
    Q_OBJECT

public:
    using Tool::Tool;

    QString name() const override { return tr("Measure"); }
    void press(const Hand& hand) override;
    void move(const Hand& hand) override;
    void release(const Hand&) override {}
    void cancel() override;
    bool isBusy() const override { return false; }
    EntryState entry() const override;
    void typed(int, std::optional<double>) override {}
    void entered() override {}
    void leave() override;
    InHand inHand() const override;

private:
    Measurable thingAt(const Hand& hand) const;
    QString result() const;

    std::optional<Measurable> m_first;
    std::optional<Measurable> m_second;  // measured to; the next click begins anew
    std::optional<Measurable> m_under;
};

}  // namespace kerfwall
