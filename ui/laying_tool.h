// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>

#include "core/geometry/laying.h"
#include "ui/tool.h"

namespace kerfwall {

/// Lays a line by a drag or by two clicks, or by typing alone. What is typed after the drag still goes to the line
/// just laid, until Enter, Esc, a click or another tool.
class LayingTool : public Tool {
    Q_OBJECT

public:
    using Tool::Tool;

    QString name() const override { return tr("Lay a line"); }
    void press(const Hand& hand) override;
    void move(const Hand& hand) override;
    void release(const Hand& hand) override;
    void cancel() override;
    bool isBusy() const override { return m_laying; }
    EntryState entry() const override;
    void typed(int field, std::optional<double> value) override;
    void chose(int field, int option) override;
    void entered() override;
    void settled() override;
    InHand inHand() const override;

private:
    /// What a line is laid as.
    enum As { CutLine, Mark, MarkOnBack, MarkOnBoth };

    void follow();
    void finish();
    void forget();
    void setLast(int field, std::optional<double> value);
    void layTyped();
    LayoutLine madeLine(const LineId& id, const Place& place) const;
    bool isLastThere() const;
    std::vector<Base> bases() const;
    QString refusal(NoLine why) const;
    EntryField asField() const;
    EntryState layingEntry() const;
    EntryState lastEntry() const;
    EntryState typingEntry() const;

    bool m_laying = false;
    bool m_waiting = false;  // the first click is done, the second is to come
    LayingWish m_wish;
    std::expected<LaidLine, NoLine> m_laid = std::unexpected(NoLine::TooShort);
    As m_as = CutLine;
    double m_margin = kUsualMargin;  // mm, to the work's sawn corners
    LineId m_id;        // of the line in hand
    LineId m_last;      // laid last: what is typed now still goes to it
    LineId m_justLaid;  // the same, until the next: no axis was picked by it
    int m_base = 0;
    std::optional<double> m_typedDistance;
    std::optional<double> m_typedAngle;
    QString m_trouble;
};

}  // namespace kerfwall
