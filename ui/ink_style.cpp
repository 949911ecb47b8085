// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/ink_style.h"

namespace kerfwall {
namespace {

// ISO 128 line types, dash and gap lengths in mm on paper.
const std::vector<double> kDashed{2.5, 1.2};
const std::vector<double> kShortDashed{1.4, 1.0};
const std::vector<double> kLongDashDot{7, 1.2, 0.6, 1.2};
const std::vector<double> kLongDashTwoDots{7, 1.2, 0.6, 1.2, 0.6, 1.2};
const std::vector<double> kDotted{0.5, 1.5};

}  // namespace

/// On paper so dark that it stands out in black and white too.
static QColor hereColour(const Palette& palette) {
    constexpr int kDarker = 170;  // percent
    return palette.kind == PaletteKind::Paper ? palette.tool.darker(kDarker) : palette.tool;
}

LineType lineType(Ink ink, const Palette& palette) {
    switch (ink) {
        case Ink::PanelEdge:
        case Ink::Template:
        case Ink::Wood:
            return {palette.ink, true, {}};
        case Ink::PanelFill:
        case Ink::LayoutLine:
        case Ink::ReliefHole:
        case Ink::ClampHole:
        case Ink::FenceBody:
        case Ink::EdgeTick:
        case Ink::ReferenceEdge:
        case Ink::Text:
            return {palette.ink, false, {}};
        case Ink::WasteTick:
            return {palette.ink, true, {}};
        case Ink::FootLine:
            return {palette.ink, false, kLongDashDot};
        case Ink::BackLine:
            return {palette.ink, false, kDashed};
        case Ink::StrayLine:
            return {palette.stop, false, kDotted};
        case Ink::KerfBand:
            return {palette.faint, false, kShortDashed};
        case Ink::RunOut:
            return {palette.faint, false, kShortDashed};
        case Ink::DrawnCutout:
            return {palette.ink, false, kDashed};
        case Ink::Waste:
            return {palette.hatch, false, {}};
        case Ink::Work:
            return {palette.work, false, kDashed};
        case Ink::Workpiece:
            return {palette.work, false, kLongDashTwoDots};
        case Ink::Centre:
            return {palette.faint, false, kLongDashDot};
        case Ink::CuttingPlane:
            return {palette.tool, false, kLongDashDot};
        case Ink::Dimension:
            return {palette.faint, false, {}};
        case Ink::Hidden:
            return {palette.ink, false, kDashed};
        case Ink::FindingStop:
            return {palette.stop, true, {}};
        case Ink::FindingCare:
            return {palette.care, true, {}};
        case Ink::FindingNote:
            return {palette.note, true, {}};
        case Ink::FaintText:
            return {palette.faint, false, {}};
        case Ink::Projection:
            return {palette.hatch, false, kDotted};
        case Ink::Here:
            return {hereColour(palette), false, {}};
        case Ink::HereEdge:
            return {hereColour(palette), true, {}};
        case Ink::Opened:
            return {palette.ground, false, {}};
        case Ink::Machine:
        case Ink::Blade:
            return {palette.ink, false, {}};
        case Ink::Arrow:
            return {palette.ink, true, {}};
        case Ink::Rail:
            return {palette.ink, false, kLongDashTwoDots};
        case Ink::SheetEdge:
            return {palette.tool, false, {}};
        case Ink::SheetJoint:
            return {palette.tool, false, kDashed};
    }
    return {palette.ink, false, {}};
}

AreaStyle areaStyle(Ink ink, const Palette& palette) {
    switch (ink) {
        case Ink::PanelFill:
            return {palette.board, {}};
        case Ink::KerfBand:
            return {palette.kerf, {}};
        case Ink::Waste:
            return {palette.ground, palette.hatch};
        case Ink::Wood:
            return {palette.board, palette.hatch, 2, 45, true};
        case Ink::FenceBody:
            return {{}, palette.hatch, 2.4, -45, true};
        case Ink::ClampHole:
            return {palette.ground, {}, 3, 45, true};
        case Ink::Here:
            return {palette.toolFill, hereColour(palette), 1.4, 60};
        case Ink::Opened:
            return {palette.ground, {}};
        case Ink::Machine:
            return {palette.ground, palette.faint, 1.8, -45, true};
        case Ink::Blade:
        case Ink::Arrow:
            return {palette.ink, {}};
        default:
            break;
    }
    return {{}, {}, 3, 45, true};
}

Severity severityOf(Ink ink) {
    if (ink == Ink::FindingStop) return Severity::Stop;
    return ink == Ink::FindingCare ? Severity::Care : Severity::Note;
}

}  // namespace kerfwall
