// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <cstddef>
#include <optional>
#include <string>

#include "core/says/layout_line.h"

namespace kerfwall {

/// What the maker has picked: one line, one clamp hole or one cutout, or nothing.
class Selection : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    const LineId& line() const { return m_line; }      ///< "" for none
    const std::string& cutout() const { return m_cutout; }  ///< "" for none
    std::optional<std::size_t> hole() const { return m_hole; }
    bool isEmpty() const { return m_line.empty() && m_cutout.empty() && !m_hole; }

    void pickLine(const LineId& id) { pick(id, {}, {}); }
    void pickCutout(const std::string& id) { pick({}, id, {}); }
    void pickHole(std::size_t index) { pick({}, {}, index); }
    void clear() { pick({}, {}, {}); }

Q_SIGNALS:
    void changed();

private:
    void pick(const LineId& line, const std::string& cutout, std::optional<std::size_t> hole) {
        if (line == m_line && cutout == m_cutout && hole == m_hole) return;
        m_line = line;
        m_cutout = cutout;
        m_hole = hole;
        Q_EMIT changed();
    }

    LineId m_line;
    std::string m_cutout;
    std::optional<std::size_t> m_hole;
};

}  // namespace kerfwall
