// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/shared_prices.h"

#include <algorithm>
#include <cmath>

namespace kerfwall {

namespace {

constexpr int kSteps = 300;
constexpr int kPatience = 20;  ///< steps without gain before they become shorter

/// Sums here are of the order of the prices: far more than their rounding, far less than one.
constexpr double kRounding = 1e-6;

struct Relaxed {
    double price = 0;
    std::vector<int> done;  ///< how often each job is done by the offers that pay
};

/// With jobs paying their shares, every offer whose jobs pay more than it costs is taken.
Relaxed relaxed(const std::vector<Offer>& offers, const std::vector<double>& shares) {
    Relaxed answer;
    answer.done.assign(shares.size(), 0);
    for (const double share : shares) answer.price += share;
    for (const Offer& offer : offers) {
        double left = static_cast<double>(offer.price);
        for (const std::size_t job : offer.jobs) left -= shares[job];
        if (left >= 0) continue;
        answer.price += left;
        for (const std::size_t job : offer.jobs) ++answer.done[job];
    }
    return answer;
}

std::vector<double> firstShares(const std::vector<Offer>& offers,
                                const std::vector<std::vector<std::size_t>>& doersOfJob) {
    std::vector<double> shares;
    for (const auto& doers : doersOfJob) {
        double least = HUGE_VAL;
        for (const std::size_t offer : doers) {
            least = std::min(least, static_cast<double>(offers[offer].price) /
                                        static_cast<double>(offers[offer].jobs.size()));
        }
        shares.push_back(least);
    }
    return shares;
}

}  // namespace

long sharedPrices(const std::vector<Offer>& offers, const std::vector<std::vector<std::size_t>>& doersOfJob,
                  long known) {
    std::vector<double> shares = firstShares(offers, doersOfJob);
    double best = 0;
    double length = 1;
    int idle = 0;
    const auto bound = [&] { return static_cast<long>(std::ceil(best * (1 - 1e-12) - kRounding)); };
    for (int step = 0; step < kSteps && bound() < known; ++step) {
        const Relaxed is = relaxed(offers, shares);
        if (is.price > best + kRounding) {
            best = is.price;
            idle = 0;
        } else if (++idle == kPatience) {
            idle = 0;
            length /= 2;
        }
        double size = 0;
        for (const int done : is.done) size += (1 - done) * (1 - done);
        if (size == 0) break;
        const double along = length * (static_cast<double>(known) - is.price) / size;
        for (std::size_t job = 0; job < shares.size(); ++job) {
            shares[job] = std::max(0.0, shares[job] + along * (1 - is.done[job]));
        }
    }
    return bound();
}

}  // namespace kerfwall
