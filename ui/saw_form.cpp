// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of one saw, by its kind; declared in bench_rows.h.
#include <cmath>

#include "core/says/changing_bench.h"
#include "core/says/tool_ranges.h"
#include "core/shop/five_cuts.h"
#include "ui/bench_rows.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

/// Rows that read and write one saw of the bench. A saw that is gone reads as nothing: its form goes too.
class SawRows {
  public:
    SawRows(SheetForm& form, std::size_t saw) : m_form(form), m_saw(saw) {}

    void addName();
    void addCommon();
    void addOwn(SawKind kind);

  private:
    LengthRow row(const QString& label, const char* name, const Range& range, double Saw::*size) const;
    void addSize(const QString& label, const char* name, const Range& range, double Saw::*size);
    void addFine(const QString& label, const char* name, const Range& range, double Saw::*size);
    void addAngle();
    void addFiveCuts();
    void addFlag(const QString& label, const char* name, const QStringList& options, const std::function<bool(const Saw&)>& read,
                 const std::function<void(Saw&, bool)>& write);

    SheetForm& m_form;
    std::size_t m_saw;
};

QString stepText() { return SheetForm::tr("Set a saw"); }

LengthRow SawRows::row(const QString& label, const char* name, const Range& range, double Saw::*size) const {
    LengthRow row;
    static_cast<FormRow&>(row) = {label, QString::fromLatin1(name), stepText()};
    row.setRange(range);
    row.read = [saw = m_saw, size](const Project& project) {
        const auto& saws = benchOf(project).saws;
        return saw < saws.size() ? std::optional(saws[saw].*size) : std::nullopt;
    };
    row.write = [saw = m_saw, size](Project& project, std::optional<double> value) {
        ownBench(project).saws.at(saw).*size = *value;
    };
    row.refusal = bladeRefusal;
    return row;
}

void SawRows::addSize(const QString& label, const char* name, const Range& range, double Saw::*size) {
    m_form.addLength(row(label, name, range, size));
}

void SawRows::addFine(const QString& label, const char* name, const Range& range, double Saw::*size) {
    LengthRow fine = row(label, name, range, size);
    fine.inMillimetres = true;
    m_form.addLength(fine);
}

void SawRows::addAngle() {
    LengthRow angle = row(SheetForm::tr("Largest angle"), "sawMaxAngle", kSawAngle, &Saw::maxAngle);
    angle.isAngle = true;
    m_form.addLength(angle);
}

/// The test's three lengths typed in a row: what comes of them is the sled's squareness.
void SawRows::addFiveCuts() {
    TextRow cuts;
    static_cast<FormRow&>(cuts) = {SheetForm::tr("From a five-cut test: the strip's width away from the fence; its width by the fence; "
                                                 "its length"),
                                   QStringLiteral("sawFiveCuts"), SheetForm::tr("Set the sled's squareness")};
    cuts.read = [](const Project&) { return QString(); };
    cuts.write = [saw = m_saw](Project& project, const QString& text) {
        const auto stray = strayFromText(text.toStdString(), project.units);
        if (!stray) return QString::fromStdString(stray.error());
        ownBench(project).saws.at(saw).squareness = std::abs(*stray);
        return QString();
    };
    m_form.addText(cuts);
}

void SawRows::addFlag(const QString& label, const char* name, const QStringList& options,
                      const std::function<bool(const Saw&)>& read, const std::function<void(Saw&, bool)>& write) {
    ChoiceRow flag;
    static_cast<FormRow&>(flag) = {label, QString::fromLatin1(name), stepText()};
    flag.options = [options](const Project&) { return options; };
    flag.read = [saw = m_saw, read](const Project& project) {
        const auto& saws = benchOf(project).saws;
        return saw < saws.size() && read(saws[saw]) ? 1 : 0;
    };
    flag.write = [saw = m_saw, write](Project& project, int option) { write(ownBench(project).saws.at(saw), option == 1); };
    m_form.addChoice(flag);
}

void SawRows::addName() {
    TextRow name;
    static_cast<FormRow&>(name) = {SheetForm::tr("Name"), QStringLiteral("sawName"), SheetForm::tr("Name a saw")};
    name.read = [saw = m_saw](const Project& project) {
        const auto& saws = benchOf(project).saws;
        return saw < saws.size() ? QString::fromStdString(saws[saw].id) : QString();
    };
    name.write = [saw = m_saw](Project& project, const QString& text) {
        auto next = withSawCalled(project, saw, text.trimmed().toStdString());
        if (!next) return QString::fromStdString(next.error());
        project = std::move(*next);
        return QString();
    };
    m_form.addText(name);
}

