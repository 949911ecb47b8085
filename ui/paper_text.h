// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QCoreApplication>
#include <QPainter>
#include <QString>

#include "core/drawing/drawing.h"

namespace kerfwall {

/// Texts of the papers, for translation.
struct PaperWords {
    Q_DECLARE_TR_FUNCTIONS(PaperWords)
};

/// How a text is lettered on a page whose painter counts in mm.
struct Lettering {
    double height = 3.5;  ///< mm, the font's size
    bool bold = false;
    QColor colour = Qt::black;
    Anchor anchor = Anchor::Left;
    double turn = 0;  ///< degrees anticlockwise
};

/// The width of a text, mm.
[[nodiscard]] double widthOf(const QString& text, const Lettering& lettering);

/// Writes one line, its baseline at `at`.
void writeText(QPainter& painter, QPointF at, const QString& text, const Lettering& lettering);

/// The text broken at its line breaks, and at its spaces so that no line is wider than `width` mm; a longer word is cut.
[[nodiscard]] QStringList brokenLines(const QString& text, double width, const Lettering& lettering);

/// The text with an ellipsis where it is wider than `width` mm.
[[nodiscard]] QString shortened(const QString& text, double width, const Lettering& lettering);

/// The sentence for a paper's file that could not be written.
[[nodiscard]] QString unwrittenSentence(const QString& path, const QString& why);

inline constexpr double kLineStep = 1.35;  ///< from one line of a paragraph to the next, in its height

}  // namespace kerfwall
