// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace kerfwall {

/// How far a length or an angle may lie from what was meant, either way. In the unit of what it is about.
struct PlusMinus {
    double worst = 0;   ///< every source at its limit, all to the same side
    double likely = 0;  ///< root of the sum of squares
    bool operator==(const PlusMinus&) const = default;
};

/// What an error of one source does to a size: `sensitivity` for each unit of the error, with its sign.
struct Share {
    std::string source;      ///< errors of one source are one and the same error
    double plusMinus = 0;    ///< the error lies anywhere within, as likely here as there
    double sensitivity = 0;
    bool operator==(const Share&) const = default;
};

/// The shares of a size taken together; shares of one source are added with their signs first.
/// Source    worst = sum |c| a, likely = sqrt(sum (c a)^2): GUM (JCGM 100) 5.1.2, eq. 10.
[[nodiscard]] PlusMinus together(const std::vector<Share>& shares);

/// The larger of each.
[[nodiscard]] PlusMinus largerOf(const PlusMinus& one, const PlusMinus& other);

/// The standard deviation behind a likely figure whose sources are rectangular.
/// Source    GUM (JCGM 100) 4.3.7: u = a / sqrt 3.
[[nodiscard]] double standardUncertainty(const PlusMinus& size);

/// Twice the standard uncertainty (k = 2): about 95 in 100 lie within.
[[nodiscard]] double expandedUncertainty(const PlusMinus& size);

}  // namespace kerfwall
