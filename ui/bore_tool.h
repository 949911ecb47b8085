// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/boring.h"
#include "ui/tool.h"

namespace kerfwall {

/// Gives a cutout's corner a bore radius: by a click, by dragging its arc, typed, or with plus and minus.
class BoreTool : public Tool {
    Q_OBJECT

public:
    using Tool::Tool;

    QString name() const override { return tr("Bore a corner"); }
    void press(const Hand& hand) override;
    void move(const Hand& hand) override;
    void release(const Hand& hand) override;
    bool nudge(Point shift) override;
    bool takesArrows() const override { return !m_dragging; }
    bool grow(int steps) override;
    std::optional<bool> tab(bool next) override;
    void leave() override;
    void cancel() override;
    bool isBusy() const override { return m_chosen.has_value(); }
    bool takesNumbers() const override { return m_dragging; }
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
    std::optional<Named> cornerUnder(const Hand& hand);
    static Found find(const Solved& solved, const std::optional<Named>& named);
    std::vector<Named> corners() const;
    QString stepName() const;
    double fineStep() const;
    double radiusNow() const;
    void drag(const Hand& hand);
    void set(const HeldRadius& held);
    QString note(const Corner& corner) const;
    QString draggingSentence() const;

    std::optional<Named> m_under;
    std::optional<Named> m_chosen;
    bool m_pressed = false;
    bool m_dragging = false;
    bool m_byArc = false;    // taken hold of by its arc, else by its point
    Point m_grabbed;
    HeldRadius m_held;       // while dragging
    std::optional<Point> m_at;  // the pointer; none: told beside the corner
    QString m_trouble;
};

}  // namespace kerfwall
