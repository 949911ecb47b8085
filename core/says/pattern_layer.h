// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace kerfwall {

/// What of the full-size pattern may be left out; the layout lines themselves and the panel's edges always stand.
enum class PatternLayer {
    Kerfs,       ///< far sides of the kerf bands
    RunOut,      ///< shallow ends of stopped kerfs
    Waste,       ///< hatching of what is removed
    Template,    ///< finished outline of the opening
    Work,        ///< what is cut in the work
    Centres,     ///< centre lines through each cutout
    Holes,       ///< bores and relief holes with their centres
    Tangents,    ///< where trimming stops at bored corners
    ClampHoles,  ///< hidden lines
    Fences,
    Reference,  ///< reference edge and true corners
    EdgeMarks,  ///< towards which side of a line the waste lies
    Names,      ///< of the lines
};

}  // namespace kerfwall
