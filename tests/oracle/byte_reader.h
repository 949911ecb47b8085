// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cmath>
#include <cstdint>
#include <span>

#include "core/geometry/point.h"

namespace kerfwall::oracle {

/// Reads bytes one after another; those that are missing count as 0.
class ByteReader {
  public:
    explicit ByteReader(std::span<const std::uint8_t> bytes) : m_bytes(bytes) {}
    std::size_t next() { return m_at < m_bytes.size() ? m_bytes[m_at++] : 0; }
    template <std::size_t n>
    std::array<std::size_t, n> take() {
        std::array<std::size_t, n> bytes{};
        for (std::size_t& byte : bytes) byte = next();
        return bytes;
    }

  private:
    std::span<const std::uint8_t> m_bytes;
    std::size_t m_at = 0;
};

template <class T, std::size_t n>
[[nodiscard]] T oneOf(const std::array<T, n>& of, std::size_t byte) {
    return of[byte % n];
}

/// A small amount of either sign: mm or radians.
[[nodiscard]] inline double nudgeOf(std::size_t byte) {
    constexpr std::array kNudges{0.0, 1e-9, 1e-8, 1e-7, 5e-7, 1e-6, 2e-6, 1e-5, 1e-4, 1e-3, 1e-2};
    const double size = oneOf(kNudges, byte / 2);
    return byte % 2 == 0 ? size : -size;
}

/// Rounded to whole parts of a millimetre, so that the double is a short decimal's own.
[[nodiscard]] inline double toPart(double mm, double partsOfMm) { return std::round(mm * partsOfMm) / partsOfMm; }
[[nodiscard]] inline Point toPart(Point p, double partsOfMm) { return {toPart(p.x, partsOfMm), toPart(p.y, partsOfMm)}; }

inline constexpr double kFinest = 1e10;  ///< parts of a millimetre

}  // namespace kerfwall::oracle
