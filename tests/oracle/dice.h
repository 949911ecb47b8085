// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <cstdint>
#include <random>

namespace kerfwall::oracle {

/// Random numbers the same on every machine: the standard library's distributions differ from one to another.
class Dice {
  public:
    explicit Dice(std::uint64_t seed) : m_engine(seed) {}
    int between(int low, int high) {
        return low + static_cast<int>(m_engine() % static_cast<std::uint64_t>(high - low + 1));
    }
    double tenths(double low, double high) {
        return between(static_cast<int>(std::lround(low * 10)), static_cast<int>(std::lround(high * 10))) /
               10.0;
    }
    bool chance(int percent) { return between(1, 100) <= percent; }
    template <class T, std::size_t n>
    T one(const T (&of)[n]) {
        return of[between(0, static_cast<int>(n) - 1)];
    }

  private:
    std::mt19937_64 m_engine;
};

}  // namespace kerfwall::oracle
