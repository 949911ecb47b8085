// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace kerfwall {

/// A project that says every field of the project file, version 1, none at its default, with a field
/// nobody knows ("x-...") in every object. Its drawing is sound.
inline constexpr std::string_view kFullProject = R"({
  "format": "kerfwall-project",
  "version": 1,
  "title": "Stall shelf, window \u201cno. 2\u201d",
  "notes": "Two lines\nof notes.",
  "units": "in",
  "panel": {"width": 600, "height": 400.5, "thickness": 18, "material": "birch-plywood",
            "reference_edge": "left", "square_corner": "all", "x-panel": [1, 2.50, "three"]},
  "lines": [
    {"id": "A", "place": {"by": "offset", "from": "bottom", "distance": 80.1, "x-place": null},
     "saw": "rip", "extent": "through", "x-line": true},
    {"id": "B", "place": {"by": "offset", "from": "A", "distance": 120.30000000000001}},
    {"id": "C", "place": {"by": "angle", "from": "bottom", "angle": 90, "through": [200, 0]}},
    {"id": "D", "place": {"by": "mirror", "of": "C", "about": "upright-centre"}},
    {"id": "E-5", "place": {"by": "marks", "a": {"edge": "bottom", "at": 450, "x-a": 1},
                            "b": {"edge": "top", "at": 150, "x-b": {"deep": [{}]}}},
     "cut": false, "drawn_on": "both", "extent": "stopped"},
    {"id": "F_6", "place": {"by": "points", "p": [0, 300], "q": [600, 300.25]}, "cut": false,
     "drawn_on": "back"},
    {"id": "G", "place": {"by": "angle", "from": "A", "angle": -44.5,
                          "through": {"crossing": ["B", "C"], "x-crossing": 7}}, "cut": false},
    {"id": "H", "place": {"by": "mirror", "of": "G", "about": "F_6"}, "cut": false},
    {"id": "I", "place": {"by": "mirror", "of": "F_6", "about": "level-centre"}, "cut": false}
  ],
  "cutouts": [
    {"id": "window", "seeds": [[300, 140], [301.5, 141]],
     "corners": [{"between": ["A", "C"], "bore_radius": 20, "x-bore": 1}],
     "wanted": {"outline": [[210, 90], [390, 90], [390, 190], [210, 190]], "corner_radius": 6.35,
                "x-wanted": "w"},
     "x-cutout": {"a": 1}}
  ],
  "kerf_depth": 6.5,
  "bench": {
    "saws": [
      {"id": "rip", "kind": "rip-fence", "kerf": 3.175, "blade": 250, "repeatability": 0.2,
       "kerf_plus_minus": 0.05, "depth_plus_minus": 0.1, "max_fence": 700, "fence_side": "left", "x-saw": 1},
      {"id": "sled", "kind": "crosscut-sled", "kerf": 2.8, "blade": 251, "repeatability": 0.11, "base": 15,
       "max_cut": 620, "max_stop": 610, "fence_at": "far", "squareness": 0.15},
      {"id": "gauge", "kind": "mitre-gauge", "kerf": 2.9, "blade": 252, "repeatability": 0.21,
       "max_angle": 50, "squareness": 0.25, "stop": false},
      {"id": "rail", "kind": "guide-rail", "kerf": 2, "blade": 165, "repeatability": 0.3, "rail": 5,
       "rail_length": 1500, "rail_width": 200, "rail_side": "right"},
      {"id": "slider", "kind": "sliding-mitre", "kerf": 2.4, "blade": 216, "repeatability": 0.4,
       "max_cut": 310, "max_angle": 55}
    ],
    "trim_bit": {"diameter": 12, "bearing": 12, "bearing_length": 4.5, "cutting_length": 30,
                 "bearing_at": "both", "x-bit": 1},
    "trim_with": "hand",
    "corner_drill": 9,
    "bores": [35, 40],
    "circle_bit": 10,
    "base": 160,
    "clamps": [{"hole": 20, "insert": 30, "reach": 80, "jaw": 25, "x-clamp": 1}],
    "bits": [6, 6.35],
    "bushes": [17, 24],
    "x-bench": 1
  },
  "use": {"by": "bush", "bit": 10, "bearing": 11, "bush": 17, "bush_length": 6, "router": "table",
          "bearing_at": "shank", "cutting_length": 28, "depth": 20,
          "cutters": [{"diameter": 9, "name": "roughing", "depth": 15, "x-cutter": 1}],
          "against_work": "back", "in_kerfs": true, "x-use": 1},
  "clamp_holes": [{"id": "K1", "edge": "left", "at": 60, "diameter": 8, "depth": 40, "height": 10,
                   "x-hole": 1}],
  "fences": [{"along": "left", "offset": 20, "body": "right", "from": 10, "to": 110, "width": 15,
              "height": 12, "groove": 3, "kind": "stop", "face": "back", "x-fence": 1}],
  "workpiece": {"outline": [[100, 20], [500, 20], [500, 380]], "thickness": 22, "grain": 90,
                "parts": [{"outline": [[100, 20], [300, 20], [300, 380]], "grain": 45, "x-part": 1}],
                "x-work": 1},
  "printing": {"paper": "a3", "overlap": 12, "margin": 8, "scale_x": 1.001, "scale_y": 0.999,
               "x-printing": 1},
  "plan": {"prefer": "seen-lines", "held": ["left", "clamps", "work"], "x-plan": 1},
  "limits": {"web-thin": {"care": 6, "stop": 4, "x-limit": 1}, "arm-flex": {"force": 60}},
  "record": [{"line": "A", "from": "bottom", "measured": 80.2, "depth": 6.4, "x-record": 1},
             {"between": ["A", "B"], "measured": 120.25},
             {"bore": ["A", "C"], "diameter": 39.9}],
  "x-project": {"nested": {"kept": [1e-300, -0.0, 12345678901234567890, "\u0000"]}}
})";

}  // namespace kerfwall
