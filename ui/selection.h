// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <cstddef>
#include <optional>
#include <string>

#include "core/geometry/picked.h"

namespace kerfwall {

/// What the maker has picked: nothing, one thing, or several together.
class Selection : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    const Picked& picked() const { return m_picked; }
    bool isEmpty() const { return m_picked.isEmpty(); }

    /// The one thing picked, where it is a line, a cutout, a clamp hole or a fence; none where there are several.
    LineId line() const { return isOne() && !m_picked.lines.empty() ? m_picked.lines.front() : LineId{}; }
    std::string cutout() const { return isOne() && !m_picked.cutouts.empty() ? m_picked.cutouts.front() : std::string{}; }
    std::optional<std::size_t> hole() const { return only(m_picked.holes); }
    std::optional<std::size_t> fence() const { return only(m_picked.fences); }

    void pick(const Picked& picked) {
        if (picked == m_picked) return;
        m_picked = picked;
        Q_EMIT changed();
    }
    void pickLine(const LineId& id) { pick(onlyLine(id)); }
    void pickCutout(const std::string& id) { pick(onlyCutout(id)); }
    void pickHole(std::size_t index) { pick(onlyHole(index)); }
    void pickFence(std::size_t index) { pick(onlyFence(index)); }
    /// Adds a thing to what is picked, or takes it out where it is there already.
    void turnRound(const Picked& thing) { pick(holds(m_picked, thing) ? without(m_picked, thing) : with(m_picked, thing)); }
    void clear() { pick({}); }

Q_SIGNALS:
    void changed();

private:
    bool isOne() const { return m_picked.count() == 1; }
    std::optional<std::size_t> only(const std::vector<std::size_t>& indices) const {
        if (!isOne() || indices.empty()) return std::nullopt;
        return indices.front();
    }

    Picked m_picked;
};

}  // namespace kerfwall
