// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/tool.h"

namespace kerfwall {

struct Corner;
struct SolvedCutout;

/// Gives a cutout's corner a bore radius.
class BoreTool : public Tool {
    Q_OBJECT

public:
    using Tool::Tool;

    QString name() const override { return tr("Bore a corner"); }
    void press(const Hand& hand) override;
    void move(const Hand& hand) override;
    void release(const Hand&) override {}
    void cancel() override;
    bool isBusy() const override { return m_chosen.has_value(); }
    EntryState entry() const override;
    void typed(int field, std::optional<double> value) override;
    void entered() override;
    InHand inHand() const override;

private:
    /// A corner by what stays when the answers are worked out anew.
    struct Named {
        std::string cutout;
        std::string first;
        std::string second;
        bool operator==(const Named&) const = default;
    };
    struct Found {
        const SolvedCutout* cutout = nullptr;
        const Corner* corner = nullptr;
    };
    std::optional<Named> cornerUnder(const Hand& hand) const;
    Found find(const std::optional<Named>& named) const;

    std::optional<Named> m_under;
    std::optional<Named> m_chosen;
    QString m_trouble;
};

}  // namespace kerfwall
