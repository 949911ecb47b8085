// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/palette.h"

#include <algorithm>
#include <cmath>

namespace kerfwall {
namespace {

// Okabe-Ito: blue 0072B2, vermillion D55E00, green 009E73, purple CC79A7, orange E69F00, sky 56B4E9.
Palette lightPalette() {
    Palette palette;
    palette.kind = PaletteKind::Light;
    palette.ground = QColor(0xf6, 0xf5, 0xf1);
    palette.board = QColor(0xe9, 0xdf, 0xcb);
    palette.ink = QColor(0x1a, 0x1a, 0x1a);
    palette.text = QColor(0x1f, 0x1f, 0x1f);
    palette.faint = QColor(0x55, 0x55, 0x50);
    palette.hatch = QColor(0xb9, 0xb3, 0xa6);
    palette.kerf = QColor(0xaf, 0xc1, 0xc4);
    palette.work = QColor(0x00, 0x5f, 0x95);  // blue, darkened
    palette.tool = QColor(0xb3, 0x4f, 0x00);  // vermillion, darkened
    palette.toolFill = QColor(0xe8, 0xf0, 0xf8);
    palette.stop = QColor(0xb5, 0x3a, 0x00);  // vermillion, darkened
    palette.care = QColor(0x9a, 0x5b, 0x00);  // orange, darkened
    palette.note = QColor(0x00, 0x5f, 0x95);  // blue, darkened
    return palette;
}

Palette darkPalette() {
    Palette palette;
    palette.kind = PaletteKind::Dark;
    palette.ground = QColor(0x1e, 0x1f, 0x21);
    palette.board = QColor(0x3a, 0x35, 0x2c);
    palette.ink = QColor(0xee, 0xec, 0xe6);
    palette.text = QColor(0xe8, 0xe6, 0xe0);
    palette.faint = QColor(0xb4, 0xb2, 0xaa);
    palette.hatch = QColor(0x66, 0x63, 0x5a);
    palette.kerf = QColor(0x4d, 0x67, 0x70);
    palette.work = QColor(0x56, 0xb4, 0xe9);  // sky
    palette.tool = QColor(0xf0, 0x8a, 0x3c);  // vermillion, lightened
    palette.toolFill = QColor(0x25, 0x35, 0x44);
    palette.stop = QColor(0xff, 0x8a, 0x4a);  // vermillion, lightened
    palette.care = QColor(0xe6, 0x9f, 0x00);  // orange
    palette.note = QColor(0x7c, 0xc4, 0xee);  // sky, lightened
    return palette;
}

Palette printedPalette() {
    Palette palette = lightPalette();
    palette.kind = PaletteKind::Paper;
    palette.ground = Qt::white;
    palette.board = QColor(0xf4, 0xee, 0xe1);
    palette.ink = Qt::black;
    palette.text = Qt::black;
    palette.faint = QColor(0x4a, 0x4a, 0x4a);
    palette.hatch = QColor(0xa0, 0xa0, 0xa0);
    palette.kerf = QColor(0xc3, 0xd3, 0xd8);
    return palette;
}

/// Source    WCAG 2.2, relative luminance.
double luminance(const QColor& colour) {
    const auto linear = [](double channel) {
        return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

}  // namespace

Palette paletteOf(PaletteKind kind) {
    switch (kind) {
        case PaletteKind::Light:
            return lightPalette();
        case PaletteKind::Dark:
            return darkPalette();
        case PaletteKind::Paper:
            break;
    }
    return printedPalette();
}

QColor signColour(const Palette& palette, Severity severity) {
    if (severity == Severity::Stop) return palette.stop;
    return severity == Severity::Care ? palette.care : palette.note;
}

double contrast(const QColor& first, const QColor& second) {
    const double a = luminance(first);
    const double b = luminance(second);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

}  // namespace kerfwall
