// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/says/range.h"

namespace kerfwall {

// What the sizes of tools may be. "Tool sizes" of the project file, version 1.
inline constexpr Range kLength{"a length", 0, 10000};
inline constexpr Range kBitDiameter{"a bit's diameter", 1, 100};
inline constexpr Range kBearingDiameter{"a bearing's diameter", 1, 100};
inline constexpr Range kBushDiameter{"a guide bush's outside diameter", 1, 100};
inline constexpr Range kDrillDiameter{"a drill's or bore's diameter", 1, 300};
inline constexpr Range kKerf{"a kerf's width", 0.5, 10};
inline constexpr Range kBlade{"a blade's diameter", 80, 450};
inline constexpr Range kPlusMinus{"a tolerance", 0, 100};
inline constexpr Range kSquareness{"a squareness", 0, 100, " mm per m"};
inline constexpr Range kSawAngle{"a saw's largest angle", 0, 90, "°"};
inline constexpr Range kBearingLength{"a bearing's length", 0, 100, " mm", true};
inline constexpr Range kCuttingLength{"a cutting length", 0, 300, " mm", true};
inline constexpr Range kRouterBase{"a router base's diameter", 0, 1000, " mm", true};
inline constexpr Range kBushLength{"a bush's length", 0, 100, " mm", true};
inline constexpr Range kCutDepth{"a cut's depth", 0, 1000, " mm", true};

}  // namespace kerfwall
