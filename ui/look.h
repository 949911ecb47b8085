// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

class QApplication;

namespace kerfwall {

enum class Look { System, Light, Dark };

/// The window's own colours; the drawing's are the painter's.
struct WindowColours {
    bool dark = false;
    QColor desk;        ///< behind the drawing
    QColor strip;       ///< header, tools, entry line
    QColor column;      ///< job card
    QColor rule;        ///< thin lines between them
    QColor field;       ///< the border of a field or a button
    QColor ink;
    QColor faint;
    QColor accent;      ///< what is picked or in hand
    QColor accentTint;
    QColor stop;
    QColor stopTint;
    QColor care;
    QColor careTint;
};

/// Dresses the whole application. System: as the desktop was when the program started.
void wear(QApplication& application, Look look);

/// The colours worn now.
[[nodiscard]] const WindowColours& colours();

}  // namespace kerfwall
