// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/moving.h"
#include "core/geometry/picked.h"
#include "ui/deed.h"
#include "ui/tool.h"

namespace kerfwall {

/// Picks lines, clamp holes, fences and cutouts, one or several, moves what it picked, and takes new numbers for it.
class PickTool : public Tool {
    Q_OBJECT

public:
    PickTool(Session& session, Selection& selection, QObject* parent);

    /// Takes in hand what is to be done to what is picked, its numbers typed in the entry line.
    void begin(DeedKind kind);
    /// What stands in the entry line while something else on the plan is pointed at; "" for nothing.
    void hint(const QString& sentence);
    bool hasDeed() const { return m_deed != nullptr; }

    QString name() const override { return tr("Pick"); }
    void press(const Hand& hand) override;
    void move(const Hand& hand) override;
    void release(const Hand& hand) override;
    bool nudge(Point shift) override;
    void cancel() override;
    void leave() override;
    bool isBusy() const override { return m_deed || (m_pressed && (m_moving || m_band)); }
    EntryState entry() const override;
    void typed(int field, std::optional<double> value) override;
    void chose(int field, int option) override;
    void entered() override;
    InHand inHand() const override;

Q_SIGNALS:
    void finished();  ///< what was in hand is done or left

private:
    void tryDeed();
    void endDeed();
    void pickAt(const Hand& hand);
    void hover(const Hand& hand);
    void stretchBand(const Hand& hand);
    void carry(const Hand& hand);
    QString moveName() const;
    QString setName() const;
    std::optional<Project> withField(const Project& project, int field, double value) const;
    QString rangeOf(int field) const;
    QString sentence() const;

    bool m_pressed = false;
    bool m_moving = false;
    Point m_grabbed;
    Grip m_grip = Grip::Whole;
    bool m_adds = false;         // Shift was held when it was pressed
    Picked m_under;              // what lies under the pointer
    Picked m_held;               // what the press took hold of; nothing: a band begins there
    Picked m_pickedBefore;       // before the band
    QString m_hint;
    std::unique_ptr<Deed> m_deed;
    std::expected<Copies, NoCarrying> m_made = std::unexpected(NoCarrying::NothingNew);  // what comes of it
    std::optional<Point> m_band;  // where the band has come to
};

}  // namespace kerfwall
