// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>

namespace kerfwall {

inline constexpr int kLetteringSize = 100;  ///< units of the font's height in `letteringFont`

/// The one font of drawings and papers, DejaVu Sans, `kLetteringSize` units high: texts are scaled from
/// it, so that their widths do not depend on where they are shown.
[[nodiscard]] inline QFont letteringFont(bool bold = false) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(kLetteringSize);
    font.setBold(bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

}  // namespace kerfwall
