// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/deed.h"

#include <QCoreApplication>

#include "core/geometry/nearest.h"
#include "core/geometry/picking.h"
#include "ui/picked_text.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr int kMostCopies = 20;

QString text(const char* source) { return QCoreApplication::translate("kerfwall::Deed", source); }

EntryField lengthField(const QString& label, double value) { return {EntryField::Kind::Length, label, value, {}, 0}; }

class MoveDeed : public Deed {
public:
    using Deed::Deed;
    QString name() const override { return text("Move %1").arg(pickedText(ground().picked)); }
    QString sentence() const override { return text("Type how far to the right and up; a minus goes the other way. Enter moves it, Esc leaves it."); }
    std::vector<EntryField> fields() const override { return {lengthField(text("Move right"), m_shift.x), lengthField(text("up"), m_shift.y)}; }
    void typed(int field, double value) override { (field == 0 ? m_shift.x : m_shift.y) = value; }
    bool isMeant() const override { return m_shift != Point{}; }
    std::expected<Copies, NoCarrying> done() const override { return carry(shiftBy(m_shift)); }

private:
    Point m_shift;
};

class TurnDeed : public Deed {
public:
    explicit TurnDeed(DeedGround ground) : Deed(std::move(ground)) {
        const Box box = boundsOf(this->ground().project, this->ground().solved, this->ground().picked);
        m_about = tidied(0.5 * (box.low + box.high));
    }
    QString name() const override { return text("Turn %1").arg(pickedText(ground().picked)); }
    QString sentence() const override {
        return text("Type the angle, anticlockwise, and the place it turns about, or click that place. Enter turns it, Esc leaves it.");
    }
    std::vector<EntryField> fields() const override {
        return {{EntryField::Kind::Angle, text("Turn by"), m_angle, {}, 0}, lengthField(text("about x"), m_about.x), lengthField(text("y"), m_about.y)};
    }
    void typed(int field, double value) override { (field == 0 ? m_angle : field == 1 ? m_about.x : m_about.y) = value; }
    void pointed(Point at, double) override { m_about = at; }
    bool isMeant() const override { return m_angle != 0; }
    std::expected<Copies, NoCarrying> done() const override { return carry(turnAbout(m_about, m_angle)); }
    std::optional<Point> about() const override { return m_about; }

private:
    double m_angle = 0;
    Point m_about;
};

class MirrorDeed : public Deed {
public:
    explicit MirrorDeed(DeedGround ground) : Deed(std::move(ground)) {
        m_axes = {Centre::Upright, Centre::Level};
        for (const SolvedLine& line : this->ground().solved.lines) m_axes.emplace_back(line.id);
    }
    QString name() const override { return text("Mirror %1").arg(pickedText(ground().picked)); }
    QString sentence() const override {
        return text("Choose what it is mirrored about, or click a line. A copy that follows moves with what it mirrors. Enter mirrors it, Esc leaves it.");
    }
    std::vector<EntryField> fields() const override {
        QStringList axes{text("the upright centre"), text("the level centre")};
        for (std::size_t i = 2; i < m_axes.size(); ++i) axes << baseText(std::get<LineId>(m_axes[i]));
        return {{EntryField::Kind::Choice, text("Mirror about"), {}, axes, m_axis},
                {EntryField::Kind::Choice, text("as"), {}, {text("a copy that follows"), text("a copy of its own"), text("itself turned over")}, m_how}};
    }
    void chose(int field, int option) override { (field == 0 ? m_axis : m_how) = option; }
    void pointed(Point at, double reach) override {
        const auto line = lineNear(ground().solved, at, reach);
        for (std::size_t i = 2; line && i < m_axes.size(); ++i) {
            if (std::get<LineId>(m_axes[i]) == line->id) m_axis = static_cast<int>(i);
        }
    }
    bool isMeant() const override { return true; }
    std::expected<Copies, NoCarrying> done() const override {
        const auto& axis = m_axes.at(static_cast<std::size_t>(m_axis));
        if (m_how == 0) return mirroredCopies(things(), axis, ground().highestLine);
        const auto motion = mirroring(ground().project.panel, ground().solved, axis);
        if (!motion) return std::unexpected(NoCarrying::NothingNew);
        if (m_how == 2) return carry(*motion);
        return copiedOnto(ground().project, things(), {*motion}, ground().highestLine);
    }

private:
    std::vector<std::variant<Centre, LineId>> m_axes;
    int m_axis = 0;
    int m_how = 0;
};

class CopyDeed : public Deed {
public:
    using Deed::Deed;
    QString name() const override { return text("Copy %1").arg(pickedText(ground().picked)); }
    QString sentence() const override {
        return text("Type how far each copy lies from the one before, to the right and up, and how many. Enter makes them, Esc leaves it.");
    }
    std::vector<EntryField> fields() const override {
        QStringList counts;
        for (int i = 1; i <= kMostCopies; ++i) counts << QString::number(i);
        return {lengthField(text("Copy to the right"), m_shift.x), lengthField(text("up"), m_shift.y),
                {EntryField::Kind::Choice, text("copies"), {}, counts, m_count - 1}};
    }
    void typed(int field, double value) override { (field == 0 ? m_shift.x : m_shift.y) = value; }
    void chose(int, int option) override { m_count = option + 1; }
    bool isMeant() const override { return m_shift != Point{}; }
    std::expected<Copies, NoCarrying> done() const override {
        std::vector<Motion> motions;
        for (int i = 1; i <= m_count; ++i) motions.push_back(shiftBy(i * m_shift));
        return copiedOnto(ground().project, things(), motions, ground().highestLine);
    }

private:
    Point m_shift;
    int m_count = 1;
};

}  // namespace

std::expected<Copies, NoCarrying> Deed::carry(const Motion& motion) const {
    auto next = carried(m_ground.project, m_ground.solved, m_ground.picked, motion);
    if (!next) return std::unexpected(next.error());
    return Copies{std::move(*next), m_ground.picked};
}

std::unique_ptr<Deed> makeDeed(DeedKind kind, DeedGround ground) {
    switch (kind) {
        case DeedKind::Move: return std::make_unique<MoveDeed>(std::move(ground));
        case DeedKind::Turn: return std::make_unique<TurnDeed>(std::move(ground));
        case DeedKind::Mirror: return std::make_unique<MirrorDeed>(std::move(ground));
        case DeedKind::Copy: return std::make_unique<CopyDeed>(std::move(ground));
    }
    return nullptr;
}

QString whyNot(NoCarrying why) {
    switch (why) {
        case NoCarrying::OffThePanel: return text("A line would lie off the panel; take a shorter way or another place to turn about.");
        case NoCarrying::HoleOffEdges: return text("A clamp hole is bored square from an edge; turn it by quarters, or leave it out with Shift and a click.");
        case NoCarrying::FenceAlone: return text("Nothing runs along the fence there; turn it together with the line it runs along, or by quarters.");
        case NoCarrying::NothingNew: return text("It would lie where the same lies already; take another distance or another line to mirror about.");
    }
    return {};
}

}  // namespace kerfwall
