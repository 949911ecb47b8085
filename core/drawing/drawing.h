// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/geometry/outline.h"
#include "core/geometry/point.h"
#include "core/says/layout_line.h"

namespace kerfwall {

/// What a stroke stands for. The painter gives each its line type (ISO 128), width and colour.
enum class Ink {
    PanelEdge,      ///< visible edge: wide, continuous
    PanelFill,      ///< the board itself
    LayoutLine,     ///< narrow, continuous
    FootLine,       ///< a mark only: narrow, long-dash-dot
    BackLine,       ///< drawn on the back: narrow, dashed
    StrayLine,      ///< lies on another line or off the panel: narrow, dotted
    KerfBand,       ///< filled band
    RunOut,         ///< the shallow end of a stopped kerf: narrow, dashed
    DrawnCutout,    ///< narrow, dashed
    Template,       ///< the opening's outline: wide, continuous
    Waste,          ///< hatched fill of the opening
    Work,           ///< opening in the work: narrow, dash
    Workpiece,      ///< narrow long-dash, double dot
    EdgeTick,       ///< edge mark outside the panel
    WasteTick,      ///< on which side of the line the kerf lies
    ReferenceEdge,  ///< ground-line hatching under the reference edge
    Centre,         ///< narrow, long-dash-dot
    CuttingPlane,   ///< long-dash-dot with wide ends
    Dimension,      ///< narrow, continuous, with arrow heads
    Hidden,         ///< narrow, dashed
    Wood,           ///< hatched fill of a cut section
    ReliefHole,
    ClampHole,
    FenceBody,
    FindingStop,
    FindingCare,
    FindingNote,
    Text,
    FaintText,
    Projection,  ///< thin lines that join plan and side view
    Here,        ///< what the step shown does: hatched close, no border
    HereEdge,    ///< its border: wide, continuous
    Opened,      ///< what is open through the panel: filled with the ground, no border
    Machine,     ///< fence, stop, wedge: hatched
    Rail,        ///< a guide rail: its border alone, what lies under it shows
    Blade,       ///< filled
    Arrow,       ///< filled
    SheetEdge,   ///< border of a sheet of paper laid on the panel: narrow, continuous
    SheetJoint,  ///< ... where another sheet is joined: narrow, dashed
};

struct Stroke {
    Ink ink = Ink::LayoutLine;
    Point from;
    Point to;
    std::string id;  ///< what it belongs to ("A"); "" for none
    bool operator==(const Stroke&) const = default;
};

/// A closed area: loops filled by the even-odd rule, stroked or filled as the ink says.
struct Area {
    Ink ink = Ink::KerfBand;
    std::vector<OutlineLoop> loops;
    std::string id;
    bool operator==(const Area&) const = default;
};

/// A round hole; with a finding's ink its sign, which keeps its size on paper and screen (id: its number).
struct Circle {
    Ink ink = Ink::ReliefHole;
    Point centre;
    double radius = 0;
    std::string id;
    bool operator==(const Circle&) const = default;
};

enum class Anchor { Left, Middle, Right };

/// A text whose size is in mm on paper; on the screen it keeps a readable size.
struct Label {
    Ink ink = Ink::Text;
    Point at;  ///< baseline's left end, middle or right end
    std::string text;
    double height = 3.5;
    Anchor anchor = Anchor::Middle;
    double turn = 0;  ///< degrees anticlockwise
    std::string id;
    bool operator==(const Label&) const = default;
};

/// A dimension between two places, its line `offset` mm to the left of from -> to.
struct Dimension {
    Point from;
    Point to;
    double offset = 0;
    std::string text;  ///< "": the line alone
    std::string id;
    std::optional<std::pair<Base, Base>> between{};  ///< the edge or line it starts on, and the one it ends on
    bool operator==(const Dimension&) const = default;
};

using Mark = std::variant<Area, Stroke, Circle, Dimension, Label>;

/// A drawing in millimetres, y up, painted in the order of its marks. The one thing behind the screen,
/// the PDF, the SVG and the picture.
struct Drawing {
    Box bounds;
    std::vector<Mark> marks;
    bool operator==(const Drawing&) const = default;
};

}  // namespace kerfwall
