// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

#include "core/shop/finding.h"

namespace kerfwall {

enum class PaletteKind { Light, Dark, Paper };

/// The colours of a drawing, from the Okabe-Ito set, darkened or lightened where a line would not stand
/// 3 : 1 against the ground or the board. No colour is the only signal: line types and signs say the same.
/// Source    Okabe and Ito, Color Universal Design; contrast by WCAG 2.2, 1.4.11.
struct Palette {
    PaletteKind kind = PaletteKind::Light;
    QColor ground;  ///< the sheet itself
    QColor board;   ///< the panel
    QColor ink;     ///< visible edges, layout lines, the template
    QColor text;
    QColor faint;     ///< dimensions, rulers, projection lines: 4.5 : 1 on the ground
    QColor hatch;     ///< hatching: never the only signal, so it may be quieter
    QColor kerf;      ///< filled kerf bands
    QColor work;      ///< the opening in the work, the workpiece
    QColor tool;      ///< what the hand moves: selection, cutting line
    QColor toolFill;  ///< the same as a quiet fill
    QColor stop;
    QColor care;
    QColor note;
    bool operator==(const Palette&) const = default;
};

[[nodiscard]] Palette paletteOf(PaletteKind kind);

/// The colour of a severity's sign.
[[nodiscard]] QColor signColour(const Palette& palette, Severity severity);

/// How strongly two colours stand apart, 1 to 21.
/// Source    WCAG 2.2, contrast ratio.
[[nodiscard]] double contrast(const QColor& first, const QColor& second);

}  // namespace kerfwall