void SawRows::addCommon() {
    addSize(SheetForm::tr("Width of its kerf"), "sawKerf", kKerf, &Saw::kerf);
    addSize(SheetForm::tr("Blade, across"), "sawBlade", kBlade, &Saw::blade);
    addFine(SheetForm::tr("Its setting repeats within ±"), "sawRepeatability", kPlusMinus, &Saw::repeatability);
    addFine(SheetForm::tr("Its kerf varies by ±"), "sawKerfPlusMinus", kPlusMinus, &Saw::kerfPlusMinus);
    addFine(SheetForm::tr("Its depth varies by ±"), "sawDepthPlusMinus", kPlusMinus, &Saw::depthPlusMinus);
}

void SawRows::addOwn(SawKind kind) {
    const QString squareness = SheetForm::tr("Square within ± over a metre");
    const QStringList sides{SheetForm::tr("on the left"), SheetForm::tr("on the right")};
    const QString longest = SheetForm::tr("Longest cut");
    switch (kind) {
        case SawKind::RipFence:
            addSize(SheetForm::tr("Fence goes out to"), "sawMaxFence", kLength, &Saw::maxFence);
            addFlag(SheetForm::tr("Fence stands beside the blade"), "sawFenceSide", sides,
                    [](const Saw& saw) { return saw.fenceSide == Side::Right; },
                    [](Saw& saw, bool right) { saw.fenceSide = right ? Side::Right : Side::Left; });
            return;
        case SawKind::CrosscutSled:
            addSize(SheetForm::tr("Thickness of its base"), "sawBase", kLength, &Saw::base);
            addSize(longest, "sawMaxCut", kLength, &Saw::maxCut);
            addSize(SheetForm::tr("Stop goes out to"), "sawMaxStop", kLength, &Saw::maxStop);
            addFine(squareness, "sawSquareness", kSquareness, &Saw::squareness);
            addFiveCuts();
            addFlag(SheetForm::tr("Its fence stands"), "sawFenceAt",
                    {SheetForm::tr("before the blade"), SheetForm::tr("beyond the blade")},
                    [](const Saw& saw) { return saw.fenceFar; }, [](Saw& saw, bool far) { saw.fenceFar = far; });
            return;
        case SawKind::MitreGauge:
            addAngle();
            addFine(squareness, "sawSquareness", kSquareness, &Saw::squareness);
            addFlag(SheetForm::tr("Carries a stop"), "sawStop", {SheetForm::tr("no"), SheetForm::tr("yes")},
                    [](const Saw& saw) { return saw.stop; }, [](Saw& saw, bool stop) { saw.stop = stop; });
            return;
        case SawKind::GuideRail:
            addSize(SheetForm::tr("Rail's thickness to add to the depth"), "sawRail", kLength, &Saw::rail);
            addSize(SheetForm::tr("Length of the rail"), "sawRailLength", kLength, &Saw::railLength);
            addSize(SheetForm::tr("Width of the rail"), "sawRailWidth", kLength, &Saw::railWidth);
            addFlag(SheetForm::tr("Rail lies beside the cut"), "sawRailSide", sides,
                    [](const Saw& saw) { return saw.railSide == Side::Right; },
                    [](Saw& saw, bool right) { saw.railSide = right ? Side::Right : Side::Left; });
            return;
        case SawKind::SlidingMitre:
            addSize(longest, "sawMaxCut", kLength, &Saw::maxCut);
            addAngle();
            return;
    }
}

}  // namespace

QString sawKindText(SawKind kind) {
    switch (kind) {
        case SawKind::RipFence: return SheetForm::tr("Rip fence");
        case SawKind::CrosscutSled: return SheetForm::tr("Crosscut sled");
        case SawKind::MitreGauge: return SheetForm::tr("Mitre gauge");
        case SawKind::GuideRail: return SheetForm::tr("Guide rail");
        case SawKind::SlidingMitre: return SheetForm::tr("Sliding mitre saw");
    }
    return {};
}

QString sawHeading(const Saw& saw, Units units) {
    return SheetForm::tr("%1: %2, kerf %3").arg(QString::fromStdString(saw.id), sawKindText(saw.kind), lengthUnitFor(saw.kerf, units));
}

SheetForm* makeSawForm(Session& session, std::size_t saw, QWidget* parent) {
    auto* form = new SheetForm({}, session, parent, SheetForm::Kind::Part);
    SawRows rows(*form, saw);
    rows.addName();
    rows.addCommon();
    rows.addOwn(benchOf(session.project()).saws.at(saw).kind);
    return form;
}

}  // namespace kerfwall
